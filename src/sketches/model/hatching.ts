import type { Point } from './marks.js';
import { shareInside, type Box, type Stroke } from './sheet.js';

const spacing = 6;

/** Lines at 45 degrees through the inside of an outline: end grain, or a cut face. */
export function hatching(points: readonly Point[]): Stroke[] {
  const sums = points.map(([x, y]) => x + y);
  const lines: Stroke[] = [];
  const first = Math.ceil(Math.min(...sums) / spacing) * spacing + spacing / 2;
  for (let sum = first; sum < Math.max(...sums); sum += spacing) {
    const crossings = crossingsOf(points, sum).sort((a, b) => a[0] - b[0]);
    for (let i = 0; i + 1 < crossings.length; i += 2)
      lines.push(grainLine([crossings[i] as Point, crossings[i + 1] as Point]));
  }
  return lines;
}

/** Where an outline crosses the line x + y = `sum`. */
function crossingsOf(points: readonly Point[], sum: number): Point[] {
  return points.flatMap((a, i): Point[] => {
    const b = points[(i + 1) % points.length] as Point;
    const da = a[0] + a[1] - sum;
    const db = b[0] + b[1] - sum;
    if (da > 0 === db > 0) return [];
    const t = da / (da - db);
    return [[a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t]];
  });
}

const grainLine = (points: readonly Point[]): Stroke => ({
  points,
  closed: false,
  weight: 'grain',
  fill: 'none',
  field: undefined,
});

/** The line with its parts inside the boxes left out, so that a letter stays readable on the grain. */
export function withGaps(stroke: Stroke, boxes: readonly Box[]): Stroke[] {
  return stroke.points.slice(1).flatMap((to, i) => {
    const from = stroke.points[i] as Point;
    const at = (t: number): Point => [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
    let free: (readonly [number, number])[] = [[0, 1]];
    for (const box of boxes) {
      const inside = shareInside(from, to, box);
      if (inside === undefined) continue;
      free = free
        .flatMap(([a, b]): (readonly [number, number])[] => [
          [a, Math.min(b, inside[0])],
          [Math.max(a, inside[1]), b],
        ])
        .filter(([a, b]) => b > a);
    }
    return free.map(([a, b]) => grainLine([at(a), at(b)]));
  });
}
