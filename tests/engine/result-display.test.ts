import { describe, expect, it } from 'vitest';
import type { ChartSpec } from '../../src/charts/chart-spec.js';
import { note } from '../../src/engine/caution.js';
import { valueLines, workingBasis } from '../../src/engine/result-display.js';
import { field } from '../../src/engine/field.js';
import { formula, variable } from '../../src/engine/formula.js';
import { out } from '../../src/engine/output.js';
import { recipe } from '../../src/engine/recipe.js';
import { resultInternals } from '../../src/engine/result.js';
import { cite } from '../../src/engine/source.js';

const common = { topic: 'stock', about: 'Made for a test of how answers are shown.', sources: [] } as const;
const inchesOf = variable('length', 'length in all', { unit: 'mm' });
const twice = formula({
  symbol: 'L',
  result: inchesOf,
  expression: '2 * l',
  variables: { l: variable('length', 'one length', { unit: 'mm' }) },
  basis: 'published',
});

/** Two boards: 254 mm is 10 in and 127 mm is 5 in, by definition of the inch. */
const plan = recipe({
  ...common,
  name: 'plan',
  title: 'A plan of cuts',
  inputs: {},
  outputs: {
    cuts: out.table(
      {
        board: out.count({ label: 'board' }),
        stockLength: out.length({ label: 'length' }),
        remark: out.text({ label: 'remark' }),
        left: out.length({ label: 'left over', optional: true }),
        never: out.length({ label: 'in no row', optional: true }),
        parts: out.table(
          { part: out.text({ label: 'part' }), at: out.length({ label: 'where', optional: true }) },
          { label: 'parts' },
        ),
      },
      { label: 'the cuts' },
    ),
    spare: out.table({ board: out.count({ label: 'board' }) }, { label: 'boards left' }),
  },
  solve: () => ({
    cuts: [
      {
        board: 1,
        stockLength: 0.254,
        remark: 'cut 2 mm over | plane',
        left: 0.127,
        parts: [{ part: 'rail', at: 0.127 }, { part: 'leg' }],
      },
      { board: 2, stockLength: 0.127, remark: 'as it is', parts: [] },
    ],
    spare: [],
  }),
  example: {},
});

describe('a table of outputs', () => {
  const answer = resultInternals(plan({}));
  const block = valueLines(answer!).tables[0]!;

  it('has no column that no row fills, and is not there without rows', () => {
    expect(block.heads).toEqual(['board', 'stock length', 'remark', 'left', 'parts']);
    expect(valueLines(answer!).tables).toHaveLength(1);
  });

  it('gives inches columns of their own in text and Markdown', () => {
    expect(block.columns).toEqual([
      'board',
      'stock length',
      'stock length (in)',
      'remark',
      'left',
      'left (in)',
      'parts',
    ]);
    expect(block.rows).toEqual([
      ['1', '254 mm', '10 in', 'cut 2 mm over | plane', '127 mm', '5 in', 'rail 127 mm; leg'],
      ['2', '127 mm', '5 in', 'as it is', '', '', ''],
    ]);
    expect(plan({}).toText()).toMatch(
      /\n {2}1 +254 mm +10 in +cut 2 mm over \| plane +127 mm +5 in +rail 127 mm; leg\n/,
    );
    expect(plan({}).toMarkdown()).toContain(
      '| 1 | 254 mm | 10 in | cut 2 mm over \\| plane | 127 mm | 5 in | rail 127 mm; leg |',
    );
  });

  it('puts inches small below the metric figure in a page, and each inner row on a line', () => {
    const html = plan({}).toHtml();
    expect(html.match(/<th[ >]/g)).toHaveLength(5);
    expect(html).toContain('>254 mm<br><small style="font-size:.85em">10 in</small></td>');
    expect(html).toContain(
      '<div style="white-space:nowrap">rail, 127\u00a0mm<br><small style="font-size:.85em">5\u00a0in</small></div><div style="white-space:nowrap">leg</div>',
    );
    // Words keep a figure and its unit on one line; an empty cell stays empty.
    expect(html).toContain('>cut 2\u00a0mm over | plane</td>');
    expect(html).toMatch(/<td [^>]*><\/td>/);
    expect(html).not.toContain('boards left');
  });

  it('lets a long inner row break', () => {
    const long = recipe({
      ...common,
      name: 'long',
      title: 'x',
      inputs: {},
      outputs: {
        cuts: out.table(
          { parts: out.table({ part: out.text({ label: 'part' }) }, { label: 'parts' }) },
          { label: 'cuts' },
        ),
      },
      solve: () => ({ cuts: [{ parts: [{ part: 'x'.repeat(30) }] }, { parts: [{ part: 'y'.repeat(31) }] }] }),
      example: {},
    });
    expect(long({}).toHtml()).toContain(`<div style="white-space:nowrap">${'x'.repeat(30)}</div>`);
    expect(long({}).toHtml()).toContain(`<div>${'y'.repeat(31)}</div>`);
  });

  it('scrolls by itself where it is wider than the page', () => {
    expect(plan({}).toHtml()).toContain('<div style="overflow-x:auto"><table');
  });

  it('stands numbers on the right and words on the left', () => {
    const html = plan({}).toHtml();
    expect(html).toMatch(/text-align:right[^>]*>stock length</);
    expect(html).toMatch(/text-align:left[^>]*>remark</);
    expect(html).toMatch(/text-align:left[^>]*>parts</);
  });
});

