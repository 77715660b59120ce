import { patternOf, type CuttingProblem, type Packing, type Pattern, type Stock } from './problem.js';

/** Longest first, as many as fit: one board of a first-fit-decreasing plan. */
function greedy(
  sizes: readonly number[],
  left: ArrayLike<number>,
  capacity: number,
  counts: Int32Array,
): number {
  let room = capacity;
  for (let i = 0; i < sizes.length; i++) {
    const n = Math.min(left[i] as number, Math.floor(room / (sizes[i] as number)));
    counts[i] = n;
    room -= n * (sizes[i] as number);
  }
  return capacity - room;
}

/** The longest piece left, and with it the others that fill the board best: a subset sum by search, cut off at `nodes`. */
function fullest(
  sizes: readonly number[],
  left: ArrayLike<number>,
  capacity: number,
  counts: Int32Array,
  nodes: number,
): number {
  counts.fill(0);
  let first = 0;
  while (first < sizes.length && ((left[first] as number) === 0 || (sizes[first] as number) > capacity))
    first++;
  if (first === sizes.length) return 0;
  const trial = new Int32Array(sizes.length);
  let best = -1;
  let budget = nodes;
  const search = (from: number, room: number): boolean => {
    if (capacity - room > best) {
      best = capacity - room;
      counts.set(trial);
    }
    if (best >= capacity || --budget <= 0) return true;
    for (let i = from; i < sizes.length; i++) {
      const l = sizes[i] as number;
      const most = Math.min(left[i] as number, Math.floor(room / l));
      for (let n = most; n > 0; n--) {
        trial[i] = (trial[i] as number) + n;
        const done = search(i + 1, room - n * l);
        trial[i] = (trial[i] as number) - n;
        if (done) return true;
      }
    }
    return false;
  };
  trial[first] = 1;
  const rest = Int32Array.from(left as ArrayLike<number>);
  rest[first] = (rest[first] as number) - 1;
  left = rest;
  search(first, capacity - (sizes[first] as number));
  return best;
}

/**
 * A whole plan, board by board: each next board is of the stock that costs least for the length it uses. `nodes` 0 fills
 * longest first, more searches for the fullest board. Undefined when stock runs out or `give up` says so.
 */
export function construct(
  problem: CuttingProblem,
  demand: ArrayLike<number>,
  available: readonly number[],
  nodes: number,
  stop: () => boolean,
): Packing | undefined {
  const { sizes, stock } = problem;
  const left = Int32Array.from(demand as ArrayLike<number>);
  const there = [...available];
  const boards: { pattern: Pattern; times: number }[] = [];
  const counts = new Int32Array(sizes.length);
  const chosen = new Int32Array(sizes.length);
  let cost = 0;
  let pieces = left.reduce((a, b) => a + b, 0);
  while (pieces > 0) {
    let best = Infinity;
    let which = -1;
    for (let k = 0; k < stock.length; k++) {
      if ((there[k] as number) <= 0) continue;
      const { capacity, cost: price } = stock[k] as Stock;
      const used =
        nodes === 0 ? greedy(sizes, left, capacity, counts) : fullest(sizes, left, capacity, counts, nodes);
      if (used > 0 && price / used < best) {
        best = price / used;
        which = k;
        chosen.set(counts);
      }
    }
    if (which < 0 || stop()) return undefined;
    let times = there[which] as number;
    for (let i = 0; i < sizes.length; i++)
      if ((chosen[i] as number) > 0)
        times = Math.min(times, Math.floor((left[i] as number) / (chosen[i] as number)));
    for (let i = 0; i < sizes.length; i++) {
      left[i] = (left[i] as number) - times * (chosen[i] as number);
      pieces -= times * (chosen[i] as number);
    }
    there[which] = (there[which] as number) - times;
    cost += times * (stock[which] as Stock).cost;
    boards.push({ pattern: patternOf(which, chosen), times });
  }
  return { boards, cost };
}

/** Each piece, longest first, into the open board it leaves least room in; a new board is the cheapest for its length. */
export function bestFit(problem: CuttingProblem): Packing | undefined {
  const { sizes, stock } = problem;
  const open: { room: number; stock: number; counts: Map<number, number> }[] = [];
  const there = stock.map((k) => k.count);
  for (let i = 0; i < sizes.length; i++) {
    const l = sizes[i] as number;
    for (let n = 0; n < (problem.demand[i] as number); n++) {
      let board = open.reduce<(typeof open)[number] | undefined>(
        (a, b) => (b.room >= l && (a === undefined || b.room < a.room) ? b : a),
        undefined,
      );
      if (!board) {
        let which = -1;
        for (let k = 0; k < stock.length; k++) {
          const s = stock[k] as Stock;
          if (
            s.capacity >= l &&
            (there[k] as number) > 0 &&
            (which < 0 ||
              s.cost / s.capacity < (stock[which] as Stock).cost / (stock[which] as Stock).capacity)
          )
            which = k;
        }
        if (which < 0) return undefined;
        there[which] = (there[which] as number) - 1;
        board = { room: (stock[which] as Stock).capacity, stock: which, counts: new Map() };
        open.push(board);
      }
      board.room -= l;
      board.counts.set(i, (board.counts.get(i) ?? 0) + 1);
    }
  }
  return {
    boards: open.map((b) => ({
      pattern: { stock: b.stock, items: [...b.counts].map(([i, n]) => [i, n] as const) },
      times: 1,
    })),
    cost: open.reduce((s, b) => s + (stock[b.stock] as Stock).cost, 0),
  };
}
