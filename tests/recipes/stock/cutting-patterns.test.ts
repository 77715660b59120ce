import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TimeLimit } from '../../../src/recipes/stock/cutting/time-limit.js';
import { gatherOffcuts, type Board } from '../../../src/recipes/stock/cutting/offcuts.js';
import { fillings, patternsWithin } from '../../../src/recipes/stock/cutting/patterns.js';
import { everyFilling, ofOneLength, oneLength } from './cutting-problems.js';

const ample = () => new TimeLimit(Infinity, () => false);

describe('patterns that a better plan could use', () => {
  const dense = (sizes: readonly number[], items: readonly (readonly [number, number])[]): string =>
    sizes.map((_, i) => items.find(([j]) => j === i)?.[1] ?? 0).join();

  it('are all boards worth enough that have no room for one piece more', () => {
    fc.assert(
      fc.property(
        oneLength,
        fc.array(fc.integer({ min: 0, max: 8 }), { minLength: 4, maxLength: 4 }),
        fc.integer({ min: -4, max: 24 }),
        (p, eighths, need) => {
          const { capacity } = p.stock[0]!;
          // Eighths, so that sums are exact.
          const prices = p.sizes.map((_, i) => eighths[i]! / 8);
          const needed = need / 8;
          const room = (c: readonly number[]): number => c.reduce((s, n, i) => s - n * p.sizes[i]!, capacity);
          const all = everyFilling(p.sizes, p.demand, capacity)
            .filter((c) => c.reduce((s, n, i) => s + n * prices[i]!, 0) >= needed)
            .filter((c) => !c.some((n, i) => n < p.demand[i]! && p.sizes[i]! <= room(c)));
          const got = [...fillings(p, 0, prices, needed - 1e-12)].flatMap((items) => (items ? [dense(p.sizes, items)] : [])); // prettier-ignore
          expect([...got].sort()).toEqual(all.map((c) => c.join()).sort());
        },
      ),
      { numRuns: 400 },
    );
  });

  // 6, 4 and 3 on 10 at what they are worth by length: only 6 + 4 and 4 + 3 + 3 are full.
  const p = ofOneLength([6, 4, 3], [2, 2, 3], 10);
  const relaxed = { prices: Float64Array.from([0.6, 0.4, 0.3]), stockPrices: new Float64Array(1) };
  const within = async (gap: number, most: number, clock = ample()) =>
    (await patternsWithin(p, relaxed, gap, most, clock))?.map((q) => dense(p.sizes, q.items)).sort();

  it('by hand: no gap leaves full boards alone, a tenth those that waste one', async () => {
    expect(await within(0, 9)).toEqual(['0,1,2', '1,1,0']);
    expect(await within(0.1, 9)).toEqual(['0,0,3', '0,1,2', '1,0,1', '1,1,0']);
    expect(await within(0.2, 9)).toEqual(['0,0,3', '0,1,2', '0,2,0', '1,0,1', '1,1,0']);
  });

  it('are given up beyond the number asked for, or when time is up', async () => {
    expect((await within(0.1, 4))?.length).toBe(4);
    expect(await within(0.1, 3)).toBeUndefined();
    const long = ofOneLength(Array.from({ length: 40 }, (_, i) => 140 - i), new Array<number>(40).fill(3), 1000); // prettier-ignore
    const worth = {
      prices: Float64Array.from(long.sizes, (l) => l / 1000),
      stockPrices: new Float64Array(1),
    };
    expect(await patternsWithin(long, worth, 0.5, 1e9, new TimeLimit(Infinity, () => true))).toBeUndefined();
    expect(await patternsWithin(long, worth, 0.5, 1e9, new TimeLimit(performance.now() + 60, () => false))).toBeUndefined(); // prettier-ignore
    // A board’s price is its cost less what one more of it would save.
    const dear = { prices: relaxed.prices, stockPrices: Float64Array.from([-0.2]) };
    expect(await patternsWithin(p, dear, 0.2, 9, ample())).toHaveLength(2);
  });
});

