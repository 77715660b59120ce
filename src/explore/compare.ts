import { barChart } from '../charts/bar-chart.js';
import { displayableChart } from '../charts/chart-display.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import { InputError } from '../units/input-error.js';
import { number } from '../units/format-quantity.js';
import { escapeHtml } from '../engine/result-display.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import { collectIssues, type Fields, type Input } from '../engine/field.js';
import type { Output, Outputs } from '../engine/output.js';
import { resultInternals, type Result } from '../engine/result.js';
import type { AsyncRecipe, Recipe } from '../engine/recipe.js';
import { withProgress } from '../engine/progress.js';
import { capitalised } from '../units/capitalised.js';
import { withDisplay } from './display.js';
import type { NumberOutput } from './explore-types.js';
import { axisUnit, columnUnit, inUnit, numberOutputs } from './frame-columns.js';
import { outputNamed } from './option-names.js';
import { frame, type Frame } from './frame.js';

/** Which alternative is best: the one with the least or the most of an output. */
export type Rule<Out extends string = string> = { readonly least: Out } | { readonly most: Out };

export interface Comparison<O extends Outputs = Outputs> {
  readonly recipe: string;
  readonly results: Readonly<Record<string, Result<O>>>;
  /** Name of the best alternative by the rule given; undefined without a rule. */
  readonly best: string | undefined;
  readonly chart: ChartSpec | undefined;
  frame(): Promise<Frame>;
  toMarkdown(): string;
}

/**
 * Several ways side by side: `compare(movementAcross, { oak: {...}, teak: {...} }, { least: 'change' })`.
 * `least` compares by size, so that a movement of -8 mm is more than one of 5 mm.
 * @throws InputError naming the alternative and the field
 */
export async function compare<F extends Fields, O extends Outputs>(
  recipe: Recipe<F, O> | AsyncRecipe<F, O>,
  ways: Readonly<Record<string, Input<F>>>,
  rule?: Rule<NumberOutput<O>>,
): Promise<Comparison<O>>;
export async function compare(
  recipe: AnyRecipe,
  ways: Readonly<Record<string, Readonly<Record<string, unknown>>>>,
  rule?: Rule,
): Promise<Comparison>;
export async function compare(
  recipe: unknown,
  ways: Readonly<Record<string, object>>,
  rule?: Rule,
): Promise<Comparison> {
  const r = recipe as AnyRecipe;
  const names = Object.keys(ways);
  if (names.length < 2)
    throw new InputError(
      `compare: got ${names.length} ways, takes two or more such as { oak: {...}, teak: {...} }`,
      r.name,
    );
  const given = ways as Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  // Every way is checked first, so that all that is wrong comes back together.
  collectIssues(names.map((n) => [n, () => r.read(given[n] as Readonly<Record<string, unknown>>)] as const));
  const results = await resultsOf(r, given);
  const wanted =
    rule && ('least' in rule ? outputNamed(r, rule.least, 'least') : outputNamed(r, rule.most, 'most'));
  const compared: Compared = { recipe: r, names, results, drawn: wanted ?? numberOutputs(r.outputs)[0] };
  return makeComparison(compared, rule && bestOf(compared, wanted as string, 'least' in rule));
}

/** The ways in their order, each with its result. */
interface Compared {
  readonly recipe: AnyRecipe;
  readonly names: readonly string[];
  readonly results: Readonly<Record<string, Result>>;
  readonly drawn: string | undefined;
}

async function resultsOf(
  r: AnyRecipe,
  ways: Readonly<Record<string, Readonly<Record<string, unknown>>>>,
): Promise<Record<string, Result>> {
  const results: Record<string, Result> = {};
  const all = Object.entries(ways);
  await withProgress({}, r.title, async ({ signal, onProgress }) => {
    for (const [i, [n, way]] of all.entries()) {
      const done = (share: number): number => (i + share) / all.length;
      onProgress({ done: done(0), message: n });
      results[n] = await r(way, {
        ...(signal ? { signal } : {}),
        onProgress: (p) => onProgress({ ...p, done: done(p.done ?? 0), message: `${n}: ${p.message}` }),
      });
    }
  });
  return results;
}

