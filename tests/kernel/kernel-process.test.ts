// The kernel in a process of its own over its private channel, as the notebook server uses it. Needs the build.
import { spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { spawnKernel, type JupyterMessage, type KernelProcess } from '../../src/kernel/kernel-process.js';
import { distPath } from '../../src/kernel/dist-path.js';
import { buildSnapshot } from '../../src/kernel/snapshot/snapshot-builder.js';
import { startOptions } from '../../src/kernel/snapshot/snapshot-paths.js';

// On a busy machine a first cell, which loads the package or Node's types, takes a while.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

let kernel: KernelProcess;
const heard: JupyterMessage[] = [];

function request(
  channel: 'shell' | 'control' | 'stdin',
  msg_type: string,
  content: Record<string, unknown>,
): string {
  const msg_id = randomUUID();
  kernel.send({
    channel,
    header: { msg_id, session: 's', username: 'u', date: new Date().toISOString(), msg_type, version: '5.3' },
    parent_header: {},
    metadata: {},
    content,
  });
  return msg_id;
}

async function until(found: (m: JupyterMessage) => boolean): Promise<JupyterMessage> {
  for (const end = Date.now() + 45_000; Date.now() < end; await new Promise((r) => setTimeout(r, 5))) {
    const message = heard.find(found);
    if (message) return message;
  }
  throw new Error(`not heard among: ${heard.map((m) => m.header['msg_type']).join(' ')}`);
}

const reply = (id: string): Promise<JupyterMessage> =>
  until((m) => m.parent_header['msg_id'] === id && String(m.header['msg_type']).endsWith('_reply'));
const execute = (code: string): string =>
  request('shell', 'execute_request', {
    code,
    silent: false,
    store_history: true,
    allow_stdin: true,
    stop_on_error: true,
    user_expressions: {},
  });

const starts: [name: string, env: Record<string, string>][] = [
  ['from the startup snapshot', {}],
  ['without the startup snapshot', { RECKONER_SMALL_MEMORY: '1' }],
];

describe.each(starts)('a kernel child %s', (_name, env) => {
  beforeAll(async () => {
    expect(await buildSnapshot()).toBe(true);
    expect(startOptions({ ...process.env, ...env }).includes('--snapshot-blob')).toBe(
      Object.keys(env).length === 0,
    );
    kernel = await spawnKernel({ cwd: tmpdir(), env: { BENCH_HEIGHT: '850', ...env } });
    kernel.onMessage((m) => heard.push(m));
  }, 180_000);
  afterAll(() => kernel.shutdown());

  it('answers kernel_info and runs cells', async () => {
    expect((await reply(request('shell', 'kernel_info_request', {}))).content).toMatchObject({
      implementation: 'reckoner',
      protocol_version: '5.3',
    });
    const id = execute('const n: number = 6; n * 7');
    expect((await reply(id)).content).toMatchObject({ status: 'ok', execution_count: 1 });
    const shown = await until(
      (m) => m.parent_header['msg_id'] === id && m.header['msg_type'] === 'execute_result',
    );
    expect(shown).toMatchObject({ channel: 'iopub', content: { data: { 'text/plain': '42' } } });
  });
  it('gives cells the environment and the folder', async () => {
    const id = execute('[process.env["BENCH_HEIGHT"], process.cwd()]');
    const shown = await until(
      (m) => m.parent_header['msg_id'] === id && m.header['msg_type'] === 'execute_result',
    );
    expect((shown.content['data'] as Record<string, string>)['text/plain']).toContain('850');
  });
  it('stops a loop that hears nothing, keeps its values, and drops what was queued behind it', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'reckoner-loop-'));
    const sign = join(folder, 'turning');
    const loop = execute(
      `import { writeFileSync } from 'node:fs';\nlet spun = 0; writeFileSync(${JSON.stringify(sign)}, ''); while (true) spun = 1`,
    );
    const queued = execute('spun = 99');
    // The cell is announced before it is compiled, and what a loop prints waits until it gives way: a file is the sign that it turns.
    for (const end = Date.now() + 45_000; !existsSync(sign) && Date.now() < end;)
      await new Promise((r) => setTimeout(r, 5));
    expect(existsSync(sign)).toBe(true);
    rmSync(folder, { recursive: true, force: true });
    const begin = Date.now();
    await kernel.interrupt();
    expect(Date.now() - begin).toBeLessThan(3000);
    expect((await reply(loop)).content).toMatchObject({ status: 'error', ename: 'Interrupted' });
    expect((await reply(queued)).content).toMatchObject({ status: 'aborted' });
    const id = execute('spun');
    expect(
      (await until((m) => m.parent_header['msg_id'] === id && m.header['msg_type'] === 'execute_result'))
        .content,
    ).toMatchObject({ data: { 'text/plain': '1' } });
  });
  it('runs a cell that is sent as soon as an error is seen', async () => {
    for (let round = 0; round < 40; round++) {
      const failing = randomUUID();
      const sent = new Promise<string>((resolve) => {
        const off = kernel.onMessage((m) => {
          if (m.header['msg_type'] !== 'error' || m.parent_header['msg_id'] !== failing) return;
          off();
          resolve(execute(`${round} + 1`));
        });
      });
      kernel.send({
        channel: 'shell',
        header: {
          msg_id: failing,
          session: 's',
          username: 'u',
          date: '',
          msg_type: 'execute_request',
          version: '5.3',
        },
        parent_header: {},
        metadata: {},
        content: {
          code: 'throw new Error("no glue")',
          silent: false,
          store_history: true,
          allow_stdin: false,
          stop_on_error: true,
          user_expressions: {},
        },
      });
      expect((await reply(await sent)).content['status'], `round ${round}`).toBe('ok');
    }
  });
  it('asks the user and takes the answer', async () => {
    const id = execute('prompt("length?") + "!"');
    await until((m) => m.channel === 'stdin' && m.parent_header['msg_id'] === id);
    request('stdin', 'input_reply', { value: '900' });
    expect(
      (await until((m) => m.parent_header['msg_id'] === id && m.header['msg_type'] === 'execute_result'))
        .content,
    ).toMatchObject({ data: { 'text/plain': "'900!'" } });
  });
  it('carries buffers both ways', async () => {
    await reply(
      execute(
        "comms.register('raw', (c) => { c.onMessage = (_, buffers) => c.send({}, {}, buffers.map((b) => new Uint8Array(b).reverse())) })",
      ),
    );
    request('shell', 'comm_open', { comm_id: 'r1', target_name: 'raw', data: {} });
    kernel.send({
      channel: 'shell',
      header: { msg_id: 'b1', session: 's', username: 'u', date: '', msg_type: 'comm_msg', version: '5.3' },
      parent_header: {},
      metadata: {},
      content: { comm_id: 'r1', data: {} },
      buffers: [new Uint8Array([1, 2, 3])],
    });
    const back = await until((m) => m.header['msg_type'] === 'comm_msg');
    expect([...back.buffers![0]!]).toEqual([3, 2, 1]);
  });
  it('refuses a folder that is not there', async () => {
    await expect(spawnKernel({ cwd: '/no/such/folder' })).rejects.toThrow(
      'there is no folder /no/such/folder',
    );
  });
  it('says how it ended when it dies', async () => {
    const short = await spawnKernel({ cwd: tmpdir() });
    process.kill(short.pid, 'SIGKILL');
    expect(await short.exited).toEqual({ code: null, signal: 'SIGKILL' });
    short.send({ channel: 'shell', header: {}, parent_header: {}, metadata: {}, content: {} });
    await short.shutdown();
  });
  it('does not take its server with it when it is ended by force with words unread', async () => {
    const short = await spawnKernel({ cwd: tmpdir() });
    // Stopped first, so that what is sent now is certain not to be read.
    process.kill(short.pid, 'SIGSTOP');
    const content = { code: '1'.repeat(1000) };
    for (let n = 0; n < 50; n++)
      short.send({
        channel: 'shell',
        header: {
          msg_id: 'x',
          session: 's',
          username: 'u',
          date: '',
          msg_type: 'execute_request',
          version: '5.3',
        },
        parent_header: {},
        metadata: {},
        content,
      });
    await new Promise((r) => setTimeout(r, 50));
    process.kill(short.pid, 'SIGKILL');
    expect(await short.exited).toEqual({ code: null, signal: 'SIGKILL' });
    // The reset of the pipe is heard a moment later, here, as an error that nobody may be left to catch.
    await new Promise((r) => setTimeout(r, 100));
  });
  it('ends after its server was ended by force with words unread, also out of a loop', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'reckoner-orphan-'));
    const sign = join(folder, 'turning');
    const code = `import { writeFileSync } from 'node:fs';\nwriteFileSync(${JSON.stringify(sign)}, ''); while (true) {}`;
    const server = spawn(
      process.execPath,
      [
        '--input-type=module',
        '--eval',
        `
      import { existsSync } from 'node:fs';
      import { spawnKernel } from ${JSON.stringify(pathToFileURL(distPath('kernel/kernel-process.js')).href)};
      const kernel = await spawnKernel({ cwd: ${JSON.stringify(folder)} });
      process.stdout.write(String(kernel.pid));
      const request = (msg_type, content) => kernel.send({ channel: 'shell', header: { msg_id: 'x', session: 's', username: 'u', date: '', msg_type, version: '5.3' }, parent_header: {}, metadata: {}, content });
      request('execute_request', { code: ${JSON.stringify(code)} });
      for (const end = Date.now() + 60000; !existsSync(${JSON.stringify(sign)}) && Date.now() < end; ) await new Promise((r) => setTimeout(r, 5));
      // Answered at once by the I/O thread, and never read.
      for (let n = 0; n < 20; n++) request('kernel_info_request', {});
      await new Promise((r) => setTimeout(r, 0));
      for (const end = Date.now() + 100; Date.now() < end; );
      process.kill(process.pid, 'SIGKILL');
    `,
      ],
      { stdio: ['ignore', 'pipe', 'pipe'] },
    );
    const said: string[] = [];
    server.stdout.on('data', (bytes: Buffer) => said.push(String(bytes)));
    const complained: string[] = [];
    server.stderr.on('data', (bytes: Buffer) => complained.push(String(bytes)));
    // Its kernel holds the same standard error: closed is closed on both.
    const closed = new Promise<string>((resolve) => server.once('close', () => resolve('ended')));
    const end = await Promise.race([closed, new Promise((r) => setTimeout(r, 90_000))]);
    if (end !== 'ended') process.kill(Number(said.join('')), 'SIGKILL');
    expect(end).toBe('ended');
    expect(existsSync(sign)).toBe(true);
    expect(complained.join('')).not.toContain('Error');
    rmSync(folder, { recursive: true, force: true });
  });
  it('shuts down cleanly, also out of a loop', async () => {
    const other = await spawnKernel({ cwd: tmpdir() });
    other.send({
      channel: 'shell',
      header: {
        msg_id: 'x',
        session: 's',
        username: 'u',
        date: '',
        msg_type: 'execute_request',
        version: '5.3',
      },
      parent_header: {},
      metadata: {},
      content: { code: 'while (true) {}' },
    });
    await new Promise((r) => setTimeout(r, 900));
    await other.shutdown();
    expect((await other.exited).signal === null || (await other.exited).signal === 'SIGKILL').toBe(true);
  });
});
