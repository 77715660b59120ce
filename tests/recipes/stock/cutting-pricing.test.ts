import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveSmallKnapsack } from '../../../src/recipes/stock/cutting/small-instances.js';
import { knapsack, type Dearest } from '../../../src/recipes/stock/cutting/knapsack.js';
import { byRate } from '../../../src/recipes/stock/cutting/knapsack-search.js';
import { byTable } from '../../../src/recipes/stock/cutting/knapsack-table.js';
import { dearest, quickly } from '../../../src/recipes/stock/cutting/pricing.js';
import { seeded } from '../../properties/legal-plan.js';
import { everyFilling } from './cutting-problems.js';

const worthOf = (counts: ArrayLike<number>, prices: readonly number[]): number =>
  prices.reduce((s, p, i) => s + p * (counts[i] as number), 0);
/** A board must be what it says: worth its worth, within its room and its limits. */
function lawful(
  got: Dearest,
  sizes: readonly number[],
  prices: readonly number[],
  limits: readonly number[],
  capacity: number,
): void {
  if (!got.counts) return;
  expect(worthOf(got.counts, prices)).toBeCloseTo(got.worth, 9);
  expect(worthOf(got.counts, sizes)).toBeLessThanOrEqual(capacity);
  got.counts.forEach((n, i) => expect(n).toBeLessThanOrEqual(limits[i]!));
}

// Few big pieces, so that all three ways may be asked: no board here takes six of the shortest.
const job = fc
  .record({
    sizes: fc.uniqueArray(fc.integer({ min: 8, max: 40 }), { minLength: 1, maxLength: 5 }),
    prices: fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 5, maxLength: 5 }),
    limits: fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 5, maxLength: 5 }),
    room: fc.double({ min: 0, max: 1, noNaN: true }),
  })
  .map(({ sizes, prices, limits, room }) => ({
    sizes: sizes.sort((a, b) => b - a),
    prices: prices.slice(0, sizes.length).map((p) => p / 4),
    limits: limits.slice(0, sizes.length),
    capacity: 9 + Math.floor(room * (6 * Math.min(...sizes) - 10)),
  }));

