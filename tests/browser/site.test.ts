// The site without a server, as its folder stands on any web server: a first visit, cells, files, a loop, two tabs, no network.
// Needs the build.
import { createServer, type Server } from 'node:http';
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { movementAcross } from '../../src/recipes/moisture/movement-across.js';
import { openBrowser } from './chromium.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const types: Record<string, string> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.woff2': 'font/woff2',
  '.webmanifest': 'application/manifest+json',
};

let folder: string;
let server: Server;
let home: string;
let browser: Browser;
let context: BrowserContext;
/** Addresses asked for that are not the site's own. */
let elsewhere: string[];
let wrong: string[];

/** Serves the folder below /hall/, as a server would that has other things too. */
const serve = (): Promise<Server> =>
  new Promise((resolve) => {
    const made = createServer((request, response) => {
      const path = new URL(request.url ?? '/', 'http://site').pathname.replace(/^\/hall\//, '');
      const file = join(folder, path === '' ? 'index.html' : decodeURIComponent(path));
      const found = existsSync(file) && statSync(file).isFile();
      if (!found) wrong.push(request.url ?? '');
      response.writeHead(found ? 200 : 404, {
        'Content-Type': types[extname(file)] ?? 'application/octet-stream',
      });
      response.end(found ? readFileSync(file) : '');
    });
    made.listen(0, '127.0.0.1', () => resolve(made));
  });

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'reckoner-site-'));
  execFileSync(process.execPath, [join(root, 'dist/cli.js'), 'site', folder]);
  browser = await openBrowser();
}, 120_000);
afterAll(async () => {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
});
beforeEach(async () => {
  wrong = [];
  elsewhere = [];
  server = await serve();
  home = `http://127.0.0.1:${(server.address() as AddressInfo).port}/hall/`;
  context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  context.on('request', (request) => {
    if (!request.url().startsWith(home) && !/^(?:blob|data):/.test(request.url()))
      elsewhere.push(request.url());
  });
});
afterEach(async () => {
  await context.close();
  server.closeAllConnections();
  server.close();
  expect(elsewhere, 'requests to elsewhere').toEqual([]);
});

const notebook = async (name = '01-first-calculations.ipynb'): Promise<Page> => {
  const page = await context.newPage();
  await page.goto(`${home}notebook.html#${name}`);
  await ready(page);
  return page;
};
const ready = async (page: Page): Promise<void> => {
  await page.waitForSelector('body[data-opened=true]', { timeout: 60_000 });
  await page.getByText('Ready', { exact: true }).first().waitFor({ timeout: 60_000 });
};
/** Writes a text into a new cell at the end and runs it; what came out. */
async function runs(page: Page, code: string): Promise<string> {
  await page.locator('.jp-Notebook-footer').click();
  await page.keyboard.insertText(code);
  await page.keyboard.press('Control+Enter');
  const output = page.locator('.jp-CodeCell').last().locator('.jp-OutputArea-output');
  await output.first().waitFor({ timeout: 60_000 });
  return output.first().innerText();
}

describe('a site without a server', () => {
  it('answers a question by its form, without the compiler', async () => {
    const page = await context.newPage();
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.goto(home);
    await page.fill('#ask', 'how much will a 640 mm Scots pine top shrink from 14 % to 9 %');
    await page
      .getByRole('option', { name: /How much will it move/ })
      .first()
      .waitFor();
    await page.keyboard.press('Enter');
    const { finalWidth } = movementAcross({ width: '640 mm', timber: 'Scots pine', from: '14 %', to: '9 %' });
    const words = `${Math.round(finalWidth.in('mm'))} mm wide`;
    const sentence = page.locator('[data-state=answer]').first();
    await expect.poll(() => sentence.innerText(), { timeout: 30_000 }).toContain(words);
    expect(asked.filter((address) => address.includes('compiler'))).toEqual([]);
  });

  it('runs cells with their types checked, and completes names', async () => {
    const page = await notebook();
    await page.locator('.jp-CodeCell').first().click();
    await page.keyboard.press('Control+Enter');
    await page.getByText('The wood comes to 9.2 % moisture content.').waitFor({ timeout: 60_000 });
    const mistake = "equilibriumMoisture({ temperature: '21 degC', humidity: 50 })";
    expect(await runs(page, mistake)).toContain('humidity: got 50 with no unit, takes a relative humidity');
    expect(wrong).toEqual([]);
  });

  it('keeps what is typed in the browser, over a reload', async () => {
    const page = await notebook();
    expect(await runs(page, 'const kept = 6 * 7; kept')).toContain('42');
    await page.keyboard.press('Control+s');
    await page.getByText('Saved').first().waitFor();
    await page.reload();
    await ready(page);
    await page.getByText('const kept = 6 * 7').first().waitFor();
  });

  it('ends a loop with its worker, says so, and goes on', async () => {
    const page = await notebook();
    await page.locator('.jp-Notebook-footer').click();
    await page.keyboard.insertText('for (;;) {}');
    await page.keyboard.press('Control+Enter');
    await page.waitForTimeout(1000);
    await page.getByRole('button', { name: /stop/i }).first().click();
    await page
      .getByText(/The loop was ended.*Run the cells above again/s)
      .first()
      .waitFor({ timeout: 20_000 });
    await ready(page);
    expect(await runs(page, '1 + 1')).toContain('2');
  });

  it('works without the network once it was visited', async () => {
    const page = await notebook();
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
    await page.close();
    const again = await notebook('12-will-it-go-in.ipynb');
    expect(
      await runs(again, "movementAcross({ width: '640 mm', timber: 'red oak', from: '8 %', to: '12 %' })"),
    ).toMatch(/mm/);
    await again.goto(home);
    await again.getByRole('link', { name: 'How much will it move?' }).first().waitFor();
  });

  it('asks when two tabs change one notebook', async () => {
    const [first, second] = [await notebook(), await notebook()];
    await runs(first, '1 + 2');
    await first.keyboard.press('Control+s');
    await first.getByText('Saved').first().waitFor();
    await runs(second, '3 + 4');
    await second.keyboard.press('Control+s');
    await second.getByText('This notebook was also changed elsewhere').waitFor({ timeout: 20_000 });
  });

  it('says that the storage is full, and loses nothing', async () => {
    const page = await context.newPage();
    await page.addInitScript(() => {
      IDBObjectStore.prototype.put = function () {
        const { transaction } = this;
        Object.defineProperty(transaction, 'error', {
          value: new DOMException('full', 'QuotaExceededError'),
        });
        transaction.abort();
        return {} as IDBRequest<IDBValidKey>;
      };
    });
    await page.goto(`${home}notebook.html#01-first-calculations.ipynb`);
    await ready(page);
    await runs(page, '1 + 2');
    await page.keyboard.press('Control+s');
    await page
      .getByTitle(/no room left for this site/)
      .first()
      .waitFor({ timeout: 20_000 });
    await page.getByText('1 + 2').first().waitFor();
  });
});
