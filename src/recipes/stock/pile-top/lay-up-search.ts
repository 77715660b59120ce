// Large neighbourhood search for a lay-up: some rows are taken out and laid again in a slightly different order of
// sticks, in places where their joints keep the stagger; a lay-up that is no worse replaces the last.
import { widthOf, type Piece, type Pool, type Row, type Strip } from './lay-up-problem.js';
import { insertRow, replaceRows } from './row-order.js';

export interface LayUpOptions {
  /** Ends the search before its rounds are done: a signal, or the time. */
  readonly stop: () => boolean;
  readonly random: () => number;
  /** Whether a lay-up gives the width that is asked. */
  readonly enough: (rows: readonly Row[]) => boolean;
  /** No lay-up has more rows. */
  readonly maxRows: number;
  readonly rounds: number;
  /** Rows to begin with: a lay-up from these sticks that keeps the rules. */
  readonly start?: readonly Row[];
  /** The timber of a lay-up. Where given, the start is enough and timber is made least; else width is made greatest. */
  readonly timber?: (rows: readonly Row[]) => number;
  /** Share of the time that is gone, 0 to 1: it matters only where the time ends the search before its rounds do. */
  readonly elapsed: () => number;
  readonly pause: () => Promise<void>;
  readonly tell: (width: number) => void;
}

export interface LayUp {
  /** Rows in their places, pieces from left to right. */
  readonly rows: readonly Row[];
  /** Whether all rounds were done, or the width is enough. */
  readonly finished: boolean;
}

const sum = (rows: readonly Row[], of: (row: Row) => number): number => {
  let total = 0;
  for (const row of rows) total += of(row);
  return total;
};

/** Rows one after another until the pool gives no more or they are `most`; the pool is cut. */
function layRows(pool: Pool, most: number, jitter: number, random: () => number, like?: Row): Row[] {
  const rows: Row[] = [];
  while (rows.length < most) {
    const row = pool.build(jitter, random, like) ?? (jitter > 0 ? pool.build(0, random, like) : undefined);
    if (!row) break;
    pool.take(row);
    rows.push(row);
  }
  return rows;
}

/** Adds rows until the pool gives no more or none finds a place; what finds no place is laid differently, a few times. */
function moreRows(pool: Pool, from: readonly Row[], { maxRows, random, enough }: LayUpOptions): Row[] {
  let rows = [...from];
  for (let failed = 0; rows.length < maxRows && failed < 60 && !enough(rows);) {
    const row = pool.build(failed === 0 ? 0 : 0.1 + 0.02 * failed, random);
    const placed = row && insertRow(rows, row, pool.rules, random);
    if (!row || !placed) {
      failed++;
      continue;
    }
    failed = 0;
    pool.take(row);
    rows = placed;
  }
  return rows;
}

/** The widest lay-up found, or the one of least timber. The same seed and number of rounds give the same lay-up. */
export async function searchLayUp(pool: Pool, options: LayUpOptions): Promise<LayUp> {
  const { stop, enough, timber, rounds } = options;
  const width = (list: readonly Row[]): number => widthOf(list, pool.rules.jointing);
  let rows = [...(options.start ?? [])];
  for (const row of rows) pool.take(row);
  if (!timber) rows = moreRows(pool, rows, options);
  let best = { rows: copied(rows), width: width(rows) };
  let told = 0;
  let round = 0;
  let heat = startHeat;
  const reached = (): boolean => !timber && enough(rows);
  const afterPause = async (): Promise<void> => {
    await options.pause();
    if (best.width > told) options.tell((told = best.width));
    heat = startHeat * (1 - Math.max(options.elapsed(), round / rounds)) ** 2;
  };
  const changed = (): Row[] | undefined =>
    timber ? saveTimber(pool, rows, options, timber) : widen(pool, rows, options, heat);
  let done = reached();
  for (; round < rounds && !done && rows.length > 0; round++) {
    if (round % 50 === 0) {
      await afterPause();
      if (stop()) break;
    }
    const next = changed();
    if (!next) continue;
    rows = next;
    if (!timber && width(rows) <= best.width) continue;
    best = { rows: copied(rows), width: width(rows) };
    done = reached();
  }
  options.tell(best.width);
  return { rows: best.rows, finished: done || round >= rounds || rows.length === 0 };
}

