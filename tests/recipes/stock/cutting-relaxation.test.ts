// The linear programme as it prices: which prices are asked of the knapsacks, and which bound comes of them.
import { beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Highs } from 'highs';
import { Totals } from '../../../src/recipes/stock/cutting/bounds.js';
import { TimeLimit } from '../../../src/recipes/stock/cutting/time-limit.js';
import { longestFirst } from '../../../src/recipes/stock/cutting/constructive-heuristics.js';
import { rootOf, type SearchContext } from '../../../src/recipes/stock/cutting/search-context.js';
import { Master } from '../../../src/recipes/stock/cutting/master.js';
import { patternOf, type CuttingProblem } from '../../../src/recipes/stock/cutting/problem.js';
import { relax } from '../../../src/recipes/stock/cutting/relaxation.js';
import { alone } from '../../../src/recipes/stock/cutting/search.js';
import { loadSolver } from '../../../src/recipes/stock/cutting/solver.js';
import { Incumbent } from '../../../src/recipes/stock/cutting/incumbent.js';
import { everyFilling, leastCost, ofOneLength } from './cutting-problems.js';

interface Asked {
  readonly prices: number[];
  readonly limits: number[];
  readonly capacity: number;
  readonly atLeast: number;
  readonly counts: readonly number[] | undefined;
}
const asked = vi.hoisted((): { dearest: Asked[]; quickly: Asked[] } => ({ dearest: [], quickly: [] }));
vi.mock('../../../src/recipes/stock/cutting/pricing.js', async (real) => {
  const own = await real<typeof import('../../../src/recipes/stock/cutting/pricing.js')>();
  const heard =
    (way: 'dearest' | 'quickly') =>
    (...[sizes, { prices, limits }, capacity, atLeast]: Parameters<typeof own.dearest>) => {
      // The limits are changed later on: they are written down as they are now.
      const before = Array.from(limits);
      const got = own[way](sizes, { prices, limits }, capacity, atLeast);
      asked[way].push({ prices: Array.from(prices), limits: before, capacity, atLeast, counts: got.counts && [...got.counts] }); // prettier-ignore
      return got;
    };
  return { dearest: heard('dearest'), quickly: heard('quickly') };
});
beforeEach(() => {
  asked.dearest = [];
  asked.quickly = [];
});

let highs: Highs;
beforeAll(async () => {
  highs = await loadSolver();
});

async function contextFor(
  problem: CuttingProblem,
  clock = new TimeLimit(Infinity, () => false),
): Promise<SearchContext & { solves: () => number }> {
  const packing = await longestFirst(problem, rootOf(problem), new TimeLimit(Infinity, () => false));
  const incumbent = new Incumbent({ packing, how: 'longest first' }, () => undefined);
  const master = new Master(highs, problem);
  master.add([...packing.boards.map((b) => b.pattern), ...alone(problem)]);
  let solves = 0;
  const solve = master.solve.bind(master);
  master.solve = () => {
    solves++;
    return solve();
  };
  return { problem, totals: new Totals(problem), incumbent, clock, master, solves: () => solves };
}
const near = (v: number): number => expect.closeTo(v, 9) as number;

// 4 + 4, 3 + 3 + 3 and 3 by longest first; 4 + 3 + 3 twice is best. Of 8s and 7s two fit 20.
const pairs = ofOneLength([4, 3], [2, 4], 10);
const twos = ofOneLength([8, 7], [3, 7], 20);

