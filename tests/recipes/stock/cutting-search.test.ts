import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import type { Highs } from 'highs';
import { boardsBound, Totals } from '../../../src/recipes/stock/cutting/bounds.js';
import { TimeLimit } from '../../../src/recipes/stock/cutting/time-limit.js';
import { solveFinalMip } from '../../../src/recipes/stock/cutting/final-mip.js';
import { columnsOf } from '../../../src/recipes/stock/cutting/columns.js';
import { dive, settle } from '../../../src/recipes/stock/cutting/diving-heuristic.js';
import { longestFirst } from '../../../src/recipes/stock/cutting/constructive-heuristics.js';
import { rootOf, type SearchContext } from '../../../src/recipes/stock/cutting/search-context.js';
import { chooseWhole } from '../../../src/recipes/stock/cutting/integer.js';
import { Master } from '../../../src/recipes/stock/cutting/master.js';
import { patternOf, type CuttingProblem, type Pattern } from '../../../src/recipes/stock/cutting/problem.js';
import { relax } from '../../../src/recipes/stock/cutting/relaxation.js';
import { alone, search } from '../../../src/recipes/stock/cutting/search.js';
import { loadSolver } from '../../../src/recipes/stock/cutting/solver.js';
import { Incumbent } from '../../../src/recipes/stock/cutting/incumbent.js';
import { seeded } from '../../properties/legal-plan.js';
import { everyFilling, faultsOf, leastCost, ofOneLength } from './cutting-problems.js';

let highs: Highs;
beforeAll(async () => {
  highs = await loadSolver();
});
const ample = () => new TimeLimit(Infinity, () => false);

/** A search context that begins with the plan of the longest first and the patterns of one size each. */
async function contextFor(problem: CuttingProblem, clock = ample()): Promise<SearchContext> {
  const packing = await longestFirst(problem, rootOf(problem), ample());
  const incumbent = new Incumbent({ packing, how: 'longest first' }, () => undefined);
  const master = new Master(highs, problem);
  master.add([...packing.boards.map((b) => b.pattern), ...alone(problem)]);
  return { problem, totals: new Totals(problem), incumbent, clock, master };
}

// Three pieces of 4 and three of 3 on 10: 21 on 10 need three boards in any case.
const small = ofOneLength([4, 3], [3, 3], 10);
// Boards of 12 from sizes 7, 5, 4 and 3: 2 x 7 + 2 x 5 + 3 x 4 + 4 x 3 = 48 is four full boards (7+5, 7+5, 4+4+4, 3+3+3+3).
const full = ofOneLength([7, 5, 4, 3], [2, 2, 3, 4], 12);

// 4 + 4, 3 + 3 + 3 and 3 by longest first, where 4 + 3 + 3 twice fills two boards of 10.
const pairs = ofOneLength([4, 3], [2, 4], 10);

describe('the incumbent', () => {
  const packing = (cost: number) => ({ boards: [], cost });
  it('keeps only better plans and higher bounds, and reports them', () => {
    const heard: [number, number, string][] = [];
    const s = new Incumbent({ packing: packing(5), how: 'a' }, (...news) => void heard.push(news));
    expect([s.best.cost, s.bound, s.done]).toEqual([5, 0, false]);
    s.take(packing(5), 'b');
    s.take(packing(6), 'c');
    s.take(packing(4), 'd');
    s.raise(3, 'e');
    s.raise(3, 'f');
    s.raise(2, 'g');
    expect([s.best.cost, s.bound, s.done]).toEqual([4, 3, false]);
    s.raise(4, 'h');
    expect(s.done).toBe(true);
    expect(s.steps).toEqual(['plan by a', 'plan by d', 'bound from e', 'bound from h']);
    expect(heard).toEqual([[5, 0, 'plan by a'], [4, 0, 'plan by d'], [4, 3, 'bound from e'], [4, 4, 'bound from h']]); // prettier-ignore
    s.note('looked');
    s.report('looking');
    expect(s.steps.at(-1)).toBe('looked');
    expect(heard.at(-1)).toEqual([4, 4, 'looking']);
  });
});

