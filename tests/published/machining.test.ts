import { describe, expect, it } from 'vitest';
import { answering, checkRows } from '../../src/recipes/published-checks.js';
import { faultsOf, runCheck } from '../../src/engine/validation.js';
import { cutterMarks } from '../../src/recipes/machining/cutter-marks.js';
import { planingTime } from '../../src/recipes/machining/planing-time.js';
import { tableRows } from '../../src/materials/data-tables.js';

const checks = checkRows('machining');

describe('machining against print', () => {
  it('has every case, each with its source', () => {
    expect(checks.length).toBeGreaterThanOrEqual(7);
    expect(faultsOf(checks)).toEqual([]);
  });
  it.each(checks.map((r) => [r.id, r] as const))('%s', async (_id, row) => {
    const outcome = await runCheck(row, answering);
    expect(outcome.error).toBeUndefined();
    expect(
      outcome.passes,
      `ours ${String(outcome.ours)} ${row.unit}, printed ${row.printed}, tolerance ${String(outcome.tolerance)}; ${row.source}, ${row.locator}`,
    ).toBe(true);
  });
});

describe('knife marks', () => {
  // Moulding trade note: below 12 low, 13 to 19 medium, 20 to 25 the highest grade of millwork.
  it.each([
    [11, 'low grade'],
    [13, 'medium grade'],
    [19, 'medium grade'],
    [20, 'highest grade'],
    [25, 'highest grade'],
  ] as const)('%s an inch are %s', (perInch, grade) => {
    // 6000 marks a minute at this feed: feed in ft/min = 500 / marks an inch.
    const r = cutterMarks({ spindleSpeed: '6000 rpm', knives: 1, feed: `${String(500 / perInch)} ft/min` });
    expect(r.cautions.map((c) => c.text).join()).toContain(grade);
  });
  // Saw and tooling technical page: rim speed in ft/min = pi x diameter in inches x rpm / 12.
  it('calculate the rim speed as the tooling page does', () => {
    const r = cutterMarks({ spindleSpeed: '5000 rpm', knives: 2, feed: '20 ft/min', cutterDiameter: '3 in' });
    expect(r.rimSpeed.in('ft/min')).toBeCloseTo((Math.PI * 3 * 5000) / 12, 6);
  });
});

describe('thicknesser limits as printed', () => {
  const rows = tableRows('thicknesser-limits.various');
  const pieces = (mm: number) => planingTime({ totalLength: `${String(mm)} mm`, passes: 1, feed: '6 m/min' });
  it('warn below the insurer’s 12 in and not at it', () => {
    const least = rows
      .find((r) => r.text('limit') === 'least length' && r.text('unit') === 'in')
      ?.number('low') as number;
    expect(pieces(least * 25.4 - 1).cautions.some((c) => c.level === 'range')).toBe(true);
    expect(pieces(least * 25.4).cautions.some((c) => c.level === 'range')).toBe(false);
  });
  it('warn above the club’s 1/16 in and not at it', () => {
    const cut = rows
      .find((r) => r.text('limit') === 'greatest cut' && r.text('unit') === 'in')
      ?.number('high') as number;
    const at = (inch: number) =>
      planingTime({
        totalLength: '3 m',
        removal: '6 mm',
        depthPerPass: `${String(inch)} in`,
        feed: '6 m/min',
      });
    expect(at(cut).cautions.some((c) => c.level === 'range')).toBe(false);
    expect(at(cut * 1.01).cautions.some((c) => c.level === 'range')).toBe(true);
  });
});
