import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gradeYield } from '../../src/recipes/stock/grade-yield.js';
import { partsCost } from '../../src/recipes/stock/parts-cost.js';
import { roughToDressed } from '../../src/recipes/stock/rough-to-dressed.js';

const whole = (min: number, max: number) => fc.integer({ min, max });

/** The trade's marks, counted by hand: faces and edges planed. */
const sides = {
  S1S: [1, 0],
  S2S: [2, 0],
  S1E: [0, 1],
  S2E: [0, 2],
  S1S1E: [1, 1],
  S2S1E: [2, 1],
  S1S2E: [1, 2],
  S4S: [2, 2],
} as const;

describe('roughToDressed', () => {
  const sizes = fc.record({
    t: whole(200, 1000),
    w: whole(500, 3000),
    l: whole(4000, 40_000),
    face: whole(0, 50),
    edge: whole(0, 80),
    end: whole(0, 500),
  });
  const allowed = (s: { face: number; edge: number; end: number }) => ({
    face: `${s.face / 10} mm`,
    edge: `${s.edge / 10} mm`,
    end: `${s.end / 10} mm`,
  });

  it('goes from rough to dressed and back to the same board', () => {
    fc.assert(
      fc.property(sizes, fc.constantFrom(...(Object.keys(sides) as (keyof typeof sides)[])), (s, faces) => {
        const size = { thickness: `${s.t / 10} mm`, width: `${s.w / 10} mm`, length: `${s.l / 10} mm` };
        const options = { allowances: allowed(s), faces };
        const there = roughToDressed({ rough: size, ...options });
        const back = roughToDressed({
          dressed: {
            thickness: there.dressedThickness,
            width: there.dressedWidth,
            length: there.dressedLength!,
          },
          ...options,
        });
        expect(back.roughThickness!.in('mm')).toBeCloseTo(s.t / 10, 6);
        expect(back.roughWidth!.in('mm')).toBeCloseTo(s.w / 10, 6);
        expect(back.roughLength!.in('mm')).toBeCloseTo(s.l / 10, 6);
        expect(back.planedAway.value).toBeCloseTo(there.planedAway.value, 9);
        const [n, m] = sides[faces];
        expect(there.dressedThickness.in('mm')).toBeCloseTo((s.t - n * s.face) / 10, 6);
        expect(there.dressedWidth.in('mm')).toBeCloseTo((s.w - m * s.edge) / 10, 6);
        expect(there.dressedLength!.in('mm')).toBeCloseTo((s.l - 2 * s.end) / 10, 6);
      }),
      { numRuns: 300 },
    );
  });

  it('planes more away the more sides are dressed', () => {
    fc.assert(
      fc.property(sizes, (s) => {
        const away = (faces: 'S1S' | 'S2S' | 'S4S') =>
          roughToDressed({
            rough: { thickness: `${s.t / 10} mm`, width: `${s.w / 10} mm` },
            faces,
            allowances: allowed(s),
          }).planedAway.value;
        expect(away('S2S')).toBeGreaterThanOrEqual(away('S1S') - 1e-12);
        expect(away('S4S')).toBeGreaterThanOrEqual(away('S2S') - 1e-12);
        expect(away('S4S')).toBeLessThan(1);
      }),
      { numRuns: 200 },
    );
  });
});

describe('gradeYield', () => {
  it('promises no more than there is, more in a larger board, and a better grade no less', () => {
    fc.assert(
      fc.property(whole(1, 60), (surface) => {
        const at = (grade: 'FAS' | 'No.1 Common' | 'No.2A Common' | 'No.3A Common', s = surface) =>
          gradeYield({ grade, surfaceMeasure: s });
        const grades = (['FAS', 'No.1 Common', 'No.2A Common', 'No.3A Common'] as const).map((g) => at(g));
        grades.forEach((g, i) => {
          expect(g.clearUnits).toBeLessThanOrEqual(g.totalUnits);
          // A cutting unit is 12 square inches.
          expect(g.area.in('in2')).toBeCloseTo(12 * g.clearUnits, 6);
          if (i > 0) expect(g.clearUnits).toBeLessThanOrEqual(grades[i - 1]!.clearUnits);
        });
        expect(at('FAS', surface + 1).clearUnits).toBeGreaterThan(at('FAS').clearUnits);
      }),
      { numRuns: 60 },
    );
  });
});

describe('partsCost', () => {
  it('grows with waste in proportion and does not care in which unit the price was given', () => {
    fc.assert(
      fc.property(
        whole(1, 20),
        whole(200, 3000),
        whole(20, 200),
        whole(10, 60),
        whole(1, 5000),
        (count, l, w, t, price) => {
          const parts = [{ name: 'a', count, length: `${l} mm`, width: `${w} mm`, thickness: `${t} mm` }];
          const total = (p: string, waste = '0 %') =>
            (partsCost({ parts, price: p, waste }).total as { value: number }).value;
          const plain = total(`£${price}/m3`);
          expect(plain).toBeCloseTo((count * l * w * t * price) / 1e9, 6);
          expect(total(`£${price}/m3`, '25 %')).toBeCloseTo(plain * 1.25, 6);
          // A board foot is 144 cubic inches.
          const perFoot = (price * 144 * 25.4 ** 3) / 1e9;
          expect(total(`£${perFoot}/bf`)).toBeCloseTo(plain, 4);
        },
      ),
      { numRuns: 150 },
    );
  });
});
