// How a search goes about it: the plain plans first, then round upon round of the way down and the integer programme.
import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Highs } from 'highs';
import type { CuttingProblem } from '../../../src/recipes/stock/cutting/problem.js';
import { search } from '../../../src/recipes/stock/cutting/search.js';
import { loadSolver } from '../../../src/recipes/stock/cutting/solver.js';
import { ofOneLength } from './cutting-problems.js';

/** What was begun, in order: nothing of it finds a plan here or proves a bound. */
const begun = vi.hoisted((): { does: string[]; last: number } => ({ does: [], last: 0 }));
vi.mock('../../../src/recipes/stock/cutting/relaxation.js', () => ({
  relax: (_context: unknown, _node: unknown, _barred: unknown, at: string) => {
    begun.does.push(`programme ${at}`);
    return Promise.resolve({});
  },
}));
vi.mock('../../../src/recipes/stock/cutting/diving-heuristic.js', () => ({
  dive: (_context: unknown, _node: unknown, _barred: unknown, depth: number, spare: number) => {
    begun.does.push(`down ${depth} ${spare}`);
    return Promise.resolve();
  },
}));
vi.mock('../../../src/recipes/stock/cutting/final-mip.js', () => ({
  solveFinalMip: (_context: unknown, _highs: unknown, seconds: number, most: number) => {
    begun.does.push(`close ${seconds} ${most}`);
    return Promise.resolve();
  },
}));
beforeEach(() => {
  begun.does = [];
});

let loads = 0;
const run = (p: CuttingProblem, stopped: () => boolean, patience = 3) =>
  search(p, { until: Infinity, stopped, changed: () => undefined, patience, loadSolver: (): Promise<Highs> => { loads++; return loadSolver(); } }); // prettier-ignore

// Of 8s and 7s only two fit a board of 20: five boards, four by length.
const twos = ofOneLength([8, 7], [3, 7], 20);

it('a search goes straight down first, then gives the integer programme more time and more patterns at each round', async () => {
  await run(twos, () => begun.does.length >= 14);
  // A quarter of a second times 2, 4, 8, no more than is waited for; 3000 patterns times 4, 16, 64, 256.
  expect(begun.does).toEqual([
    'programme root', 'down 0 0',
    'close 0.5 12000', 'down 0 1', 'close 1 48000', 'down 0 2', 'close 2 192000', 'down 0 3',
    'close 3 768000', 'down 0 3', 'close 3 768000', 'down 0 3', 'close 3 768000', 'down 0 3',
  ]); // prettier-ignore
});

describe('the solver', () => {
  it('is not loaded where plain plans settle the matter, nor once time is up', async () => {
    loads = 0;
    const settled = await run(ofOneLength([5], [4], 10), () => false);
    const late = await run(twos, () => true);
    expect([settled.proven, late.proven, loads, begun.does]).toEqual([true, false, 0, []]);
    await run(twos, () => begun.does.length > 0);
    expect([loads, begun.does]).toEqual([1, ['programme root', 'down 0 0']]);
  });
});

describe('plain plans', () => {
  it('best fit is tried even in haste: 15 + 3 + 2 and 9 + 7 + 4, where longest first takes three boards', async () => {
    const got = await run(ofOneLength([15, 9, 7, 4, 3, 2], [1, 1, 1, 1, 1, 1], 20), () => true);
    expect([got.packing.cost, got.steps.at(-1)]).toEqual([2, 'plan by best fit']);
  });

  it('best fit is tried for three thousand pieces, and not for one more', async () => {
    // The same six, among boards that one piece fills.
    const of = (full: number) => run(ofOneLength([20, 15, 9, 7, 4, 3, 2], [full, 1, 1, 1, 1, 1, 1], 20), () => true); // prettier-ignore
    expect((await of(2994)).packing.cost).toBe(2996);
    expect((await of(2995)).packing.cost).toBe(2998);
  });

  it('the fullest board first finds 4 + 3 + 3 twice, where the others take three boards', async () => {
    const got = await run(ofOneLength([4, 3], [2, 4], 10), () => false);
    expect([got.packing.cost, got.steps.at(-1)]).toEqual([2, 'plan by fullest board first']);
  });

  it('long parts bound boards of one length, at what each costs, and of one length alone', async () => {
    // Three 6s on 10 take three boards, 18 on 10 two by length; at 2 a board.
    const one = await run({ sizes: [6], demand: [3], stock: [{ capacity: 10, cost: 2, count: Infinity }], step: 2 }, () => true); // prettier-ignore
    expect([one.bound, one.proven, one.steps.at(-1)]).toEqual([6, true, 'bound from the long parts']);
    // Four 6s on boards of 10 would be four; a board of 30 holds them all.
    const two = await run({ sizes: [6], demand: [4], stock: [{ capacity: 10, cost: 1, count: Infinity }, { capacity: 30, cost: 2, count: Infinity }], step: 1 }, () => true); // prettier-ignore
    expect([two.packing.cost, two.steps.join()]).toEqual([2, expect.not.stringContaining('long parts')]);
  });
});
