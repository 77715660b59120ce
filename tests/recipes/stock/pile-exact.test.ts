import { describe, expect, it } from 'vitest';
import { topFromPile } from '../../../src/recipes/stock/top-from-pile.js';
import { mulberry32 } from '../../../src/engine/random.js';

// Small piles whose lengths are all multiples of 100 mm, without kerf or spare: then some best lay-up cuts at multiples of
// 100 mm too, since its lengths are bound by sums and differences of such multiples alone. All of them are looked at.
const whole = 10;
const least = 3;
const mostJoints = 2;
const stagger = 2;

interface Board {
  readonly length: number;
  readonly width: number;
}
type Piece = readonly [board: number, length: number];

/** Every way to fill a row: which board gives which length, from left to right. */
function allRows(boards: readonly Board[]): Piece[][] {
  const rows: Piece[][] = [];
  const extend = (row: Piece[], left: number): void => {
    if (left === 0) rows.push(row);
    if (left === 0 || row.length > mostJoints) return;
    boards.forEach((b, i) => {
      for (let l = least; l <= Math.min(left, b.length); l++) extend([...row, [i, l]], left - l);
    });
  };
  extend([], whole);
  return rows;
}

const jointsOf = (row: readonly Piece[]): number[] => {
  let at = 0;
  return row.slice(0, -1).map(([, l]) => (at += l));
};

/** The greatest sum of row widths, by trying everything. */
function widest(boards: readonly Board[]): number {
  const rows = allRows(boards).map((row) => ({
    row,
    joints: jointsOf(row),
    width: Math.min(...row.map(([i]) => boards[i]!.width)),
  }));
  let best = 0;
  const go = (rest: readonly number[], before: readonly number[], sum: number): void => {
    best = Math.max(best, sum);
    for (const r of rows) {
      if (r.joints.some((x) => before.some((y) => Math.abs(x - y) < stagger))) continue;
      const left = [...rest];
      for (const [i, l] of r.row) left[i]! -= l;
      if (left.every((l) => l >= 0)) go(left, r.joints, sum + r.width);
    }
  };
  go(
    boards.map((b) => b.length),
    [],
    0,
  );
  return best;
}

describe('a small pile gives the widest top there is, by exhaustive search', () => {
  it.each(Array.from({ length: 14 }, (_, i) => i + 1))('seed %i', async (seed) => {
    const random = mulberry32(seed);
    const between = (low: number, high: number): number => low + Math.floor(random() * (high - low + 1));
    const boards = Array.from({ length: between(3, 5) }, (): Board => ({
      length: between(4, 8),
      width: between(60, 120),
    }));
    const r = await topFromPile({
      boards: boards.map((b) => ({
        length: `${b.length * 100} mm`,
        width: `${b.width} mm`,
        thickness: '40 mm',
      })),
      topLength: '1 m',
      spare: '0 mm',
      width: '5 m',
      thickness: '30 mm',
      lay: 'flat',
      kerf: '0 mm',
      jointing: '0 mm',
      slabJointing: '0 mm',
      widestSlab: '2 m',
      leastRow: '0 mm',
      leastPiece: '300 mm',
      stagger: '200 mm',
      maxJoints: mostJoints,
      curves: false,
      whatIfs: false,
    });
    expect(r.foundWidth.in('mm')).toBeCloseTo(widest(boards), 6);
    // What is proved leaves less than a millimetre open.
    expect(r.widthBound.in('mm') - r.foundWidth.in('mm')).toBeLessThan(1);
  });
});
