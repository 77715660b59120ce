// Puts rows side by side, and the pieces of each in an order, so that the joints of neighbours keep their stagger.
import { jointsOf, staggered, type Piece, type Row, type RowRules } from './lay-up-problem.js';

/** Orders of up to five pieces, as indices, worked out once. */
const orders: readonly (readonly (readonly number[])[])[] = [0, 1, 2, 3, 4, 5].map((n) =>
  permutations([...Array(n).keys()]),
);

/** The row with its pieces in each order that has end pieces long enough; all orders up to five pieces, else a sample. */
export function arrangements(row: Row, rules: RowRules, random: () => number): Row[] {
  const { pieces, across } = row;
  if (pieces.length === 1) return [row];
  const found: Row[] = [];
  const add = (order: readonly Piece[]): void => {
    const [first, last] = [order[0] as Piece, order[order.length - 1] as Piece];
    if (first.length < rules.leastEnd || last.length < rules.leastEnd) return;
    found.push({ pieces: order, joints: jointsOf(order), across });
  };
  const all = orders[pieces.length];
  if (all) for (const order of all) add(order.map((i) => pieces[i] as Piece));
  else for (let i = 0; i < 150; i++) add(shuffled(pieces, random));
  return shuffled(found, random);
}

function permutations<T>(items: readonly T[]): T[][] {
  if (items.length <= 1) return [[...items]];
  return items.flatMap((first, i) =>
    permutations([...items.slice(0, i), ...items.slice(i + 1)]).map((rest) => [first, ...rest]),
  );
}

export function shuffled<T>(items: readonly T[], random: () => number): T[] {
  const list = [...items];
  for (let i = list.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [list[i], list[j]] = [list[j] as T, list[i] as T];
  }
  return list;
}

/** Whether a row keeps the stagger from the rows on either side, where there are any. */
export const rowFits = (
  way: Row,
  before: Row | undefined,
  after: Row | undefined,
  stagger: number,
): boolean =>
  (!before || staggered(before.joints, way.joints, stagger)) &&
  (!after || staggered(after.joints, way.joints, stagger));

/**
 * The rows with one more between two neighbours, or at an end, where its joints keep the stagger from both; undefined
 * where there is no such place. Places are tried from a random one on.
 */
export function insertRow(
  rows: readonly Row[],
  row: Row,
  rules: RowRules,
  random: () => number,
): Row[] | undefined {
  const ways = arrangements(row, rules, random);
  const start = Math.floor(random() * (rows.length + 1));
  for (let k = 0; k <= rows.length; k++) {
    const at = (start + k) % (rows.length + 1);
    const way = ways.find((w) => rowFits(w, rows[at - 1], rows[at], rules.stagger));
    if (way) return [...rows.slice(0, at), way, ...rows.slice(at)];
  }
  return undefined;
}

/** How many ways are looked at before a replacement counts as impossible. */
const mostLooks = 600;

/**
 * Rows in their places, with new ones where others were: `places` (rising) are the indices of the rows that go. New rows
 * take the places in any order and with their pieces in any order; places left over are closed, rows left over are put
 * in elsewhere. Undefined where the stagger does not allow it.
 */
export function replaceRows(
  rows: readonly Row[],
  places: readonly number[],
  fresh: readonly Row[],
  rules: RowRules,
  random: () => number,
): Row[] | undefined {
  const ways = shuffled(fresh, random).map((row) => arrangements(row, rules, random));
  const gone = new Set(places);
  const now: (Row | undefined)[] = rows.map((row, i) => (gone.has(i) ? undefined : row));
  const used = ways.map(() => false);
  let looks = 0;
  const before = (at: number): Row | undefined => {
    for (let i = at - 1; i >= 0; i--) if (now[i]) return now[i];
    return undefined;
  };
  const after = (at: number): Row | undefined => (gone.has(at + 1) ? undefined : now[at + 1]);
  const fill = (k: number, spare: number): boolean => {
    const at = places[k];
    if (at === undefined) return true;
    const [left, right] = [before(at), after(at)];
    for (const [i, choices] of ways.entries()) {
      if (used[i]) continue;
      for (const way of choices) {
        if (++looks > mostLooks) return false;
        if (!rowFits(way, left, right, rules.stagger)) continue;
        used[i] = true;
        now[at] = way;
        if (fill(k + 1, spare)) return true;
        used[i] = false;
        now[at] = undefined;
      }
    }
    // The place is closed: its neighbours meet, unless the next place is to be filled too.
    return (
      spare > 0 &&
      (!left || !right || rowFits(left, undefined, right, rules.stagger)) &&
      fill(k + 1, spare - 1)
    );
  };
  if (!fill(0, Math.max(0, places.length - fresh.length))) return undefined;
  let out: Row[] | undefined = now.filter((row) => row !== undefined);
  for (const [i, choices] of ways.entries())
    if (out && !used[i]) out = insertRow(out, choices[0] as Row, rules, random);
  return out;
}
