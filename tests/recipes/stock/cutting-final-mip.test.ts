// What the integer programme is given: the gap in which its patterns must lie, and the time it may take.
import { beforeEach, expect, it, vi } from 'vitest';
import { Totals } from '../../../src/recipes/stock/cutting/bounds.js';
import { TimeLimit } from '../../../src/recipes/stock/cutting/time-limit.js';
import { solveFinalMip } from '../../../src/recipes/stock/cutting/final-mip.js';
import { longestFirst } from '../../../src/recipes/stock/cutting/constructive-heuristics.js';
import { rootOf, type SearchContext } from '../../../src/recipes/stock/cutting/search-context.js';
import { Master } from '../../../src/recipes/stock/cutting/master.js';
import { alone } from '../../../src/recipes/stock/cutting/search.js';
import { loadSolver } from '../../../src/recipes/stock/cutting/solver.js';
import { Incumbent } from '../../../src/recipes/stock/cutting/incumbent.js';
import { ofOneLength } from './cutting-problems.js';

const given = vi.hoisted((): { gap: number[]; target: number[]; seconds: number[] } => ({ gap: [], target: [], seconds: [] })); // prettier-ignore
vi.mock('../../../src/recipes/stock/cutting/patterns.js', () => ({
  patternsWithin: (_problem: unknown, _prices: unknown, gap: number) => {
    given.gap.push(gap);
    return Promise.resolve(undefined);
  },
}));
vi.mock('../../../src/recipes/stock/cutting/integer.js', () => ({
  chooseWhole: (_highs: unknown, _problem: unknown, _patterns: unknown, target: number, seconds: number) => {
    given.target.push(target);
    given.seconds.push(seconds);
    return { state: 'open', chosen: [] };
  },
}));
beforeEach(() => {
  given.gap = [];
  given.target = [];
  given.seconds = [];
});

// 4 + 4, 3 + 3 + 3 and 3 on 10: three boards, where the programme says two.
const pairs = ofOneLength([4, 3], [2, 4], 10);
async function contextFor(clock: TimeLimit): Promise<SearchContext> {
  const packing = await longestFirst(pairs, rootOf(pairs), new TimeLimit(Infinity, () => false));
  const incumbent = new Incumbent({ packing, how: 'longest first' }, () => undefined);
  const master = new Master(await loadSolver(), pairs);
  master.add([...packing.boards.map((b) => b.pattern), ...alone(pairs)]);
  return { problem: pairs, totals: new Totals(pairs), incumbent, clock, master };
}

it('patterns may fall short by what a better plan saves on the programme, and by the tolerance of each board', async () => {
  const context = await contextFor(new TimeLimit(Infinity, () => false));
  await solveFinalMip(context, await loadSolver(), 2, 3000);
  // A better plan costs two, as much as the programme; three ten-millionths for each of three boards and ten more.
  expect(given.gap).toEqual([expect.closeTo(3.9e-6, 8)]);
  expect([given.target, given.seconds]).toEqual([[2], [2]]);
  context.master.dispose();
});

it('the integer programme has no longer than there is left, and a twentieth of a second at least', async () => {
  const highs = await loadSolver();
  const at = async (left: number): Promise<number> => {
    const context = await contextFor(new TimeLimit(performance.now() + left, () => false));
    await solveFinalMip(context, highs, 60, 3000);
    context.master.dispose();
    return given.seconds.at(-1) as number;
  };
  const most = await at(30_000);
  expect([most <= 30, most > 20]).toEqual([true, true]);
  // Time that is up between the last look and the beginning.
  const clock = new TimeLimit(performance.now() - 1000, () => false);
  const context = await contextFor(clock);
  await solveFinalMip({ ...context, clock: Object.assign(clock, { late: () => false }) }, highs, 60, 3000);
  expect(given.seconds.at(-1)).toBe(0.05);
  context.master.dispose();
});
