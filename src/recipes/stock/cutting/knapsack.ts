/** Prices of the sizes, and how often each may be cut from one board. */
export interface Wanting {
  readonly prices: ArrayLike<number>;
  readonly limits: ArrayLike<number>;
}

/** The board worth most. */
export interface Dearest {
  readonly worth: number;
  /** How many of each size it takes; undefined where nothing is worth more than was asked. */
  readonly counts: Int32Array | undefined;
  /** Whether it is proved that no board is worth more. */
  readonly exact: boolean;
}

/** A size that may be cut: its place among the sizes, its length, price and limit. */
export interface Item {
  readonly at: number;
  readonly size: number;
  readonly price: number;
  readonly limit: number;
}

/** A board to be filled with items, for more than `atLeast`; `sizes` is how many sizes there are in all. */
export interface Knapsack {
  readonly items: readonly Item[];
  readonly sizes: number;
  readonly capacity: number;
  readonly atLeast: number;
}

/** A board and the sizes that are worth cutting from it, longest first as the sizes are. */
export function knapsack(
  sizes: readonly number[],
  { prices, limits }: Wanting,
  capacity: number,
  atLeast: number,
): Knapsack {
  const items = sizes.flatMap((size, at) => {
    const [price, limit] = [prices[at] as number, limits[at] as number];
    return price > 1e-12 && limit > 0 && size <= capacity ? [{ at, size, price, limit }] : [];
  });
  return { items, sizes: sizes.length, capacity, atLeast };
}

/** Counts by size from items taken, each as often as it is named. */
export function countsOf(
  sack: Knapsack,
  taken: readonly (readonly [item: number, times: number])[],
): Int32Array {
  const counts = new Int32Array(sack.sizes);
  for (const [j, n] of taken) {
    const { at } = sack.items[j] as Item;
    counts[at] = (counts[at] as number) + n;
  }
  return counts;
}