describe('how boards are gone through', () => {
  it('those worth just what is needed are among them, sizes in their order', () => {
    // 0.125 a unit, exact in binary: 4 + 4, 4 + 2 + 2 and 2 + 2 + 2 + 2 on 8 are worth 1; the 2s are dearer by length below.
    const p = ofOneLength([4, 2], [2, 4], 8);
    const all = (prices: number[], needed: number) => [...fillings(p, 0, prices, needed)].filter((x) => x);
    expect(all([0.5, 0.25], 1)).toEqual([[[0, 2]], [[0, 1], [1, 2]], [[1, 4]]]); // prettier-ignore
    expect(all([0.5, 0.5], 1.5)).toEqual([[[1, 4]], [[0, 1], [1, 2]]]); // prettier-ignore
  });

  // Forty sizes of 100 to 140 on 1000, all worth their length: very many boards are looked at, few are full.
  const many = ofOneLength(Array.from({ length: 40 }, (_, i) => 2 * (140 - i)), new Array<number>(40).fill(1), 1001); // prettier-ignore
  const worth = { prices: Float64Array.from(many.sizes, (l) => l / 1001), stockPrices: new Float64Array(1) };

  it('the clock is looked at once in 4096 boards', async () => {
    const two = ofOneLength(many.sizes.slice(0, 26), many.demand.slice(0, 26), 1001); // prettier-ignore
    const price = { prices: worth.prices.slice(0, 26), stockPrices: worth.stockPrices };
    const boards = [...fillings(two, 0, price.prices, -1)].length;
    let looks = 0;
    const clock = new TimeLimit(Infinity, () => {
      looks++;
      return false;
    });
    expect(await patternsWithin(two, price, 1.1, 1e6, clock)).toBeDefined();
    expect(looks).toBe(Math.floor(boards / 4096));
    expect([looks > 0, looks < 10]).toEqual([true, true]);
  });

  it('they are given up when four hundred were looked at for each that is allowed', async () => {
    // 1001 is odd and all sizes are even: no board is full, yet any three may still come to be.
    const none = await patternsWithin(many, worth, 0, 10, ample());
    expect(none).toBeUndefined();
  });
});

