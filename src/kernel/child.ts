import type { JupyterMessage } from './message.ts';

export type { JupyterMessage } from './message.ts';

/** A kernel in a process of its own, spoken to over a private channel: no sockets, no ports, no connection file. */
export interface KernelChild {
  readonly pid: number;
  /** Hands the kernel one message (`shell`, `control` or `stdin`). */
  send(message: JupyterMessage): void;
  /** Calls `listener` with every message from the kernel, in order; the function returned takes it off again. */
  onMessage(listener: (message: JupyterMessage) => void): () => void;
  /** Stops the running cell, also one that loops without end; resolves once the kernel has answered. */
  interrupt(): Promise<void>;
  /** Asks the kernel to end and waits for it; after three seconds it is ended by force. */
  shutdown(): Promise<void>;
  readonly exited: Promise<{ code: number | null; signal: string | null }>;
}

/** Starts a kernel whose cells run in `cwd`. Rejects if the process cannot be started. */
export function spawnKernelChild(options: { cwd: string; env?: Record<string, string> }): Promise<KernelChild> {
  return Promise.reject(new Error(`the kernel for ${options.cwd} cannot start: its process is not built yet`));
}
