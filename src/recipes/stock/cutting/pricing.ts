/** Room for the table of an exact knapsack; beyond it search alone decides. */
const tableMost = 4e7;

/**
 * Finds the board whose pieces are worth most at given prices: a knapsack with a limit on each size. Search by falling
 * worth for its length, and where that grows too long a table over all lengths, which is exact whatever the prices.
 */
export class Pricer {
  #choice = new Uint8Array(0);
  #worth = new Float64Array(0);
  readonly counts: Int32Array;

  constructor(readonly sizes: readonly number[]) {
    this.counts = new Int32Array(sizes.length);
  }

  /**
   * The most that a board of `capacity` can be worth, if more than `atLeast`; its counts are left in `counts`. Which way it
   * is found depends on what is short: the table where it is small, few big pieces one by one, else a search that falls
   * back on the table.
   */
  best(
    prices: ArrayLike<number>,
    limits: ArrayLike<number>,
    capacity: number,
    atLeast: number,
  ): { worth: number; exact: boolean } {
    const cells = capacity * this.sizes.length;
    if (cells <= 1e6) {
      const got = this.table(prices, limits, capacity, atLeast);
      if (got) return got;
    }
    if (capacity < 6 * (this.sizes[this.sizes.length - 1] as number))
      return this.#few(prices, limits, capacity, atLeast);
    const found = this.#search(prices, limits, capacity, atLeast, 30_000);
    if (found.exact || found.worth > atLeast + 1e-4) return found;
    return (
      this.table(prices, limits, capacity, atLeast) ?? this.#search(prices, limits, capacity, atLeast, 3e6)
    );
  }

