import { solveSmallKnapsack } from './small-instances.js';
import { knapsack, type Dearest, type Wanting } from './knapsack.js';
import { byRate } from './knapsack-search.js';
import { byTable } from './knapsack-table.js';

/** Cells up to which the table is quicker than any search, and beyond which it is too large. */
const [smallTable, largeTable] = [1e6, 4e7];

/**
 * The most that a board of `capacity` can be worth at given prices, if more than `atLeast`: a knapsack with a limit on each
 * size. Which way it is found depends on what is short: the table where it is small, few big pieces one by one, else a
 * search that falls back on the table, or searches longer where that would be too large.
 */
export function dearest(
  sizes: readonly number[],
  wanting: Wanting,
  capacity: number,
  atLeast: number,
): Dearest {
  const sack = knapsack(sizes, wanting, capacity, atLeast);
  const cells = capacity * sack.items.length;
  if (cells <= smallTable) return byTable(sack);
  // Five pieces at most.
  if (capacity < 6 * (sizes[sizes.length - 1] as number)) return solveSmallKnapsack(sack, 5e6);
  const found = byRate(sack, 30_000);
  if (found.exact || found.worth > atLeast + 1e-4) return found;
  return cells <= largeTable ? byTable(sack) : byRate(sack, 3e6);
}

/** Any board worth more than `atLeast` that a short search finds. */
export const quickly = (
  sizes: readonly number[],
  wanting: Wanting,
  capacity: number,
  atLeast: number,
): Dearest => byRate(knapsack(sizes, wanting, capacity, atLeast), 1500);
