import type { Trace } from '../../../engine/trace.js';
import { meets } from './bounds.js';
import type { Pattern } from './problem.js';
import { gatherOffcuts, type Board } from './offcuts.js';
import { scaled, type Aim } from './scale.js';
import type { CuttingGiven, PartRow, Section, StockRow } from './sections.js';
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
  readonly steps: readonly string[];
}

const mm = (m: number): string => `${Number((m * 1000).toFixed(1))} mm`;

/** Longest that offcuts are gathered, in ms. */
const gathering = 100;

/** Plans one section and lays its boards out, like boards together, long parts first. */
export async function layOut(
  section: Section,
  given: CuttingGiven,
  aim: Aim,
  seconds: number,
  trace: Trace,
  label: string,
): Promise<Layout> {
  const { problem, partsOf, stockOf, unit } = scaled({
    parts: section.parts,
    stock: section.stock.map((s) => ({
      length: s.length,
      count: typeof s.count === 'number' ? s.count : Infinity,
      cost: s.cost ?? 0,
    })),
    kerf: given.kerf,
    trimEachEnd: given.trimEachEnd,
    aim,
  });
  const outcome = await solve(problem, seconds, trace, label, unit);
  const found = outcome.packing.boards.flatMap(boardsOf);
  const stockAt = (b: Board): StockRow | undefined => section.stock[stockOf[b.stock] ?? -1];
  const short = found.filter((b) => !stockAt(b));
  const until = performance.now() + gathering;
  const gathered = gatherOffcuts(
    problem,
    found.filter((b) => stockAt(b)),
    () => performance.now() > until,
  );
  const names = takeNames(section, partsOf);
  const boards = sortedBoards(gathered, (b) => stockAt(b)?.length as number).map((b) =>
    laidBoard(b.pieces.map(names), stockAt(b) as StockRow, given, section.label),
  );
  const lacking = short.flatMap((b) => b.pieces);
  const missing = missingParts(lacking, names);
  // Boards that are not there were paid dearly: without them the bound is that of the boards there are.
  const costOf = (of: readonly Board[]): number =>
    of.reduce((s, b) => s + (problem.stock[b.stock] as { cost: number }).cost, 0);
  const lost = costOf(short);
  const saved = gathered.length + short.length < found.length;
  // Where gathering saved a board the plan may meet a bound that the search left open.
  const proven = outcome.proven || (short.length === 0 && meets(costOf(gathered), outcome.bound));
  const taken = { boards: () => 1, length: (b: LaidBoard) => b.stockLength, cost: (b: LaidBoard) => b.cost };
  const achieved = boards.reduce((s, b) => s + taken[aim](b), 0);
  const bound = Number((Math.max(0, outcome.bound - lost) * unit).toPrecision(12));
  return {
    ...(section.label === undefined ? {} : { label: section.label }),
    boards,
    missing,
    boardsShort: short.length,
    achieved,
    bound: proven ? achieved : bound,
    proven,
    steps: saved ? [...outcome.steps, 'plan by gathering offcuts'] : outcome.steps,
  };
}

/** The boards cut by one pattern, their parts in order. */
const boardsOf = ({ pattern, times }: { readonly pattern: Pattern; readonly times: number }): Board[] =>
  Array.from({ length: times }, () => ({
    stock: pattern.stock,
    pieces: pattern.items.flatMap(([i, n]) => new Array<number>(n).fill(i)),
  }));

interface Named {
  readonly name: string;
  readonly length: number;
}

/** A board with its parts one after another, a kerf between them. */
function laidBoard(
  parts: readonly Named[],
  stock: StockRow,
  given: CuttingGiven,
  section: string | undefined,
): LaidBoard {
  let at = given.trimEachEnd;
  const pieces = parts.map((part) => {
    const piece = { ...part, from: at };
    at += part.length + given.kerf;
    return piece;
  });
  return {
    stock: stock.name ?? mm(stock.length),
    stockLength: stock.length,
    ...(section === undefined ? {} : { section }),
    cost: stock.cost ?? 0,
    pieces,
    // What is left past the last cut; less than a kerf is sawn to dust.
    offcut: Math.max(0, Number((stock.length - given.trimEachEnd - at).toFixed(9))),
  };
}

/** Parts that no board is there for, counted by name and size. */
function missingParts(sizes: readonly number[], names: (size: number) => Named): Layout['missing'] {
  const missing = new Map<string, Named & { readonly count: number }>();
  for (const size of sizes) {
    const { name, length } = names(size);
    const key = `${name}|${size}`;
    missing.set(key, { name, length, count: (missing.get(key)?.count ?? 0) + 1 });
  }
  return [...missing.values()];
}

/** Boards with long parts first, and of boards that begin alike those of longer stock; boards cut alike come together. */
export function sortedBoards(boards: readonly Board[], lengthOf: (b: Board) => number): Board[] {
  return boards
    .map((b) => ({ ...b, length: lengthOf(b), key: `${b.stock}|${b.pieces.join(',')}` }))
    .sort(
      (a, b) =>
        (a.pieces[0] as number) - (b.pieces[0] as number) || b.length - a.length || (a.key < b.key ? -1 : 1),
    );
}

/** Hands out the parts of equal length by name, as many of each as are wanted. */
function takeNames(section: Section, partsOf: readonly (readonly number[])[]): (size: number) => Named {
  const wanted = partsOf.map((rows) =>
    rows.toReversed().flatMap((r) => {
      const { name, length, count } = section.parts[r] as PartRow;
      return new Array<Named>(count).fill({ name: name ?? mm(length), length });
    }),
  );
  return (size) => wanted[size]?.pop() as Named;
}