const rawOf = ({ results }: Compared, name: string, output: string): number | undefined =>
  resultInternals(results[name])?.raw[output] as number | undefined;

function bestOf(compared: Compared, output: string, least: boolean): string | undefined {
  const size = (name: string): number => Math.abs(rawOf(compared, name, output) as number);
  return compared.names
    .filter((n) => rawOf(compared, n, output) !== undefined)
    .sort((a, b) => (least ? size(a) - size(b) : size(b) - size(a)))[0];
}

function makeComparison(compared: Compared, best: string | undefined): Comparison {
  const { recipe: r, names, results } = compared;
  const comparison: Comparison = {
    recipe: r.name,
    results,
    best,
    get chart() {
      const chart = chartOf(compared, best);
      return chart && displayableChart(chart);
    },
    frame: async () => frame(names.map((n) => ({ way: n, ...resultInternals(results[n])?.shown }))),
    toMarkdown: () => {
      const { head, body } = linesOf(compared, best);
      const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;
      return [row(head), `|${'---|'.repeat(head.length)}`, ...body.map(row)].join('\n');
    },
  };
  return withDisplay(
    comparison,
    () => {
      const lines = linesOf(compared, best);
      return {
        'text/plain': [lines.head, ...lines.body].map((row) => row.join('  ')).join('\n'),
        'text/markdown': comparison.toMarkdown(),
        'text/html': htmlOf(lines),
      };
    },
    () => comparison.chart,
  );
}

interface Lines {
  readonly head: readonly string[];
  readonly body: readonly (readonly string[])[];
}

/** One line an output; lists and tables are left to the results themselves. */
function linesOf({ recipe: r, names, results }: Compared, best: string | undefined): Lines {
  return {
    head: ['', ...names.map((n) => (n === best ? `${n} (best)` : n))],
    body: Object.entries(r.outputs).flatMap(([name, o]) => {
      if (['table', 'list', 'record'].includes(o.kind)) return [];
      const cells = names.map((n) => {
        const result = resultInternals(results[n]);
        const value = result?.raw[name];
        return value === undefined ? undefined : o.format(value, result?.currency).metric;
      });
      return cells.every((c) => c === undefined) ? [] : [[o.label, ...cells.map((c) => c ?? '')]];
    }),
  };
}

function htmlOf({ head, body }: Lines): string {
  const cell = (tag: string, text: string, i: number): string =>
    `<${tag} style="text-align:${i === 0 ? 'left;min-width:12em' : 'right'};vertical-align:top">${escapeHtml(text)}</${tag}>`;
  const row = (tag: string, cells: readonly string[]): string =>
    `<tr>${cells.map((c, i) => cell(tag, c, i)).join('')}</tr>`;
  return `<table><thead>${row('th', head)}</thead><tbody>${body.map((cells) => row('td', cells)).join('')}</tbody></table>`;
}

function chartOf(compared: Compared, best: string | undefined): ChartSpec | undefined {
  const { recipe: r, names, drawn } = compared;
  if (drawn === undefined) return undefined;
  const o = r.outputs[drawn] as Output;
  const values = names.flatMap((n) => rawOf(compared, n, drawn) ?? []);
  const unit = columnUnit(o.kind, values, o.unit);
  const bars = names.flatMap((n) => {
    const v = rawOf(compared, n, drawn);
    if (v === undefined) return [];
    const value = inUnit(o.kind, Float64Array.of(v), unit)[0] as number;
    return [{ name: n === best ? `${n} (best)` : n, value, label: number(value, 4), chosen: n === best }];
  });
  return barChart({
    title: r.title,
    of: '',
    value: { title: capitalised(o.label), unit: axisUnit(unit) },
    bars,
  });
}
