import { execFileSync } from 'node:child_process';
import { mkdir, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { notebookOf, openBench, type Bench } from './server-bench.js';

// A page maker that keeps to the real one's messages but calculates nothing: `crash` ends the process, `fail` fails as a cell would.
const maker = `
import { spawn } from 'node:child_process';
import { appendFileSync, readFileSync } from 'node:fs';
process.on('message', ({ file, name }) => {
  const text = readFileSync(file, 'utf8');
  appendFileSync(process.argv[2], name + '\\n');
  process.send({ kind: 'cell', name, cell: 1, cells: 2 });
  if (text.includes('crash')) process.exit(7);
  if (text.includes('hang')) {
    appendFileSync(process.argv[2], 'child ' + spawn('sleep', ['600']).pid + '\\n');
    for (;;);
  }
  const failure = text.includes('fail') ? 'cell 1, line 1: width: got nothing' : undefined;
  setTimeout(() => process.send({ kind: 'page', name, html: '<html><body>\\n<main>' + name + ' ' + text.length + '</main></body></html>', failure, seconds: 0.1 }), 120);
});
process.on('disconnect', () => process.exit(0));
`;

let above = '';
let bench: Bench;
let said: string[] = [];
const open = async (notebooks?: string, more: object = {}): Promise<Bench> => {
  const pages = {
    maker: join(above, 'maker.mjs'),
    makerArguments: [join(above, 'made.txt')],
    cache: join(above, 'pages'),
    program: join(above, 'program'),
    ...more,
  };
  return openBench({
    pages,
    log: (line) => void said.push(line),
    knownNotebooks: join(above, 'known'),
    ...(notebooks === undefined ? {} : { notebooks }),
  });
};
const made = async (): Promise<string[]> =>
  (await readFile(join(above, 'made.txt'), 'utf8').catch(() => '')).split('\n').filter(Boolean);
/** Puts a notebook into the folder that this user has run before. */
const put = async (name: string, ...cells: string[]): Promise<void> => {
  await putUnknown(name, ...cells);
  expect((await bench.ask('POST', '/reckoner/run', { path: name })).status).toBe(204);
};
const putUnknown = (name: string, ...cells: string[]): Promise<void> =>
  writeFile(join(bench.folder, name), JSON.stringify(notebookOf(...cells)));

beforeEach(async () => {
  above = await mkdtemp(join(tmpdir(), 'reckoner-pages-'));
  await writeFile(join(above, 'maker.mjs'), maker);
  await mkdir(join(above, 'pages'));
  said = [];
  bench = await open();
});
afterEach(async () => {
  await bench.close();
  await rm(above, { recursive: true, force: true });
});

describe('finished pages', () => {
  it('are made in order, reported cell by cell, and served', async () => {
    await put('02-b.ipynb', 'b');
    await put('01-a.ipynb', 'a');
    expect(await bench.server.index?.makeAll()).toBe(2);
    expect(await made()).toEqual(['01-a.ipynb', '02-b.ipynb']);
    expect(said).toEqual([
      '  01-a.ipynb: cell 1 of 2',
      '  01-a.ipynb: page written in 0.1 s',
      '  02-b.ipynb: cell 1 of 2',
      '  02-b.ipynb: page written in 0.1 s',
      '2 of 2 notebooks have a finished page.',
    ]);
    const page = await bench.ask('GET', '/pages/01-a.html');
    expect(page.status).toBe(200);
    expect(page.body['text']).toContain('<main>01-a.ipynb');
    expect(page.headers.get('content-security-policy')).toContain("default-src 'none'");
    expect(page.headers.get('content-security-policy')).not.toContain('script-src');
  });

  it('a page asked for early is waited for, and goes first', async () => {
    for (const name of ['01-a', '02-b', '03-c', '04-d']) await put(`${name}.ipynb`, name);
    const all = bench.server.index?.makeAll();
    await new Promise((resolve) => setTimeout(resolve, 30));
    expect((await bench.ask('GET', '/pages/04-d.html')).body['text']).toContain('04-d.ipynb');
    await all;
    expect((await made()).indexOf('04-d.ipynb')).toBeLessThan(3);
    expect(await made()).toHaveLength(4);
  });

  it('are kept until the notebook changes', async () => {
    await put('01-a.ipynb', 'a');
    await bench.server.index?.makeAll();
    const again = await open(bench.folder);
    await again.server.index?.makeAll();
    expect(await made()).toHaveLength(1);
    await put('01-a.ipynb', 'a', 'more');
    expect((await again.ask('GET', '/pages/01-a.html')).status).toBe(200);
    expect(await made()).toHaveLength(2);
    await again.close();
  });

  it('one that fails is shown as far as it came, named, and not kept; one that kills its process does not stop the rest', async () => {
    await put('01-a.ipynb', 'crash');
    await put('02-b.ipynb', 'fail');
    await put('03-c.ipynb', 'good');
    expect(await bench.server.index?.makeAll()).toBe(1);
    expect(said).toContainEqual(
      expect.stringMatching(/01-a\.ipynb: stopped\. the process that ran it ended \(7\)/),
    );
    expect(said).toContain('  02-b.ipynb: stopped. cell 1, line 1: width: got nothing');
    expect(said.at(-1)).toBe('2 of 3 notebooks have no finished page.');
    expect((await bench.ask('GET', '/pages/01-a.html')).status).toBe(500);
    expect((await bench.ask('GET', '/pages/02-b.html')).body['text']).toContain('02-b.ipynb');
    expect((await bench.ask('GET', '/pages/03-c.html')).status).toBe(200);
    expect((await bench.ask('GET', '/pages/none.html')).status).toBe(404);
  });

  it('a cell over the limit is ended with what it started, reported, and the queue goes on', async () => {
    await bench.close();
    bench = await open(undefined, { cellLimitMs: 700 });
    await put('01-a.ipynb', 'hang');
    await put('02-b.ipynb', 'good');
    expect(await bench.server.index?.makeAll()).toBe(1);
    const states = bench.server.index?.states() ?? [];
    expect(states[0]).toMatchObject({ name: '01-a.ipynb', state: 'failed' });
    expect(states[0]?.label).toMatch(/^cell 1 took longer than 0\.7 s/);
    expect(states[1]).toEqual({ name: '02-b.ipynb', state: 'done' });
    const child = Number((await made()).find((line) => line.startsWith('child '))?.slice(6));
    expect(child).toBeGreaterThan(1);
    await expect.poll(() => isAlive(child), { timeout: 5000 }).toBe(false);
  });
});

describe('a notebook that was never run on this machine', () => {
  const states = async (): Promise<unknown> => (await bench.ask('GET', '/reckoner/notebooks')).body['pages'];

  it('is not run unasked, not by opening its page either; asked for, it is run and known from then on', async () => {
    await putUnknown('01-downloaded.ipynb', 'evil');
    await bench.server.index?.makeAll();
    expect(await states()).toEqual([{ name: '01-downloaded.ipynb', state: 'not-run' }]);
    const page = await bench.ask('GET', '/pages/01-downloaded.html');
    expect(page.status).toBe(409);
    expect(page.body['message']).toContain('not run yet');
    expect(await made()).toEqual([]);
    expect(
      (await bench.ask('POST', '/reckoner/run', { path: '01-downloaded.ipynb', pageWanted: true })).status,
    ).toBe(204);
    await expect.poll(states, { timeout: 20_000 }).toEqual([{ name: '01-downloaded.ipynb', state: 'done' }]);
    expect(await made()).toEqual(['01-downloaded.ipynb']);
    await rm(join(above, 'pages', '01-downloaded.html'));
    const again = await open(bench.folder);
    expect(await again.server.index?.makeAll()).toBe(1);
    expect(await made()).toHaveLength(2);
    await again.close();
  });

  it('is unknown again when one character of its code changes, not when its words or results do', async () => {
    await put('01-a.ipynb', 'const width = 900;');
    const notebook = notebookOf('const width = 900;') as { cells: object[] };
    notebook.cells.unshift({ cell_type: 'markdown', id: 'w', metadata: {}, source: '# Words' });
    await writeFile(join(bench.folder, '01-a.ipynb'), JSON.stringify(notebook));
    await bench.server.index?.makeAll();
    expect(await made()).toHaveLength(1);
    await putUnknown('01-a.ipynb', 'const width = 901;');
    await bench.server.index?.makeAll();
    expect(await made()).toHaveLength(1);
    expect(await states()).toEqual([{ name: '01-a.ipynb', state: 'not-run' }]);
  });

  it('in a folder that the user named, nothing runs until asked', async () => {
    await put('01-a.ipynb', 'known');
    await bench.server.index?.makeAll({ unasked: false });
    expect(await made()).toEqual([]);
    expect(await states()).toEqual([{ name: '01-a.ipynb', state: 'not-run' }]);
  });
});

describe('what stands beside the notebooks', () => {
  it('a broken link, a lock file and a pipe spoil neither the list nor a page; each is reported once', async () => {
    await put('01-a.ipynb', 'a');
    await symlink(join(bench.folder, 'gone.csv'), join(bench.folder, 'broken.csv'));
    await symlink('nobody@nowhere', join(bench.folder, '.~lock.boards.csv'));
    await symlink('nobody@nowhere', join(bench.folder, '.#boards.csv'));
    execFileSync('mkfifo', [join(bench.folder, 'pipe.csv'), join(bench.folder, 'pipe.ipynb')]);
    expect(await bench.server.index?.makeAll()).toBe(1);
    for (const _again of [1, 2]) {
      const list = await bench.ask('GET', '/reckoner/notebooks');
      expect(list.status).toBe(200);
      expect((list.body['notebooks'] as { path: string }[]).map(({ path }) => path)).toEqual(['01-a.ipynb']);
      expect(list.body['files']).toEqual([]);
    }
    expect(said.filter((line) => line.startsWith('broken.csv'))).toHaveLength(1);
    expect(said.filter((line) => line.startsWith('pipe.csv'))).toHaveLength(1);
    expect((await bench.ask('GET', '/pages/01-a.html')).status).toBe(200);
    for (const path of ['/api/contents/pipe.csv', '/files/pipe.csv', '/api/contents/pipe.ipynb'])
      expect((await bench.ask('GET', path)).status, path).toBe(403);
  });
});

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}
