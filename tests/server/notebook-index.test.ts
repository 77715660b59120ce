import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { notebookOf, openBench, type Bench } from './server-bench.js';

// A page maker that keeps to the real one's messages but reckons nothing: `crash` ends the process, `fail` fails as a cell would.
const maker = `
import { appendFileSync, readFileSync } from 'node:fs';
process.on('message', ({ file, name }) => {
  const text = readFileSync(file, 'utf8');
  appendFileSync(process.argv[2], name + '\\n');
  process.send({ kind: 'cell', name, cell: 1, cells: 2 });
  if (text.includes('crash')) process.exit(7);
  const failure = text.includes('fail') ? 'cell 1, line 1: width: got nothing' : undefined;
  setTimeout(() => process.send({ kind: 'page', name, html: '<html><body>\\n<main>' + name + ' ' + text.length + '</main></body></html>', failure, seconds: 0.1 }), 120);
});
process.on('disconnect', () => process.exit(0));
`;

let above = '';
let bench: Bench;
let said: string[] = [];
const open = async (notebooks?: string): Promise<Bench> => {
  const pages = {
    maker: join(above, 'maker.mjs'),
    makerArguments: [join(above, 'made.txt')],
    cache: join(above, 'pages'),
    program: join(above, 'program'),
  };
  return openBench({
    pages,
    say: (line) => void said.push(line),
    ...(notebooks === undefined ? {} : { notebooks }),
  });
};
const made = async (): Promise<string[]> =>
  (await readFile(join(above, 'made.txt'), 'utf8').catch(() => '')).split('\n').filter(Boolean);
const put = (name: string, ...cells: string[]): Promise<void> =>
  writeFile(join(bench.folder, name), JSON.stringify(notebookOf(...cells)));

beforeEach(async () => {
  above = await mkdtemp(join(tmpdir(), 'reckoner-pages-'));
  await writeFile(join(above, 'maker.mjs'), maker);
  said = [];
  bench = await open();
});
afterEach(async () => {
  await bench.close();
  await rm(above, { recursive: true, force: true });
});

describe('finished pages', () => {
  it('are made in order, told of cell by cell, and served', async () => {
    await put('02-b.ipynb', 'b');
    await put('01-a.ipynb', 'a');
    expect(await bench.server.collection?.makeAll()).toBe(2);
    expect(await made()).toEqual(['01-a.ipynb', '02-b.ipynb']);
    expect(said).toEqual([
      '  01-a.ipynb: cell 1 of 2',
      '  01-a.ipynb: page written in 0.1 s',
      '  02-b.ipynb: cell 1 of 2',
      '  02-b.ipynb: page written in 0.1 s',
      'All 2 notebooks have a finished page.',
    ]);
    const page = await bench.ask('GET', '/pages/01-a.html');
    expect(page.status).toBe(200);
    expect(page.body['text']).toContain('<main>01-a.ipynb');
    expect(page.headers.get('content-security-policy')).toContain("default-src 'none'");
    expect(page.headers.get('content-security-policy')).not.toContain('script-src');
  });

  it('a page asked for early is waited for, and goes first', async () => {
    for (const name of ['01-a', '02-b', '03-c', '04-d']) await put(`${name}.ipynb`, name);
    const all = bench.server.collection?.makeAll();
    await new Promise((resolve) => setTimeout(resolve, 30));
    expect((await bench.ask('GET', '/pages/04-d.html')).body['text']).toContain('04-d.ipynb');
    await all;
    expect((await made()).indexOf('04-d.ipynb')).toBeLessThan(3);
    expect(await made()).toHaveLength(4);
  });

  it('are kept until the notebook changes', async () => {
    await put('01-a.ipynb', 'a');
    await bench.server.collection?.makeAll();
    const again = await open(bench.folder);
    await again.server.collection?.makeAll();
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
    expect(await bench.server.collection?.makeAll()).toBe(1);
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
});
