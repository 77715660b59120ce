/** The I/O thread for Jupyter: five ZeroMQ sockets, bound before the compiler is loaded. */
import { readFileSync } from 'node:fs';
import { workerData } from 'node:worker_threads';
import { Publisher, Reply, Router } from 'zeromq';
import type { OutgoingMessage, IoThreadData } from './ipc.js';
import { InvalidMessage, deserialize, serialize } from './frames.js';
import { IoThread } from './io-thread.js';

interface Connection {
  transport: string;
  ip: string;
  key: string;
  signature_scheme: string;
  shell_port: number;
  control_port: number;
  stdin_port: number;
  iopub_port: number;
  hb_port: number;
}

const data = workerData as IoThreadData;
const connection = JSON.parse(
  readFileSync((data.transport as { connectionFile: string }).connectionFile, 'utf8'),
) as Connection;
const scheme = connection.signature_scheme || 'hmac-sha256';
const address = (port: number): string =>
  connection.transport === 'ipc'
    ? `ipc://${connection.ip}-${port}`
    : `${connection.transport || 'tcp'}://${connection.ip}:${port}`;

const routers = {
  shell: new Router({ linger: 1000 }),
  control: new Router({ linger: 1000 }),
  stdin: new Router({ linger: 1000 }),
};
const iopub = new Publisher({ linger: 1000, sendHighWaterMark: 0 });
const heartbeat = new Reply({ linger: 0 });

/** The ZeroMQ identities of the client behind each of the latest requests. */
const clients = new Map<number, Buffer[]>();
let lastClient = 0;

// A socket takes one send at a time: each waits for the one before it.
const tails = new Map<object, Promise<void>>();
function push(socket: Router | Publisher, frames: (string | Uint8Array)[]): Promise<void> {
  const tail = (tails.get(socket) ?? Promise.resolve())
    .then(() => socket.send(frames as Buffer[]))
    .catch(() => undefined);
  tails.set(socket, tail);
  return tail;
}

const transport = {
  send(message: OutgoingMessage): Promise<void> {
    if (message.channel === 'iopub')
      return push(iopub, serialize(message, [Buffer.from(`kernel.${message.type}`)], connection.key, scheme));
    const identities = clients.get(message.client ?? -1);
    if (!identities) return Promise.resolve();
    return push(routers[message.channel], serialize(message, identities, connection.key, scheme));
  },
  async close(): Promise<void> {
    await Promise.all(tails.values());
    for (const socket of [...Object.values(routers), iopub, heartbeat]) socket.close();
    // The sockets' own thread needs a moment to send the last frames.
    await new Promise((resolve) => setTimeout(resolve, 60));
  },
};

async function listen(channel: 'shell' | 'control' | 'stdin', ioThread: IoThread): Promise<void> {
  for await (const frames of routers[channel]) {
    try {
      const { message, identities } = deserialize(frames, channel, connection.key, scheme);
      clients.set(++lastClient, identities);
      const [oldest] = clients.keys();
      if (oldest !== undefined && clients.size > 10_000) clients.delete(oldest);
      ioThread.receive(message, lastClient);
    } catch (error) {
      if (!(error instanceof InvalidMessage)) throw error;
      process.stderr.write(`reckoner: dropped a message on ${channel}: ${error.message}\n`);
    }
  }
}

async function beat(): Promise<void> {
  for await (const frames of heartbeat) await heartbeat.send(frames);
}

await Promise.all([
  heartbeat.bind(address(connection.hb_port)),
  iopub.bind(address(connection.iopub_port)),
  ...(['shell', 'control', 'stdin'] as const).map((name) =>
    routers[name].bind(address(connection[`${name}_port`])),
  ),
]);
const ioThread = new IoThread(data, transport);
const closed = (error: unknown): void => {
  if (!/closed/i.test(String(error))) process.stderr.write(`reckoner: ${String(error)}\n`);
};
for (const channel of ['shell', 'control', 'stdin'] as const) listen(channel, ioThread).catch(closed);
beat().catch(closed);

// A kernel whose parent process has died ends too.
if (process.env['JPY_PARENT_PID'] && process.ppid > 1) {
  const parent = process.ppid;
  setInterval(() => process.ppid !== parent && void ioThread.shutdown(), 2000).unref();
}
