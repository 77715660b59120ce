import type { Place } from '../../charts/drawing.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { jointDrawing, type JointShape } from './full-size-drawing.js';

/** Both pieces of a half lap from above, what is cut away between the shoulders dashed. Metres. */
export function halfLapDrawing(of: {
  readonly widthA: number;
  readonly widthB: number;
  readonly angle: number;
  readonly depth: number;
  readonly at: 'crossing' | 'end' | 'corner';
  readonly picture: 'fitted' | 'full size';
  readonly shoulders: readonly { readonly between: number }[];
}): ChartSpec {
  const [wA, wB] = [of.widthA * 1000, of.widthB * 1000];
  const a = of.angle;
  const [sin, cos] = [Math.sin(a), Math.cos(a)];
  const onA = (of.shoulders[0] as { between: number }).between * 1000;
  const tail = Math.max(wA, wB) * 0.8;
  // Piece A lies along x; the notch runs from 0 to onA at its lower edge and leans with piece B.
  const lean = (wA * cos) / sin;
  const aFrom = of.at === 'corner' ? 0 : -tail;
  const aTo = of.at === 'corner' ? onA + tail : onA + lean + tail;
  const low = of.at === 'crossing' ? -tail : 0;
  const along = (x: number, y: number): Place => [x + (y * cos) / sin, y];
  const B: Place[] = [along(0, low), along(onA, low), along(onA, wA + tail), along(0, wA + tail)];
  const shapes: JointShape[] = [
    { kind: 'rectangle', x: aFrom, y: 0, width: aTo - aFrom, height: wA, fill: 'wood', hatch: 'grain' },
    { kind: 'polygon', points: B, fill: 'woodDark' },
    {
      kind: 'polygon',
      points: [along(0, 0), along(onA, 0), along(onA, wA), along(0, wA)],
      fill: 'waste',
      dashed: true,
    },
    { kind: 'text', x: aTo - tail / 2, y: wA / 2, text: 'A', bold: true },
    { kind: 'text', x: along(onA / 2, wA + tail / 2)[0], y: wA + tail / 2, text: 'B', bold: true },
    {
      kind: 'dimension',
      from: along(0, low),
      to: along(onA, low),
      text: `${onA.toFixed(1)} mm`,
      offset: -16,
    },
    { kind: 'dimension', from: [aTo, 0], to: [aTo, wA], text: `${wA.toFixed(1)} mm`, offset: -16 },
    {
      kind: 'text',
      x: along(onA / 2, wA / 2)[0],
      y: wA / 2,
      text: `${(of.depth * 1000).toFixed(1)} deep`,
    },
  ];
  return jointDrawing({ title: 'Half lap from above', shapes, maxHeight: 420 }, of.picture);
}
