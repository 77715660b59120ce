import { describe, expect, it } from 'vitest';
import { answering, checkRows } from '../../src/recipes/published-checks.js';
import { faultsOf, runCheck } from '../../src/engine/validation.js';
import { boardMeasure } from '../../src/recipes/stock/board-measure.js';
import { flatteningLoss } from '../../src/recipes/stock/flattening-loss.js';

const rows = checkRows('stock');

describe('stock against print', () => {
  it('has every case, each with its source', () => {
    expect(rows.length).toBeGreaterThanOrEqual(60);
    expect(faultsOf(rows)).toEqual([]);
  });

  it.each(rows.map((r) => [r.id, r] as const))(
    '%s',
    async (_id, row) => {
      const outcome = await runCheck(row, answering);
      expect(outcome.error).toBeUndefined();
      expect(
        outcome.passes,
        `ours ${outcome.ours} ${row.unit}, printed ${row.printed}, tolerance ${outcome.tolerance}; ${row.source}, ${row.locator}`,
      ).toBe(true);
    },
    90_000,
  );

  it('US Navy Builder manual: a 3 in plank of 7 in by 33 ft is three times the 1 in board', () => {
    // The page rounds to 19.26 in one place; its own table reads 19 3/12.
    expect(
      boardMeasure({ thickness: '3 in', width: '7 in', length: '33 ft' }).boardFeet.in('bf'),
    ).toBeCloseTo(3 * 19.25, 9);
  });
});

/** The sagitta of a circle, in any book of geometry: s = R - sqrt(R^2 - (w/2)^2). Independent of the recipe's parabola. */
describe('flattening against the exact circle', () => {
  it.each([
    [150, 3, 1],
    [142, 2.5, 2],
    [300, 4, 5],
  ])('a cup of %s mm wide and %s mm deep, %s rips', (width, cup, rips) => {
    const R = ((width / 2) ** 2 + cup ** 2) / (2 * cup);
    const strip = width / (rips + 1);
    const exact = R - Math.sqrt(R ** 2 - (strip / 2) ** 2);
    const got = flatteningLoss({
      thickness: '40 mm',
      width: `${width} mm`,
      length: '1 m',
      cup: `${cup} mm`,
      rips,
    }).loss.in('mm');
    expect(Math.abs(got - exact)).toBeLessThan(0.005);
  });

  it('a saddle is planed flat by half its lift: greatest less least of x y over a rectangle, less its best plane', () => {
    // z = h x y on the unit square; subtract x/2 + y/2 - 1/4 and search for the range by brute force.
    let low = Infinity;
    let high = -Infinity;
    for (let i = 0; i <= 100; i++) {
      for (let j = 0; j <= 100; j++) {
        const z = (i / 100) * (j / 100) - i / 200 - j / 200 + 0.25;
        low = Math.min(low, z);
        high = Math.max(high, z);
      }
    }
    const got = flatteningLoss({ thickness: '40 mm', width: '200 mm', length: '1 m', twist: '6 mm' }).loss.in(
      'mm',
    );
    expect(got).toBeCloseTo(6 * (high - low), 9);
  });
});
