// Small cutting problems on the solver's own scale, and answers to them found by trying everything.
import fc from 'fast-check';
import type { CuttingProblem, Pattern } from '../../../src/recipes/stock/cutting/problem.js';

/** One length of board without end, each costing 1. */
export const ofOneLength = (sizes: number[], demand: number[], capacity: number): CuttingProblem => ({
  sizes,
  demand,
  stock: [{ capacity, cost: 1, count: Infinity }],
  step: 1,
});

/** Every way to fill a board: counts of each size, within the limits. */
export function everyFilling(
  sizes: readonly number[],
  limits: readonly number[],
  capacity: number,
): number[][] {
  const all: number[][] = [];
  const walk = (i: number, room: number, counts: number[]): void => {
    if (i === sizes.length) return void all.push(counts);
    for (let n = 0; n <= (limits[i] as number) && n * (sizes[i] as number) <= room; n++)
      walk(i + 1, room - n * (sizes[i] as number), [...counts, n]);
  };
  walk(0, capacity, []);
  return all;
}

/** The least cost of all demand, by trying every board for what is left. */
export function leastCost({ sizes, demand, stock }: CuttingProblem): number {
  const known = new Map<string, number>();
  const least = (left: readonly number[], there: readonly number[]): number => {
    const longest = left.findIndex((n) => n > 0);
    if (longest < 0) return 0;
    const key = `${left.join()}|${there.join()}`;
    const had = known.get(key);
    if (had !== undefined) return had;
    let best = Infinity;
    stock.forEach((k, s) => {
      if ((there[s] as number) < 1) return;
      // Some board must have the longest piece left.
      for (const counts of everyFilling(sizes, left, k.capacity))
        if ((counts[longest] as number) > 0)
          best = Math.min(best, k.cost + least(left.map((n, i) => n - (counts[i] as number)), there.map((n, j) => n - (j === s ? 1 : 0)))); // prettier-ignore
    });
    known.set(key, best);
    return best;
  };
  return least(demand, stock.map((k) => k.count)); // prettier-ignore
}

/** Sizes falling and distinct, with a demand for each, and a board that holds any of them. */
export const oneLength = fc
  .record({
    sizes: fc.uniqueArray(fc.integer({ min: 3, max: 20 }), { minLength: 1, maxLength: 4 }),
    demand: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 4, maxLength: 4 }),
    capacity: fc.integer({ min: 20, max: 30 }),
  })
  .map(({ sizes, demand, capacity }) => ofOneLength(sizes.sort((a, b) => b - a), demand.slice(0, sizes.length), capacity)); // prettier-ignore

/** What is wrong with a plan: pieces missing or beyond the demand, boards overfull or too many of them. */
export function faultsOf(
  { sizes, demand, stock }: CuttingProblem,
  boards: readonly { readonly pattern: Pattern; readonly times: number }[],
): string[] {
  const cut = new Array<number>(sizes.length).fill(0);
  const used = new Array<number>(stock.length).fill(0);
  const faults: string[] = [];
  for (const { pattern, times } of boards) {
    for (const [i, n] of pattern.items) cut[i] = (cut[i] as number) + n * times;
    used[pattern.stock] = (used[pattern.stock] as number) + times;
    const length = pattern.items.reduce((s, [i, n]) => s + n * (sizes[i] as number), 0);
    if (length > (stock[pattern.stock]?.capacity ?? 0) || length === 0 || times < 1) faults.push(`board of ${length} cut ${times} times`); // prettier-ignore
  }
  demand.forEach((d, i) => cut[i] !== d && faults.push(`size ${i}: ${cut[i]} of ${d}`));
  stock.forEach((k, s) => (used[s] as number) > k.count && faults.push(`stock ${s}: ${used[s]} of ${k.count}`)); // prettier-ignore
  return faults;
}