describe('a result without workings, inputs, lines, sources or a chart', () => {
  it('shows what there is and no empty heading', async () => {
    const result = plan({});
    for (const text of [result.toText(), result.toMarkdown()]) {
      expect(text).not.toMatch(/Workings|Sources|Cautions/);
      expect(text).toContain('the cuts');
    }
    expect(result.toMarkdown()).not.toMatch(/\| (Given|\*\*Answer\*\*) \|/);
    expect(result.toHtml()).not.toMatch(/>(Given|Answer)</);
    const bundle = await (result as unknown as Record<symbol, () => Promise<Record<string, unknown>>>)[
      Symbol.for('Jupyter.display')
    ]!();
    expect(Object.keys(bundle).sort()).toEqual([
      'application/vnd.joiners-reckoner.result+json',
      'text/html',
      'text/markdown',
      'text/plain',
    ]);
  });
});

describe('a result with a chart and a limit', () => {
  const picture: ChartSpec = {
    $schema: 'https://vega.github.io/schema/vega-lite/v6.json',
    data: { values: [{ x: 1 }] },
    mark: 'point',
    encoding: { x: { field: 'x', type: 'quantitative' } },
  };
  const drawn = recipe({
    ...common,
    name: 'drawn',
    title: 'Drawn',
    inputs: { n: field.count({ label: 'n' }) },
    outputs: { n: out.count({ label: 'n' }) },
    solve: (given) => ({ n: given.n }),
    chart: () => picture,
    limits: [
      { when: (given) => given.n > 5, message: 'beyond the table', source: cite('fpl-gtr-190', 'Table 4-2') },
      { when: (given) => given.n > 9, message: (given) => `${given.n} is beyond all tables` },
    ],
    example: { n: 1 },
  });
  it('carries the chart as data and as a picture', async () => {
    const bundle = await (
      drawn({ n: 1 }) as unknown as Record<symbol, () => Promise<Record<string, unknown>>>
    )[Symbol.for('Jupyter.display')]!();
    expect(bundle['application/vnd.vegalite.v5+json']).toEqual(picture);
    expect(bundle['image/svg+xml']).toMatch(/^<svg/);
  });
  it('warns above the limit and not at it, with the source where there is one', () => {
    expect(drawn({ n: 5 }).cautions).toEqual([]);
    expect(drawn({ n: 6 }).toMarkdown()).toMatch(
      /- \*\*Outside the published range:\*\* Beyond the table\. \(.*, Table 4-2\)/,
    );
    expect(drawn({ n: 10 }).cautions.map((c) => c.text)).toEqual([
      'beyond the table',
      '10 is beyond all tables',
    ]);
  });
  it('is known as one, and nothing else is', () => {
    expect(resultInternals(drawn({ n: 1 }))?.name).toBe('drawn');
    for (const other of [5, null, undefined, {}, 'drawn']) expect(resultInternals(other)).toBeUndefined();
  });
});

describe('a line of the workings', () => {
  const double = recipe({
    ...common,
    name: 'double',
    title: 'Twice a length',
    inputs: { length: field.length({ label: 'length', symbol: 'l' }) },
    outputs: { total: out.length({ label: 'total', symbol: 'L' }) },
    solve: (given, trace) => {
      const total = trace.evaluate(twice, { l: given.length });
      trace.note('looked up in the table', cite('fpl-gtr-190', 'Table 4-2'));
      trace.note('rounded to what a rule shows');
      return { total };
    },
    cautions: [note('measure twice')],
    example: { length: '1 m' },
  });

  it('names its basis in brackets, and has none where there is nothing to name', () => {
    const result = double({ length: '127 mm' });
    const [line, looked, rounded] = result.workings;
    expect(workingBasis(line!)).toBe('');
    expect(workingBasis(looked!)).toContain('Table 4-2');
    expect(workingBasis(rounded!)).toBe('');
    expect(result.toMarkdown()).toMatch(/- length in all\n/);
    expect(result.toHtml()).toMatch(/<li>length in all<div>/);
    expect(result.toMarkdown()).toContain('- looked up in the table');
  });

  it('is one of several forms of one result', () => {
    const result = double({ length: '127 mm' });
    expect(result.toText()).toContain('L = 2 × 127 mm = 254 mm');
    expect(result.toText()).toContain('Note: Measure twice.');
    expect(result.toHtml()).toContain('<strong>254 mm</strong></td><td');
  });
});
