import {
  KernelManager,
  KernelSpecManager,
  ContentsManager,
  ServerConnection,
  SessionManager,
  type Session,
} from '@jupyterlab/services';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import WebSocket from 'ws';
import { binaryProtocol, decode, encode } from '../../src/server/kernel-websocket.js';
import type { JupyterMessage } from '../../src/kernel/kernel-process.js';
import { notebookOf, openBench, type Bench } from './server-bench.js';
import { fakeKernels } from './fake-kernel.js';

// The public Jupyter client, as JupyterLab itself uses it, from Node: whatever it can do, any Jupyter client can.
let bench: Bench;
let settings: ServerConnection.ISettings;
let sessions: SessionManager;
let kernels: KernelManager;

beforeAll(async () => {
  bench = await openBench();
  settings = ServerConnection.makeSettings({
    baseUrl: bench.base,
    wsUrl: bench.base.replace('http', 'ws'),
    token: bench.server.sessionKey,
    appendToken: true,
    WebSocket: WebSocket as never,
    fetch,
    Request,
    Headers,
  });
  kernels = new KernelManager({ serverSettings: settings });
  sessions = new SessionManager({ serverSettings: settings, kernelManager: kernels });
});
afterAll(async () => {
  sessions.dispose();
  kernels.dispose();
  await bench.close();
});

const start = (path: string): Promise<Session.ISessionConnection> =>
  sessions.startNew({ path, name: path, type: 'notebook', kernel: { name: 'reckoner' } });

async function run(
  session: Session.ISessionConnection,
  code: string,
): Promise<{ status: string; text: string }> {
  const future = session.kernel!.requestExecute({ code });
  let text = '';
  future.onIOPub = (message) => {
    if (message.header.msg_type === 'execute_result')
      text = String((message.content as { data: Record<string, unknown> }).data['text/plain']);
    if (message.header.msg_type === 'error') text = (message.content as { evalue: string }).evalue;
  };
  const reply = await future.done;
  return { status: reply.content.status, text };
}

describe('with the public Jupyter client', () => {
  it('tells its kernel spec', async () => {
    const specs = new KernelSpecManager({ serverSettings: settings });
    await specs.ready;
    expect(specs.specs?.default).toBe('reckoner');
    expect(specs.specs?.kernelspecs['reckoner']?.language).toBe('typescript');
    specs.dispose();
  });

  it('reads, saves and lists through the contents manager', async () => {
    const contents = new ContentsManager({ serverSettings: settings });
    await contents.save('client.ipynb', { type: 'notebook', format: 'json', content: notebookOf('1 + 1') });
    const read = await contents.get('client.ipynb', { content: true, hash: true });
    expect((read.content as { cells: unknown[] }).cells).toHaveLength(1);
    expect(read.hash).toMatch(/^[0-9a-f]{64}$/);
    expect((await contents.newUntitled({ type: 'notebook' })).path).toBe('untitled.ipynb');
    expect((await contents.copy('client.ipynb', '')).path).toBe('client-copy.ipynb');
    expect(((await contents.get('')).content as { name: string }[]).map(({ name }) => name)).toEqual([
      'client-copy.ipynb',
      'client.ipynb',
      'untitled.ipynb',
    ]);
    const point = await contents.createCheckpoint('client.ipynb');
    expect(await contents.listCheckpoints('client.ipynb')).toEqual([point]);
    contents.dispose();
  });

  it('runs cells in the folder of the notebook, and says what fails', async () => {
    const session = await start('run.ipynb');
    expect(await run(session, '40 + 2')).toEqual({ status: 'ok', text: '40 + 2' });
    expect((await run(session, 'cwd')).text).toMatch(/notebooks$/);
    expect(await run(session, 'fail')).toEqual({ status: 'error', text: 'width: got nothing' });
    await session.shutdown();
  });

  it('asks the person and hands the answer on', async () => {
    const session = await start('ask.ipynb');
    const future = session.kernel!.requestExecute({ code: 'ask', allow_stdin: true });
    future.onStdin = () =>
      future.sendInputReply({ status: 'ok', value: '640 mm' }, future.msg.header as never);
    let text = '';
    future.onIOPub = (message) => {
      if (message.header.msg_type === 'execute_result')
        text = String((message.content as { data: Record<string, unknown> }).data['text/plain']);
    };
    await future.done;
    expect(text).toBe('got 640 mm');
    await session.shutdown();
  });

  it('interrupts a cell that waits', async () => {
    const session = await start('wait.ipynb');
    await run(session, '1');
    const future = session.kernel!.requestExecute({ code: 'wait' });
    await new Promise((resolve) => setTimeout(resolve, 50));
    await session.kernel!.interrupt();
    expect((await future.done).content.status).toBe('error');
    await session.shutdown();
  });

  it('restarts: same kernel id, new process', async () => {
    const session = await start('again.ipynb');
    await run(session, '1');
    const [id, before] = [session.kernel!.id, fakeKernels.length];
    await session.kernel!.restart();
    expect(fakeKernels.length).toBe(before + 1);
    expect(session.kernel!.id).toBe(id);
    expect((await run(session, 'after')).text).toBe('after');
    await session.shutdown();
  });

  it('tells that a kernel died, and starts another for the same notebook', async () => {
    const session = await start('dies.ipynb');
    await run(session, '1');
    const dead = new Promise<string>((resolve) =>
      session.statusChanged.connect((_, status) => status === 'dead' && resolve(status)),
    );
    session.kernel!.requestExecute({ code: 'crash' }).done.catch(() => undefined);
    expect(await dead).toBe('dead');
    await session.changeKernel({ name: 'reckoner' });
    expect((await run(session, 'back')).text).toBe('back');
    await session.shutdown();
  });

  it('two clients on one notebook share one kernel; each gets its own replies, both see the results', async () => {
    const one = await start('shared.ipynb');
    const otherKernels = new KernelManager({ serverSettings: settings });
    const other = new SessionManager({ serverSettings: settings, kernelManager: otherKernels });
    const two = await other.startNew({
      path: 'shared.ipynb',
      name: 'shared',
      type: 'notebook',
      kernel: { name: 'reckoner' },
    });
    expect(two.kernel!.id).toBe(one.kernel!.id);
    await two.kernel!.info;
    const seen: string[] = [];
    two.iopubMessage.connect((_, message) => void seen.push(message.header.msg_type));
    const replies: string[] = [];
    two.kernel!.anyMessage.connect((_, { msg, direction }) => {
      if (direction === 'recv' && msg.channel === 'shell') replies.push(msg.header.msg_type);
    });
    await run(one, 'for both');
    await new Promise((resolve) => setTimeout(resolve, 60));
    expect(seen).toContain('execute_result');
    expect(replies).not.toContain('execute_reply');
    await one.shutdown();
    other.dispose();
    otherKernels.dispose();
  });

  it('a kernel that is asked for by another name is refused', async () => {
    expect((await bench.ask('POST', '/api/kernels', { name: 'python3' })).status).toBe(404);
    expect((await bench.ask('GET', '/api/kernels/none')).status).toBe(404);
    expect((await bench.ask('POST', '/api/sessions', { kernel: {} })).status).toBe(400);
  });
});

