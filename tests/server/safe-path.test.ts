import { lstat, mkdir, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBench, raw, type Bench } from './server-bench.js';

let bench: Bench;
let outside = '';
let key: Record<string, string> = {};
const secret = 'the bank card is under the mat';

beforeAll(async () => {
  bench = await openBench();
  key = { Authorization: `token ${bench.server.sessionKey}` };
  outside = await mkdtemp(join(tmpdir(), 'reckoner-outside-'));
  await writeFile(join(outside, 'secret.txt'), secret);
  await writeFile(join(bench.folder, '..', 'beside.txt'), secret);
  await writeFile(join(bench.folder, '.hidden.txt'), secret);
  await writeFile(join(bench.folder, 'boards.csv'), 'name,length\na,900 mm\n');
  await mkdir(join(bench.folder, 'inner'));
  await writeFile(join(bench.folder, 'inner', 'note.txt'), 'inside');
  await symlink(join(outside, 'secret.txt'), join(bench.folder, 'link.txt'));
  await symlink(outside, join(bench.folder, 'linked'));
  await symlink(join(bench.folder, 'inner', 'note.txt'), join(bench.folder, 'fair.txt'));
  await symlink(join(bench.folder, 'nowhere'), join(bench.folder, 'dangling.txt'));
});
afterAll(async () => {
  await bench.close();
  await rm(outside, { recursive: true, force: true });
});

const ways = [
  '../beside.txt',
  '..%2fbeside.txt',
  '%2e%2e/beside.txt',
  '%2e%2e%2fbeside.txt',
  '..%5cbeside.txt',
  '%2e%2e%5cbeside.txt',
  '%252e%252e%252fbeside.txt',
  'inner/..%2f..%2fbeside.txt',
  'inner/%2e%2e/%2e%2e/beside.txt',
  '/etc/passwd',
  '%2fetc%2fpasswd',
  '..%00/beside.txt',
  'boards.csv%00.txt',
  '.hidden.txt',
  '%2ehidden.txt',
  'link.txt',
  'linked/secret.txt',
  'linked',
  'dangling.txt',
  '....//beside.txt',
  '..;/beside.txt',
];

describe.each(['/api/contents/', '/files/'])('under %s', (front) => {
  it.each(ways)('%s leads nowhere', async (way) => {
    const answer = await raw(bench.server.port, front + way, key);
    expect(answer.status).toBeGreaterThanOrEqual(400);
    expect(answer.status).toBeLessThan(500);
    expect(answer.text).not.toContain(secret);
    expect(answer.text).not.toContain('root:');
  });

  it('what lies inside is given, a link that stays inside too', async () => {
    for (const path of ['boards.csv', 'inner/note.txt', 'inner%2fnote.txt', 'fair.txt'])
      expect((await raw(bench.server.port, front + path, key)).status, path).toBe(200);
  });
});

describe('writing', () => {
  it.each(ways)('%s writes nothing outside', async (way) => {
    const body = JSON.stringify({ type: 'file', format: 'text', content: 'overwritten' });
    const answer = await raw(bench.server.port, `/api/contents/${way}`, key, 'PUT', body);
    // %25 is a percent sign in a file name, and a name may hold dots and semicolons: such files may be made, inside.
    if (answer.status < 300) expect(['%252e%252e%252fbeside.txt']).toContain(way);
    expect(await readFile(join(outside, 'secret.txt'), 'utf8')).toBe(secret);
    expect(await readFile(join(bench.folder, '..', 'beside.txt'), 'utf8')).toBe(secret);
    expect(await readFile(join(bench.folder, '.hidden.txt'), 'utf8')).toBe(secret);
  });

  it('nothing is moved, copied or deleted across the edge', async () => {
    const { ask } = bench;
    expect((await ask('PATCH', '/api/contents/boards.csv', { path: '../stolen.csv' })).status).toBe(403);
    expect((await ask('PATCH', '/api/contents/boards.csv', { path: 'linked/stolen.csv' })).status).toBe(403);
    expect((await ask('POST', '/api/contents', { copy_from: '../beside.txt' })).status).toBe(403);
    expect((await ask('POST', '/api/contents', { copy_from: 'link.txt' })).status).toBe(403);
    expect((await ask('DELETE', '/api/contents/link.txt')).status).toBe(204);
    await expect(lstat(join(bench.folder, 'link.txt'))).rejects.toThrow('ENOENT');
    expect(await readFile(join(outside, 'secret.txt'), 'utf8')).toBe(secret);
    expect((await ask('POST', '/api/contents', { type: 'notebook', name: '../../x' })).status).toBe(403);
    expect((await ask('POST', '/api/sessions', { path: '../../x.ipynb', kernel: {} })).status).toBe(403);
    expect((await ask('POST', '/api/kernels', { name: 'reckoner', path: 'linked' })).status).toBe(403);
    expect(await readFile(join(bench.folder, 'boards.csv'), 'utf8')).toContain('900 mm');
  });

  it('a listing leaves out what is hidden or leads outside', async () => {
    const listed = (await bench.ask('GET', '/api/contents')).body['content'] as { name: string }[];
    expect(listed.map(({ name }) => name).filter((name) => !name.startsWith('%'))).toEqual([
      'boards.csv',
      'fair.txt',
      'inner',
    ]);
  });

  it('the page folder gives only built files', async () => {
    for (const path of [
      '../notebooks/boards.csv',
      '..%2fnotebooks%2fboards.csv',
      '%2e%2e%2fbeside.txt',
      'home-ABCDEFGH.js%00',
      '.env',
    ])
      expect((await raw(bench.server.port, `/page/${path}`, key)).status, path).toBeGreaterThanOrEqual(400);
  });
});
