/** The inputs that a chart of `whatIf` varies: the first along the x axis, every other one with a slider. */
import { words } from '../engine/result-display.js';
import { axisUnit } from './frame-columns.js';
import type { Axis } from './sweep-axes.js';

/** An input given a range, and how its base unit becomes the unit of the chart. */
export interface Slid {
  readonly axis: Axis;
  readonly unit: string;
  readonly scale: number;
  readonly offset: number;
}

/** Where the sliders stand at first, such as `spindle speed 6000 rpm, knives 4`; empty without sliders. */
export function shownAt(slid: readonly Slid[]): string {
  return slid
    .slice(1)
    .map((s) => [words(s.axis.name), middleOf(valuesOf(s)), axisUnit(s.unit)].filter(Boolean).join(' '))
    .join(', ');
}

/** The values of an axis in its unit. */
const valuesOf = ({ axis, scale, offset }: Slid): number[] =>
  Array.from(axis.values as ArrayLike<number>, (v) => tidy((v - offset) / scale));

const middleOf = (values: readonly number[]): number => values[Math.floor(values.length / 2)] as number;

/** Number of decimals a slider needs to step through its range in about a hundred steps. */
function stepOf(low: number, high: number, whole: boolean): number {
  if (whole) return 1;
  return 10 ** Math.floor(Math.log10((high - low) / 50));
}

/** The sliders as parameters of Vega-Lite. */
export function sliders(
  slid: readonly Slid[],
  steps: 'fine' | 'grid',
): { name: string; value: number; bind: object }[] {
  return slid.slice(1).map((s) => {
    const { axis: a, unit } = s;
    const values = valuesOf(s);
    const [low, high] = [Math.min(...values), Math.max(...values)];
    const whole = a.field.kind === 'count';
    const step = steps === 'grid' ? tidy((high - low) / (values.length - 1)) : stepOf(low, high, whole);
    return {
      name: `s_${a.name}`,
      value: middleOf(values),
      bind: {
        input: 'range',
        min: low,
        max: high,
        step,
        name: `${words(a.name)}${unit ? ` (${axisUnit(unit)})` : ''} `,
      },
    };
  });
}

/** A number without the noise of a conversion. */
export const tidy = (x: number): number => Number(x.toPrecision(9));
