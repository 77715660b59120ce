// The way down with a linear programme that answers as scripted: what is settled, in which order, and what is laid aside.
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { Totals } from '../../../src/recipes/stock/cutting/bounds.js';
import { TimeLimit } from '../../../src/recipes/stock/cutting/time-limit.js';
import { dive, settle } from '../../../src/recipes/stock/cutting/diving-heuristic.js';
import { rootOf, type SearchContext, type Node } from '../../../src/recipes/stock/cutting/search-context.js';
import { patternOf, type Packing, type Pattern } from '../../../src/recipes/stock/cutting/problem.js';
import { Incumbent } from '../../../src/recipes/stock/cutting/incumbent.js';
import { ofOneLength } from './cutting-problems.js';

/** What each programme in turn says of the patterns; once there is no more, it gives up. */
const said = vi.hoisted((): { x: number[][]; seen: { node: unknown; barred: number[]; at: string }[] } => ({
  x: [],
  seen: [],
}));
vi.mock('../../../src/recipes/stock/cutting/relaxation.js', () => ({
  relax: (_context: unknown, node: unknown, barred: ReadonlySet<number>, at: string) => {
    said.seen.push({ node, barred: [...barred], at });
    const x = said.x.shift();
    return Promise.resolve(x && { x: Float64Array.from(x), value: 0 });
  },
}));
beforeEach(() => {
  said.x = [];
  said.seen = [];
});

// Four sizes of which any two fit a board, nine of each; a pattern for each size alone, one piece a board.
const problem = ofOneLength([5, 4, 3, 2], [9, 9, 9, 9], 10);
const pool: Pattern[] = [0, 1, 2, 3].map((i) => patternOf(0, [0, 1, 2, 3].map((j) => Number(i === j)))); // prettier-ignore

function contextFor(
  clock = new TimeLimit(Infinity, () => false),
): SearchContext & { readonly taken: Packing[] } {
  const taken: Packing[] = [];
  const incumbent = new Incumbent({ packing: { boards: [], cost: 1000 }, how: 'nothing' }, () => undefined);
  incumbent.take = (packing) => void taken.push(packing);
  return {
    problem,
    totals: new Totals(problem),
    incumbent,
    clock,
    master: { pool } as unknown as SearchContext['master'],
    taken,
  };
}
/** What was settled at each programme asked for: how often each pattern, in order. */
const settled = () =>
  said.seen.map(({ node }) => (node as Node).fixed.map((f) => [pool.indexOf(f.pattern), f.times]));
const barred = () => said.seen.map((s) => s.barred);

