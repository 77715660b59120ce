import { readdir, readFile, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { notebookOf, openBench, raw, type Bench } from './server-bench.js';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench.close());
const onDisk = (name: string): Promise<string> => readFile(join(bench.folder, name), 'utf8');
const save = (name: string, content: unknown, more: object = {}) =>
  bench.ask('PUT', `/api/contents/${name}`, { type: 'notebook', format: 'json', content, ...more });

describe('saving and reading', () => {
  it('what is saved is read again, and lies on disk line by line', async () => {
    const saved = await save('a.ipynb', notebookOf('const w = 900;\nw + 1'));
    expect(saved.status).toBe(200);
    expect(await onDisk('a.ipynb')).toContain('"const w = 900;\\n",\n');
    const read = await bench.ask('GET', '/api/contents/a.ipynb?hash=1');
    expect(read.body).toMatchObject({
      name: 'a.ipynb',
      path: 'a.ipynb',
      type: 'notebook',
      format: 'json',
      writable: true,
      hash: saved.body['hash'],
      hash_algorithm: 'sha256',
    });
    expect((read.body['content'] as { cells: { source: string }[] }).cells[0]?.source).toBe(
      'const w = 900;\nw + 1',
    );
  });

  it('asked without content it gives facts alone', async () => {
    const { body } = await bench.ask('GET', '/api/contents/a.ipynb?content=0');
    expect(body['content']).toBeNull();
    expect(typeof body['last_modified']).toBe('string');
  });

  it('a file cannot call itself trusted, whichever way it came', async () => {
    const claims = notebookOf('1');
    (claims['cells'] as { metadata: object }[])[0]!.metadata = { trusted: true, tags: ['keep'] };
    await writeFile(join(bench.folder, 'claims.ipynb'), JSON.stringify(claims));
    const { body } = await bench.ask('GET', '/api/contents/claims.ipynb');
    expect((body['content'] as { cells: { metadata: object }[] }).cells[0]?.metadata).toEqual({
      tags: ['keep'],
    });
    await save('claims.ipynb', claims);
    expect(await onDisk('claims.ipynb')).not.toContain('trusted');
  });

  it('new notebooks and copies take a free name', async () => {
    const names: unknown[] = [];
    for (let n = 0; n < 3; n += 1)
      names.push(
        (await bench.ask('POST', '/api/contents', { type: 'notebook', name: 'bench' })).body['name'],
      );
    for (let n = 0; n < 2; n += 1)
      names.push((await bench.ask('POST', '/api/contents', { copy_from: 'a.ipynb' })).body['name']);
    expect(names).toEqual([
      'bench.ipynb',
      'bench-2.ipynb',
      'bench-3.ipynb',
      'a-copy.ipynb',
      'a-copy-2.ipynb',
    ]);
    expect(await onDisk('a-copy.ipynb')).toBe(await onDisk('a.ipynb'));
  });

  it('renames, but never onto another file', async () => {
    expect((await bench.ask('PATCH', '/api/contents/bench-3.ipynb', { path: 'a.ipynb' })).status).toBe(409);
    expect(
      (await bench.ask('PATCH', '/api/contents/bench-3.ipynb', { path: 'stool.ipynb' })).body['name'],
    ).toBe('stool.ipynb');
    expect((await bench.ask('GET', '/api/contents/bench-3.ipynb')).status).toBe(404);
  });

  it('deletes files and empty folders, not full ones', async () => {
    const folder = (await bench.ask('POST', '/api/contents', { type: 'directory' })).body['path'] as string;
    await bench.ask('PUT', `/api/contents/${folder}/x.txt`, { type: 'file', format: 'text', content: 'x' });
    expect((await bench.ask('DELETE', `/api/contents/${folder}`)).status).toBe(400);
    expect((await bench.ask('DELETE', `/api/contents/${folder}/x.txt`)).status).toBe(204);
    expect((await bench.ask('DELETE', `/api/contents/${folder}`)).status).toBe(204);
    expect((await bench.ask('DELETE', '/api/contents/')).status).toBe(400);
  });

  it('keeps bytes that are not text', async () => {
    const bytes = Buffer.from([0, 255, 137, 80, 78, 71, 10]);
    await bench.ask('PUT', '/api/contents/p.png', {
      type: 'file',
      format: 'base64',
      content: bytes.toString('base64'),
    });
    expect(await readFile(join(bench.folder, 'p.png'))).toEqual(bytes);
    expect((await bench.ask('GET', '/api/contents/p.png')).body).toMatchObject({
      format: 'base64',
      content: bytes.toString('base64'),
    });
  });

  it('checkpoints are made, listed, put back and removed', async () => {
    const before = await onDisk('a.ipynb');
    expect((await bench.ask('GET', '/api/contents/a.ipynb/checkpoints')).body).toEqual([]);
    expect((await bench.ask('POST', '/api/contents/a.ipynb/checkpoints')).status).toBe(201);
    await save('a.ipynb', notebookOf('changed'));
    expect(await onDisk('a.ipynb')).not.toBe(before);
    expect((await bench.ask('POST', '/api/contents/a.ipynb/checkpoints/checkpoint')).status).toBe(204);
    expect(await onDisk('a.ipynb')).toBe(before);
    expect((await bench.ask('DELETE', '/api/contents/a.ipynb/checkpoints/checkpoint')).status).toBe(204);
    expect((await bench.ask('POST', '/api/contents/a.ipynb/checkpoints/checkpoint')).status).toBe(404);
  });
});

