import { barChart, histogram } from '../charts/bar-chart.js';
import { displayableChart, stacked } from '../charts/chart-display.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import { number } from '../units/format-quantity.js';
import type { Quantity } from '../units/quantity.js';
import { InputError, inspectValue } from '../units/input-error.js';
import { escapeHtml, words } from '../engine/result-display.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import type { Output } from '../engine/output.js';
import { capitalised } from '../units/capitalised.js';
import { withDisplay } from './display.js';
import { axisUnit, columnUnit, inUnit, textOf } from './frame-columns.js';
import type { Sensitivity } from './sensitivity.js';
import { between, type InputDistribution } from './distributions.js';

export interface Distribution {
  readonly recipe: string;
  readonly output: string;
  readonly samples: number;
  readonly mean: Quantity | number;
  readonly deviation: Quantity | number;
  /** The value below which `percent` of the samples lie. @throws InputError outside 0 to 100 */
  percentile(percent: number): Quantity | number;
  /** Chance of meeting the limits given; undefined without one. */
  readonly chance: number | undefined;
  /** Sobol indices, most first; empty when left out. */
  readonly sensitivity: readonly Sensitivity[];
  readonly chart: ChartSpec;
  /** Which input matters most; undefined when left out. */
  readonly tornado: ChartSpec | undefined;
  /** Sorted samples in base units. */
  readonly values: Float64Array;
  toMarkdown(): string;
  toJSON(): Record<string, unknown>;
}

/** What a distribution is made from: sorted samples, and limits in base units. */
export interface Sampled {
  readonly recipe: AnyRecipe;
  readonly output: string;
  readonly values: Float64Array;
  readonly sensitivity: readonly Sensitivity[];
  readonly limits: { readonly most: number | undefined; readonly least: number | undefined };
  readonly spreads: readonly InputDistribution[];
}

export function makeDistribution(sampled: Sampled): Distribution {
  const { recipe: r, output, values, sensitivity } = sampled;
  const o = r.outputs[output] as Output;
  const { mean, deviation } = momentsOf(values);
  const wrap = (x: number): Quantity | number => o.wrap(x) as Quantity | number;
  const chance = chanceOf(sampled);
  const unit = columnUnit(o.kind, [between(values, 0.01), between(values, 0.99)], o.unit);
  const lines = linesOf(sampled, unit, mean, chance);
  const inShown = (x: number): number => inUnit(o.kind, Float64Array.of(x), unit)[0] as number;
  const result: Distribution = {
    recipe: r.name,
    output,
    samples: values.length,
    mean: wrap(mean),
    // A difference of temperatures is shown without the offset, as a plain number of degrees.
    deviation: o.kind === 'temperature' ? deviation : wrap(deviation),
    percentile(percent) {
      if (!(percent >= 0 && percent <= 100))
        throw new InputError(`percent: got ${inspectValue(percent)}, takes 0 to 100`);
      return wrap(between(values, percent / 100));
    },
    chance,
    sensitivity,
    values,
    get chart() {
      return displayableChart(histogramOf(sampled, o, unit));
    },
    get tornado() {
      return sensitivity.length === 0 ? undefined : displayableChart(tornadoOf(r, output, sensitivity));
    },
    toMarkdown: () => ['| | |', '|---|---|', ...lines.map(([a, b]) => `| ${a} | ${b} |`)].join('\n'),
    toJSON: () => ({
      recipe: r.name,
      output,
      samples: values.length,
      unit,
      mean: inShown(mean),
      percentiles: Object.fromEntries([5, 10, 50, 90, 95].map((p) => [p, inShown(between(values, p / 100))])),
      ...(chance === undefined ? {} : { chance }),
      sensitivity,
    }),
  };
  return withDisplay(
    result,
    () => ({
      'text/plain': [`${r.title}: ${words(output)}`, ...lines.map(([a, b]) => `  ${a}: ${b}`)].join('\n'),
      'text/markdown': result.toMarkdown(),
      'text/html': htmlOf(lines),
    }),
    () => (result.tornado ? stacked([result.chart, result.tornado]) : result.chart),
  );
}

