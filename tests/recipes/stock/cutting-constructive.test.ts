import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TimeLimit } from '../../../src/recipes/stock/cutting/time-limit.js';
import {
  bestFit,
  fullest,
  fullestFirst,
  longestFirst,
} from '../../../src/recipes/stock/cutting/constructive-heuristics.js';
import { rootOf } from '../../../src/recipes/stock/cutting/search-context.js';
import { packingOf, patternOf, type CuttingProblem } from '../../../src/recipes/stock/cutting/problem.js';
import { everyFilling, faultsOf, leastCost, oneLength } from './cutting-problems.js';

const ample = () => new TimeLimit(Infinity, () => false);
const late = () => new TimeLimit(Infinity, () => true);
const counted = (
  p: CuttingProblem,
  boards: readonly { pattern: { items: readonly (readonly [number, number])[] }; times: number }[],
) => boards.map((b) => [b.times, ...p.sizes.map((_, i) => b.pattern.items.find(([j]) => j === i)?.[1] ?? 0)]);

describe('the fullest board with the longest piece on it', () => {
  const fill = (
    sizes: readonly number[],
    left: readonly number[],
    capacity: number,
    nodes = 1e6,
  ): [number, number[]] => {
    const counts = new Int32Array(sizes.length);
    return [fullest(sizes, Int32Array.from(left), capacity, counts, nodes), [...counts]];
  };
  it.each([
    [[6, 5, 4, 3], [1, 2, 1, 1], 10, 10, [1, 0, 1, 0]],
    [[6, 5, 4, 3], [1, 2, 0, 1], 10, 9, [1, 0, 0, 1]],
    [[6, 5, 4, 3], [0, 2, 1, 1], 10, 10, [0, 2, 0, 0]],
    [[6, 5, 4, 3], [1, 1, 0, 0], 10, 6, [1, 0, 0, 0]],
    [[5], [2], 10, 10, [2]],
    [[5], [1], 10, 5, [1]],
    [[5, 3], [3, 3], 11, 11, [1, 2]],
    [[12, 6, 4], [1, 1, 1], 10, 10, [0, 1, 1]],
    [[12, 11], [1, 1], 10, 0, [0, 0]],
    [[6], [0], 10, 0, [0]],
    [[10], [1], 10, 10, [1]],
  ])('%j of %j on %s uses %s', (sizes, left, capacity, used, counts) => {
    expect(fill(sizes, left, capacity)).toEqual([used, counts]);
  });

  it('is the fullest of all fillings that have it', () => {
    fc.assert(
      fc.property(oneLength, ({ sizes, demand, stock }) => {
        const { capacity } = stock[0]!;
        const all = everyFilling(sizes, demand, capacity).filter((c) => c[0]! > 0);
        const length = (c: readonly number[]): number => c.reduce((s, n, i) => s + n * sizes[i]!, 0);
        const [used, counts] = fill(sizes, demand, capacity);
        expect(used).toBe(Math.max(...all.map(length)));
        expect(length(counts)).toBe(used);
        counts.forEach((n, i) => expect(n).toBeLessThanOrEqual(demand[i]!));
      }),
      { numRuns: 300 },
    );
  });

  it('cut off at once has the longest piece alone, and cut off later what was found till then', () => {
    expect(fill([6, 4], [1, 1], 10, 1)).toEqual([6, [1, 0]]);
    // The second board looked at is 6 + 5; 6 + 4 + 4, the next, is not come to.
    expect(fill([6, 5, 4], [1, 1, 2], 14, 2)).toEqual([11, [1, 1, 0]]);
    expect(fill([6, 5, 4], [1, 1, 2], 14, 9)).toEqual([14, [1, 0, 2]]);
  });

  it('of two as full is the one with the longer pieces: 6 + 5 and not 6 + 3 + 2 on 12', () => {
    expect(fill([6, 5, 3, 2], [1, 1, 1, 1], 12)).toEqual([11, [1, 1, 0, 0]]);
  });
});

