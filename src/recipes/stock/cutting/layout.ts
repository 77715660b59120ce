import type { Work } from '../../../recipe/work.js';
import { gatherOffcuts, type Board } from './offcuts.js';
import { scaled, type Aim } from './scale.js';
import type { CuttingGiven, Section } from './sections.js';
import { solve } from './solver.js';

export interface LaidBoard {
  readonly stock: string;
  readonly stockLength: number;
  readonly section?: string;
  readonly cost: number;
  readonly pieces: readonly { readonly name: string; readonly length: number; readonly from: number }[];
  readonly offcut: number;
}

/** The plan of one section: boards laid out in m, and how good it is in boards, m or money. */
export interface Layout {
  readonly label?: string;
  readonly boards: readonly LaidBoard[];
  readonly missing: readonly { readonly name: string; readonly length: number; readonly count: number }[];
  readonly boardsShort: number;
  readonly achieved: number;
  readonly bound: number;
  readonly proven: boolean;
  readonly told: readonly string[];
}

const mm = (m: number): string => `${Number((m * 1000).toFixed(1))} mm`;

/** Plans one section and lays its boards out, like boards together, long parts first. */
export async function layOut(
  section: Section,
  given: CuttingGiven,
  aim: Aim,
  seconds: number,
  work: Work,
  says: string,
): Promise<Layout> {
  const { problem, partsOf, unit, lacking } = scaled({
    parts: section.parts,
    stock: section.stock.map((s) => ({ length: s.length, count: s.count ?? Infinity, cost: s.cost ?? 0 })),
    kerf: given.kerf,
    trimEachEnd: given.trimEachEnd,
    aim,
  });
  const outcome = await solve(problem, seconds, work, says, unit);
  // With a stand-in for boards that are not there some plan always exists.
  if (!outcome) throw new Error('no plan was found');
  const found: Board[] = outcome.packing.boards.flatMap(({ pattern, times }) =>
    Array.from({ length: times }, () => ({
      stock: pattern.stock,
      pieces: pattern.items.flatMap(([i, n]) => new Array<number>(n).fill(i)),
    })),
  );
  const real = found.filter((b) => b.stock !== lacking);
  const short = found.filter((b) => b.stock === lacking);
  const gatherUntil = performance.now() + 300;
  const gathered = gatherOffcuts(problem, real, () => performance.now() > gatherUntil).filter(
    (b) => b.pieces.length > 0,
  );
  const lengthOf = (size: number): number =>
    (section.parts[(partsOf[size] as readonly number[])[0] as number] as { length: number }).length;
  const key = (b: Board): string => `${b.stock}|${b.pieces.join(',')}`;
  const ordered = gathered
    .map((b) => ({ ...b, pieces: [...b.pieces].sort((x, y) => x - y) }))
    .sort(
      (a, b) =>
        (a.pieces[0] as number) - (b.pieces[0] as number) ||
        (section.stock[b.stock] as { length: number }).length -
          (section.stock[a.stock] as { length: number }).length ||
        (key(a) < key(b) ? -1 : 1),
    );
  const names = takeNames(section, partsOf);
  const boards = ordered.map((b): LaidBoard => {
    const stock = section.stock[b.stock] as Section['stock'][number];
    let at = given.trimEachEnd;
    const pieces = b.pieces.map((size) => {
      const from = at;
      at += lengthOf(size) + given.kerf;
      return { name: names(size), length: lengthOf(size), from };
    });
    return {
      stock: stock.name ?? mm(stock.length),
      stockLength: stock.length,
      ...(section.label === undefined ? {} : { section: section.label }),
      cost: stock.cost ?? 0,
      pieces,
      // What is left past the last cut; less than a kerf is sawn to dust.
      offcut: Math.max(0, Number((stock.length - given.trimEachEnd - at).toFixed(9))),
    };
  });
  const missing = new Map<string, { name: string; length: number; count: number }>();
  for (const size of short.flatMap((b) => b.pieces)) {
    const name = names(size);
    const had = missing.get(`${name}|${size}`);
    if (had) had.count++;
    else missing.set(`${name}|${size}`, { name, length: lengthOf(size), count: 1 });
  }
  const lost = short.length * (lacking < 0 ? 0 : (problem.stock[lacking] as { cost: number }).cost);
  const achieved =
    boards.length === 0
      ? 0
      : aim === 'boards'
        ? boards.length
        : aim === 'length'
          ? boards.reduce((s, b) => s + b.stockLength, 0)
          : boards.reduce((s, b) => s + b.cost, 0);
  const bound = Math.max(0, outcome.bound - lost) * unit;
  return {
    ...(section.label === undefined ? {} : { label: section.label }),
    boards,
    missing: [...missing.values()],
    boardsShort: short.length,
    achieved,
    bound: outcome.proven ? achieved : Number(bound.toPrecision(12)),
    proven: outcome.proven,
    told: outcome.told,
  };
}

/** Hands out the names of parts of equal length, as many of each as are wanted. */
function takeNames(section: Section, partsOf: readonly (readonly number[])[]): (size: number) => string {
  const queues = partsOf.map((rows) =>
    rows.map((r) => ({
      name: section.parts[r]?.name ?? mm(section.parts[r]?.length ?? 0),
      left: section.parts[r]?.count ?? 0,
    })),
  );
  return (size) => {
    const next = queues[size]?.find((q) => q.left > 0);
    if (!next) return '';
    next.left--;
    return next.name;
  };
}