describe('on the way down', () => {
  it('whole boards are settled together, a part of one left over; a millionth short of whole is whole', async () => {
    const context = contextFor();
    said.x = [[2.3, 0.9999995, 0.99999, 0.5]];
    await dive(context, rootOf(problem), new Set([7]), 0, 0);
    expect(settled()).toEqual([[], [[0, 2], [1, 1]]]); // prettier-ignore
    expect(said.seen.map((s) => s.at)).toEqual(['below', 'below']);
    expect(barred()).toEqual([[7], [7]]);
    expect((said.seen[1]?.node as Node).spent).toBe(3);
  });

  it('else the likeliest pattern, and with it all that are surer than four fifths', async () => {
    said.x = [[0.3, 0.95, 0.8, 0.81]];
    await dive(contextFor(), rootOf(problem), new Set(), 0, 0);
    expect(settled()).toEqual([[], [[1, 1], [3, 1]]]); // prettier-ignore
  });

  it('a second choice is tried alone where one is to spare, the first laid aside', async () => {
    said.x = [[0.3, 0.95, 0, 0.9]];
    await dive(contextFor(), rootOf(problem), new Set([7]), 0, 1);
    // The first choice goes with the other sure one, the second alone; the third is one too many, and what has no part is none.
    expect(settled()).toEqual([[], [[1, 1], [3, 1]], [[3, 1]]]); // prettier-ignore
    expect(barred()).toEqual([[7], [7], [7, 1]]);
    said.x = [[0, 0.95, 0, 0]];
    said.seen = [];
    await dive(contextFor(), rootOf(problem), new Set(), 0, 3);
    expect(settled()).toEqual([[], [[1, 1]]]);
  });

  it('a second choice below has one less to spare, a first as many', async () => {
    said.x = [[0.5, 0.4, 0, 0], [0.5, 0.4, 0, 0], [], [], [0.5, 0.4, 0, 0]];
    await dive(contextFor(), rootOf(problem), new Set(), 0, 1);
    expect(settled()).toEqual([[], [[0, 1]], [[0, 1], [0, 1]], [[0, 1], [1, 1]], [[1, 1]], [[1, 1], [0, 1]]]); // prettier-ignore
  });

  it('deeper than six boards only the first choice is tried', async () => {
    const at = async (depth: number): Promise<number> => {
      said.seen = [];
      said.x = [[0.5, 0.4, 0.3, 0]];
      await dive(contextFor(), rootOf(problem), new Set(), depth, 3);
      return said.seen.length;
    };
    expect([await at(6), await at(7)]).toEqual([4, 2]);
    // Whole boards count as a step down as well: from the seventh step on.
    said.seen = [];
    said.x = [[1, 0, 0, 0], [0.5, 0.4, 0, 0]]; // prettier-ignore
    await dive(contextFor(), rootOf(problem), new Set(), 6, 1);
    expect(settled().length).toBe(3);
    // And so does one board: from six the two below it try one choice each.
    said.seen = [];
    said.x = [[0.5, 0, 0, 0], [0.5, 0.4, 0, 0]]; // prettier-ignore
    await dive(contextFor(), rootOf(problem), new Set(), 6, 1);
    expect(settled().length).toBe(3);
  });

  it('what is left is cut in the two plain ways at every step but the first', async () => {
    const context = contextFor();
    said.x = [[9, 9, 9, 0]];
    await dive(context, rootOf(problem), new Set(), 0, 0);
    // Nine boards each for the first three sizes; nine 2s go five on a board.
    expect(context.taken.map((p) => p.cost)).toEqual([29, 29]);
    const first = contextFor();
    await dive(first, rootOf(problem), new Set(), 0, 0);
    expect(first.taken).toEqual([]);
    const later = contextFor();
    said.x = [[0.5, 0, 0, 0]];
    await dive(later, rootOf(problem), new Set(), 0, 0);
    expect(later.taken.length).toBe(2);
  });

  it('once nothing is left the boards are a plan, and no programme is asked', async () => {
    const context = contextFor();
    const node = settle(context, rootOf(problem), pool.map((pattern) => ({ pattern, times: 9 }))); // prettier-ignore
    await dive(context, node, new Set(), 3, 0);
    expect([context.taken.map((p) => p.cost), said.seen]).toEqual([[36], []]);
  });

  it('once time is up nothing more is done, and what was begun in time is ended', async () => {
    const none = contextFor(new TimeLimit(Infinity, () => true));
    await dive(none, rootOf(problem), new Set(), 1, 0);
    expect([none.taken, said.seen]).toEqual([[], []]);
    // In time at the first look only: one plain plan comes in haste, the other not at all.
    let looks = 0;
    const one = contextFor(new TimeLimit(Infinity, () => looks++ > 0));
    await dive(one, rootOf(problem), new Set(), 1, 0);
    expect([one.taken.length, said.seen.length]).toEqual([1, 1]);
    // Time is up during the first choice: the second is not begun.
    said.seen = [];
    said.x = [[0.5, 0.4, 0, 0], [0.5, 0.4, 0, 0]]; // prettier-ignore
    let stopped = false;
    const clock = new TimeLimit(Infinity, () => stopped);
    const late = contextFor(clock);
    late.incumbent.take = () => {
      stopped = true;
    };
    await dive(late, rootOf(problem), new Set(), 0, 1);
    expect(settled()).toEqual([[], [[0, 1]]]);
  });
});

it('boards are settled as often as what is wanted gives whole ones', () => {
  const two = ofOneLength([5, 2], [3, 9], 10);
  const node = settle({ problem: two }, rootOf(two), [{ pattern: patternOf(0, [2, 0]), times: 2 }]);
  expect([[...node.demand], node.spent, node.fixed.map((f) => f.times)]).toEqual([[1, 9], 1, [1]]);
});