describe('whole plans by plain rules', () => {
  const p: CuttingProblem = { sizes: [6, 4, 3], demand: [1, 1, 2], stock: [{ capacity: 10, cost: 1, count: Infinity }], step: 1 }; // prettier-ignore

  it('longest first: 6 and 4, then two 3s', async () => {
    const plan = await longestFirst(p, rootOf(p), ample());
    expect(counted(p, plan.boards)).toEqual([[1, 1, 1, 0], [1, 0, 0, 2]]); // prettier-ignore
    expect(plan.cost).toBe(2);
    // Like boards come together: seven 4s on 10 are three boards of two, and one of one.
    const like = { ...p, sizes: [4], demand: [7] };
    expect(counted(like, (await longestFirst(like, rootOf(like), ample())).boards)).toEqual([[3, 2], [1, 1]]); // prettier-ignore
  });

  it('each board is the one cheapest for the length it uses, as long as there are any', async () => {
    const two: CuttingProblem = {
      sizes: [6],
      demand: [3],
      // A 6 costs 1/6 a unit on the long board and 0.5/6 on the short one, of which there are two.
      stock: [{ capacity: 10, cost: 1, count: Infinity }, { capacity: 6, cost: 0.5, count: 2 }], // prettier-ignore
      step: 0.5,
    };
    for (const plan of [
      await longestFirst(two, rootOf(two), ample()),
      (await fullestFirst(two, rootOf(two), 99, ample()))!,
    ]) {
      // prettier-ignore
      expect(plan.boards.map((b) => [b.pattern.stock, b.times])).toEqual([[1, 2], [0, 1]]); // prettier-ignore
      expect(plan.cost).toBe(2);
    }
    // Best fit takes the board cheapest for its own length: 0.5/6 against 1/10.
    expect(bestFit(two).boards.map((b) => b.pattern.stock)).toEqual([1, 1, 0]);
    expect(bestFit(two).cost).toBe(2);
  });

  it('a board is chosen by its cost for the length it uses, not by either alone; of equals the first', async () => {
    const of = (demand: number, ...stock: [number, number][]): CuttingProblem => ({ sizes: [5], demand: [demand], stock: stock.map(([capacity, cost]) => ({ capacity, cost, count: Infinity })), step: 0.1 }); // prettier-ignore
    const chosen = async (p: CuttingProblem) =>
      [await longestFirst(p, rootOf(p), ample()), (await fullestFirst(p, rootOf(p), 99, ample()))!, bestFit(p)].map((plan) => plan.boards.map((b) => b.pattern.stock)); // prettier-ignore
    // Two 5s at 0.1 a unit on the board of 10, at 0.12 on those of 5, whichever is named first.
    expect(await chosen(of(2, [10, 1], [5, 0.6]))).toEqual([[0], [0], [0]]);
    expect(await chosen(of(2, [5, 0.6], [10, 1]))).toEqual([[1], [1], [1]]);
    // 0.1 a unit on either.
    expect(await chosen(of(2, [10, 1], [5, 0.5]))).toEqual([[0], [0], [0]]);
    expect(await chosen(of(2, [5, 0.5], [10, 1]))).toEqual([[0], [0], [0, 0]]);
    // Out of time: by the cost for the whole board, 0.2 against 0.3, or 0.2 against 0.2.
    for (const [stock, first] of [
      [
        [
          [20, 4],
          [10, 3],
        ],
        0,
      ],
      [
        [
          [10, 3],
          [20, 4],
        ],
        1,
      ],
      [
        [
          [20, 4],
          [10, 2],
        ],
        0,
      ],
    ] as [[number, number][], number][]) {
      // prettier-ignore
      const p = of(1, ...stock);
      expect((await longestFirst(p, rootOf(p), late())).boards.map((b) => b.pattern.stock)).toEqual([first]);
    }
  });

  it('best fit passes over a cheap board that is too short, and takes the first of boards with equal room', () => {
    const p: CuttingProblem = { sizes: [8], demand: [1], stock: [{ capacity: 4, cost: 0.1, count: Infinity }, { capacity: 10, cost: 1, count: Infinity }], step: 0.1 }; // prettier-ignore
    expect(bestFit(p).boards.map((b) => b.pattern.stock)).toEqual([1]);
    const two: CuttingProblem = { sizes: [7, 3], demand: [2, 1], stock: [{ capacity: 10, cost: 1, count: Infinity }], step: 1 }; // prettier-ignore
    expect(counted(two, bestFit(two).boards)).toEqual([[1, 1, 1], [1, 1, 0]]); // prettier-ignore
  });

  it('fullest first finds the pair that longest first misses: 5 with 3 and 3, not 5 with 4', async () => {
    const q: CuttingProblem = { sizes: [5, 4, 3], demand: [1, 1, 2], stock: [{ capacity: 11, cost: 1, count: Infinity }], step: 1 }; // prettier-ignore
    expect(counted(q, (await fullestFirst(q, rootOf(q), 99, ample()))!.boards)[0]).toEqual([1, 1, 0, 2]);
    expect(counted(q, (await longestFirst(q, rootOf(q), ample())).boards)[0]).toEqual([1, 1, 1, 0]);
  });

  it('best fit puts a piece where least room is left', () => {
    // 7 and 6 open boards with rooms of 3 and 4; the 4 fills the second, the 3 the first, and the next 3 opens a third.
    const q: CuttingProblem = { sizes: [7, 6, 4, 3], demand: [1, 1, 1, 2], stock: [{ capacity: 10, cost: 1, count: Infinity }], step: 1 }; // prettier-ignore
    expect(counted(q, bestFit(q).boards)).toEqual([[1, 1, 0, 0, 1], [1, 0, 1, 1, 0], [1, 0, 0, 0, 1]]); // prettier-ignore
    // Rooms of 5 and 4 after a 15 and a 16 of 20: a 4 goes into the room of 4, though that of 5 was open first.
    const r: CuttingProblem = { sizes: [16, 15, 4], demand: [1, 1, 1], stock: [{ capacity: 20, cost: 1, count: Infinity }], step: 1 }; // prettier-ignore
    expect(counted(r, bestFit(r).boards)).toEqual([[1, 1, 0, 1], [1, 0, 1, 0]]); // prettier-ignore
  });

  it('are lawful and cost no less than the best, in time or out of it', async () => {
    const several = oneLength.chain((one) =>
      fc.record({ extra: fc.integer({ min: 21, max: 40 }), cost: fc.integer({ min: 1, max: 3 }), count: fc.integer({ min: 1, max: 2 }) }).map(({ extra, cost, count }) => ({ ...one, stock: [...one.stock, { capacity: extra, cost, count }] }))); // prettier-ignore
    await fc.assert(
      fc.asyncProperty(several, async (q) => {
        const least = leastCost(q);
        const plans = [
          await longestFirst(q, rootOf(q), ample()),
          await longestFirst(q, rootOf(q), late()),
          (await fullestFirst(q, rootOf(q), 1000, ample()))!,
          bestFit(q),
        ];
        for (const plan of plans) {
          expect(faultsOf(q, plan.boards)).toEqual([]);
          expect(plan.cost).toBeCloseTo(plan.boards.reduce((s, b) => s + b.times * q.stock[b.pattern.stock]!.cost, 0), 12); // prettier-ignore
          expect(plan.cost).toBeGreaterThanOrEqual(least - 1e-12);
        }
        expect(await fullestFirst(q, rootOf(q), 1000, late())).toBeUndefined();
      }),
      { numRuns: 100 },
    );
  });

  it('out of time keep to the stock cheapest for its length that holds the longest piece', async () => {
    const q: CuttingProblem = {
      sizes: [8, 3],
      demand: [1, 1],
      stock: [{ capacity: 20, cost: 9, count: Infinity }, { capacity: 4, cost: 1, count: Infinity }, { capacity: 10, cost: 4, count: 1 }], // prettier-ignore
      step: 1,
    };
    const plan = await longestFirst(q, rootOf(q), late());
    expect(plan.boards.map((b) => b.pattern.stock)).toEqual([2, 1]);
  });
});

