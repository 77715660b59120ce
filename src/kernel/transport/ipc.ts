/** The messages between the main thread, which runs cells, and the I/O thread, which owns the sockets. */
import type { JupyterMessage } from '../message.js';

/** A client's request. `client` is the number under which the transport keeps the client's identities. */
export interface Request {
  kind: 'request';
  message: JupyterMessage;
  client: number;
}

/** A message to send. Its parts are JSON text already, so that the I/O thread only signs and sends. */
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
  Request | { kind: 'interrupt'; id: number } | { kind: 'drain'; id: number } | { kind: 'shutdown' };

export type IoThreadMessage =
  | OutgoingMessage
  | { kind: 'ready' }
  | { kind: 'done' }
  | { kind: 'drained'; id: number }
  /** A prompt's request was sent; the main thread sleeps until `SharedState.input` says that an answer has arrived. */
  | { kind: 'asking' };

/** Indices in the memory that both threads share. */
export const SharedState = { phase: 0, wanted: 1, seen: 2, input: 3, size: 4 } as const;

/** Whether an interrupt may terminate what the main thread does. */
export const ExecutionPhase = { interruptible: 0, compiling: 1 } as const;

export interface IoThreadData {
  transport: { connectionFile: string } | { descriptor: number };
  flags: Int32Array;
  /** Requests in, messages out. */
  port: import('node:worker_threads').MessagePort;
  /** Answers to prompts, read while the main thread sleeps. */
  answers: import('node:worker_threads').MessagePort;
}
