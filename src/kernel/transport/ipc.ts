/** What passes between the thread that runs cells and the thread that owns the wires. */
import type { JupyterMessage } from '../message.js';

/** A client's request on its way in. `route` finds the way back to the client that asked. */
export interface Request {
  kind: 'request';
  message: JupyterMessage;
  client: number;
}

/** A message on its way out. Its parts are JSON text already, so that the wires' thread only signs and sends. */
export interface OutgoingMessage {
  kind: 'send';
  channel: JupyterMessage['channel'];
  type: string;
  parent: string;
  content: string;
  metadata: string;
  buffers?: Uint8Array[] | undefined;
  client?: number | undefined;
}

export type MainThreadMessage =
  Request | { kind: 'interrupt'; id: number } | { kind: 'sweep'; id: number } | { kind: 'shutdown' };

export type IoThreadMessage =
  | OutgoingMessage
  | { kind: 'ready' }
  | { kind: 'done' }
  | { kind: 'swept'; id: number }
  /** The prompt's request is on its way; the main thread sleeps until `Flag.input` says that an answer lies ready. */
  | { kind: 'asking' };

/** Places in the memory both threads share. */
export const SharedState = { phase: 0, wanted: 1, seen: 2, input: 3, size: 4 } as const;

/** Whether the main thread may be torn out of what it does. */
export const ExecutionPhase = { interruptible: 0, compiling: 1 } as const;

export interface IoThreadData {
  transport: { connectionFile: string } | { descriptor: number };
  flags: Int32Array;
  /** Requests in, messages out. */
  port: import('node:worker_threads').MessagePort;
  /** Answers to prompts, read while the main thread sleeps. */
  answers: import('node:worker_threads').MessagePort;
}
