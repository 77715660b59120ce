import { axis, extent, finite, frame, haloed, heading, legendColumns, type Axis } from './axis.js';
import { colours, dashes, shapes } from './theme.js';
import { placesIn, type MarkPlace } from './label-layout.js';
import { textWidth } from './text-width.js';
import { ChartError, type ChartSpec } from './chart-spec.js';

/** One line: as many values as `x.values`, in the unit of `y`; null leaves a gap. */
export interface Series {
  readonly name: string;
  readonly values: readonly (number | null)[];
}

/** A point worth naming, in axis units, with its label beside it. */
export interface Mark {
  readonly x: number;
  readonly y: number;
  readonly label?: string;
}

/** A shaded range along x: `low` and `high` as many as `x.values`. */
export interface Band {
  readonly name: string;
  readonly low: readonly number[];
  readonly high: readonly number[];
}

/** A straight line across the chart at one x or one y, such as a limit. */
export interface Rule {
  readonly x?: number;
  readonly y?: number;
  readonly label: string;
}

export interface LineChart {
  readonly title?: string;
  readonly subtitle?: string;
  readonly x: Axis & { readonly values: readonly number[] };
  readonly y: Axis;
  readonly series: readonly Series[];
  readonly marks?: readonly Mark[];
  readonly bands?: readonly Band[];
  readonly rules?: readonly Rule[];
  /** Draw the given points on the lines. Default: when there are 13 points or fewer. */
  readonly points?: boolean;
  /** `monotone` (default, smooth and never overshooting), `linear`, or `step-after` for things that change in steps. */
  readonly interpolate?: 'monotone' | 'linear' | 'step-after';
  /** px; of the whole chart, default 620, and of the plot, default 320 */
  readonly width?: number;
  readonly height?: number;
}

/**
 * Lines over a common x. Each line has its own colour, dash and (if points are drawn) point shape; a legend stands below when
 * there are several. Throws {@link ChartError} on lists of unequal length or values that are not finite.
 */
export function lineChart(chart: LineChart): ChartSpec {
  check(chart);
  const width = chart.width ?? 620;
  const height = chart.height ?? 320;
  const xs = chart.x.values;
  const x = {
    field: 'x',
    ...axis(chart.x.title, chart.x.unit, { ...chart.x, domain: chart.x.domain ?? extent(xs) }),
  };
  const y = { field: 'y', ...axis(chart.y.title, chart.y.unit, chart.y) };
  const names = chart.series.map((s) => s.name);
  const points = chart.points ?? (xs.length <= 13 && xs.length > 0);
  const several = names.length > 1;
  const legend = several
    ? {
        title: null,
        columns: legendColumns(names, width, textWidth),
        // A point stands for its line as it is on it: the line's own stroke round it would make a blot of it.
        ...(points
          ? { symbolSize: 70, encoding: { symbols: { strokeWidth: { value: 0 } } } }
          : { symbolType: 'stroke', symbolSize: 500 }),
      }
    : null;
  const order = { domain: names };
  const sign = {
    color: {
      field: 'series',
      type: 'nominal',
      scale: { ...order, range: cycle(colours.light.series, names.length) },
      legend,
    },
    strokeDash: {
      field: 'series',
      type: 'nominal',
      scale: { ...order, range: cycle(dashes, names.length) },
      legend,
    },
  };
  const rows = chart.series.flatMap((s) =>
    xs.map((at, i) => ({ x: at, y: s.values[i] ?? null, series: s.name })),
  );
  const layer: ChartSpec[] = [];
  for (const band of chart.bands ?? []) layer.push(bandLayer(band, xs, x, y));
  if (rows.length > 0) {
    const tooltip = [
      { field: 'series', type: 'nominal', title: ' ' },
      { ...x, scale: undefined, axis: undefined },
      { ...y, scale: undefined, axis: undefined },
    ].slice(several ? 0 : 1);
    layer.push({
      data: { values: rows },
      mark: { type: 'line', interpolate: chart.interpolate ?? 'monotone', clip: true, tooltip: true },
      encoding: { x, y, ...sign, tooltip },
    });
    if (points)
      layer.push({
        data: { values: rows },
        mark: { type: 'point', filled: true, size: 50, tooltip: true },
        encoding: {
          x,
          y,
          color: { ...sign.color, legend: null },
          ...(several
            ? {
                shape: {
                  field: 'series',
                  type: 'nominal',
                  scale: { ...order, range: cycle(shapes, names.length) },
                  legend: null,
                },
              }
            : {}),
          tooltip,
        },
      });
  }
  const [from, to] = chart.x.domain ?? extent(xs);
  for (const rule of chart.rules ?? []) layer.push(...ruleLayers(rule, x, y));
  const place = placesIn(chart, from, to, width - 60, height);
  for (const mark of chart.marks ?? []) layer.push(...markLayers(mark, x, y, place(mark)));
  return {
    ...heading(chart.title, chart.subtitle, width),
    ...frame(width, height),
    layer,
    resolve: { scale: { strokeDash: 'shared' } },
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
    ...haloed({
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
      ...haloed({
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
