// What a chart draws, taken out of its specification: the lines' points, the band, the marks and the rules.
import type { ChartSpec } from '../../src/charts/chart-spec.js';

interface Layer {
  readonly mark: { readonly type: string };
  readonly data?: { readonly values: readonly Record<string, unknown>[] };
  readonly encoding: Readonly<Record<string, { readonly title?: string }>>;
}
const layersOf = (chart: ChartSpec | undefined): readonly Layer[] =>
  (chart as unknown as { layer: readonly Layer[] }).layer;
const rowsOf = (layer: Layer | undefined): readonly Record<string, unknown>[] => layer?.data?.values ?? [];
const typed = (chart: ChartSpec | undefined, type: string): readonly Layer[] =>
  layersOf(chart).filter((l) => l.mark.type === type);

/** Points of the line called `name`, or of the only line. */
export const pointsOf = (chart: ChartSpec | undefined, name?: string): [number, number][] =>
  rowsOf(typed(chart, 'line')[0])
    .filter((r) => name === undefined || r['series'] === name)
    .map((r) => [r['x'] as number, r['y'] as number]);
export const linesOf = (chart: ChartSpec | undefined): string[] => [
  ...new Set(rowsOf(typed(chart, 'line')[0]).map((r) => r['series'] as string)),
];
export const bandOf = (chart: ChartSpec | undefined): [number, number, number][] =>
  rowsOf(typed(chart, 'area')[0]).map((r) => [r['x'] as number, r['y'] as number, r['high'] as number]);
export const marksOf = (chart: ChartSpec | undefined): { x: number; y: number; label: string }[] =>
  typed(chart, 'point').flatMap((l) => rowsOf(l) as unknown as { x: number; y: number; label: string }[]);
export const rulesOf = (chart: ChartSpec | undefined): { y: number; label: string }[] =>
  typed(chart, 'rule').flatMap((l) => rowsOf(l) as unknown as { y: number; label: string }[]);
export const titlesOf = (chart: ChartSpec | undefined): (string | undefined)[] =>
  ['x', 'y'].map((a) => layersOf(chart)[0]?.encoding[a]?.title);
export const titleOf = (chart: ChartSpec | undefined): string =>
  [(chart as unknown as { title: { text: string | string[] } }).title.text].flat().join(' ');

export interface BarRow {
  readonly name: string;
  readonly value: number;
  readonly label: string;
  readonly chosen: boolean;
}
export const barsOf = (chart: ChartSpec | undefined): readonly BarRow[] =>
  (chart as unknown as { data: { values: BarRow[] } }).data.values;
export const barTitle = (chart: ChartSpec | undefined): string | undefined =>
  layersOf(chart)[0]?.encoding['x']?.title;
