// The package in a real page: bundled by esbuild, opened from disk in Chromium, and its answers those of Node.
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { readFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { cuttingPlan, movementAcross, sweep } from '../../src/index.js';
import { buildBrowserModules } from '../../src/launch/browser-modules.mjs';
import { openBrowser } from './chromium.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'reckoner-page-'));
const types: Readonly<Record<string, string>> = { '.js': 'text/javascript', '.wasm': 'application/wasm' };
let browser: Browser;
let server: Server;
let address: string;

beforeAll(async () => {
  await buildBrowserModules(root);
  await build({
    stdin: {
      contents: `import { movementAcross, cuttingPlan, sweep, range, length } from './index.js';
        globalThis.reckoner = { movementAcross, cuttingPlan, sweep, range, length };`,
      resolveDir: join(root, 'dist/browser'),
    },
    bundle: true,
    format: 'esm',
    outfile: join(folder, 'page.js'),
  });
  copyFileSync(join(root, 'dist/browser/highs.wasm'), join(folder, 'highs.wasm'));
  server = createServer((request, response) => {
    const name = (request.url ?? '/').slice(1);
    if (name === '') {
      response.setHeader('content-type', 'text/html').end('<script type="module" src="page.js"></script>');
      return;
    }
    void readFile(join(folder, name)).then(
      (bytes) => response.setHeader('content-type', types[extname(name)] ?? 'text/plain').end(bytes),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const at = server.address() as { port: number };
  address = `http://127.0.0.1:${at.port}/`;
  browser = await openBrowser();
});
afterAll(async () => {
  await browser.close();
  server.close();
  rmSync(folder, { recursive: true, force: true });
});

it('calculates, sweeps, refuses and searches as in Node', async () => {
  const page = await browser.newPage();
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(error.message));
  await page.goto(address);
  await page.waitForFunction('globalThis.reckoner !== undefined');
  const run = (code: string): Promise<unknown> =>
    page.evaluate(`(async () => { const r = globalThis.reckoner; ${code} })()`);
  const board = { width: '900 mm', timber: 'red oak', from: '8 %', to: '12 %' };
  expect(await run(`return r.movementAcross(${JSON.stringify(board)}).toJSON()`)).toEqual(
    movementAcross(board).toJSON(),
  );
  expect(
    await run(
      `return (await r.sweep(r.movementAcross, { ...${JSON.stringify(board)}, width: r.range('600 mm', '900 mm', 4) })).toCSV()`,
    ),
  ).toBe((await sweep(movementAcross, { ...board, width: '600 mm .. 900 mm' }, { steps: 4 })).toCSV());
  expect(
    await run(
      `try { r.movementAcross({ ...${JSON.stringify(board)}, width: 900 }) } catch (e) { return e.message }`,
    ),
  ).toBe('movementAcross: width: got 900 with no unit, takes a length such as "900 mm"; write "900 mm"');
  expect(await run(`return r.length('900 mm') > r.length('35 in')`)).toBe(true);
  const plan = await cuttingPlan(cuttingPlan.example);
  const there = (await run(
    `return (await r.cuttingPlan(${JSON.stringify(cuttingPlan.example)})).toJSON()`,
  )) as ReturnType<typeof plan.toJSON>;
  expect(there.outputs).toEqual(JSON.parse(JSON.stringify(plan.toJSON().outputs)));
  expect(faults).toEqual([]);
}, 120_000);
