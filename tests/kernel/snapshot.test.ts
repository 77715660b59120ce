// A kernel started from the startup snapshot: the same as any other, only faster. Needs the build.
import { execFileSync } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { spawnKernel, type JupyterMessage, type KernelProcess } from '../../src/kernel/kernel-process.js';
import { canUseSnapshot, startOptions } from '../../src/kernel/snapshot/snapshot-paths.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

beforeAll(
  () =>
    void execFileSync(process.execPath, [join(root, 'dist/kernel/snapshot-main.js')], { stdio: 'inherit' }),
  180_000,
);

describe('the startup snapshot', () => {
  it("is used by the Node that made it, and not under the user's NODE_OPTIONS", () => {
    expect(canUseSnapshot({})).toBe(true);
    expect(startOptions({})).toContain('--snapshot-blob');
    expect(canUseSnapshot({ NODE_OPTIONS: '--max-old-space-size=300' })).toBe(false);
    expect(startOptions({ NODE_OPTIONS: '--max-old-space-size=300' })).not.toContain('--snapshot-blob');
    expect(startOptions({ RECKONER_SMALL_MEMORY: '1' })).not.toContain('--snapshot-blob');
  });

  it('answers nothing when a process did not begin from it', () => {
    expect(() =>
      execFileSync(process.execPath, [join(root, 'dist/kernel/main.js'), '--check'], { stdio: 'ignore' }),
    ).toThrow();
  });

  describe('by way of kernel.sh', () => {
    const folder = mkdtempSync(join(tmpdir(), 'reckoner-snapshot-'));
    const node = join(folder, 'node');
    const built = join(folder, 'kernel');
    afterAll(() => rmSync(folder, { recursive: true, force: true }));

    /** What kernel.sh would start, printed by a program in place of Node. */
    const started = (env: Record<string, string> = {}): string =>
      execFileSync('/bin/sh', [join(root, 'src/launch/kernel.sh'), node, built, '/tmp/c.json', '--flag'], {
        encoding: 'utf8',
        env: { PATH: process.env['PATH']!, ...env },
      }).trim();

    beforeAll(() => {
      mkdirSync(built);
      writeFileSync(node, '#!/bin/sh\necho "$@"\n');
      chmodSync(node, 0o755);
    });

    it.runIf(process.platform !== 'win32')('falls back unless all is as it was made', () => {
      const long = `--flag ${built}/main.js --connection /tmp/c.json`;
      expect(started()).toBe(long);
      writeFileSync(join(built, 'snapshot.blob'), '');
      expect(started()).toBe(long);
      writeFileSync(join(built, 'snapshot.key'), '1 2\n');
      expect(started()).toBe(long);
      const [inode, , , , , size] = execFileSync('ls', ['-Lin', node], { encoding: 'utf8' })
        .trim()
        .split(/\s+/);
      writeFileSync(join(built, 'snapshot.key'), `${inode} ${size} --another\n`);
      expect(started()).toBe(long);
      writeFileSync(join(built, 'snapshot.key'), `${inode} ${size} --flag\n`);
      expect(started()).toBe(
        `--flag --snapshot-blob ${built}/snapshot.blob ${built}/main.js --connection /tmp/c.json`,
      );
      expect(started({ NODE_OPTIONS: '--no-warnings' })).toBe(long);
      expect(started({ RECKONER_SMALL_MEMORY: '1' })).toBe(
        long.replace('--flag', '--flag --optimize-for-size'),
      );
    });
  });
});

