import { describe, expect, it } from 'vitest';
import { Quantity } from '../../src/units/quantity.js';
import { faultsOf, printedTolerance, runCheck, valueAt, type CheckRow } from '../../src/engine/validation.js';
import { validationTable } from '../../src/engine/validation-table.js';
import { checkRows, checkTopics, publishedChecks } from '../../src/recipes/published-checks.js';

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
        fits: true,
        loose: false,
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
    expect((await runCheck(row({ output: 'rows' }), find)).error).toBe('the answer is object, not a figure');
    // The source of such a row is named by its id where nothing more is known of it.
    expect((await runCheck(row({ source: 'hearsay' }), find)).source).toBe('hearsay');
  });
  it('reads yes and no, and a quantity as a pure number in its base unit', async () => {
    const asked = async (output: string, printed: string) =>
      runCheck(row({ output, printed, unit: '' }), find);
    expect((await asked('fits', 'yes')).passes).toBe(true);
    expect((await asked('loose', 'no')).passes).toBe(true);
    expect((await asked('loose', 'yes')).passes).toBe(false);
    // 2 x 6.642 mm in metres.
    expect(await asked('length', '0.013284')).toMatchObject({ passes: true });
  });
  it('says of a row without a place, a way of reading or a printed text what is wrong with it', () => {
    expect(faultsOf([row({ locator: '' })])).toEqual(['x: no locator']);
    expect(faultsOf([row({ read: 'seen' as never })])).toEqual(['x: read is seen']);
    expect(faultsOf([row({ printed: 13.28 as never })])).toEqual(['x: printed is not text']);
    expect(faultsOf([row({ read: 'memory', tolerance: 1, why: 'a misprint' })])).toEqual([]);
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
  it('stands its figures on the right and its words on the left, in text and in a page', async () => {
    const t = validationTable([
      await runCheck(row({ note: 'by hand' }), find),
      await runCheck(row({ id: 'none', recipe: 'thrice' }), find),
    ]);
    const lines = t.toString().split('\n').slice(2);
    const end = (word: string): number[] =>
      lines.flatMap((l) => (l.includes(word) ? [l.indexOf(word) + word.length] : []));
    expect(lines[0]).toMatch(/^What was calculated +Book +Ours/);
    expect(lines[1]).toMatch(/^twice: n 6\.642; length +13\.28 mm/);
    expect(end('Book')).toEqual([end('13.28 mm')[0]]);
    expect(lines[2]).toContain('no recipe thrice');
    const html = (t as unknown as Record<symbol, () => Record<string, string>>)[
      Symbol.for('Jupyter.display')
    ]!()['text/html'] as string;
    expect(html).toMatch(/text-align:left[^>]*>What was calculated<\/th>/);
    expect(html).toMatch(/text-align:right[^>]*>Book<\/th>/);
    expect(html).toMatch(/text-align:right[^>]*>13\.28 mm<\/td>/);
    expect(html).toMatch(/<tr title="x: by hand"/);
  });
  it('shows a check that failed before it gave a figure, with or without a reason', async () => {
    const failed = await runCheck(row({ recipe: 'thrice' }), find);
    expect(validationTable([failed]).toMarkdown()).toContain('| no recipe thrice |');
    const { error: _, ...silent } = failed;
    expect(validationTable([silent]).toMarkdown()).toContain('| 13.28 mm |  |  |');
  });
});

describe('the published checks of the project', () => {
  let all: ReturnType<typeof publishedChecks> | undefined;
  /** All of them, run once for the tests below. */
  const allChecks = () => (all ??= publishedChecks());

  it.each(checkTopics)('%s: sound rows, all agree', { timeout: 120_000 }, async (topic) => {
    const rows = checkRows(topic);
    expect(faultsOf(rows)).toEqual([]);
    const ids = new Set(rows.map((r) => r.id));
    const outcomes = (await allChecks()).outcomes.filter((o) => ids.has(o.row.id));
    expect(
      outcomes
        .filter((o) => !o.passes)
        .map((o) => `${o.row.id}: ${o.ours ?? o.error}, printed ${o.row.printed}`),
    ).toEqual([]);
    expect(outcomes).toHaveLength(rows.length);
  });
  it('all together, or of a topic that is named right', { timeout: 120_000 }, async () => {
    const { outcomes, failed } = await allChecks();
    expect(outcomes).toHaveLength(checkTopics.reduce((n, t) => n + checkRows(t).length, 0));
    expect(failed).toBe(0);
    const moisture = await publishedChecks('moisture');
    expect(moisture.outcomes.map((o) => o.row.id)).toEqual(checkRows('moisture').map((r) => r.id));
    await expect(publishedChecks('moistur' as never)).rejects.toThrow(
      /^topic: got "moistur", takes one of "moisture", .*; did you mean "moisture"\?$/,
    );
  });
});
