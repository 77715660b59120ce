import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { palletBoards } from '../../../src/recipes/stock/pallet-boards.js';

const of = (more: object = {}) => palletBoards({ kind: '48 x 40 pallet', mark: 'HT', ...more } as never);

describe('palletBoards', () => {
  // Published drawing of the 48 x 40 in pallet: decks of 2 + 5 and 2 + 3 boards of 140 and 89 mm, 1016 mm long.
  it('the 48 x 40 in pallet has twelve boards, 1272 mm of width and 936 mm clear with 40 mm off each end', () => {
    const r = of();
    expect(r.boards).toBe(12);
    expect(r.pulledLength.in('mm')).toBeCloseTo(936, 9);
    expect(r.pulledArea.in('m2')).toBeCloseTo(0.936 * 1.272 * 0.8, 9);
    // (1016 - 3 38)/2 - 10 = 441 mm, twice as many.
    expect(r.sawnLength.in('mm')).toBeCloseTo(441, 9);
    expect(r.sawnArea.in('m2')).toBeCloseTo(0.441 * 2 * 1.272, 9);
    expect(r.mass.in('kg')).toBeCloseTo(1.016 * 1.272 * 0.016 * 450, 9);
    expect(r.survey[0]?.nails).toBe('19, 508, 997 mm');
  });
  // Product page of the FIN pallet: seven boards of 120, 100, 100, 120, 100, 100, 120 mm, 1000 mm long.
  it('the FIN pallet has seven top boards, 760 mm wide together, and takes its thickness from the user', () => {
    const r = of({ kind: 'FIN pallet', thickness: '22 mm', broken: '0 %', splitEnd: '0 mm' });
    expect(r.boards).toBe(7);
    expect(r.pulledArea.in('m2')).toBeCloseTo(0.76, 9);
    expect(() => of({ kind: 'FIN pallet' })).toThrow(/thickness: missing: none is printed/);
  });
  it('says how many for a need, both ways', () => {
    const r = of({ need: '3 m2' });
    expect([r.pallets, r.palletsSawn]).toEqual([Math.ceil(3 / 0.9524736), Math.ceil(3 / 1.121904)]);
  });
  it('fumigated, unmarked or stained pallets are not to be used', () => {
    for (const mark of ['MB', 'SF', 'none', 'stained'])
      expect(
        of({ mark }).cautions.some((c) => /[Dd]o not use/.test(c.text)),
        mark,
      ).toBe(true);
    expect(of({ mark: 'HT' }).cautions.some((c) => /[Dd]o not use/.test(c.text))).toBe(false);
  });
  it('refuses bearers or split ends that leave nothing', () => {
    expect(() => of({ bearers: 5, bearerWidth: '200 mm' })).toThrow(/bearerWidth: leaves no clear length/);
  });
  it('never gives more with more broken, longer splits or wider bearers', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 80 }),
        fc.integer({ min: 0, max: 200 }),
        fc.integer({ min: 20, max: 150 }),
        (broken, split, bearer) => {
          const at = (b: number, s: number, w: number) =>
            of({ broken: `${b} %`, splitEnd: `${s} mm`, bearerWidth: `${w} mm` });
          const r = at(broken, split, bearer);
          expect(at(broken + 5, split, bearer).pulledArea.value).toBeLessThanOrEqual(r.pulledArea.value);
          expect(at(broken, split + 5, bearer).pulledArea.value).toBeLessThanOrEqual(r.pulledArea.value);
          expect(at(broken, split, bearer + 5).sawnArea.value).toBeLessThanOrEqual(r.sawnArea.value);
        },
      ),
      { numRuns: 40 },
    );
  });
});
