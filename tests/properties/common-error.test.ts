import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceAllFit } from '../../src/recipes/joinery/common-error.js';

const num = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const spread = fc.record({
  tightest: num(-0.1, 0.05),
  loosest: num(0.06, 0.4),
  mean: num(-0.1, 0.4),
  own: num(0.01, 0.2),
  common: num(0.01, 0.2),
});

describe('joints cut at one setting', () => {
  it('one joint has the chance of the two errors added as variances', () => {
    fc.assert(
      fc.property(spread, (s) => {
        const both = { ...s, own: Math.hypot(s.own, s.common), common: 0 };
        expect(chanceAllFit(s, 1)).toBeCloseTo(chanceAllFit(both, 1), 6);
      }),
    );
  });
  it('all fit at least as often as if each erred by itself, and never more often than one does', () => {
    fc.assert(
      fc.property(spread, fc.integer({ min: 2, max: 40 }), (s, n) => {
        const one = chanceAllFit(s, 1);
        const all = chanceAllFit(s, n);
        // Jensen: the mean of a power is at least the power of the mean.
        expect(all).toBeGreaterThanOrEqual(one ** n - 1e-6);
        expect(all).toBeLessThanOrEqual(one + 1e-6);
        expect(chanceAllFit(s, n + 1)).toBeLessThanOrEqual(all + 1e-9);
      }),
    );
  });
  it('wholly common or wholly own are the two ends', () => {
    fc.assert(
      fc.property(spread, fc.integer({ min: 1, max: 20 }), (s, n) => {
        expect(chanceAllFit({ ...s, own: 0 }, n)).toBeCloseTo(chanceAllFit({ ...s, own: 0 }, 1), 12);
        expect(chanceAllFit({ ...s, own: 1e-5 }, n)).toBeCloseTo(chanceAllFit({ ...s, own: 0 }, n), 2);
        expect(chanceAllFit({ ...s, common: 0 }, n)).toBeCloseTo(
          chanceAllFit({ ...s, common: 0 }, 1) ** n,
          12,
        );
      }),
    );
  });
});
