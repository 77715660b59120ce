// The search for a layout: rows built one after another, then taken out a few at a time and built anew while that makes
// the whole cheaper. A bound on the waste of any layout tells when no more can be gained.
import {
  buildRow,
  jointsOf,
  sameTone,
  wasteOf,
  type Job,
  type Laid,
  type Row,
  type Stock,
} from './strip-row.js';

/** Beginnings tried for each row. */
const tries = 6;
/** Rounds without a better layout, for each row of the slab, after which all is begun afresh. */
const patience = 40;

export interface Layout {
  readonly rows: readonly Row[];
  readonly waste: number;
  readonly sameTone: number;
  /** Least distance of joints in neighbouring rows; Infinity where no two are neighbours. */
  readonly worstStagger: number;
}

export interface SearchOptions {
  readonly seconds: number;
  readonly random: () => number;
  /** No layout wastes less: the search ends where one wastes no more and no like tones touch. */
  readonly bound: number;
  readonly signal: AbortSignal | undefined;
  /** A clock, ms. */
  readonly now: () => number;
  /** Called with the best so far and the share of the time that is gone, about 25 times a second. */
  readonly tell: (best: Layout | undefined, done: number) => void;
}

/** Everything known of a finished layout. */
export function measure(job: Job, rows: readonly Row[]): Layout {
  const laid = laidOf(job, rows);
  let waste = 0;
  job.stocks.forEach(
    (s: Stock, i) => (waste += wasteOf(job, s.length, laid.sum[i] as number, laid.count[i] as number)),
  );
  let same = 0;
  let worstStagger = Infinity;
  for (let r = 1; r < rows.length; r++) {
    const [a, b] = [rows[r - 1] as Row, rows[r] as Row];
    same += sameTone(job, a, b);
    for (const x of jointsOf(a))
      for (const y of jointsOf(b)) worstStagger = Math.min(worstStagger, Math.abs(x - y));
  }
  return { rows, waste, sameTone: same, worstStagger };
}

/** One number to compare layouts by; a wider worst stagger only breaks ties. */
export const price = (job: Job, l: Layout): number =>
  l.waste + job.toneWeight * l.sameTone - 1e-3 * Math.min(l.worstStagger, job.length);

function laidOf(job: Job, rows: readonly (Row | undefined)[]): Laid {
  const laid = { sum: new Float64Array(job.stocks.length), count: new Int32Array(job.stocks.length) };
  for (const row of rows) lay(laid, row ?? []);
  return laid;
}

function lay(laid: Laid, row: Row): void {
  for (const p of row) {
    laid.sum[p.stock] = (laid.sum[p.stock] as number) + p.length;
    laid.count[p.stock] = (laid.count[p.stock] as number) + 1;
  }
}

/** The rows with those of `order` built anew one after another; undefined where one of them cannot be filled. */
export function fill(
  job: Job,
  full: readonly (Row | undefined)[],
  order: readonly number[],
  random: () => number,
  toneOf?: (row: number) => number | undefined,
): readonly Row[] | undefined {
  const rows = full.map((row, r) => (order.includes(r) ? undefined : row));
  const laid = laidOf(job, rows);
  for (const r of order) {
    const neighbours = [rows[r - 1], rows[r + 1]].filter((x) => x !== undefined);
    const built =
      (toneOf && buildRow(job, laid, neighbours, random, tries, toneOf(r))) ??
      buildRow(job, laid, neighbours, random, tries);
    if (!built) return undefined;
    lay(laid, built.row);
    rows[r] = built.row;
  }
  return rows as Row[];
}

/**
 * A layout from nothing. Two times in three each row is laid in one tone, alternating between the two or three tones that there is
 * most of: with joints staggered, only that keeps tones wholly apart.
 */
