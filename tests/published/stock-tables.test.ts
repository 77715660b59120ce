import { describe, expect, it } from 'vitest';
import { gradeYield } from '../../src/recipes/stock/grade-yield.js';
import { partsCost } from '../../src/recipes/stock/parts-cost.js';
import { roughToDressed } from '../../src/recipes/stock/rough-to-dressed.js';

/** Grading basics (North Carolina Woodworker) and the NHLA summary chart; units are inches by feet. */
describe('hardwood grades as printed', () => {
  it('7 in by 8 ft: 4.67, a surface measure of 5', () => {
    expect(gradeYield({ grade: 'FAS', width: '7 in', length: '8 ft' }).surfaceMeasure).toBe(5);
  });

  it.each([
    // grade, surface measure, cutting units; the chart prints the multiplier, the surface measure was chosen here
    ['FAS', 8, 80, 96],
    ['No.1 Common', 5, 40, 60],
  ] as const)('%s of %s ft2: %s units', (grade, surfaceMeasure, units, total) => {
    const r = gradeYield({ grade, surfaceMeasure });
    expect(r.clearUnits).toBe(units);
    expect(r.totalUnits).toBe(total);
  });

  it.each([
    ['FAS', '10/12'],
    ['F1F', '10/12'],
    ['Selects', '10/12'],
    ['No.1 Common', '8/12'],
    ['No.2A Common', '6/12'],
    ['No.2B Common', '6/12'],
    ['No.3A Common', '4/12'],
    ['No.3B Common', '3/12'],
  ] as const)('%s yields %s of its face', (grade, printed) => {
    const [a, b] = printed.split('/').map(Number) as [number, number];
    const r = gradeYield({ grade, surfaceMeasure: 6 });
    expect(r.yield.value).toBeCloseTo(a / b, 12);
    // A cutting unit is 1 in by 1 ft (NHLA rules 2007, item 37).
    expect(r.area.in('in2')).toBeCloseTo((6 * 144 * a) / b, 9);
  });

  it.each([
    // Printed rule, and a surface measure to try it on: cuts by the rule with the fraction dropped, up to the most allowed.
    ['FAS', 9, 2], // 9 / 4
    ['FAS', 20, 4], // 20 / 4 = 5, at most 4
    ['No.1 Common', 9, 3], // 10 / 3
    ['No.1 Common', 20, 5], // 7, at most 5
    ['No.2A Common', 7, 3], // 7 / 2
    ['No.2A Common', 30, 7], // 15, at most 7
  ] as const)('%s of %s ft2 in at most %s cuttings', (grade, surfaceMeasure, cuts) => {
    expect(gradeYield({ grade, surfaceMeasure }).cuttings).toBe(cuts);
  });

  it('an extra cutting asks for 11/12 in FAS of 6 to 15 ft2, 9/12 in No.1 Common of 3 to 10 ft2, and is refused beyond', () => {
    expect(gradeYield({ grade: 'FAS', surfaceMeasure: 8 }).unitsWithExtraCut).toBe(88);
    expect(gradeYield({ grade: 'No.1 Common', surfaceMeasure: 10 }).unitsWithExtraCut).toBe(90);
    expect(gradeYield({ grade: 'FAS', surfaceMeasure: 16 }).unitsWithExtraCut).toBeUndefined();
    expect(gradeYield({ grade: 'No.3A Common', surfaceMeasure: 8 }).cuttings).toBeUndefined();
  });
});

/** PS 20 dressed dry sizes: sizes.com and the charts that agree with it (text), the rest of Table 3 (memory). */
describe('softwood sizes as printed', () => {
  it.each([
    ['1x4', 0.75, 3.5, 'text'],
    ['2x4', 1.5, 3.5, 'text'],
    ['2x6', 1.5, 5.5, 'memory'],
    ['2 x 8', 1.5, 7.25, 'memory'],
    ['2x10', 1.5, 9.25, 'text'],
    ['2x12', 1.5, 11.25, 'text'],
    ['4x4', 3.5, 3.5, 'memory'],
    ['4x2', 1.5, 3.5, 'text'],
    ['1 1/4 x 6', 1, 5.5, 'memory'],
  ] as const)('%s is %s by %s in dry (%s)', (nominal, t, w, _read) => {
    const r = roughToDressed({ nominal });
    expect(r.dressedThickness.in('in')).toBeCloseTo(t, 9);
    expect(r.dressedWidth.in('in')).toBeCloseTo(w, 9);
  });

  it('a timber of 6 in is at most 1/2 in under (PS 20-05 summary), and no size is recalled', () => {
    expect(roughToDressed({ nominal: '6x6' }).dressedThickness.in('in')).toBeCloseTo(5.5, 9);
    for (const nominal of ['2x4', '3x4'])
      expect(roughToDressed({ nominal }).cautions.some((c) => c.text.includes('not yet compared'))).toBe(
        false,
      );
  });

  it('planing and its inverse meet', () => {
    const down = roughToDressed({
      rough: { thickness: '50 mm', width: '150 mm', length: '2 m' },
      faces: 'S2S1E',
      allowances: { face: '2.5 mm', edge: '4 mm', end: '25 mm' },
    });
    expect([
      down.dressedThickness.in('mm'),
      down.dressedWidth.in('mm'),
      down.dressedLength?.in('mm'),
    ]).toEqual([45, 146, 1950]);
    const up = roughToDressed({
      dressed: { thickness: '45 mm', width: '146 mm', length: '1950 mm' },
      faces: 'S2S1E',
      allowances: { face: '2.5 mm', edge: '4 mm', end: '25 mm' },
    });
    expect([up.roughThickness?.in('mm'), up.roughWidth?.in('mm'), up.roughLength?.in('mm')]).toEqual([
      50, 150, 2000,
    ]);
  });
});

/** Furniture-making textbook, Timber calculations: per cent added to the net. */
describe('waste as printed', () => {
  it('20 % added to 0.1 m3 of square-edge hardwood buys 0.12 m3', () => {
    const r = partsCost({
      parts: [{ name: 'all', length: '1 m', width: '1 m', thickness: '100 mm' }],
      price: '100/m3',
      waste: 'square-edge hardwood',
    });
    expect(r.volumeToBuy.in('m3')).toBeCloseTo(0.12, 12);
    expect(r.total.value).toBeCloseTo(12, 9);
    expect(r.low?.value).toBeCloseTo(11.5, 9);
  });

  it.each([
    ['softwood scantlings', 5, 10],
    ['square-edge hardwood', 15, 20],
    ['waney-edge boards', 60, 60],
    ['very wasteful logs', 200, 200],
    ['plywood', 10, 20],
    ['veneers', 50, 50],
  ] as const)('%s: %s to %s %%', (waste, low, high) => {
    const r = partsCost({ parts: [{ name: 'a', length: '1 m' }], price: '100/m', waste });
    expect(r.waste.value).toBeCloseTo(high / 100, 12);
    expect(r.low?.value).toBeCloseTo(100 + low, 9);
  });
});