describe('boards put together', () => {
  const p: CuttingProblem = { sizes: [6, 4], demand: [2, 3], stock: [{ capacity: 10, cost: 2, count: 9 }], step: 1 }; // prettier-ignore
  const pattern = (a: number, b: number) => patternOf(0, [a, b]);

  it('are the same boards together', () => {
    expect(pattern(0, 2)).toEqual({ stock: 0, items: [[1, 2]] });
    const got = packingOf(p, [{ pattern: pattern(1, 1), times: 1 }, { pattern: pattern(0, 1), times: 1 }, { pattern: pattern(1, 1), times: 1 }]); // prettier-ignore
    expect(counted(p, got.boards)).toEqual([[2, 1, 1], [1, 0, 1]]); // prettier-ignore
    expect(got.cost).toBe(6);
  });

  it('are cut as often as they were chosen, though more is wanted', () => {
    const got = packingOf(p, [{ pattern: pattern(1, 0), times: 1 }]);
    expect([counted(p, got.boards), got.cost]).toEqual([[[1, 1, 0]], 2]);
  });

  it('without the pieces beyond what is wanted, nor a board left with none', () => {
    // Four boards of 4 + 4 are eight 4s of three wanted: one whole, one of a single 4, the others not cut.
    const got = packingOf(p, [{ pattern: pattern(1, 0), times: 5 }, { pattern: pattern(0, 2), times: 4 }]); // prettier-ignore
    expect(counted(p, got.boards)).toEqual([[2, 1, 0], [1, 0, 2], [1, 0, 1]]); // prettier-ignore
    expect(got.cost).toBe(8);
  });
});
