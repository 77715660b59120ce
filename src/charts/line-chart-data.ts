import { inUnits } from '../units/unit-system.js';
import { shownAxis, type Axis } from './axis.js';

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

/** The chart in the units a person reads. */
export function shownLines(chart: LineChart): LineChart {
  const { axis: x, of: ofX } = shownAxis(chart.x);
  const { axis: y, of: ofY } = shownAxis(chart.y);
  const list = (values: readonly number[]): number[] => values.map(ofY);
  return {
    ...chart,
    x: { ...x, values: chart.x.values.map(ofX) },
    y,
    series: chart.series.map((s) => ({
      name: inUnits(s.name),
      values: s.values.map((v) => (v === null ? null : ofY(v))),
    })),
    ...(chart.bands && {
      bands: chart.bands.map((b) => ({ name: inUnits(b.name), low: list(b.low), high: list(b.high) })),
    }),
    ...(chart.marks && {
      marks: chart.marks.map((m) => ({
        x: ofX(m.x),
        y: ofY(m.y),
        ...(m.label === undefined ? {} : { label: inUnits(m.label) }),
      })),
    }),
    ...(chart.rules && {
      rules: chart.rules.map((r) => ({
        ...(r.x === undefined ? {} : { x: ofX(r.x) }),
        ...(r.y === undefined ? {} : { y: ofY(r.y) }),
        label: inUnits(r.label),
      })),
    }),
  };
}
