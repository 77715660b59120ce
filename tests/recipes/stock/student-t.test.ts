import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { studentTQuantile } from '../../../src/recipes/student-t.js';

describe('quantiles of Student’s t', () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, critical values of Student's t. Read from memory.
  const probabilities = [0.9, 0.95, 0.975, 0.99, 0.995, 0.999];
  it.each([
    [1, ['3.078', '6.314', '12.706', '31.821', '63.657', '318.31']],
    [2, ['1.886', '2.920', '4.303', '6.965', '9.925', '22.327']],
    [5, ['1.476', '2.015', '2.571', '3.365', '4.032', '5.893']],
    [30, ['1.310', '1.697', '2.042', '2.457', '2.750', '3.385']],
    [100, ['1.290', '1.660', '1.984', '2.364', '2.626', '3.174']],
  ])('agree with the printed table for %i degrees of freedom', (degrees, printed) => {
    expect(
      probabilities.map((p, i) => studentTQuantile(p, degrees).toFixed(printed[i]!.split('.')[1]!.length)),
    ).toEqual(printed);
  });

  const probability = fc.double({ min: 0.001, max: 0.999, noNaN: true });
  it('are those of the Cauchy distribution for one degree, and closed for two', () => {
    fc.assert(
      fc.property(probability, (p) => {
        expect(studentTQuantile(p, 1)).toBeCloseTo(Math.tan(Math.PI * (p - 0.5)), 7);
        expect(studentTQuantile(p, 2)).toBeCloseTo((2 * p - 1) / Math.sqrt(2 * p * (1 - p)), 9);
      }),
    );
  });

  it('are symmetric, rise with the probability and shrink in the tails as degrees are added', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.51, max: 0.99, noNaN: true }),
        fc.integer({ min: 1, max: 400 }),
        (p, n) => {
          expect(studentTQuantile(1 - p, n)).toBeCloseTo(-studentTQuantile(p, n), 9);
          expect(studentTQuantile(p + 0.005, n)).toBeGreaterThan(studentTQuantile(p, n));
          expect(studentTQuantile(p, n + 1)).toBeLessThan(studentTQuantile(p, n));
        },
      ),
    );
  });
});
