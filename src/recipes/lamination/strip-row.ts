// One row of a layout: which pieces, in which order, end to end, so that no joint comes too near a neighbour's.
// All lengths here are whole nanometres: sums are exact, and a row is full or it is not.

export interface Stock {
  readonly name: string;
  readonly length: number;
  /** Number of its tone; -1 where none was given, which matches no other. */
  readonly tone: number;
}
export interface Job {
  readonly length: number;
  readonly rows: number;
  readonly stagger: number;
  readonly kerf: number;
  /** A part that is cut, and an offcut worth keeping, is at least this long, and longer than nothing. */
  readonly shortest: number;
  readonly stocks: readonly Stock[];
  /** What a length of one tone side by side counts, as a share of a like length wasted. */
  readonly toneWeight: number;
}
/** A part of a stock piece, laid in a row. */
export interface Part {
  readonly stock: number;
  readonly length: number;
}
export type Row = readonly Part[];

/** What is laid of each stock piece so far: its parts' sum and count. */
export interface Laid {
  readonly sum: Float64Array;
  readonly count: Int32Array;
}

/** Length still to be had of a stock piece: every part laid of it costs itself and a saw cut. */
export function available(job: Job, laid: Laid, stock: number): number {
  const { length } = job.stocks[stock] as Stock;
  return length - (laid.sum[stock] as number) - (laid.count[stock] as number) * job.kerf;
}

/** What of a stock piece is lost once `count` parts of `sum` are laid: sawdust, and an offcut too short to keep. */
export function wasteOf(job: Job, length: number, sum: number, count: number): number {
  if (count === 0) return 0;
  const rest = length - sum;
  return rest - count * job.kerf >= job.shortest ? count * job.kerf : rest;
}

/** Where the joints of a row lie. */
export function jointsOf(row: Row): number[] {
  const joints: number[] = [];
  let x = 0;
  for (const p of row.slice(0, -1)) joints.push((x += p.length));
  return joints;
}

/** Length over which two rows have the same tone side by side. */
export function sameTone(job: Job, a: Row, b: Row): number {
  let same = 0;
  let x = 0;
  for (const p of a) {
    same += sameOver(job, [b], (job.stocks[p.stock] as Stock).tone, x, x + p.length);
    x += p.length;
  }
  return same;
}

function sameOver(job: Job, neighbours: readonly Row[], tone: number, from: number, to: number): number {
  if (tone < 0) return 0;
  let same = 0;
  for (const row of neighbours) {
    let x = 0;
    for (const p of row) {
      const end = x + p.length;
      if ((job.stocks[p.stock] as Stock).tone === tone)
        same += Math.max(0, Math.min(end, to) - Math.max(x, from));
      x = end;
    }
  }
  return same;
}

interface PricedRow {
  readonly row: readonly Part[];
  readonly cost: number;
}

/**
 * Builds the cheapest row it finds in `tries` beginnings: pieces at random up to the last two, and those two by a look
 * through the pairs. With `only`, from pieces of that tone alone. Undefined when no row was found.
 */
export function buildRow(
  job: Job,
  laid: Laid,
  neighbours: readonly Row[],
  random: () => number,
  tries: number,
  only?: number,
): PricedRow | undefined {
  const choices = choicesOf(job, laid, only);
  if (choices.length === 0) return undefined;
  const builder = new RowBuilder(job, laid, neighbours, random, choices);
  for (let t = 0; t < tries; t++) builder.tryOnce();
  return builder.best;
}

/** Pieces, or what is left of them, that may go into a row; shortest first. */
function choicesOf(job: Job, laid: Laid, only: number | undefined): Part[] {
  return job.stocks
    .flatMap(({ tone }, stock): Part[] => {
      const length = available(job, laid, stock);
      const usable = laid.count[stock] === 0 || length >= job.shortest;
      return (only === undefined || tone === only) && usable ? [{ stock, length }] : [];
    })
    .sort((a, b) => a.length - b.length);
}

const isIn = (parts: readonly Part[], stock: number): boolean => parts.some((p) => p.stock === stock);

/** Tries rows between given neighbours and keeps the cheapest. */
class RowBuilder {
  best: PricedRow | undefined;
  readonly #forbidden: readonly number[];
  readonly #longest: number;

