/** Messages of the Jupyter protocol as frames on a socket: signed when sent, checked when received. */
import { createHmac, randomUUID, timingSafeEqual } from 'node:crypto';
import type { JupyterMessage } from '../message.js';
import type { OutgoingMessage } from './ipc.js';

const delimiter = Buffer.from('<IDS|MSG>');
const session = randomUUID();
let sent = 0;

export function headerFor(type: string): Record<string, unknown> {
  return {
    msg_id: `${session}_${++sent}`,
    session,
    username: 'kernel',
    date: new Date().toISOString(),
    msg_type: type,
    version: '5.3',
  };
}

export function sign(key: string, scheme: string, parts: readonly (string | Uint8Array)[]): string {
  if (key === '') return '';
  const hmac = createHmac(scheme.replace(/^hmac-/, ''), key);
  for (const part of parts) hmac.update(part);
  return hmac.digest('hex');
}

export function serialize(
  message: OutgoingMessage,
  identities: readonly Uint8Array[],
  key: string,
  scheme: string,
): (string | Uint8Array)[] {
  const parts = [JSON.stringify(headerFor(message.type)), message.parent, message.metadata, message.content];
  return [...identities, delimiter, sign(key, scheme, parts), ...parts, ...(message.buffers ?? [])];
}

/** Frames that are not a message: incomplete, wrongly signed, or not JSON. They are dropped with a note. */
export class InvalidMessage extends Error {}

export function deserialize(
  frames: readonly Buffer[],
  channel: JupyterMessage['channel'],
  key: string,
  scheme: string,
): { message: JupyterMessage; identities: Buffer[] } {
  const at = frames.findIndex((frame) => frame.equals(delimiter));
  if (at < 0) throw new InvalidMessage('no <IDS|MSG> delimiter among the frames');
  const [signature, ...parts] = frames.slice(at + 1);
  if (!signature || parts.length < 4)
    throw new InvalidMessage(`${parts.length} parts after the signature; a message has at least 4`);
  const expected = Buffer.from(sign(key, scheme, parts.slice(0, 4)));
  if (key !== '' && (expected.length !== signature.length || !timingSafeEqual(expected, signature)))
    throw new InvalidMessage('the signature does not fit');
  const part = (index: number, name: string): Record<string, unknown> => readObject(parts[index], name);
  const header = part(0, 'header');
  if (typeof header['msg_type'] !== 'string' || typeof header['msg_id'] !== 'string')
    throw new InvalidMessage('the header lacks msg_type or msg_id');
  return {
    message: {
      channel,
      header,
      parent_header: part(1, 'parent header'),
      metadata: part(2, 'metadata'),
      content: part(3, 'content'),
      buffers: parts.slice(4),
    },
    identities: frames.slice(0, at),
  };
}

function readObject(part: Buffer | undefined, name: string): Record<string, unknown> {
  let value: unknown;
  try {
    value = JSON.parse(part?.toString('utf8') ?? '');
  } catch {
    throw new InvalidMessage(`the ${name} is not JSON`);
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new InvalidMessage(`the ${name} is not an object`);
  return value as Record<string, unknown>;
}
