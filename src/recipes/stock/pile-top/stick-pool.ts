// What is left of sticks that are cut to length only, and rows built from it, widest sticks first.
import { jointsOf, type Piece, type Pool, type Row, type RowRules, type Stick } from './lay-up-problem.js';

/** Sticks, widest first, each as wide as it is. */
export class StickPool implements Pool {
  readonly rest: Float64Array;
  readonly #used: Float64Array;
  /** Sticks that still give a piece, widest first. */
  readonly #free: number[] = [];
  #order: number[] = [];

  constructor(
    readonly sticks: readonly Stick[],
    readonly rules: RowRules,
  ) {
    this.rest = Float64Array.from(sticks, (s) => s.length);
    this.#used = new Float64Array(sticks.length);
    for (let i = 0; i < sticks.length; i++)
      if ((sticks[i] as Stick).length >= rules.leastInner) this.#free.push(i);
  }

  /** Cuts the pieces of a row; the saw takes its kerf behind each, or all that is left if less. */
  take(row: Row): void {
    for (const piece of row.pieces) this.#change(piece, 1);
  }

  giveBack(row: Row): void {
    for (const piece of row.pieces) this.#change(piece, -1);
  }

  #change({ stick, length }: Piece, sign: 1 | -1): void {
    const used = (this.#used[stick] as number) + sign * (length + this.rules.kerf);
    this.#used[stick] = used;
    const [before, after] = [
      this.rest[stick] as number,
      Math.max(0, (this.sticks[stick] as Stick).length - used),
    ];
    this.rest[stick] = after;
    const least = this.rules.leastInner;
    if (before >= least === after >= least) return;
    const at = this.#place(stick);
    if (after >= least) this.#free.splice(at, 0, stick);
    else this.#free.splice(at, 1);
  }

  /** Where a stick stands, or would stand, among the free. */
  #place(stick: number): number {
    let [low, high] = [0, this.#free.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.#free[middle] as number) < stick) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  build(jitter: number, random: () => number): Row | undefined {
    const order = (this.#order = [...this.#free]);
    if (jitter > 0)
      for (let i = 0; i + 1 < order.length; i++) {
        if (random() >= jitter) continue;
        const j = Math.min(order.length - 1, i + 1 + Math.floor(random() * 4));
        [order[i], order[j]] = [order[j] as number, order[i] as number];
      }
    const shorten = shortening(jitter, random, this.rules.stagger);
    // Short pieces may use up the joints of a row before it is full: then, and now and then anyway, they are passed over.
    const fair = this.rules.rowLength / (this.rules.maxJoints + 1);
    const some = jitter > 0 && random() < 0.2 ? longer(order, this.rest, random() * fair) : order;
    const pieces =
      fillRow(some, this.rest, this.rules, shorten) ??
      fillRow(longer(order, this.rest, fair), this.rest, this.rules, shorten);
    if (!pieces) return undefined;
    let across = this.rules.mostAcross;
    for (const p of pieces) across = Math.min(across, (this.sticks[p.stick] as Stick).across);
    return rowOf(pieces, across);
  }

  excess(row: Row): number {
    let sum = 0;
    for (const p of row.pieces) sum += ((this.sticks[p.stick] as Stick).across - row.across) * p.length;
    return sum;
  }
}

const longer = (order: readonly number[], rest: ArrayLike<number>, least: number): number[] =>
  order.filter((i) => (rest[i] as number) >= least);

type Cut = Pick<Piece, 'stick' | 'length' | 'strip'>;

/** A row of these pieces, as wide as given. */
export function rowOf(pieces: readonly Cut[], across: number): Row {
  const all = pieces.map((p): Piece => ({ ...p, across }));
  return { pieces: all, across, joints: jointsOf(all) };
}

/**
 * Pieces that fill a row, from the sticks in the order given: whole lengths until the row is full, the last piece cut to
 * fit, one piece shortened where the last would come out too short. Undefined where the sticks do not fill a row.
 */
export function fillRow(
  order: readonly number[],
  rest: ArrayLike<number>,
  rules: RowRules,
  shorten: (length: number, least: number) => number,
): Cut[] | undefined {
  const { rowLength, leastInner, leastEnd, maxJoints } = rules;
  let longest = 0;
  for (const i of order) longest = Math.max(longest, rest[i] as number);
  const pieces: Cut[] = [];
  let need = rowLength;
  for (const stick of order) {
    const there = rest[stick] as number;
    const slots = maxJoints + 1 - pieces.length;
    if (there >= need) {
      const closed = close(pieces, stick, need, rules);
      if (closed) return hasEnds(closed, rules) ? closed : undefined;
      continue;
    }
    // The piece must leave enough for a last one of fair length, and the slots that remain must be able to fill the row.
    const length = shorten(Math.min(there, need - leastEnd), leastInner);
    if (slots < 2 || length < leastInner || need - length > (slots - 1) * longest) continue;
    pieces.push({ stick, length });
    need -= length;
  }
  return undefined;
}

/** Now and then a piece is cut shorter, by up to twice the stagger, so that joints come to lie elsewhere; only far from the plain order. */
export const shortening =
  (jitter: number, random: () => number, stagger: number) =>
  (length: number, least: number): number => {
    if (jitter <= 0.4 || stagger === 0 || random() >= 0.4) return length;
    // By whole millimetres, so that a plan of whole millimetres stays one.
    return Math.max(Math.min(length, least), length - Math.round((2 * stagger * random()) / 1000) * 1000);
  };

/** Ends a row with a piece of `need`, or shortens an earlier one so that the last comes out long enough. */
function close(pieces: readonly Cut[], stick: number, need: number, rules: RowRules): Cut[] | undefined {
  if (need >= rules.leastEnd || pieces.length === 0) return [...pieces, { stick, length: need }];
  const short = rules.leastEnd - need;
  const giver = pieces.findIndex((p) => p.length - short >= rules.leastEnd);
  if (giver < 0) return undefined;
  return [
    ...pieces.map((p, i) => (i === giver ? { ...p, length: p.length - short } : p)),
    { stick, length: rules.leastEnd },
  ];
}

/** Two of its pieces are long enough for the ends, or it is a single one. */
const hasEnds = (row: readonly Cut[], rules: RowRules): boolean =>
  row.length === 1 || row.filter((p) => p.length >= rules.leastEnd).length >= 2;
