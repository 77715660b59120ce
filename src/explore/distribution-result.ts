import { barChart, histogram } from '../charts/bar-chart.js';
import { renderSvg } from '../charts/svg.js';
import { displayableChart, stacked } from '../charts/chart-display.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import { number } from '../units/format-quantity.js';
import { Quantity } from '../units/quantity.js';
import { InputError, inspectValue } from '../units/input-error.js';
import { escapeHtml, words } from '../engine/result-display.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import type { Output } from '../engine/output.js';
import { axisUnit, columnUnit, inUnit, textOf } from './frame-columns.js';
import type { Sensitivity } from './sensitivity.js';
import { between } from './distributions.js';

export interface Distribution {
  readonly recipe: string;
  readonly output: string;
  readonly samples: number;
  readonly mean: Quantity | number;
  readonly deviation: Quantity | number;
  /** The value below which `percent` of the draws lie. @throws InputError outside 0 to 100 */
  percentile(percent: number): Quantity | number;
  /** Chance of meeting the limits given; undefined without one. */
  readonly chance: number | undefined;
  /** Sobol indices, most first; empty when left out. */
  readonly sensitivity: readonly Sensitivity[];
  readonly chart: ChartSpec;
  /** Which input matters most; undefined when left out. */
  readonly tornado: ChartSpec | undefined;
  /** Sorted draws in base units. */
  readonly values: Float64Array;
  toMarkdown(): string;
  toJSON(): Record<string, unknown>;
}

/** What sorted draws tell; `limits` in base units. */
export function makeDistribution(
  r: AnyRecipe,
  output: string,
  values: Float64Array,
  sensitivity: readonly Sensitivity[],
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
    samples: n,
    mean: wrap(mean),
    deviation: o.kind === 'temperature' ? deviation : wrap(deviation),
    percentile(percent) {
      if (!(percent >= 0 && percent <= 100))
        throw new InputError(`percent: got ${inspectValue(percent)}, takes 0 to 100`);
      return wrap(at(percent));
    },
    chance,
    sensitivity: sensitivity,
    values,
    get chart() {
      const column = inUnit(o.kind, values, unit);
      const rules = [
        { at: between(column, 0.1), label: '10 %' },
        { at: between(column, 0.9), label: '90 %' },
      ];
      return displayableChart(
        histogram({
          title: `${r.title}: ${words(output)}`,
          subtitle: `${number(n)} draws`,
          value: { title: o.label.charAt(0).toUpperCase() + o.label.slice(1), unit: axisUnit(unit) },
          values: Array.from(column),
          rules,
        }),
      );
    },
    get tornado() {
      if (sensitivity.length === 0) return undefined;
      return displayableChart(
        barChart({
          title: `What matters most to ${words(output)}`,
          subtitle: 'Share of the spread (total Sobol index)',
          of: 'Input',
          value: { title: 'Share', unit: '%' },
          bars: sensitivity.map((x) => ({
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
        ...sensitivity.map(
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
      sensitivity,
    }),
  };
  Object.defineProperty(result, Symbol.for('Jupyter.display'), {
    value: async () => {
      const both = result.tornado ? stacked([result.chart, result.tornado]) : result.chart;
      return {
        'text/plain': [
          `${r.title}: ${words(output)}`,
          ...lines.map(([a, b]) => `  ${a}: ${b}`),
          ...sensitivity.map(
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
