// Builds one row after another from what is left of the sticks, widest first.
import type { Piece, Row, RowRules, Stick } from './lay-up-problem.js';

/** What is left of each stick. */
export class Pool {
  readonly rest: Float64Array;
  readonly #used: Float64Array;

  constructor(
    readonly sticks: readonly Stick[],
    readonly rules: RowRules,
  ) {
    this.rest = Float64Array.from(sticks, (s) => s.length);
    this.#used = new Float64Array(sticks.length);
  }

  /** Cuts the pieces of a row; the saw takes its kerf behind each, or all that is left if less. */
  take(row: Row): void {
    this.#change(row, 1);
  }

  /** Gives the pieces of a row back. */
  giveBack(row: Row): void {
    this.#change(row, -1);
  }

  #change(row: Row, sign: 1 | -1): void {
    for (const { stick, length } of row) {
      const used = (this.#used[stick] as number) + sign * (length + this.rules.kerf);
      this.#used[stick] = used;
      this.rest[stick] = Math.max(0, (this.sticks[stick] as Stick).length - used);
    }
  }
}

/** Sticks that still give a piece, widest first; `jitter` is the share of neighbours that change places. */
export function tryOrder(pool: Pool, jitter: number, random: () => number): number[] {
  const order: number[] = [];
  // Sticks come sorted by width, so their order of index is the order of width.
  for (let i = 0; i < pool.rest.length; i++)
    if ((pool.rest[i] as number) >= pool.rules.leastInner) order.push(i);
  if (jitter > 0)
    for (let i = 0; i + 1 < order.length; i++) {
      if (random() >= jitter) continue;
      const j = Math.min(order.length - 1, i + 1 + Math.floor(random() * 4));
      [order[i], order[j]] = [order[j] as number, order[i] as number];
    }
  return order;
}

/**
 * One row from the sticks in the order given: whole lengths until the row is full, the last piece cut to fit, one piece
 * shortened where the last would come out too short. Undefined where the sticks do not fill a row.
 */
export function buildRow(pool: Pool, order: readonly number[]): Row | undefined {
  const { rules, rest } = pool;
  const { rowLength, leastInner, leastEnd, maxJoints } = rules;
  const longest = order.reduce((most, i) => Math.max(most, rest[i] as number), 0);
  const pieces: Piece[] = [];
  let need = rowLength;
  for (const stick of order) {
    const there = rest[stick] as number;
    const slots = maxJoints + 1 - pieces.length;
    if (there >= need) {
      const closed = close(pieces, stick, need, rules);
      if (closed) return hasEnds(closed, rules) ? closed : undefined;
      continue;
    }
    // The piece must leave room for a last one of fair length, and the slots that remain must be able to fill the row.
    const length = Math.min(there, need - leastEnd);
    if (slots < 2 || length < leastInner || need - length > (slots - 1) * longest) continue;
    pieces.push({ stick, length });
    need -= length;
  }
  return undefined;
}

/** Ends a row with a piece of `need`, or shortens an earlier one so that the last comes out long enough. */
function close(pieces: readonly Piece[], stick: number, need: number, rules: RowRules): Row | undefined {
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
const hasEnds = (row: Row, rules: RowRules): boolean =>
  row.length === 1 || row.filter((p) => p.length >= rules.leastEnd).length >= 2;
