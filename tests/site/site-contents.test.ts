import { describe, expect, it } from 'vitest';
import { FileStore } from '../../src/site/file-store.js';
import { SiteContents, type FileDescription } from '../../src/site/site-contents.js';
import { textHash } from '../../src/site/text-hash.js';

const brought = JSON.stringify({
  cells: [{ cell_type: 'markdown', id: 'a', metadata: {}, source: '# One\n' }],
  metadata: {},
  nbformat: 4,
  nbformat_minor: 5,
});
/** Files of a site without a browser's storage, as in a private window: kept in memory. */
const site = (): SiteContents =>
  new SiteContents(new FileStore('test'), {
    paths: ['01-one.ipynb'],
    read: () => Promise.resolve(brought),
  });
const read = (contents: SiteContents, path: string, query = ''): Promise<FileDescription> =>
  contents.read(path, new URLSearchParams(query));
const status = async (work: Promise<unknown>): Promise<unknown> =>
  work.then(
    () => undefined,
    (error: unknown) => (error as { status?: number }).status,
  );

describe('the files of a site', () => {
  it('are those it brought until the user changes them, and again when the own version goes', async () => {
    const contents = site();
    const first = await read(contents, '01-one.ipynb', 'hash=1');
    expect((first.content as { cells: unknown[] }).cells).toHaveLength(1);
    const changed = { ...(first.content as object), cells: [] };
    await contents.write('01-one.ipynb', { type: 'notebook', content: changed, expected_hash: first.hash });
    expect(((await read(contents, '01-one.ipynb')).content as { cells: unknown[] }).cells).toEqual([]);
    await contents.remove('01-one.ipynb');
    expect(((await read(contents, '01-one.ipynb')).content as { cells: unknown[] }).cells).toHaveLength(1);
    expect(await status(contents.remove('01-one.ipynb'))).toBe(403);
  });

  it('are not overwritten by who read an older version', async () => {
    const contents = site();
    const { hash } = await contents.create({ type: 'notebook', name: 'mine' });
    const model = { type: 'file', format: 'text', content: 'a,b\n1,2\n' };
    await contents.write('mine.csv', { ...model, expected_hash: null });
    expect(await status(contents.write('mine.csv', { ...model, expected_hash: null }))).toBe(409);
    expect(await status(contents.write('mine.csv', { ...model, expected_hash: hash }))).toBe(409);
    await contents.write('mine.csv', { ...model, expected_hash: textHash(model.content) });
    expect(await contents.userFiles()).toEqual({ 'mine.csv': 'a,b\n1,2\n' });
  });

  it('get a free name when they are new or copied, and none that is taken when renamed', async () => {
    const contents = site();
    expect((await contents.create({ type: 'notebook', name: 'mine' })).path).toBe('mine.ipynb');
    expect((await contents.create({ type: 'notebook', name: 'mine' })).path).toBe('mine-2.ipynb');
    expect((await contents.create({ copy_from: '01-one.ipynb' })).path).toBe('01-one-copy.ipynb');
    expect(await status(contents.rename('mine.ipynb', '01-one.ipynb'))).toBe(409);
    expect((await contents.rename('mine.ipynb', 'yours.ipynb')).path).toBe('yours.ipynb');
    expect(await status(read(contents, 'mine.ipynb'))).toBe(404);
  });

  it.each([
    ['a broken notebook', 'x.ipynb', { type: 'file', format: 'base64', content: btoa('{"cells":') }, 422],
    ['a picture', 'x.png', { type: 'file', format: 'base64', content: btoa('\xff\xfe\x00') }, 400],
    ['no content', 'x.csv', { type: 'file' }, 400],
    ['a folder', 'x', { type: 'directory' }, 400],
    ['a notebook without cells', 'x.ipynb', { type: 'notebook', content: {} }, 400],
  ])('refuse %s, and keep nothing of it', async (_what, path, model, expected) => {
    const contents = site();
    expect(await status(contents.write(path, model))).toBe(expected);
    expect([...(await contents.paths()).keys()]).toEqual(['01-one.ipynb']);
  });
});

describe('the hash of a text', () => {
  it('tells texts apart that differ in one letter or in order', () => {
    const texts = ['', 'a', 'b', 'ab', 'ba', 'a'.repeat(100_000), `${'a'.repeat(99_999)}b`];
    expect(new Set(texts.map(textHash)).size).toBe(texts.length);
    expect(textHash('ab')).toBe(textHash('ab'));
  });
  it('has no double among a hundred thousand texts', () => {
    const hashes = new Set(Array.from({ length: 100_000 }, (_, i) => textHash(`cell ${i}`)));
    expect(hashes.size).toBe(100_000);
  });
});
