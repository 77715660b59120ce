import { barChart, histogram } from '../charts/barChart.js';
import { renderSvg } from '../charts/svg.js';
import { shownChart, stacked } from '../charts/show.js';
import type { ChartSpec } from '../charts/types.js';
import { number } from '../quantities/format.js';
import type { Kind } from '../quantities/kind.js';
import { Quantity } from '../quantities/quantity.js';
import { Refusal, shown } from '../quantities/refusal.js';
import { escapeHtml, words } from '../recipe/display.js';
import type { RecipeEntry } from '../recipe/entry.js';
import type { Field, Fields } from '../recipe/field.js';
import type { Output, Outputs } from '../recipe/output.js';
import { bareOf, loopOf, type Recipe } from '../recipe/recipe.js';
import { axisUnit, columnUnit, inUnit, numberOutputs, quantityPart, textOf } from './columns.js';
import { drawer } from './draws.js';
import { between, spreadOf, type Spread } from './spread.js';
import { targetOf } from './sweep.js';
import { pause, type Watch } from './watch.js';

export interface UncertainOptions extends Watch {
  /** Draws of the distribution, 100 to 5 000 000; default 65 536. */
  readonly draws?: number;
  /** Same seed, same draws. Default 1. */
  readonly seed?: number;
  /** The output looked at; default the first that is a number. */
  readonly output?: string;
  /** Limits: the chance that the output is at most or at least this. */
  readonly atMost?: unknown;
  readonly atLeast?: unknown;
  /** False leaves out which input matters most, which takes as many draws again for each input (at most 16 384). */
  readonly influence?: boolean;
}

/** How much of the spread of the answer comes from one input: alone (first), and with all it acts through (total). */
export interface Influence {
  readonly input: string;
  readonly first: number;
  readonly total: number;
}

export interface Distribution {
  readonly recipe: string;
  readonly output: string;
  readonly draws: number;
  readonly mean: Quantity | number;
  readonly deviation: Quantity | number;
  /** The value below which `percent` of the draws lie. @throws Refusal outside 0 to 100 */
  percentile(percent: number): Quantity | number;
  /** Chance of meeting the limits given; undefined without one. */
  readonly chance: number | undefined;
  /** Sobol indices, most first; empty when left out. */
  readonly influence: readonly Influence[];
  readonly chart: ChartSpec;
  /** Which input matters most; undefined when left out. */
  readonly tornado: ChartSpec | undefined;
  /** Sorted draws in base units. */
  readonly values: Float64Array;
  toMarkdown(): string;
  toJSON(): Record<string, unknown>;
}

/**
 * What uncertain inputs do to an answer: `uncertain(movementAcross, { width: '640 mm +- 2 mm', from: '8 % .. 11 %', ... })`.
 * At least one input must spread; see {@link spreadOf} for how one is written. Draws are seeded and fill the space evenly;
 * Sobol indices by the estimators of Saltelli (first) and Jansen (total), Saltelli et al. 2010, Table 2.
 * @throws Refusal on wrong inputs, or when an input's spread leaves its limits
 */
export async function uncertain<F extends Fields, O extends Outputs>(
  recipe: Recipe<F, O> | RecipeEntry,
  inputs: Readonly<Record<string, unknown>>,
  options: UncertainOptions = {},
): Promise<Distribution> {
  const r = recipe as unknown as RecipeEntry;
  const draws = options.draws ?? 65_536;
  if (!(Number.isInteger(draws) && draws >= 100 && draws <= 5_000_000))
    throw new Refusal(
      { field: 'draws', says: `got ${shown(options.draws)}, takes a whole number from 100 to 5 000 000` },
      r.name,
    );
  if (options.seed !== undefined && !Number.isInteger(options.seed))
    throw new Refusal({ field: 'seed', says: `got ${shown(options.seed)}, takes a whole number` }, r.name);
  const names = numberOutputs(r.outputs);
  const output = options.output ?? (names[0] as string);
  if (!names.includes(output))
    throw new Refusal(
      { field: 'output', says: `got ${shown(options.output)}, takes one of ${names.join(', ')}` },
      r.name,
    );
  const spreads: Spread[] = [];
  const middle: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(inputs)) {
    const field = r.inputs[name] as Field | undefined;
    const spread = field ? spreadOf(name, field, value) : undefined;
    if (spread) spreads.push(spread);
    else middle[name] = value;
  }
  if (spreads.length === 0)
    throw new Refusal(
      "uncertain: no input spreads; takes one such as '900 mm +- 2 mm', '880 mm .. 920 mm' or normal(...)",
      r.name,
    );
  const base = baseOf(r, middle, spreads);
  const run = runner(r, base, spreads, output, options);
  const d = spreads.length;
  const next = drawer(d, options.seed ?? 1);
  const u = new Float64Array(d);
  const values = (await run(draws, (i) => (next(i, u), u))).sort();
  if (!Number.isFinite(values[0]) || !Number.isFinite(values[draws - 1]))
    throw new Refusal('uncertain: some draws give no finite answer; make the spreads narrower', r.name);
  const influence =
    options.influence === false || d < 2
      ? []
      : await sobol(run, spreads, Math.min(draws, 16_384), options.seed ?? 1);
  const limits = {
    most: options.atMost === undefined ? undefined : targetOf(r, output, options.atMost),
    least: options.atLeast === undefined ? undefined : targetOf(r, output, options.atLeast),
  };
  return makeDistribution(r, output, values, influence, limits);
}

