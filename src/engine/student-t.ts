import { findRoot } from './root-finder.js';

/**
 * The chance that Student's t with `degrees` degrees of freedom, a whole number, lies between -t and t: the finite sums of
 * Abramowitz and Stegun, Handbook of Mathematical Functions (1964), 26.7.3 and 26.7.4.
 */
export function studentTWithin(t: number, degrees: number): number {
  const angle = Math.atan(t / Math.sqrt(degrees));
  const [sine, square] = [Math.sin(angle), Math.cos(angle) ** 2];
  const odd = degrees % 2 === 1;
  let term = odd ? Math.cos(angle) : 1;
  let sum = 0;
  // Odd: cos, 2/3 cos^3, 2*4/(3*5) cos^5 ...; even: 1, 1/2 cos^2, 1*3/(2*4) cos^4 ...
  for (let k = odd ? 1 : 0; k <= degrees - 2; k += 2) {
    sum += term;
    term *= (square * (k + 1)) / (k + 2);
  }
  return odd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
}

/**
 * The value below which Student's t with `degrees` degrees of freedom lies with the probability `p`.
 * @throws RangeError unless 0 < p < 1 and `degrees` is a whole number of 1 or more
 */
export function studentTQuantile(p: number, degrees: number): number {
  if (!(p > 0 && p < 1) || !Number.isInteger(degrees) || degrees < 1)
    throw new RangeError(`no quantile of Student's t at p = ${p} and ${degrees} degrees of freedom`);
  if (p === 0.5) return 0;
  const within = Math.abs(2 * p - 1);
  let high = 2;
  while (studentTWithin(high, degrees) < within && high < 1e300) high *= 2;
  const root = findRoot((t) => studentTWithin(t, degrees) - within, 0, high);
  return (p < 0.5 ? -1 : 1) * (root?.x ?? NaN);
}
