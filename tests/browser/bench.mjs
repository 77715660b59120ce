// One server on a folder of its own and one browser, shared by all browser tests.
import { spawn } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium, firefox } from 'playwright-core';
import { root } from '../../src/launch/prepare.mjs';

const chapter = (title, label, ...cells) => ({
  nbformat: 4,
  nbformat_minor: 5,
  metadata: {
    kernelspec: { name: 'reckoner', display_name: 'TypeScript (Reckoner)', language: 'typescript' },
  },
  cells: [
    { cell_type: 'markdown', id: 'head', metadata: {}, source: `# ${title}\n\n${label}` },
    ...cells.map((source, n) => ({
      cell_type: 'code',
      id: `cell-${n}`,
      metadata: {},
      execution_count: null,
      outputs: [],
      source,
    })),
  ],
});

const hostile = (() => {
  const notebook = chapter(
    'From elsewhere',
    'A file from the net, with <img src=x onerror="window.hit=1"> and <script>window.hit=2</script> in it.\n\n[a link](javascript:window.hit=3)',
  );
  notebook.cells.push({
    cell_type: 'code',
    id: 'bad',
    metadata: { trusted: true },
    execution_count: 1,
    source: '1',
    outputs: [
      {
        output_type: 'display_data',
        metadata: {},
        data: {
          'text/html':
            '<h4>Shown</h4><script>window.hit=4</script><img src=x onerror="window.hit=5"><iframe srcdoc="<script>parent.hit=6</script>"></iframe><a href="javascript:window.hit=7">x</a><form action="http://evil.example"><input></form>',
        },
      },
      { output_type: 'display_data', metadata: {}, data: { 'application/javascript': 'window.hit=8' } },
      {
        output_type: 'display_data',
        metadata: {},
        data: {
          'image/svg+xml':
            '<svg xmlns="http://www.w3.org/2000/svg" width="20" height="20" onload="window.hit=9"><script>window.hit=10</script><rect width="20" height="20"/></svg>',
        },
      },
      {
        output_type: 'display_data',
        metadata: {},
        data: {
          'application/vnd.vegalite.v5+json': {
            data: { url: 'http://evil.example/x.csv' },
            mark: 'point',
            encoding: {},
          },
        },
      },
      {
        output_type: 'display_data',
        metadata: {},
        data: {
          'application/vnd.vegalite.v5+json': {
            data: { values: [{ a: 1 }] },
            transform: [{ calculate: "constructor.constructor('window.hit=11')()", as: 'b' }],
            mark: 'point',
            encoding: { x: { field: 'a', type: 'quantitative' } },
          },
        },
      },
    ],
  });
  return notebook;
})();

export const books = {
  '01-a-first.ipynb': chapter(
    'A first chapter',
    'It calculates a board. And more.',
    'const width = 900;\nwidth + 1',
    "equilibriumMoisture({ temperature: '21 degC', humidity: '50 %' })",
    "console.log('done');",
  ),
  '02-edit.ipynb': chapter('To be edited', 'Cells for tests.', '1 + 1', ''),
  '03-loop.ipynb': chapter('A loop', 'It never ends.', 'let kept = 41;', 'while (true) {}', 'kept + 1'),
  '04-tabs.ipynb': chapter('Two tabs', 'Both write.', "'start'"),
  '05-crash.ipynb': chapter(
    'A crash',
    'The kernel goes.',
    'const before = 7;',
    "(process as unknown as { kill(pid: number, signal: string): void }).kill(process.pid, 'SIGKILL');",
    'typeof before',
  ),
  '06-elsewhere.ipynb': hostile,
  '07-notes.ipynb': chapter(
    'Notes',
    'Results to keep.',
    "movementAcross({ width: '900 mm', timber: 'red oak', from: '8 %', to: '12 %' })",
    "equilibriumMoisture({ temperature: '21 degC', humidity: '50 %' })",
  ),
  '08-sliders.ipynb': chapter(
    'Sliders',
    'A chart that calculates in the page.',
    "import { whatIf, range } from 'joiners-reckoner';\nwhatIf(equilibriumMoisture, { humidity: range('20 %', '90 %'), temperature: range('0 degC', '40 degC') })",
  ),
  '09-chain.ipynb': chapter(
    'A chain',
    'Each cell uses the one above.',
    'let width = 600;',
    'const half = width / 2; half',
    'const quarter = half / 2; quarter',
    "'apart'",
  ),
  'survey.csv': 'board,length\nA,900 mm\n',
};

