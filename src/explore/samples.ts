import { mulberry32 } from '../engine/random.js';

/** Fills a column with one dimension of a sequence, from its point `start` on: numbers in [0, 1). */
export type Sequence = (dimension: number, start: number, into: Float64Array) => void;

/**
 * A low-discrepancy sequence in `d` dimensions: the additive recurrence x_n = frac(s + n a) whose steps are powers of
 * the root of x^(d+1) = x + 1 (the generalised golden ratio), shifted by a seeded amount. It fills the cube more evenly
 * than random draws, so that percentiles settle with fewer of them.
 */
export function quasiRandom(d: number, seed: number): Sequence {
  let phi = 1.5;
  for (let i = 0; i < 60; i++) phi = Math.pow(1 + phi, 1 / (d + 1));
  const random = mulberry32(Math.floor(seed) ^ 0x9e3779b9);
  const steps = Array.from({ length: d }, (_, k) => Math.pow(1 / phi, k + 1) % 1);
  const shifts = steps.map(() => random());
  return (dimension, start, into) => {
    const [step, shift] = [steps[dimension] as number, shifts[dimension] as number];
    for (let i = 0; i < into.length; i++) {
      const x = shift + (start + i + 1) * step;
      into[i] = x - Math.floor(x);
    }
  };
}
