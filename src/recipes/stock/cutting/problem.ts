/** One length of stock on the solver's own scale: whole units of length, costs with the dearest real length at 1. */
export interface Stock {
  readonly capacity: number;
  readonly cost: number;
  /** Boards there are; Infinity when more can be had. */
  readonly count: number;
}

/**
 * A cutting problem with kerf and trims already included: a board of capacity L + kerf takes pieces of l + kerf, so that
 * a piece that ends at the board's end needs no last cut. Sizes fall and are distinct.
 */
export interface CuttingProblem {
  readonly sizes: readonly number[];
  readonly demand: readonly number[];
  readonly stock: readonly Stock[];
  /** Every total cost is a multiple of this. */
  readonly step: number;
}

/** How one board is cut: how many of each size, and from which stock. */
export interface Pattern {
  readonly stock: number;
  readonly items: readonly (readonly [item: number, count: number])[];
}

/** Boards to cut, each pattern with the number of boards cut so. */
export interface Packing {
  readonly boards: readonly { readonly pattern: Pattern; readonly times: number }[];
  readonly cost: number;
}

export const patternKey = (p: Pattern): string =>
  `${p.stock}|${p.items.map(([i, n]) => `${i}x${n}`).join(',')}`;

/** The pattern of a dense count. */
export const patternOf = (stock: number, counts: ArrayLike<number>): Pattern => ({
  stock,
  items: Array.from(counts).flatMap((n, i) => (n > 0 ? [[i, n] as const] : [])),
});

/** Patterns that together give every piece, as a packing: equal patterns together, and no piece beyond the demand. */
export function packingOf(
  problem: CuttingProblem,
  chosen: readonly { pattern: Pattern; times: number }[],
): Packing {
  const left = [...problem.demand];
  const together = new Map<string, { pattern: Pattern; times: number }>();
  for (const { pattern, times } of chosen) {
    // A covering may cut more than is wanted: surplus pieces are taken out board by board.
    for (let rest = times; rest > 0;) {
      const items = pattern.items
        .map(([i, n]) => [i, Math.min(n, left[i] as number)] as const)
        .filter(([, n]) => n > 0);
      if (items.length === 0) break;
      const lean = { stock: pattern.stock, items };
      const same = Math.min(rest, ...items.map(([i, n]) => Math.floor((left[i] as number) / n)));
      for (const [i, n] of items) left[i] = (left[i] as number) - n * same;
      const key = patternKey(lean);
      together.set(key, { pattern: lean, times: (together.get(key)?.times ?? 0) + same });
      rest -= same;
    }
  }
  const boards = [...together.values()];
  return { boards, cost: costOf(problem, boards) };
}

/** What boards cost on the problem's scale. */
export const costOf = (
  problem: CuttingProblem,
  boards: readonly { readonly pattern: Pattern; readonly times: number }[],
): number => boards.reduce((s, b) => s + b.times * (problem.stock[b.pattern.stock] as Stock).cost, 0);
