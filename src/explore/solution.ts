import { lineChart } from '../charts/line-chart.js';
import { displayableChart } from '../charts/chart-display.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import type { Kind } from '../units/kind.js';
import { both, Quantity } from '../units/quantity.js';
import { words } from '../engine/result-display.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import type { Field } from '../engine/field.js';
import type { Output } from '../engine/output.js';
import { capitalised } from '../units/capitalised.js';
import { withDisplay } from './display.js';
import { axisUnit, columnUnit, inUnit, textOf } from './frame-columns.js';
import type { Span } from './root-scan.js';

/** A stretch of inputs, both ends included, that all meet the target. */
export interface Interval {
  readonly from: Quantity | number;
  readonly to: Quantity | number;
}

/** The inputs that meet a target. */
export interface Solution {
  readonly recipe: string;
  readonly input: string;
  readonly output: string;
  /** The single inputs that meet the target, and the two ends of each interval, least first; empty when it is out of reach. */
  readonly roots: readonly (Quantity | number)[];
  /** Stretches in which every input meets the target. */
  readonly intervals: readonly Interval[];
  /** How near the output comes, and where, when there is no root. */
  readonly nearest: { readonly input: Quantity | number; readonly output: Quantity | number } | undefined;
  readonly chart: ChartSpec;
  toText(): string;
  toJSON(): Record<string, unknown>;
}

/** What a search found: the places scanned, how far each misses the goal, and where it is met. */
export interface Found {
  readonly recipe: AnyRecipe;
  readonly field: Field;
  readonly input: string;
  readonly output: string;
  readonly goal: number;
  readonly xs: readonly number[];
  readonly ys: readonly (number | undefined)[];
  readonly spans: readonly Span[];
  /** Index of the place that comes nearest. */
  readonly nearest: number;
}

export function makeSolution(found: Found): Solution {
  const { recipe: r, field, input, output, xs, ys, spans, goal } = found;
  const plain = field.kind === 'count' || field.kind === 'ratio';
  const wrapIn = (x: number): Quantity | number => (plain ? x : new Quantity(field.kind as Kind, x));
  const o = r.outputs[output] as Output;
  const nearest =
    spans.length > 0
      ? undefined
      : {
          input: wrapIn(xs[found.nearest] as number),
          output: o.wrap((ys[found.nearest] as number) + goal) as Quantity | number,
        };
  const solution: Solution = {
    recipe: r.name,
    input,
    output,
    roots: spans.flatMap((s) => (s.from === s.to ? [s.from] : [s.from, s.to])).map(wrapIn),
    intervals: spans.filter((s) => s.from !== s.to).map((s) => ({ from: wrapIn(s.from), to: wrapIn(s.to) })),
    nearest,
    get chart() {
      return displayableChart(chartOf(found));
    },
    toText: () => textOfSolution(found, solution),
    toJSON: () => ({
      recipe: r.name,
      input,
      output,
      roots: solution.roots.map(jsonOf),
      intervals: solution.intervals.map((i) => ({ from: jsonOf(i.from), to: jsonOf(i.to) })),
      ...(nearest ? { nearest: { input: jsonOf(nearest.input), output: jsonOf(nearest.output) } } : {}),
    }),
  };
  return withDisplay(
    solution,
    () => ({ 'text/plain': solution.toText(), 'text/markdown': `**${solution.toText()}**` }),
    () => solution.chart,
  );
}

const jsonOf = (q: Quantity | number): { value: number; unit: string } =>
  typeof q === 'number' ? { value: q, unit: '' } : q.toJSON();

const say = (q: Quantity | number): string => (typeof q === 'number' ? String(q) : both(q));

function textOfSolution(found: Found, { nearest, intervals, roots }: Solution): string {
  const { input, output, recipe: r, goal } = found;
  const o = r.outputs[output] as Output;
  const wanted = `${words(output)} of ${textOf(o.kind, goal, o.unit)}`;
  if (nearest)
    return `no ${words(input)} in the range gives ${wanted}; the nearest is ${say(nearest.output)} at ${say(nearest.input)}`;
  const ends = new Set(intervals.flatMap((i) => [i.from, i.to].map(say)));
  const parts = [
    ...intervals.map((i) => `from ${say(i.from)} to ${say(i.to)}`),
    ...roots.map(say).filter((text) => !ends.has(text)),
  ];
  return `${words(input)} for ${wanted}: ${parts.join('; ')}`;
}

/** Drawn round what was found, not over a range of six powers of ten. */
function chartOf(found: Found): ChartSpec {
  const { recipe: r, field, input, output, goal, xs, ys, spans } = found;
  const o = r.outputs[output] as Output;
  const centre = spans.length > 0 ? spans.flatMap((s) => [s.from, s.to]) : [xs[found.nearest] as number];
  const low = Math.max(xs[0] as number, Math.min(...centre) * 0.25);
  const high = Math.min(xs.at(-1) as number, Math.max(...centre) * 2);
  const near = xs.flatMap((x, i) => (x >= low && x <= high ? [i] : []));
  const places = near.length >= 2 ? near : [...xs.keys()];
  const picked = Float64Array.from(places, (i) => xs[i] as number);
  const values = places.map((i) => (ys[i] === undefined ? null : ys[i] + goal));
  const ux = columnUnit(field.kind, picked, field.unit);
  const uy = columnUnit(
    o.kind,
    values.map((v) => v ?? 0),
    o.unit,
  );
  const inX = (v: number): number => inUnit(field.kind, Float64Array.of(v), ux)[0] as number;
  const inY = (v: number): number => inUnit(o.kind, Float64Array.of(v), uy)[0] as number;
  return lineChart({
    title: capitalised(`${words(output)} against ${words(input)}`),
    x: {
      title: capitalised(words(input)),
      unit: axisUnit(ux),
      values: Array.from(inUnit(field.kind, picked, ux)),
    },
    y: { title: capitalised(words(output)), unit: axisUnit(uy) },
    series: [{ name: words(output), values: values.map((v) => (v === null ? null : inY(v))) }],
    rules: [{ y: inY(goal), label: 'target' }],
    marks: spans
      .flatMap((s) => (s.from === s.to ? [s.from] : [s.from, s.to]))
      .map((x) => ({ x: inX(x), y: inY(goal), label: textOf(field.kind, x) })),
    points: false,
  });
}
