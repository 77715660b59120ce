// How long a box may be and still go round a right-angled corner, into a van, or under a ceiling. Metres.

/** Length of a piece of a width that touches both outer walls and the inner corner, at an angle to the first corridor. */
export const lengthAt = (a: number, b: number, width: number, angle: number): number =>
  (a * Math.sin(angle) + b * Math.cos(angle) - width) / (Math.sin(angle) * Math.cos(angle));

/**
 * Longest piece of a width that turns from a corridor `a` wide into one `b` wide, both unending: the least of `lengthAt`
 * over the turn. 0 where it is wider than a corridor. The function has one least value, found by halving its slope.
 */
export function longestRoundCorner(a: number, b: number, width: number): number {
  if (width >= Math.min(a, b)) return 0;
  const golden = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [1e-9, Math.PI / 2 - 1e-9];
  const at = (x: number): number => lengthAt(a, b, width, x);
  for (let i = 0; i < 200; i++) {
    const [m, n] = [high - golden * (high - low), low + golden * (high - low)];
    if (at(m) < at(n)) high = n;
    else low = m;
  }
  return Math.max(0, at((low + high) / 2));
}

/** Longest piece of a width that lies flat in a floor of length by width, straight or askew; 0 where it does not fit. */
export function longestIn(length: number, across: number, width: number): number {
  if (width > across || width > length) return 0;
  // Turned by an angle: L cos + w sin <= length, and L sin + w cos <= across.
  const at = (x: number): number => {
    const [c, s] = [Math.cos(x), Math.sin(x)];
    const along = c > 1e-12 ? (length - width * s) / c : Infinity;
    if (s <= 1e-12) return along;
    return Math.min(along, (across - width * c) / s);
  };
  const steps = 600;
  const angle = (i: number): number => (Math.min(Math.max(i, 0), steps) / steps) * (Math.PI / 2);
  let best = 0;
  for (let i = 1; i <= steps; i++) if (at(angle(i)) > at(angle(best))) best = i;
  let [low, high] = [angle(best - 1), angle(best + 1)];
  for (let i = 0; i < 80; i++) {
    const [m, n] = [low + (high - low) / 3, high - (high - low) / 3];
    if (at(m) > at(n)) high = n;
    else low = m;
  }
  return Math.max(length, at((low + high) / 2));
}
