import { WebSocket, type RawData } from 'ws';
import type { JupyterMessage } from '../kernel/message.js';
import type { Kernel } from './kernel.js';

export const binaryProtocol = 'v1.kernel.websocket.jupyter.org';
/** Offered by a page that shows its key as a protocol: a browser needs one of its offers accepted. */
export const plainProtocol = 'reckoner';

/** A client that reads so slowly that this much waits for it is let go: the kernel must not fill our memory. */
const mostWaiting = 256 * 1024 * 1024;

/**
 * Joins one WebSocket to a kernel. Replies on shell, control and stdin go to the client that asked; iopub goes to everyone, so that
 * two tabs on one notebook both see what runs. `session` is the client's own id: a client that comes back is known by it.
 */
export function connectWebSocket(socket: WebSocket, kernel: Kernel, session?: string): void {
  const binary = socket.protocol === binaryProtocol;
  const asked = new Set<string>();
  const isMine = (parent: Readonly<Record<string, unknown>>): boolean =>
    asked.has(idOf(parent)) || (session !== undefined && parent['session'] === session);
  kernel.connections += 1;
  const stop = kernel.listen((message) => {
    if (message.channel !== 'iopub' && !isMine(message.parent_header)) return;
    if (message.channel === 'shell') asked.delete(idOf(message.parent_header));
    if (socket.readyState !== WebSocket.OPEN) return;
    if (socket.bufferedAmount > mostWaiting) socket.close(1013, 'reads too slowly');
    else socket.send(binary ? encode(message) : JSON.stringify(asText(message)));
  });
  socket.on('message', (data: RawData, isBinary: boolean) => {
    const message = read(data, isBinary, binary);
    if (message === undefined) {
      socket.close(1007, 'not a kernel message');
      return;
    }
    asked.add(idOf(message.header));
    // A client that never gets replies must not let this grow without end.
    if (asked.size > 10_000) asked.delete(asked.values().next().value ?? '');
    kernel.send(message);
  });
  socket.on('close', () => {
    stop();
    kernel.connections -= 1;
  });
}

const idOf = (header: Readonly<Record<string, unknown>>): string => {
  const id = header['msg_id'];
  return typeof id === 'string' ? id : '';
};

function read(data: RawData, isBinary: boolean, v1: boolean): JupyterMessage | undefined {
  try {
    const bytes = Buffer.isBuffer(data)
      ? data
      : Array.isArray(data)
        ? Buffer.concat(data)
        : Buffer.from(data);
    const message = isBinary && v1 ? decode(bytes) : (JSON.parse(bytes.toString('utf8')) as JupyterMessage);
    return isMessage(message) ? message : undefined;
  } catch {
    return undefined;
  }
}

const channels = new Set(['shell', 'control', 'stdin']);

function isMessage(value: unknown): value is JupyterMessage {
  if (!isRecord(value)) return false;
  const { channel, header, content } = value;
  return (
    typeof channel === 'string' &&
    channels.has(channel) &&
    isRecord(header) &&
    typeof header['msg_id'] === 'string' &&
    typeof header['msg_type'] === 'string' &&
    isRecord(content)
  );
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

const asText = (message: JupyterMessage): object => ({
  ...message,
  buffers: [],
  msg_id: message.header['msg_id'],
  msg_type: message.header['msg_type'],
});

/**
 * Protocol v1: a count of offsets, the offsets (64-bit little-endian), then channel, header, parent header, metadata, content and any
 * buffers, each ending where the next offset says.
 */
export function encode(message: JupyterMessage): Buffer {
  const json = (value: unknown): Buffer => Buffer.from(JSON.stringify(value));
  const parts = [
    Buffer.from(message.channel),
    json(message.header),
    json(message.parent_header),
    json(message.metadata),
    json(message.content),
    ...(message.buffers ?? []).map((b) => Buffer.from(b)),
  ];
  const head = Buffer.alloc(8 * (parts.length + 2));
  head.writeBigUInt64LE(BigInt(parts.length + 1), 0);
  let offset = head.length;
  for (const [n, part] of [...parts, Buffer.alloc(0)].entries()) {
    head.writeBigUInt64LE(BigInt(offset), 8 * (n + 1));
    offset += part.length;
  }
  return Buffer.concat([head, ...parts]);
}

/** The inverse of {@link encode}. Throws on offsets that do not fit. */
export function decode(bytes: Buffer): JupyterMessage {
  const count = Number(bytes.readBigUInt64LE(0));
  if (count < 6 || count > 1000 || bytes.length < 8 * (count + 1)) throw new RangeError('offsets');
  const offsets = Array.from({ length: count }, (_, n) => Number(bytes.readBigUInt64LE(8 * (n + 1))));
  for (let n = 1; n < count; n += 1)
    if ((offsets[n] ?? 0) < (offsets[n - 1] ?? 0) || (offsets[n] ?? 0) > bytes.length)
      throw new RangeError('offsets');
  const part = (n: number): Buffer => bytes.subarray(offsets[n], offsets[n + 1]);
  const json = (n: number): unknown => JSON.parse(part(n).toString('utf8'));
  return {
    channel: part(0).toString('utf8'),
    header: json(1),
    parent_header: json(2),
    metadata: json(3),
    content: json(4),
    buffers: Array.from({ length: count - 6 }, (_, n) => new Uint8Array(part(n + 5))),
  } as JupyterMessage;
}
