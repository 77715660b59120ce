import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import { afterAll, describe, expect, it } from 'vitest';
import { cutList } from '../../src/notes/cut-list.js';
import { InputError } from '../../src/units/input-error.js';
import { boardMeasure } from '../../src/recipes/stock/board-measure.js';
import { cuttingPlan } from '../../src/recipes/stock/cutting-plan.js';

const folder = mkdtempSync(join(tmpdir(), 'reckoner-cuts-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const parts = [
  { name: 'leg', length: '860 mm', count: 4 },
  { name: '=rail|<b>', length: '1780 mm', count: 2 },
  { name: 'short rail', length: '520 mm', count: 4 },
];
const result = await cuttingPlan({
  parts,
  stock: [{ name: 'batten', length: '2700 mm', count: 'as needed' }],
  kerf: '3 mm',
  keepOffcut: '300 mm',
});
const list = cutList(result);

describe('the cut list', () => {
  it('sets each stop once, longest first, and cuts every part', () => {
    const lengths = list.sheet.runs.map((r) => r.length);
    expect(lengths).toEqual([...new Set(lengths)].sort((a, b) => b - a));
    expect(list.sheet.runs.map((r) => [r.pieces, r.names.map((n) => n.count)])).toEqual([
      [2, [2]],
      [4, [4]],
      [4, [4]],
    ]);
    // Every board named in a run holds that piece as often as the run says.
    for (const run of list.sheet.runs) {
      expect(run.from.reduce((s, f) => s + f.count, 0)).toBe(run.pieces);
      for (const f of run.from)
        expect(
          result.plan
            .find((b) => b.board === f.board)
            ?.pieces.filter((p) => Math.abs(p.length.value - run.length) < 1e-9).length,
        ).toBe(f.count);
    }
    expect(list.sheet.rows.flatMap((r) => r.numbers).sort((a, b) => a - b)).toEqual(
      result.plan.map((b) => b.board),
    );
  });

  it('is a CSV with a line a piece, safe in a spreadsheet', () => {
    const { data } = Papa.parse<Record<string, string>>(list.toCsv(), { header: true, skipEmptyLines: true });
    expect(data).toHaveLength(10);
    expect(data.filter((d) => d['part'] === 'leg').map((d) => d['length_mm'])).toEqual([
      '860',
      '860',
      '860',
      '860',
    ]);
    expect(data.find((d) => d['part']?.includes('rail|'))?.['part']).toBe("'=rail|<b>");
    expect(data.find((d) => d['part'] === 'leg')?.['length_in']).toBe('33 7/8');
  });

  it('escapes names in Markdown and HTML, and is a whole page that stands alone', () => {
    expect(list.toMarkdown()).toContain('=rail\\|&lt;b&gt; × 2');
    const html = list.toHtml();
    expect(html).toMatch(/^<!doctype html>/);
    expect(html).not.toContain('<b>');
    expect(html).not.toMatch(/src=|href=|https?:/);
    // A board's parts are drawn to scale: shares of the board's own length.
    expect(html).toContain(`width:${Number(((100 * 860) / 2700).toFixed(3))}%`);
  });

  it('writes each form whole, and refuses other endings and other results', async () => {
    for (const ending of ['md', 'html', 'csv']) await list.save(join(folder, `cuts.${ending}`));
    expect(readdirSync(folder).sort()).toEqual(['cuts.csv', 'cuts.html', 'cuts.md']);
    expect(readFileSync(join(folder, 'cuts.md'), 'utf8')).toBe(list.toMarkdown());
    await expect(list.save(join(folder, 'cuts.pdf'))).rejects.toBeInstanceOf(InputError);
    await expect(list.save(3 as never)).rejects.toBeInstanceOf(InputError);
    writeFileSync(join(folder, 'keep.md'), 'old');
    await expect(list.save(join(folder, 'none', 'cuts.md'))).rejects.toThrow(/folder/);
    for (const wrong of [
      undefined,
      5,
      {},
      cuttingPlan(cuttingPlan.example),
      boardMeasure(boardMeasure.example),
    ])
      expect(() => cutList(wrong)).toThrow(InputError);
  });
});
