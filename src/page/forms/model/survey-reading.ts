import type { ChartSpec } from '../../../charts/chart-spec.js';

/** How a survey is to be read; what is not said is guessed from its headings. */
export interface SurveyChoices {
  /** Column of each heading; '' where it is left out. */
  readonly columns: Readonly<Record<string, string>>;
  /** Unit of bare numbers in each heading's column. */
  readonly units: Readonly<Record<string, string>>;
  /** Cells written anew, by `row:heading`. */
  readonly repairs: Readonly<Record<string, string>>;
  /** Rows left out, from 0. */
  readonly left: readonly number[];
}

/** A heading of the survey and what it was taken for. */
export interface SurveyHeading {
  readonly heading: string;
  readonly column: string;
  readonly unit: string;
  /** True where its numbers have no unit of their own in the survey. */
  readonly needsUnit: boolean;
  /** The first of its cells. */
  readonly sample: string;
}

/** One doubt, of one row or of many alike. */
export interface SurveyDoubt {
  readonly message: string;
  /** Row and heading of a cell that a repair would write anew. */
  readonly cell: string | undefined;
  readonly repair: string | undefined;
  readonly row: number | undefined;
}

/** A survey as it was read. */
export interface SurveyReading {
  readonly headings: readonly SurveyHeading[];
  readonly rows: number;
  readonly boards: number;
  readonly doubts: readonly SurveyDoubt[];
  /** Number of doubts beyond those listed. */
  readonly moreDoubts: number;
  readonly ignored: readonly string[];
  /** Columns that a survey needs and this one has not. */
  readonly missing: readonly string[];
  readonly picture: ChartSpec | undefined;
  /** The survey in the project's own form, once nothing is in doubt. */
  readonly csv: string | undefined;
  readonly columns: readonly { readonly name: string; readonly label: string }[];
}
