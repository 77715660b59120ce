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
  /** A part that is cut, and an offcut worth keeping, is at least this long. */
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
  const k = laid.count[stock] as number;
  const length = (job.stocks[stock] as Stock).length;
  return k === 0 ? length : length - (laid.sum[stock] as number) - k * job.kerf;
}

/** What of a stock piece is lost once `count` parts of `sum` are laid: sawdust, and an offcut too short to keep. */
export function wasteOf(job: Job, length: number, sum: number, count: number): number {
  if (count === 0) return 0;
  const rest = length - sum;
  return rest - count * job.kerf >= job.shortest && rest > 0 ? count * job.kerf : rest;
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
      if (x >= to) break;
      const end = x + p.length;
      if (end > from && (job.stocks[p.stock] as Stock).tone === tone)
        same += Math.min(end, to) - Math.max(x, from);
      x = end;
    }
  }
  return same;
}

interface Choice {
  readonly stock: number;
  readonly length: number;
}

/**
 * Builds the cheapest row it finds in `tries` beginnings: pieces at random up to the last two, and those two by a full
 * look through every pair. With `only`, from pieces of that tone alone. Undefined when no row was found.
 */
export function buildRow(
  job: Job,
  laid: Laid,
  neighbours: readonly Row[],
  random: () => number,
  tries: number,
  only = -1,
): { readonly row: Part[]; readonly cost: number } | undefined {
  const T = job.length;
  const forbidden = neighbours.flatMap(jointsOf);
  const legal = (x: number): boolean => {
    for (const f of forbidden) if (Math.abs(x - f) < job.stagger) return false;
    return true;
  };
  const choices: Choice[] = [];
  for (let i = 0; i < job.stocks.length; i++) {
    if (only >= 0 && (job.stocks[i] as Stock).tone !== only) continue;
    const length = available(job, laid, i);
    if (length > 0 && (laid.count[i] === 0 || length >= job.shortest)) choices.push({ stock: i, length });
  }
  if (choices.length === 0) return undefined;
  choices.sort((a, b) => a.length - b.length);
  const longest = (choices[choices.length - 1] as Choice).length;
  const lost = (i: number, part: number): number => {
    const length = (job.stocks[i] as Stock).length;
    const [sum, count] = [laid.sum[i] as number, laid.count[i] as number];
    return wasteOf(job, length, sum + part, count + 1) - wasteOf(job, length, sum, count);
  };
  const priceOf = (c: Choice, part: number, x: number): number =>
    lost(c.stock, part) +
    job.toneWeight * sameOver(job, neighbours, (job.stocks[c.stock] as Stock).tone, x, x + part);
  const firstAtLeast = (length: number): number => {
    let [low, high] = [0, choices.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((choices[middle] as Choice).length < length) low = middle + 1;
      else high = middle;
    }
    return low;
  };

  let best: { row: Part[]; cost: number } | undefined;
  const taken = new Set<number>();
  const offer = (parts: readonly Part[], cost: number, ...last: Part[]): void => {
    if (!best || cost < best.cost) best = { row: [...parts, ...last], cost };
  };
  /** Closes the row from x with one piece, or with the best pair. */
  const close = (parts: readonly Part[], x: number, cost: number): void => {
    const r = T - x;
    for (let k = firstAtLeast(r); k < choices.length; k++) {
      const c = choices[k] as Choice;
      if (taken.has(c.stock) || (c.length > r && r < job.shortest)) continue;
      const price = cost + lost(c.stock, r);
      if (best && price >= best.cost) continue;
      offer(parts, cost + priceOf(c, r, x), { stock: c.stock, length: r });
    }
    for (const a of choices) {
      if (a.length >= r) break;
      if (taken.has(a.stock) || !legal(x + a.length)) continue;
      const rest = r - a.length;
      const atA = cost + priceOf(a, a.length, x);
      if (best && atA >= best.cost) continue;
      // The nearest fit from above wastes least; a few longer ones may suit the tone, or leave an offcut to keep.
      const from = firstAtLeast(rest);
      let looked = 0;
      for (let k = from; k < choices.length && looked < 4; k++) {
        const b = choices[k] as Choice;
        if (b.stock === a.stock || taken.has(b.stock) || (b.length > rest && rest < job.shortest)) continue;
        looked++;
        offer(
          parts,
          atA + priceOf(b, rest, x + a.length),
          { stock: a.stock, length: a.length },
          { stock: b.stock, length: rest },
        );
        // Straight on to those that leave an offcut worth keeping.
        if (looked === 2)
          k = Math.max(k, firstAtLeast(rest + job.kerf + job.shortest) + Math.floor(random() * 3) - 1);
      }
    }
  };

  for (let t = 0; t < tries; t++) {
    taken.clear();
    const parts: Part[] = [];
    let x = 0;
    let cost = 0;
    for (;;) {
      const r = T - x;
      if (r <= 2 * longest) close(parts, x, cost);
      // One piece could close the row from here, but three short ones may close it with less waste: half the time they are tried.
      if ((r <= longest && random() < 0.5) || (best && cost >= best.cost)) break;
      const next = pick(r, x);
      if (!next) break;
      cost += priceOf(next.choice, next.length, x);
      taken.add(next.choice.stock);
      parts.push({ stock: next.choice.stock, length: next.length });
      x += next.length;
    }
  }
  return best;

  /** A piece for the middle of a row: the best of a few at random, whole where that is legal, else cut back to where it is. */
  function pick(r: number, x: number): { choice: Choice; length: number } | undefined {
    let found: { choice: Choice; length: number } | undefined;
    let least = Infinity;
    for (let k = 0; k < 8; k++) {
      const choice = choices[Math.floor(random() * choices.length)] as Choice;
      if (taken.has(choice.stock)) continue;
      let length = Math.min(choice.length, r - 1);
      if (length < choice.length && length < job.shortest) continue;
      if (!legal(x + length)) {
        // Just short of the stagger before the joint that is in the way.
        const back =
          Math.min(...forbidden.filter((f) => Math.abs(x + length - f) < job.stagger)) - job.stagger - x;
        if (back < job.shortest || !legal(x + back)) continue;
        length = back;
      }
      const price = (priceOf(choice, length, x) + job.toneWeight * 0.3 * length * random()) / length;
      if (price < least) {
        least = price;
        found = { choice, length };
      }
    }
    return found;
  }
}