describe('a bound from prices', () => {
  it('of counted boards takes off what they save: two at 1 and the rest at 3', async () => {
    // Eight 5s, two a board: two cheap boards and two dear ones, 8; a piece is worth 1.5, a cheap board saves 2.
    const p: CuttingProblem = { sizes: [5], demand: [8], stock: [{ capacity: 10, cost: 1, count: 2 }, { capacity: 10, cost: 3, count: Infinity }], step: 1 }; // prettier-ignore
    const context = await contextFor(p);
    await relax(context, rootOf(p), new Set(), 'root');
    expect(leastCost(p)).toBe(8);
    expect(context.incumbent.bound).toBe(8);
    context.master.dispose();
  });

  it('is never above the least cost that trying everything finds, and is what the programme over all patterns rounds up to', async () => {
    const u = [3, 1, 4, 1, 5, 9, 2, 6, 5, 3, 5, 8, 9, 7, 9, 3, 2, 3, 8, 4, 6, 2, 6, 4];
    for (let i = 0; i + 6 < u.length; i++) {
      const [a, b, c, d, e, f] = u.slice(i, i + 6) as [number, number, number, number, number, number];
      const p: CuttingProblem = {
        sizes: [12 + a, 6 + (b % 5), 3 + (c % 3)],
        demand: [1 + (d % 3), 1 + (e % 3), 1 + (f % 4)],
        stock: [{ capacity: 22, cost: 4, count: 1 + (a % 2) }, { capacity: 25 + b, cost: 5 + (f % 3), count: Infinity }], // prettier-ignore
        step: 1,
      };
      const context = await contextFor(p);
      await relax(context, rootOf(p), new Set(), 'root');
      expect(context.incumbent.bound).toBeLessThanOrEqual(leastCost(p));
      // With every pattern there is at hand the programme has no more to price.
      const all = new Master(highs, p);
      all.add(p.stock.flatMap((k, s) => everyFilling(p.sizes, p.demand, k.capacity).filter((c) => c.some((n) => n > 0)).map((c) => patternOf(s, c)))); // prettier-ignore
      expect(context.incumbent.bound).toBe(context.totals.roundUp(all.solve().value));
      all.dispose();
      context.master.dispose();
    }
  });
});

describe('the prices asked', () => {
  it('are at first drawn four fifths of the way to worth by length, at the cheapest board’s rate', async () => {
    // A board of 20 at 3 is cheaper by length than one of 10 at 2: 0.15 a unit.
    const p: CuttingProblem = { sizes: [4, 3], demand: [2, 4], stock: [{ capacity: 10, cost: 2, count: Infinity }, { capacity: 20, cost: 3, count: Infinity }], step: 1 }; // prettier-ignore
    const context = await contextFor(p);
    const { prices } = context.master.solve();
    await relax(context, rootOf(p), new Set(), 'whole');
    expect(asked.dearest[0]!.prices).toEqual([4, 3].map((l, i) => near(0.8 * l * 0.15 + 0.2 * prices[i]!)));
    expect(asked.dearest.slice(0, 2).map((q) => q.capacity)).toEqual([10, 20]);
    context.master.dispose();
  });

  it('on the way down are those of the programme itself', async () => {
    const context = await contextFor(pairs);
    context.master.narrow(pairs.demand, [Infinity], new Set());
    const { prices } = context.master.solve();
    const r = await relax(context, rootOf(pairs), new Set(), 'below');
    expect(asked.dearest[0]!.prices).toEqual([...prices].map(near));
    // Two boards could be: better than the three that are known, so the programme is seen through.
    expect([r?.value, r?.exact]).toEqual([near(2), true]);
    context.master.dispose();
  });

  it('are calmer again as soon as they gave a pattern', async () => {
    const context = await contextFor(pairs);
    await relax(context, rootOf(pairs), new Set(), 'whole');
    // Four calmings a solve would be asked if none gave a pattern.
    expect(asked.dearest.length).toBeGreaterThanOrEqual(context.solves());
    expect(asked.dearest.length).toBeLessThan(4 * context.solves());
    context.master.dispose();
  });

  it('are of boards that are there alone', async () => {
    const p: CuttingProblem = { sizes: [5], demand: [4], stock: [{ capacity: 10, cost: 1, count: 1 }, { capacity: 15, cost: 3, count: Infinity }], step: 1 }; // prettier-ignore
    const context = await contextFor(p);
    await relax(context, { ...rootOf(p), available: [0, Infinity] }, new Set(), 'whole');
    expect(new Set(asked.dearest.map((q) => q.capacity))).toEqual(new Set([15]));
    context.master.dispose();
  });

  it('are none once time is up, or on the way down while the bound could still be met', async () => {
    const stopped = await contextFor(twos, new TimeLimit(Infinity, () => true));
    expect(await relax(stopped, rootOf(twos), new Set(), 'root')).toBeUndefined();
    // A board of two 4s, and 4 / 3 of a board of three 3s: as much as the bound allows.
    const met = await contextFor(pairs);
    met.incumbent.raise(1 + 4 / 3, 'hand');
    const r = await relax(met, rootOf(pairs), new Set(), 'below');
    expect([r?.exact, asked.dearest]).toEqual([false, []]);
    for (const c of [stopped, met]) c.master.dispose();
  });

  it('elsewhere are asked though the bound could be met', async () => {
    const context = await contextFor(pairs);
    context.incumbent.raise(2.9, 'hand');
    const r = await relax(context, rootOf(pairs), new Set(), 'whole');
    expect([r?.exact, asked.dearest.length > 0]).toEqual([true, true]);
    context.master.dispose();
  });
});

