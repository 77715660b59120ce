import { execFileSync } from 'node:child_process';
import { chmod, mkdir, mkdtemp, readFile, rename, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { codeHash } from '../../src/server/known-notebooks.js';
import { redirectPage } from '../../src/server/open-browser.js';
import { writePrivateFile, readPrivateFile } from '../../src/server/private-file.js';
import shipped from '../../src/server/shipped-notebooks.json' with { type: 'json' };
import { cacheFolder, makePrivateFolder, stateFolder } from '../../src/server/user-folders.js';
import { packageFolder } from '../../src/engine/data-folder.js';
import { readdirSync, readFileSync } from 'node:fs';
import { openBench, raw, type Bench } from './server-bench.js';

let bench: Bench;
let above = '';
let key: Record<string, string> = {};
beforeAll(async () => {
  bench = await openBench();
  above = await mkdtemp(join(tmpdir(), 'reckoner-hardening-'));
  key = { Authorization: `token ${bench.server.sessionKey}` };
});
afterAll(async () => {
  await bench.close();
  await rm(above, { recursive: true, force: true });
});

describe('requests', () => {
  it('GET // is a 400, as is any address that is none', async () => {
    for (const path of ['//', '//evil.example/x', 'http://evil.example/'])
      expect((await raw(bench.server.port, path, key)).status, path).toBe(400);
  });

  it('40 MB of brackets are refused at once', async () => {
    /** Of client and server together, in seconds; the best of three, since other tests run beside this one. */
    const work = async (body: string): Promise<number> => {
      const times: number[] = [];
      for (let n = 0; n < 3; n += 1) {
        const began = performance.now();
        expect((await raw(bench.server.port, '/api/contents/a.ipynb', key, 'PUT', body)).status).toBe(400);
        times.push((performance.now() - began) / 1000);
      }
      return Math.min(...times);
    };
    const sending = await work('x'.repeat(40_000_000));
    for (const body of ['['.repeat(40_000_000), `{"a":${'[],'.repeat(13_000_000)}0}`])
      expect((await work(body)) - sending).toBeLessThan(1);
  }, 120_000);

  it('twenty creations at once give twenty names', async () => {
    const made = await Promise.all(
      Array.from({ length: 20 }, () =>
        bench.ask('POST', '/api/contents', { type: 'notebook', name: 'same' }),
      ),
    );
    expect(made.every(({ status }) => status === 201)).toBe(true);
    expect(new Set(made.map(({ body }) => body['path'])).size).toBe(20);
  });

  it('a link that is exchanged while it is read never shows what is outside', async () => {
    const secret = 'the bank card is under the mat';
    const [inside, outside] = [join(bench.folder, 'real.txt'), join(above, 'secret.txt')];
    await writeFile(inside, 'harmless');
    await writeFile(outside, secret);
    let exchanging = true;
    const isGoing = (): boolean => exchanging;
    const exchange = (async (): Promise<void> => {
      for (let n = 0; isGoing(); n += 1) {
        await rm(join(above, 'next'), { force: true });
        await symlink(n % 2 === 0 ? inside : outside, join(above, 'next'));
        await rename(join(above, 'next'), join(bench.folder, 'swapped.txt'));
      }
    })();
    const seen = new Set<string>();
    for (let n = 0; n < 400; n += 1) seen.add((await raw(bench.server.port, '/files/swapped.txt', key)).text);
    exchanging = false;
    await exchange;
    expect([...seen].some((text) => text.includes(secret))).toBe(false);
    expect(seen.has('harmless')).toBe(true);
  }, 60_000);

  it('a pipe or a device is named as such and never waited for', async () => {
    execFileSync('mkfifo', [join(bench.folder, 'pipe.csv'), join(bench.folder, 'pipe.ipynb')]);
    const text = { type: 'file', format: 'text', content: 'a' };
    const answers = [
      await bench.ask('GET', '/api/contents/pipe.csv'),
      await bench.ask('GET', '/api/contents/pipe.ipynb?type=notebook'),
      await bench.ask('PUT', '/api/contents/pipe.csv', text),
      await bench.ask('POST', '/api/contents', { copy_from: 'pipe.csv' }),
      await bench.ask('POST', '/api/contents/pipe.csv/checkpoints'),
      await bench.ask('POST', '/reckoner/run', { path: 'pipe.ipynb' }),
    ];
    for (const { status, body } of answers) {
      expect(status).toBe(403);
      expect(body['message']).toMatch(/is a pipe or a device, not a file/);
    }
    expect((await raw(bench.server.port, '/files/pipe.csv', key)).status).toBe(403);
  }, 10_000);

  it('a folder that may not be written to is named as such', async () => {
    // Nobody, root included, makes files in /proc.
    const other = await openBench({ notebooks: '/proc/self/task' });
    const answer = await other.ask('POST', '/api/contents', { type: 'notebook', name: 'a' });
    expect([403, 507]).toContain(answer.status);
    expect(String(answer.body['message'])).toMatch(/could not be written|may not write|read-only/);
    await other.close();
  });
});

describe('folders of the user', () => {
  it('hold the finished pages: the package ships none, and nothing writes into its own folder of them', () => {
    const { files } = JSON.parse(readFileSync(join(packageFolder(), 'package.json'), 'utf8')) as {
      files: string[];
    };
    expect(files).toContain('!dist/pages');
    for (const name of readdirSync(join(packageFolder(), 'src', 'server')).filter((n) => n.endsWith('.ts')))
      expect(readFileSync(join(packageFolder(), 'src', 'server', name), 'utf8'), name).not.toMatch(
        /tmpdir\(|'dist', 'pages'|dist\/pages/,
      );
  });

  it('follow the XDG rules, and the customs of other systems', () => {
    expect(stateFolder({ XDG_STATE_HOME: '/x' }, 'linux')).toBe('/x/joiners-reckoner');
    expect(cacheFolder({ XDG_CACHE_HOME: '/y' }, 'linux')).toBe('/y/joiners-reckoner');
    expect(stateFolder({ XDG_STATE_HOME: 'relative' }, 'linux')).toMatch(/\.local\/state\/joiners-reckoner$/);
    expect(cacheFolder({}, 'darwin')).toMatch(/Library\/Caches\/joiners-reckoner$/);
  });

  it('are open to the user alone, also when they were not', async () => {
    const base = join(above, 'own', 'joiners-reckoner');
    await mkdir(base, { recursive: true });
    await chmod(base, 0o777);
    await makePrivateFolder(join(base, 'pages', 'a'), base);
    for (const folder of [base, join(base, 'pages'), join(base, 'pages', 'a')])
      expect((await stat(folder)).mode & 0o777, folder).toBe(0o700);
  });

  it('a link in place of the folder is refused, and one in place of a file is replaced and not followed', async () => {
    const victim = join(above, 'victim');
    await mkdir(victim);
    const base = join(above, 'linked');
    await symlink(victim, base);
    await expect(makePrivateFolder(base, base)).rejects.toThrow('a link or a file');
    const own = await makePrivateFolder(join(above, 'private'), join(above, 'private'));
    const kept = join(above, 'kept.txt');
    await writeFile(kept, 'mine');
    await symlink(kept, join(own, 'page.html'));
    expect(await readPrivateFile(join(own, 'page.html'))).toBeUndefined();
    await writePrivateFile(join(own, 'page.html'), 'page');
    expect(await readFile(kept, 'utf8')).toBe('mine');
    expect(await readPrivateFile(join(own, 'page.html'))).toBe('page');
    expect((await stat(join(own, 'page.html'))).mode & 0o777).toBe(0o600);
  });

  it('hold the file that opens the browser, so that no command line shows the key', async () => {
    const folder = await makePrivateFolder(join(above, 'opening'), join(above, 'opening'));
    const file = await redirectPage('http://127.0.0.1:1/#open=abc', folder);
    expect(file).not.toContain('abc');
    expect((await stat(file)).mode & 0o777).toBe(0o600);
    expect(await readFile(file, 'utf8')).toContain('url=http://127.0.0.1:1/#open=abc');
  });
});

describe('notebooks that came with the package', () => {
  it('are all known by the hash of their code; run node src/launch/shipped-notebooks.mjs after a change', () => {
    const folder = join(packageFolder(), 'notebooks');
    const names = readdirSync(folder).filter((name) => name.endsWith('.ipynb'));
    const hashes = names.map((name) => codeHash(readFileSync(join(folder, name), 'utf8')));
    expect([...shipped].sort()).toEqual(hashes.sort());
  });
});
