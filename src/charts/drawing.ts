import { inUnits } from '../units/unit-system.js';
import { heading } from './axis.js';
import { dimensionPlace } from './dimension-layout.js';
import { layersOf } from './drawing-layers.js';
import type { Place, Shape } from './shape.js';
import { textWidth } from './text-width.js';
import { ChartError, type ChartSpec } from './chart-spec.js';

export type { Fill, Place, Shape } from './shape.js';

export interface Drawing {
  readonly title?: string;
  readonly subtitle?: string;
  /** A sentence for those who cannot see the picture. */
  readonly description?: string;
  readonly shapes: readonly Shape[];
  /** px; default 600 */
  readonly width?: number;
  /** px; the picture is made smaller until it is no higher. Default 520. */
  readonly maxHeight?: number;
  /** px for one unit of the picture, instead of fitting it into `width` and `maxHeight`: {@link pxPerMm} prints a template at full size. */
  readonly scale?: number;
  /** Stretches y against x for things long and thin; 1 (default) is true to scale. Anything else is written below the picture. */
  readonly stretch?: number;
}

/**
 * A picture true to scale: one mm along x is as long on paper as one along y (unless `stretch` says otherwise, and then the
 * picture says so). No axes. The view is sized so that every shape, dimension and label lies inside it.
 * Throws {@link ChartError} where a place is not finite or there is nothing to draw.
 */
export function drawing(metric: Drawing): ChartSpec {
  const picture = { ...metric, shapes: metric.shapes.map(shownShape) };
  const places = picture.shapes.flatMap(corners);
  if (places.length === 0) throw new ChartError('shapes', 'is empty; give at least one shape');
  const stretch = picture.stretch ?? 1;
  const box = bounds(places);
  const wide = Math.max(box.right - box.left, 1e-9);
  const high = Math.max((box.top - box.bottom) * stretch, 1e-9);
  const width = picture.width ?? 600;
  const maxHeight = picture.maxHeight ?? 520;
  // Labels have a fixed size in px while the shapes scale, so the margin for them is found by a few rounds of measuring.
  let margin = { left: 6, right: 6, top: 6, bottom: 6 };
  let scale = 1;
  for (let round = 0; round < 6; round++) {
    scale =
      picture.scale ??
      Math.min(
        Math.max(40, width - margin.left - margin.right) / wide,
        Math.max(30, maxHeight - margin.top - margin.bottom) / high,
      );
    margin = overhang(picture.shapes, box, scale, stretch);
  }
  const total = {
    width: wide * scale + margin.left + margin.right,
    height: high * scale + margin.top + margin.bottom,
  };
  const domainX = [box.left - margin.left / scale, box.right + margin.right / scale];
  const domainY = [box.bottom - margin.bottom / (scale * stretch), box.top + margin.top / (scale * stretch)];
  const note =
    stretch === 1
      ? undefined
      : `Heights drawn ${stretch > 1 ? `${round3(stretch)} times larger than` : `at ${round3(stretch)} of`} their scale.`;
  const under = [picture.subtitle, note].filter((s) => s !== undefined).join(' ');
  return {
    ...heading(picture.title, under === '' ? undefined : under, width),
    ...(picture.description === undefined ? {} : { description: picture.description }),
    width: Math.round(total.width),
    height: Math.round(total.height),
    view: { stroke: null },
    layer: layersOf(picture.shapes, { scale, stretch, domainX, domainY }),
    resolve: { scale: { x: 'shared', y: 'shared' } },
    ...(picture.scale === undefined ? {} : { usermeta: { reckoner: { pxPerMm: scale } } }),
  };
}

/** A shape with its words in the units a person reads. */
function shownShape(shape: Shape): Shape {
  if ('text' in shape) return { ...shape, text: inUnits(shape.text) };
  return 'label' in shape && shape.label !== undefined ? { ...shape, label: inUnits(shape.label) } : shape;
}

/** Whether a chart is a drawing at full size. */
export const isFullSize = (chart: ChartSpec): boolean =>
  (chart['usermeta'] as { reckoner?: { pxPerMm?: number } } | undefined)?.reckoner?.pxPerMm === pxPerMm;

/** CSS px in a millimetre, 96 to the inch: a picture in mm drawn at this scale prints at full size. */
export const pxPerMm = 96 / 25.4;

const textSize = 12;

/** How far the words and dimension lines reach past the shapes, in px on each side. */
function overhang(
  shapes: readonly Shape[],
  box: Box,
  scale: number,
  stretch: number,
): { left: number; right: number; top: number; bottom: number } {
  const out = { left: 6, right: 6, top: 6, bottom: 6 };
  const px = (at: Place): [number, number] => [
    (at[0] - box.left) * scale,
    (at[1] - box.bottom) * scale * stretch,
  ];
  const size = { w: (box.right - box.left) * scale, h: (box.top - box.bottom) * scale * stretch };
  const reach = (left: number, right: number, bottom: number, top: number) => {
    out.left = Math.max(out.left, -left + 4);
    out.right = Math.max(out.right, right - size.w + 4);
    out.bottom = Math.max(out.bottom, -bottom + 4);
    out.top = Math.max(out.top, top - size.h + 4);
  };
  for (const shape of shapes) {
    if (shape.kind === 'text') {
      const [x, y] = px([shape.x, shape.y]);
      const w = textWidth(shape.text, shape.size ?? textSize, shape.bold);
      const start = x + (shape.dx ?? 0) - (shape.align === 'left' ? 0 : shape.align === 'right' ? w : w / 2);
      const middle = y + (shape.dy ?? 0);
      reach(start, start + w, middle - 8, middle + 8);
    } else if (shape.kind === 'dimension') {
      const d = dimensionPlace(px(shape.from), px(shape.to), shape.offset ?? 0);
      const w = textWidth(shape.text, textSize);
      const [mx, my] = d.label;
      const halfW = (Math.abs(Math.cos(d.angle)) * w) / 2 + 8;
      const halfH = (Math.abs(Math.sin(d.angle)) * w) / 2 + 8;
      reach(mx - halfW, mx + halfW, my - halfH, my + halfH);
      for (const [x, y] of [d.from, d.to]) reach(x - 4, x + 4, y - 4, y + 4);
    }
  }
  return out;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function corners(shape: Shape, index: number): Place[] {
  const list = ((): Place[] => {
    switch (shape.kind) {
      case 'rectangle':
        return [
          [shape.x, shape.y],
          [shape.x + shape.width, shape.y + shape.height],
        ];
      case 'polygon':
      case 'polyline':
        return [...shape.points];
      case 'circle':
      case 'arc':
        return [
          [shape.x - shape.radius, shape.y - shape.radius],
          [shape.x + shape.radius, shape.y + shape.radius],
        ];
      case 'dimension':
        return [shape.from, shape.to];
      case 'text':
        return [[shape.x, shape.y]];
    }
  })();
  for (const at of list)
    if (!Number.isFinite(at[0]) || !Number.isFinite(at[1]))
      throw new ChartError(
        `shapes[${index}] (${shape.kind})`,
        `a place is (${at[0]}, ${at[1]}); takes finite numbers`,
      );
  return list;
}

function bounds(places: readonly Place[]): Box {
  const box = { left: Infinity, right: -Infinity, top: -Infinity, bottom: Infinity };
  for (const [x, y] of places) {
    box.left = Math.min(box.left, x);
    box.right = Math.max(box.right, x);
    box.bottom = Math.min(box.bottom, y);
    box.top = Math.max(box.top, y);
  }
  return box;
}

function round3(n: number): number {
  return Number(n.toPrecision(3));
}