/** The width that the search may lose in one exchange at first, in micrometres, to find its way out of a dead end. */
const startHeat = 1000;

/** Rows as they stand, with strips of their own, so that they stay when the search goes on. */
function copied(rows: readonly Row[]): Row[] {
  // Rows without strips never change.
  if (rows[0]?.pieces[0]?.strip === undefined) return [...rows];
  const strips = new Map<Strip, Strip>();
  return rows.map((row) => ({
    ...row,
    pieces: row.pieces.map((p): Piece => {
      if (!p.strip) return p;
      const strip = strips.get(p.strip) ?? { stick: p.stick, pieces: [] };
      strips.set(p.strip, strip);
      const piece = { ...p, strip };
      strip.pieces.push(piece);
      return piece;
    }),
  }));
}

/** Takes rows out and lays them again: the rows in their places, or undefined, with the pool as before, where not `better`. */
function exchange(
  pool: Pool,
  rows: readonly Row[],
  places: readonly number[],
  random: () => number,
  lay: (removed: readonly Row[]) => Row[],
  better: (removed: readonly Row[], again: readonly Row[]) => boolean,
): Row[] | undefined {
  const removed = places.map((i) => rows[i] as Row);
  for (const row of removed) pool.giveBack(row);
  const again = lay(removed);
  const placed = better(removed, again) ? replaceRows(rows, places, again, pool.rules, random) : undefined;
  if (placed) return placed;
  for (const row of again) pool.giveBack(row);
  for (const row of removed) pool.take(row);
  return undefined;
}

function widen(
  pool: Pool,
  rows: readonly Row[],
  { random, maxRows }: LayUpOptions,
  heat: number,
): Row[] | undefined {
  const net = (row: Row): number => row.across - pool.rules.jointing;
  const excess = (row: Row): number => pool.excess(row);
  return exchange(
    pool,
    rows,
    chosen(rows, random),
    random,
    (removed) =>
      layRows(
        pool,
        Math.min(removed.length + 1, maxRows - rows.length + removed.length),
        0.1 + 0.4 * random(),
        random,
        removed[0],
      ),
    (removed, again) => {
      const gain = sum(again, net) - sum(removed, net);
      if (gain < 0) return heat > 0 && gain > heat * Math.log(random());
      return gain > 0 || sum(again, excess) <= sum(removed, excess) || random() < heat / startHeat / 4;
    },
  );
}

function saveTimber(
  pool: Pool,
  rows: readonly Row[],
  { random, enough }: LayUpOptions,
  timber: (rows: readonly Row[]) => number,
): Row[] | undefined {
  const places = chosen(rows, random);
  const gone = new Set(places);
  const kept = rows.filter((_, i) => !gone.has(i));
  const before = timber(rows);
  return exchange(
    pool,
    rows,
    places,
    random,
    (removed) => {
      const again: Row[] = [];
      const jitter = 0.1 + 0.6 * random();
      while (again.length <= removed.length && !enough([...kept, ...again])) {
        const [row] = layRows(pool, 1, jitter, random, removed[0]);
        if (!row) break;
        again.push(row);
      }
      return again;
    },
    (_, again) => enough([...kept, ...again]) && timber([...kept, ...again]) <= before,
  );
}

/** Indices of rows to take out, rising: rows alike in width, sometimes one from elsewhere or all from one width on. */
function chosen(rows: readonly Row[], random: () => number): number[] {
  const widest = (rows[Math.floor(random() * rows.length)] as Row).across;
  const all = rows.length < 40 && random() < 0.15;
  const count = all ? rows.length : 1 + Math.floor(random() * Math.min(6, rows.length));
  // The widest rows no wider than the one picked, widest first.
  const out: number[] = [];
  for (let i = 0; i < rows.length; i++) {
    const { across } = rows[i] as Row;
    if (across > widest) continue;
    if (out.length === count && across <= (rows[out[count - 1] as number] as Row).across) continue;
    let at = out.length;
    while (at > 0 && (rows[out[at - 1] as number] as Row).across < across) at--;
    out.splice(at, 0, i);
    if (out.length > count) out.pop();
  }
  if (!all && random() < 0.5) {
    const more = Math.floor(random() * rows.length);
    if (!out.includes(more)) out.push(more);
  }
  return out.sort((a, b) => a - b);
}
