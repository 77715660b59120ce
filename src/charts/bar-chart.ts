import { inUnits } from '../units/unit-system.js';
import { axis, axisTitle, finite, frame, withHalo, heading, shownAxis, type Axis } from './axis.js';
import { colours } from './theme.js';
import { textWidth } from './text-width.js';
import type { ChartSpec } from './chart-spec.js';

/** One bar. `low` and `high` draw a spread on it; `label` is what stands at its end (default: nothing). */
export interface Bar {
  readonly name: string;
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  readonly label?: string;
  /** Picks this bar out with a darker edge, such as the one that governs. */
  readonly chosen?: boolean;
}

export interface BarChart {
  readonly title?: string;
  readonly subtitle?: string;
  /** What the bars are: `Cause`, `Species`. Not printed when the names speak for themselves: give ''. */
  readonly of: string;
  readonly value: Axis;
  readonly bars: readonly Bar[];
  /** px; default 620. The height follows the number of bars. */
  readonly width?: number;
}

/** Horizontal bars in the order given, long names in full, values written at the ends. Throws ChartError on values that are not finite. */
export function barChart(metric: BarChart): ChartSpec {
  const chart = shownBars(metric);
  for (const key of ['value', 'low', 'high'] as const)
    finite(
      `bars.${key}`,
      chart.bars.map((b) => b[key] ?? 0),
    );
  const width = chart.width ?? 620;
  const c = colours.light;
  const rows = chart.bars.map((b) => ({ ...b, label: b.label ?? '', chosen: b.chosen ?? false }));
  const domain = chart.value.domain ?? barDomain(chart.bars, width);
  const x = { field: 'value', ...axis(chart.value.title, chart.value.unit, { ...chart.value, domain }) };
  const y = {
    field: 'name',
    type: 'nominal',
    sort: null,
    title: chart.of === '' ? null : chart.of,
    axis: { labelLimit: 300, grid: false },
  };
  const layer: ChartSpec[] = [
    {
      mark: { type: 'bar', height: { band: 0.68 }, color: c.series[6], cornerRadiusEnd: 2 },
      encoding: {
        x,
        y,
        strokeWidth: { condition: { test: 'datum.chosen', value: 2.5 }, value: 0.5 },
        stroke: { value: c.ink },
        tooltip: [
          { field: 'name', type: 'nominal', title: chart.of || ' ' },
          { field: 'value', type: 'quantitative', title: axisTitle(chart.value.title, chart.value.unit) },
        ],
      },
    },
  ];
  if (chart.bars.some((b) => b.low !== undefined && b.high !== undefined))
    layer.push({
      mark: { type: 'rule', color: c.ink, strokeWidth: 2 },
      encoding: { x: { ...x, field: 'low' }, x2: { field: 'high' }, y },
    });
  if (rows.some((r) => r.label !== ''))
    layer.push({
      mark: { type: 'text', align: 'left', dx: 6, color: c.ink },
      transform: [
        { calculate: 'isValid(datum.high) ? max(datum.value, datum.high) : max(datum.value, 0)', as: 'end' },
      ],
      encoding: { x: { ...x, field: 'end' }, y, text: { field: 'label' } },
    });
  return {
    ...heading(chart.title, chart.subtitle, width),
    ...frame(width, { step: 28 }),
    data: { values: rows },
    layer,
  };
}

function shownBars(chart: BarChart): BarChart {
  const { axis: value, of } = shownAxis(chart.value);
  const end = (v: number | undefined, name: 'low' | 'high') => (v === undefined ? {} : { [name]: of(v) });
  return {
    ...chart,
    value,
    bars: chart.bars.map((b) => ({
      ...b,
      name: inUnits(b.name),
      value: of(b.value),
      ...end(b.low, 'low'),
      ...end(b.high, 'high'),
      ...(b.label === undefined ? {} : { label: inUnits(b.label) }),
    })),
  };
}

function shownHistogram(chart: Histogram): Histogram {
  const { axis: value, of } = shownAxis(chart.value);
  return {
    ...chart,
    value,
    values: chart.values.map(of),
    ...(chart.rules ? { rules: chart.rules.map((r) => ({ at: of(r.at), label: inUnits(r.label) })) } : {}),
  };
}

/** A little longer than the data, so that the label at the end of the longest bar fits. */
function barDomain(bars: readonly Bar[], width: number): [number, number] {
  const top = Math.max(0, ...bars.map((b) => Math.max(b.value, b.high ?? b.value)));
  const low = Math.min(0, ...bars.map((b) => Math.min(b.value, b.low ?? b.value)));
  const label = Math.max(0, ...bars.map((b) => textWidth(b.label ?? '', 12))) + 10;
  const names = Math.max(0, ...bars.map((b) => textWidth(b.name, 12)));
  const share = Math.min(0.6, label / Math.max(120, width - names - 40));
  const span = top - low || 1;
  return [low < 0 ? low - span * 0.04 : 0, top > 0 ? top + (span * share) / (1 - share) : 0];
}

export interface Histogram {
  readonly title?: string;
  readonly subtitle?: string;
  readonly value: Axis;
  readonly values: readonly number[];
  /** Lines to draw across, such as the 10th and 90th percentile. */
  readonly rules?: readonly { readonly at: number; readonly label: string }[];
  readonly bins?: number;
  readonly width?: number;
  readonly height?: number;
}

/** How often each size came up: values are counted in about `bins` (30) equal steps; the y axis is the share of all, in percent. */
export function histogram(metric: Histogram): ChartSpec {
  const chart = shownHistogram(metric);
  finite('values', chart.values);
  const width = chart.width ?? 620;
  const bins = Math.max(1, Math.min(200, Math.round(chart.bins ?? 30)));
  const low = chart.values.reduce((a, b) => Math.min(a, b), Infinity);
  const high = chart.values.reduce((a, b) => Math.max(a, b), -Infinity);
  const step = (high - low || 1) / bins;
  const counts = new Array<number>(bins).fill(0);
  for (const v of chart.values) {
    const at = Math.min(bins - 1, Math.floor((v - low) / step));
    counts[at] = (counts[at] ?? 0) + 1;
  }
  const rows =
    chart.values.length === 0
      ? []
      : counts.map((n, i) => ({
          from: low + i * step,
          to: low + (i + 1) * step,
          share: (100 * n) / chart.values.length,
        }));
  const c = colours.light;
  const x = { ...axis(chart.value.title, chart.value.unit, chart.value) };
  const rules = (chart.rules ?? []).map((r) => ({ x: r.at, label: r.label }));
  finite(
    'rules',
    rules.map((r) => r.x),
  );
  return {
    ...heading(chart.title, chart.subtitle, width),
    ...frame(width, chart.height ?? 260),
    layer: [
      {
        data: { values: rows },
        mark: { type: 'rect', color: c.series[6], stroke: c.ground, strokeWidth: 0.5 },
        encoding: {
          x: { field: 'from', ...x },
          x2: { field: 'to' },
          y: { field: 'share', ...axis('Share of runs', '%', { zero: true }) },
          y2: { datum: 0 },
        },
      },
      {
        data: { values: rules },
        mark: { type: 'rule', strokeDash: [5, 4], color: c.ink },
        encoding: { x: { field: 'x', ...x } },
      },
      ...withHalo({
        data: { values: rules },
        mark: { type: 'text', angle: -90, align: 'right', baseline: 'bottom', dy: -4, color: c.ink },
        encoding: { x: { field: 'x', ...x }, y: { value: 6 }, text: { field: 'label' } },
      }),
    ],
  };
}
