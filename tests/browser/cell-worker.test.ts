// Cells in a browser's worker: the conformance cases that tests/kernel/conformance.test.ts runs in Node, completion, an
// interrupt, a recipe. Needs the build.
import { readFileSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type Plugin } from 'esbuild';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { FromWorker, ToWorker } from '../../src/kernel/browser-host/worker-protocol.js';
import { checkCell } from '../kernel/check-cell.js';
import { conformanceCases } from '../kernel/conformance-cases.js';
import { openBrowser } from './chromium.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const dist = join(root, 'dist');
const site = 'http://cells.test';

/** In a browser the tables come with the page. */
const tablesOutside: Plugin = {
  name: 'tables-outside',
  setup: ({ onLoad }) =>
    onLoad({ filter: /[\\/]src[\\/]engine[\\/]data-folder\.ts$/ }, () => ({
      loader: 'js',
      contents: `
        const missing = (name) => Object.assign(new Error('no file ' + name), { code: 'ENOENT' });
        export const dataRevision = () => 0;
        export function packageFolder() { throw missing('package.json'); }
        export function readDataFile(name) { if (!Object.hasOwn(reckonerTables, name)) throw missing(name); return reckonerTables[name]; }
        export function readOwnFile(name) { throw missing(name); }`,
    })),
};

async function workerScript(): Promise<string> {
  const data = readdirSync(join(root, 'data')).filter((name) => /\.(?:csv|json)$/.test(name));
  const tables = Object.fromEntries(
    data.map((name) => [name, readFileSync(join(root, 'data', name), 'utf8')]),
  );
  const { outputFiles } = await build({
    stdin: {
      resolveDir: root,
      loader: 'ts',
      contents: `
        import { serveCells } from './src/kernel/browser-host/cell-worker.js';
        import * as recipes from './src/recipes/moisture/movement-across.js';
        serveCells(self as never, { 'joiners-reckoner': () => Promise.resolve(recipes) });`,
    },
    bundle: true,
    write: false,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    logLevel: 'error',
    banner: { js: `globalThis.reckonerTables = ${JSON.stringify(tables)};` },
    plugins: [tablesOutside],
  });
  return outputFiles[0]!.text;
}

/** The compiler, the library's types and the package's declarations, as a page sends them to its worker. */
function parts(): Extract<ToWorker, { kind: 'start' }> {
  const declarations = readdirSync(dist, { recursive: true, encoding: 'utf8' }).filter((path) =>
    path.endsWith('.d.ts'),
  );
  const files = Object.fromEntries(
    declarations.map((path) => [`/types/${path}`, readFileSync(join(dist, path), 'utf8')]),
  );
  const own = (name: string): string => readFileSync(join(dist, 'kernel', name), 'utf8');
  files['/types/lib.d.ts'] = own('lib.d.ts');
  files['/types/names.json'] = own('names.json');
  return { kind: 'start', compiler: own('compiler.cjs'), files };
}

let browser: Browser;
let page: Page;
beforeAll(async () => {
  const script = await workerScript();
  const start = JSON.stringify(parts());
  browser = await openBrowser();
  page = await browser.newPage();
  await page.route(`${site}/**`, (route) => {
    const path = relative('/', new URL(route.request().url()).pathname);
    if (path === 'worker.js') return route.fulfill({ contentType: 'text/javascript', body: script });
    if (path === 'start.json') return route.fulfill({ contentType: 'application/json', body: start });
    return route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>cells</title>' });
  });
  await page.goto(`${site}/`);
}, 240_000);
afterAll(() => browser.close());

