import { mkdir, mkdtemp, readdir, readFile, rename, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { Checkpoints } from '../../src/server/checkpoints.js';
import { Contents } from '../../src/server/contents.js';
import { ContentsRoot } from '../../src/server/safe-path.js';
import { WriteQueue } from '../../src/server/save-contents.js';

let above = '';
let notebooks = '';
let outside = '';
beforeEach(async () => {
  above = await mkdtemp(join(tmpdir(), 'reckoner-exchanged-'));
  [notebooks, outside] = [join(above, 'notebooks'), join(above, 'outside')];
  for (const folder of [join(notebooks, 'shop'), outside]) {
    await mkdir(join(folder, '.ipynb_checkpoints'), { recursive: true });
    await writeFile(join(folder, '.ipynb_checkpoints', 'a-checkpoint.txt'), `checkpoint of ${folder}`);
    for (const name of ['a.txt', 'b.txt']) await writeFile(join(folder, name), `text of ${folder}`);
  }
});
afterEach(() => rm(above, { recursive: true, force: true }));

/** A root whose folder `shop` becomes a link to `outside` once the given number of paths has been resolved. */
async function rootExchangedAfter(calls: number): Promise<{ root: ContentsRoot; seen: () => number }> {
  const root = await ContentsRoot.at(notebooks);
  const resolveEntry = root.resolveEntry.bind(root);
  let seen = 0;
  root.resolveEntry = async (path): Promise<string> => {
    const entry = await resolveEntry(path);
    seen += 1;
    if (seen === calls) {
      await rename(join(notebooks, 'shop'), join(above, 'moved'));
      await symlink(outside, join(notebooks, 'shop'));
    }
    return entry;
  };
  return { root, seen: () => seen };
}

async function everythingIn(folder: string): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return Promise.all(
    entries.map(async (entry) =>
      entry.isFile()
        ? `${entry.name}: ${await readFile(join(entry.parentPath, entry.name), 'utf8')}`
        : entry.name,
    ),
  );
}

type Work = (contents: Contents, checkpoints: Checkpoints) => Promise<unknown>;
const text = { type: 'file', format: 'text', content: 'new' };
const works: readonly (readonly [string, Work])[] = [
  ['saved over', (contents) => contents.write('shop/a.txt', text)],
  ['saved new', (contents) => contents.write('shop/c.txt', text)],
  ['made a folder', (contents) => contents.write('shop/inner', { type: 'directory' })],
  ['created', (contents) => contents.create('shop', { type: 'notebook', name: 'c' })],
  ['copied', (contents) => contents.create('shop', { copy_from: 'shop/a.txt' })],
  ['renamed', (contents) => contents.rename('shop/a.txt', 'shop/c.txt')],
  ['deleted', (contents) => contents.remove('shop/a.txt')],
  ['kept as a checkpoint', (_contents, checkpoints) => checkpoints.create('shop/a.txt')],
  ['restored', (_contents, checkpoints) => checkpoints.restore('shop/a.txt', 'checkpoint')],
  ['rid of its checkpoint', (_contents, checkpoints) => checkpoints.remove('shop/a.txt', 'checkpoint')],
];

// Linux alone gives a way to work in a folder that was opened; elsewhere the time between check and use is only made short.
describe.runIf(process.platform === 'linux')(
  'a folder that is exchanged for a link between check and use',
  () => {
    it.each(works)('leads nothing outside when a file is %s', async (_name, work) => {
      const before = await everythingIn(outside);
      let exchanged = 0;
      for (let calls = 1; calls < 30; calls += 1) {
        const { root, seen } = await rootExchangedAfter(calls);
        const contents = new Contents(root, new WriteQueue());
        const answer = await work(contents, new Checkpoints(contents)).catch((error: unknown) => error);
        expect(await everythingIn(outside), `exchanged after ${calls} paths`).toEqual(before);
        if (seen() < calls) {
          expect(answer).not.toBeInstanceOf(Error);
          break;
        }
        exchanged += 1;
        await rm(join(notebooks, 'shop'));
        await rm(join(notebooks, 'shop'), { recursive: true, force: true });
        await rename(join(above, 'moved'), join(notebooks, 'shop'));
        for (const name of ['a.txt', 'b.txt']) await writeFile(join(notebooks, 'shop', name), 'again');
        await writeFile(join(notebooks, 'shop', '.ipynb_checkpoints', 'a-checkpoint.txt'), 'again');
        for (const name of ['c.txt', 'inner', 'c.ipynb', 'a-copy.txt'])
          await rm(join(notebooks, 'shop', name), { recursive: true, force: true });
      }
      expect(exchanged).toBeGreaterThan(0);
    });

    it('shows nothing of the other folder when a checkpoint is restored or a file copied', async () => {
      for (const [, work] of works.filter(([name]) => name === 'restored' || name === 'copied')) {
        const { root } = await rootExchangedAfter(1);
        const contents = new Contents(root, new WriteQueue());
        await work(contents, new Checkpoints(contents)).catch(() => undefined);
        const inside = [...(await everythingIn(join(above, 'moved'))), ...(await everythingIn(notebooks))];
        expect(inside.filter((line) => line.includes(outside))).toEqual([]);
        await rm(join(notebooks, 'shop'));
        await rename(join(above, 'moved'), join(notebooks, 'shop'));
      }
    });
  },
);
