/** One message as one line of JSON, buffers in base64. */
import { createInterface } from 'node:readline';
import type { Duplex } from 'node:stream';
import type { JupyterMessage } from '../message.js';

export function encodeLine(message: JupyterMessage): string {
  const buffers = (message.buffers ?? []).map((part) => Buffer.from(part).toString('base64'));
  return `${JSON.stringify({ ...message, buffers })}\n`;
}

/** The message of a line, or undefined if the line is none. */
export function decodeLine(line: string): JupyterMessage | undefined {
  try {
    const value = JSON.parse(line) as Omit<JupyterMessage, 'buffers'> & { buffers?: string[] };
    const whole = [value.header, value.parent_header, value.metadata, value.content].every(
      (part) => typeof part === 'object' && part !== null,
    );
    if (!whole || typeof value.header['msg_type'] !== 'string') return undefined;
    return { ...value, buffers: (value.buffers ?? []).map((part) => Buffer.from(part, 'base64')) };
  } catch {
    return undefined;
  }
}

/** Calls `listener` with every line that the other side sends. */
export function subscribeLines(pipe: Duplex, listener: (line: string) => void): void {
  // The other side may be ended by force with words still under way. That shows as an error of the pipe, and readline
  // hands it on as one of its own; the end itself is told by `close` here and by `exited` there.
  pipe.on('error', () => undefined);
  createInterface({ input: pipe, crlfDelay: Infinity })
    .on('line', listener)
    .on('error', () => undefined);
}
