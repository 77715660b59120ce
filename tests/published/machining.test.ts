import { describe, expect, it } from 'vitest';
import { cutterMarks } from '../../src/recipes/machining/cutter-marks.js';
import { planingTime } from '../../src/recipes/machining/planing-time.js';
import { sheetAndDust } from '../../src/recipes/machining/sheet-and-dust.js';
import { tableRows } from '../../src/timber/tables.js';
import { expectPrinted } from './printed.js';

describe('knife marks', () => {
  // FDM magazine, "Knife marks per inch": marks = rpm x knives / (feed in ft/min x 12). The formula is printed, the numbers put in here.
  it('follow the printed formula', () => {
    expectPrinted(cutterMarks({ spindleSpeed: '6000 rpm', knives: 4, feed: '60 ft/min' }).marksPerInch.in('1/in'), '33.33', '6000 rpm, 4 knives, 60 ft/min');
    expectPrinted(cutterMarks({ spindleSpeed: '5000 rpm', knives: 2, feed: '60 ft/min', wanted: '20 1/in' }).feedForWanted.in('ft/min'), '41.67', 'feed for 20 an inch');
  });
  // The same magazine: at least 20 an inch for hardwood; that is 1.27 mm from mark to mark.
  it('at 20 an inch stand 1.27 mm apart', () => {
    const feed = cutterMarks({ spindleSpeed: '5000 rpm', knives: 2, feed: '60 ft/min' }).feedForWanted;
    expectPrinted(cutterMarks({ spindleSpeed: '5000 rpm', knives: 2, feed }).pitch.in('mm'), '1.27', 'pitch', 1e-9);
  });
  // Moulding trade note: below 12 low, 13 to 19 medium, 20 to 25 the highest grade of millwork.
  it.each([[11, 'low grade'], [13, 'medium grade'], [19, 'medium grade'], [20, 'highest grade'], [25, 'highest grade']] as const)('%s an inch are %s', (perInch, grade) => {
    // 6000 marks a minute at this feed: feed in ft/min = 500 / marks an inch.
    const r = cutterMarks({ spindleSpeed: '6000 rpm', knives: 1, feed: `${String(500 / perInch)} ft/min` });
    expect(r.cautions.map((c) => c.text).join()).toContain(grade);
  });
  // Saw and tooling technical page: rim speed in ft/min = pi x diameter in inches x rpm / 12.
  it('reckon the rim speed as the tooling page does', () => {
    const r = cutterMarks({ spindleSpeed: '5000 rpm', knives: 2, feed: '20 ft/min', cutterDiameter: '3 in' });
    expect(r.rimSpeed.in('ft/min')).toBeCloseTo((Math.PI * 3 * 5000) / 12, 6);
  });
});

describe('room that residue takes', () => {
  // Briggs, Forest Products Measurements and Conversion Factors, Table 7-1 (after Dobie and Wright 1972): columns 4 and 6 print the same factor in other units.
  it.each([['planer shavings', '0.113', '141.24'], ['sawdust', '0.071', '88.34']] as const)('%s', (waste, m3PerFt3, ft3PerM3) => {
    const one = sheetAndDust({ volumeRemoved: '1 ft3', density: '500 kg/m3', waste });
    expectPrinted(one.volume.in('m3'), m3PerFt3, 'm3 of residue for a cubic foot');
    // Column 6 is reckoned by its author with 35.31 ft3 to the cubic metre: one unit in the second decimal.
    expectPrinted(sheetAndDust({ volumeRemoved: '1 m3', density: '500 kg/m3', waste }).volume.in('ft3'), ft3PerM3, 'ft3 of residue for a cubic metre', waste === 'sawdust' ? 0.06 : 0.03);
  });
});

describe('thicknesser limits as printed', () => {
  const rows = tableRows('thicknesser-limits.various');
  const pieces = (mm: number) => planingTime({ totalLength: `${String(mm)} mm`, passes: 1, feed: '6 m/min' });
  it('warn below the insurer’s 12 in and not at it', () => {
    const least = rows.find((r) => r.text('limit') === 'least length' && r.text('unit') === 'in')?.number('low') as number;
    expect(pieces(least * 25.4 - 1).cautions.some((c) => c.level === 'range')).toBe(true);
    expect(pieces(least * 25.4).cautions.some((c) => c.level === 'range')).toBe(false);
  });
  it('warn above the club’s 1/16 in and not at it', () => {
    const cut = rows.find((r) => r.text('limit') === 'greatest cut' && r.text('unit') === 'in')?.number('high') as number;
    const at = (inch: number) => planingTime({ totalLength: '3 m', removal: '6 mm', depthPerPass: `${String(inch)} in`, feed: '6 m/min' });
    expect(at(cut).cautions.some((c) => c.level === 'range')).toBe(false);
    expect(at(cut * 1.01).cautions.some((c) => c.level === 'range')).toBe(true);
  });
});