  /** Boards of five pieces at most, longest piece first: the last piece is looked up, not searched for. */
  #few(
    prices: ArrayLike<number>,
    limits: ArrayLike<number>,
    capacity: number,
    atLeast: number,
  ): { worth: number; exact: boolean } {
    const order: number[] = [];
    for (let i = 0; i < this.sizes.length; i++)
      if ((prices[i] as number) > 1e-12 && (limits[i] as number) > 0 && (this.sizes[i] as number) <= capacity)
        order.push(i);
    const m = order.length;
    if (m === 0) return { worth: atLeast, exact: true };
    const size = Float64Array.from(order, (i) => this.sizes[i] as number);
    const price = Float64Array.from(order, (i) => prices[i] as number);
    const left = Int32Array.from(order, (i) => limits[i] as number);
    // Of the sizes from j on: the dearest, and the most that a millimetre can be worth.
    const dearest = new Int32Array(m + 1);
    const rate = new Float64Array(m + 1);
    for (let j = m - 1; j >= 0; j--) {
      dearest[j] =
        j === m - 1 || (price[j] as number) >= (price[dearest[j + 1] as number] as number)
          ? j
          : (dearest[j + 1] as number);
      rate[j] = Math.max(rate[j + 1] as number, (price[j] as number) / (size[j] as number));
    }
    const shortest = size[m - 1] as number;
    // What a room could be worth on a coarse ruler, pieces rounded down and room up: never too little, and quick to look up.
    const marks = 3000;
    const mark = capacity / marks;
    const most = new Float64Array(marks + 1);
    const coarse = Int32Array.from(size, (l) => Math.floor(l / mark));
    for (let b = 1; b <= marks; b++) {
      let top = most[b - 1] as number;
      for (let j = m - 1; j >= 0 && (coarse[j] as number) <= b; j--) {
        const v = (price[j] as number) + (most[b - (coarse[j] as number)] as number);
        if (v > top) top = v;
      }
      most[b] = top;
    }
    const fits = (from: number, room: number): number => {
      let [low, high] = [from, m];
      while (low < high) {
        const middle = (low + high) >> 1;
        if ((size[middle] as number) <= room) high = middle;
        else low = middle + 1;
      }
      return low;
    };
    const taken: number[] = [];
    let kept: number[] | undefined;
    let best = atLeast;
    let budget = 5e6;
    const walk = (from: number, room: number, worth: number): void => {
      if (--budget < 0) return;
      let j = fits(from, room);
      if (j < m && (left[j] as number) === 0) j++;
      if (j >= m) {
        if (worth > best) {
          best = worth;
          kept = [...taken];
        }
        return;
      }
      if (room < 2 * shortest) {
        const last = dearest[j] as number;
        const total = worth + (price[last] as number);
        if (total > best) {
          best = total;
          kept = [...taken, last];
        }
        return;
      }
      for (; j < m; j++) {
        if (worth + room * (rate[j] as number) <= best + 1e-12) return;
        if ((left[j] as number) === 0) continue;
        const after = room - (size[j] as number);
        if (
          worth + (price[j] as number) + (most[Math.min(marks, Math.ceil(after / mark))] as number) <=
          best + 1e-12
        )
          continue;
        left[j] = (left[j] as number) - 1;
        taken.push(j);
        walk(j, after, worth + (price[j] as number));
        taken.pop();
        left[j] = (left[j] as number) + 1;
      }
    };
    walk(0, capacity, 0);
    if (kept) {
      this.counts.fill(0);
      for (const j of kept) this.counts[order[j] as number] = (this.counts[order[j] as number] as number) + 1;
    }
    return { worth: best, exact: budget >= 0 };
  }

  /** The same cut off for good after `nodes`: any board worth more than `atLeast`, or none. */
  quick(
    prices: ArrayLike<number>,
    limits: ArrayLike<number>,
    capacity: number,
    atLeast: number,
    nodes: number,
  ): { worth: number; exact: boolean } {
    return this.#search(prices, limits, capacity, atLeast, nodes);
  }

  #search(
    prices: ArrayLike<number>,
    limits: ArrayLike<number>,
    capacity: number,
    atLeast: number,
    nodes: number,
  ): { worth: number; exact: boolean } {
    const order: number[] = [];
    for (let i = 0; i < this.sizes.length; i++)
      if ((prices[i] as number) > 1e-12 && (limits[i] as number) > 0 && (this.sizes[i] as number) <= capacity)
        order.push(i);
    const rate = (i: number): number => (prices[i] as number) / (this.sizes[i] as number);
    order.sort((a, b) => rate(b) - rate(a) || a - b);
    const m = order.length;
    const size = Float64Array.from(order, (i) => this.sizes[i] as number);
    const price = Float64Array.from(order, (i) => prices[i] as number);
    const dense = Float64Array.from(order, rate);
    const most = Int32Array.from(order, (i) => limits[i] as number);
    const least = new Float64Array(m + 1).fill(Infinity);
    for (let j = m - 1; j >= 0; j--) least[j] = Math.min(least[j + 1] as number, size[j] as number);
    const trial = new Int32Array(m);
    const kept = new Int32Array(m);
    let best = atLeast;
    let seen = false;
    let budget = nodes;
    const walk = (from: number, room: number, worth: number): void => {
      if (worth > best) {
        best = worth;
        seen = true;
        kept.set(trial);
      }
      if (room < (least[from] as number)) return;
      for (let j = from; j < m; j++) {
        if (worth + room * (dense[j] as number) <= best + 1e-12) return;
        const l = size[j] as number;
        if (l > room) continue;
        if (--budget < 0) return;
        const max = Math.min(most[j] as number, Math.floor(room / l));
        for (let n = max; n > 0; n--) {
          trial[j] = n;
          walk(j + 1, room - n * l, worth + n * (price[j] as number));
          if (budget < 0) break;
        }
        trial[j] = 0;
      }
    };
    walk(0, capacity, 0);
    if (seen) {
      this.counts.fill(0);
      for (let j = 0; j < m; j++) this.counts[order[j] as number] = kept[j] as number;
    }
    return { worth: seen ? best : atLeast, exact: budget >= 0 };
  }

  /** The same by a table over every length up to `capacity`; undefined when that would not fit in memory. */
  table(
    prices: ArrayLike<number>,
    limits: ArrayLike<number>,
    capacity: number,
    atLeast: number,
  ): { worth: number; exact: boolean } | undefined {
    const items: number[] = [];
    for (let i = 0; i < this.sizes.length; i++)
      if ((prices[i] as number) > 1e-12 && (limits[i] as number) > 0 && (this.sizes[i] as number) <= capacity)
        items.push(i);
    const wide = capacity + 1;
    if (!Number.isInteger(capacity) || items.length * wide > tableMost) return undefined;
    if (this.#choice.length < items.length * wide) this.#choice = new Uint8Array(items.length * wide);
    if (this.#worth.length < wide) this.#worth = new Float64Array(wide);
    const choice = this.#choice.fill(0, 0, items.length * wide);
    const worth = this.#worth.fill(0, 0, wide);
    items.forEach((i, row) => {
      const l = this.sizes[i] as number;
      const p = prices[i] as number;
      const most = Math.min(255, limits[i] as number, Math.floor(capacity / l));
      const base = row * wide;
      for (let w = capacity; w >= l; w--) {
        let best = worth[w] as number;
        let taken = 0;
        for (let n = 1, at = w - l; n <= most && at >= 0; n++, at -= l) {
          const v = (worth[at] as number) + n * p;
          if (v > best) {
            best = v;
            taken = n;
          }
        }
        if (taken > 0) {
          worth[w] = best;
          choice[base + w] = taken;
        }
      }
    });
    const value = worth[capacity] as number;
    if (value <= atLeast) return { worth: atLeast, exact: true };
    this.counts.fill(0);
    let w = capacity;
    for (let row = items.length - 1; row >= 0; row--) {
      const n = choice[row * wide + w] as number;
      if (n > 0) {
        this.counts[items[row] as number] = n;
        w -= n * (this.sizes[items[row] as number] as number);
      }
    }
    return { worth: value, exact: true };
  }
}
