import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot } from '../../src/engine/root-finder.js';

describe('the root finder', () => {
  it.each([
    ['x^2 - 2', (x: number) => x * x - 2, 0, 2, Math.SQRT2],
    ['cos x - x', (x: number) => Math.cos(x) - x, 0, 1, 0.739085133215160641655],
    ['x^3 - 2 x - 5 (Wallis)', (x: number) => x ** 3 - 2 * x - 5, 2, 3, 2.094551481542326591482],
    ['a line met at an end', (x: number) => x - 1, 1, 4, 1],
    ['a root at 0', (x: number) => Math.sinh(x), -1, 3, 0],
  ])('finds that of %s to the last digits', (_, f, a, b, root) => {
    expect(Math.abs((findRoot(f, a, b)?.x as number) - root)).toBeLessThanOrEqual(4e-16 * Math.max(1, root));
  });

  it('halves where steps do not help: a flat curve, a jump', () => {
    expect(findRoot((x) => (x - 1) ** 9, 0, 2.7)?.x).toBeCloseTo(1, 1);
    const jump = findRoot((x) => (x < 0.3 ? -1 : 1), 0, 1);
    expect(jump?.x).toBeCloseTo(0.3, 14);
  });

  it('takes few calls', () => {
    let calls = 0;
    findRoot((x) => (calls++, Math.exp(x) - 5), 0, 10);
    expect(calls).toBeLessThan(25);
  });

  it('gives nothing where the function is not a number on the way', () => {
    expect(findRoot((x) => (x > 0.4 && x < 0.6 ? NaN : x - 0.5), 0, 1)).toBeUndefined();
  });

  it('stays between the ends and ends on a change of sign, whatever the polynomial', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 2, maxLength: 6 }),
        (c) => {
          const f = (x: number): number => c.reduce((sum, k) => sum * x + k, 0);
          const [a, b] = [-3, 3];
          fc.pre(Math.sign(f(a)) * Math.sign(f(b)) < 0);
          const x = findRoot(f, a, b)?.x as number;
          const e = 1e-9 * Math.max(1, Math.abs(x));
          expect(x >= a && x <= b).toBe(true);
          expect(f(x) === 0 || Math.sign(f(x - e)) !== Math.sign(f(x + e)) || Math.abs(f(x)) < 1e-9).toBe(
            true,
          );
        },
      ),
    );
  });
});