describe('the board worth most', () => {
  const ways = {
    byTable,
    byRate: (s: Parameters<typeof byTable>[0]) => byRate(s, 1e6),
    solveSmallKnapsack: (s: Parameters<typeof byTable>[0]) => solveSmallKnapsack(s, 1e6),
  };
  it.each(Object.entries(ways))('%s is the best of all ways to fill it', (name, way) => {
    fc.assert(
      fc.property(job, fc.integer({ min: 0, max: 40 }), ({ sizes, prices, limits, capacity }, floor) => {
        const best = Math.max(...everyFilling(sizes, limits, capacity).map((c) => worthOf(c, prices)));
        const atLeast = floor / 8;
        const sack = knapsack(sizes, { prices, limits }, capacity, atLeast);
        if (name === 'solveSmallKnapsack' && sack.items.length === 0) return;
        const got = way(sack);
        expect(got.exact).toBe(true);
        expect(got.worth).toBeCloseTo(Math.max(best, atLeast), 9);
        expect(got.counts !== undefined).toBe(best > atLeast);
        lawful(got, sizes, prices, limits, capacity);
      }),
      { numRuns: 600 },
    );
  });

  it('of a hand’s choice: 6 and 4 fill 10 for 7, two 5s for 6, three 3s for 6', () => {
    const sack = knapsack([6, 5, 4, 3], { prices: [4, 3, 3, 2], limits: [9, 9, 9, 9] }, 10, 0);
    for (const got of [byTable(sack), byRate(sack, 1e5), solveSmallKnapsack(sack, 1e5)]) {
      expect(got.worth).toBe(7);
      expect([...got.counts!]).toEqual([1, 0, 1, 0]);
    }
    // With one 4 gone to nothing, and one 3 at most: 6 and 3 for 6, or two 5s for 6.
    const less = knapsack([6, 5, 4, 3], { prices: [4, 3, 0, 2], limits: [9, 9, 9, 1] }, 10, 5.9);
    expect(less.items.map((i) => i.at)).toEqual([0, 1, 3]);
    for (const got of [byTable(less), byRate(less, 1e5), solveSmallKnapsack(less, 1e5)])
      expect(got.worth).toBe(6);
    // Too long, not wanted, worth nothing: not looked at.
    expect(knapsack([11, 10, 5], { prices: [1, 1, 1], limits: [1, 1, 0] }, 10, 0).items.map((i) => i.at)).toEqual([1]); // prettier-ignore
  });

  it('takes a size as often as its limit, and more than 255 at most 255 times', () => {
    const many = (limit: number) => byTable(knapsack([1], { prices: [1], limits: [limit] }, 300, 0)).worth;
    expect([many(7), many(255), many(280)]).toEqual([7, 255, 255]);
  });

  it('cut off early is not called exact, and is still a lawful board', () => {
    const u = seeded(3);
    const sizes = Array.from({ length: 25 }, (_, i) => 400 - 9 * i);
    const prices = sizes.map((l) => l * (0.9 + 0.2 * u()));
    const limits = sizes.map(() => 3);
    const sack = knapsack(sizes, { prices, limits }, 3000, 0);
    const full = byTable(sack);
    const cut = byRate(sack, 30);
    expect(cut.exact).toBe(false);
    expect(cut.worth).toBeGreaterThan(0.9 * full.worth);
    expect(cut.worth).toBeLessThanOrEqual(full.worth + 1e-9);
    lawful(cut, sizes, prices, limits, 3000);
    const few = solveSmallKnapsack(knapsack(sizes, { prices, limits }, 1100, 0), 9);
    expect(few.exact).toBe(false);
    lawful(few, sizes, prices, limits, 1100);
    lawful(quickly(sizes, { prices, limits }, 3000, 0), sizes, prices, limits, 3000);
    expect(quickly(sizes, { prices, limits }, 3000, full.worth).counts).toBeUndefined();
  });

  it.each([
    ['few big pieces', 200_000, 35_000, 60_000],
    ['many small pieces', 200_000, 4_000, 60_000],
  ])('is the same whichever way is taken for %s', (_what, capacity, low, high) => {
    const u = seeded(low);
    for (let run = 0; run < 6; run++) {
      const sizes = [...new Set(Array.from({ length: 12 }, () => low + Math.floor(u() * (high - low))))].sort((a, b) => b - a); // prettier-ignore
      const prices = sizes.map((l) => (l / capacity) * (0.8 + 0.4 * u()));
      const limits = sizes.map(() => 1 + Math.floor(u() * 4));
      const truth = byTable(knapsack(sizes, { prices, limits }, capacity, 0));
      const got = dearest(sizes, { prices, limits }, capacity, 0);
      lawful(got, sizes, prices, limits, capacity);
      expect(got.worth).toBeLessThanOrEqual(truth.worth + 1e-9);
      if (got.exact) expect(got.worth).toBeCloseTo(truth.worth, 9);
      // Asked for more than there is, the answer must be proved, or nobody could stop.
      const none = dearest(sizes, { prices, limits }, capacity, truth.worth);
      expect([none.exact, none.counts]).toEqual([true, undefined]);
    }
  });

  it('on boards beyond any table is searched for, and not called exact when the search is cut off', () => {
    const u = seeded(5);
    const sizes = [...new Set(Array.from({ length: 45 }, () => 1e8 + Math.floor(u() * 2e8)))].sort((a, b) => b - a); // prettier-ignore
    const limits = sizes.map(() => 9);
    const capacity = 2_000_000_011;
    // Every millimetre is worth the same: only a board full to the last is worth 1.
    const prices = sizes.map((l) => l / capacity);
    const got = dearest(sizes, { prices, limits }, capacity, 1 - 1e-10);
    expect([got.exact, got.counts]).toEqual([false, undefined]);
    const less = dearest(sizes, { prices, limits }, capacity, 0.9);
    lawful(less, sizes, prices, limits, capacity);
    expect(less.worth).toBeGreaterThan(0.99);
  });
});
