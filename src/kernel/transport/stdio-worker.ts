/** The I/O thread for our own notebook server: one line of JSON per message, over an inherited descriptor. */
import { Socket } from 'node:net';
import { workerData } from 'node:worker_threads';
import type { JupyterMessage } from '../message.js';
import type { OutgoingMessage, IoThreadData } from './ipc.js';
import { headerFor } from './frames.js';
import { IoThread } from './io-thread.js';
import { signalChildren } from './interrupt.js';
import { subscribeLines, decodeLine } from './json-lines.js';

const data = workerData as IoThreadData;
const socket = new Socket({
  fd: (data.transport as { descriptor: number }).descriptor,
  readable: true,
  writable: true,
});

const transport = {
  send(m: OutgoingMessage): Promise<void> {
    const buffers = (m.buffers ?? []).map((part) => Buffer.from(part).toString('base64'));
    const line =
      `{"channel":${JSON.stringify(m.channel)},"header":${JSON.stringify(headerFor(m.type))},"parent_header":${m.parent},` +
      `"metadata":${m.metadata},"content":${m.content},"buffers":${JSON.stringify(buffers)}}\n`;
    return new Promise((resolve) => socket.write(line, () => resolve()));
  },
  close: () => new Promise<void>((resolve) => socket.end(() => resolve())),
};

const ioThread = new IoThread(data, transport);
subscribeLines(socket, (line) => {
  const message: JupyterMessage | undefined = decodeLine(line);
  if (message) ioThread.receive(message, 0);
  else process.stderr.write('reckoner: dropped a line that is not a message\n');
});
// The server has gone.
socket.on('close', () => void ioThread.shutdown());
// It ended without a word: whatever a cell does, this kernel and what it started end within a second.
socket.on('end', () => {
  setTimeout(() => {
    signalChildren('SIGKILL');
    process.kill(process.pid, 'SIGKILL');
  }, 800);
});
