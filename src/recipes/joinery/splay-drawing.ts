import { drawing } from '../../charts/drawing.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { line, polygon, words } from '../../charts/shapes.js';

const degrees = (radians: number): number => (radians * 180) / Math.PI;
const text = (radians: number): string => `${degrees(radians).toFixed(2)}°`;

/** One side of the box seen square on, and its end seen on edge. Angles in radians. */
export function splayDrawing(of: { readonly mitre: number; readonly bevel: number }): ChartSpec {
  // The side is 100 mm wide and as long as makes the angles plain; its end is drawn beside it.
  const w = 100;
  const run = w * Math.tan(of.mitre);
  const long = Math.max(320, 2 * run + 120);
  const x = long + 130;
  const t = 30;
  const skew = t * Math.tan(of.bevel);
  return drawing({
    title: 'One side, and its end seen on edge',
    shapes: [
      polygon([[0, 0], [long, 0], [long - run, w], [run, w]], { fill: 'wood' }), // prettier-ignore
      line([0, 0], [0, w], { dashed: true }),
      { kind: 'arc', x: 0, y: 0, radius: w * 0.62, from: 90 - degrees(of.mitre), to: 90 },
      words(0, w, `mitre ${text(of.mitre)}`, { dy: 14, bold: true }),
      words(long / 2, w / 2, 'face of one side'),
      polygon([[x, 30], [x + 140, 30], [x + 140, 30 + t], [x + skew, 30 + t]], { fill: 'woodDark' }), // prettier-ignore
      line([x, 30], [x, 30 + t + 14], { dashed: true }),
      words(x + 20, 30 + t, `bevel ${text(of.bevel)}`, { align: 'left', dy: 26, bold: true }),
      words(x + 80, 30, 'edge, thickness enlarged', { dy: -12 }),
    ],
  });
}
