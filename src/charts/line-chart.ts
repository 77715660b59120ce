import { axis, extent, finite, frame, withHalo, heading, legendColumns } from './axis.js';
import { colours, dashes, shapes } from './theme.js';
import { placesIn, type MarkPlace } from './label-layout.js';
import { shownLines, type Band, type LineChart, type Mark, type Rule } from './line-chart-data.js';
import { textWidth } from './text-width.js';
import { ChartError, type ChartSpec } from './chart-spec.js';

export type { Band, LineChart, Mark, Rule, Series } from './line-chart-data.js';

/**
 * Lines over a common x. Each line has its own colour, dash and (if points are drawn) point shape; a legend stands below when
 * there are several. Throws {@link ChartError} on lists of unequal length or values that are not finite.
 */
export function lineChart(metric: LineChart): ChartSpec {
  check(metric);
  const chart = shownLines(metric);
  const width = chart.width ?? 620;
  const height = chart.height ?? 320;
  const xs = chart.x.values;
  const domain = chart.x.domain ?? extent(xs);
  const x = { field: 'x', ...axis(chart.x.title, chart.x.unit, { ...chart.x, domain }) };
  const y = { field: 'y', ...axis(chart.y.title, chart.y.unit, chart.y) };
  const place = placesIn(chart, domain[0], domain[1], width - 60, height);
  return {
    ...heading(chart.title, chart.subtitle, width),
    ...frame(width, height),
    layer: [
      ...(chart.bands ?? []).map((band) => bandLayer(band, xs, x, y)),
      ...seriesLayers(chart, x, y, width),
      ...(chart.rules ?? []).flatMap((rule) => ruleLayers(rule, x, y)),
      ...(chart.marks ?? []).flatMap((mark) => markLayers(mark, x, y, place(mark))),
    ],
    resolve: { scale: { strokeDash: 'shared' } },
  };
}

/** The lines, and the points on them where points are drawn. */
function seriesLayers(chart: LineChart, x: ChartSpec, y: ChartSpec, width: number): ChartSpec[] {
  const xs = chart.x.values;
  const rows = chart.series.flatMap((s) =>
    xs.map((at, i) => ({ x: at, y: s.values[i] ?? null, series: s.name })),
  );
  if (rows.length === 0) return [];
  const names = chart.series.map((s) => s.name);
  const points = chart.points ?? xs.length <= 13;
  const several = names.length > 1;
  const legend = several ? legendOf(names, width, points) : null;
  const bySeries = (range: readonly unknown[]): ChartSpec => ({
    field: 'series',
    type: 'nominal',
    scale: { domain: names, range: cycle(range, names.length) },
  });
  const colour = bySeries(colours.light.series);
  const tooltip = [
    { field: 'series', type: 'nominal', title: ' ' },
    { ...x, scale: undefined, axis: undefined },
    { ...y, scale: undefined, axis: undefined },
  ].slice(several ? 0 : 1);
  const line: ChartSpec = {
    data: { values: rows },
    mark: { type: 'line', interpolate: chart.interpolate ?? 'monotone', clip: true, tooltip: true },
    encoding: { x, y, color: { ...colour, legend }, strokeDash: { ...bySeries(dashes), legend }, tooltip },
  };
  if (!points) return [line];
  const shape = several ? { shape: { ...bySeries(shapes), legend: null } } : {};
  return [
    line,
    {
      data: { values: rows },
      mark: { type: 'point', filled: true, size: 50, tooltip: true },
      encoding: { x, y, color: { ...colour, legend: null }, ...shape, tooltip },
    },
  ];
}

function legendOf(names: readonly string[], width: number, points: boolean): ChartSpec {
  return {
    title: null,
    columns: legendColumns(names, width, textWidth),
    // A point stands for its line as it is on it: the line's own stroke round it would make a blot of it.
    ...(points
      ? { symbolSize: 70, encoding: { symbols: { strokeWidth: { value: 0 } } } }
      : { symbolType: 'stroke', symbolSize: 500 }),
  };
}

function bandLayer(band: Band, xs: readonly number[], x: ChartSpec, y: ChartSpec): ChartSpec {
  return {
    data: { values: xs.map((at, i) => ({ x: at, y: band.low[i], high: band.high[i], band: band.name })) },
    mark: { type: 'area', clip: true, color: colours.light.series[6], opacity: 0.22 },
    encoding: { x, y, y2: { field: 'high' }, tooltip: [{ field: 'band', type: 'nominal', title: ' ' }] },
  };
}

function ruleLayers(rule: Rule, x: ChartSpec, y: ChartSpec): ChartSpec[] {
  const data = { values: [{ x: rule.x, y: rule.y, label: rule.label }] };
  const along = rule.x === undefined ? { y } : { x };
  const place = rule.x === undefined ? { x: { value: 6 }, y } : { x, y: { value: 6 } };
  const text =
    rule.x === undefined
      ? { align: 'left', baseline: 'bottom', dy: -3 }
      : { align: 'right', baseline: 'bottom', angle: -90, dy: -4, limit: 300 };
  return [
    { data, mark: { type: 'rule', strokeDash: [5, 4], color: colours.light.soft }, encoding: along },
    ...withHalo({
      data,
      mark: { type: 'text', ...text, color: colours.light.ink },
      encoding: { ...place, text: { field: 'label' } },
    }),
  ];
}

function markLayers(mark: Mark, x: ChartSpec, y: ChartSpec, place: MarkPlace): ChartSpec[] {
  const data = { values: [mark] };
  const c = colours.light;
  const layers: ChartSpec[] = [
    {
      data,
      mark: {
        type: 'point',
        filled: true,
        size: 120,
        color: c.ink,
        stroke: c.ground,
        strokeWidth: 1.5,
        opacity: 1,
      },
      encoding: { x, y },
    },
  ];
  if (mark.label !== undefined)
    layers.push(
      ...withHalo({
        data,
        mark: {
          type: 'text',
          align: place.right ? 'left' : 'right',
          baseline: place.above ? 'bottom' : 'top',
          dx: place.right ? 8 : -8,
          dy: place.above ? -7 : 7,
          fontWeight: 'bold',
          color: c.ink,
        },
        encoding: { x, y, text: { field: 'label' } },
      }),
    );
  return layers;
}

function check(chart: LineChart): void {
  finite('x.values', chart.x.values);
  for (const [i, s] of chart.series.entries()) {
    equalLength(`series[${i}].values`, s.values.length, chart.x.values.length);
    finite(
      `series[${i}].values`,
      s.values.map((v) => v ?? 0),
    );
  }
  for (const [i, b] of (chart.bands ?? []).entries())
    for (const edge of ['low', 'high'] as const) {
      equalLength(`bands[${i}].${edge}`, b[edge].length, chart.x.values.length);
      finite(`bands[${i}].${edge}`, b[edge]);
    }
  for (const [i, m] of (chart.marks ?? []).entries()) finite(`marks[${i}] (x, y)`, [m.x, m.y]);
  for (const [i, r] of (chart.rules ?? []).entries()) {
    if ((r.x === undefined) === (r.y === undefined))
      throw new ChartError(`rules[${i}]`, 'takes either x or y');
    finite(`rules[${i}]`, [r.x ?? 0, r.y ?? 0]);
  }
}

function equalLength(field: string, got: number, wanted: number): void {
  if (got !== wanted)
    throw new ChartError(field, `has ${got} values where x.values has ${wanted}; give one for each x`);
}

function cycle<T>(list: readonly T[], count: number): T[] {
  return Array.from({ length: count }, (_, i) => list[i % list.length] as T);
}
