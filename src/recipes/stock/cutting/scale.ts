import type { CuttingProblem, Stock } from './problem.js';

export type Aim = 'boards' | 'length' | 'cost';

/** Parts and stock of one section, lengths in m. */
export interface Wanted {
  readonly parts: readonly { readonly length: number; readonly count: number }[];
  readonly stock: readonly { readonly length: number; readonly count: number; readonly cost: number }[];
  readonly kerf: number;
  readonly trimEachEnd: number;
  readonly aim: Aim;
}

export interface Scaled {
  readonly problem: CuttingProblem;
  /** Which parts have each size of the problem. */
  readonly partsOf: readonly (readonly number[])[];
  /** What a total of 1 on the problem's scale is in boards, metres or money. */
  readonly unit: number;
  /** Index of the stock that stands for boards one has not got; -1 where there is enough. */
  readonly lacking: number;
}

/** What a board that is not there costs beside the dearest that is: enough that it is taken only for want of others. */
const dear = 1000;

const divisor = (a: number, b: number): number => {
  while (b > 0) [a, b] = [b, a % b];
  return a;
};

/**
 * The problem in whole numbers: lengths in nanometres, of which an inch and all its usual fractions are a whole number,
 * divided by their common measure. A piece takes its kerf with it; a board has room for one kerf more than its length.
 */
export function scaled(wanted: Wanted): Scaled {
  const nano = (m: number): number => Math.round(m * 1e9);
  const kerf = nano(wanted.kerf);
  const lengths = new Map<number, number[]>();
  wanted.parts.forEach((p, i) => lengths.set(nano(p.length), [...(lengths.get(nano(p.length)) ?? []), i]));
  const falling = [...lengths.keys()].sort((a, b) => b - a);
  const rooms = wanted.stock.map((s) => nano(s.length) - 2 * nano(wanted.trimEachEnd) + kerf);
  const measure = [...falling.map((l) => l + kerf), ...rooms.filter((r) => r > 0)].reduce(divisor, 0);
  const sizes = falling.map((l) => (l + kerf) / measure);
  const costs = wholeCosts(wanted);
  const most = costs.reduce((a, b) => Math.max(a, b), 0);
  const common = costs.reduce(divisor, 0);
  const stock: Stock[] = wanted.stock.map((s, k) => ({
    capacity: Math.max(0, rooms[k] as number) / measure,
    cost: (costs[k] as number) / most,
    count: s.count,
  }));
  const longest = stock.reduce((a, s) => Math.max(a, s.capacity), 0);
  const plenty = sizes.every((l) => stock.some((s) => s.count === Infinity && s.capacity >= l));
  if (!plenty) stock.push({ capacity: longest, cost: dear, count: Infinity });
  const perUnit = { boards: 1, length: 1e-9, cost: 1e-4 }[wanted.aim];
  return {
    problem: {
      sizes,
      demand: falling.map((l) =>
        (lengths.get(l) as number[]).reduce((n, i) => n + (wanted.parts[i] as { count: number }).count, 0),
      ),
      stock,
      step: common / most,
    },
    partsOf: falling.map((l) => lengths.get(l) as number[]),
    unit: most * perUnit,
    lacking: plenty ? -1 : stock.length - 1,
  };
}

/** Costs as whole numbers: boards, nanometres, or hundredths of a cent; a board that costs nothing counts for next to nothing. */
function wholeCosts(wanted: Wanted): number[] {
  switch (wanted.aim) {
    case 'boards':
      return wanted.stock.map(() => 1);
    case 'length':
      return wanted.stock.map((s) => Math.round(s.length * 1e9));
    case 'cost':
      return wanted.stock.map((s) => Math.max(1, Math.round(s.cost * 1e4)));
  }
}
