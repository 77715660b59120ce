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
  /** Which stock as given each stock of the problem is; undefined for the one that stands for missing boards. */
  readonly stockOf: readonly (number | undefined)[];
  /** What a total of 1 on the problem's scale is in boards, metres or money. */
  readonly unit: number;
}

/** Cost of a missing board relative to the dearest in stock: so much that it is used only when nothing else is left. */
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
  const falling = [...lengths].sort(([a], [b]) => b - a);
  const shortest = Math.min(...lengths.keys()) + kerf;
  // A board too short for any part would only blur the bounds.
  const boards = wanted.stock
    .map((s, k) => ({ ...s, k, room: nano(s.length) - 2 * nano(wanted.trimEachEnd) + kerf }))
    .filter((s) => s.room >= shortest);
  const measure = [...falling.map(([l]) => l + kerf), ...boards.map((s) => s.room)].reduce(divisor);
  const sizes = falling.map(([l]) => (l + kerf) / measure);
  const costs = boards.map((s) => wholeCost(wanted.aim, s));
  const most = Math.max(...costs);
  const stock: Stock[] = boards.map((s, k) => ({
    capacity: s.room / measure,
    cost: (costs[k] as number) / most,
    count: s.count,
  }));
  const plenty = sizes.every((l) => stock.some((s) => s.count === Infinity && s.capacity >= l));
  if (!plenty)
    stock.push({ capacity: Math.max(...stock.map((s) => s.capacity)), cost: dear, count: Infinity });
  return {
    problem: {
      sizes,
      demand: falling.map(([, rows]) =>
        rows.reduce((n, i) => n + (wanted.parts[i] as { count: number }).count, 0),
      ),
      stock,
      step: costs.reduce(divisor) / most,
    },
    partsOf: falling.map(([, rows]) => rows),
    stockOf: [...boards.map((s) => s.k), ...(plenty ? [] : [undefined])],
    unit: most * { boards: 1, length: 1e-9, cost: 1e-4 }[wanted.aim],
  };
}

/** A cost as a whole number: of boards, nanometres, or hundredths of a cent; one that costs nothing counts for next to nothing. */
function wholeCost(aim: Aim, board: { readonly length: number; readonly cost: number }): number {
  if (aim === 'boards') return 1;
  return aim === 'length' ? Math.round(board.length * 1e9) : Math.max(1, Math.round(board.cost * 1e4));
}
