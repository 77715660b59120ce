import type { ChartSpec } from '../../../charts/chart-spec.js';

/** What to try: one field over a range, a second one in a few steps where that is asked, and a figure to look at. */
export interface TryQuestion {
  readonly field: string;
  /** A second field: a line of the chart for each of a few of its values. */
  readonly second?: string | undefined;
  /** Ends of the range as text with unit; undefined: about half to double what is given. */
  readonly from: string | undefined;
  readonly to: string | undefined;
  readonly output: string;
  /** What the figure is to reach, as text; undefined where nothing is sought. */
  readonly target: string | undefined;
  /** How far off the field may be either way, as text; undefined where that is not asked. */
  readonly plusMinus: string | undefined;
}

/** A chart of tried values with what was found in it. */
export interface TriedValues {
  readonly chart: ChartSpec | undefined;
  readonly from: string;
  readonly to: string;
  readonly unit: string;
  /** Places of the slider: the field's text and what the figure comes to there; no figure where the recipe refuses. */
  readonly places: readonly { readonly text: string; readonly figure: string | undefined }[];
  /** Values of the second field that have a line of their own, as text. */
  readonly others: readonly string[];
  /** Place of what is given now. */
  readonly now: number;
  /** Values of the field that reach the target, in words; empty where none was asked or found. */
  readonly reached: readonly string[];
  /** One line on the target, or on how sure the figure is. */
  readonly remarks: readonly string[];
  readonly problem: string | undefined;
}
