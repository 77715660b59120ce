import type { CuttingProblem, Stock } from './problem.js';

/** One board with the sizes cut from it, in any order. */
export interface Board {
  readonly stock: number;
  readonly pieces: readonly number[];
}

/** Boards are few where offcuts matter. */
const most = 80;

/**
 * Gathers what is left over into few long offcuts: two boards at a time are cut anew so that one is as full as can be.
 * No board is added and no cost changes; pieces only move, and a board that loses all of them is not cut.
 */
export function gatherOffcuts(
  problem: CuttingProblem,
  boards: readonly Board[],
  stop: () => boolean,
): Board[] {
  const now = boards.map((b) => ({ stock: b.stock, pieces: [...b.pieces] }));
  if (now.length > most) return now;
  const sizes = (pieces: readonly number[]): number[] => pieces.map((i) => problem.sizes[i] as number);
  const room = (b: Board): number => (problem.stock[b.stock] as Stock).capacity;
  const left = (b: Board): number => sizes(b.pieces).reduce((s, l) => s - l, room(b));
  for (let changed = true; changed && !stop();) {
    changed = false;
    for (const A of now) {
      for (const B of now) {
        const all = [...A.pieces, ...B.pieces].sort((x, y) => x - y);
        if (A === B || all.length > 24 || stop()) continue;
        // Fill A as full as may be: what it takes over is left on B, in one length with what was left there.
        const taken = fullest(sizes(all), room(A), 20_000);
        const [newA, newB] = [
          { stock: A.stock, pieces: all.filter((_, i) => taken[i]) },
          { stock: B.stock, pieces: all.filter((_, i) => !taken[i]) },
        ];
        if (left(newB) <= Math.max(left(A), left(B))) continue;
        [A.pieces, B.pieces] = [newA.pieces, newB.pieces];
        changed = true;
      }
    }
  }
  return now.filter((b) => b.pieces.length > 0);
}

/** Which of some lengths have the greatest sum within `room`, by search cut off after `nodes`. */
function fullest(lengths: readonly number[], room: number, nodes: number): boolean[] {
  const taken = new Array<boolean>(lengths.length).fill(false);
  let best = { sum: 0, taken: [...taken] };
  let budget = nodes;
  const walk = (i: number, sum: number, after: number): void => {
    if (sum > best.sum) best = { sum, taken: [...taken] };
    if (--budget < 0 || sum + after <= best.sum || best.sum === room) return;
    const l = lengths[i] as number;
    if (sum + l <= room) {
      taken[i] = true;
      walk(i + 1, sum + l, after - l);
      taken[i] = false;
    }
    walk(i + 1, sum, after - l);
  };
  walk(
    0,
    0,
    lengths.reduce((s, l) => s + l, 0),
  );
  return best.taken;
}
