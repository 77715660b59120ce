import { describe, expect, it } from 'vitest';
import { studentTQuantile, studentTWithin } from '../../src/engine/student-t.js';

// Critical values of Student's t, NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.2 (recalled from the
// printed table, whose values stand in every table of statistics).
const published: readonly (readonly [degrees: number, p: number, t: number])[] = [
  [1, 0.9, 3.078],
  [1, 0.975, 12.706],
  [2, 0.95, 2.92],
  [3, 0.99, 4.541],
  [4, 0.975, 2.776],
  [5, 0.95, 2.015],
  [5, 0.999, 5.893],
  [10, 0.975, 2.228],
  [15, 0.9, 1.341],
  [20, 0.99, 2.528],
  [30, 0.975, 2.042],
  [60, 0.95, 1.671],
  [100, 0.975, 1.984],
];

describe('quantiles of Student’s t', () => {
  it.each(published)('%d degrees of freedom at %d: %d', (degrees, p, t) => {
    expect(studentTQuantile(p, degrees)).toBeCloseTo(t, 3);
    expect(studentTQuantile(1 - p, degrees)).toBeCloseTo(-t, 3);
  });

  it('for many degrees of freedom come to those of the normal distribution', () => {
    // 1.95996 (any table of the normal distribution); the difference is (x^3 + x) / (4 n).
    expect(studentTQuantile(0.975, 99_999)).toBeCloseTo(
      1.959964 + (1.959964 ** 3 + 1.959964) / 4 / 99_999,
      6,
    );
  });

  it('are where the probability is: closed forms for 1 and 2 degrees of freedom', () => {
    for (const t of [0.1, 1, 3, 40]) {
      expect(studentTWithin(t, 1)).toBeCloseTo((2 / Math.PI) * Math.atan(t), 14);
      expect(studentTWithin(t, 2)).toBeCloseTo(t / Math.sqrt(2 + t * t), 14);
    }
    expect(studentTQuantile(0.5, 7)).toBe(0);
  });

  it.each([
    [0, 5],
    [1, 5],
    [NaN, 5],
    [0.9, 0],
    [0.9, 2.5],
  ])('refuses p = %d with %d degrees of freedom', (p, degrees) => {
    expect(() => studentTQuantile(p, degrees)).toThrow(RangeError);
  });
});
