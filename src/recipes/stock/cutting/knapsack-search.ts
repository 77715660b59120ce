import { countsOf, type Dearest, type Item, type Knapsack } from './knapsack.js';

/** The board worth most by search, sizes by falling worth for their length, cut off for good after `nodes`. */
export function byRate(sack: Knapsack, nodes: number): Dearest {
  const { items, capacity, atLeast } = sack;
  const rate = (j: number): number => (items[j] as Item).price / (items[j] as Item).size;
  const order = items.map((_, j) => j).sort((a, b) => rate(b) - rate(a));
  const m = order.length;
  const size = Float64Array.from(order, (j) => (items[j] as Item).size);
  const price = Float64Array.from(order, (j) => (items[j] as Item).price);
  const dense = Float64Array.from(order, rate);
  const most = Int32Array.from(order, (j) => (items[j] as Item).limit);
  // The shortest of the sizes from j on.
  const least = new Float64Array(m + 1).fill(Infinity);
  for (let j = m - 1; j >= 0; j--) least[j] = Math.min(least[j + 1] as number, size[j] as number);
  const trial = new Int32Array(m);
  let kept: Int32Array | undefined;
  let best = atLeast;
  let budget = nodes;
  const walk = (from: number, room: number, worth: number): void => {
    if (worth > best) {
      best = worth;
      kept = Int32Array.from(trial);
    }
    if (room < (least[from] as number)) return;
    for (let j = from; j < m; j++) {
      if (worth + room * (dense[j] as number) <= best + 1e-12) return;
      const l = size[j] as number;
      if (l > room) continue;
      if (--budget < 0) return;
      for (let n = Math.min(most[j] as number, Math.floor(room / l)); n > 0; n--) {
        trial[j] = n;
        walk(j + 1, room - n * l, worth + n * (price[j] as number));
      }
      trial[j] = 0;
    }
  };
  walk(0, capacity, 0);
  const taken = kept && Array.from(kept, (n, j) => [order[j] as number, n] as const);
  return { worth: best, counts: taken && countsOf(sack, taken), exact: budget >= 0 };
}
