import { findRoot } from '../engine/root-finder.js';

/** The output less its target at `x`; undefined where the recipe gives no answer, which is a gap in the range. */
export type Difference = (x: number) => number | undefined;

/** Inputs, both ends included, that all meet the target. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Steps the range is scanned in. */
const steps = 400;

/** The places scanned: every whole number, or 401 places, on a logarithmic scale where the range spans more than a hundredfold. */
export function scanPlaces(low: number, high: number, whole: boolean): number[] {
  if (whole) {
    const count = Math.min(100_000, Math.floor(high) - Math.ceil(low) + 1);
    return Array.from({ length: count }, (_, i) => Math.ceil(low) + i);
  }
  // A field whose limit is "more than 0" starts a millionth above it.
  const floor = low === 0 && high > 0 ? high * 1e-6 : low;
  const logarithmic = floor > 0 && high / floor > 100;
  const list = Array.from({ length: steps + 1 }, (_, i) =>
    logarithmic ? floor * (high / floor) ** (i / steps) : floor + ((high - floor) * i) / steps,
  );
  list[steps] = high;
  return low < floor ? [low, ...list] : list;
}

/**
 * Where the target is met: single roots as spans whose ends are one, and stretches where the answer stays on the target, as
 * that of a count does. Every change of side between two places is closed in on; two roots within one step can be missed.
 */
export function meetingSpans(
  xs: readonly number[],
  ys: readonly (number | undefined)[],
  f: Difference,
  goal: number,
  whole: boolean,
): Span[] {
  const spans: Span[] = [];
  for (let i = 0; i < xs.length; i++) {
    const [x, y, next] = [xs[i] as number, ys[i], ys[i + 1]];
    if (y === 0) {
      let j = i;
      while (ys[j + 1] === 0) j++;
      spans.push(whole ? { from: x, to: xs[j] as number } : widened(xs, i, j, f));
      i = j;
    } else if (
      !whole &&
      y !== undefined &&
      next !== undefined &&
      next !== 0 &&
      Math.sign(y) !== Math.sign(next)
    ) {
      const span = crossing(x, y, xs[i + 1] as number, next, f, goal);
      if (span) spans.push(span);
    }
  }
  return spans;
}

/** The stretch from place `i` to place `j`, its ends moved out to where the answer leaves the target. */
function widened(xs: readonly number[], i: number, j: number, f: Difference): Span {
  const [first, last] = [xs[i] as number, xs[j] as number];
  const [before, after] = [xs[i - 1], xs[j + 1]];
  return {
    from: before === undefined ? first : edge(first, before, f),
    to: after === undefined ? last : edge(last, after, f),
  };
}

/** The last place, going from `inside` to `outside`, where the target is met. */
function edge(inside: number, outside: number, f: Difference): number {
  let [a, b] = [inside, outside];
  for (let i = 0; i < 80; i++) {
    const middle = (a + b) / 2;
    if (middle === a || middle === b) break;
    if (f(middle) === 0) a = middle;
    else b = middle;
  }
  // A root that is met in one point alone stays that point.
  return Math.abs(a - inside) <= 1e-12 * Math.abs(inside) ? inside : a;
}

/** The root, or the stretch on the target, between two places on either side of it; undefined where the answer jumps past. */
function crossing(
  a: number,
  fa: number,
  b: number,
  fb: number,
  f: Difference,
  goal: number,
): Span | undefined {
  const root = findRoot((x) => f(x) ?? NaN, a, b, fa, fb);
  if (!root) return undefined;
  if (root.y === 0) return { from: edge(root.x, a, f), to: edge(root.x, b, f) };
  // A step in the answer (a count that jumps past the target) is a change of side but no root.
  const jump = 1e-6 * (Math.abs(goal) + Math.abs(fa) + Math.abs(fb)) + 1e-300;
  return Math.abs(root.y) < jump ? { from: root.x, to: root.x } : undefined;
}
