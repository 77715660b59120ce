// From boards as found to the sticks that can be laid at a thickness. Whole micrometres.
import type { Stick } from './lay-up-problem.js';

/** A fault along one edge: lost to its depth there, and nowhere else. */
export interface EdgeFault {
  readonly from: number;
  readonly to: number;
  readonly depth: number;
  /** The far edge lies opposite the one that distances across the board are measured from. */
  readonly far: boolean;
}

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
  /** Faults cut out, from and to, from the left end; sorted. */
  readonly faults: readonly (readonly [number, number])[];
  readonly edgeFaults: readonly EdgeFault[];
  /** Lost in thickness to cup and bow. */
  readonly allowance: number;
  readonly tone: string;
}

export interface Workshop {
  readonly kerf: number;
  /** Planed off each face. */
  readonly plane: number;
  readonly leastInner: number;
}

/** How strips lie in the top: a board's width across it, or on edge, its thickness across it. */
export type Lay = 'flat' | 'on edge';

type Span = readonly [from: number, to: number];

/** What stays of a span once others are cut out of it, each widened by `margin` on both sides. */
function without(span: Span, out: readonly Span[], margin = 0): Span[] {
  const left: Span[] = [];
  let at = span[0];
  for (const [from, to] of [...out].sort((a, b) => a[0] - b[0])) {
    if (to <= at || from >= span[1]) continue;
    if (from - margin > at) left.push([at, from - margin]);
    at = Math.max(at, to + margin);
  }
  if (span[1] > at) left.push([at, span[1]]);
  return left;
}

/** Clear stretches of a board between its docked ends and its faults. */
export const clearStretches = (board: PileBoard): readonly Span[] =>
  board.length - board.endRight > board.endLeft
    ? without([board.endLeft, board.length - board.endRight], board.faults)
    : [];

/** A part of a board that is clear over its length and its strip. */
interface ClearPart {
  readonly span: Span;
  readonly strip: Span;
  readonly across: number;
}

/** Depths lost along both edges of a board by the faults that touch a span. */
function edgeLoss(faults: readonly EdgeFault[], span: Span): { near: number; far: number } {
  const depth = (far: boolean): number =>
    Math.max(
      0,
      ...faults.filter((f) => f.far === far && f.from < span[1] && f.to > span[0]).map((f) => f.depth),
    );
  return { near: depth(false), far: depth(true) };
}

/** Parts of a board laid flat: where an edge is faulty the part is narrower, over the whole stretch or cut off from it. */
function flatParts(board: PileBoard, kerf: number): ClearPart[] {
  const part = (span: Span): ClearPart => {
    const { near, far } = edgeLoss(board.edgeFaults, span);
    const strip: Span = [near, Math.max(near, board.width - far)];
    return { span, strip, across: strip[1] - strip[0] };
  };
  return clearStretches(board).flatMap((stretch) => {
    const faulty = board.edgeFaults
      .filter((f) => f.from < stretch[1] && f.to > stretch[0])
      .map((f): Span => [Math.max(f.from, stretch[0]), Math.min(f.to, stretch[1])]);
    const covered = faulty.reduce((s, [from, to]) => s + to - from, 0);
    if (faulty.length === 0 || covered * 2 >= stretch[1] - stretch[0]) return [part(stretch)];
    const clean = without(stretch, faulty);
    return [...clean, ...without(stretch, clean, kerf)].map(part);
  });
}

/** Strips that a board gives on edge, as high as needed; an edge fault costs the strips it reaches into, where it lies. */
function edgeParts(board: PileBoard, needed: number, kerf: number): ClearPart[] {
  // The faces of the board become the edges that are jointed; cup and bow come off there.
  const across = board.thickness - board.allowance;
  const strips = Math.floor((board.width + kerf) / (needed + kerf));
  if (across <= 0 || strips < 1) return [];
  const spare = board.width - strips * (needed + kerf) + kerf;
  const { near, far } = edgeLoss(board.edgeFaults, [0, board.length]);
  const start = near > 0 && far === 0 ? spare : Math.min(spare, near);
  return Array.from({ length: strips }, (_, k): Span => {
    const from = start + k * (needed + kerf);
    return [from, from + needed];
  }).flatMap((strip) => {
    const reached = board.edgeFaults.filter((f) =>
      f.far ? strip[1] > board.width - f.depth : strip[0] < f.depth,
    );
    return clearStretches(board)
      .flatMap((stretch) =>
        without(
          stretch,
          reached.map((f): Span => [f.from, f.to]),
        ),
      )
      .map((span): ClearPart => ({ span, strip, across }));
  });
}

/** All sticks of the pile for a top of this thickness, widest first, then longest. */
export function sticksOf(boards: readonly PileBoard[], thickness: number, lay: Lay, shop: Workshop): Stick[] {
  const needed = thickness + 2 * shop.plane;
  const sticks: Stick[] = [];
  boards.forEach((board, index) => {
    const thickEnough = lay === 'on edge' || board.thickness - board.allowance >= needed;
    const parts = !thickEnough
      ? []
      : lay === 'flat'
        ? flatParts(board, shop.kerf)
        : edgeParts(board, needed, shop.kerf);
    for (let copy = 0; copy < board.count; copy++)
      for (const { span, strip, across } of parts)
        if (span[1] - span[0] >= shop.leastInner)
          sticks.push({ board: index, copy, from: span[0], length: span[1] - span[0], across, strip });
  });
  return sticks.sort(
    (a, b) =>
      b.across - a.across ||
      b.length - a.length ||
      a.board - b.board ||
      a.copy - b.copy ||
      a.from - b.from ||
      a.strip[0] - b.strip[0],
  );
}

/** Least thickness of a top that is looked at. */
export const thinnest = 5000;

/** Thicknesses at which a stick drops out, thickest first: the curve of width over thickness changes at these alone. */
export function thicknessSteps(boards: readonly PileBoard[], lay: Lay, shop: Workshop): number[] {
  const steps = new Set<number>();
  for (const b of boards) {
    if (lay === 'flat') steps.add(b.thickness - b.allowance - 2 * shop.plane);
    else
      for (let n = 1; ; n++) {
        const t = Math.floor((b.width + shop.kerf) / n) - shop.kerf - 2 * shop.plane;
        if (t < thinnest) break;
        steps.add(t);
      }
  }
  return [...steps].filter((t) => t >= thinnest).sort((a, b) => b - a);
}
