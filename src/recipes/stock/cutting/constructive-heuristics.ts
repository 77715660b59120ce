import type { TimeLimit } from './time-limit.js';
import { costOf, patternOf, type CuttingProblem, type Packing, type Pattern, type Stock } from './problem.js';

/** What is wanted and what is there: of the whole problem, or of what is left of it. */
export interface Residual {
  readonly demand: ArrayLike<number>;
  readonly available: readonly number[];
}

/** Longest first, as many as fit: one board of a first-fit-decreasing plan. Tells the length it uses. */
function greedy(sizes: readonly number[], left: Int32Array, capacity: number, counts: Int32Array): number {
  let room = capacity;
  sizes.forEach((l, i) => {
    const n = Math.min(left[i] as number, Math.floor(room / l));
    counts[i] = n;
    room -= n * l;
  });
  return capacity - room;
}

/** The longest piece left, and with it the others that fill the board best: a subset sum by search, cut off at `nodes`. */
export function fullest(
  sizes: readonly number[],
  left: Int32Array,
  capacity: number,
  counts: Int32Array,
  nodes: number,
): number {
  counts.fill(0);
  const first = sizes.findIndex((l, i) => (left[i] as number) > 0 && l <= capacity);
  if (first < 0) return 0;
  const trial = new Int32Array(sizes.length);
  let best = 0;
  let budget = nodes;
  const search = (from: number, room: number): boolean => {
    if (capacity - room > best) {
      best = capacity - room;
      counts.set(trial);
    }
    if (best === capacity || --budget <= 0) return true;
    for (let i = from; i < sizes.length; i++) {
      const l = sizes[i] as number;
      // The longest piece is on the board already.
      const there = (left[i] as number) - (i === first ? 1 : 0);
      for (let n = Math.min(there, Math.floor(room / l)); n > 0; n--) {
        trial[i] = (trial[i] as number) + n;
        const done = search(i + 1, room - n * l);
        trial[i] = (trial[i] as number) - n;
        if (done) return true;
      }
    }
    return false;
  };
  trial[first] = 1;
  search(first, capacity - (sizes[first] as number));
  return best;
}

/** Fills one board from what is left, into `counts`; tells the length it uses. */
type Fill = (left: Int32Array, capacity: number, counts: Int32Array) => number;

/**
 * A whole plan, board by board: each next board is of the stock that costs least for the length it uses. Once time is up
 * only the stock of `hurried` is looked at; undefined when that is none.
 */
async function construct(
  problem: CuttingProblem,
  rest: Residual,
  clock: TimeLimit,
  fill: Fill,
  hurried: (there: readonly number[], left: Int32Array) => readonly number[],
): Promise<Packing | undefined> {
  const { sizes, stock } = problem;
  const left = Int32Array.from(rest.demand);
  const available = [...rest.available];
  const boards: { pattern: Pattern; times: number }[] = [];
  const counts = new Int32Array(sizes.length);
  const chosen = new Int32Array(sizes.length);
  while (left.some((n) => n > 0)) {
    await clock.yieldToEventLoop();
    const there = stock.flatMap((_, k) => ((available[k] as number) > 0 ? [k] : []));
    const among = clock.late() ? hurried(there, left) : there;
    if (among.length === 0) return undefined;
    let best = Infinity;
    let which = 0;
    for (const k of among) {
      const { capacity, cost } = stock[k] as Stock;
      // A board that takes nothing costs beyond all bounds for its length.
      const rate = cost / fill(left, capacity, counts);
      if (rate < best) {
        best = rate;
        which = k;
        chosen.set(counts);
      }
    }
    const pattern = patternOf(which, chosen);
    const times = Math.min(
      available[which] as number,
      ...pattern.items.map(([i, n]) => Math.floor((left[i] as number) / n)),
    );
    for (const [i, n] of pattern.items) left[i] = (left[i] as number) - times * n;
    available[which] = (available[which] as number) - times;
    boards.push({ pattern, times });
  }
  return { boards, cost: costOf(problem, boards) };
}

/** Boards filled longest first. When time is up each is of the stock cheapest for its length, so that some plan always comes. */
export async function longestFirst(
  problem: CuttingProblem,
  rest: Residual,
  clock: TimeLimit,
): Promise<Packing> {
  const { sizes, stock } = problem;
  const rate = (k: number): number => (stock[k] as Stock).cost / (stock[k] as Stock).capacity;
  const plan = await construct(
    problem,
    rest,
    clock,
    (left, capacity, counts) => greedy(sizes, left, capacity, counts),
    (there, left) => {
      const longest = sizes[left.findIndex((n) => n > 0)] as number;
      const able = there.filter((k) => (stock[k] as Stock).capacity >= longest);
      return [able.reduce((a, b) => (rate(b) < rate(a) ? b : a))];
    },
  );
  return plan as Packing;
}

/** Boards filled as full as a search over `nodes` finds; undefined when time is up. */
export function fullestFirst(
  problem: CuttingProblem,
  rest: Residual,
  nodes: number,
  clock: TimeLimit,
): Promise<Packing | undefined> {
  const fill: Fill = (left, capacity, counts) => fullest(problem.sizes, left, capacity, counts, nodes);
  return construct(problem, rest, clock, fill, () => []);
}

/** Each piece, longest first, into the open board it leaves least room in; a new board is the cheapest for its length. */
export function bestFit(problem: CuttingProblem): Packing {
  const { sizes, stock } = problem;
  const open: { room: number; stock: number; counts: Map<number, number> }[] = [];
  const there = stock.map((k) => k.count);
  const rates = stock.map((k) => k.cost / k.capacity);
  sizes.forEach((l, i) => {
    for (let n = 0; n < (problem.demand[i] as number); n++) {
      let board: (typeof open)[number] | undefined;
      for (const b of open) if (b.room >= l && b.room < (board?.room ?? Infinity)) board = b;
      if (!board) {
        let which = -1;
        stock.forEach((s, k) => {
          const able = s.capacity >= l && (there[k] as number) > 0;
          if (able && (rates[k] as number) < (rates[which] ?? Infinity)) which = k;
        });
        there[which] = (there[which] as number) - 1;
        board = { room: (stock[which] as Stock).capacity, stock: which, counts: new Map() };
        open.push(board);
      }
      board.room -= l;
      board.counts.set(i, (board.counts.get(i) ?? 0) + 1);
    }
  });
  const boards = open.map((b) => ({ pattern: { stock: b.stock, items: [...b.counts] }, times: 1 }));
  return { boards, cost: costOf(problem, boards) };
}