function momentsOf(values: Float64Array): { mean: number; deviation: number } {
  const n = values.length;
  let sum = 0;
  for (const v of values) sum += v;
  const mean = sum / n;
  let square = 0;
  for (const v of values) square += (v - mean) ** 2;
  return { mean, deviation: Math.sqrt(square / (n - 1)) };
}

function chanceOf({ values, limits: { most, least } }: Sampled): number | undefined {
  if (most === undefined && least === undefined) return undefined;
  const [low, high] = [least ?? -Infinity, most ?? Infinity];
  return values.reduce((count, v) => count + (v <= high && v >= low ? 1 : 0), 0) / values.length;
}

type Line = readonly [label: string, value: string];

function linesOf(sampled: Sampled, unit: string, mean: number, chance: number | undefined): Line[] {
  const { recipe: r, output, values, sensitivity, limits, spreads } = sampled;
  const text = (x: number): string => textOf((r.outputs[output] as Output).kind, x, unit);
  const percentile = (label: string, share: number): Line => [label, text(between(values, share))];
  const wanted = [
    ...(limits.least === undefined ? [] : [`at least ${text(limits.least)}`]),
    ...(limits.most === undefined ? [] : [`at most ${text(limits.most)}`]),
  ].join(' and ');
  return [
    percentile('5th percentile', 0.05),
    percentile('10th percentile', 0.1),
    percentile('median', 0.5),
    percentile('90th percentile', 0.9),
    percentile('95th percentile', 0.95),
    ['mean', text(mean)],
    ...(chance === undefined ? [] : [[`chance of ${wanted}`, `${number(chance * 100, 3)} %`] as const]),
    ...sensitivity.map((x): Line => [
      `share of the spread that ${factorWords(r, x.input)} causes`,
      `${number(x.total * 100, 2)} %`,
    ]),
    ...spreads.map((s): Line => [`taken of ${labelOf(r, s.name)}`, s.label]),
  ];
}

/** An input by its label; a part of one, such as a width in a table, by its name. */
const labelOf = (r: AnyRecipe, input: string): string => r.inputs[input]?.label ?? words(input);

/** `leftWidth + rightWidth`: left width and right width together. */
function factorWords(r: AnyRecipe, input: string): string {
  const names = input.split(' + ').map((name) => labelOf(r, name));
  return names.length === 1 ? labelOf(r, input) : `${names.join(' and ')} together`;
}

const htmlOf = (lines: readonly Line[]): string =>
  `<table>${lines
    .map(
      ([a, b]) =>
        `<tr><td style="text-align:left">${escapeHtml(a)}</td><td style="text-align:right">${escapeHtml(b)}</td></tr>`,
    )
    .join('')}</table>`;

function histogramOf({ recipe: r, output, values }: Sampled, o: Output, unit: string): ChartSpec {
  const column = inUnit(o.kind, values, unit);
  return histogram({
    title: `${r.title}: ${words(output)}`,
    subtitle: `${number(values.length)} samples`,
    value: { title: capitalised(o.label), unit: axisUnit(unit) },
    values: Array.from(column),
    rules: [
      { at: between(column, 0.1), label: '10 %' },
      { at: between(column, 0.9), label: '90 %' },
    ],
  });
}

/** The finding: which input matters most. */
function mostOf(r: AnyRecipe, output: string, sensitivity: readonly Sensitivity[]): string {
  const [first, ...rest] = sensitivity;
  const to = (r.outputs[output] as Output).label;
  if (!first) return `What matters most to the ${to}`;
  const most = rest.reduce((a, b) => (b.total > a.total ? b : a), first);
  return `${capitalised(factorWords(r, most.input))} matters most to the ${to}`;
}

function tornadoOf(r: AnyRecipe, output: string, sensitivity: readonly Sensitivity[]): ChartSpec {
  return barChart({
    title: mostOf(r, output, sensitivity),
    subtitle: 'Share of the spread it causes, with its part in what inputs do together (total Sobol index)',
    of: 'Input',
    value: { title: 'Share of the spread', unit: '%' },
    bars: sensitivity.map((x) => ({
      name: factorWords(r, x.input),
      value: x.total * 100,
      label: x.total < 0.001 ? 'below 0.1 %' : `${number(x.total * 100, 2)} %`,
    })),
  });
}
