import { describe, expect, it } from 'vitest';
import { faultsOf, runCheck } from '../../src/engine/validation.js';
import { answering, checkRows } from '../../src/recipes/published-checks.js';

const rows = checkRows('rails');

// Cases of the reference that no recipe of this topic answers: the depth factor (300/h)^0.11 of BS 5268 and the NDS
// products of Ft and Fc with their factors are grading rules of codes that are not calculated here.
describe('published checks of rails (data/checks/rails.json)', () => {
  it('is sound and whole', () => {
    expect(faultsOf(rows)).toEqual([]);
    expect(rows.length).toBeGreaterThanOrEqual(30);
  });
  it.each(rows.map((r) => [r.id, r] as const))('%s', async (_, row) => {
    const outcome = await runCheck(row, answering);
    expect(
      outcome,
      `${row.id}: ours ${String(outcome.ours)}, printed ${row.printed} ${row.unit} ${outcome.error ?? ''}`,
    ).toMatchObject({ passes: true });
  });
});
