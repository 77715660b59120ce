// What a picture's specification draws, read back for tests: outlines and rectangles in the picture's own unit, and words.
type Point = readonly [number, number];
interface Layer {
  readonly mark?: { readonly type?: string };
  readonly data?: { readonly values?: readonly Record<string, unknown>[] };
  readonly encoding?: { readonly x?: { readonly scale?: { readonly domain?: readonly [number, number] } } };
  readonly layer?: readonly Layer[];
  readonly vconcat?: readonly Layer[];
}

function layers(spec: unknown): readonly Layer[] {
  const { layer = [], vconcat = [] } = spec as Layer;
  return [...layer, ...vconcat].flatMap((l) => [l, ...layers(l)]);
}
const rows = (l: Layer): readonly Record<string, unknown>[] => l.data?.values ?? [];

/** Points of every polygon, polyline and arc, in the order they are drawn. */
export const outlines = (spec: unknown): Point[][] =>
  layers(spec)
    .filter((l) => l.mark?.type === 'line')
    .map((l) => rows(l).map((r): Point => [r['x'] as number, r['y'] as number]));

/** Every rectangle as [left, bottom, right, top]. */
export const rectangles = (spec: unknown): [number, number, number, number][] =>
  layers(spec)
    .filter((l) => l.mark?.type === 'rect')
    .flatMap((l) =>
      rows(l).map((r): [number, number, number, number] => [
        r['x'] as number,
        r['y'] as number,
        r['x2'] as number,
        r['y2'] as number,
      ]),
    );

/** px for one unit of a picture. */
export function scaleOf(spec: unknown): number {
  const domain = layers(spec)
    .map((l) => l.encoding?.x?.scale?.domain)
    .find((x) => x !== undefined) as readonly [number, number];
  return (spec as { width: number }).width / (domain[1] - domain[0]);
}

/** Whether some outline has just these points, to a millionth. */
export const hasOutline = (spec: unknown, points: readonly Point[]): boolean =>
  outlines(spec).some(
    (o) =>
      o.length === points.length &&
      o.every(([x, y], i) => {
        const [px, py] = points[i] as Point;
        return Math.abs(x - px) < 1e-6 && Math.abs(y - py) < 1e-6;
      }),
  );

/** Whether some rectangle has just these edges, to a millionth. */
export const hasRectangle = (spec: unknown, edges: readonly number[]): boolean =>
  rectangles(spec).some((r) => r.every((x, i) => Math.abs(x - (edges[i] as number)) < 1e-6));

/** Everything a chart holds, as text: for the words in it. */
export const text = (spec: unknown): string => JSON.stringify(spec);

/** Numbers of the lines of a chart, series by series, point by point. */
export function lines(spec: unknown): Map<string, Point[]> {
  const out = new Map<string, Point[]>();
  for (const l of layers(spec).filter((x) => x.mark?.type === 'line'))
    for (const r of rows(l)) {
      const name = String(r['series']);
      out.set(name, [...(out.get(name) ?? []), [r['x'] as number, r['y'] as number]]);
    }
  return out;
}

/** Upper edge of the shaded bands of a chart, point by point. */
export const areas = (spec: unknown): Point[] =>
  layers(spec)
    .filter((l) => l.mark?.type === 'area')
    .flatMap((l) => rows(l).map((r): Point => [r['x'] as number, r['high'] as number]));

/** Rows of data of every layer of a sort: what bars, marks, rules and words are drawn from. */
export const dataOf = (spec: unknown, type: string): Record<string, unknown>[] => [
  ...((spec as Layer).data?.values ?? []),
  ...layers(spec)
    .filter((l) => l.mark?.type === type)
    .flatMap(rows),
];
