// What no lay-up can exceed. r rows at least w wide need r row lengths from sticks at least w across, in at most
// r (joints + 1) pieces. A stick of length l that gives q pieces, a of them whole rows, gives at most
// a L + min((q - a) (L - least end piece), l - a L - (q - 1) kerf): a piece that is not a whole row leaves room for
// another end piece beside it. The gains from piece to piece, made concave, are pooled over the sticks; if the largest
// r (joints + 1) of them do not reach r L, no such rows exist.
// Where sticks are ripped, one W across counts as floor((W + kerf) / (w + kerf)) sticks for rows w across: at no place along
// it do more such pieces lie side by side. Besides, pieces with their kerfs cover no more than the sticks:
// L times the sum of (w_r + kerf) over the rows is at most the sum of l (W + kerf) over the sticks.
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

/** The most rows that gains, largest first, could give; no more than `most`. */
function rowsFrom(gains: readonly number[], rules: RowRules, most: number, from = 0): number {
  let length = 0;
  let taken = 0;
  let rows = from;
  for (let r = from + 1; r <= most; r++) {
    const pieces = Math.min(gains.length, r * (rules.maxJoints + 1));
    for (; taken < pieces; taken++) length += gains[taken] as number;
    // A millionth of a millimetre for the rounding of slopes.
    if (length < r * rules.rowLength - 1e-3) {
      if (taken === gains.length) break;
    } else rows = r;
  }
  return rows;
}

const falling = (a: number, b: number): number => b - a;

/**
 * The greatest sizes across that rows can have, widest first: the r-th is the greatest w for which r rows of that size are
 * not ruled out. Sticks are not ripped.
 * @returns micrometres; their number is the greatest number of rows
 */
export function widthBounds(sticks: readonly Stick[], rules: RowRules, maxRows = 2000): number[] {
  const usable = sticks.filter((s) => s.length >= rules.leastInner && s.across >= rules.leastAcross);
  const widths = [...new Set(usable.map((s) => Math.min(s.across, rules.mostAcross)))].sort(falling);
  const gainsByLength = new Map<number, number[]>();
  const bounds: number[] = [];
  for (const width of widths) {
    const gains = usable.flatMap((s) =>
      s.across >= width ? knownGains(s.length, rules, gainsByLength) : [],
    );
    const rows = rowsFrom(gains.sort(falling), rules, maxRows, bounds.length);
    while (bounds.length < rows) bounds.push(width);
    if (bounds.length >= maxRows) break;
  }
  return bounds;
}

function knownGains(length: number, rules: RowRules, known: Map<number, number[]>): number[] {
  const found = known.get(length) ?? gainsOf(length, rules);
  known.set(length, found);
  return found;
}

/** More widths than this are not looked at one by one; the bound is a little looser then. */
const mostWidths = 240;

/** As {@link widthBounds}, where sticks may be ripped lengthwise. */
export function rippedBounds(sticks: readonly Stick[], rules: RowRules, maxRows = 2000): number[] {
  const { kerf, leastAcross, mostAcross } = rules;
  const usable = sticks.filter((s) => s.length >= rules.leastInner && s.across >= leastAcross);
  const all = new Set<number>();
  for (const s of usable)
    for (let n = 1; ; n++) {
      const width = Math.min(Math.floor((s.across + kerf) / n) - kerf, mostAcross);
      if (width < leastAcross) break;
      all.add(width);
    }
  const widths = [...all].sort(falling);
  const step = Math.max(1, Math.ceil(widths.length / mostWidths));
  const gainsByLength = new Map<number, number[]>();
  const bounds: number[] = [];
  for (let i = 0; i < widths.length && bounds.length < maxRows; i += step) {
    // Between two widths looked at, every row may be as wide as the first one not looked at.
    const at = widths[Math.min(widths.length - 1, i + step - 1)] as number;
    const gains = usable.flatMap((s) =>
      Array<number[]>(Math.floor((s.across + kerf) / (at + kerf)))
        .fill(knownGains(s.length, rules, gainsByLength))
        .flat(),
    );
    const rows = rowsFrom(gains.sort(falling), rules, maxRows, bounds.length);
    while (bounds.length < rows) bounds.push(widths[i] as number);
  }
  return bounds;
}

/** The greatest sum of row widths, once jointed, of ripped sticks: by the widths of rows, and by the area of the sticks. */
export function rippedWidth(bounds: readonly number[], sticks: readonly Stick[], rules: RowRules): number {
  const usable = sticks.filter((s) => s.length >= rules.leastInner && s.across >= rules.leastAcross);
  const area = usable.reduce((sum, s) => sum + s.length * (s.across + rules.kerf), 0);
  let [most, widths] = [0, 0];
  bounds.forEach((w, i) => {
    widths += w;
    const across = Math.min(widths, area / rules.rowLength - (i + 1) * rules.kerf);
    most = Math.max(most, across - (i + 1) * rules.jointing);
  });
  return most;
}

/** The greatest width of a top from rows `width` wide in all: every slab is at most `widest`, and each loses its jointing. */
export function slabbedWidth(width: number, widest: number, jointing: number): number {
  if (width <= 0) return 0;
  const whole = Math.floor(width / widest);
  return Math.max(0, width - Math.ceil(width / widest) * jointing, whole * (widest - jointing));
}
