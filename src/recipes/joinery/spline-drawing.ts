import type { Place } from '../../charts/drawing.js';
import type { ChartSpec } from '../../charts/chart-spec.js';
import { jointDrawing, type JointShape } from './full-size-drawing.js';

/** A mitre in section with the slots of its spline, the inside corner below. Metres. */
export function splineDrawing(of: {
  readonly thickness: number;
  readonly splineThickness: number;
  readonly fromInside: number;
  readonly depth: number;
  readonly faceLength: number;
  readonly bevel: number;
  readonly wallOutside: number;
  readonly picture: 'fitted' | 'full size';
}): ChartSpec {
  const t = of.thickness * 1000;
  const [c, s, d] = [of.fromInside * 1000, of.splineThickness * 1000, of.depth * 1000];
  const m = of.faceLength * 1000;
  const b = of.bevel;
  const tail = Math.max(1.6 * t, d * 1.8 + 12);
  // Mitre face upright, inside corner at the origin; one piece to the right and its mirror to the left.
  const cosB = Math.cos(b);
  const sinB = Math.sin(b);
  const runIn: Place = [cosB * tail, -sinB * tail];
  const piece: Place[] = [[0, 0], [0, m], [cosB * tail, m - sinB * tail], runIn];
  const mirror = (p: readonly Place[]): Place[] => p.map(([x, y]) => [-x, y]);
  const slot: Place[] = [
    [0, c - s / 2],
    [d, c - s / 2],
    [d, c + s / 2],
    [0, c + s / 2],
  ];
  const wallFoot: Place = [d + of.wallOutside * 1000 * sinB, c + s / 2 + of.wallOutside * 1000 * cosB];
  const shapes: JointShape[] = [
    { kind: 'polygon', points: mirror(piece), fill: 'woodDark' },
    { kind: 'polygon', points: piece, fill: 'wood' },
    { kind: 'polygon', points: slot, fill: 'accent' },
    { kind: 'polygon', points: mirror(slot), fill: 'accent' },
    {
      kind: 'dimension',
      from: [d, c + s / 2],
      to: wallFoot,
      text: `${(of.wallOutside * 1000).toFixed(1)} mm`,
      offset: 0,
    },
    {
      kind: 'dimension',
      from: [0, c - s / 2],
      to: [d, c - s / 2],
      text: `${d.toFixed(1)} mm`,
      offset: -14,
    },
    { kind: 'text', x: 0, y: m, text: 'outside', dy: 12 },
    { kind: 'text', x: 0, y: 0, text: 'inside', dy: -14 },
    {
      kind: 'dimension',
      from: [-tail * cosB, m - tail * sinB],
      to: [-tail * cosB, -tail * sinB],
      text: `${(t / cosB).toFixed(1)} mm mitre face`,
      offset: -16,
    },
  ];
  return jointDrawing({ title: 'The mitre in section, with its spline', shapes, maxHeight: 420 }, of.picture);
}
