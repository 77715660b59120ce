// The plan of a lay-up: which piece is cut where from which board, numbered; rows; slabs; what is left. Micrometres.
import { acrossOf, jointsOf, type Row, type Stick } from './lay-up-problem.js';
import { clearStretches, type PileBoard } from './pile-sticks.js';

export interface CutPiece {
  /** Such as R7-2b: board, copy where there are several, and a letter. */
  readonly id: string;
  readonly stick: number;
  readonly board: number;
  readonly copy: number;
  /** From the left end of the board as found. */
  readonly from: number;
  readonly length: number;
  readonly row: number;
}

/** Letters a, b, ... z, aa, ab, ... */
function letters(n: number): string {
  const rest = Math.floor(n / 26);
  return (rest > 0 ? letters(rest - 1) : '') + String.fromCharCode(97 + (n % 26));
}

/** Every piece with its place on its board. Pieces of one stick are cut one after another, the longest first. */
export function cutPieces(
  rows: readonly Row[],
  sticks: readonly Stick[],
  boards: readonly PileBoard[],
  kerf: number,
): CutPiece[][] {
  const wanted = rows.flatMap((row, r) => row.map((piece, place) => ({ ...piece, row: r, place })));
  const order = wanted.sort((a, b) => {
    const [s, t] = [sticks[a.stick] as Stick, sticks[b.stick] as Stick];
    return (
      s.board - t.board ||
      s.copy - t.copy ||
      s.strip[0] - t.strip[0] ||
      s.from - t.from ||
      a.stick - b.stick ||
      b.length - a.length
    );
  });
  const numbers = new Map<string, number>();
  const reached = new Map<number, number>();
  const out: CutPiece[][] = rows.map((row) => Array<CutPiece>(row.length));
  for (const piece of order) {
    const stick = sticks[piece.stick] as Stick;
    const board = boards[stick.board] as PileBoard;
    const name = board.count > 1 ? `${board.name}.${stick.copy + 1}` : board.name;
    const n = numbers.get(name) ?? 0;
    numbers.set(name, n + 1);
    const from = reached.get(piece.stick) ?? stick.from;
    reached.set(piece.stick, from + piece.length + kerf);
    (out[piece.row] as CutPiece[])[piece.place] = {
      id: `${name}${letters(n)}`,
      stick: piece.stick,
      board: stick.board,
      copy: stick.copy,
      from,
      length: piece.length,
      row: piece.row,
    };
  }
  return out;
}

/** Neighbouring rows glued together first, as wide as the machine and the clamps take. */
export function slabsOf(
  rows: readonly Row[],
  sticks: readonly Stick[],
  jointing: number,
  widest: number,
): number[][] {
  const slabs: number[][] = [];
  let width = Infinity;
  rows.forEach((row, r) => {
    const w = acrossOf(row, sticks) - jointing;
    if (width + w > widest) {
      slabs.push([]);
      width = 0;
    }
    width += w;
    (slabs.at(-1) as number[]).push(r);
  });
  return slabs;
}

/** Least distance between the joints of neighbouring rows; undefined where there are none. */
export function leastStagger(rows: readonly Row[]): number | undefined {
  let least: number | undefined;
  for (let r = 1; r < rows.length; r++)
    for (const a of jointsOf(rows[r - 1] as Row))
      for (const b of jointsOf(rows[r] as Row)) least = Math.min(least ?? Infinity, Math.abs(a - b));
  return least;
}

/** A clear length that stays: on a board not touched, or behind the last piece cut from a stretch. */
export interface LeftOver {
  readonly board: number;
  readonly copy: number;
  readonly length: number;
  readonly whole: boolean;
}

/** What is left of the pile, `least` long and longer. Boards no stick came from are whole. */
export function leftOvers(
  rows: readonly Row[],
  sticks: readonly Stick[],
  boards: readonly PileBoard[],
  kerf: number,
  least: number,
): LeftOver[] {
  const used = new Map<number, number>();
  for (const { stick, length } of rows.flat()) used.set(stick, (used.get(stick) ?? 0) + length + kerf);
  const touched = new Set(
    [...used.keys()].map((i) => `${(sticks[i] as Stick).board}:${(sticks[i] as Stick).copy}`),
  );
  const out: LeftOver[] = [];
  boards.forEach((board, b) => {
    for (let copy = 0; copy < board.count; copy++)
      if (!touched.has(`${b}:${copy}`))
        for (const [from, to] of clearStretches(board))
          if (to - from >= least) out.push({ board: b, copy, length: to - from, whole: true });
  });
  sticks.forEach((s, i) => {
    const rest = s.length - (used.get(i) ?? 0);
    if (touched.has(`${s.board}:${s.copy}`) && rest >= least)
      out.push({ board: s.board, copy: s.copy, length: rest, whole: false });
  });
  return out;
}
