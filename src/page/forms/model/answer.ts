import type { ChartSpec } from '../../../charts/chart-spec.js';

/** One figure of an answer. */
export interface AnswerLine {
  readonly name: string;
  readonly label: string;
  readonly metric: string;
  readonly inch: string;
}

export interface AnswerTable {
  readonly name: string;
  readonly label: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface AnswerCaution {
  readonly level: string;
  readonly word: string;
  readonly text: string;
}

/** What is wrong with one field, and a text that would mend it where there is one. */
export interface FieldIssue {
  /** Path such as `width` or `boards[3].length`; empty where no field is named. */
  readonly field: string;
  readonly message: string;
  readonly repair?: string | undefined;
}

/** An answer as plain data, ready to be shown. */
export interface Answer {
  readonly recipe: string;
  readonly title: string;
  readonly sentence: string;
  readonly lines: readonly AnswerLine[];
  readonly tables: readonly AnswerTable[];
  readonly cautions: readonly AnswerCaution[];
  readonly chart: ChartSpec | undefined;
}

/** The whole of an answer, asked for when it is looked at or saved. */
export interface AnswerDetails {
  /** Workings, every figure, sources. */
  readonly html: string;
  readonly csv: string;
  readonly clipboard: string;
}

/** State of a form: an answer, values still needed, something wrong, or code that only the kernel can run. */
export type Outcome =
  | { readonly state: 'answer'; readonly answer: Answer; readonly read: ReadFields }
  | { readonly state: 'waiting'; readonly missing: readonly string[]; readonly read: ReadFields }
  | {
      readonly state: 'wrong';
      readonly issues: readonly FieldIssue[];
      readonly missing: readonly string[];
      readonly read: ReadFields;
    }
  | { readonly state: 'code'; readonly fields: readonly string[]; readonly read: ReadFields }
  | { readonly state: 'search'; readonly read: ReadFields };

/** Each field that was given and could be read, in words: metric, and inches where the trade has them. */
export type ReadFields = Readonly<Record<string, { readonly metric: string; readonly inch: string }>>;