/** Reads the fixed inputs with the middle of each spread in its place, so that all is checked once. */
function baseOf(
  r: RecipeEntry,
  middle: Readonly<Record<string, unknown>>,
  spreads: readonly Spread[],
): Record<string, unknown> {
  const mids: Record<string, unknown> = {};
  const fixed: Record<string, unknown> = { ...middle };
  for (const s of spreads) {
    mids[s.name] = s.quantile(0.5);
    // The example's value stands in for reading; the number itself replaces it below.
    fixed[s.name] = (r.example as Record<string, unknown>)[s.name] ?? (r.inputs[s.name] as Field).default;
    if (fixed[s.name] === undefined || !s.numeric) {
      const f = quantityPart(r.inputs[s.name] as Field);
      if (s.numeric) fixed[s.name] = textOf(f.kind, mids[s.name] as number).replace(/\u202f/g, '');
    }
  }
  return { ...r.read(fixed), ...mids };
}

type Run = (n: number, draw: (i: number) => Float64Array) => Promise<Float64Array>;

function runner(
  r: RecipeEntry,
  base: Record<string, unknown>,
  spreads: readonly Spread[],
  output: string,
  watch: Watch,
): Run {
  const loop = spreads.every((s) => s.numeric) ? loopOf(r, new Set(spreads.map((s) => s.name))) : undefined;
  return async (n, draw) => {
    const values = new Float64Array(n);
    if (loop) {
      const columns = spreads.map(() => new Float64Array(n));
      for (let i = 0; i < n; i++) {
        const u = draw(i);
        for (let k = 0; k < spreads.length; k++)
          (columns[k] as Float64Array)[i] = (spreads[k] as Spread).quantile(u[k] as number) as number;
      }
      const outs = Object.fromEntries(
        numberOutputs(r.outputs).map((name) => [name, name === output ? values : new Float64Array(n)]),
      );
      loop(
        n,
        {
          ...(base as Record<string, number>),
          ...Object.fromEntries(spreads.map((s, k) => [s.name, columns[k] as Float64Array])),
        },
        outs,
      );
      return values;
    }
    const rest = pause(watch, n, 'drawing');
    // The middle was read and checked, and a spread never leaves its field's limits, so a draw needs no check of its own.
    const reckon =
      bareOf(r) ??
      ((given: object) => r.evaluate(given as Record<string, unknown>) as Readonly<Record<string, unknown>>);
    const point = { ...base };
    for (let i = 0; i < n; i++) {
      const u = draw(i);
      for (let k = 0; k < spreads.length; k++)
        point[(spreads[k] as Spread).name] = (spreads[k] as Spread).quantile(u[k] as number);
      values[i] = (reckon(point)[output] as number | undefined) ?? NaN;
      if ((i & 4095) === 4095) await rest(i + 1);
    }
    return values;
  };
}

async function sobol(run: Run, spreads: readonly Spread[], n: number, seed: number): Promise<Influence[]> {
  const d = spreads.length;
  const next = drawer(2 * d, seed + 7919);
  const both = new Float64Array(2 * d);
  const u = new Float64Array(d);
  const take =
    (swap: number) =>
    (i: number): Float64Array => {
      next(i, both);
      for (let k = 0; k < d; k++) u[k] = both[k === swap ? d + k : k] as number;
      return u;
    };
  const a = await run(n, take(-1));
  const b = await run(n, (i) => (next(i, both), both.subarray(d)));
  let mean = 0;
  for (let i = 0; i < n; i++) mean += ((a[i] as number) + (b[i] as number)) / (2 * n);
  let variance = 0;
  for (let i = 0; i < n; i++) variance += ((a[i] as number) - mean) ** 2 + ((b[i] as number) - mean) ** 2;
  variance /= 2 * n;
  const out: Influence[] = [];
  for (let k = 0; k < d; k++) {
    const ab = await run(n, take(k));
    let first = 0;
    let total = 0;
    for (let i = 0; i < n; i++) {
      first += ((b[i] as number) - mean) * ((ab[i] as number) - (a[i] as number));
      total += ((a[i] as number) - (ab[i] as number)) ** 2;
    }
    const share = (x: number): number => (variance > 0 ? Math.min(1, Math.max(0, x / variance)) : 0);
    out.push({ input: (spreads[k] as Spread).name, first: share(first / n), total: share(total / (2 * n)) });
  }
  return out.sort((x, y) => y.total - x.total);
}