describe('the clock of a search', () => {
  afterEach(() => {
    vi.restoreAllMocks();
  });
  it('is late at the very moment, and yields after exactly 25 ms', async () => {
    let now = 100;
    vi.spyOn(performance, 'now').mockImplementation(() => now);
    const clock = new TimeLimit(150, () => false);
    let turned = false;
    setImmediate(() => (turned = true));
    now = 124.999;
    await clock.yieldToEventLoop();
    expect([clock.late(), turned]).toEqual([false, false]);
    now = 125;
    await clock.yieldToEventLoop();
    expect([clock.late(), turned]).toEqual([false, true]);
    // The next turn is another 25 ms away.
    turned = false;
    setImmediate(() => (turned = true));
    now = 149.999;
    await clock.yieldToEventLoop();
    expect([clock.late(), turned]).toEqual([false, false]);
    now = 150;
    expect(clock.late()).toBe(true);
    vi.restoreAllMocks();
  });

  it('is late when time is up or somebody stopped it', () => {
    const now = performance.now();
    expect(new TimeLimit(now + 1e6, () => false).late()).toBe(false);
    expect(new TimeLimit(now - 1, () => false).late()).toBe(true);
    expect(new TimeLimit(now + 1e6, () => true).late()).toBe(true);
  });
});

describe('patterns as columns', () => {
  it('have a row a size, one a counted stock, and one of costs if wanted', () => {
    const patterns: Pattern[] = [{ stock: 2, items: [[0, 2], [1, 1]] }, { stock: 0, items: [[1, 3]] }]; // prettier-ignore
    const got = columnsOf(patterns, 2, [2], [5, 7]);
    expect([got.numRows, got.numCols]).toEqual([4, 2]);
    expect([...got.starts]).toEqual([0, 4, 6]);
    expect([...got.indices]).toEqual([0, 1, 2, 3, 1, 3]);
    expect([...got.values]).toEqual([2, 1, 1, 5, 3, 7]);
    const plain = columnsOf(patterns, 2, [2]);
    expect([plain.numRows, ...plain.indices]).toEqual([3, 0, 1, 2, 1]);
    // Of two counted stocks the second has the row after the first.
    expect([...columnsOf(patterns, 2, [0, 2]).indices]).toEqual([0, 1, 3, 1, 2]);
  });

  it('of each size alone are as many as fit and are wanted, where one fits', () => {
    const p: CuttingProblem = { ...full, stock: [...full.stock, { capacity: 6, cost: 1, count: 1 }] };
    expect(alone(p).map((q) => [q.stock, ...(q.items[0] ?? [])])).toEqual([[0, 0, 1], [0, 1, 2], [1, 1, 1], [0, 2, 3], [1, 2, 1], [0, 3, 4], [1, 3, 2]]); // prettier-ignore
  });
});

