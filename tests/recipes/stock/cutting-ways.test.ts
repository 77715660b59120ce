import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Dearest } from '../../../src/recipes/stock/cutting/knapsack.js';
import { dearest } from '../../../src/recipes/stock/cutting/pricing.js';

// Which of the ways to the dearest board is asked: none of them computes here, each answers a constant.
const asked = vi.hoisted((): { ways: string[]; found: { worth: number; exact: boolean } } => ({
  ways: [],
  found: { worth: 0, exact: true },
}));
const answered = (way: string): Dearest => {
  asked.ways.push(way);
  return { ...asked.found, counts: undefined };
};
vi.mock('../../../src/recipes/stock/cutting/knapsack-table.js', () => ({ byTable: () => answered('table') }));
vi.mock('../../../src/recipes/stock/cutting/small-instances.js', () => ({
  solveSmallKnapsack: (_sack: unknown, nodes: number) => answered(`few ${nodes}`),
}));
vi.mock('../../../src/recipes/stock/cutting/knapsack-search.js', () => ({
  byRate: (_sack: unknown, nodes: number) => answered(`rate ${nodes}`),
}));
beforeEach(() => {
  asked.ways.length = 0;
});

function ways(sizes: number[], capacity: number, found: typeof asked.found, atLeast = 0): string[] {
  asked.found = found;
  dearest(sizes, { prices: sizes.map(() => 1), limits: sizes.map(() => 9) }, capacity, atLeast);
  return [...asked.ways];
}
const [proved, open] = [{ worth: 5, exact: true }, { worth: 0, exact: false }]; // prettier-ignore

describe('the dearest board is looked for', () => {
  it('in a table of up to a million cells, one for each unit of each size', () => {
    expect(ways([7], 1e6, proved)).toEqual(['table']);
    asked.ways.length = 0;
    expect(ways([8, 7], 5e5, proved)).toEqual(['table']);
    asked.ways.length = 0;
    expect(ways([8, 7], 500_001, proved)).toEqual(['rate 30000']);
  });

  it('piece by piece where fewer than six of the shortest fit', () => {
    expect(ways([500_000, 200_000], 1_199_999, proved)).toEqual(['few 5000000']);
    asked.ways.length = 0;
    expect(ways([500_000, 200_000], 1_200_000, proved)).toEqual(['rate 30000']);
  });

  it('by a search, and if that proves nothing nor finds more than was asked, in a table or by a longer search', () => {
    const after = (found: typeof asked.found, capacity: number): string[] => {
      asked.ways.length = 0;
      return ways([7], capacity, found).slice(1);
    };
    expect(after(proved, 2e6)).toEqual([]);
    expect(after({ worth: 0, exact: true }, 2e6)).toEqual([]);
    expect(after({ worth: 2e-4, exact: false }, 2e6)).toEqual([]);
    // A gain of a ten-thousandth is none.
    expect(after({ worth: 1e-4, exact: false }, 2e6)).toEqual(['table']);
    expect(after(open, 2e6)).toEqual(['table']);
    expect(after(open, 4e7)).toEqual(['table']);
    expect(after(open, 4e7 + 1)).toEqual(['rate 3000000']);
  });
});
