import { drawing, type Shape } from '../../charts/drawing.js';
import type { ChartSpec } from '../../charts/chart-spec.js';

/** One side of the box seen square on, and its end seen on edge. Angles in radians. */
export function splayDrawing(of: { readonly mitre: number; readonly bevel: number }): ChartSpec {
  // One side seen square on, 100 mm wide, as long as makes the angles plain, and beside it its end cut.
  const w = 100;
  const run = w * Math.tan(of.mitre);
  const long = Math.max(320, 2 * run + 120);
  const deg = (a: number): string => `${((a * 180) / Math.PI).toFixed(2)}°`;
  const x = long + 130;
  const t = 30;
  const skew = t * Math.tan(of.bevel);
  const shapes: Shape[] = [
    {
      kind: 'polygon',
      points: [
        [0, 0],
        [long, 0],
        [long - run, w],
        [run, w],
      ],
      fill: 'wood',
    },
    {
      kind: 'polyline',
      points: [
        [0, 0],
        [0, w],
      ],
      dashed: true,
    },
    { kind: 'arc', x: 0, y: 0, radius: w * 0.62, from: 90 - (of.mitre * 180) / Math.PI, to: 90 },
    { kind: 'text', x: 0, y: w, text: `mitre ${deg(of.mitre)}`, dy: 14, bold: true },
    { kind: 'text', x: long / 2, y: w / 2, text: 'face of one side' },
    {
      kind: 'polygon',
      points: [
        [x, 30],
        [x + 140, 30],
        [x + 140, 30 + t],
        [x + skew, 30 + t],
      ],
      fill: 'woodDark',
    },
    {
      kind: 'polyline',
      points: [
        [x, 30],
        [x, 30 + t + 14],
      ],
      dashed: true,
    },
    {
      kind: 'text',
      x: x + 20,
      y: 30 + t,
      text: `bevel ${deg(of.bevel)}`,
      align: 'left',
      dy: 26,
      bold: true,
    },
    { kind: 'text', x: x + 80, y: 30, text: 'edge, thickness enlarged', dy: -12 },
  ];
  return drawing({ title: 'One side, and its end seen on edge', shapes });
}
