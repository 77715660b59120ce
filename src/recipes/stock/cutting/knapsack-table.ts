import { countsOf, type Dearest, type Item, type Knapsack } from './knapsack.js';

/** The board worth most by a table over every length up to the capacity: exact, whatever the prices. */
export function byTable(sack: Knapsack): Dearest {
  const { items, capacity, atLeast } = sack;
  const wide = capacity + 1;
  const worth = new Float64Array(wide);
  // How many of each item a board of each length takes at best.
  const choice = items.map(() => new Uint8Array(wide));
  items.forEach(({ size, price, limit }, row) => {
    const chosen = choice[row] as Uint8Array;
    for (let w = capacity; w >= size; w--) {
      const most = Math.min(255, limit, Math.floor(w / size));
      for (let n = 1; n <= most; n++) {
        const v = (worth[w - n * size] as number) + n * price;
        if (v > (worth[w] as number)) {
          worth[w] = v;
          chosen[w] = n;
        }
      }
    }
  });
  const best = worth[capacity] as number;
  if (best <= atLeast) return { worth: atLeast, counts: undefined, exact: true };
  const taken: [number, number][] = [];
  let room = capacity;
  for (let row = items.length - 1; row >= 0; row--) {
    const n = (choice[row] as Uint8Array)[room] as number;
    taken.push([row, n]);
    room -= n * (items[row] as Item).size;
  }
  return { worth: best, counts: countsOf(sack, taken), exact: true };
}
