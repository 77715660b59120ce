import { describe, expect, it } from 'vitest';
import { faultsOf, runCheck, type Answering } from '../../src/engine/validation.js';
import { checkRows } from '../../src/recipes/published-checks.js';
import { beam } from '../../src/recipes/rails/beam.js';
import { rackingFrame } from '../../src/recipes/rails/racking-frame.js';
import { railSpan } from '../../src/recipes/rails/rail-span.js';

const recipes = { beam, railSpan, rackingFrame } as unknown as Record<string, Answering>;
const rows = checkRows('rails');

// Cases of the reference that no recipe of this topic answers: the depth factor (300/h)^0.11 of BS 5268 and the NDS
// products of Ft and Fc with their factors are grading rules of codes that are not reckoned here.
describe('published checks of rails (data/checks/rails.json)', () => {
  it('is sound and whole', () => {
    expect(faultsOf(rows)).toEqual([]);
    expect(rows.length).toBeGreaterThanOrEqual(40);
  });
  it.each(rows.map((r) => [r.id, r] as const))('%s', async (_, row) => {
    const outcome = await runCheck(row, (name) => recipes[name]);
    expect(
      outcome,
      `${row.id}: ours ${String(outcome.ours)}, printed ${row.printed} ${row.unit} ${outcome.error ?? ''}`,
    ).toMatchObject({ passes: true });
  });
});
