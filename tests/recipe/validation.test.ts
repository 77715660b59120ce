import { describe, expect, it } from 'vitest';
import { Quantity } from '../../src/quantities/quantity.js';
import { faultsOf, printedTolerance, runCheck, valueAt, type CheckRow } from '../../src/recipe/validation.js';
import { validationTable } from '../../src/recipe/validation-table.js';
import { checkRows, checkTopics, publishedChecks } from '../../src/recipes/checks.js';

const row = (more: Partial<CheckRow>): CheckRow => ({
  id: 'x',
  recipe: 'twice',
  source: 'fpl-gtr-190',
  locator: 'p. 1',
  inputs: { n: 6.642 },
  output: 'length',
  printed: '13.28',
  unit: 'mm',
  read: 'text',
  ...more,
});
const find = (name: string) =>
  name === 'twice'
    ? (g: Readonly<Record<string, unknown>>) => ({
        length: new Quantity('length', (Number(g['n']) * 2) / 1000),
        rows: [{ a: 1 }, { a: 2 }],
        word: 'oak',
      })
    : undefined;

describe('a check against print', () => {
  it.each([
    ['13.284', 0.0005],
    ['13.3', 0.05],
    ['204', 0.5],
    ['-4.806', 0.0005],
    ['0.00369', 5e-6],
    ['1.2e3', 50],
    ['80000', 0.5],
  ])('%s may be off by half its last digit', (printed, tolerance) => {
    expect(printedTolerance(printed)).toBeCloseTo(tolerance, 12);
  });
  it('passes what prints the same, and fails what does not', async () => {
    expect((await runCheck(row({}), find)).passes).toBe(true);
    expect((await runCheck(row({ printed: '13.29' }), find)).passes).toBe(false);
    expect((await runCheck(row({ printed: '13.29', tolerance: 0.01, why: 'misprint' }), find)).passes).toBe(
      true,
    );
    expect((await runCheck(row({ printed: '0.5230', unit: 'in' }), find)).passes).toBe(true);
  });
  it('reads tables, words and differences', async () => {
    expect(valueAt({ rows: [{ a: 1 }, { a: 2 }] }, 'rows[2].a')).toBe(2);
    expect((await runCheck(row({ output: 'rows[2].a', printed: '2', unit: '' }), find)).passes).toBe(true);
    expect((await runCheck(row({ output: 'word', printed: 'oak', unit: '' }), find)).passes).toBe(true);
    expect((await runCheck(row({ output: 'word', printed: 'ash', unit: '' }), find)).passes).toBe(false);
    expect((await runCheck(row({ less: { n: 1 }, printed: '11.284' }), find)).passes).toBe(true);
  });
  it('fails in words where there is nothing to compare', async () => {
    expect(await runCheck(row({ recipe: 'thrice' }), find)).toMatchObject({
      passes: false,
      error: 'no recipe thrice',
    });
    expect((await runCheck(row({ output: 'area' }), find)).error).toMatch(/no area/);
  });
  it('finds faults in its own rows', () => {
    expect(
      faultsOf([row({}), row({}), row({ id: 'y', source: 'hearsay' }), row({ id: 'z', tolerance: 1 })]),
    ).toHaveLength(3);
  });
  it('shows as a table', async () => {
    const t = validationTable([
      await runCheck(row({}), find),
      await runCheck(row({ id: 'bad', printed: '9' }), find),
    ]);
    expect([t.passed, t.failed]).toEqual([1, 1]);
    expect(t.toMarkdown()).toMatch(
      /\| twice: n 6\.642; length \| 13\.28 mm \| 13\.284 mm \| \+0\.004 \(±0\.005\) \|/,
    );
    expect(t.toMarkdown()).toMatch(/✗ differs/);
  });
});

describe('the published checks of the project', () => {
  it.each(checkTopics)('%s: sound rows, all agree', async (topic) => {
    const rows = checkRows(topic);
    expect(faultsOf(rows)).toEqual([]);
    const t = await publishedChecks(topic);
    expect(
      t.outcomes
        .filter((o) => !o.passes)
        .map((o) => `${o.row.id}: ${o.ours ?? o.error}, printed ${o.row.printed}`),
    ).toEqual([]);
    expect(t.outcomes).toHaveLength(rows.length);
  });
});