describe('the linear programme', () => {
  it('of full boards comes to their number, with prices by length', async () => {
    const context = await contextFor(full);
    const r = await relax(context, rootOf(full), new Set(), 'whole');
    expect(r?.value).toBeCloseTo(4, 6);
    expect(r?.exact).toBe(true);
    // No board is worth more than it costs, and the demand is worth the bound.
    for (const c of everyFilling(full.sizes, full.demand, 12)) expect(c.reduce((s, n, i) => s + n * r!.prices[i]!, 0)).toBeLessThanOrEqual(1 + 1e-6); // prettier-ignore
    expect(full.demand.reduce((s, n, i) => s + n * r!.prices[i]!, 0)).toBeCloseTo(4, 6);
    context.master.dispose();
  });

  it('takes no more boards than there are, and prices a scarce one', async () => {
    // Two 5s fit the cheap board of 10, of which there is one; four 5s take it and a dear one.
    const p: CuttingProblem = { sizes: [5], demand: [4], stock: [{ capacity: 10, cost: 1, count: 1 }, { capacity: 10, cost: 3, count: Infinity }], step: 1 }; // prettier-ignore
    const context = await contextFor(p);
    const r = await relax(context, rootOf(p), new Set(), 'whole');
    expect(r?.value).toBeCloseTo(4, 6);
    // One more cheap board would save 3 - 1.
    expect([...r!.stockPrices].map((v) => Number(v.toFixed(6)) + 0)).toEqual([-2, 0]);
    expect(r!.prices[0]).toBeCloseTo(1.5, 6);
    context.master.dispose();
  });

  it('raises the bound at the root, and gives up below where nothing better can come', async () => {
    const context = await contextFor(small);
    expect(context.incumbent.best.cost).toBe(3);
    expect(await relax(context, rootOf(small), new Set(), 'root')).toBeUndefined();
    // 21 on 10 round up to three boards, as many as the plan has.
    expect([context.incumbent.bound, context.incumbent.done]).toEqual([3, true]);
    const other = await contextFor(small);
    expect(await relax(other, rootOf(small), new Set(), 'below')).toBeUndefined();
    expect(other.incumbent.bound).toBe(0);
    const stopped = await contextFor(full, new TimeLimit(Infinity, () => true));
    expect(await relax(stopped, rootOf(full), new Set(), 'whole')).toBeUndefined();
    for (const c of [context, other, stopped]) c.master.dispose();
  });

  it('of what is left counts what was spent, and leaves barred patterns alone', async () => {
    const context = await contextFor(full);
    const node = settle(context, rootOf(full), [{ pattern: patternOf(0, [1, 1, 0, 0]), times: 2 }]);
    expect([[...node.demand], node.spent, node.available]).toEqual([[0, 0, 3, 4], 2, [Infinity]]); // prettier-ignore
    const r = await relax(context, node, new Set(), 'whole');
    expect(r?.value).toBeCloseTo(2, 6);
    // Without the two full boards of a kind, 4s and 3s need more than two.
    const barred = new Set(context.master.pool.flatMap((q, j) => (q.items.length === 1 && q.items[0]![0] > 1 ? [j] : []))); // prettier-ignore
    context.master.narrow(node.demand, node.available, barred);
    expect(context.master.solve().value).toBeGreaterThan(2 + 1e-6);
    context.master.dispose();
  });

  it('makes up what no pattern gives at twice the dearest board, and not out of the boards there are', () => {
    const p: CuttingProblem = { sizes: [5], demand: [4], stock: [{ capacity: 10, cost: 1, count: Infinity }, { capacity: 10, cost: 3, count: 1 }], step: 1 }; // prettier-ignore
    const master = new Master(highs, p);
    expect(master.solve().value).toBeCloseTo(4 * 6, 6);
    // The one board that is counted gives two; two are short at 6 each, and each costs 6. Another board would save 2 x 6 - 3.
    master.add([{ stock: 1, items: [[0, 2]] }]);
    const { value, x, prices, stockPrices } = master.solve();
    expect([value, x[0], prices[0], stockPrices[1]]).toEqual([3 + 12, 1, 6, -9].map((v) => expect.closeTo(v, 6) as number)); // prettier-ignore
    master.dispose();
  });

  it('lays patterns aside that cut more than is left', () => {
    const p = ofOneLength([5], [4], 10);
    const master = new Master(highs, p);
    master.add([patternOf(0, [2])]);
    master.narrow([2], [Infinity], new Set());
    expect(master.solve().value).toBeCloseTo(1, 6);
    // One is left: half a board of two would be cheaper than the shortage at 2, but is no board.
    master.narrow([1], [Infinity], new Set());
    expect(master.solve().value).toBeCloseTo(2, 6);
    master.dispose();
  });

  it('adds a pattern once', async () => {
    const context = await contextFor(full);
    const before = context.master.pool.length;
    const fresh = patternOf(0, [0, 1, 1, 1]);
    expect(context.master.add([fresh, fresh])).toBe(1);
    expect(context.master.add([fresh])).toBe(0);
    expect(context.master.pool.length).toBe(before + 1);
    context.master.dispose();
  });
});

