import { inUnits, unitChange } from '../units/unit-system.js';
import { colours } from './theme.js';
import { wrapText } from './text-width.js';
import { ChartError, type ChartSpec } from './chart-spec.js';

/** What an axis says: `title` in words, `unit` as printed (`mm`, `%`, `°C`); no unit for a count or a ratio. */
export interface Axis {
  readonly title: string;
  readonly unit?: string;
  /** The range drawn, in axis units; without it the data decide. */
  readonly domain?: readonly [number, number];
  /** Whether the range must hold zero. Default false for lines, true for bars. */
  readonly zero?: boolean;
  readonly log?: boolean;
  /** d3 number format of the tick labels, such as `.1f`. */
  readonly format?: string;
}

/** `Width (mm)`: the title an axis prints. */
export function axisTitle(title: string, unit?: string): string {
  return unit === undefined || unit === '' ? title : `${title} (${unit})`;
}

/** The Vega-Lite `title`, `scale` and `axis` of a quantitative channel. */
export function axis(title: string, unit?: string, rest: Omit<Axis, 'title' | 'unit'> = {}): ChartSpec {
  const scale: Record<string, unknown> =
    rest.log === true ? { type: 'log' } : { zero: rest.zero ?? false, nice: rest.domain === undefined };
  if (rest.domain !== undefined) scale['domain'] = [...rest.domain];
  return {
    type: 'quantitative',
    title: axisTitle(title, unit),
    scale,
    ...(rest.format === undefined ? {} : { axis: { format: rest.format } }),
  };
}

/** Values of an axis and its unit in the units a person reads: millimetres become inches where they are set. */
export function shownAxis<A extends Axis>(
  a: A,
): { readonly axis: A; readonly of: (value: number) => number } {
  const change = unitChange(a.unit);
  if (!change) return { axis: a, of: (value) => value };
  const of = (value: number): number => value * change.factor + change.offset;
  const { format: _format, ...rest } = a;
  const domain = a.domain && ([of(a.domain[0]), of(a.domain[1])] as const);
  return { axis: { ...rest, unit: change.unit, ...(domain ? { domain } : {}) } as A, of };
}

/** A title and an optional second line, broken to the chart's width. */
export function heading(title: string | undefined, subtitle: string | undefined, width: number): ChartSpec {
  if (title === undefined) return {};
  return {
    title: {
      // The theme cuts a title line at 560 px, so a wider chart breaks its lines there too.
      text: wrapText(inUnits(title), Math.min(width, 560), 15, true),
      ...(subtitle === undefined ? {} : { subtitle: wrapText(inUnits(subtitle), Math.min(width, 560), 12) }),
    },
  };
}

/** Refuses a list with a gap in it: `field` names it in the error. */
export function finite(field: string, values: readonly number[]): void {
  const at = values.findIndex((v) => typeof v !== 'number' || !Number.isFinite(v));
  if (at >= 0) throw new ChartError(`${field}[${at}]`, `got ${String(values[at])}; takes a finite number`);
}

/** The least and the greatest of some numbers, spread by half a unit each way where they are one; 0 to 1 of none. */
export function extent(values: readonly number[]): [number, number] {
  if (values.length === 0) return [0, 1];
  let low = Infinity;
  let high = -Infinity;
  for (const v of values) {
    if (v < low) low = v;
    if (v > high) high = v;
  }
  return low === high ? [low - 0.5, high + 0.5] : [low, high];
}

/** How many legend entries of these names stand side by side in `width` px. */
export function legendColumns(
  names: readonly string[],
  width: number,
  textWidth: (text: string, size: number) => number,
): number {
  const widest = Math.max(0, ...names.map((n) => textWidth(n, 12))) + 46;
  return Math.max(1, Math.min(names.length, Math.floor(width / widest)));
}

/** A layer of words twice: first as a rim of paper, then as ink, so that lines crossing behind leave them legible. */
export function withHalo(layer: ChartSpec): ChartSpec[] {
  const mark = layer['mark'] as ChartSpec;
  const ground = colours.light.ground;
  return [
    {
      ...layer,
      mark: { ...mark, color: ground, stroke: ground, strokeWidth: 3.5, strokeJoin: 'round', opacity: 0.85 },
    },
    layer,
  ];
}

/** The size and marks every chart with axes carries: `width` px is that of the whole chart, axis labels and all. */
export function frame(width: number, height: number | ChartSpec): ChartSpec {
  return {
    width,
    height,
    autosize: { type: 'fit-x', contains: 'padding' },
    usermeta: { reckoner: { fluid: true } },
  };
}