/** A worker on the page: `ask` sends a message and resolves to those that come back for it, up to the last. */
async function openWorker(): Promise<{
  ask(message: ToWorker): Promise<FromWorker[]>;
  send(message: ToWorker): Promise<void>;
  close(): Promise<void>;
}> {
  const handle = await page.evaluateHandle(async () => {
    const worker = new Worker('/worker.js');
    const heard: FromWorker[] = [];
    const waiting: { id: number | undefined; done: (found: FromWorker[]) => void }[] = [];
    const of = (id: number | undefined): FromWorker[] =>
      heard.filter((m) => ('id' in m ? m.id : undefined) === id);
    worker.onmessage = ({ data }: MessageEvent<FromWorker>) => {
      heard.push(data);
      if (data.kind === 'output') return;
      const id = 'id' in data ? data.id : undefined;
      for (const wait of waiting.filter((w) => w.id === id)) wait.done(of(id));
    };
    const ask = (message: ToWorker): Promise<FromWorker[]> =>
      new Promise((done, failed) => {
        worker.onerror = (event) => failed(new Error(event.message));
        waiting.push({ id: 'id' in message ? message.id : undefined, done });
        worker.postMessage(message);
      });
    await ask((await (await fetch('/start.json')).json()) as ToWorker);
    return { ask, send: (message: ToWorker) => worker.postMessage(message), close: () => worker.terminate() };
  });
  return {
    ask: (message) => handle.evaluate((worker, sent) => worker.ask(sent), message),
    send: (message) => handle.evaluate((worker, sent) => worker.send(sent), message),
    close: () => handle.evaluate((worker) => worker.close()),
  };
}

describe("cells in a browser's worker", () => {
  it.each(conformanceCases)('$name', async ({ cells }) => {
    const worker = await openWorker();
    let id = 0;
    for (const [code, expected] of cells) {
      const heard = await worker.ask({ kind: 'run', id: ++id, code });
      const last = heard.at(-1);
      if (last?.kind !== 'ran') throw new Error(`no outcome of ${code}`);
      const outputs = heard.flatMap((message) => (message.kind === 'output' ? [message.output] : []));
      checkCell(code, expected, last.outcome, outputs);
    }
    await worker.close();
  });

  it('recipes work, and explain their inputs', async () => {
    const worker = await openWorker();
    const inputs = "{ width: '640 mm', timber: 'white oak', cut: 'flat-sawn', from: '8 %', to: '12 %' }";
    // Wood handbook FPL-GTR-190, Eq. 13-2: 640 mm x 0.00365 x 4 = 9.34 mm.
    const heard = await worker.ask({
      kind: 'run',
      id: 1,
      code: `movementAcross(${inputs}).change.toString()`,
    });
    expect(JSON.stringify(heard)).toContain("'9.34 mm");
    const refused = await worker.ask({ kind: 'run', id: 2, code: 'movementAcross({ width: 640 })' });
    expect(JSON.stringify(refused.at(-1))).toContain('width: got 640 with no unit');
    const completed = await worker.ask({ kind: 'complete', id: 3, code: 'movementAcr', cursor: 11 });
    expect(JSON.stringify(completed)).toContain('movementAcross');
    const inspected = await worker.ask({ kind: 'inspect', id: 4, code: 'movementAcross', cursor: 3 });
    expect(JSON.stringify(inspected)).toContain('- `width`');
    await worker.close();
  });

  it('tells which cells are stale, and stops one that waits', async () => {
    const worker = await openWorker();
    await worker.ask({ kind: 'run', id: 1, code: 'let width = 600', cellId: 'a' });
    await worker.ask({ kind: 'run', id: 2, code: 'width * 2', cellId: 'b' });
    const again = (await worker.ask({ kind: 'run', id: 3, code: 'let width = 700', cellId: 'a' })).at(-1);
    expect(again).toMatchObject({ kind: 'ran', cells: { b: { stale: true, uses: ['width'] } } });
    const running = worker.ask({ kind: 'run', id: 4, code: 'await new Promise(() => {})' });
    await new Promise((done) => setTimeout(done, 300));
    await worker.send({ kind: 'interrupt' });
    expect((await running).at(-1)).toMatchObject({ outcome: { error: { ename: 'Interrupted' } } });
    expect(JSON.stringify(await worker.ask({ kind: 'run', id: 5, code: 'width' }))).toContain('700');
    await worker.close();
  });
});