function makeDistribution(
  r: RecipeEntry,
  output: string,
  values: Float64Array,
  influence: readonly Influence[],
  limits: { most: number | undefined; least: number | undefined },
): Distribution {
  const o = r.outputs[output] as Output;
  const n = values.length;
  let sum = 0;
  for (const v of values) sum += v;
  const mean = sum / n;
  let square = 0;
  for (const v of values) square += (v - mean) ** 2;
  const deviation = Math.sqrt(square / (n - 1));
  const wrap = (x: number): Quantity | number => o.wrap(x) as Quantity | number;
  // A difference of temperatures is shown without the offset, as a plain number of degrees.
  const at = (p: number): number => between(values, p / 100);
  const { most, least } = limits;
  const chance =
    most === undefined && least === undefined
      ? undefined
      : values.reduce((c, v) => c + (v <= (most ?? Infinity) && v >= (least ?? -Infinity) ? 1 : 0), 0) / n;
  const unit = columnUnit(o.kind, [at(1), at(99)], o.unit);
  const text = (x: number): string => textOf(o.kind, x, unit);
  const lines: [string, string][] = [
    ['5th percentile', text(at(5))],
    ['10th percentile', text(at(10))],
    ['median', text(at(50))],
    ['90th percentile', text(at(90))],
    ['95th percentile', text(at(95))],
    ['mean', text(mean)],
  ];
  if (chance !== undefined)
    lines.push([
      `chance of ${least === undefined ? '' : `at least ${text(least)}`}${least !== undefined && most !== undefined ? ' and ' : ''}${most === undefined ? '' : `at most ${text(most)}`}`,
      `${number(chance * 100, 3)} %`,
    ]);
  const result: Distribution = {
    recipe: r.name,
    output,
    draws: n,
    mean: wrap(mean),
    deviation: o.kind === 'temperature' ? deviation : wrap(deviation),
    percentile(percent) {
      if (!(percent >= 0 && percent <= 100))
        throw new Refusal(`percent: got ${shown(percent)}, takes 0 to 100`);
      return wrap(at(percent));
    },
    chance,
    influence,
    values,
    get chart() {
      const column = inUnit(o.kind, values, unit);
      const rules = [
        { at: between(column, 0.1), label: '10 %' },
        { at: between(column, 0.9), label: '90 %' },
      ];
      return shownChart(
        histogram({
          title: `${r.title}: ${words(output)}`,
          subtitle: `${number(n)} draws`,
          value: { title: o.says.charAt(0).toUpperCase() + o.says.slice(1), unit: axisUnit(unit) },
          values: Array.from(column),
          rules,
        }),
      );
    },
    get tornado() {
      if (influence.length === 0) return undefined;
      return shownChart(
        barChart({
          title: `What matters most to ${words(output)}`,
          subtitle: 'Share of the spread (total Sobol index)',
          of: 'Input',
          value: { title: 'Share', unit: '%' },
          bars: influence.map((x) => ({
            name: words(x.input),
            value: x.total * 100,
            label: x.total < 0.001 ? 'below 0.1 %' : `${number(x.total * 100, 2)} %`,
          })),
        }),
      );
    },
    toMarkdown: () =>
      [
        '| | |',
        '|---|---|',
        ...lines.map(([a, b]) => `| ${a} | ${b} |`),
        ...influence.map(
          (x) => `| share of the spread from ${words(x.input)} | ${number(x.total * 100, 2)} % |`,
        ),
      ].join('\n'),
    toJSON: () => ({
      recipe: r.name,
      output,
      draws: n,
      unit,
      mean: inUnit(o.kind, Float64Array.of(mean), unit)[0],
      percentiles: Object.fromEntries(
        [5, 10, 50, 90, 95].map((p) => [p, inUnit(o.kind, Float64Array.of(at(p)), unit)[0]]),
      ),
      ...(chance === undefined ? {} : { chance }),
      influence,
    }),
  };
  Object.defineProperty(result, Symbol.for('Jupyter.display'), {
    value: async () => {
      const both = result.tornado ? stacked([result.chart, result.tornado]) : result.chart;
      return {
        'text/plain': [
          `${r.title}: ${words(output)}`,
          ...lines.map(([a, b]) => `  ${a}: ${b}`),
          ...influence.map(
            (x) => `  share of the spread from ${words(x.input)}: ${number(x.total * 100, 2)} %`,
          ),
        ].join('\n'),
        'text/markdown': result.toMarkdown(),
        'text/html': `<table>${lines.map(([a, b]) => `<tr><td style="text-align:left">${escapeHtml(a)}</td><td style="text-align:right">${escapeHtml(b)}</td></tr>`).join('')}</table>`,
        'image/svg+xml': await renderSvg(both),
        'application/vnd.vegalite.v5+json': both,
      };
    },
  });
  return result;
}

export type { Kind };
