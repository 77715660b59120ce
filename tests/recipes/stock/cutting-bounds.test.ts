import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boardsBound, lengthBound, meets, Totals } from '../../../src/recipes/stock/cutting/bounds.js';
import { leastCost, oneLength } from './cutting-problems.js';

describe('boards needed at least', () => {
  it.each([
    // sizes, demand, capacity, bound, why
    [[6], [3], 10, 3, 'pieces over half a board need one each, though their length is less than two boards'],
    [[5], [4], 10, 2, 'two halves share a board'],
    [[5], [5], 10, 3, 'the fifth half needs a third'],
    [[6, 4], [1, 1], 10, 1, 'a board exactly full'],
    [[7, 4], [1, 1], 10, 2, '11 on 10: the 7 leaves no room for a 4'],
    [[6, 4], [1, 3], 10, 2, 'one 4 beside the 6, two on another board'],
    [[6, 4], [1, 4], 10, 3, '22 on 10'],
    [[8, 3], [2, 2], 10, 3, 'the 3s fit beside no 8'],
    [[2], [11], 10, 3, '22 on 10'],
    [[9, 4], [5, 1], 10, 6, 'a 4 fits beside no 9, though five 9s leave 5 in all'],
    [[6, 5], [5, 1], 10, 6, 'a 5 fits beside no 6, though five 6s leave 20 in all'],
  ])('%j, %j on %s: %s (%s)', (sizes, demand, capacity, bound) => {
    expect(boardsBound(sizes, demand, capacity)).toBe(bound);
  });

  it('are never more than the best plan takes, nor fewer than the lengths alone need', () => {
    fc.assert(
      fc.property(oneLength, (p) => {
        const { capacity } = p.stock[0]!;
        const bound = boardsBound(p.sizes, p.demand, capacity);
        const total = p.sizes.reduce((s, l, i) => s + l * p.demand[i]!, 0);
        expect(bound).toBeLessThanOrEqual(leastCost(p));
        expect(bound).toBeGreaterThanOrEqual(Math.ceil(total / capacity));
        // Pieces over half a board each need one.
        expect(bound).toBeGreaterThanOrEqual(p.sizes.reduce((s, l, i) => s + (2 * l > capacity ? p.demand[i]! : 0), 0)); // prettier-ignore
      }),
      { numRuns: 300 },
    );
  });
});

describe('the cost of length alone', () => {
  it('takes the cheapest rates first, as far as their boards go', () => {
    // 25 wanted: 10 at 0.1 a unit from the one cheap board, 15 at 0.2.
    const stock = [
      { capacity: 10, cost: 2, count: Infinity },
      { capacity: 10, cost: 1, count: 1 },
    ];
    expect(lengthBound({ sizes: [5], demand: [5], stock, step: 1 })).toBeCloseTo(1 + 3, 12);
    expect(lengthBound({ sizes: [5], demand: [1], stock, step: 1 })).toBeCloseTo(0.5, 12);
  });
});

describe('totals that boards can add up to', () => {
  const totals = (costs: number[], step: number) =>
    new Totals({ sizes: [1], demand: [1], step, stock: costs.map((cost) => ({ capacity: 1, cost, count: 9 })) }); // prettier-ignore

  it('of 3 and 5: 0, 3, 5, 6, 8 and all from there', () => {
    const t = totals([3, 5], 1);
    expect([0, 0.1, 3, 3.1, 4, 5.5, 6, 6.1, 7, 8.5, 9.5].map((b) => t.roundUp(b))).toEqual([0, 3, 3, 5, 5, 6, 6, 8, 8, 9, 10]); // prettier-ignore
    // Asked again further up, and lower down once more.
    expect([100.5, 4].map((b) => t.roundUp(b))).toEqual([101, 5]);
  });

  it('forgive a bound that floating arithmetic put a millionth too high', () => {
    expect(totals([3, 5], 1).roundUp(3 + 0.9e-6)).toBe(3);
    expect(totals([3, 5], 1).roundUp(3 + 2e-6)).toBe(5);
    expect(totals([3], 1).roundUp(-1)).toBeCloseTo(0, 12);
  });

  it('of one kind are its multiples, in its own steps', () => {
    const t = totals([1.5, 1.5], 1.5);
    expect([0, 0.2, 1.5, 1.6, 4.5, 4.6].map((b) => t.roundUp(b))).toEqual([0, 1.5, 1.5, 3, 4.5, 6]);
  });

  it('of two kinds come in their own steps: of 1.5 and 2.5 there is no 2', () => {
    expect(totals([1.5, 2.5], 0.5).roundUp(2)).toBe(2.5);
  });

  it('too many to be searched are rounded by the step alone', () => {
    expect(totals([10_000_001, 10_000_003], 1).roundUp(4.5)).toBe(5);
    expect(totals([20_000_002, 20_000_006], 2).roundUp(9)).toBe(10);
  });

  it('of which there are twenty millions to look at are searched still', () => {
    // Two kinds, and 5 + 9 999 995 sums of each.
    expect(totals([9_999_990, 9_999_995], 1).roundUp(5)).toBe(9_999_990);
  });
});

it('a plan meets its bound within a millionth', () => {
  expect([meets(3, 3), meets(3 + 2.9e-6, 3), meets(3 + 3.1e-6, 3), meets(0.5 + 0.9e-6, 0.5), meets(0.5 + 1.1e-6, 0.5)]).toEqual([true, true, false, true, false]); // prettier-ignore
});