describe('offcuts gathered', () => {
  const p = ofOneLength([8, 5, 2], [9, 9, 9], 20);
  const gather = (...boards: number[][]): number[][] =>
    gatherOffcuts(p, boards.map((pieces) => ({ stock: 0, pieces })), () => false).map((b) => b.pieces.map((i) => p.sizes[i]!)); // prettier-ignore
  const sorted = (boards: number[][]) => boards.map((b) => b.join()).sort();

  it('by hand: two boards with 7 left each become one full to 18 and one with 12 left', () => {
    expect(sorted(gather([0, 1], [0, 1]))).toEqual(['8', '8,5,5']);
    // 8 + 5 + 5 + 2 fills a board; one 5 is left on the other.
    expect(sorted(gather([0, 1, 2], [1, 1]))).toEqual(['5', '8,5,5,2']);
    // Nothing to gain: full boards, and one board.
    expect(sorted(gather([0, 1, 1, 2], [0, 1, 1, 2]))).toEqual(['8,5,5,2', '8,5,5,2']);
    expect(gather([0, 1])).toEqual([[8, 5]]);
    // All fits on one board: the other is not cut.
    expect(gather([1], [1, 0])).toEqual([[8, 5, 5]]);
  });

  it('leaves a job of more than eighty boards, or one that must stop, as it is', () => {
    const eighty = Array.from({ length: 80 }, () => [0, 1]);
    expect(gather(...eighty)).not.toEqual(Array.from({ length: 80 }, () => [8, 5]));
    expect(gather(...eighty, [0, 1])).toEqual(Array.from({ length: 81 }, () => [8, 5]));
    const stopped = gatherOffcuts(p, [{ stock: 0, pieces: [0, 1] }, { stock: 0, pieces: [0, 1] }], () => true); // prettier-ignore
    expect(stopped.map((b) => b.pieces)).toEqual([[0, 1], [0, 1]]); // prettier-ignore
  });

  it('ends soon where very many pieces could be put together in very many ways', () => {
    // Twelve even pieces on each board, of which no choice fills an odd room: sixteen million choices are not all gone through.
    const sizes = Array.from({ length: 24 }, (_, i) => 2 * (90 - i) ** 2);
    const capacity = Math.ceil(sizes.reduce((a, b) => a + b) / 2) + 5001;
    const halves = [0, 1].map((odd) => ({ stock: 0, pieces: sizes.flatMap((_, i) => (i % 2 === odd ? [i] : [])) })); // prettier-ignore
    let turns = 0;
    const got = gatherOffcuts(ofOneLength(sizes, sizes.map(() => 1), capacity), halves, () => ++turns > 3); // prettier-ignore
    expect(got.flatMap((b) => b.pieces).sort((a, b) => a - b)).toEqual(sizes.map((_, i) => i));
    const used = got.map((b) => b.pieces.reduce((s, i) => s + sizes[i]!, 0));
    // One board is all but full.
    expect(Math.max(...used)).toBeLessThanOrEqual(capacity);
    expect(Math.max(...used)).toBeGreaterThan(0.999 * capacity);
  });

  it('begins with eighty boards, and not with eighty-one', () => {
    const after = (n: number): number[][] => {
      let looks = 0;
      return gatherOffcuts(p, Array.from({ length: n }, () => ({ stock: 0, pieces: [0, 1] })), () => ++looks > 3).map((b) => [...b.pieces]); // prettier-ignore
    };
    // The first two boards of 8 + 5 become 8 + 5 + 5 and 8.
    expect(after(80)).toContainEqual([0, 1, 1]);
    expect(after(81)).toEqual(Array.from({ length: 81 }, () => [0, 1]));
  });

  it('leaves boards of more than 24 pieces together alone', () => {
    const many = (n: number) =>
      gatherOffcuts(ofOneLength([5, 1], [2, 30], 20), [{ stock: 0, pieces: [0, ...new Array<number>(n - 2).fill(1)] }, { stock: 0, pieces: [0] }], () => false).length; // prettier-ignore
    // Fourteen 1s and two 5s on 20 and 20: with 16 pieces in all they go 20 and 4, on two boards still.
    expect(many(12)).toBe(1);
    const p30 = ofOneLength([5, 1], [2, 40], 35);
    const at = (n: number): number =>
      Math.min(...gatherOffcuts(p30, [{ stock: 0, pieces: [0, ...new Array<number>(n - 2).fill(1)] }, { stock: 0, pieces: [0] }], () => false).map((b) => b.pieces.length)); // prettier-ignore
    // 24 pieces: 22 ones and two 5s are 32 on one board of 35. 25 are left as they lie.
    expect(at(24)).toBe(24);
    expect(at(25)).toBe(1);
  });

  it('keeps every piece, overfills no board, and leaves nothing shorter than there was', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.integer({ min: 0, max: 2 }), { minLength: 1, maxLength: 4 }), {
          minLength: 1,
          maxLength: 6,
        }),
        (drawn) => {
          const two = { ...p, stock: [...p.stock, { capacity: 26, cost: 1, count: 9 }] };
          const used = (b: readonly number[]): number => b.reduce((s, i) => s + p.sizes[i]!, 0);
          const boards: Board[] = drawn.map((pieces, i) => ({ stock: i % 2, pieces })).filter((b) => used(b.pieces) <= two.stock[b.stock]!.capacity); // prettier-ignore
          const got = gatherOffcuts(two, boards, () => false);
          expect(got.flatMap((b) => b.pieces).sort()).toEqual(boards.flatMap((b) => b.pieces).sort());
          const left = (b: Board): number => two.stock[b.stock]!.capacity - used(b.pieces);
          for (const b of got) expect(left(b)).toBeGreaterThanOrEqual(0);
          if (got.length === boards.length && boards.length > 0) expect(Math.max(...got.map(left))).toBeGreaterThanOrEqual(Math.max(...boards.map(left))); // prettier-ignore
          // No two boards left over could give a longer offcut between them: the best split of each pair is there.
          for (const A of got)
            for (const B of got) {
              if (A === B) continue;
              const all = [...A.pieces, ...B.pieces];
              for (let m = 0; m < 1 << all.length; m++) {
                const onA = all.filter((_, i) => m & (1 << i));
                const onB = all.filter((_, i) => !(m & (1 << i)));
                const [a, b] = [
                  { ...A, pieces: onA },
                  { ...B, pieces: onB },
                ].map(left) as [number, number];
                if (a >= 0 && b >= 0) expect(Math.max(a, b)).toBeLessThanOrEqual(Math.max(left(A), left(B)));
              }
            }
        },
      ),
      { numRuns: 150 },
    );
  });
});
