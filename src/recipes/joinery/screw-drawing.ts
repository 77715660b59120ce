import { drawing, type Shape } from '../../charts/drawing.js';
import type { ChartSpec } from '../../charts/chart-spec.js';

/** The two holes of a screw in section, to scale: clear through the upper piece, pilot in the lower. Metres. */
export function screwDrawing(of: {
  readonly diameter: number;
  readonly penetration: number;
  readonly root: number;
  readonly clearance: number;
  readonly pilot: number;
}): ChartSpec {
  const [D_, L_] = [of.diameter * 1000, of.penetration * 1000];
  const top = Math.max(L_ * 0.5, 3 * D_);
  const w = Math.max(6 * D_, L_ * 0.45);
  const r = (of.root * 1000) / 2;
  const c = (of.clearance * 1000) / 2;
  const hole = (of.pilot * 1000) / 2;
  const shapes: Shape[] = [
    { kind: 'rectangle', x: -w, y: -L_ * 1.25, width: 2 * w, height: L_ * 1.25, fill: 'woodDark' },
    { kind: 'rectangle', x: -w, y: 0, width: 2 * w, height: top, fill: 'wood', hatch: 'grain' },
    { kind: 'rectangle', x: -c, y: 0, width: 2 * c, height: top, fill: 'ground' },
    { kind: 'rectangle', x: -hole, y: -L_, width: 2 * hole, height: L_, fill: 'ground' },
    {
      kind: 'polyline',
      points: [
        [-r, 0],
        [-r, -L_],
      ],
      dashed: true,
    },
    {
      kind: 'polyline',
      points: [
        [r, 0],
        [r, -L_],
      ],
      dashed: true,
    },
    { kind: 'dimension', from: [w, -L_], to: [w, 0], text: `${L_.toFixed(1)} mm of thread`, offset: -16 },
    {
      kind: 'text',
      x: -w,
      y: top / 2,
      text: `clear hole ${(of.clearance * 1000).toFixed(1)} mm`,
      align: 'right',
      dx: -8,
    },
    {
      kind: 'text',
      x: -w,
      y: -L_ / 2,
      text: `pilot ${(of.pilot * 1000).toFixed(1)} mm`,
      align: 'right',
      dx: -8,
    },
    { kind: 'text', x: -w, y: -L_ * 0.85, text: 'dashed: root of the thread', align: 'right', dx: -8 },
  ];
  return drawing({ title: 'The two holes of a screw, in section', shapes, maxHeight: 420 });
}