describe('the binary message form', () => {
  const json = fc.dictionary(fc.string(), fc.oneof(fc.string(), fc.integer(), fc.boolean()), { maxKeys: 4 });
  it('reads back what it writes, buffers too', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('shell', 'iopub', 'stdin', 'control'),
        json,
        json,
        json,
        json,
        fc.array(fc.uint8Array({ maxLength: 50 }), { maxLength: 3 }),
        (channel, header, parent, metadata, content, buffers) => {
          const message = {
            channel,
            header,
            parent_header: parent,
            metadata,
            content,
            buffers,
          } as JupyterMessage;
          const back = decode(encode(message));
          expect({ ...back, buffers: back.buffers?.map((b) => [...b]) }).toEqual({
            ...message,
            buffers: buffers.map((b) => [...b]),
          });
        },
      ),
    );
  });

  it('anything else closes that socket, and the kernel lives on', async () => {
    const session = await start('hostile.ipynb');
    const address = `${bench.base.replace('http', 'ws')}/api/kernels/${session.kernel!.id}/channels?token=${bench.server.sessionKey}`;
    const good = encode({
      channel: 'shell',
      header: { msg_id: '1', msg_type: 'x', session: 's' },
      parent_header: {},
      metadata: {},
      content: {},
    });
    const bad: (Buffer | string)[] = [
      '',
      'nonsense',
      '{}',
      '[]',
      'null',
      '{"channel":"iopub","header":{"msg_id":"1","msg_type":"x"},"content":{}}',
      Buffer.alloc(0),
      Buffer.alloc(7),
      Buffer.alloc(64, 255),
      good.subarray(0, 30),
      Buffer.concat([good.subarray(0, 8), Buffer.alloc(60, 3)]),
    ];
    for (const data of bad) {
      const code = await new Promise<number>((resolve) => {
        const socket = new WebSocket(address, [binaryProtocol]);
        socket.on('open', () => socket.send(data, { binary: Buffer.isBuffer(data) }));
        socket.on('close', resolve);
      });
      expect(code).toBe(1007);
    }
    expect((await run(session, 'alive')).text).toBe('alive');
    await session.shutdown();
  });
});

describe('kernels nobody has open', () => {
  it('are ended after a time, those in use are not', async () => {
    const { Kernels } = await import('../../src/server/kernels.js');
    const { spawnFakeKernel } = await import('./fake-kernel.js');
    const own = new Kernels(spawnFakeKernel);
    const [idle, open] = [own.start('/', 'reckoner'), own.start('/', 'reckoner')];
    open.connections = 1;
    idle.lastActivity = open.lastActivity = new Date(Date.now() - 10_000);
    expect(await own.sweepIdle(60_000)).toBe(0);
    expect(await own.sweepIdle(5_000)).toBe(1);
    expect(own.list()).toEqual([open]);
    await own.removeAll();
  });
});
