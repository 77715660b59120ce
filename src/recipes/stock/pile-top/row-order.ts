// Puts rows side by side, and the pieces of each in an order, so that the joints of neighbours keep their stagger.
import { jointsOf, staggered, type Piece, type Row, type RowRules } from './lay-up-problem.js';

interface Arrangement {
  readonly row: Row;
  readonly joints: readonly number[];
}

/** Orders of the pieces of a row with end pieces long enough; all of them up to five pieces, else a sample. */
function arrangements(row: Row, rules: RowRules, random: () => number): Arrangement[] {
  const found = new Map<string, Arrangement>();
  const add = (order: readonly Piece[]): void => {
    const ends = [order[0] as Piece, order.at(-1) as Piece];
    if (order.length > 1 && ends.some((p) => p.length < rules.leastEnd)) return;
    const joints = jointsOf(order);
    const key = joints.join();
    if (!found.has(key)) found.set(key, { row: order, joints });
  };
  if (row.length <= 5) for (const order of permutations(row)) add(order);
  else for (let i = 0; i < 150; i++) add(shuffled(row, random));
  return [...found.values()];
}

function permutations<T>(items: readonly T[]): T[][] {
  if (items.length <= 1) return [[...items]];
  return items.flatMap((first, i) =>
    permutations([...items.slice(0, i), ...items.slice(i + 1)]).map((rest) => [first, ...rest]),
  );
}

function shuffled<T>(items: readonly T[], random: () => number): T[] {
  const list = [...items];
  for (let i = list.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [list[i], list[j]] = [list[j] as T, list[i] as T];
  }
  return list;
}

/**
 * Rows in an order, each with its pieces in an order, in which all neighbours keep the stagger: one row after another,
 * those that fit nowhere at the end put between two neighbours that they suit.
 * @returns the rows in their places, and those that found none (indices of `rows`)
 */
export function arrange(
  rows: readonly Row[],
  rules: RowRules,
  random: () => number,
  tries = 4,
): { readonly placed: Row[]; readonly stuck: readonly number[] } {
  const ways = rows.map((row) => arrangements(row, rules, random));
  let best: { placed: Arrangement[]; stuck: readonly number[] } | undefined;
  for (let t = 0; t < tries && best?.stuck.length !== 0; t++) {
    const left = new Set(rows.keys());
    const placed: Arrangement[] = [];
    for (;;) {
      const next = pickNext(left, ways, placed.at(-1), rules, random);
      if (!next) break;
      placed.push(next.way);
      left.delete(next.index);
    }
    const stuck = [...left].filter((i) => !insert(placed, ways[i] as readonly Arrangement[], rules));
    if (!best || stuck.length < best.stuck.length) best = { placed, stuck };
  }
  return { placed: best?.placed.map((p) => p.row) ?? [], stuck: best?.stuck ?? [] };
}

/** Puts a row between two neighbours, or at an end, where its joints keep the stagger from both. */
function insert(placed: Arrangement[], ways: readonly Arrangement[], rules: RowRules): boolean {
  for (let at = 0; at <= placed.length; at++) {
    const [before, after] = [placed[at - 1], placed[at]];
    const way = ways.find(
      (w) =>
        (!before || staggered(before.joints, w.joints, rules.stagger)) &&
        (!after || staggered(after.joints, w.joints, rules.stagger)),
    );
    if (!way) continue;
    placed.splice(at, 0, way);
    return true;
  }
  return false;
}

/** A row that may stand beside the last: of a few tried, one with few ways to go. */
function pickNext(
  left: ReadonlySet<number>,
  ways: readonly (readonly Arrangement[])[],
  last: Arrangement | undefined,
  rules: RowRules,
  random: () => number,
): { index: number; way: Arrangement } | undefined {
  let found: { index: number; way: Arrangement } | undefined;
  let fewest = Infinity;
  let seen = 0;
  for (const index of left) {
    const fits = (ways[index] as readonly Arrangement[]).filter(
      (way) => !last || staggered(last.joints, way.joints, rules.stagger),
    );
    if (fits.length === 0) continue;
    const count = fits.length * (0.5 + random());
    if (count < fewest) {
      fewest = count;
      found = { index, way: fits[Math.floor(random() * fits.length)] as Arrangement };
    }
    if (++seen >= 12) break;
  }
  return found;
}