export function begin(job: Job, random: () => number): readonly Row[] | undefined {
  const tones = new Map<number, number>();
  for (const s of job.stocks) if (s.tone >= 0) tones.set(s.tone, (tones.get(s.tone) ?? 0) + s.length);
  const turns = [...tones]
    .sort((a, b) => b[1] - a[1])
    .slice(0, 1 + Math.floor(random() * 3))
    .map(([tone]) => tone);
  const empty = new Array<undefined>(job.rows).fill(undefined);
  const toneOf = (row: number): number | undefined => turns[row % turns.length];
  return fill(job, empty, [...empty.keys()], random, turns.length > 1 ? toneOf : undefined);
}

/** One to four rows, neighbours or not, in the order to build them anew. */
export function pickRows(rows: number, random: () => number): number[] {
  const many = Math.min(rows, 1 + Math.floor(random() * 4));
  const out = new Set<number>();
  const first = Math.floor(random() * rows);
  const near = random() < 0.5;
  for (let k = 0; out.size < many; k++) out.add(near ? (first + k) % rows : Math.floor(random() * rows));
  return [...out];
}

/** Searches until the time is up, the user stops it, or nothing can be gained. Undefined when no layout was found. */
export async function search(job: Job, options: SearchOptions): Promise<Layout | undefined> {
  const { random, now } = options;
  const start = now();
  const done = (): number => (now() - start) / 1000 / options.seconds;
  let breath = start;
  let best: Layout | undefined;
  let current: Layout | undefined;
  const priceOf = (l: Layout | undefined): number => (l ? price(job, l) : Infinity);
  const proven = (): boolean => best !== undefined && best.waste <= options.bound && best.sameTone === 0;
  let sinceBetter = 0;
  while (options.signal?.aborted !== true && done() < 1 && !proven()) {
    // Stuck: begin afresh, since a whole slab of tones can only turn over together.
    if (++sinceBetter > patience * job.rows) current = undefined;
    const rows = current ? fill(job, current.rows, pickRows(job.rows, random), random) : begin(job, random);
    if (rows) {
      const next = measure(job, rows);
      if (priceOf(next) < priceOf(current)) sinceBetter = 0;
      if (priceOf(next) <= priceOf(current)) current = next;
      if (priceOf(next) < priceOf(best)) best = next;
    }
    if (now() - breath >= 40) {
      // The user's interrupt and the page's drawing come through only between turns.
      await new Promise((go) => setTimeout(go, 0));
      breath = now();
      options.tell(best, Math.min(1, done()));
    }
  }
  return best;
}

/**
 * Least waste that any layout can have. A row of whole pieces, its last one cut and the end thrown away, wastes at least the
 * smallest excess of any set of pieces over the row. Every other row holds a part of a piece that was sawn in two and
 * both parts used or kept: that costs a saw cut, and a cut serves two rows at most.
 */
export function wasteBound(job: Job): number {
  const excess = leastExcess(job);
  let least = Infinity;
  for (let b = 0; b <= job.rows; b++)
    least = Math.min(least, (job.rows - b) * excess + Math.ceil(b / 2) * job.kerf);
  return least;
}

/**
 * Smallest amount by which a set of whole pieces overshoots a row, 0 where it was too much to calculate. All pieces together
 * reach over a row, or there would be no job.
 */
function leastExcess(job: Job): number {
  let unit = job.length;
  for (const s of job.stocks) unit = gcd(unit, s.length);
  const full = job.length / unit;
  const longest = Math.max(...job.stocks.map((s) => s.length)) / unit;
  const cells = full + longest;
  if (cells * job.stocks.length > 1e8) return 0;
  const reached = new Uint8Array(cells);
  reached[0] = 1;
  for (const s of job.stocks) {
    const step = s.length / unit;
    // From above, so that a piece is used once; sums at or over the row need no further piece.
    for (let x = full - 1; x >= 0; x--) if (reached[x] === 1) reached[x + step] = 1;
  }
  return (reached.indexOf(1, full) - full) * unit;
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}