describe('boards settled on the way down', () => {
  it('are no more than wanted, and no more than there are', () => {
    const p: CuttingProblem = { ...full, stock: [{ capacity: 12, cost: 2, count: 3 }] };
    const [a, b] = [patternOf(0, [1, 1, 0, 0]), patternOf(0, [0, 1, 1, 1])]; // prettier-ignore
    const node = settle({ problem: p }, rootOf(p), [{ pattern: a, times: 1 }, { pattern: b, times: 2 }]); // prettier-ignore
    // One 5 is left for the second pattern, so it is cut once.
    expect([[...node.demand], node.available, node.spent]).toEqual([[1, 0, 2, 3], [1], 4]); // prettier-ignore
    expect(node.fixed.map((f) => f.times)).toEqual([1, 1]);
    const none = settle({ problem: p }, node, [{ pattern: b, times: 1 }, { pattern: patternOf(0, [0, 0, 0, 1]), times: 3 }]); // prettier-ignore
    expect([[...none.demand], none.available, none.spent]).toEqual([[1, 0, 2, 2], [0], 6]); // prettier-ignore
  });

  it('lead to a whole plan', async () => {
    const context = await contextFor(pairs);
    await relax(context, rootOf(pairs), new Set(), 'root');
    await dive(context, rootOf(pairs), new Set(), 0, 0);
    expect(faultsOf(pairs, context.incumbent.best.boards)).toEqual([]);
    expect([context.incumbent.best.cost, context.incumbent.bound]).toEqual([2, 2]);
    expect(context.incumbent.steps.join()).toMatch(/plan by rounding the linear programme/);
    context.master.dispose();
  });
});

describe('the integer programme', () => {
  const patterns = everyFilling(full.sizes, full.demand, 12).filter((c) => c.some((n) => n > 0)).map((c) => patternOf(0, c)); // prettier-ignore

  it('finds a plan within the target, or proves that these patterns have none', () => {
    const found = chooseWhole(highs, full, patterns, 4, 2);
    expect(found.state).toBe('found');
    expect(found.chosen.reduce((s, c) => s + c.times, 0)).toBe(4);
    for (const { times } of found.chosen) expect(times).toBeGreaterThan(0);
    expect(chooseWhole(highs, full, patterns, 3, 2)).toEqual({ state: 'none', chosen: [] });
    expect(chooseWhole(highs, full, alone(full), 4, 2).state).toBe('none');
    // 7, 7, 5 + 5, 4 + 4 + 4, 3 + 3 + 3 + 3: five boards of one size each.
    expect(chooseWhole(highs, full, alone(full), 5, 2).state).toBe('found');
  });

  it('takes no more boards than there are', () => {
    const p: CuttingProblem = { sizes: [5], demand: [4], stock: [{ capacity: 10, cost: 1, count: 1 }, { capacity: 10, cost: 3, count: Infinity }], step: 1 }; // prettier-ignore
    const all = alone(p);
    expect(chooseWhole(highs, p, all, 3, 2).state).toBe('none');
    expect(chooseWhole(highs, p, all, 4, 2).chosen.map((c) => [c.pattern.stock, c.times])).toEqual([[0, 1], [1, 1]]); // prettier-ignore
  });

  it('out of time leaves the matter open', () => {
    const u = seeded(9);
    const sizes = [...new Set(Array.from({ length: 40 }, () => 200 + Math.floor(u() * 300)))].sort(
      (a, b) => b - a,
    );
    const p = ofOneLength(sizes, sizes.map(() => 2), 1000); // prettier-ignore
    const many = everyFilling(sizes, sizes.map(() => 1), 1000).filter((c) => c.some((n) => n > 0)).slice(0, 4000).map((c) => patternOf(0, c)); // prettier-ignore
    expect(chooseWhole(highs, p, [...many, ...alone(p)], sizes.length * 0.7, 1e-9)).toEqual({ state: 'open', chosen: [] }); // prettier-ignore
  });

  it('closes a search: a better plan, or the proof that there is none', async () => {
    const context = await contextFor(pairs);
    expect(context.incumbent.best.cost).toBe(3);
    await solveFinalMip(context, highs, 2, 3000);
    expect([context.incumbent.best.cost, context.incumbent.bound]).toEqual([2, 0]);
    expect(faultsOf(pairs, context.incumbent.best.boards)).toEqual([]);
    // Nothing is known of a bound but what the programme itself proves.
    await solveFinalMip(context, highs, 2, 3000);
    expect([context.incumbent.bound, context.incumbent.done]).toEqual([2, true]);
    expect(context.incumbent.steps.join()).toMatch(
      /plan by integer programming.*every pattern of a better plan/,
    );
    // With fewer patterns than there are, nothing is proved.
    const few = await contextFor(pairs);
    await solveFinalMip(few, highs, 2, 0);
    expect(few.incumbent.bound).toBe(0);
    expect(few.incumbent.steps.join()).not.toMatch(/every pattern/);
    const late = await contextFor(small, new TimeLimit(Infinity, () => true));
    await solveFinalMip(late, highs, 2, 3000);
    expect(late.incumbent.bound).toBe(0);
    for (const c of [context, few, late]) c.master.dispose();
  });

  it('over no pattern at all is proof', () => {
    expect(chooseWhole(highs, full, [], 9, 2)).toEqual({ state: 'none', chosen: [] });
  });
});

