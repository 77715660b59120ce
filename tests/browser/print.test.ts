import { execFileSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { benchCards } from '../../src/notes/bench-cards.js';
import { templateSheets } from '../../src/notes/template-sheets.js';
import { halfLap } from '../../src/recipes/joinery/half-lap.js';
import { openBrowser } from './chromium.js';

let browser: Browser;
beforeAll(async () => {
  browser = await openBrowser();
});
afterAll(async () => browser.close());
const folder = mkdtempSync(join(tmpdir(), 'reckoner-print-'));

/** Prints a page as Chromium does, its own paper size kept, and gives the file. */
async function printed(html: string, name: string): Promise<string> {
  const page = await browser.newPage();
  await page.setContent(html);
  const file = join(folder, `${name}.pdf`);
  writeFileSync(file, await page.pdf({ preferCSSPageSize: true }));
  await page.close();
  return file;
}

/** Widths in mm of the filled shapes of a sheet, as Poppler reads them. */
function shapeWidths(pdf: string, sheet: number): number[] {
  const svg = execFileSync('pdftocairo', ['-svg', '-f', String(sheet), '-l', String(sheet), pdf, '-'], {
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  });
  return [...svg.matchAll(/<path [^>]*\bd="([^"]+)"[^>]*>/g)].map(([tag, d = '']) => {
    const [a = 1] = (/matrix\(([^)]+)\)/.exec(tag)?.[1] ?? '1').split(',').map(Number);
    const xs = [...d.matchAll(/[ML] (-?[\d.]+) -?[\d.]+/g)].map((m) => Number(m[1]) * a);
    return ((Math.max(...xs) - Math.min(...xs)) / 72) * 25.4;
  });
}

describe('a template at full size', () => {
  const lap = halfLap({ widthA: '70 mm', widthB: '45 mm', thickness: '45 mm' });

  it.each([
    ['A4', 210, 297],
    ['Letter', 215.9, 279.4],
  ] as const)('has a bar of 50 mm on %s, to 0.2 mm', async (paper, wide, high) => {
    const pdf = await printed(await templateSheets(lap, { paper }).toHtml(), `template-${paper}`);
    const size = /Page size:\s+([\d.]+) x ([\d.]+) pts/.exec(
      execFileSync('pdfinfo', [pdf], { encoding: 'utf8' }),
    );
    expect((Number(size?.[1]) / 72) * 25.4).toBeCloseTo(wide, 0);
    expect((Number(size?.[2]) / 72) * 25.4).toBeCloseTo(high, 0);
    const bars = shapeWidths(pdf, 1).filter((w) => Math.abs(w - 50) < 5);
    expect(
      bars.some((w) => Math.abs(w - 50) < 0.2),
      bars.join(', '),
    ).toBe(true);
    // And the drawing itself: piece B is 45 mm wide between its shoulders.
    expect(shapeWidths(pdf, 1).some((w) => Math.abs(w - 45) < 0.2)).toBe(true);
    expect(execFileSync('pdftotext', [pdf, '-'], { encoding: 'utf8' })).toMatch(/at 100 %[\s\S]*fit to page/);
  });

  it('goes over several sheets with marks to join them', async () => {
    const wide = halfLap({ widthA: '180 mm', widthB: '150 mm', thickness: '45 mm' });
    const html = await templateSheets(wide).toHtml();
    const sheets = html.match(/class="sheet"/g)?.length ?? 0;
    expect(sheets).toBeGreaterThan(1);
    const pdf = await printed(html, 'tiled');
    expect(Number(/Pages:\s+(\d+)/.exec(execFileSync('pdfinfo', [pdf], { encoding: 'utf8' }))?.[1])).toBe(
      sheets,
    );
    for (let i = 1; i <= sheets; i++)
      expect(
        shapeWidths(pdf, i).some((w) => Math.abs(w - 50) < 0.2),
        `sheet ${i}`,
      ).toBe(true);
    expect(execFileSync('pdftotext', [pdf, '-'], { encoding: 'utf8' })).toMatch(/sheet A1[\s\S]*sheet B1/);
  });
});

describe('bench cards in print', () => {
  it.each(['A4', 'A5', 'Letter'] as const)(
    'have no letter under 20 pt on %s, and one sheet a card',
    async (paper) => {
      const steps = Array.from({ length: 6 }, (_, i) => `stop ${1735 - 100 * i} mm: long rail × 2`);
      const cards = benchCards(
        'Tea counter',
        [
          {
            title: 'Cut the frame',
            numbers: [{ label: 'kerf', value: '3 mm' }],
            steps,
            cautions: ['Guard on.'],
          },
          {
            title: 'Flatten',
            numbers: [{ label: 'down to', value: '40 mm' }],
            steps: ['flat face first'],
            cautions: [],
          },
        ],
        { paper },
      );
      const pdf = await printed(await cards.toHtml(), `cards-${paper}`);
      // A long list of steps goes over two cards on A5.
      expect(cards.cards).toHaveLength(paper === 'A5' ? 3 : 2);
      expect(Number(/Pages:\s+(\d+)/.exec(execFileSync('pdfinfo', [pdf], { encoding: 'utf8' }))?.[1])).toBe(
        cards.cards.length,
      );
      // Poppler's box of a word is about 1.16 times its size high in this face; the size itself stands in the fonts of the page.
      const words = [
        ...execFileSync('pdftotext', ['-bbox', pdf, '-'], { encoding: 'utf8' }).matchAll(
          /yMin="([\d.]+)" xMax="[\d.]+" yMax="([\d.]+)">([^<]+)</g,
        ),
      ].map((m) => Number(m[2]) - Number(m[1]));
      expect(words.length).toBeGreaterThan(20);
      expect(Math.min(...words)).toBeGreaterThanOrEqual(20);
    },
  );
});
