import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  hardwoodFeet,
  quarters,
  roundAlternately,
  softwoodFeet,
  surfaceMeasure,
  tallyLength,
} from '../../../src/recipes/stock/tally-rules.js';

const fresh = () => ({ up: true });

describe('surface measure', () => {
  // American Hardwood Export Council, grading sawn lumber, measurement: 6 1/4 in x 8 ft is 4 1/6, so 4; 2 in thick 8 board feet.
  it('6 1/4 in x 8 ft is 4, and 8 board feet at 2 in', () => {
    const s = surfaceMeasure({ width: 6.25, length: 8 }, fresh());
    expect(s).toBe(4);
    expect(hardwoodFeet(s, 2)).toBe(8);
  });
  // A trade page after the hardwood rules: 10 in x 13 ft is 10 10/12, so 11; 8 in x 12 ft is 8.
  it('10 in x 13 ft is 11 and 8 in x 12 ft is 8', () => {
    expect(surfaceMeasure({ width: 10, length: 13 }, fresh())).toBe(11);
    expect(surfaceMeasure({ width: 8, length: 12 }, fresh())).toBe(8);
  });
  // A woodworkers' club: a board of 7 3/4 in x 8 ft 3 in is 5.
  it('7 3/4 in x 8 ft 3 in is 5: the 3 in are dropped', () => {
    expect(tallyLength(8.25)).toBe(8);
    expect(surfaceMeasure({ width: 7.75, length: 8.25 }, fresh())).toBe(5);
  });
  // Wengert: at exactly a half up the first time, down the next.
  it('halves go up and down alternately', () => {
    const turn = fresh();
    expect([1, 2, 3, 4].map(() => surfaceMeasure({ width: 6, length: 9 }, turn))).toEqual([5, 4, 5, 4]);
    expect([roundAlternately(4.49, turn), roundAlternately(4.51, turn)]).toEqual([4, 5]);
  });
  it('of many boards is near the area, never more than half a foot off for each', () => {
    const boards = fc.array(
      fc.record({
        width: fc.double({ min: 3, max: 14, noNaN: true }),
        length: fc.integer({ min: 4, max: 16 }),
      }),
      { minLength: 1, maxLength: 60 },
    );
    fc.assert(
      fc.property(boards, (list) => {
        const turn = fresh();
        const sum = list.reduce((s, b) => s + surfaceMeasure(b, turn), 0);
        const area = list.reduce((s, b) => s + (b.width * b.length) / 12, 0);
        expect(Math.abs(sum - area)).toBeLessThanOrEqual(list.length / 2 + 1e-3);
      }),
    );
  });
  it('never rises with a shorter or narrower board', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 3, max: 14, noNaN: true }),
        fc.double({ min: 4, max: 16, noNaN: true }),
        (width, length) => {
          const s = surfaceMeasure({ width, length }, fresh());
          expect(surfaceMeasure({ width: width * 0.97, length }, fresh())).toBeLessThanOrEqual(s);
          expect(surfaceMeasure({ width, length: length * 0.97 }, fresh())).toBeLessThanOrEqual(s);
        },
      ),
    );
  });
});

describe('thickness', () => {
  it('of hardwood counts in whole quarters, under an inch as an inch', () => {
    expect([quarters(1.3), quarters(2.125), quarters(1.5)]).toEqual([1.25, 2, 1.5]);
    expect(hardwoodFeet(4, 0.75)).toBe(4);
  });
  // Board rule of the trade: 2 x 4 in x 12 ft is 8 board feet; a 3/4 in board counts as 1 in.
  it('of softwood is nominal, under an inch as an inch', () => {
    expect(softwoodFeet({ thickness: 2, width: 4, length: 12 })).toBe(8);
    expect(softwoodFeet({ thickness: 0.75, width: 6, length: 10 })).toBe(5);
  });
});
