import type { Axis } from './axis.js';

/** One line: as many values as `x.values`, in the unit of `y`; null leaves a gap. */
export interface Series {
  readonly name: string;
  readonly values: readonly (number | null)[];
}

/** A point worth naming, in axis units, with its label beside it. */
export interface Mark {
  readonly x: number;
  readonly y: number;
  readonly label?: string;
}

/** A shaded range along x: `low` and `high` as many as `x.values`. */
export interface Band {
  readonly name: string;
  readonly low: readonly number[];
  readonly high: readonly number[];
}

/** A straight line across the chart at one x or one y, such as a limit. */
export interface Rule {
  readonly x?: number;
  readonly y?: number;
  readonly label: string;
}

export interface LineChart {
  readonly title?: string;
  readonly subtitle?: string;
  readonly x: Axis & { readonly values: readonly number[] };
  readonly y: Axis;
  readonly series: readonly Series[];
  readonly marks?: readonly Mark[];
  readonly bands?: readonly Band[];
  readonly rules?: readonly Rule[];
  /** Draw the given points on the lines. Default: when there are 13 points or fewer. */
  readonly points?: boolean;
  /** `monotone` (default, smooth and never overshooting), `linear`, or `step-after` for things that change in steps. */
  readonly interpolate?: 'monotone' | 'linear' | 'step-after';
  /** px; of the whole chart, default 620, and of the plot, default 320 */
  readonly width?: number;
  readonly height?: number;
}
