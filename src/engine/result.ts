import { spokenAnswer } from './spoken.js';
import { inUnits, unitSystem, type UnitSystem } from '../units/unit-system.js';
import { kinds, type Kind } from '../units/kind.js';
import { Quantity } from '../units/quantity.js';
import { labelsInUnits } from '../charts/chart-units.js';
import { describedChart, displayableChart } from '../charts/chart-display.js';
import { sortBySeverity, type Caution } from './caution.js';
import { resultBundle, htmlOf, jsonOf, markdownOf, textOf } from './result-display.js';
import type { Fields, Parsed } from './field.js';
import { wrapAll, type Outputs, type RawOutput } from './output.js';
import type { RecipeMetadata } from './recipe-definition.js';
import { csvText, resultCells, tabText } from './result-table.js';
import type { Result, ResultInternals, ValueLine } from './result-types.js';
import { shortCitation, type Citation } from './source.js';
import type { TraceRecorder } from './trace.js';
import type { ChartSpec } from '../charts/chart-spec.js';

export type {
  Result,
  ResultInternals,
  ResultJson,
  ResultMethods,
  TableBlock,
  ValueCell,
  ValueLine,
} from './result-types.js';

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
  mend: () => string,
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
  let mended: string | undefined;
  let chart: { readonly system: UnitSystem; readonly spec: ChartSpec | undefined } | undefined;
  const answer: ResultInternals = {
    name: own.name,
    title: own.title,
    about: own.about,
    outputs: own.outputs,
    raw: raw,
    shown: shown,
    inputs: given_,
    rawInputs: written,
    given: singleValues(own.inputs, given, currency),
    currency,
    pattern: () => own.sentenceOf(given, raw),
    mend: () => (mended ??= mend()),
    workings: () => trace.lines(),
    sources: () => distinct([...own.sources, ...trace.sources()]),
    cautions: () =>
      (cautions ??= sortBySeverity([
        ...own.cautionsOf(given, raw),
        ...trace.cautions,
        ...estimates(trace),
        ...unverified(distinct([...own.sources, ...trace.sources()])),
      ])),
    chart: () => {
      const system = unitSystem();
      if (chart?.system !== system)
        chart = {
          system,
          spec: describedChart(labelsInUnits(own.chartOf(given, raw)), inUnits(spokenAnswer(answer))),
        };
      return chart.spec;
    },
  };
  const result = Object.create(resultMethods) as Result<O>;
  Object.assign(result, shown);
  answers.set(result, answer);
  return Object.freeze(result) as Result<O>;
}

/** The inputs that are one value each, numbers as quantities of their kind. */
function singleValues(
  inputs: Fields,
  given: Readonly<Record<string, unknown>>,
  currency: string | undefined,
): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(inputs).flatMap(([name, f]): [string, unknown][] => {
      const value = given[name];
      if (value === undefined || Array.isArray(value) || f.fields !== undefined) return [];
      if (typeof value === 'number' && isMeasured(f.kind))
        return [[name, new Quantity(f.kind, value, currency)]];
      return [[name, ['number', 'string', 'boolean'].includes(typeof value) ? value : f.format(value)]];
    }),
  );
}

const isMeasured = (kind: string): kind is Kind =>
  Object.hasOwn(kinds, kind) && kind !== 'ratio' && kind !== 'count';

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

function unverified(citations: readonly Citation[]): Caution[] {
  const from = citations.filter((c) => c.read === 'memory');
  return from.length === 0
    ? []
    : [
        {
          level: 'data',
          text: `not yet compared with the printed page: ${from.map((c) => shortCitation({ id: c.id, locator: c.locator })).join('; ')}`,
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
  toCSV: {
    value(this: object) {
      return csvText(resultCells(inner(this)));
    },
  },
  toClipboard: {
    value(this: object) {
      return tabText(resultCells(inner(this)));
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
