import { spawn, type ChildProcess } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import WebSocket from 'ws';
import { notebookOf } from './server-bench.js';

// The real server as `npm start` starts it: supervisor, server, kernels and page maker, each a process.
const script = fileURLToPath(new URL('../../dist/server/serve.js', import.meta.url));
let above = '';
let main: ChildProcess;
let base = '';
let key = '';
let output = '';

beforeEach(async () => {
  above = await mkdtemp(join(tmpdir(), 'reckoner-supervisor-'));
  await writeFile(join(above, '01-loop.ipynb'), JSON.stringify(notebookOf('for (;;);')));
  const env = {
    ...process.env,
    XDG_STATE_HOME: join(above, '.state'),
    XDG_CACHE_HOME: join(above, '.cache'),
  };
  main = spawn(process.execPath, [script, '--port', '0', '--no-browser', '--notebooks', above], { env });
  output = '';
  main.stdout?.on('data', (bytes: Buffer) => (output += bytes.toString()));
  await expect.poll(() => output, { timeout: 60_000 }).toMatch(/#open=/);
  const address = new URL(/http:\S+/.exec(output)?.[0] ?? '');
  base = address.origin;
  const body = JSON.stringify({ key: address.hash.replace('#open=', '') });
  key = ((await (await fetch(`${base}/reckoner/open`, { method: 'POST', body })).json()) as { key: string })
    .key;
}, 90_000);
afterEach(async () => {
  main.kill('SIGKILL');
  await new Promise((resolve) => setTimeout(resolve, 2500));
  await rm(above, { recursive: true, force: true });
}, 20_000);

async function api<T>(method: string, path: string, body?: object): Promise<T> {
  const answer = await fetch(`${base}${path}`, {
    method,
    headers: { Authorization: `token ${key}` },
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  return (answer.status === 204 ? undefined : await answer.json()) as T;
}

interface Session {
  readonly id: string;
  readonly kernel: { readonly id: string };
}
const openSession = (): Promise<Session> =>
  api('POST', '/api/sessions', {
    path: 'a.ipynb',
    name: 'a',
    type: 'notebook',
    kernel: { name: 'reckoner' },
  });

function joinKernel(kernel: string): Promise<WebSocket> {
  const socket = new WebSocket(
    `${base.replace('http', 'ws')}/api/kernels/${kernel}/channels?session_id=tab`,
    ['reckoner', `reckoner.key.${key}`],
  );
  return new Promise((resolve, reject) => socket.on('open', () => resolve(socket)).on('error', reject));
}

/** Runs code; the text of its result or of what it printed. */
function run(socket: WebSocket, code: string): Promise<string> {
  const id = `m${Math.random()}`;
  const header = { msg_id: id, msg_type: 'execute_request', session: 'tab', username: 'u', version: '5.3' };
  const content = { code, silent: false, store_history: true, user_expressions: {}, allow_stdin: false };
  return new Promise((resolve) => {
    socket.on('message', (data: Buffer) => {
      const message = JSON.parse(data.toString()) as {
        parent_header: { msg_id?: string };
        content: { data?: Record<string, string>; text?: string; evalue?: string };
      };
      if (message.parent_header.msg_id !== id) return;
      const { data: shown, text, evalue } = message.content;
      const found = shown?.['text/plain'] ?? text ?? evalue;
      if (found !== undefined) resolve(found.trim());
    });
    socket.send(
      JSON.stringify({ channel: 'shell', header, parent_header: {}, metadata: {}, content, buffers: [] }),
    );
  });
}

/** Processes below the supervisor by a word of their command line. */
async function processes(word: string): Promise<number[]> {
  const found: number[] = [];
  for (const pid of (await readdir('/proc')).filter((name) => /^\d+$/.test(name))) {
    const args = await readFile(`/proc/${pid}/cmdline`, 'utf8').catch(() => '');
    const environment = await readFile(`/proc/${pid}/environ`, 'utf8').catch(() => '');
    if (args.includes(word) && environment.includes(`XDG_STATE_HOME=${above}`)) found.push(Number(pid));
  }
  return found;
}
/** A process that has ended but was not yet collected by its parent (state Z) is no longer alive. */
function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return !/^\d+ \(.*\) Z/.test(readFileSync(`/proc/${pid}/stat`, 'utf8'));
  } catch {
    return false;
  }
}

describe('the server under its supervisor', () => {
  it('killed, it is there again at the same address with the same key; session, kernel and values live on', async () => {
    const session = await openSession();
    const before = await joinKernel(session.kernel.id);
    before.on('error', () => undefined);
    expect(await run(before, 'const kept = 41; kept')).toBe('41');
    const [server = 0] = await processes('--server');
    process.kill(server, 'SIGKILL');
    await expect
      .poll(() => api<Session[]>('GET', '/api/sessions').catch(() => []), { timeout: 30_000 })
      .toMatchObject([{ id: session.id, kernel: { id: session.kernel.id } }]);
    const after = await joinKernel(session.kernel.id);
    expect(await run(after, 'kept + 1')).toBe('42');
    expect(output).toContain('started again; kernels go on');
    after.close();
  }, 120_000);

  it('when the supervisor is killed, every process below it is gone within 2 s, also one that loops and what a cell started', async () => {
    const session = await openSession();
    const socket = await joinKernel(session.kernel.id);
    socket.on('error', () => undefined);
    const started = await run(
      socket,
      "import { spawn } from 'node:child_process';\nconsole.log(spawn('sh', ['-c', 'trap \"\" INT; while :; do sleep 1; done']).pid)",
    );
    const child = Number(started);
    expect(child).toBeGreaterThan(1);
    void run(socket, 'for (;;);');
    await api('POST', '/reckoner/run', { path: '01-loop.ipynb', pageWanted: true });
    await expect.poll(() => output, { timeout: 60_000 }).toContain('01-loop.ipynb: cell 1 of 1');
    const below = [
      child,
      ...(await processes('--server')),
      ...(await processes('--make-pages')),
      ...(await processes('kernel/main')),
    ];
    expect(below.length).toBeGreaterThanOrEqual(4);
    process.kill(main.pid ?? 0, 'SIGKILL');
    await expect.poll(() => below.filter(isAlive), { timeout: 2000 }).toEqual([]);
  }, 120_000);

  it.each(['SIGTERM', 'SIGINT'] as const)(
    '%s ends all within 3 s while a cell loops',
    async (signal) => {
      const session = await openSession();
      const socket = await joinKernel(session.kernel.id);
      socket.on('error', () => undefined);
      await run(socket, '1');
      void run(socket, 'for (;;);');
      await new Promise((resolve) => setTimeout(resolve, 300));
      const below = [...(await processes('--server')), ...(await processes('kernel/main'))];
      const ended = new Promise((resolve) => main.once('exit', resolve));
      const began = Date.now();
      main.kill(signal);
      await ended;
      expect(Date.now() - began).toBeLessThan(3000);
      await expect.poll(() => below.filter(isAlive), { timeout: 2000 }).toEqual([]);
    },
    120_000,
  );

  it('keeps what it remembers in folders of the user alone', async () => {
    for (const folder of ['.state/joiners-reckoner', '.cache/joiners-reckoner'])
      expect((await stat(join(above, folder))).mode & 0o777, folder).toBe(0o700);
  });
});
