import type { TimeLimit } from './time-limit.js';
import type { Relaxed } from './master.js';
import type { CuttingProblem, Pattern, Stock } from './problem.js';

/** Boards looked at between two looks at the clock. */
const stretch = 4096;

/**
 * Every pattern that a plan better than the best one known could use: at the prices of the linear programme a pattern
 * that wastes more than the gap cannot be in it. Undefined when there are more than `most`, or time is up.
 */
export async function patternsWithin(
  problem: CuttingProblem,
  { prices, stockPrices }: Pick<Relaxed, 'prices' | 'stockPrices'>,
  gap: number,
  most: number,
  clock: TimeLimit,
): Promise<Pattern[] | undefined> {
  const found: Pattern[] = [];
  let looked = 0;
  for (const [k, { cost }] of problem.stock.entries()) {
    const needed = cost - (stockPrices[k] as number) - gap - 1e-7;
    for (const items of fillings(problem, k, prices, needed)) {
      if (items) found.push({ stock: k, items });
      if (found.length > most) return undefined;
      if (++looked % stretch > 0) continue;
      await clock.yieldToEventLoop();
      if (clock.late() || looked > most * 400) return undefined;
    }
  }
  return found;
}

/** How far a board is filled: the next size to settle, the room left, the worth, the shortest size that could have been cut once more. */
interface Filled {
  readonly next: number;
  readonly room: number;
  readonly worth: number;
  readonly spared: number;
}

/**
 * Boards of one stock worth at least `needed`, but none that has room for one more piece of a size left out: such a board
 * is part of a fuller one. Undefined comes for a board that is not wanted, so that the caller can yield.
 */
export function* fillings(
  { sizes, demand, stock }: CuttingProblem,
  k: number,
  prices: ArrayLike<number>,
  needed: number,
): Generator<[number, number][] | undefined, void> {
  // Worth for length decides the bound; a size worth nothing comes last and fills what is left.
  const rates = sizes.map((l, i) => (prices[i] as number) / l);
  const order = sizes.map((size, i) => ({ size, i, rate: rates[i] as number, limit: demand[i] as number }));
  order.sort((a, b) => b.rate - a.rate);
  const path: { before: Filled; j: number; times: number; spared: number }[] = [];
  let at: Filled = { next: 0, room: (stock[k] as Stock).capacity, worth: 0, spared: Infinity };
  for (;;) {
    const { next, room, worth, spared } = at;
    const j = order.findIndex(({ size }, n) => n >= next && size <= room);
    const item = order[j];
    const enough = worth + room * (item?.rate ?? 0) >= needed;
    if (item && enough) {
      path.push({ before: at, j, times: Math.min(item.limit, Math.floor(room / item.size)), spared });
    } else {
      yield enough && spared > room
        ? itemsOn(path.map((c) => [order[c.j]?.i as number, c.times]))
        : undefined;
      while (path.at(-1)?.times === 0) path.pop();
    }
    const last = path.at(-1);
    if (!last) return;
    const { size, rate } = order[last.j] as (typeof order)[number];
    if (!item || !enough) {
      last.times--;
      last.spared = Math.min(last.spared, size);
    }
    at = {
      next: last.j + 1,
      room: last.before.room - last.times * size,
      worth: last.before.worth + last.times * size * rate,
      spared: last.spared,
    };
  }
}

const itemsOn = (cut: [number, number][]): [number, number][] =>
  cut.filter(([, n]) => n > 0).sort(([a], [b]) => a - b);
