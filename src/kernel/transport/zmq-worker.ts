/** The wires' thread for Jupyter: five zeromq sockets, bound before the compiler is loaded. */
import { readFileSync } from 'node:fs';
import { workerData } from 'node:worker_threads';
import { Publisher, Reply, Router } from 'zeromq';
import type { JupyterMessage } from '../message.js';
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

/** Where answers go: the identities of the client behind each request, for the latest requests. */
const routes = new Map<number, Buffer[]>();
let lastRoute = 0;

// A socket takes one send at a time: each waits for the one before it.
const tails = new Map<object, Promise<void>>();
function push(socket: Router | Publisher, frames: (string | Uint8Array)[]): Promise<void> {
  const tail = (tails.get(socket) ?? Promise.resolve())
    .then(() => socket.send(frames as Buffer[]))
    .catch(() => undefined);
  tails.set(socket, tail);
  return tail;
}

const wire = {
  send(message: OutgoingMessage): Promise<void> {
    if (message.channel === 'iopub')
      return push(iopub, serialize(message, [Buffer.from(`kernel.${message.type}`)], connection.key, scheme));
    const identities = routes.get(message.client ?? -1);
    if (!identities) return Promise.resolve();
    return push(routers[message.channel], serialize(message, identities, connection.key, scheme));
  },
  async close(): Promise<void> {
    await Promise.all(tails.values());
    for (const socket of [...Object.values(routers), iopub, heartbeat]) socket.close();
    // The sockets' own thread needs a moment to put the last frames on the wire.
    await new Promise((resolve) => setTimeout(resolve, 60));
  },
};

async function listen(channel: 'shell' | 'control' | 'stdin', front: IoThread): Promise<void> {
  for await (const frames of routers[channel]) {
    try {
      const { message, identities } = deserialize(frames, channel, connection.key, scheme);
      routes.set(++lastRoute, identities);
      if (routes.size > 10_000) routes.delete(routes.keys().next().value!);
      front.receive(message, lastRoute);
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
const front = new IoThread(data, wire);
const closed = (error: unknown): void => {
  if (!/closed/i.test(String(error))) process.stderr.write(`reckoner: ${String(error)}\n`);
};
for (const channel of ['shell', 'control', 'stdin'] as const) listen(channel, front).catch(closed);
beat().catch(closed);

// A kernel whose starter has died has nobody left to serve.
if (process.env['JPY_PARENT_PID'] && process.ppid > 1) {
  const starter = process.ppid;
  setInterval(() => process.ppid !== starter && void front.shutdown(), 2000).unref();
}
