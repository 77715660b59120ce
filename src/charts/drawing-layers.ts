import { withHalo } from './axis.js';
import type { Channels, DrawingFrame, Fill, Of, Place, Shape } from './shape.js';
import { arrowHeads, dimensions } from './drawing-dimensions.js';
import { colours } from './theme.js';
import { textWidth } from './text-width.js';
import type { ChartSpec } from './chart-spec.js';

const c = colours.light;
const fills: Readonly<Record<Fill, string | null>> = {
  wood: c.wood,
  woodDark: c.woodDark,
  waste: c.waste,
  accent: c.series[4] ?? c.ink,
  ground: c.ground,
  none: null,
};
const dashed = [5, 4];

/** The shapes of a picture as Vega-Lite layers, in the order given, all on the same two scales. */
export function layersOf(shapes: readonly Shape[], frame: DrawingFrame): ChartSpec[] {
  const x = { type: 'quantitative', axis: null, scale: { domain: frame.domainX, nice: false, zero: false } };
  const y = { type: 'quantitative', axis: null, scale: { domain: frame.domainY, nice: false, zero: false } };
  const channels = { x: { field: 'x', ...x }, y: { field: 'y', ...y } };
  const layers: ChartSpec[] = [];
  // Neighbours of one sort share a layer: a cutting plan of 300 pieces is then a handful of layers and not 600.
  let run: Shape[] = [];
  const flush = () => {
    if (run.length === 0) return;
    const kind = run[0]?.kind;
    if (kind === 'rectangle') layers.push(...rectangles(run as Of<'rectangle'>[], channels, frame));
    else if (kind === 'dimension') layers.push(...dimensions(run as Of<'dimension'>[], channels, frame));
    else if (kind === 'text') layers.push(...texts(run as Of<'text'>[], channels));
    else for (const shape of run) layers.push(...shapeLayers(shape, channels, frame));
    run = [];
  };
  for (const shape of shapes) {
    if (run[0] && batchKey(run[0]) !== batchKey(shape)) flush();
    run.push(shape);
  }
  flush();
  return layers;
}

/** Rectangles take one dash for a whole layer: Vega-Lite knows none for each. */
const batchKey = (shape: Shape): string =>
  shape.kind === 'rectangle' && shape.dashed === true ? 'dashed rectangle' : shape.kind;

function rectangles(list: Of<'rectangle'>[], { x, y }: Channels, frame: DrawingFrame): ChartSpec[] {
  const rows = list.map((r) => ({
    x: Math.min(r.x, r.x + r.width),
    x2: Math.max(r.x, r.x + r.width),
    y: Math.min(r.y, r.y + r.height),
    y2: Math.max(r.y, r.y + r.height),
    fill: fills[r.fill ?? 'wood'],
    weight: r.weight ?? 1.2,
    label: r.label ?? '',
  }));
  const layers: ChartSpec[] = [
    {
      data: { values: rows },
      mark: {
        type: 'rect',
        stroke: c.ink,
        opacity: 1,
        ...(list[0]?.dashed === true ? { strokeDash: dashed } : {}),
      },
      encoding: {
        x,
        x2: { field: 'x2' },
        y,
        y2: { field: 'y2' },
        fill: { field: 'fill', type: 'nominal', scale: null },
        strokeWidth: { field: 'weight', type: 'quantitative', scale: null },
        ...(rows.some((r) => r.label !== '') ? { tooltip: { field: 'label', type: 'nominal' } } : {}),
      },
    },
  ];
  const lines = list.flatMap((r) => (r.hatch === undefined ? [] : hatching(r, frame)));
  if (lines.length > 0)
    layers.push({
      data: { values: lines },
      mark: { type: 'rule', color: c.ink, opacity: 0.28, strokeWidth: 0.8 },
      encoding: { x, x2: { field: 'x2' }, y, y2: { field: 'y2' } },
    });
  const words = rows.flatMap((r) => {
    const w = (r.x2 - r.x) * frame.scale;
    const h = (r.y2 - r.y) * frame.scale * frame.stretch;
    const long = textWidth(r.label, 12);
    if (r.label === '') return [];
    const place = { x: (r.x + r.x2) / 2, y: (r.y + r.y2) / 2, label: r.label };
    if (long + 6 <= w && h >= 14) return [{ ...place, up: false }];
    return long + 6 <= h && w >= 14 ? [{ ...place, up: true }] : [];
  });
  for (const up of [false, true]) {
    const values = words.filter((v) => v.up === up);
    if (values.length > 0)
      layers.push(
        ...withHalo({
          data: { values },
          mark: { type: 'text', align: 'center', baseline: 'middle', color: c.ink, angle: up ? -90 : 0 },
          encoding: { x, y, text: { field: 'label' } },
        }),
      );
  }
  return layers;
}