  constructor(
    readonly job: Job,
    readonly laid: Laid,
    readonly neighbours: readonly Row[],
    readonly random: () => number,
    readonly choices: readonly Part[],
  ) {
    this.#forbidden = neighbours.flatMap(jointsOf);
    this.#longest = (choices.at(-1) as Part).length;
  }

  /** One row from its beginning; it is given up once it costs as much as the best. */
  tryOnce(): void {
    const parts: Part[] = [];
    let x = 0;
    let cost = 0;
    while (!this.best || cost < this.best.cost) {
      this.#close(parts, x, cost);
      this.#closeWithPairs(parts, x, cost);
      const next = this.#pick(parts, x);
      if (!next) break;
      cost += this.#priceOf(next, next.length, x);
      parts.push(next);
      x += next.length;
    }
  }

  /** A joint of a neighbour's that one at x would come too near to. */
  #inTheWay(x: number): number | undefined {
    return this.#forbidden.find((f) => Math.abs(x - f) < this.job.stagger);
  }

  /** Waste and like tones side by side that a part of a piece at x would add. */
  #priceOf({ stock }: Part, part: number, x: number): number {
    const { job, laid } = this;
    const { length, tone } = job.stocks[stock] as Stock;
    const [sum, count] = [laid.sum[stock] as number, laid.count[stock] as number];
    const lost = wasteOf(job, length, sum + part, count + 1) - wasteOf(job, length, sum, count);
    return lost + job.toneWeight * sameOver(job, this.neighbours, tone, x, x + part);
  }

  /** Index of the shortest choice of at least this length. */
  #firstAtLeast(length: number): number {
    let [low, high] = [0, this.choices.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.choices[middle] as Part).length < length) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  /** Ends the row at x with one piece: of those that reach, the two nearest, and two that leave an offcut to keep. */
  #close(parts: readonly Part[], x: number, cost: number): void {
    const { job } = this;
    const r = job.length - x;
    const nearest = this.#firstAtLeast(r);
    const kept = this.#firstAtLeast(r + job.kerf + job.shortest) + Math.floor(this.random() * 3);
    for (const k of [nearest, nearest + 1, kept, kept + 1]) {
      const c = this.choices[k];
      if (!c || isIn(parts, c.stock) || (c.length > r && r < job.shortest)) continue;
      const whole = cost + this.#priceOf(c, r, x);
      if (!this.best || whole < this.best.cost)
        this.best = { row: [...parts, { stock: c.stock, length: r }], cost: whole };
    }
  }

  /** Ends the row with two pieces, the first of them whole. */
  #closeWithPairs(parts: readonly Part[], x: number, cost: number): void {
    const r = this.job.length - x;
    const end = this.#firstAtLeast(r);
    for (let k = this.#firstAtLeast(r - this.#longest); k < end; k++) {
      const a = this.choices[k] as Part;
      if (isIn(parts, a.stock) || this.#inTheWay(x + a.length) !== undefined) continue;
      const price = cost + this.#priceOf(a, a.length, x);
      if (this.best && price >= this.best.cost) continue;
      this.#close([...parts, a], x + a.length, price);
    }
  }

  /** A piece for the middle of a row: the best of a few at random, whole where that is legal, else cut back to where it is. */
  #pick(parts: readonly Part[], x: number): Part | undefined {
    const { job, choices } = this;
    let found: Part | undefined;
    let least = Infinity;
    for (let k = 0; k < 8; k++) {
      const choice = choices[Math.floor(this.random() * choices.length)] as Part;
      if (isIn(parts, choice.stock) || x + choice.length >= job.length) continue;
      let { length } = choice;
      // Cut back to the stagger before each joint that is in the way.
      for (let f = this.#inTheWay(x + length); f !== undefined; f = this.#inTheWay(x + length))
        length = f - job.stagger - x;
      if (length < Math.min(choice.length, job.shortest)) continue;
      const price = this.#priceOf(choice, length, x) / length;
      if (price < least) {
        least = price;
        found = { stock: choice.stock, length };
      }
    }
    return found;
  }
}
