// How little the searches for the dearest board look at: a bound that failed would show here first, as many more boards looked at.
import { describe, expect, it } from 'vitest';
import { solveSmallKnapsack } from '../../../src/recipes/stock/cutting/small-instances.js';
import { knapsack, type Dearest } from '../../../src/recipes/stock/cutting/knapsack.js';
import { byRate } from '../../../src/recipes/stock/cutting/knapsack-search.js';
import { byTable } from '../../../src/recipes/stock/cutting/knapsack-table.js';
import { seeded } from '../../properties/legal-plan.js';
import { everyFilling } from './cutting-problems.js';

type Sack = Parameters<typeof byTable>[0];
const sackOf = (sizes: number[], prices: number[], limits: number[], capacity: number, atLeast = 0): Sack =>
  knapsack(sizes, { prices, limits }, capacity, atLeast);
const shown = ({ worth, counts, exact }: Dearest) => [worth, counts && [...counts], exact];
const ways = {
  byTable,
  byRate: (s: Sack) => byRate(s, 1e6),
  solveSmallKnapsack: (s: Sack) => solveSmallKnapsack(s, 1e6),
};

describe.each(Object.entries(ways))('%s', (_name, way) => {
  it('finds what trying every board finds, and nothing where no board is worth more than was asked', () => {
    const u = seeded(8);
    const whole = (low: number, high: number): number => low + Math.floor(u() * (high - low + 1));
    for (let run = 0; run < 150; run++) {
      const sizes = [...new Set(Array.from({ length: whole(1, 5) }, () => whole(8, 40)))].sort((a, b) => b - a); // prettier-ignore
      const prices = sizes.map(() => whole(1, 12) / 4);
      const limits = sizes.map(() => whole(1, 4));
      const capacity = whole(sizes[0]!, 6 * sizes.at(-1)! - 1 < sizes[0]! ? sizes[0]! : 6 * sizes.at(-1)! - 1); // prettier-ignore
      const best = Math.max(...everyFilling(sizes, limits, capacity).map((c) => c.reduce((s, n, i) => s + n * prices[i]!, 0))); // prettier-ignore
      const [found, none] = [best - 0.125, best].map((atLeast) => way(sackOf(sizes, prices, limits, capacity, atLeast))); // prettier-ignore
      expect([found!.worth, found!.exact]).toEqual([best, true]);
      expect(found!.counts!.reduce((s, n, i) => s + n * prices[i]!, 0)).toBe(best);
      expect(found!.counts!.reduce((s, n, i) => s + n * sizes[i]!, 0)).toBeLessThanOrEqual(capacity);
      found!.counts!.forEach((n, i) => expect(n).toBeLessThanOrEqual(limits[i]!));
      expect(shown(none!)).toEqual([best, undefined, true]);
    }
  });
});

describe('few big pieces', () => {
  it('where but one more fits it is looked up, not searched for', () => {
    // The dearest of 6 and 5 is the 5.
    expect(shown(solveSmallKnapsack(sackOf([6, 5], [1, 2], [1, 1], 9), 1))).toEqual([2, [0, 1], true]);
    expect(shown(solveSmallKnapsack(sackOf([5], [1], [1], 7), 0))).toEqual([0, undefined, false]);
    // Worth no more than was asked.
    expect(shown(solveSmallKnapsack(sackOf([6, 5], [1, 2], [1, 1], 9, 2), 1))).toEqual([2, undefined, true]);
    // Two fit: nothing, then the first, then, looked up, the second.
    expect(shown(solveSmallKnapsack(sackOf([5], [1], [2], 10), 2))).toEqual([2, [2], true]);
    expect(shown(solveSmallKnapsack(sackOf([5], [1], [2], 10), 1))[2]).toBe(false);
  });

  it('a board exactly full at the highest worth for its length ends the search', () => {
    // 50 for 100, of which there is one; the others are worth an eighth a unit, exact in binary, and three 30s fill 140.
    const sizes = [50, 30, 29, 28, 27, 26, 25, 24, 23, 22, 21];
    const prices = sizes.map((l) => (l === 50 ? 100 : l / 8));
    const limits = sizes.map((l) => (l === 50 ? 1 : 4));
    const got = solveSmallKnapsack(sackOf(sizes, prices, limits, 140), 12);
    expect([got.worth, got.exact]).toEqual([100 + 90 / 8, true]);
  });

  it('what the lengths cannot fill is not hoped for', () => {
    // Tens on 145: 140 is the most, though 145 at an eighth a unit would be worth more.
    const sizes = [70, 60, 50, 40, 30];
    const got = solveSmallKnapsack(sackOf(sizes, sizes.map((l) => l / 8), sizes.map(() => 4), 145), 8); // prettier-ignore
    expect([got.worth, got.exact]).toEqual([140 / 8, true]);
  });

  it('what fits to a hair is hoped for', () => {
    // 2100 alone is worth 2.5; three 1000s fill 3000 to the last for 3.
    expect(shown(solveSmallKnapsack(sackOf([2100, 1000], [2.5, 1], [1, 3], 3000), 99))).toEqual([
      3,
      [0, 3],
      true,
    ]);
  });
});

describe('the search by worth for length', () => {
  it('ends at a board exactly full at the highest worth', () => {
    // All an eighth a unit: 64 + 36 fill 100, and nothing can be worth more.
    const sizes = [64, 40, 36, 31, 29, 23, 17];
    const got = byRate(sackOf(sizes, sizes.map((l) => l / 8), sizes.map(() => 3), 100), 2); // prettier-ignore
    expect(shown(got)).toEqual([12.5, [1, 0, 1, 0, 0, 0, 0], true]);
  });

  it('looks at each size once on each way down, those too long for what is left aside', () => {
    // 7 at 2 a unit; then 5 and 4 at 1: 7 + 5 on 12 is full. From nothing the 7; from there the 5, and all else is bounded.
    const sack = sackOf([7, 5, 4], [14, 5, 4], [1, 1, 1], 12);
    expect(shown(byRate(sack, 2))).toEqual([19, [1, 1, 0], true]);
    expect(shown(byRate(sack, 1))).toEqual([14, [1, 0, 0], false]);
    expect(shown(byRate(sack, 0))).toEqual([0, undefined, false]);
  });

  it('takes fewer of a size only while the rest could still make up for it', () => {
    // 3s for 5 and 2s for 3.2 on 11: three 3s and a 2 are worth 18.2; two 3s and 2s by length at most 10 + 5 x 1.6 = 18.
    const sack = sackOf([3, 2], [5, 3.2], [6, 6], 11);
    const got = byRate(sack, 2);
    expect([got.worth, got.exact]).toEqual([expect.closeTo(18.2, 12), true]);
    expect(shown(byRate(sack, 1))).toEqual([15, [3, 0], false]);
  });

  it('passes by a size that does not fit what is left, and leaves a size out once', () => {
    // 6, beside which the 5 does not fit; then the 5 alone: two sizes put on a board, and no more.
    const sack = sackOf([6, 5], [6, 5], [1, 1], 10);
    expect(shown(byRate(sack, 2))).toEqual([6, [1, 0], true]);
    expect(shown(byRate(sack, 1))).toEqual([6, [1, 0], false]);
  });
});
