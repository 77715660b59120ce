// From boards as found to the sticks that can be laid at a thickness. Whole micrometres.
import type { Stick } from './lay-up-problem.js';

/** A board of the pile once surveyed; lengths in whole micrometres. */
export interface PileBoard {
  readonly name: string;
  readonly count: number;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  /** Docked at each end. */
  readonly endLeft: number;
  readonly endRight: number;
  /** Faults cut out, from and to, from the left end; sorted and apart. */
  readonly faults: readonly (readonly [number, number])[];
  /** Lost in thickness to cup and bow. */
  readonly allowance: number;
}

export interface Workshop {
  readonly kerf: number;
  /** Planed off each face. */
  readonly plane: number;
  readonly leastInner: number;
}

/** How strips lie in the top: a board's width across it, or on edge, its thickness across it. */
export type Lay = 'flat' | 'on edge';

/** Clear stretches of a board between its docked ends and its faults. */
export function clearStretches(board: PileBoard): readonly (readonly [number, number])[] {
  const end = board.length - board.endRight;
  const stretches: [number, number][] = [];
  let at = board.endLeft;
  for (const [from, to] of board.faults) {
    if (from > at) stretches.push([at, Math.min(from, end)]);
    at = Math.max(at, to);
  }
  if (end > at) stretches.push([at, end]);
  return stretches.filter(([from, to]) => to > from);
}

/** Strips that a board gives for a top of this thickness, across the board, and the size each has across the top. */
function stripsOf(
  board: PileBoard,
  thickness: number,
  lay: Lay,
  shop: Workshop,
): { strip: [number, number]; across: number }[] {
  const needed = thickness + 2 * shop.plane;
  if (lay === 'flat')
    return board.thickness - board.allowance >= needed
      ? [{ strip: [0, board.width], across: board.width }]
      : [];
  // The faces of the board become the edges that are jointed; cup and bow come off there.
  const across = board.thickness - board.allowance;
  const strips = Math.floor((board.width + shop.kerf) / (needed + shop.kerf));
  if (across <= 0) return [];
  return Array.from({ length: strips }, (_, k) => {
    const from = k * (needed + shop.kerf);
    return { strip: [from, from + needed] as [number, number], across };
  });
}

/** All sticks of the pile for a top of this thickness, widest first, then longest. */
export function sticksOf(boards: readonly PileBoard[], thickness: number, lay: Lay, shop: Workshop): Stick[] {
  const sticks: Stick[] = [];
  boards.forEach((board, index) => {
    const strips = stripsOf(board, thickness, lay, shop);
    if (strips.length === 0) return;
    for (let copy = 0; copy < board.count; copy++)
      for (const [from, to] of clearStretches(board))
        for (const { strip, across } of strips)
          if (to - from >= shop.leastInner)
            sticks.push({ board: index, copy, from, length: to - from, across, strip });
  });
  return sticks.sort((a, b) => b.across - a.across || b.length - a.length || a.board - b.board);
}

/** Thicknesses at which a stick drops out, thickest first: the curve of width over thickness changes at these alone. */
export function thicknessSteps(boards: readonly PileBoard[], lay: Lay, shop: Workshop): number[] {
  const steps = new Set<number>();
  for (const b of boards) {
    if (lay === 'flat') steps.add(b.thickness - b.allowance - 2 * shop.plane);
    else
      for (let n = 1; ; n++) {
        const t = Math.floor((b.width + shop.kerf) / n) - shop.kerf - 2 * shop.plane;
        if (t < 5000) break;
        steps.add(t);
      }
  }
  return [...steps].filter((t) => t >= 5000).sort((a, b) => b - a);
}
