// What is left of sticks that may be ripped lengthwise, and rows of a chosen width built from it. A stick is ripped over
// its whole length into strips, side by side with a kerf between; a strip is as wide as the widest row it serves.
import type { Piece, Pool, Row, RowRules, Stick, Strip } from './lay-up-problem.js';
import { fillRow, rowOf, shortening } from './stick-pool.js';

/** Somewhere a piece of a chosen width can come from: a strip there is, or a new one. */
interface Slot {
  readonly strip: Strip;
  readonly rest: number;
  /** Width that goes to waste beside the piece. */
  readonly waste: number;
}

/** Width of a strip: that of the widest row among its pieces. */
export function stripAcross(strip: Strip): number {
  let most = 0;
  for (const p of strip.pieces) if (p.across > most) most = p.across;
  return most;
}

/** A strip as the pool keeps it. */
interface Kept {
  readonly strip: Strip;
  across: number;
  rest: number;
}

export class RipPool implements Pool {
  readonly #kept: Kept[][];
  /** Width of each stick that no strip takes, and a kerf. */
  readonly #free: Float64Array;
  /** Widths at which a stick gives one, two, three or four strips: widest first. */
  readonly #targets: readonly number[];

  constructor(
    readonly sticks: readonly Stick[],
    readonly rules: RowRules,
  ) {
    this.#kept = sticks.map(() => []);
    this.#free = Float64Array.from(sticks, (s) => s.across + rules.kerf);
    const targets = new Set<number>();
    for (const s of sticks)
      for (let n = 1; n <= 4; n++) {
        // Down to a tenth of a millimetre: no fence is set finer.
        const exact = (s.across + rules.kerf) / n - rules.kerf;
        const across = Math.min(n === 1 ? exact : Math.floor(exact / 100) * 100, rules.mostAcross);
        if (across >= rules.leastAcross) targets.add(across);
      }
    this.#targets = [...targets].sort((a, b) => b - a);
  }

  take(row: Row): void {
    for (const piece of row.pieces) {
      const strip = piece.strip as Strip;
      strip.pieces.push(piece);
      this.#update(strip);
    }
  }

  giveBack(row: Row): void {
    for (const piece of row.pieces) {
      const strip = piece.strip as Strip;
      strip.pieces.splice(strip.pieces.indexOf(piece), 1);
      this.#update(strip);
    }
  }

  /** Keeps what is known of a strip in step with its pieces. */
  #update(strip: Strip): void {
    const { kerf } = this.rules;
    const kept = this.#kept[strip.stick] as Kept[];
    const length = (this.sticks[strip.stick] as Stick).length;
    let at = kept.findIndex((k) => k.strip === strip);
    if (at < 0) at = kept.push({ strip, across: 0, rest: length }) - 1;
    const known = kept[at] as Kept;
    const before = known.across > 0 ? known.across + kerf : 0;
    known.across = stripAcross(strip);
    let used = 0;
    for (const p of strip.pieces) used += p.length + kerf;
    known.rest = length - used;
    const after = known.across > 0 ? known.across + kerf : 0;
    this.#free[strip.stick] = (this.#free[strip.stick] as number) + before - after;
    if (strip.pieces.length === 0) kept.splice(at, 1);
  }

  build(jitter: number, random: () => number, like?: Row): Row | undefined {
    let at = 0;
    if (jitter > 0 && like) {
      const way = random();
      if (way < 0.25) {
        // What is left beside other strips is best used at its own width.
        const free = (this.#free[Math.floor(random() * this.sticks.length)] as number) - this.rules.kerf;
        const across = Math.min(free, this.rules.mostAcross);
        const row = across >= this.rules.leastAcross ? this.#buildAt(across, jitter, random) : undefined;
        if (row) return row;
        at = Math.floor(random() * this.#targets.length);
      } else if (way < 0.9) {
        at = this.#targets.findIndex((t) => t <= like.across);
        at = Math.max(0, at - Math.floor(random() * 8) + Math.floor(random() * 6));
      }
    }
    for (; at < this.#targets.length; at++) {
      const row = this.#buildAt(this.#targets[at] as number, jitter, random);
      if (row) return row;
    }
    return undefined;
  }

  #buildAt(across: number, jitter: number, random: () => number): Row | undefined {
    const slots = this.#slots(across);
    if (!slots) return undefined;
    const order = [...slots.keys()];
    // Sticks come widest first; half of the time those that waste least come before them.
    if (jitter > 0 && random() < 0.6) {
      const weight = slots.map((s) => s.waste + random() * jitter * 20_000);
      order.sort((a, b) => (weight[a] as number) - (weight[b] as number));
    } else if (jitter > 0)
      for (let i = 0; i + 1 < order.length; i++) {
        if (random() >= jitter) continue;
        const j = Math.min(order.length - 1, i + 1 + Math.floor(random() * 4));
        [order[i], order[j]] = [order[j] as number, order[i] as number];
      }
    const cuts = fillRow(
      order,
      slots.map((s) => s.rest),
      this.rules,
      shortening(jitter, random, this.rules.stagger),
    );
    if (!cuts) return undefined;
    return rowOf(
      cuts.map((c) => {
        const { strip } = slots[c.stick] as Slot;
        return { stick: strip.stick, length: c.length, strip };
      }),
      across,
    );
  }

  /** Where pieces this wide can come from; undefined where they cannot fill a row. */
  #slots(across: number): Slot[] | undefined {
    const { kerf, leastInner, leastAcross, rowLength } = this.rules;
    const slots: Slot[] = [];
    let length = 0;
    for (let i = 0; i < this.sticks.length; i++) {
      const stick = this.sticks[i] as Stick;
      // Sticks come widest first.
      if (stick.across < across) break;
      let free = this.#free[i] as number;
      const fresh = Math.floor(free / (across + kerf));
      for (const { strip, across: wide, rest } of this.#kept[i] as Kept[]) {
        // A strip may be made wider where nothing else is cut from the rest of the width in this row.
        if (rest < leastInner || (wide < across && (fresh > 0 || across - wide > free))) continue;
        slots.push({ strip, rest, waste: Math.max(0, wide - across) });
        free -= Math.max(0, across - wide);
        length += rest;
      }
      const over = free - fresh * (across + kerf);
      const waste = over < leastAcross + kerf ? over / Math.max(1, fresh) : 0;
      for (let n = 0; n < fresh; n++)
        slots.push({ strip: { stick: i, pieces: [] }, rest: stick.length, waste });
      length += fresh * stick.length;
    }
    return length < rowLength ? undefined : slots;
  }

  excess(row: Row): number {
    let sum = 0;
    for (const p of row.pieces) {
      const wide = (this.sticks[p.stick] as Stick).across + this.rules.kerf;
      const each = wide / Math.floor(wide / (row.across + this.rules.kerf));
      sum += (each - row.across - this.rules.kerf) * p.length;
    }
    return sum;
  }
}

/** Pieces of each strip side by side: where each strip of a stick lies across it, widest first. */
export function stripPlaces(strips: readonly Strip[], kerf: number): Map<Strip, [from: number, to: number]> {
  const places = new Map<Strip, [number, number]>();
  let at = 0;
  for (const strip of [...strips].sort((a, b) => stripAcross(b) - stripAcross(a))) {
    places.set(strip, [at, at + stripAcross(strip)]);
    at += stripAcross(strip) + kerf;
  }
  return places;
}

/** The strips of a lay-up with their pieces, each once. */
export const stripsIn = (rows: readonly Row[]): Set<Strip> =>
  new Set(rows.flatMap((row) => row.pieces.flatMap((p: Piece) => (p.strip ? [p.strip] : []))));