/** `npm start` on a folder. Told a `port`, it takes the place of a server that ended there. */
export async function startServer({ folder, state, port = 0, env = {} }) {
  const script = join(root, 'dist', 'server', 'serve.js');
  const args = ['--port', String(port), '--no-browser', '--no-pages', '--notebooks', folder];
  const child = spawn(process.execPath, [script, ...args], {
    stdio: ['ignore', 'pipe', 'inherit'],
    env: { ...process.env, XDG_STATE_HOME: state, XDG_CACHE_HOME: state, XDG_CONFIG_HOME: state, ...env },
  });
  const address = await new Promise((resolve, reject) => {
    let text = '';
    child.stdout.on('data', (bytes) => {
      text += bytes;
      const found = /http:\/\/\S+/.exec(text);
      if (found) resolve(found[0]);
    });
    child.on('exit', () => reject(new Error('the server did not start')));
  });
  return {
    address,
    origin: new URL(address).origin,
    port: Number(new URL(address).port),
    /** Of the process below the supervisor that answers requests; undefined while there is none. */
    serverPid() {
      const children = readFileSync(`/proc/${child.pid}/task/${child.pid}/children`, 'utf8')
        .trim()
        .split(' ');
      return children.map(Number).find((pid) => commandOf(pid).includes('--server'));
    },
    async end(signal = 'SIGTERM') {
      if (child.exitCode !== null || child.signalCode !== null) return;
      const gone = new Promise((resolve) => child.once('exit', resolve));
      if (child.kill(signal)) await gone;
    },
  };
}

function commandOf(pid) {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8');
  } catch {
    return '';
  }
}

const openers = {
  chromium: () =>
    chromium.launch({
      executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
      args: ['--no-sandbox', '--disable-gpu'],
    }),
  firefox: () =>
    firefox.launch({
      channel: 'moz-firefox',
      executablePath: fileURLToPath(new URL('firefox-relay.mjs', import.meta.url)),
      timeout: 120_000,
    }),
};

export async function openBench(browserName) {
  const folder = mkdtempSync(join(tmpdir(), 'reckoner-browser-'));
  for (const [name, content] of Object.entries(books))
    writeFileSync(join(folder, name), typeof content === 'string' ? content : JSON.stringify(content));
  const state = mkdtempSync(join(tmpdir(), 'reckoner-state-'));
  const server = await startServer({ folder, state });
  const { origin } = server;
  const opened = await fetch(`${origin}/reckoner/open`, {
    method: 'POST',
    body: JSON.stringify({ key: new URL(server.address).hash.replace('#open=', '') }),
  });
  const { key } = await opened.json();
  const browser = await openers[browserName]();
  const shots = process.env.SHOTS;
  if (shots) mkdirSync(shots, { recursive: true });
  return {
    folder,
    state,
    browserName,
    address: origin,
    key,
    browser,
    read: (name) => readFileSync(join(folder, name), 'utf8'),
    copyBook: (from, to) => cpSync(join(folder, from), join(folder, to)),
    /** A fresh browser profile with the key shown once. Errors the page meets are collected. */
    async person(options = {}) {
      const context = await browser.newContext({
        viewport: { width: 1280, height: 900 },
        acceptDownloads: true,
        ...options,
      });
      // A tab keeps its key as long as it lives; here each tab of the profile starts with it. An empty page has no storage.
      await context.addInitScript((given) => {
        if (location.protocol === 'http:' && window.origin !== 'null')
          sessionStorage.setItem('reckoner-key', given);
      }, key);
      context.setDefaultTimeout(patience);
      const page = await context.newPage();
      const troubles = [];
      page.on('pageerror', (error) => troubles.push(String(error)));
      page.on('console', (message) => message.type() === 'error' && troubles.push(message.text()));
      await page.goto(origin);
      await page.waitForSelector('.chapter');
      return {
        context,
        page,
        troubles,
        /** Opens a notebook and waits until it can be typed in and run. */
        async open(name, { kernel = true, on = page } = {}) {
          await on.goto(new URL(`/notebook/${name}`, origin).href);
          await on.waitForSelector('body[data-opened]');
          if (kernel) await on.waitForSelector('.kernel.ready', { state: 'attached' });
          return on;
        },
        shot: (name, on = page) => (shots ? on.screenshot({ path: join(shots, `${name}.png`) }) : undefined),
      };
    },
    async close() {
      await browser.close();
      await server.end();
      rmSync(folder, { recursive: true, force: true });
      rmSync(state, { recursive: true, force: true });
    },
  };
}

export const cell = (page, n) => page.locator('.jp-Cell').nth(n);
export const output = (page, n) => cell(page, n).locator('.jp-OutputArea-output');

/** A busy machine takes its time; what is measured is measured apart. */
export const patience = 60_000;

/** Puts text into a code cell the way a person does. */
export async function type(page, n, text) {
  await cell(page, n).locator('.cm-content').click();
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.press('Delete');
  await page.keyboard.insertText(text);
}

export async function until(what, check, ms = 45_000) {
  const end = Date.now() + ms;
  for (;;) {
    const got = await check();
    if (got) return got;
    if (Date.now() > end) throw new Error(`waited ${ms} ms in vain: ${what}`);
    await pause(40);
  }
}

export const pause = (ms) => new Promise((resolve) => setTimeout(resolve, ms));