function hatching(
  r: Of<'rectangle'>,
  frame: DrawingFrame,
): { x: number; y: number; x2: number; y2: number }[] {
  const gapX = 7 / frame.scale;
  const gapY = 7 / (frame.scale * frame.stretch);
  const most = 200;
  if (r.hatch === 'grain')
    return evenlySpaced(r.y, r.height, gapY, most).map((at) => ({
      x: r.x,
      x2: r.x + r.width,
      y: at,
      y2: at,
    }));
  if (r.hatch === 'grainUp')
    return evenlySpaced(r.x, r.width, gapX, most).map((at) => ({
      x: at,
      x2: at,
      y: r.y,
      y2: r.y + r.height,
    }));
  // Slanting at 45 degrees on paper: a line enters at the left or bottom edge and leaves at the top or right one.
  const w = r.width / gapX;
  const h = r.height / gapY;
  const lines = [];
  for (let k = 1; k < w + h && lines.length < most; k++)
    lines.push({
      x: r.x + Math.max(0, k - h) * gapX,
      y: r.y + Math.min(k, h) * gapY,
      x2: r.x + Math.min(k, w) * gapX,
      y2: r.y + Math.max(0, k - w) * gapY,
    });
  return lines;
}

function evenlySpaced(from: number, length: number, gap: number, most: number): number[] {
  const count = Math.min(most, Math.max(1, Math.floor(length / gap) - 1));
  return Array.from({ length: count }, (_, i) => from + (length * (i + 1)) / (count + 1));
}

type Outline = Of<'polygon' | 'polyline' | 'circle' | 'arc'>;

function shapeLayers(shape: Shape, { x, y }: Channels, frame: DrawingFrame): ChartSpec[] {
  if (shape.kind === 'rectangle' || shape.kind === 'dimension' || shape.kind === 'text') return [];
  const points = pointsOf(shape);
  const closed = shape.kind === 'polygon' || shape.kind === 'circle';
  const layers: ChartSpec[] = [
    {
      data: { values: points.map(([px, py], order) => ({ x: px, y: py, order })) },
      mark: {
        type: 'line',
        interpolate: closed ? 'linear-closed' : 'linear',
        color: c.ink,
        strokeWidth: shape.weight ?? (closed ? 1.2 : 1.6),
        ...(shape.dashed === true ? { strokeDash: dashed } : {}),
        ...fillOf(shape),
      },
      encoding: { x, y, order: { field: 'order', type: 'quantitative' } },
    },
  ];
  if (shape.kind === 'polyline' && shape.arrow === true) layers.push(...arrowAtEnd(points, { x, y }, frame));
  if (shape.label !== undefined && shape.label !== '') {
    const [mx, my] = middleOf(points, closed);
    layers.push(
      ...withHalo({
        data: { values: [{ x: mx, y: my, label: shape.label }] },
        mark: { type: 'text', color: c.ink, align: 'center', baseline: 'middle', dy: closed ? 0 : -10 },
        encoding: { x, y, text: { field: 'label' } },
      }),
    );
  }
  return layers;
}

/** An arrow head at the last of two or more points. */
function arrowAtEnd(points: readonly Place[], channels: Channels, frame: DrawingFrame): ChartSpec[] {
  const [tip, from] = [points.at(-1), points.at(-2)];
  return tip && from ? [arrowHeads([{ tip, from }], channels, frame)] : [];
}

/** Only polygons and circles are filled; wood where no fill is named. */
function fillOf(shape: Outline): { readonly fill?: string } {
  if (shape.kind !== 'polygon' && shape.kind !== 'circle') return {};
  const fill = fills[shape.fill ?? 'wood'];
  return fill === null ? {} : { fill };
}

/** Where the label stands: the mean of the corners of a closed shape, the middle point of a line. */
function middleOf(points: readonly Place[], closed: boolean): Place {
  if (!closed) return points[Math.floor(points.length / 2)] ?? [0, 0];
  const mean = (axis: 0 | 1): number => points.reduce((sum, p) => sum + p[axis], 0) / points.length;
  return [mean(0), mean(1)];
}

function pointsOf(shape: Outline): readonly Place[] {
  if (shape.kind === 'polygon' || shape.kind === 'polyline') return shape.points;
  const [from, to] = shape.kind === 'arc' ? [shape.from, shape.to] : [0, 360];
  const steps = Math.max(8, Math.ceil(Math.abs(to - from) / 5));
  return Array.from({ length: steps + 1 }, (_, i): Place => {
    const angle = ((from + ((to - from) * i) / steps) * Math.PI) / 180;
    return [shape.x + shape.radius * Math.cos(angle), shape.y + shape.radius * Math.sin(angle)];
  });
}

function texts(list: Of<'text'>[], { x, y }: Channels): ChartSpec[] {
  return list.flatMap((t) =>
    withHalo({
      data: { values: [{ x: t.x, y: t.y, label: t.text }] },
      mark: {
        type: 'text',
        align: t.align ?? 'center',
        baseline: 'middle',
        dx: t.dx ?? 0,
        dy: -(t.dy ?? 0),
        fontSize: t.size ?? 12,
        ...(t.bold === true ? { fontWeight: 'bold' } : {}),
        color: c.ink,
      },
      encoding: { x, y, text: { field: 'label' } },
    }),
  );
}
