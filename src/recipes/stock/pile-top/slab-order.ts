// Rows put in another order, so that fewer slabs are needed: each slab loses its jointing, and each is one more glue-up.
import type { Row, RowRules } from './lay-up-problem.js';
import { slabsOf } from './lay-up-plan.js';
import { arrangements, rowFits } from './row-order.js';

/** Slabs, and how far they are from being full: fewer first, then the one more uneven, so that the last can empty. */
function price(rows: readonly Row[], rules: RowRules, widest: number): number {
  const slabs = slabsOf(rows, rules.jointing, widest);
  let full = 0;
  for (const slab of slabs) {
    let width = 0;
    for (const r of slab) width += (rows[r] as Row).across - rules.jointing;
    full += (width / widest) ** 2;
  }
  return slabs.length * 1000 - full;
}

/** The rows with one of them moved to another place, where the stagger allows it. */
function moved(
  rows: readonly Row[],
  from: number,
  to: number,
  rules: RowRules,
  random: () => number,
): Row[] | undefined {
  const others = rows.filter((_, i) => i !== from);
  const [before, after] = [others[from - 1], others[from]];
  if (before && after && !rowFits(after, before, undefined, rules.stagger)) return undefined;
  const way = arrangements(rows[from] as Row, rules, random).find((w) =>
    rowFits(w, others[to - 1], others[to], rules.stagger),
  );
  return way && [...others.slice(0, to), way, ...others.slice(to)];
}

/** Two rows exchanged, where the stagger allows it. */
function swapped(
  rows: readonly Row[],
  a: number,
  b: number,
  rules: RowRules,
  random: () => number,
): Row[] | undefined {
  const out = [...rows];
  for (const [at, from] of [
    [a, b],
    [b, a],
  ] as const)
    out[at] = rows[from] as Row;
  for (const at of [a, b]) {
    const way = arrangements(out[at] as Row, rules, random).find((w) =>
      rowFits(w, out[at - 1], out[at + 1], rules.stagger),
    );
    if (!way) return undefined;
    out[at] = way;
  }
  return out;
}

/** The least slabs there could be, by the sum of the widths. */
export const leastSlabs = (rows: readonly Row[], rules: RowRules, widest: number): number =>
  Math.ceil(rows.reduce((s, r) => s + r.across - rules.jointing, 0) / widest);

/** The rows in an order that takes no more slabs, and fewer where a local search finds it. The stagger is kept. */
export function fewerSlabs(
  rows: readonly Row[],
  rules: RowRules,
  widest: number,
  random: () => number,
): readonly Row[] {
  const least = leastSlabs(rows, rules, widest);
  let best = rows;
  let cost = price(best, rules, widest);
  const tries = Math.min(6000, 150 * rows.length);
  for (let i = 0; i < tries && Math.ceil(cost / 1000) > least; i++) {
    const [a, b] = [Math.floor(random() * rows.length), Math.floor(random() * rows.length)];
    if (a === b) continue;
    const next = random() < 0.5 ? moved(best, a, b, rules, random) : swapped(best, a, b, rules, random);
    if (!next) continue;
    const now = price(next, rules, widest);
    if (now > cost) continue;
    best = next;
    cost = now;
  }
  return best;
}
