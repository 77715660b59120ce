import { afterEach, describe, expect, it, vi } from 'vitest';
import { sortedBoards, layOut } from '../../../src/recipes/stock/cutting/layout.js';
import type { Aim } from '../../../src/recipes/stock/cutting/scale.js';
import type { CuttingGiven } from '../../../src/recipes/stock/cutting/sections.js';
import { solve } from '../../../src/recipes/stock/cutting/solver.js';
import type { Progress } from '../../../src/engine/trace.js';
import { TraceRecorder, type Trace } from '../../../src/engine/trace.js';
import { ofOneLength } from './cutting-problems.js';

afterEach(() => {
  vi.restoreAllMocks();
});

type Rows = Pick<CuttingGiven, 'parts' | 'stock'>;
const stopped = () => new TraceRecorder({ signal: AbortSignal.abort() });
const lay = (rows: Rows, aim: Aim = 'boards', trace: Trace = new TraceRecorder(), kerf = 0) =>
  layOut(rows, { ...rows, kerf, trimEachEnd: 0 }, aim, 2, trace, '');

describe('one section laid out', () => {
  it('names parts and boards without a name by their length, and lays part after part with a kerf between', async () => {
    const got = await lay({ parts: [{ length: 0.3, count: 2 }], stock: [{ length: 1 }] }, 'boards', new TraceRecorder(), 0.003); // prettier-ignore
    expect(got.boards.map((b) => [b.stock, b.pieces.map((p) => [p.name, p.from])])).toEqual([['1000 mm', [['300 mm', 0], ['300 mm', 0.303]]]]); // prettier-ignore
    // 1000 - 303 - 303.
    expect(got.boards[0]!.offcut).toBeCloseTo(0.394, 12);
  });

  it('tells the parts that counted boards do not give, whichever stock comes second', async () => {
    const got = await lay({ parts: [{ name: 'a', length: 0.9, count: 3 }], stock: [{ length: 1, count: 1 }, { length: 1, count: 1 }] }); // prettier-ignore
    expect([got.boards.length, got.boardsShort, got.achieved]).toEqual([2, 1, 2]);
    expect(got.missing).toEqual([{ name: 'a', length: 0.9, count: 1 }]);
  });

  it('has its bound in boards, metres or money, that of boards which are not there taken off', async () => {
    // Ten pieces of which two fit a board: five boards of 2 m by any plan, four by length; stopped before it is known.
    const parts = [{ length: 0.8, count: 3 }, { length: 0.7, count: 7 }]; // prettier-ignore
    const at = async (aim: Aim) => {
      const { achieved, bound, proven } = await lay(
        { parts, stock: [{ length: 2, cost: 30 }] },
        aim,
        stopped(),
      );
      return [achieved, bound, proven];
    };
    expect(await at('boards')).toEqual([5, 4, false]);
    expect(await at('length')).toEqual([10, 8, false]);
    expect(await at('cost')).toEqual([150, 120, false]);
    // Three boards there are hold 6 m of 7.3: the rest is for boards that are not there, and three is no bound but what is cut.
    const short = await lay({ parts, stock: [{ length: 2, count: 3 }] }, 'boards', stopped());
    expect([short.boards.length, short.boardsShort, short.bound, short.proven]).toEqual([3, 2, 0, false]);
    expect(short.steps.join()).not.toContain('gathering');
  });

  it('gathers offcuts for a tenth of a second, and then lets them be', async () => {
    // 4 + 4, 3 + 3 + 3 and 3 on 10 by plain rules; gathered they are two boards.
    const rows = { parts: [{ length: 0.4, count: 2 }, { length: 0.3, count: 4 }], stock: [{ length: 1 }] }; // prettier-ignore
    const two = await lay(rows, 'boards', stopped());
    expect([two.boards.length, two.steps.at(-1)]).toEqual([2, 'plan by gathering offcuts']);
    // Each look at the clock finds that another minute has gone by.
    let now = 0;
    vi.spyOn(performance, 'now').mockImplementation(() => (now += 60_000));
    const slow = await lay(rows, 'boards', stopped());
    vi.restoreAllMocks();
    expect([slow.boards.length, slow.bound, slow.proven]).toEqual([3, 2, false]);
    expect(slow.steps.join()).not.toContain('gathering');
  });
});

describe('boards in order', () => {
  const order = (boards: { stock: number; pieces: number[] }[]) =>
    sortedBoards(boards, (b) => [2, 3, 3][b.stock]!).map((b) => `${b.stock}: ${b.pieces.join(' ')}`);

  it('have the longest parts first, then the longer stock', () => {
    expect(order([{ stock: 0, pieces: [2] }, { stock: 0, pieces: [1, 2] }, { stock: 0, pieces: [0] }, { stock: 1, pieces: [1] }])).toEqual(['0: 0', '1: 1', '0: 1 2', '0: 2']); // prettier-ignore
  });

  it('have those cut alike together', () => {
    const [x, y, z] = [{ stock: 1, pieces: [0, 1] }, { stock: 1, pieces: [0, 2] }, { stock: 2, pieces: [0, 1] }]; // prettier-ignore
    expect(order([z, y, x, y, z, x])).toEqual(['1: 0 1', '1: 0 1', '1: 0 2', '1: 0 2', '2: 0 1', '2: 0 1']);
  });
});

describe('progress of a search', () => {
  it('has costs in the plan’s own unit, and the share of the time that went by', async () => {
    let now = 1000;
    vi.spyOn(performance, 'now').mockImplementation(() => now);
    const seen: Progress[] = [];
    const trace = Object.assign(new TraceRecorder(), { progress: (p: Progress) => void seen.push(p) });
    Object.defineProperty(trace, 'signal', {
      // Asked for once the search has begun: five of its twenty seconds are over.
      get: () => {
        now = 6000;
        return AbortSignal.abort();
      },
    });
    const got = await solve(ofOneLength([8, 7], [3, 7], 20), 20, trace, 'legs: ', 2.5);
    vi.restoreAllMocks();
    expect([got.packing.cost, got.bound, got.proven]).toEqual([5, 4, false]);
    expect(seen[0]).toEqual({ message: 'legs: plan by longest first', best: 12.5, bound: 0, done: 0.25 });
    expect(seen[1]).toEqual({
      message: 'legs: bound from the lengths alone',
      best: 12.5,
      bound: 10,
      done: 0.25,
    });
  });
});
