import { drawing, type Place } from '../../charts/drawing.js';
import { dimension, polygon, polyline } from '../../charts/shapes.js';
import { longestRoundCorner } from './corner.js';
import type { Gate } from './ways-through.js';

/** The tightest corner in plan, with the longest piece of that width where it is stuck; nothing without a corner. */
export function passageDrawing(given: {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly gates: readonly Gate[];
}) {
  const across = Math.min(given.width, given.height);
  const corners = given.gates
    .filter((g) => g.kind === 'corner')
    .map((g) => ({ a: g.first * 1000, b: (g.second ?? g.first) * 1000 }));
  const reach = (c: { a: number; b: number }): number => longestRoundCorner(c.a, c.b, across * 1000);
  const [tight] = corners.sort((x, y) => reach(x) - reach(y));
  if (!tight || reach(tight) <= 0) return undefined;
  const { a, b } = tight;
  const L = reach(tight);
  const w = across * 1000;
  // The place where it is tightest: both ends at the outer walls, its back at the inner corner.
  let best = Math.PI / 4;
  for (let i = 1; i < 900; i++) {
    const x = (i / 900) * (Math.PI / 2);
    const at = (t: number): number => (a * Math.sin(t) + b * Math.cos(t) - w) / (Math.sin(t) * Math.cos(t));
    if (at(x) < at(best)) best = x;
  }
  const [c, s] = [Math.cos(best), Math.sin(best)];
  const p: Place = [0, L * s];
  const q: Place = [L * c, 0];
  const piece: Place[] = [p, q, [q[0] + w * s, q[1] + w * c], [p[0] + w * s, p[1] + w * c]];
  const far = Math.max(L * 1.1, a * 1.5, b * 1.5);
  return drawing({
    title: `The tightest corner, carried level: up to ${L.toFixed(0)} mm`,
    subtitle: `Seen from above, the piece ${w.toFixed(0)} mm across where it is tightest.`,
    shapes: [
      polyline([[0, far], [0, 0], [far, 0]], { weight: 3 }), // prettier-ignore
      polyline([[a, far], [a, b], [far, b]], { weight: 3 }), // prettier-ignore
      polygon(piece, { fill: 'wood' }),
      dimension([0, far], [a, far], `${a.toFixed(0)} mm`, 14),
      dimension([far, b], [far, 0], `${b.toFixed(0)} mm`, 14),
    ],
    maxHeight: 420,
  });
}
