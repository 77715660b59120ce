/** A root between two ends, and the value of the function there. */
export interface Root {
  readonly x: number;
  readonly y: number;
}

/**
 * The root of a function between `a` and `b`, where its values differ in sign, to the last bits of `x`: Brent's method,
 * which takes inverse quadratic or secant steps where they converge and halves the bracket where they do not (R. P. Brent,
 * Algorithms for Minimization without Derivatives, 1973, chapter 4). Undefined where the function gives NaN on the way.
 */
export function findRoot(
  f: (x: number) => number,
  a: number,
  b: number,
  fa: number = f(a),
  fb: number = f(b),
): Root | undefined {
  // `best` is the nearest so far, `last` the point before it, `other` the end on the far side of the root.
  let [best, last, other] = [point(b, fb), point(a, fa), point(a, fa)];
  let [step, stepBefore] = [b - a, b - a];
  for (let i = 0; i < 300; i++) {
    if (Math.sign(best.y) === Math.sign(other.y)) {
      other = last;
      step = stepBefore = best.x - last.x;
    }
    if (Math.abs(other.y) < Math.abs(best.y)) [last, best, other] = [best, other, best];
    const tolerance = 2 * Number.EPSILON * Math.abs(best.x) + Number.MIN_VALUE;
    const half = (other.x - best.x) / 2;
    if (best.y === 0 || Math.abs(half) <= tolerance) return best;
    const quick = interpolated(best, last, other);
    const good = Math.abs(last.y) > Math.abs(best.y) && converges(quick, half, stepBefore, tolerance);
    [stepBefore, step] = good ? [step, quick] : [half, half];
    last = best;
    const x = best.x + (Math.abs(step) > tolerance ? step : Math.sign(half) * tolerance);
    best = point(x, f(x));
    if (Number.isNaN(best.y)) return undefined;
  }
  return best;
}

/** Whether a step stays well inside the bracket and is less than half of the step before the last. */
function converges(step: number, half: number, stepBefore: number, tolerance: number): boolean {
  const inside = step * half > 0 && 2 * Math.abs(step) < 3 * Math.abs(half) - tolerance;
  return inside && Math.abs(stepBefore) >= tolerance && 2 * Math.abs(step) < Math.abs(stepBefore);
}

const point = (x: number, y: number): Root => ({ x, y });

/** The step from `best` by inverse quadratic interpolation through three points, or by the secant where two of them are one. */
function interpolated(best: Root, last: Root, other: Root): number {
  const s = best.y / last.y;
  if (last.x === other.x) return ((other.x - best.x) * s) / (s - 1);
  const q = last.y / other.y;
  const r = best.y / other.y;
  const p = s * ((other.x - best.x) * q * (q - r) - (best.x - last.x) * (r - 1));
  return -p / ((q - 1) * (r - 1) * (s - 1));
}
