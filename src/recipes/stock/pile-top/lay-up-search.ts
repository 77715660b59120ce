// Large neighbourhood search for a lay-up: some rows are taken out and laid again in a slightly different order of
// sticks; a lay-up that is as wide or wider replaces the last. Joints are staggered when the search pauses; rows that find
// no place are laid again.
import { acrossOf, type Row, type RowRules, type Stick } from './lay-up-problem.js';
import { buildRow, Pool, tryOrder } from './row-builder.js';
import { arrange } from './row-order.js';

export interface LayUpOptions {
  /** Ends the search: a signal, or the time. */
  readonly stop: () => boolean;
  readonly random: () => number;
  /** Taken off each row in jointing, both edges together. */
  readonly jointing: number;
  /** Sum of row widths at which the search may end. */
  readonly enough: number;
  readonly maxRows: number;
  readonly pause: () => Promise<void>;
  readonly tell: (width: number) => void;
}

export interface LayUp {
  /** Rows in their places, pieces from left to right. */
  readonly rows: readonly Row[];
  /** Sum of the row widths once jointed, micrometres. */
  readonly width: number;
}

interface Laid {
  readonly row: Row;
  readonly across: number;
  /** Area of wood in pieces wider than the row: breaks ties between lay-ups of one width. */
  readonly over: number;
}

/** Sum of the widths of rows once jointed. */
export const widthOf = (rows: readonly Row[], sticks: readonly Stick[], jointing: number): number =>
  rows.reduce((sum, row) => sum + acrossOf(row, sticks) - jointing, 0);

function laid(row: Row, sticks: readonly Stick[]): Laid {
  const across = acrossOf(row, sticks);
  const over = row.reduce((s, p) => s + ((sticks[p.stick] as Stick).across - across) * p.length, 0);
  return { row, across, over };
}

const sum = (rows: readonly Laid[], of: (l: Laid) => number): number => rows.reduce((s, l) => s + of(l), 0);

/** Rows one after another until the pool gives no more, at most `most`; the pool is cut. */
function layRows(pool: Pool, most: number, jitter: number, random: () => number): Laid[] {
  const rows: Laid[] = [];
  while (rows.length < most) {
    const row =
      buildRow(pool, tryOrder(pool, jitter, random)) ??
      (jitter > 0 ? buildRow(pool, tryOrder(pool, 0, random)) : undefined);
    if (!row) break;
    pool.take(row);
    rows.push(laid(row, pool.sticks));
  }
  return rows;
}

/**
 * The widest lay-up found until `stop` or until it is wide enough. `sticks` are sorted by width, widest first.
 * The same seed and number of turns give the same lay-up.
 */
export async function searchLayUp(
  sticks: readonly Stick[],
  rules: RowRules,
  options: LayUpOptions,
): Promise<LayUp> {
  const { random, stop, jointing, enough, maxRows } = options;
  const pool = new Pool(sticks, rules);
  let rows = layRows(pool, maxRows, 0, random);
  let best: LayUp = { rows: [], width: 0 };
  let tried = 0;
  const keepStaggered = (): void => {
    tried = sum(rows, (l) => l.across - jointing);
    const placed = staggerRows(rows, sticks, options, rules);
    const width = widthOf(placed, sticks, jointing);
    if (width <= best.width) return;
    best = { rows: placed, width };
    options.tell(width);
  };
  keepStaggered();
  for (let turn = 1; !stop() && best.width < enough && rows.length > 0; turn++) {
    if (turn % 50 === 0) await options.pause();
    const better = improve(pool, rows, options);
    if (better) rows = better;
    const width = sum(rows, (l) => l.across - jointing);
    if (width > tried && (turn % 2000 === 0 || width >= enough)) keepStaggered();
  }
  if (best.width < enough && sum(rows, (l) => l.across - jointing) > best.width) keepStaggered();
  return best;
}

/** Takes a few rows out and lays them again; undefined, with the pool as before, where that is no better. */
function improve(pool: Pool, rows: readonly Laid[], { random, maxRows }: LayUpOptions): Laid[] | undefined {
  const out = chosen(rows.length, random);
  const removed = rows.filter((_, i) => out.has(i));
  const kept = rows.filter((_, i) => !out.has(i));
  for (const l of removed) pool.giveBack(l.row);
  const again = layRows(pool, maxRows - kept.length, 0.1 + 0.4 * random(), random);
  const [before, after] = [sum(removed, (l) => l.across), sum(again, (l) => l.across)];
  // Rows are worth their width; one row more costs its jointing, which no useful row is narrower than.
  const better =
    again.length >= removed.length &&
    (after > before || (after === before && sum(again, (l) => l.over) <= sum(removed, (l) => l.over)));
  if (better) return [...kept, ...again].sort((a, b) => b.across - a.across);
  for (const l of again) pool.giveBack(l.row);
  for (const l of removed) pool.take(l.row);
  return undefined;
}

/** Indices of rows to take out: neighbours in width, sometimes one from elsewhere or all from one width on. */
function chosen(rows: number, random: () => number): Set<number> {
  const at = Math.floor(random() * rows);
  if (rows < 40 && random() < 0.15) return new Set(Array.from({ length: rows - at }, (_, k) => at + k));
  const count = 1 + Math.floor(random() * Math.min(6, rows));
  const out = new Set(Array.from({ length: Math.min(count, rows - at) }, (_, k) => at + k));
  if (random() < 0.5) out.add(Math.floor(random() * rows));
  return out;
}

/** Rows that keep their stagger: those that find no place are laid again, then left out if that does not help. */
function staggerRows(
  rows: readonly Laid[],
  sticks: readonly Stick[],
  options: LayUpOptions,
  rules: RowRules,
): readonly Row[] {
  let now = rows.map((l) => l.row);
  for (let round = 0; round < 12; round++) {
    const { placed, stuck } = arrange(now, rules, options.random);
    if (stuck.length === 0) return placed;
    const again = new Set(stuck);
    // One more that is not stuck is laid again too, so that lengths can be exchanged.
    again.add(Math.floor(options.random() * now.length));
    const kept = now.filter((_, i) => !again.has(i));
    const pool = new Pool(sticks, rules);
    for (const row of kept) pool.take(row);
    now = [...kept, ...layRows(pool, options.maxRows - kept.length, 0.5, options.random).map((l) => l.row)];
  }
  return arrange(now, rules, options.random, 20).placed;
}