describe('a file changed elsewhere', () => {
  it('is not overwritten: 409, the hash now on disk, the disk as it was', async () => {
    const first = (await save('both.ipynb', notebookOf('mine'))).body['hash'];
    const other = (await save('both.ipynb', notebookOf('theirs'), { expected_hash: first })).body['hash'];
    const late = await save('both.ipynb', notebookOf('mine, later'), { expected_hash: first });
    expect(late.status).toBe(409);
    expect(late.body).toMatchObject({ hash: other, reason: 'changed' });
    expect(await onDisk('both.ipynb')).toContain('theirs');
  });

  it('is noticed when an editor wrote it, and when it was deleted', async () => {
    const first = (await save('edited.ipynb', notebookOf('one'))).body['hash'];
    await writeFile(join(bench.folder, 'edited.ipynb'), JSON.stringify(notebookOf('by an editor')));
    expect((await save('edited.ipynb', notebookOf('two'), { expected_hash: first })).status).toBe(409);
    expect((await save('gone.ipynb', notebookOf('x'), { expected_hash: first })).status).toBe(409);
    expect((await save('gone.ipynb', notebookOf('x'), { expected_hash: null })).status).toBe(200);
    expect((await save('gone.ipynb', notebookOf('y'), { expected_hash: null })).status).toBe(409);
  });

  it('of forty saves at once from the same text exactly one wins, and the file is whole', async () => {
    const start = (await save('race.ipynb', notebookOf('start'))).body['hash'];
    const answers = await Promise.all(
      Array.from({ length: 40 }, (_, n) =>
        save('race.ipynb', notebookOf(`writer ${n} ${'x'.repeat(20_000)}`), { expected_hash: start }),
      ),
    );
    expect(answers.filter(({ status }) => status === 200)).toHaveLength(1);
    expect(answers.filter(({ status }) => status === 409)).toHaveLength(39);
    const winner = answers.findIndex(({ status }) => status === 200);
    expect(JSON.stringify(JSON.parse(await onDisk('race.ipynb')))).toContain(`writer ${winner} `);
    expect((await readdir(bench.folder)).filter((name) => name.endsWith('.part'))).toEqual([]);
  });
});

