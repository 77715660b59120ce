// What no lay-up can exceed. r rows at least w wide need r row lengths from sticks at least w across, in at most
// r (joints + 1) pieces. A stick of length l that gives q pieces, a of them whole rows, gives at most
// a L + min((q - a) (L - least end piece), l - a L - (q - 1) kerf): a piece that is not a whole row leaves room for
// another end piece beside it. The gains from piece to piece, made concave, are pooled over the sticks; if the largest
// r (joints + 1) of them do not reach r L, no such rows exist. Ripping a stick lengthwise is not allowed here.
import type { RowRules, Stick } from './lay-up-problem.js';

/** Gains of length from one piece more, from the first piece on, never rising. */
export function gainsOf(length: number, rules: RowRules): number[] {
  const { rowLength: L, kerf, leastEnd, leastInner } = rules;
  const most: number[] = [0];
  const pieces = Math.floor((length + kerf) / (leastInner + kerf));
  for (let q = 1; q <= pieces; q++) {
    let best = 0;
    for (let a = 0; a <= q && a * L + (q - 1) * kerf <= length; a++)
      best = Math.max(
        best,
        a * L + Math.min((q - a) * Math.max(0, L - leastEnd), length - a * L - (q - 1) * kerf),
      );
    most.push(Math.max(best, most[q - 1] as number));
  }
  return concaveGains(most);
}

/** Slopes of the least concave line above points 0, 1, 2, ...: one for each step, falling. */
function concaveGains(values: readonly number[]): number[] {
  const hull: number[] = [0];
  const slope = (a: number, b: number): number => ((values[b] as number) - (values[a] as number)) / (b - a);
  for (let i = 1; i < values.length; i++) {
    while (
      hull.length > 1 &&
      slope(hull.at(-2) as number, i) >= slope(hull.at(-2) as number, hull.at(-1) as number)
    )
      hull.pop();
    hull.push(i);
  }
  const gains: number[] = [];
  for (let k = 1; k < hull.length; k++) {
    const [a, b] = [hull[k - 1] as number, hull[k] as number];
    for (let i = a; i < b; i++) gains.push(slope(a, b));
  }
  return gains;
}

/** Whether sticks at least `across` wide could give `rows` rows: false proves that they cannot. */
function mayGive(rows: number, gains: readonly number[], rules: RowRules): boolean {
  let length = 0;
  const pieces = Math.min(gains.length, rows * (rules.maxJoints + 1));
  for (let i = 0; i < pieces; i++) length += gains[i] as number;
  // A millionth of a millimetre for the rounding of slopes.
  return length >= rows * rules.rowLength - 1e-3;
}

/**
 * The greatest widths that rows can have, before their edges are jointed, widest first: the r-th is the greatest w for
 * which r rows of that width are not ruled out.
 * @returns widths in micrometres; their number is the greatest number of rows
 */
export function widthBounds(sticks: readonly Stick[], rules: RowRules, maxRows = 1000): number[] {
  const usable = sticks.filter((s) => s.length >= rules.leastInner).sort((a, b) => b.across - a.across);
  const widths = [...new Set(usable.map((s) => s.across))];
  const bounds: number[] = [];
  let level = 0;
  let next = 0;
  let gains: number[] = [];
  while (bounds.length < maxRows) {
    while (!mayGive(bounds.length + 1, gains, rules)) {
      const width = widths[level++];
      if (width === undefined) return bounds;
      const more: number[] = [];
      for (; next < usable.length && (usable[next] as Stick).across >= width; next++)
        more.push(...gainsOf((usable[next] as Stick).length, rules));
      gains = [...gains, ...more].sort((a, b) => b - a);
    }
    bounds.push(widths[level - 1] ?? 0);
  }
  return bounds;
}
