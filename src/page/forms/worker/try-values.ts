import type { AnyRecipe } from '../../../engine/any-recipe.js';
import { quantityPart, isNumberField } from '../../../explore/frame-columns.js';
import { solveFor } from '../../../explore/solve-for.js';
import { uncertain } from '../../../explore/uncertain.js';
import { InputError } from '../../../units/input-error.js';
import { both } from '../../../units/quantity.js';
import type { Call, Scope } from '../model/argument.js';
import type { TriedValues, TryQuestion } from '../model/tried-values.js';
import type { Resolver } from './resolve.js';
import { tryRange, type TryRange } from './try-range.js';
import { shortTitle, triedChart } from './tried-chart.js';

type Inputs = Readonly<Record<string, unknown>>;

const nothing: TriedValues = {
  chart: undefined,
  from: '',
  to: '',
  unit: '',
  places: [],
  others: [],
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

/** What is given, with a number for each field that is to be tried. @throws InputError */
function baseOf(recipe: AnyRecipe, inputs: Inputs, fields: readonly string[]): Inputs {
  const filled = fields.map((name) => [
    name,
    inputs[name] ?? recipe.inputs[name]?.default ?? recipe.example[name],
  ]);
  return recipe.read({ ...inputs, ...(Object.fromEntries(filled) as Inputs) });
}

/** The range of a field about what it is now. @throws InputError where it is no number */
function rangeOf(
  recipe: AnyRecipe,
  base: Inputs,
  name: string,
  ends: Pick<TryQuestion, 'from' | 'to'>,
): TryRange {
  const field = recipe.inputs[name];
  const part = field && quantityPart(field);
  const now = base[name];
  if (part === undefined || !isNumberField(part) || typeof now !== 'number')
    throw new InputError({ field: name, message: 'is no number to be tried' });
  return tryRange(part, now, ends);
}

/** The first and the last place of a range and two between. */
function fewPlaces({ places }: TryRange): number[] {
  const last = places.length - 1;
  return [...new Set([0, 1, 2, 3].map((i) => Math.round((i * last) / 3)))].filter((i) => i >= 0);
}

function triedRange(recipe: AnyRecipe, inputs: Inputs, ask: TryQuestion): TriedValues {
  const { field, second } = ask;
  const output = recipe.outputs[ask.output];
  if (!(field in recipe.inputs) || output === undefined || recipe.isAsync) return nothing;
  const base = baseOf(recipe, inputs, second === undefined ? [field] : [field, second]);
  const range = rangeOf(recipe, base, field, ask);
  const along = (changed: Inputs): (number | undefined)[] =>
    range.values.map((value) => figureAt(recipe, { ...base, ...changed, [field]: value }, ask.output));
  const figures = along({});
  const steps =
    second === undefined ? undefined : rangeOf(recipe, base, second, { from: undefined, to: undefined });
  const others = steps
    ? fewPlaces(steps).map((i) => ({
        name: steps.text(steps.places[i] ?? 0),
        figures: along({ [second as string]: steps.values[i] }),
      }))
    : [];
  const allowed = allowedAt(recipe, base, ask.output);
  return {
    ...nothing,
    chart: triedChart({ recipe, ask, output, range, figures, others, allowed }),
    others: others.map(({ name }) => name),
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
