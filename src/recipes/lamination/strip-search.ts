// The search for a layout: rows built one after another, then taken out a few at a time and built anew while that makes
// the whole cheaper. A bound on the waste of any layout tells when no more can be gained.
import {
  buildRow,
  jointsOf,
  sameTone,
  wasteOf,
  type Job,
  type Laid,
  type Part,
  type Row,
  type Stock,
} from './strip-row.js';

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
  readonly bound: number;
  readonly signal: AbortSignal | undefined;
  readonly onBetter: (best: Layout | undefined, done: number) => void;
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
const price = (job: Job, l: Layout): number =>
  l.waste + job.toneWeight * l.sameTone - 1e-3 * Math.min(l.worstStagger, job.length);

function laidOf(job: Job, rows: readonly (Row | undefined)[]): Laid {
  const laid = { sum: new Float64Array(job.stocks.length), count: new Int32Array(job.stocks.length) };
  for (const row of rows) for (const p of row ?? []) put(laid, p, 1);
  return laid;
}

function put(laid: Laid, part: Part, sign: 1 | -1): void {
  laid.sum[part.stock] = (laid.sum[part.stock] as number) + sign * part.length;
  laid.count[part.stock] = (laid.count[part.stock] as number) + sign;
}

/** Fills the empty rows in the given order; false where one cannot be filled. */
function fill(
  job: Job,
  rows: (Row | undefined)[],
  laid: Laid,
  order: readonly number[],
  random: () => number,
  tries: number,
  toneOf?: (row: number) => number,
): boolean {
  for (const r of order) {
    const neighbours = [rows[r - 1], rows[r + 1]].filter((x) => x !== undefined);
    const built =
      (toneOf && buildRow(job, laid, neighbours, random, tries, toneOf(r))) ??
      buildRow(job, laid, neighbours, random, tries);
    if (!built) return false;
    for (const p of built.row) put(laid, p, 1);
    rows[r] = built.row;
  }
  return true;
}

/**
 * A layout from nothing. Two times in three, where there are tones, rows are begun each in one tone by turns: with
 * joints staggered, only that keeps two tones wholly apart.
 */
function begin(job: Job, random: () => number, tries: number): Row[] | undefined {
  const rows: (Row | undefined)[] = new Array<Row | undefined>(job.rows).fill(undefined);
  const tones = new Map<number, number>();
  for (const s of job.stocks) if (s.tone >= 0) tones.set(s.tone, (tones.get(s.tone) ?? 0) + s.length);
  // Tones there is enough of for a row, the commonest first; the first two or three take turns.
  const order = [...tones]
    .filter(([, have]) => have >= job.length)
    .sort((a, b) => b[1] - a[1])
    .map(([tone]) => tone);
  const turns = order.slice(0, 2 + Math.floor(random() * 2));
  const shift = Math.floor(random() * 6);
  const striped = turns.length > 1 && random() < 2 / 3;
  const whole = fill(
    job,
    rows,
    laidOf(job, []),
    [...rows.keys()],
    random,
    tries,
    striped ? (r) => turns[(r + shift) % turns.length] as number : undefined,
  );
  return whole ? (rows as Row[]) : undefined;
}

/** Searches until the time is up, the person stops it, or nothing can be gained. Undefined when no layout was found. */
export async function search(job: Job, options: SearchOptions): Promise<Layout | undefined> {
  const { random } = options;
  const start = performance.now();
  const elapsed = (): number => (performance.now() - start) / 1000;
  let breath = start;
  const pause = async (): Promise<void> => {
    if (performance.now() - breath < 40) return;
    // The person's interrupt and the page's drawing come through only between turns.
    await new Promise((go) => setTimeout(go, 0));
    breath = performance.now();
    options.onBetter(best, Math.min(1, elapsed() / options.seconds));
  };
  const over = (): boolean => options.signal?.aborted === true || elapsed() >= options.seconds;
  let best: Layout | undefined;
  const proven = (l: Layout): boolean => l.waste <= options.bound && l.sameTone === 0;

  for (let round = 0; !best && !over(); round++) {
    const rows = begin(job, random, 4 + 4 * Math.min(round, 4));
    if (rows) best = measure(job, rows);
    await pause();
  }
  if (!best) return undefined;
  options.onBetter(best, 0);
  let current = best;
  let sinceBetter = 0;
  while (!over() && !proven(best)) {
    // Stuck: begin afresh, or from the best, since a whole slab of tones can only turn over together.
    if (++sinceBetter > 40 * job.rows) {
      sinceBetter = 0;
      const fresh = random() < 0.7 ? begin(job, random, 6) : undefined;
      current = fresh ? measure(job, fresh) : best;
    }
    const rows: (Row | undefined)[] = [...current.rows];
    const out = random() < 0.2 ? moveRow(job, current.rows, rows, random) : pickRows(job.rows, random);
    for (const r of out) rows[r] = undefined;
    if (fill(job, rows, laidOf(job, rows), out, random, 6)) {
      const next = measure(job, rows as Row[]);
      // Now and then a slightly worse layout is taken, or the search would sit in the first hollow it finds.
      const slack =
        0.05 *
        Math.abs(price(job, current)) *
        (random() < 0.1 ? random() * (1 - elapsed() / options.seconds) : 0);
      if (price(job, next) < price(job, current)) sinceBetter = 0;
      if (price(job, next) <= price(job, current) + slack) current = next;
      if (price(job, next) < price(job, best)) best = next;
    }
    await pause();
  }
  return best;
}

/**
 * Takes a row out and opens a gap elsewhere; the gap is built anew, and so is a row where the others closed up. Cures
 * two like rows side by side in slabs that else alternate.
 */
function moveRow(job: Job, full: readonly Row[], rows: (Row | undefined)[], random: () => number): number[] {
  const seams = full.slice(1).map((row, i) => sameTone(job, full[i] as Row, row));
  const worst = seams.indexOf(Math.max(...seams));
  const from =
    random() < 0.7 && worst >= 0 ? worst + Math.floor(random() * 2) : Math.floor(random() * rows.length);
  const to = [0, rows.length - 1, Math.floor(random() * rows.length)][Math.floor(random() * 3)] as number;
  rows.splice(from, 1);
  rows.splice(to, 0, undefined);
  const seam = to <= from ? Math.min(from + 1, rows.length - 1) : from;
  return [...new Set([to, seam])];
}

/** One to four rows, neighbours or not, in the order to build them anew. */
function pickRows(rows: number, random: () => number): number[] {
  const many = Math.min(rows, 1 + Math.floor(random() * 4));
  const out = new Set<number>();
  const first = Math.floor(random() * rows);
  const near = random() < 0.5;
  for (let k = 0; out.size < many; k++) out.add(near ? (first + k) % rows : Math.floor(random() * rows));
  return [...out];
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

/** Smallest amount by which a set of whole pieces overshoots a row, 0 where it was too much to reckon. */
function leastExcess(job: Job): number {
  let unit = job.length;
  for (const s of job.stocks) unit = gcd(unit, s.length);
  const full = job.length / unit;
  const longest = Math.max(...job.stocks.map((s) => s.length)) / unit;
  const cells = full + longest + 1;
  if (cells * job.stocks.length > 1e8) return 0;
  const reached = new Uint8Array(cells);
  reached[0] = 1;
  for (const s of job.stocks) {
    const step = s.length / unit;
    // From above, so that a piece is used once; sums at or over the row need no further piece.
    for (let x = full - 1; x >= 0; x--) if (reached[x] === 1) reached[x + step] = 1;
  }
  for (let x = full; x < cells; x++) if (reached[x] === 1) return (x - full) * unit;
  return 0;
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}
