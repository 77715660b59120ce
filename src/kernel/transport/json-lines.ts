/** One message per line of JSON, buffers in base64. */
import { createInterface } from 'node:readline';
import type { Duplex } from 'node:stream';
import type { JupyterMessage } from '../message.js';

export function encodeLine(message: JupyterMessage): string {
  const buffers = (message.buffers ?? []).map((part) => Buffer.from(part).toString('base64'));
  return `${JSON.stringify({ ...message, buffers })}\n`;
}

/** The message of a line, or undefined if the line is not one. */
export function decodeLine(line: string): JupyterMessage | undefined {
  try {
    const value = JSON.parse(line) as Omit<JupyterMessage, 'buffers'> & { buffers?: string[] };
    const parts: unknown[] = [value.header, value.parent_header, value.metadata, value.content];
    const isWhole = parts.every((part) => typeof part === 'object' && part !== null);
    if (!isWhole || typeof value.header['msg_type'] !== 'string') return undefined;
    return { ...value, buffers: (value.buffers ?? []).map((part) => Buffer.from(part, 'base64')) };
  } catch {
    return undefined;
  }
}

/** Calls `listener` with every line that the other side sends. */
export function subscribeLines(pipe: Duplex, listener: (line: string) => void): void {
  // The other side may be killed with data in flight: both the pipe and readline then emit 'error'. The end itself is
  // reported by `close` here and by `exited` there.
  pipe.on('error', () => undefined);
  createInterface({ input: pipe, crlfDelay: Infinity })
    .on('line', listener)
    .on('error', () => undefined);
}
