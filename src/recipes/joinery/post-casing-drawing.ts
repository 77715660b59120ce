import { drawing, type Place, type Shape } from '../../charts/drawing.js';
import { dimension, polygon, rectangle } from '../../charts/shapes.js';

/** The casing and its post seen from above. Metres in. */
export function postCasingDrawing(of: {
  readonly width: number;
  readonly depth: number;
  readonly thickness: number;
  readonly corner: 'butt' | 'mitred' | 'rebated';
  readonly chamfer: number;
  readonly rebateDepth: number;
  readonly outsideWidth: number;
  readonly outsideDepth: number;
  readonly sentence: string;
}) {
  const mm = (m: number): number => m * 1000;
  const [W, D, t, d] = [of.outsideWidth, of.outsideDepth, of.thickness, of.chamfer].map(mm) as [
    number,
    number,
    number,
    number,
  ];
  const r = mm(of.rebateDepth);
  const [a, b] = [mm(of.width), mm(of.depth)];
  // The front board, its outside below; the back board is its mirror image.
  const front: Place[] =
    of.corner === 'mitred'
      ? [[d, 0], [W - d, 0], [W - d / 2, d / 2], [W - t, t], [t, t], [d / 2, d / 2]] // prettier-ignore
      : of.corner === 'butt'
        ? [[d, 0], [W - d, 0], [W, d], [W, t], [0, t], [0, d]] // prettier-ignore
        : [[d, 0], [W - d, 0], [W, d], [W, t - r], [W - t, t - r], [W - t, t], [t, t], [t, t - r], [0, t - r], [0, d]]; // prettier-ignore
  const side: Place[] =
    of.corner === 'mitred'
      ? [[0, d], [d / 2, d / 2], [t, t], [t, D - t], [d / 2, D - d / 2], [0, D - d]] // prettier-ignore
      : [[0, t - r], [t, t - r], [t, D - t + r], [0, D - t + r]]; // prettier-ignore
  const upsideDown = (p: Place[]): Place[] => p.map(([x, y]): Place => [x, D - y]);
  const mirrored = (p: Place[]): Place[] => p.map(([x, y]): Place => [W - x, y]);
  const shapes: Shape[] = [
    rectangle((W - a) / 2, (D - b) / 2, a, b, { fill: 'waste', hatch: 'grain' }),
    polygon(front, { fill: 'wood' }),
    polygon(upsideDown(front), { fill: 'wood' }),
    polygon(side, { fill: 'woodDark' }),
    polygon(mirrored(side), { fill: 'woodDark' }),
    dimension([0, 0], [W, 0], `${W.toFixed(1)} mm`, -18),
    dimension([W, 0], [W, D], `${D.toFixed(1)} mm`, -18),
    ...(d > 0 ? [dimension([0, D], [d, D], `${d.toFixed(1)} mm`, 14)] : []),
  ];
  return drawing({ title: 'The casing from above', subtitle: of.sentence, shapes, maxHeight: 420 });
}
