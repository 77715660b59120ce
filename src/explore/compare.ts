import { barChart } from '../charts/bar-chart.js';
import { renderSvg } from '../charts/svg.js';
import { displayableChart } from '../charts/chart-display.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import { InputError, nearest, inspectValue } from '../units/input-error.js';
import { number } from '../units/format-quantity.js';
import { escapeHtml, words } from '../engine/result-display.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import { collectIssues, type Fields, type Input } from '../engine/field.js';
import type { Output, Outputs } from '../engine/output.js';
import { resultInternals, type Result } from '../engine/result.js';
import type { AsyncRecipe, Recipe } from '../engine/recipe.js';
import { withProgress } from '../engine/progress.js';
import { axisUnit, columnUnit, inUnit, isNumberField } from './frame-columns.js';
import { frame, type Frame } from './frame.js';

/** Which alternative is best: the one with the least or the most of an output. */
export type Rule = { readonly least: string } | { readonly most: string };

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
  recipe: Recipe<F, O> | AsyncRecipe<F, O> | AnyRecipe,
  ways: Readonly<Record<string, Input<F> | Readonly<Record<string, unknown>>>>,
  rule?: Rule,
): Promise<Comparison<O>> {
  const r = recipe as unknown as AnyRecipe;
  const names = Object.keys(ways);
  if (names.length < 2)
    throw new InputError(
      `compare: got ${names.length} ways, takes two or more such as { oak: {...}, teak: {...} }`,
      r.name,
    );
  // Every way is checked first, so that all that is wrong comes back together.
  collectIssues(names.map((n) => [n, () => r.read(ways[n] as Readonly<Record<string, unknown>>)] as const));
  const results: Record<string, Result<O>> = {};
  await withProgress({}, r.title, async ({ signal, onProgress }) => {
    for (const [i, n] of names.entries()) {
      const done = (share: number): number => (i + share) / names.length;
      onProgress({ done: done(0), message: n });
      const way = ways[n] as Readonly<Record<string, unknown>>;
      results[n] = (await r(way, {
        ...(signal ? { signal } : {}),
        onProgress: (p) => onProgress({ ...p, done: done(p.done ?? 0), message: `${n}: ${p.message}` }),
      })) as Result<O>;
    }
  });
  const wanted = rule === undefined ? undefined : 'least' in rule ? rule.least : rule.most;
  const outputs = Object.entries(r.outputs).flatMap(([n, o]) => (isNumberField(o) ? [n] : []));
  if (wanted !== undefined && !outputs.includes(wanted)) {
    const near = nearest(wanted, outputs);
    throw new InputError(
      {
        field: rule && 'least' in rule ? 'least' : 'most',
        message: `got ${inspectValue(wanted)}, takes one of ${outputs.join(', ')}${near ? `; did you mean ${inspectValue(near)}?` : ''}`,
      },
      r.name,
    );
  }
  const raw = (n: string, output: string): number | undefined =>
    resultInternals(results[n])?.raw[output] as number | undefined;
  const best =
    wanted === undefined
      ? undefined
      : names
          .filter((n) => raw(n, wanted) !== undefined)
          .sort((a, b) => {
            const [x, y] = [Math.abs(raw(a, wanted) as number), Math.abs(raw(b, wanted) as number)];
            return rule && 'least' in rule ? x - y : y - x;
          })[0];
  return makeComparison(r, names, results, best, wanted ?? outputs[0], raw);
}

function makeComparison<O extends Outputs>(
  r: AnyRecipe,
  names: readonly string[],
  results: Readonly<Record<string, Result<O>>>,
  best: string | undefined,
  drawn: string | undefined,
  raw: (n: string, output: string) => number | undefined,
): Comparison<O> {
  const lines = (): { head: string[]; body: string[][] } => ({
    head: ['', ...names.map((n) => (n === best ? `${n} (best)` : n))],
    body: Object.entries(r.outputs).flatMap(([name, o]) => {
      const values = names.map((n) => resultInternals(results[n])?.raw[name]);
      if (values.every((v) => v === undefined) || ['table', 'list', 'record'].includes(o.kind)) return [];
      return [
        [
          o.label,
          ...values.map((v, i) =>
            v === undefined ? '' : o.format(v, resultInternals(results[names[i] as string])?.currency).metric,
          ),
        ],
      ];
    }),
  });
  const comparison: Comparison<O> = {
    recipe: r.name,
    results,
    best,
    get chart() {
      if (drawn === undefined) return undefined;
      const o = r.outputs[drawn] as Output;
      const values = names.flatMap((n) => raw(n, drawn) ?? []);
      const unit = columnUnit(o.kind, values, o.unit);
      const bars = names.flatMap((n) => {
        const v = raw(n, drawn);
        if (v === undefined) return [];
        const value = inUnit(o.kind, Float64Array.of(v), unit)[0] as number;
        return [{ name: n === best ? `${n} (best)` : n, value, label: number(value, 4), chosen: n === best }];
      });
      return displayableChart(
        barChart({
          title: r.title,
          of: '',
          value: { title: o.label.charAt(0).toUpperCase() + o.label.slice(1), unit: axisUnit(unit) },
          bars,
        }),
      );
    },
    frame: async () => frame(names.map((n) => ({ way: n, ...resultInternals(results[n])?.shown }))),
    toMarkdown: () => {
      const { head, body } = lines();
      return [
        `| ${head.join(' | ')} |`,
        `|${'---|'.repeat(head.length)}`,
        ...body.map((row) => `| ${row.join(' | ')} |`),
      ].join('\n');
    },
  };
  Object.defineProperty(comparison, Symbol.for('Jupyter.display'), {
    value: async () => {
      const { head, body } = lines();
      const e = escapeHtml;
      const cell = (tag: string, text: string, i: number): string =>
        `<${tag} style="text-align:${i === 0 ? 'left;min-width:12em' : 'right'};vertical-align:top">${e(text)}</${tag}>`;
      const chart = comparison.chart;
      return {
        'text/plain': [head.join('  '), ...body.map((row) => row.join('  '))].join('\n'),
        'text/markdown': comparison.toMarkdown(),
        'text/html': `<table><thead><tr>${head.map((h, i) => cell('th', h, i)).join('')}</tr></thead><tbody>${body.map((row) => `<tr>${row.map((c, i) => cell('td', c, i)).join('')}</tr>`).join('')}</tbody></table>`,
        ...(chart
          ? { 'image/svg+xml': await renderSvg(chart), 'application/vnd.vegalite.v5+json': chart }
          : {}),
      };
    },
  });
  return comparison;
}