describe('further boards beside the dearest', () => {
  // Forty pairs of 101 to 140 with 199 to 160 make up 300; every pair is worth a board by length.
  const sizes = [...Array.from({ length: 40 }, (_, i) => 199 - i), ...Array.from({ length: 40 }, (_, i) => 140 - i)]; // prettier-ignore
  const many = ofOneLength(sizes, sizes.map(() => 1), 300); // prettier-ignore

  it('are up to twelve that share no size with one another nor with the dearest, and are learnt', async () => {
    const context = await contextFor(many);
    let looks = 0;
    // The first prices are asked, then time is up.
    const node = rootOf(many);
    const clock = new TimeLimit(Infinity, () => looks++ > 2);
    await relax({ ...context, clock }, node, new Set(), 'whole');
    const first = asked.dearest[0]!.counts!;
    const quick = asked.quickly.slice(0, 12);
    expect(quick.length).toBe(12);
    const used = sizes.map((_, i) => first[i]!);
    for (const q of quick) {
      expect(q.limits).toEqual(used.map((n) => Number(n === 0)));
      // All but a fiftieth of what a board costs.
      expect(q.atLeast).toBeCloseTo(0.98, 12);
      q.counts!.forEach((n, i) => (used[i]! += n));
    }
    expect(Math.max(...used)).toBe(1);
    // Twelve further ones and no more before the next prices.
    expect(asked.quickly.length).toBe(12 * asked.dearest.length);
    context.master.dispose();
  });

  it('are learnt with it where the prices of the programme say that they pay', async () => {
    const context = await contextFor(many);
    const before = context.master.pool.length;
    const add = context.master.add.bind(context.master);
    let most = 0;
    context.master.add = (patterns) => {
      most = Math.max(most, patterns.length);
      return add(patterns);
    };
    await relax(context, rootOf(many), new Set(), 'whole');
    expect([most > 1, most <= 13, context.master.pool.length > before]).toEqual([true, true, true]);
    context.master.dispose();
  });
});

describe('the root', () => {
  /** A programme that answers in turn as scripted, as though patterns were added each time but the last. */
  function scripted(demand: number, message: readonly { readonly value: number; readonly price: number }[]) {
    const problem = ofOneLength([5], [demand], 10);
    const incumbent = new Incumbent({ packing: { boards: [], cost: 1e9 }, how: 'nothing' }, () => undefined);
    let turn = -1;
    const master = {
      narrow: () => undefined,
      solve: () => {
        turn++;
        const { value, price } = message[Math.min(turn, message.length - 1)]!;
        return { value, x: new Float64Array(1), prices: Float64Array.from([price]), stockPrices: new Float64Array(1) }; // prettier-ignore
      },
      add: () => (turn < message.length - 1 ? 1 : 0),
    } as unknown as Master;
    return { problem, totals: new Totals(problem), incumbent, clock: new TimeLimit(Infinity, () => false), master, turns: () => turn }; // prettier-ignore
  }
  const at = async (demand: number, ...message: { value: number; price: number }[]) => {
    const context = scripted(demand, message);
    const r = await relax(context, rootOf(context.problem), new Set(), 'root');
    return [r?.exact, context.turns(), context.incumbent.bound];
  };

  it('ends where the programme is within a fiftieth of what is proved and rounding lifts neither', async () => {
    // Nine 5s at 0.5 each prove 4.5, which is five boards: so is 4.53, but that is three hundredths away, and 4.51 is not.
    expect(await at(9, { value: 4.53, price: 0.5 }, { value: 4.51, price: 0.5 }, { value: 4.5, price: 0.5 })).toEqual([false, 2, 5]); // prettier-ignore
  });

  it('goes on where rounding could still lift the bound', async () => {
    // Ten prove 5; 5.01 would be six boards.
    expect(await at(10, { value: 5.01, price: 0.5 }, { value: 5, price: 0.5 })).toEqual([true, 1, 5]);
  });

  it('keeps the best of what was proved, though later prices prove less', async () => {
    // At 0.3 nine 5s prove 2.7 alone.
    expect(await at(9, { value: 4.6, price: 0.5 }, { value: 4.51, price: 0.3 }, { value: 4.5, price: 0.5 })).toEqual([false, 2, 5]); // prettier-ignore
  });

  it('claims a hair less than the prices say: a hundred thousand boards are not one more', async () => {
    expect(await at(200_000, { value: 100_000, price: 0.5 })).toEqual([true, 0, 100_000]);
  });
});
