import type { CuttingProblem, Stock } from './problem.js';

/** One board with the sizes cut from it, in any order. */
export interface Board {
  readonly stock: number;
  readonly pieces: number[];
}

/**
 * Gathers what is left over into few long offcuts: two boards at a time are cut anew so that one is as full as can be.
 * No board is added and no cost changes; pieces only move. Boards are few where this matters, so it stops at 80.
 */
export function gatherOffcuts(
  problem: CuttingProblem,
  boards: readonly Board[],
  stop: () => boolean,
): Board[] {
  const now = boards.map((b) => ({ stock: b.stock, pieces: [...b.pieces] }));
  if (now.length > 80) return now;
  const room = (b: Board): number => (problem.stock[b.stock] as Stock).capacity;
  const used = (pieces: readonly number[]): number =>
    pieces.reduce((s, i) => s + (problem.sizes[i] as number), 0);
  for (let changed = true; changed && !stop();) {
    changed = false;
    for (let a = 0; a < now.length && !stop(); a++) {
      for (let b = 0; b < now.length; b++) {
        if (a === b) continue;
        const [A, B] = [now[a] as Board, now[b] as Board];
        const all = [...A.pieces, ...B.pieces].sort((x, y) => x - y);
        if (all.length > 24) continue;
        // Fill A as full as may be while the rest still fits B.
        const total = used(all);
        const least = total - room(B);
        const best = fullest(
          all.map((i) => problem.sizes[i] as number),
          room(A),
          20_000,
        );
        const [fullA, oldA, oldB] = [best.sum, room(A) - used(A.pieces), room(B) - used(B.pieces)];
        if (fullA < least - 1e-9) continue;
        const [newA, newB] = [room(A) - fullA, room(B) - (total - fullA)];
        if (Math.max(newA, newB) > Math.max(oldA, oldB) + 1e-9) {
          now[a] = { stock: A.stock, pieces: all.filter((_, i) => best.taken[i]) };
          now[b] = { stock: B.stock, pieces: all.filter((_, i) => !best.taken[i]) };
          changed = true;
        }
      }
    }
  }
  return now;
}

/** The subset of lengths with the greatest sum within `room`, by search cut off after `nodes`. */
function fullest(lengths: readonly number[], room: number, nodes: number): { sum: number; taken: boolean[] } {
  const taken = new Array<boolean>(lengths.length).fill(false);
  let best = { sum: -1, taken: [...taken] };
  let budget = nodes;
  const after = new Array<number>(lengths.length + 1).fill(0);
  for (let i = lengths.length - 1; i >= 0; i--) after[i] = (after[i + 1] as number) + (lengths[i] as number);
  const walk = (i: number, sum: number): void => {
    if (sum > best.sum) best = { sum, taken: [...taken] };
    if (i === lengths.length || --budget < 0 || sum + (after[i] as number) <= best.sum || best.sum >= room)
      return;
    const l = lengths[i] as number;
    if (sum + l <= room) {
      taken[i] = true;
      walk(i + 1, sum + l);
      taken[i] = false;
    }
    walk(i + 1, sum);
  };
  walk(0, 0);
  return best;
}
