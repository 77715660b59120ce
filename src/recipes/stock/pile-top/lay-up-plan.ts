// The plan of a lay-up: which piece is cut where from which board, numbered; rows; slabs; what is left. Micrometres.
import type { Row, Stick, Strip } from './lay-up-problem.js';
import { clearStretches, type PileBoard } from './pile-sticks.js';
import { stripPlaces, stripsIn } from './rip-pool.js';

export interface CutPiece {
  /** Such as R7.2b: board, copy where there are several, and a letter. */
  readonly id: string;
  readonly stick: number;
  readonly board: number;
  readonly copy: number;
  /** From the left end of the board as found. */
  readonly from: number;
  readonly length: number;
  /** The strip it is cut from, across the board. */
  readonly strip: readonly [from: number, to: number];
  readonly row: number;
}

/** Letters a, b, ... z, aa, ab, ... */
function letters(n: number): string {
  const rest = Math.floor(n / 26);
  return (rest > 0 ? letters(rest - 1) : '') + String.fromCharCode(97 + (n % 26));
}

/** Where each strip of a ripped lay-up lies across its board. */
function placesOf(
  rows: readonly Row[],
  sticks: readonly Stick[],
  kerf: number,
): Map<Strip, [number, number]> {
  const byStick = new Map<number, Strip[]>();
  for (const strip of stripsIn(rows)) byStick.set(strip.stick, [...(byStick.get(strip.stick) ?? []), strip]);
  const places = new Map<Strip, [number, number]>();
  for (const [stick, strips] of byStick) {
    const side = (sticks[stick] as Stick).strip[0];
    for (const [strip, [from, to]] of stripPlaces(strips, kerf)) places.set(strip, [side + from, side + to]);
  }
  return places;
}

/** Every piece with its place on its board. Pieces of one strip are cut one after another, the longest first. */
export function cutPieces(
  rows: readonly Row[],
  sticks: readonly Stick[],
  boards: readonly PileBoard[],
  kerf: number,
): CutPiece[][] {
  const places = placesOf(rows, sticks, kerf);
  const order = rows
    .flatMap((row, r) =>
      row.pieces.map((piece, place) => {
        const stick = sticks[piece.stick] as Stick;
        const strip = (piece.strip && places.get(piece.strip)) ?? stick.strip;
        return { piece, row: r, place, stick, strip };
      }),
    )
    .sort(
      (a, b) =>
        a.stick.board - b.stick.board ||
        a.stick.copy - b.stick.copy ||
        a.stick.from - b.stick.from ||
        a.strip[0] - b.strip[0] ||
        b.piece.length - a.piece.length,
    );
  const numbers = new Map<string, number>();
  const reached = new Map<string, number>();
  const out: CutPiece[][] = rows.map((row) => Array<CutPiece>(row.pieces.length));
  for (const { piece, row, place, stick, strip } of order) {
    const board = boards[stick.board] as PileBoard;
    const name = board.count > 1 ? `${board.name}.${stick.copy + 1}` : board.name;
    const n = numbers.get(name) ?? 0;
    numbers.set(name, n + 1);
    const key = `${piece.stick}:${strip[0]}`;
    const from = reached.get(key) ?? stick.from;
    reached.set(key, from + piece.length + kerf);
    (out[row] as CutPiece[])[place] = {
      id: `${name}${letters(n)}`,
      stick: piece.stick,
      board: stick.board,
      copy: stick.copy,
      from,
      length: piece.length,
      strip,
      row,
    };
  }
  return out;
}

/** Neighbouring rows glued together first, as wide as the machine and the clamps take. */
export function slabsOf(rows: readonly Row[], jointing: number, widest: number): number[][] {
  const slabs: number[][] = [];
  let width = Infinity;
  rows.forEach((row, r) => {
    const w = row.across - jointing;
    if (width + w > widest) {
      slabs.push([]);
      width = 0;
    }
    width += w;
    (slabs.at(-1) as number[]).push(r);
  });
  return slabs;
}

/** Least distance between the joints of neighbouring rows of a layer; undefined where there are none. */
export function leastStagger(rows: readonly Row[], layerEnds: readonly number[]): number | undefined {
  let least: number | undefined;
  for (let r = 1; r < rows.length; r++) {
    if (layerEnds.includes(r)) continue;
    for (const a of (rows[r - 1] as Row).joints)
      for (const b of (rows[r] as Row).joints) least = Math.min(least ?? Infinity, Math.abs(a - b));
  }
  return least;
}

/** A clear length that stays: on a board not touched, or behind the last piece cut from a stick. */
export interface LeftOver {
  readonly board: number;
  readonly copy: number;
  readonly length: number;
  /** Its width on the board: the board's own, or a strip's. */
  readonly width: number;
  readonly whole: boolean;
}

/** What is left of the pile, `least` long and longer. Boards no stick came from are whole. Trim strips do not count. */
export function leftOvers(
  rows: readonly Row[],
  sticks: readonly Stick[],
  boards: readonly PileBoard[],
  kerf: number,
  least: number,
): LeftOver[] {
  const used = usedLengths(rows, kerf);
  const touched = new Set([...used.keys()].map((i) => copyKey(sticks[i] as Stick)));
  const out: LeftOver[] = [];
  boards.forEach((board, b) => {
    for (let copy = 0; copy < board.count; copy++)
      if (!touched.has(`${b}:${copy}`))
        for (const [from, to] of clearStretches(board))
          if (to - from >= least)
            out.push({ board: b, copy, length: to - from, width: board.width, whole: true });
  });
  sticks.forEach((s, i) => {
    const rest = s.length - (used.get(i) ?? 0);
    if (touched.has(copyKey(s)) && rest >= least)
      out.push({ board: s.board, copy: s.copy, length: rest, width: s.strip[1] - s.strip[0], whole: false });
  });
  return out;
}

/** One board of the pile, copies apart. */
export const copyKey = (s: { readonly board: number; readonly copy: number }): string =>
  `${s.board}:${s.copy}`;

/** Length used of each stick, kerfs included: of ripped ones the longest strip's, since a trimmed strip is no offcut. */
export function usedLengths(rows: readonly Row[], kerf: number): Map<number, number> {
  const used = new Map<number, number>();
  const strips = stripsIn(rows);
  for (const strip of strips) {
    const length = strip.pieces.reduce((s, p) => s + p.length + kerf, 0);
    used.set(strip.stick, Math.max(used.get(strip.stick) ?? 0, length));
  }
  for (const row of rows)
    for (const p of row.pieces) if (!p.strip) used.set(p.stick, (used.get(p.stick) ?? 0) + p.length + kerf);
  return used;
}
