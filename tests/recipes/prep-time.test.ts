import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prepTime } from '../../src/recipes/bill/prep-time.js';

const job = (times: readonly number[], pieces: number, more: object = {}) =>
  prepTime({ works: [{ work: 'a', times: times.map((t) => `${t} min`), pieces }], ...more });

describe('prepTime', () => {
  it('7, 11, 5, 9, 8 min: average 8, deviation sqrt 5; 24 pieces 192 min, ± 1.5332 sqrt 5 sqrt(24 + 24²/5)', () => {
    const r = job([7, 11, 5, 9, 8], 24);
    expect(r.expected.in('min')).toBeCloseTo(192, 9);
    // Student's t for 80 % two-sided and four degrees of freedom is 1.533 206.
    const half = 1.533206 * Math.sqrt(5) * Math.sqrt(24 + 576 / 5);
    expect(r.high.in('min')).toBeCloseTo(192 + half, 3);
    expect(r.low.in('min')).toBeCloseTo(192 - half, 3);
    expect(job([7, 11, 5, 9, 8], 24, { hourly: 18 }).cost?.value).toBeCloseTo(57.6, 9);
  });
  it('simulated: four jobs in five lie in the range', () => {
    let seed = 11;
    const random = (): number => (seed = (seed * 16807) % 2147483647) / 2147483647;
    // Twelve even draws less six are nearly normal.
    const piece = (): number =>
      600 + 60 * (Array.from({ length: 12 }, random).reduce((a, b) => a + b, 0) - 6);
    let inside = 0;
    const runs = 1500;
    for (let i = 0; i < runs; i++) {
      const times = Array.from({ length: 5 }, piece);
      const r = prepTime.evaluate({ works: [{ work: 'a', times, pieces: 20 }] }) as {
        low: number;
        high: number;
      };
      const took = Array.from({ length: 20 }, piece).reduce((a, b) => a + b, 0);
      if (took >= r.low && took <= r.high) inside++;
    }
    expect(inside / runs).toBeGreaterThan(0.77);
    expect(inside / runs).toBeLessThan(0.83);
  });
  it('refuses one time alone', () => {
    expect(() => job([5], 3)).toThrow(/works\[1\]\.times: got 1 time, takes two or more/);
  });
  it('never shorter for more pieces, or a narrower range for more certainty', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 2, maxLength: 10 }),
        fc.integer({ min: 1, max: 200 }),
        (times, n) => {
          expect(job(times, n + 1).high.value).toBeGreaterThanOrEqual(job(times, n).high.value - 1e-9);
          expect(job(times, n, { certainty: '95 %' }).high.value).toBeGreaterThanOrEqual(
            job(times, n).high.value - 1e-9,
          );
        },
      ),
      { numRuns: 60 },
    );
  });
});