describe('a search', () => {
  const run = (p: CuttingProblem, more: object = {}) =>
    search(p, { until: performance.now() + 2000, stopped: () => false, changed: () => undefined, patience: 2, loadSolver, ...more }); // prettier-ignore

  it('proves its plan the best of all, for boards, lengths and costs', async () => {
    const u = seeded(21);
    const whole = (low: number, high: number): number => low + Math.floor(u() * (high - low + 1));
    for (let i = 0; i < 60; i++) {
      const sizes = [...new Set([whole(3, 9), whole(6, 14), whole(9, 20)])].sort((a, b) => b - a);
      const costs = [whole(2, 6), whole(2, 6)];
      const p: CuttingProblem = {
        sizes,
        demand: sizes.map(() => whole(1, 4)),
        stock: [{ capacity: whole(20, 26), cost: costs[0]! / 6, count: Infinity }, { capacity: whole(20, 40), cost: costs[1]! / 6, count: whole(1, 3) }], // prettier-ignore
        step: 1 / 6,
      };
      const got = await run(p);
      expect(faultsOf(p, got.packing.boards)).toEqual([]);
      expect(got.proven).toBe(true);
      expect(got.packing.cost).toBeCloseTo(leastCost(p), 9);
      expect(got.bound).toBeLessThanOrEqual(got.packing.cost);
    }
  });

  it('that is stopped gives a plan and a bound that holds, whatever the number of pieces', async () => {
    for (const times of [1, 1000]) {
      const p = { ...full, demand: full.demand.map((n) => n * times) };
      const got = await run(p, { stopped: () => true });
      expect(faultsOf(p, got.packing.boards)).toEqual([]);
      expect(got.bound).toBeLessThanOrEqual(4 * times);
      expect(got.packing.cost).toBeGreaterThanOrEqual(4 * times);
    }
  });

  it('proves a plan that no bound from lengths or long parts gives', async () => {
    // 8 on 20, three of 8 with seven of 7: 24 + 49 = 73 on 20 is four boards by length; no two boards can be full.
    const p = ofOneLength([8, 7], [3, 7], 20);
    expect(Math.ceil(73 / 20)).toBe(4);
    expect(boardsBound(p.sizes, p.demand, 20)).toBe(4);
    // Only two pieces fit a board, 10 pieces need five.
    const got = await run(p);
    expect([got.packing.cost, got.proven]).toEqual([5, true]);
    expect(got.steps.join()).toMatch(/bound from the linear programme/);
  });
});
