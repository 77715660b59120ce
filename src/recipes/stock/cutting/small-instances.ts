import { countsOf, type Dearest, type Item, type Knapsack } from './knapsack.js';

/** Steps of the coarse ruler. */
const marks = 3000;

/** Of the items from j on: which is dearest, and the most that a millimetre can be worth. */
function ahead(items: readonly Item[]): { readonly dearest: Int32Array; readonly rate: Float64Array } {
  const dearest = new Int32Array(items.length + 1).fill(items.length - 1);
  const rate = new Float64Array(items.length + 1);
  for (let j = items.length - 1; j >= 0; j--) {
    const { price, size } = items[j] as Item;
    const next = dearest[j + 1] as number;
    dearest[j] = price >= (items[next] as Item).price ? j : next;
    rate[j] = Math.max(rate[j + 1] as number, price / size);
  }
  return { dearest, rate };
}

/** What a room could be worth on a coarse ruler, pieces rounded down and room up: never too little, and quick to look up. */
function ruler(items: readonly Item[], capacity: number): (room: number) => number {
  const mark = capacity / marks;
  const most = new Float64Array(marks + 1);
  const coarse = items.map(({ size, price }) => ({ size: Math.floor(size / mark), price }));
  for (let b = 1; b <= marks; b++) {
    let top = most[b - 1] as number;
    for (const { size, price } of coarse)
      if (size <= b) top = Math.max(top, price + (most[b - size] as number));
    most[b] = top;
  }
  return (room) => most[Math.ceil(room / mark)] as number;
}

/** The first item from `from` on that fits a length, of items sorted longest first; their number when none does. */
function firstFitting(sizes: Float64Array, from: number, length: number): number {
  let [low, high] = [from, sizes.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sizes[middle] as number) <= length) high = middle;
    else low = middle + 1;
  }
  return low;
}

/**
 * The board worth most where few pieces fit, longest piece first, cut off for good after `nodes`: the last piece is looked
 * up, not searched for.
 */
export function solveSmallKnapsack(sack: Knapsack, nodes: number): Dearest {
  const { items, capacity, atLeast } = sack;
  const m = items.length;
  const size = Float64Array.from(items, (i) => i.size);
  const price = Float64Array.from(items, (i) => i.price);
  const left = Int32Array.from(items, (i) => i.limit);
  const { dearest, rate } = ahead(items);
  const shortest = size[m - 1] as number;
  const most = ruler(items, capacity);
  const taken: number[] = [];
  let kept: number[] | undefined;
  let best = atLeast;
  let budget = nodes;
  const keep = (worth: number, last: readonly number[]): void => {
    if (worth <= best) return;
    best = worth;
    kept = [...taken, ...last];
  };
  const walk = (from: number, room: number, worth: number): void => {
    if (--budget < 0) return;
    let j = firstFitting(size, from, room);
    // Only the item just taken can be used up: those after it are untouched.
    if (left[j] === 0) j++;
    if (j >= m) {
      keep(worth, []);
      return;
    }
    if (room < 2 * shortest) {
      const last = dearest[j] as number;
      keep(worth + (price[last] as number), [last]);
      return;
    }
    for (; j < m; j++) {
      if (worth + room * (rate[j] as number) <= best + 1e-12) return;
      const after = room - (size[j] as number);
      const gained = worth + (price[j] as number);
      if (gained + most(after) <= best + 1e-12) continue;
      left[j] = (left[j] as number) - 1;
      taken.push(j);
      walk(j, after, gained);
      taken.pop();
      left[j] = (left[j] as number) + 1;
    }
  };
  walk(0, capacity, 0);
  return {
    worth: best,
    counts:
      kept &&
      countsOf(
        sack,
        kept.map((j) => [j, 1] as const),
      ),
    exact: budget >= 0,
  };
}
