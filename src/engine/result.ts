import { displayableChart } from '../charts/chart-display.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import { sortBySeverity, type Caution } from './caution.js';
import { resultBundle, htmlOf, jsonOf, markdownOf, textOf } from './result-display.js';
import type { Fields, Parsed } from './field.js';
import { wrapAll, type Outputs, type RawOutput, type OutputValues } from './output.js';
import type { RecipeMetadata } from './recipe.js';
import type { Citation } from './source.js';
import type { TraceRecorder, Working } from './trace.js';

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
  /** `{ recipe, outputs: { name: { value, unit } }, cautions, ... }` with full precision. */
  toJSON(): ResultJson;
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
  readonly currency: string | undefined;
  workings(): readonly Working[];
  sources(): readonly Citation[];
  cautions(): readonly Caution[];
  chart(): ChartSpec | undefined;
}

const answers = new WeakMap<object, ResultInternals>();

/** The inner side of a result, for notes, frames and pages; undefined for anything else. */
export function resultInternals(value: unknown): ResultInternals | undefined {
  return typeof value === 'object' && value !== null ? answers.get(value) : undefined;
}

export function makeResult<F extends Fields, O extends Outputs>(
  own: RecipeMetadata<F, O>,
  given: Parsed<F>,
  raw: RawOutput<O>,
  trace: TraceRecorder,
  currency: string | undefined,
  written: unknown,
): Result<O> {
  const shown = wrapAll(own.outputs, raw, currency);
  const given_ = Object.entries(own.inputs).flatMap(([name, f]): ValueLine[] => {
    const value = given[name as keyof F] as unknown;
    if (value === undefined) return [];
    const text = f.format(value);
    const inBrackets =
      /^([^()]*\S) \(([^()]*(?:in|ft|lb|lbf|oz|psi|psf|°F|ft²|in²|ft³|gal|mil|floz)[^()]*)\)$/.exec(text);
    return [{ name, label: f.label, metric: inBrackets?.[1] ?? text, inch: inBrackets?.[2] ?? '' }];
  });
  let cautions: readonly Caution[] | undefined;
  let workings: readonly Working[] | undefined;
  let chart: { spec: ChartSpec | undefined } | undefined;
  const answer: ResultInternals = {
    name: own.name,
    title: own.title,
    about: own.about,
    outputs: own.outputs,
    raw: raw,
    shown: shown,
    inputs: given_,
    rawInputs: written,
    currency,
    workings: () => (workings ??= trace.lines()),
    sources: () => distinct([...own.sources, ...trace.sources()]),
    cautions: () =>
      (cautions ??= sortBySeverity([
        ...own.cautionsOf(given, raw),
        ...trace.cautions,
        ...estimates(trace),
        ...recalled(distinct([...own.sources, ...trace.sources()])),
      ])),
    chart: () => (chart ??= { spec: own.chartOf(given, raw) }).spec,
  };
  const result = Object.create(resultMethods) as Result<O>;
  Object.assign(result, shown);
  answers.set(result, answer);
  return Object.freeze(result) as Result<O>;
}

function distinct(citations: readonly Citation[]): Citation[] {
  return [...new Map(citations.map((c) => [`${c.id}|${c.locator}`, c])).values()];
}

function estimates(trace: TraceRecorder): Caution[] {
  const what = [...new Set(trace.estimated())];
  return what.length === 0
    ? []
    : [
        {
          level: 'estimate',
          text: `derived here or taken from common practice, not from a published method: ${what.join('; ')}`,
        },
      ];
}

function recalled(citations: readonly Citation[]): Caution[] {
  const from = citations.filter((c) => c.read === 'memory');
  return from.length === 0
    ? []
    : [
        {
          level: 'data',
          text: `recalled from memory and not checked against print: ${from.map((c) => `${c.id}, ${c.locator}`).join('; ')}`,
        },
      ];
}

const inner = (self: object): ResultInternals => {
  const a = answers.get(self);
  if (!a) throw new TypeError('not a result of a recipe');
  return a;
};

// Members live on a shared prototype so that spreading or listing a result gives its outputs alone.
const resultMethods = Object.create(null, {
  recipe: {
    get(this: object) {
      return inner(this).name;
    },
  },
  title: {
    get(this: object) {
      return inner(this).title;
    },
  },
  inputs: {
    get(this: object) {
      return inner(this).inputs;
    },
  },
  workings: {
    get(this: object) {
      return inner(this).workings();
    },
  },
  sources: {
    get(this: object) {
      return inner(this).sources();
    },
  },
  cautions: {
    get(this: object) {
      return inner(this).cautions();
    },
  },
  chart: {
    get(this: object) {
      const spec = inner(this).chart();
      return spec && displayableChart(spec);
    },
  },
  toText: {
    value(this: object) {
      return textOf(inner(this));
    },
  },
  toString: {
    value(this: object) {
      return textOf(inner(this));
    },
  },
  toMarkdown: {
    value(this: object) {
      return markdownOf(inner(this));
    },
  },
  toHtml: {
    value(this: object) {
      return htmlOf(inner(this));
    },
  },
  toJSON: {
    value(this: object) {
      return jsonOf(inner(this));
    },
  },
  [Symbol.for('Jupyter.display')]: {
    value(this: object) {
      return resultBundle(inner(this));
    },
  },
  [Symbol.for('nodejs.util.inspect.custom')]: {
    value(this: object) {
      return textOf(inner(this));
    },
  },
}) as object;
