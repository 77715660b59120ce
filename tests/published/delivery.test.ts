import { describe, expect, it } from 'vitest';
import { faultsOf, runCheck } from '../../src/engine/validation.js';
import { answering, checkRows } from '../../src/recipes/published-checks.js';

const rows = checkRows('delivery');

describe('published checks of ways in and lifting (data/checks/delivery.json)', () => {
  it('is sound', () => {
    expect(rows.length).toBeGreaterThanOrEqual(8);
    expect(faultsOf(rows)).toEqual([]);
  });
  it.each(rows.map((r) => [r.id, r] as const))('%s', async (_, row) => {
    const outcome = await runCheck(row, answering);
    expect(
      outcome,
      `${row.id}: ours ${String(outcome.ours)}, printed ${row.printed} ${row.unit} ${outcome.error ?? ''}`,
    ).toMatchObject({ passes: true });
  });
});
