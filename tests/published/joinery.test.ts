import { describe, expect, it } from 'vitest';
import { faultsOf, runCheck } from '../../src/engine/validation.js';
import { answering, checkRows } from '../../src/recipes/published-checks.js';
import { drillOf, gaugeDiameter } from '../../src/recipes/joinery/screw-size.js';
import { screwHold } from '../../src/recipes/joinery/screw-hold.js';
import { tableRows } from '../../src/materials/data-tables.js';

const rows = checkRows('joinery');

// Of the reference's joints the least depth of a mortise, three times its width, is a rule of the trade that no recipe
// of this topic gives.
describe('published checks of joinery (data/checks/joinery.json)', () => {
  it('is sound, and holds all 77 cells of the saw’s chart, mitre and bevel', () => {
    expect(faultsOf(rows)).toEqual([]);
    expect(
      rows.filter((r) => r.recipe === 'splayedCorner' && r.source === 'saw-manual-compound'),
    ).toHaveLength(154);
  });
  it('gives more room than the last digit to one cell of the chart only', () => {
    expect(
      rows.filter((r) => r.source === 'saw-manual-compound' && r.tolerance !== undefined).map((r) => r.id),
    ).toEqual(['jo-mitre-7-25-M']);
  });
  it.each(rows.map((r) => [r.id, r] as const))('%s', async (_, row) => {
    const outcome = await runCheck(row, answering);
    expect(
      outcome,
      `${row.id}: ours ${String(outcome.ours)}, printed ${row.printed} ${row.unit} ${outcome.error ?? ''}`,
    ).toMatchObject({ passes: true });
  });
});

describe('printed tables of screws', () => {
  const printed = tableRows('screw-pilots.various');
  it.each(printed.filter((r) => r.text('shank_in') !== '').map((r) => [r.text('gauge'), r] as const))(
    'shank of gauge %s',
    (gauge, r) => {
      const ours = gaugeDiameter(Number(gauge)) / 0.0254;
      // Number 2 is printed .068, its digits transposed: .086 by the rule of all the others.
      if (gauge === '2') expect(ours).toBeCloseTo(0.086, 4);
      else expect(ours).toBeCloseTo(Number(r.text('shank_in')), 4);
    },
  );
  it.each(
    printed
      .filter((r) => r.citation.id === 'sailing-screw-pilots' && r.text('gauge') !== '2')
      .map((r) => [r.text('gauge'), r] as const),
  )('pilot holes of gauge %s, to the nearest 1/64 in', (gauge, r) => {
    for (const [hardwood, column] of [
      [false, 'pilot_softwood_in'],
      [true, 'pilot_hardwood_in'],
    ] as const) {
      const ours = screwHold({ specificGravity: 0.5, diameter: `#${gauge}`, penetration: '1 in', hardwood });
      expect(ours.pilotAsPrinted).toBe(`${r.text(column)} in`);
      // 70 and 90 % of a root of two thirds of the shank, against drills that come in steps of 1/64 in.
      expect(Math.abs(ours.pilot.value - (drillOf(r.text(column)) as number))).toBeLessThan(
        (1.05 / 64) * 0.0254,
      );
    }
  });
  it('root of two thirds of the shank (Wood Handbook p. 8-10) against the printed roots, within a sixteenth of the shank', () => {
    for (const r of printed) {
      const root = r.number('root_in');
      if (root === undefined || r.text('gauge') === '2') continue;
      expect(
        Math.abs(root - (2 / 3) * (r.number('shank_in') as number)) / (r.number('shank_in') as number),
      ).toBeLessThan(1 / 16);
    }
  });
});
