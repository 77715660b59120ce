import { lineChart } from '../../../charts/line-chart.js';
import { displayableChart } from '../../../charts/chart-display.js';
import type { ChartSpec } from '../../../charts/chart-spec.js';
import type { AnyRecipe } from '../../../engine/any-recipe.js';
import type { Output } from '../../../engine/output.js';
import { axisUnit, columnUnit, inUnit, quantityPart, isNumberField } from '../../../explore/frame-columns.js';
import { solveFor } from '../../../explore/solve-for.js';
import { uncertain } from '../../../explore/uncertain.js';
import { targetOf } from '../../../explore/target.js';
import { InputError } from '../../../units/input-error.js';
import { both } from '../../../units/quantity.js';
import type { Call, Scope } from '../model/argument.js';
import type { TriedValues, TryQuestion } from '../model/tried-values.js';
import { fieldModel } from './field-model.js';
import type { Resolver } from './resolve.js';
import { tryRange, type TryRange } from './try-range.js';
import { capitalised } from '../../../units/capitalised.js';

type Inputs = Readonly<Record<string, unknown>>;

const nothing: TriedValues = {
  chart: undefined,
  from: '',
  to: '',
  unit: '',
  places: [],
  now: 0,
  reached: [],
  remarks: [],
  problem: undefined,
};

/** One field over a range, with what reaches a target and how sure the figure is. */
export async function tryValues(
  recipe: AnyRecipe,
  ask: TryQuestion & { readonly call: Call; readonly scope: Scope },
  resolver: Resolver,
): Promise<TriedValues> {
  try {
    const inputs: Record<string, unknown> = {};
    for (const [name, argument] of Object.entries(ask.call.given))
      inputs[name] = await resolver.value(argument);
    const tried = triedRange(recipe, inputs, ask);
    const target = ask.target === undefined ? undefined : reaching(recipe, inputs, ask, tried);
    const sure = ask.plusMinus === undefined ? [] : [await howSure(recipe, inputs, ask)];
    return { ...tried, reached: target?.reached ?? [], remarks: [...(target?.remarks ?? []), ...sure] };
  } catch (error) {
    return { ...nothing, problem: error instanceof Error ? error.message : String(error) };
  }
}

function triedRange(recipe: AnyRecipe, inputs: Inputs, ask: TryQuestion): TriedValues {
  const field = recipe.inputs[ask.field];
  const output = recipe.outputs[ask.output];
  if (field === undefined || output === undefined || recipe.isAsync) return nothing;
  const part = quantityPart(field);
  if (!isNumberField(part)) throw new InputError({ field: ask.field, message: 'is no number to be tried' });
  const given = inputs[ask.field] ?? field.default ?? recipe.example[ask.field];
  const base = recipe.read({ ...inputs, [ask.field]: given });
  const now = base[ask.field];
  if (typeof now !== 'number')
    throw new InputError({ field: ask.field, message: 'is no number to be tried' });
  const range = tryRange(part, now, ask);
  const figures = range.values.map((value) => figureAt(recipe, { ...base, [ask.field]: value }, ask.output));
  return {
    ...nothing,
    chart: chartOf({ recipe, ask, output, range, figures, allowed: allowedAt(recipe, base, ask.output) }),
    from: range.text(range.places[0] ?? 0),
    to: range.text(range.places.at(-1) ?? 0),
    unit: range.unit,
    places: range.places.map((place, i) => {
      const figure = figures[i];
      return {
        text: range.text(place),
        figure: figure === undefined ? undefined : output.format(figure).metric,
      };
    }),
    now: range.now,
  };
}

/** The figure, or undefined where the recipe refuses: a gap in the line, not a zero. */
function figureAt(recipe: AnyRecipe, base: Inputs, output: string): number | undefined {
  try {
    const value = (recipe.evaluate(base) as Inputs)[output];
    return typeof value === 'number' && Number.isFinite(value) ? value : undefined;
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
}

/** The allowed value of a figure, where the recipe has one of the same kind. */
function allowedAt(recipe: AnyRecipe, base: Inputs, output: string): number | undefined {
  const allowed = recipe.outputs['allowed'];
  return allowed === undefined || allowed.kind !== recipe.outputs[output]?.kind || output === 'allowed'
    ? undefined
    : figureAt(recipe, base, 'allowed');
}

interface Drawn {
  readonly recipe: AnyRecipe;
  readonly ask: TryQuestion;
  readonly output: Output;
  readonly range: TryRange;
  readonly figures: readonly (number | undefined)[];
  readonly allowed: number | undefined;
}

function chartOf({ recipe, ask, output, range, figures, allowed }: Drawn): ChartSpec | undefined {
  const known = figures.filter((figure) => figure !== undefined);
  if (known.length < 2) return undefined;
  const unit = columnUnit(output.kind, known, output.unit);
  const scaled = (value: number): number => inUnit(output.kind, Float64Array.of(value), unit)[0] ?? value;
  const label = shortTitle(output.label);
  const now = figures[range.now];
  const target = ask.target === undefined ? undefined : targetOf(recipe, ask.output, ask.target);
  const rules = [
    ...(allowed === undefined ? [] : [{ y: scaled(allowed), label: 'allowed' }]),
    ...(target === undefined ? [] : [{ y: scaled(target), label: 'target' }]),
  ];
  return displayableChart(
    lineChart({
      title: label,
      width: 520,
      height: 200,
      x: {
        title: fieldModel(ask.field, recipe.inputs[ask.field] as never, undefined).label.slice(0, 30),
        unit: axisUnit(range.unit),
        values: range.places,
      },
      y: { title: label, unit: axisUnit(unit) },
      series: [
        { name: label, values: figures.map((figure) => (figure === undefined ? null : scaled(figure))) },
      ],
      ...(output.kind === 'count' ? { interpolate: 'step-after' as const } : {}),
      rules,
      marks:
        now === undefined
          ? []
          : [
              {
                x: range.places[range.now] ?? 0,
                y: scaled(now),
                label: `now ${range.text(range.places[range.now] ?? 0)}`,
              },
            ],
      points: false,
    }),
  );
}

const shortTitle = (label: string): string => {
  const [first = label] = label.split(/[;:,(]/);
  return capitalised(first).slice(0, 30);
};

function reaching(
  recipe: AnyRecipe,
  inputs: Inputs,
  ask: TryQuestion,
  tried: TriedValues,
): { reached: string[]; remarks: string[] } {
  const solution = solveFor(recipe, ask.field, { [ask.output]: ask.target }, inputs, {
    from: tried.from,
    to: tried.to,
  });
  const reached = solution.roots.map((root) => (typeof root === 'number' ? String(root) : root.toString()));
  return { reached, remarks: [solution.toText()] };
}

async function howSure(recipe: AnyRecipe, inputs: Inputs, ask: TryQuestion): Promise<string> {
  const output = recipe.outputs[ask.output];
  const given = inputs[ask.field] ?? recipe.inputs[ask.field]?.default;
  const text = typeof given === 'string' || typeof given === 'number' ? String(given) : '';
  const spread = await uncertain(
    recipe,
    { ...inputs, [ask.field]: `${text} +- ${ask.plusMinus ?? ''}` },
    { output: ask.output, samples: 8192, sensitivity: false },
  );
  const say = (percent: number): string => {
    const value = spread.percentile(percent);
    return typeof value === 'number' ? String(Number(value.toPrecision(3))) : both(value);
  };
  return `${shortTitle(output?.label ?? ask.output)}: eight in ten lie from ${say(10)} to ${say(90)}.`;
}
