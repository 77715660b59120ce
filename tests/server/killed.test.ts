import { fork, type ChildProcess } from 'node:child_process';
import { watch } from 'node:fs';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { hostileRuns } from '../fuzz/seeded-random.js';
import { sweepLeftovers } from '../../src/server/save-contents.js';

/** 40 in an ordinary run; RECKONER_HOSTILE=200 for the long one. */
const kills = hostileRuns(40);
let above = '';
let script = '';
beforeAll(async () => {
  above = await mkdtemp(join(tmpdir(), 'reckoner-killed-'));
  script = join(above, 'server.mjs');
  await build({
    entryPoints: [fileURLToPath(new URL('./killed-server.ts', import.meta.url))],
    outfile: script,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    alias: { 'jsonc-parser': 'jsonc-parser/lib/esm/main.js' },
    // Recipes, charts and notes take no part in saving and would only lengthen two hundred starts.
    plugins: [
      {
        name: 'only-saving',
        setup: (b) => {
          b.onResolve(
            { filter: /\/(catalogue|export-page|dist-path)\.(ts|js)$|notes\/note\.(ts|js)$/ },
            (args) => ({
              path: args.path,
              namespace: 'none',
            }),
          );
          b.onLoad({ filter: /.*/, namespace: 'none' }, () => ({
            contents:
              'export const catalogue = []; export const exportPage = undefined; export const compilerVersion = () => "0"; export const notesWith = () => undefined; export const citationText = () => "";',
          }));
        },
      },
    ],
    banner: {
      js: "import { createRequire as __makeRequire } from 'node:module'; const require = __makeRequire(import.meta.url);",
    },
    logLevel: 'error',
  });
});
afterAll(() => rm(above, { recursive: true, force: true }));

function start(): Promise<{ child: ChildProcess; port: number }> {
  const child = fork(script, [above, above], { stdio: ['ignore', 'ignore', 'inherit', 'ipc'], execArgv: [] });
  return new Promise((resolve, reject) => {
    child.once('message', (port) => resolve({ child, port: port as number }));
    child.once('exit', () => reject(new Error('the server did not start')));
  });
}

/** About half a megabyte, so that a save takes long enough to be hit: the first cell tells which version it is, the last that it is whole. */
function notebook(version: number): object {
  const cell = (id: string, source: string): object => ({
    cell_type: 'code',
    id,
    metadata: {},
    execution_count: null,
    outputs: [],
    source,
  });
  return {
    nbformat: 4,
    nbformat_minor: 5,
    metadata: {},
    cells: [
      cell('first', `version ${version}`),
      ...Array.from({ length: 150 }, (_, n) => cell(`c${n}`, `${version} `.repeat(600))),
      cell('last', `version ${version}`),
    ],
  };
}

it(`a server killed ${kills} times in the middle of a save loses nothing that was saved`, async () => {
  const path = join(above, 'counter.ipynb');
  let sent = 0;
  let acknowledged = -1;
  let beforeAnswer = 0;
  let writing = 0;
  let onePass = 0;
  let next = start();
  for (let n = 0; n < kills; n += 1) {
    const { child, port } = await next;
    next = start();
    const gone = new Promise((resolve) => child.once('exit', resolve));
    const save = async (): Promise<void> => {
      const version = ++sent;
      const answer = await fetch(`http://127.0.0.1:${port}/api/contents/counter.ipynb`, {
        method: 'PUT',
        headers: { Authorization: 'token abc' },
        body: JSON.stringify({ type: 'notebook', content: notebook(version) }),
      });
      if (answer.ok) acknowledged = version;
      await answer.arrayBuffer();
    };
    if (n === 0) {
      await save();
      const began = performance.now();
      await save();
      onePass = performance.now() - began;
    }
    const saving = save().then(
      () => false,
      () => true,
    );
    // Every other time the kill comes just after the temporary file has appeared, every eighth time after the answer; else
    // anywhere from before the body has arrived until after the answer.
    const kill = (): void => void child.kill('SIGKILL');
    if (n % 8 === 0) void saving.finally(kill);
    else if (n % 2 === 0) setTimeout(kill, ((n / 2) % 25) * (onePass / 12));
    else {
      const eye = watch(above, (_, name) => {
        if (!name?.endsWith('.part')) return;
        eye.close();
        writing += 1;
        setTimeout(kill, (n >> 1) % 4);
      });
      setTimeout(
        () => {
          eye.close();
          kill();
        },
        20 * onePass + 500,
      );
    }
    if (await saving) beforeAnswer += 1;
    await gone;
    const text = await readFile(path, 'utf8');
    const cells = (JSON.parse(text) as { cells: { source: string[] }[] }).cells;
    const found = Number(/version (\d+)/.exec(cells[0]?.source.join('') ?? '')?.[1]);
    expect(cells).toHaveLength(152);
    expect(cells.at(-1)?.source.join('')).toBe(`version ${found}`);
    expect(found).toBeGreaterThanOrEqual(acknowledged);
    expect(found).toBeLessThanOrEqual(sent);
    acknowledged = Math.max(acknowledged, found);
  }
  (await next).child.kill('SIGKILL');
  // Otherwise the test would have shown nothing.
  expect(beforeAnswer).toBeGreaterThan(kills / 4);
  expect(beforeAnswer).toBeLessThan(kills);
  expect(writing).toBeGreaterThan(kills / 4);
  const leftovers = (await readdir(above)).filter((name) => name.endsWith('.part')).length;
  expect(await sweepLeftovers(above, -1)).toBe(leftovers);
  expect((await readdir(above)).filter((name) => name.endsWith('.part'))).toEqual([]);
  process.stdout.write(
    `  ${kills} kills: ${beforeAnswer} before the answer, ${writing} once the temporary file was there; ${leftovers} half-written files were left, and swept\n`,
  );
}, 240_000);
