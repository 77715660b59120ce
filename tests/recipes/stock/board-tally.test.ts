import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boardTally } from '../../../src/recipes/stock/board-tally.js';
import { gradeYield } from '../../../src/recipes/stock/grade-yield.js';

const tally = (boards: readonly object[], rule = 'hardwood') => boardTally({ boards, rule } as never);

describe('boardTally', () => {
  it('by the hardwood rule: 4 ft² at 2 in, two of 11 at 1 in, four of 4 1/2 alternately 5 and 4 at 5/4', () => {
    // 8 + 22 + (5 + 4 + 5 + 4) 1.25 = 52.5 board feet on 4 + 22 + 18 ft².
    const r = boardTally(boardTally.example);
    expect(r.boardFeet.in('bf')).toBeCloseTo(52.5, 9);
    expect(r.surfaceMeasure).toBe(44);
    expect(r.boards).toBe(7);
    // By size 100/144 12... : 6.25 8/12 2 + 2 10 13/12 + 4 6 9/12 1.25.
    expect(r.bySize.in('bf')).toBeCloseTo(8.33333333 + 21.66666667 + 22.5, 6);
    expect(r.difference.value).toBe(0);
    expect(r.sentence).toBe('7 boards, 52.5 board feet by the hardwood rule: what their sizes hold.');
  });
  it('by the softwood rule rounds nothing, and counts under an inch as an inch', () => {
    const r = tally([{ width: '6 in', length: '10 ft', thickness: '3/4 in', count: 3 }], 'softwood');
    expect(r.boardFeet.in('bf')).toBeCloseTo(15, 9);
    expect(r.surfaceMeasure).toBeUndefined();
    expect(r.difference.value).toBeCloseTo(1 / 3, 9);
  });
  it('refuses hardwood shorter than a foot', () => {
    expect(() => tally([{ width: '6 in', length: '11 in', thickness: '1 in' }])).toThrow(
      /boards\[1\]\.length: got 0\.92 ft, takes at least 1 ft/,
    );
  });
  it('never falls with a thicker board, and a tally is the sum of its rows', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            w: fc.integer({ min: 3, max: 14 }),
            l: fc.integer({ min: 4, max: 16 }),
            t: fc.integer({ min: 1, max: 12 }),
          }),
          { minLength: 1, maxLength: 20 },
        ),
        (list) => {
          const boards = (more: number) =>
            list.map((b) => ({
              width: `${b.w} in`,
              length: `${b.l} ft`,
              thickness: `${(b.t + more) / 4} in`,
            }));
          const r = tally(boards(0));
          expect(tally(boards(1)).boardFeet.value).toBeGreaterThanOrEqual(r.boardFeet.value - 1e-12);
          expect(r.rows.reduce((s, row) => s + row.boardFeet.value, 0)).toBeCloseTo(r.boardFeet.value, 9);
        },
      ),
      { numRuns: 40 },
    );
  });
});

describe('gradeYield', () => {
  it('drops the part of a foot: 7 3/4 in x 8 ft 3 in is 5', () => {
    expect(gradeYield({ grade: 'FAS', width: '7 3/4 in', length: '8\' 3"' }).surfaceMeasure).toBe(5);
  });
});
