import { describe, expect, it } from 'vitest';
import { answering, checkRows } from '../../src/recipes/published-checks.js';
import { faultsOf, runCheck } from '../../src/engine/validation.js';
import { clampPlan } from '../../src/recipes/lamination/clamp-plan.js';
import { measuredClamps } from '../../src/recipes/lamination/gluing-data.js';

const rows = checkRows('lamination');

describe('lamination against print', () => {
  it('has every case, each with its source', () => {
    expect(rows.length).toBeGreaterThanOrEqual(16);
    expect(faultsOf(rows)).toEqual([]);
  });

  it.each(rows.map((r) => [r.id, r] as const))('%s', async (_id, row) => {
    const outcome = await runCheck(row, answering);
    expect(outcome.error).toBeUndefined();
    expect(
      outcome.passes,
      `ours ${outcome.ours} ${row.unit}, printed ${row.printed}, tolerance ${outcome.tolerance}; ${row.source}, ${row.locator}`,
    ).toBe(true);
  });
});

// Fine Woodworking 194, the test of clamps: pounds of force, mean of two testers. One square inch at the printed
// pound more than the clamp gives takes two clamps, at the printed pound one.
describe.each([
  ['parallel-jaw clamp', 370],
  ['one-hand trigger bar clamp', 470],
  ['aluminium bar clamp', 680],
  ['3/4 in pipe clamp', 1050],
  ['I-beam bar (sash) clamp', 1350],
] as const)('%s', (clamp, pounds) => {
  it('gives the force that was measured', () => {
    expect(measuredClamps).toContain(clamp);
    const count = (psi: number) =>
      clampPlan({
        length: '1 in',
        jointHeight: '1 in',
        pressure: `${psi} psi`,
        clampForce: clamp,
        outerWidth: '6 in',
      }).byForce;
    expect(count(pounds)).toBe(1);
    expect(count(pounds + 1)).toBe(2);
  });
});
