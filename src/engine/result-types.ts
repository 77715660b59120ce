import type { ChartSpec } from '../charts/chart-spec.js';
import type { Caution } from './caution.js';
import type { Outputs, OutputValues } from './output.js';
import type { Citation } from './source.js';
import type { Working } from './trace.js';

/** One line of a table of values: what, in metric, and in inches where the trade has it. */
export interface ValueLine {
  readonly name: string;
  readonly label: string;
  readonly metric: string;
  readonly inch: string;
}
/** A cell of a table: in metric, and in inches where the trade has it. */
export interface ValueCell {
  readonly metric: string;
  readonly inch: string;
  /** The rows of a table within the cell, which `metric` strings together. */
  readonly items?: readonly Pick<ValueLine, 'metric' | 'inch'>[];
}
/** An output that is itself a table. */
export interface TableBlock {
  readonly name: string;
  readonly label: string;
  readonly heads: readonly string[];
  readonly cells: readonly (readonly ValueCell[])[];
  /** The same where a cell is one text: inches have columns of their own. */
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** What is known of an answer beside its outputs: all data, nothing rendered until asked. */
export interface ResultMethods {
  /** The recipe's name and title. */
  readonly recipe: string;
  readonly title: string;
  /** What was given, read: one line an input. */
  readonly inputs: readonly ValueLine[];
  readonly workings: readonly Working[];
  readonly sources: readonly Citation[];
  readonly cautions: readonly Caution[];
  readonly chart: ChartSpec | undefined;
  toText(): string;
  toMarkdown(): string;
  toHtml(): string;
  /** `{ recipe, outputs: { name: { value, unit } }, cautions, ... }`; numbers without the last binary digits. */
  toJSON(): ResultJson;
  /** One line a value: name, meaning, value, unit. RFC 4180. */
  toCSV(): string;
  /** The same with tabs, for pasting into a spreadsheet. */
  toClipboard(): string;
}
export interface ResultJson {
  readonly recipe: string;
  readonly title: string;
  readonly outputs: Readonly<Record<string, unknown>>;
  readonly cautions: readonly { readonly level: string; readonly text: string; readonly source?: string }[];
  readonly workings: readonly string[];
  readonly sources: readonly string[];
}

/** A recipe's answer: its outputs by name, and {@link ResultMethods}. */
export type Result<O extends Outputs = Outputs> = OutputValues<O> & ResultMethods;

/** Everything the display needs, kept apart from the outputs. */
export interface ResultInternals {
  readonly name: string;
  readonly title: string;
  readonly about: string;
  readonly outputs: Outputs;
  readonly raw: Readonly<Record<string, unknown>>;
  readonly shown: Readonly<Record<string, unknown>>;
  readonly inputs: readonly ValueLine[];
  readonly rawInputs: unknown;
  /** What was given, defaults too, as single values: quantities, numbers and words. */
  readonly given: Readonly<Record<string, unknown>>;
  readonly currency: string | undefined;
  /** The sentence of the answer, its `{name}` still to be filled in. */
  pattern(): string | undefined;
  /** The smallest change that mends a failing answer, as a sentence; '' where it does not fail. Searched for once, when asked. */
  mend(): string;
  workings(): readonly Working[];
  sources(): readonly Citation[];
  cautions(): readonly Caution[];
  chart(): ChartSpec | undefined;
}
