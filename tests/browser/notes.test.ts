import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { boardMeasure, buildNotes, cutterMarks, movementAcross, stripCount } from '../../src/index.js';
import { openBrowser } from './chromium.js';

let browser: Browser;
let folder: string;
let address: string;
let context: BrowserContext;
let page: Page;
let faults: string[];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reckoner-browser-'));
  browser = await openBrowser();
  const file = join(folder, 'counter.html');
  await buildNotes('Tea counter', { date: '2026-03-08' })
    .addText('## Why\n\nThe hall has none.')
    .add(stripCount(stripCount.example), 'Measured twice.')
    .add(movementAcross(movementAcross.example))
    .add(cutterMarks(cutterMarks.example))
    .add(boardMeasure(boardMeasure.example))
    .save(file);
  address = pathToFileURL(file).href;
});
afterAll(async () => {
  await browser.close();
  await rm(folder, { recursive: true });
});
beforeEach(async () => {
  context = await browser.newContext({
    offline: true,
    viewport: { width: 900, height: 1200 },
    permissions: ['clipboard-read', 'clipboard-write'],
  });
  page = await context.newPage();
  faults = [];
  page.on('pageerror', (e) => faults.push(e.message));
  page.on('console', (m) => m.type() === 'error' && faults.push(m.text()));
  page.on('request', (r) => !/^(file|data):/.test(r.url()) && faults.push(`asked for ${r.url()}`));
  await page.goto(address);
});
afterEach(async () => {
  await context.close();
  expect(faults).toEqual([]);
});

describe('a build note opened from a file, with no network', () => {
  it.each([
    ['text', /^width of a strip once jointed: s = r − j\ns = 48 mm − 3 mm = 45 mm$/],
    ['LaTeX', /^\\begin\{aligned\}\ns &= r-j \\\\\ns &= .*45.*\n\\end\{aligned\}$/],
    ['Markdown', /^width of a strip once jointed:\n\n\$\$s = r-j\$\$\n\n\$\$s = .*45.*\$\$$/],
  ])('copies a line of the workings as %s', async (kind, wanted) => {
    await page.locator('.copy').first().getByRole('button', { name: kind }).click();
    await expect.poll(() => page.evaluate(() => navigator.clipboard.readText())).toMatch(wanted);
  });
  it('typesets with fonts of its own', async () => {
    const fonts = await page.evaluate(async () => {
      await document.fonts.ready;
      return [...document.fonts].filter((f) => f.status === 'loaded').map((f) => f.family);
    });
    expect(fonts.some((f) => f.includes('KaTeX_Main'))).toBe(true);
  });
  it('leads from its contents and its source numbers to what they name', async () => {
    const dead = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLAnchorElement>('a[href^="#"]')]
        .map((a) => a.getAttribute('href')?.slice(1) ?? '')
        .filter((id) => document.getElementById(id) === null),
    );
    expect(dead).toEqual([]);
  });
  it('fits a phone', async () => {
    await page.setViewportSize({ width: 360, height: 740 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
  });
});

describe('on paper', () => {
  it('leaves the buttons out and numbers its sheets', async () => {
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('button:visible').count()).toBe(0);
    expect(
      await page.evaluate(() =>
        [...document.styleSheets].some((s) =>
          [...s.cssRules].some((r) => r.cssText.includes('counter(pages)')),
        ),
      ),
    ).toBe(true);
  });
  it.each(['A4', 'Letter'] as const)(
    'keeps headings with what follows, and tables and charts whole, on %s',
    async (format) => {
      // A page of content is as high as the sheet less its margins (17 and 19 mm), at 96 px to the inch.
      const sheet = ((format === 'A4' ? 297 : 279.4) - 36) * (96 / 25.4);
      const width = ((format === 'A4' ? 210 : 215.9) - 32) * (96 / 25.4);
      await page.setViewportSize({ width: Math.round(width), height: Math.round(sheet) });
      await page.emulateMedia({ media: 'print' });
      const tall = await page.evaluate(
        (limit) =>
          [...document.querySelectorAll('figure, tr, .workings li, .keep')].filter(
            (x) => x.getBoundingClientRect().height > limit,
          ).length,
        sheet,
      );
      expect(tall).toBe(0);
      const rules = await page.evaluate(() =>
        ['figure', 'tr', '.workings li', '.keep', 'h2'].map((q) => {
          const style = getComputedStyle(document.querySelector(q) ?? document.body);
          return q === 'h2' ? style.breakAfter : style.breakInside;
        }),
      );
      expect(rules).toEqual(['avoid', 'avoid', 'avoid', 'avoid', 'avoid']);
      const pdf = (await page.pdf({ format })).toString('latin1');
      expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length).toBeGreaterThan(2);
    },
  );
});