describe('a kernel started from the snapshot', () => {
  // Inside the package, so that a module beside the notebook finds it by name.
  const folder = mkdtempSync(join(root, 'dist/try-'));
  const heard: JupyterMessage[] = [];
  let kernel: KernelProcess;

  async function run(code: string): Promise<string> {
    const msg_id = randomUUID();
    const content = {
      code,
      silent: false,
      store_history: true,
      allow_stdin: false,
      stop_on_error: true,
      user_expressions: {},
    };
    kernel.send({
      channel: 'shell',
      header: {
        msg_id,
        session: 's',
        username: 'u',
        date: new Date().toISOString(),
        msg_type: 'execute_request',
        version: '5.3',
      },
      parent_header: {},
      metadata: {},
      content,
    });
    const mine = (type: string): JupyterMessage | undefined =>
      heard.find((m) => m.parent_header['msg_id'] === msg_id && m.header['msg_type'] === type);
    for (const end = Date.now() + 60_000; Date.now() < end && !mine('execute_reply');)
      await new Promise((r) => setTimeout(r, 10));
    const answer = mine('execute_reply')?.content as
      { status: string; ename?: string; evalue?: string } | undefined;
    if (answer?.status !== 'ok') throw new Error(`${code}: ${answer?.ename}: ${answer?.evalue}`);
    for (
      const end = Date.now() + 5_000;
      Date.now() < end &&
      !heard.some((m) => m.parent_header['msg_id'] === msg_id && m.content['execution_state'] === 'idle');
    )
      await new Promise((r) => setTimeout(r, 5));
    const data = mine('execute_result')?.content['data'] as Record<string, string> | undefined;
    return data?.['text/plain'] ?? '';
  }

  beforeAll(async () => {
    writeFileSync(join(folder, 'own.mjs'), "export { Quantity, length } from 'joiners-reckoner';\n");
    kernel = await spawnKernel({ cwd: folder, env: { BENCH_HEIGHT: '850' } });
    kernel.onMessage((m) => heard.push(m));
  }, 60_000);
  afterAll(async () => {
    await kernel.shutdown();
    rmSync(folder, { recursive: true, force: true });
  });

  it('knows its own folder, environment and arguments, not those of its making', async () => {
    expect(await run('process.cwd()')).toBe(`'${folder}'`);
    expect(await run("process.env['BENCH_HEIGHT']")).toBe("'850'");
    expect(await run('import.meta.dirname')).toBe(`'${folder}'`);
    expect(await run('performance.now() < 60_000')).toBe('true');
  }, 60_000);

  it('reports where an error was thrown', async () => {
    await run(
      'const cut = (mm: number): number => {\n  if (mm < 0) throw new RangeError("too short");\n  return mm;\n};',
    );
    await expect(run('cut(-1)')).rejects.toThrow('RangeError: too short');
    const told = heard.findLast((m) => m.header['msg_type'] === 'error')!.content['traceback'] as string[];
    expect(told.join('\n')).toMatch(/at cut In\[\d+\], line 2, column 21/);
  }, 60_000);

  it('shares no random state with another: random numbers and identifiers differ', async () => {
    const first = await run('`${Math.random()} ${crypto.randomUUID()}`');
    const other = await spawnKernel({ cwd: folder });
    const here = kernel;
    other.onMessage((m) => heard.push(m));
    kernel = other;
    const second = await run('`${Math.random()} ${crypto.randomUUID()}`').finally(() => (kernel = here));
    await other.shutdown();
    const words = (text: string): string[] => text.replaceAll("'", '').split(' ');
    expect(words(first)[0]).not.toBe(words(second)[0]);
    expect(words(first)[1]).not.toBe(words(second)[1]);
  }, 60_000);

  it('has one package: a module beside the notebook gets the same', async () => {
    await run("import { Quantity as Own, length as ownLength } from './own.mjs'");
    expect(await run('Own === Quantity')).toBe('true');
    expect(await run("ownLength('1 in') instanceof Quantity")).toBe('true');
  }, 60_000);

  it('finds Node modules under their bare names too', async () => {
    expect(
      await run("import fs from 'fs'; import { join } from 'path'; fs.existsSync(join('/', 'none'))"),
    ).toBe('false');
    expect(await run("import * as os from 'node:os'; typeof os.EOL")).toBe("'string'");
    await expect(run("import { readFileSync } from 'fs'; readFileSync(true, 5)")).rejects.toThrow(
      /TypeScriptError/,
    );
  }, 60_000);

  it('checks types, draws, solves and makes frames', async () => {
    await expect(run("const wrong: number = 'text'")).rejects.toThrow(/not assignable to type 'number'/);
    await run("equilibriumMoisture({ temperature: '20 degC', humidity: '60 %' })");
    const shown = heard.findLast((m) => m.header['msg_type'] === 'execute_result')!.content['data'] as Record<
      string,
      string
    >;
    expect(shown['image/svg+xml'] ?? shown['text/html']).toContain('<svg');
    expect(await run('(await cuttingPlan(cuttingPlan.example)).recipe')).toBe("'cuttingPlan'");
    const page =
      "await buildNotes('Try').add(equilibriumMoisture({ temperature: '20 degC', humidity: '60 %' })).toHtml()";
    expect(await run(`(${page}).includes('class="katex')`)).toBe('true');
    expect(await run('(await frame([{ a: 1 }, { a: 2 }, { a: 3 }])).shape[0]')).toBe('3');
  }, 120_000);
});
