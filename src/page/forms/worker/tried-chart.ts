import { displayableChart } from '../../../charts/chart-display.js';
import type { ChartSpec } from '../../../charts/chart-spec.js';
import { lineChart } from '../../../charts/line-chart.js';
import type { AnyRecipe } from '../../../engine/any-recipe.js';
import type { Output } from '../../../engine/output.js';
import { axisUnit, columnUnit, inUnit } from '../../../explore/frame-columns.js';
import { targetOf } from '../../../explore/target.js';
import { capitalised } from '../../../units/capitalised.js';
import type { TryQuestion } from '../model/tried-values.js';
import { fieldModel } from './field-model.js';
import type { TryRange } from './try-range.js';

/** What was tried, to be drawn. */
interface Tried {
  readonly recipe: AnyRecipe;
  readonly ask: TryQuestion;
  readonly output: Output;
  readonly range: TryRange;
  readonly figures: readonly (number | undefined)[];
  /** The same for a few values of a second field. */
  readonly others: readonly { readonly name: string; readonly figures: readonly (number | undefined)[] }[];
  readonly allowed: number | undefined;
}

/** The figure along the field; undefined where fewer than two places have an answer. */
export function triedChart({
  recipe,
  ask,
  output,
  range,
  figures,
  others,
  allowed,
}: Tried): ChartSpec | undefined {
  const known = figures.filter((figure) => figure !== undefined);
  if (known.length < 2) return undefined;
  const unit = columnUnit(output.kind, known, output.unit);
  const scaled = (value: number): number => inUnit(output.kind, Float64Array.of(value), unit)[0] ?? value;
  const line = (values: readonly (number | undefined)[]): (number | null)[] =>
    values.map((value) => (value === undefined ? null : scaled(value)));
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
      height: others.length === 0 ? 200 : 240,
      x: {
        title: fieldModel(ask.field, recipe.inputs[ask.field] as never, undefined).label.slice(0, 30),
        unit: axisUnit(range.unit),
        values: range.places,
      },
      y: { title: label, unit: axisUnit(unit) },
      series: [
        { name: others.length === 0 ? label : 'as it is now', values: line(figures) },
        ...others.map((other) => ({ name: other.name, values: line(other.figures) })),
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

export const shortTitle = (label: string): string => {
  const [first = label] = label.split(/[;:,(]/);
  return capitalised(first).slice(0, 30);
};
