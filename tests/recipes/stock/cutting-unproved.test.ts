import { beforeEach, describe, expect, it, vi } from 'vitest';
import { TimeLimit } from '../../../src/recipes/stock/cutting/time-limit.js';
import { Totals } from '../../../src/recipes/stock/cutting/bounds.js';
import { solveFinalMip } from '../../../src/recipes/stock/cutting/final-mip.js';
import { longestFirst } from '../../../src/recipes/stock/cutting/constructive-heuristics.js';
import { rootOf, type SearchContext } from '../../../src/recipes/stock/cutting/search-context.js';
import { Master } from '../../../src/recipes/stock/cutting/master.js';
import { relax } from '../../../src/recipes/stock/cutting/relaxation.js';
import { alone, search } from '../../../src/recipes/stock/cutting/search.js';
import { loadSolver } from '../../../src/recipes/stock/cutting/solver.js';
import { Incumbent } from '../../../src/recipes/stock/cutting/incumbent.js';
import { faultsOf, ofOneLength } from './cutting-problems.js';

// Pricing that finds the dearest board but cannot prove that it is: as on boards of very many, very fine lengths.
const proves = vi.hoisted(() => ({ exact: false }));
vi.mock('../../../src/recipes/stock/cutting/pricing.js', async (real) => {
  const own = await real<typeof import('../../../src/recipes/stock/cutting/pricing.js')>();
  return { ...own, dearest: (...given: Parameters<typeof own.dearest>) => ({ ...own.dearest(...given), exact: proves.exact }) }; // prettier-ignore
});
beforeEach(() => {
  proves.exact = false;
});

const ample = () => new TimeLimit(Infinity, () => false);
/** 4 + 4, 3 + 3 + 3 and 3 by longest first, where 4 + 3 + 3 twice fills two boards of 10. */
const pairs = ofOneLength([4, 3], [2, 4], 10);
// Of 8s and 7s only two fit a board of 20: ten pieces need five boards, though 73 on 20 would be four by length.
const twos = ofOneLength([8, 7], [3, 7], 20);

async function contextFor(
  problem: typeof pairs,
  clock = ample(),
  tell = (_says: string): void => undefined,
): Promise<SearchContext> {
  const packing = await longestFirst(problem, rootOf(problem), ample());
  const incumbent = new Incumbent({ packing, how: 'longest first' }, (_best, _bound, message) =>
    tell(message),
  );
  const master = new Master(await loadSolver(), problem);
  master.add([...packing.boards.map((b) => b.pattern), ...alone(problem)]);
  return { problem, totals: new Totals(problem), incumbent, clock, master };
}

describe('where a price cannot be proved', () => {
  it('the linear programme raises no bound', async () => {
    const context = await contextFor(twos);
    const r = await relax(context, rootOf(twos), new Set(), 'root');
    expect([r?.exact, context.incumbent.bound]).toEqual([false, 0]);
    expect(r?.value).toBeCloseTo(5, 6);
    proves.exact = true;
    const sure = await contextFor(twos);
    await relax(sure, rootOf(twos), new Set(), 'root');
    expect(sure.incumbent.bound).toBe(5);
    for (const c of [context, sure]) c.master.dispose();
  });

  it('the integer programme may find a better plan, but proves nothing', async () => {
    const context = await contextFor(pairs);
    await solveFinalMip(context, await loadSolver(), 2, 3000);
    await solveFinalMip(context, await loadSolver(), 2, 3000);
    expect([context.incumbent.best.cost, context.incumbent.bound]).toEqual([2, 0]);
    context.master.dispose();
  });

  it('a search gives its plan and the bound of the lengths, and goes on until time is up', async () => {
    const until = performance.now() + 400;
    const got = await search(twos, { until, stopped: () => false, changed: () => undefined, patience: 0.1, loadSolver }); // prettier-ignore
    expect(faultsOf(twos, got.packing.boards)).toEqual([]);
    expect([got.packing.cost, got.bound, got.proven]).toEqual([5, 4, false]);
    expect(performance.now()).toBeGreaterThanOrEqual(until);
  });
});

describe('a search stopped at any moment', () => {
  it('before the integer programme begins, leaves it out', async () => {
    proves.exact = true;
    let stopped = false;
    const clock = new TimeLimit(Infinity, () => stopped);
    const context = await contextFor(pairs, clock, (message) => {
      if (message.startsWith('integer programme over')) stopped = true;
    });
    await solveFinalMip(context, await loadSolver(), 2, 3000);
    expect([context.incumbent.best.cost, stopped]).toEqual([3, true]);
    context.master.dispose();
  });

  it('whenever it looks at the clock, has a lawful plan and a bound that holds', async () => {
    proves.exact = true;
    for (let looks = 0; looks < 60; looks++) {
      let left = looks;
      const got = await search(twos, { until: Infinity, stopped: () => --left < 0, changed: () => undefined, patience: 0.1, loadSolver }); // prettier-ignore
      expect(faultsOf(twos, got.packing.boards)).toEqual([]);
      expect(got.packing.cost).toBeGreaterThanOrEqual(5);
      expect(got.bound).toBeLessThanOrEqual(5);
      if (got.proven) expect([got.packing.cost, got.bound]).toEqual([5, 5]);
    }
  });
});
