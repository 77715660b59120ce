import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { pileSheets } from '../../src/notes/pile-sheets.js';
import { surveyForm } from '../../src/notes/survey-form.js';
import { topFromPile } from '../../src/recipes/stock/top-from-pile.js';

const asked = {
  boards: [
    { name: 'A <1>', length: '1.3 m', width: '100 mm', thickness: '40 mm', endLeft: '30 mm', count: 2 },
    { name: 'B', length: '1.6 m', width: '98 mm', thickness: '40 mm', faultsAt: '700-740 mm', count: 3 },
  ],
  topLength: '1.2 m',
  width: '300 mm',
  lay: 'flat',
  thickness: '35 mm',
  curves: false,
  whatIfs: false,
  rounds: 100,
} as const;

describe('the sheets of a plan', () => {
  it('show every piece on its board, in its row and on its label, on A4 and on A3', async () => {
    const r = await topFromPile(asked);
    expect(r.pieces.length).toBeGreaterThan(2);
    for (const paper of ['A4', 'A3'] as const) {
      const html = pileSheets(r).toHtml(paper);
      expect(html).toContain(`size:${paper} landscape`);
      for (const p of r.pieces) {
        const id = p.piece.replace(/</g, '&lt;').replace(/>/g, '&gt;');
        expect(html.split(`>${id} `).length - 1).toBe(2);
        expect(html).toContain(`<b>${id}</b><span>row ${p.row}, place `);
      }
      expect(html).toContain('url(#dock)');
      expect(html).not.toContain('<1>');
      expect(html).not.toMatch(/NaN|undefined/);
    }
  });
  it('print labels alone, and save a page', async () => {
    const r = await topFromPile(asked);
    const sheets = pileSheets(r);
    expect(sheets.labelsHtml().split('class="label"').length - 1).toBe(r.pieces.length);
    const folder = mkdtempSync(join(tmpdir(), 'pile-'));
    try {
      await sheets.save(join(folder, 'top.html'), 'A3');
      expect(readFileSync(join(folder, 'top.html'), 'utf8')).toContain('size:A3 landscape');
      await expect(sheets.save(join(folder, 'top.pdf'))).rejects.toThrow(/takes a name that ends in \.html/);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
  it('refuse another result and another paper', async () => {
    expect(() => pileSheets({})).toThrow(/takes the result of topFromPile/);
    const r = await topFromPile(asked);
    expect(() => pileSheets(r).toHtml('B5' as never)).toThrow(/paper: got "B5", takes "A4" or "A3"/);
  });
});

describe('the blank survey', () => {
  it('has the columns that topFromPile takes, on paper and as CSV', async () => {
    const form = surveyForm();
    const csv = `${form.toCsv()}R1,rafter,4,1300,100,40,light,0,0,600-640; 0-1300 edge 10,0,0\n`;
    const r = await topFromPile({ ...asked, boards: csv, leastPiece: '300 mm' });
    expect(r.rowCount).toBeGreaterThan(0);
    const html = form.toHtml('A3');
    for (const name of form.toCsv().trim().split(',')) expect(html).toContain(`<th>${name}</th>`);
    expect(html).toContain('metal detector');
  });
});