describe('what cannot be read or saved', () => {
  it('a broken notebook is named with its line, and left as it is', async () => {
    const broken = '{\n "cells": [],\n "metadata": {},\n "nbformat": 4,';
    await writeFile(join(bench.folder, 'broken.ipynb'), broken);
    const { status, body } = await bench.ask('GET', '/api/contents/broken.ipynb');
    expect(status).toBe(422);
    expect(body['message']).toMatch(/broken\.ipynb, line 4/);
    expect(await onDisk('broken.ipynb')).toBe(broken);
    expect((await bench.ask('GET', '/api/contents/broken.ipynb?type=file')).body['content']).toBe(broken);
  });

  it.each([
    ['no content', undefined, /content/],
    ['a list', [], /content/],
    ['the wrong format', { ...notebookOf('x'), nbformat: 3 }, /nbformat/],
    ['cells that are no list', { ...notebookOf('x'), cells: 'x' }, /cells/],
    [
      'a cell of an unknown kind',
      { ...notebookOf('x'), cells: [{ cell_type: 'slide', id: 'c', metadata: {}, source: '' }] },
      /cell_type/,
    ],
    [
      'a source that is a number',
      {
        ...notebookOf('x'),
        cells: [{ cell_type: 'code', id: 'c', metadata: {}, outputs: [], execution_count: null, source: 7 }],
      },
      /source/,
    ],
  ])('%s is refused, the field is named and nothing is written', async (_name, content, field) => {
    await save('kept.ipynb', notebookOf('kept'));
    const before = await onDisk('kept.ipynb');
    const { status, body } = await save('kept.ipynb', content);
    expect(status).toBe(400);
    expect(body['message']).toMatch(field);
    expect(body['message']).toMatch(/[Nn]othing was saved/);
    expect(await onDisk('kept.ipynb')).toBe(before);
  });

  it('bodies that are no JSON, or too large, are refused', async () => {
    const headers = { Authorization: `token ${bench.server.sessionKey}` };
    expect((await raw(bench.server.port, '/api/contents/x.ipynb', headers, 'PUT', '{"type":')).status).toBe(
      400,
    );
    expect(
      (await raw(bench.server.port, '/api/sessions', headers, 'POST', `{"path":"${'x'.repeat(1_100_000)}"}`))
        .status,
    ).toBe(413);
    expect(
      (
        await raw(
          bench.server.port,
          '/api/contents/x.ipynb',
          { ...headers, 'Content-Length': String(200 * 1024 * 1024) },
          'PUT',
        ).catch(() => ({ status: 413 }))
      ).status,
    ).toBe(413);
    await expect(stat(join(bench.folder, 'x.ipynb'))).rejects.toThrow(/ENOENT/);
  });

  it('an unknown address is a 404, a wrong verb a 405, a bad escape a 400', async () => {
    expect((await bench.ask('GET', '/api/nothing')).status).toBe(404);
    expect((await bench.ask('DELETE', '/api/kernelspecs')).status).toBe(405);
    expect(
      (
        await raw(bench.server.port, '/api/contents/%zz', {
          Authorization: `token ${bench.server.sessionKey}`,
        })
      ).status,
    ).toBe(400);
  });
});

describe('the list of chapters', () => {
  it('takes title and first sentence from the notebook itself', async () => {
    const page = await openBench();
    const text = (source: string): object => ({
      ...notebookOf(),
      cells: [{ cell_type: 'markdown', id: 'm', metadata: {}, source }],
    });
    await writeFile(
      join(page.folder, '02-the-top.ipynb'),
      JSON.stringify(
        text(
          '# 2. The *top* of it\n\nA hall wants a [counter](x): 1.95 m long, of salvaged pine. Then more.\n',
        ),
      ),
    );
    await writeFile(join(page.folder, 'own.ipynb'), JSON.stringify(notebookOf('1')));
    await writeFile(join(page.folder, 'torn.ipynb'), '{"cells": [');
    await writeFile(join(page.folder, 'survey.csv'), 'a,b\n');
    const { body } = await page.ask('GET', '/reckoner/notebooks');
    expect(body['notebooks']).toMatchObject([
      {
        path: '02-the-top.ipynb',
        number: '02',
        title: 'The top of it',
        summary: 'A hall wants a counter: 1.95 m long, of salvaged pine.',
      },
      { path: 'own.ipynb', title: 'Own', summary: '' },
      { path: 'torn.ipynb', problem: expect.stringContaining('not a whole notebook') as string },
    ]);
    expect(body['files']).toMatchObject([{ path: 'survey.csv', size: 4 }]);
    await page.close();
  });
});
