/** A kernel in a process of its own for our own notebook server, spoken to over an inherited descriptor. */
import { spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import type { Duplex } from 'node:stream';
import type { JupyterMessage } from './message.js';
import { distPath } from './dist-path.js';
import { startOptions } from './snapshot/snapshot-paths.js';
import { subscribeLines, decodeLine, encodeLine } from './transport/json-lines.js';

export type { JupyterMessage } from './message.js';

/** A kernel in a process of its own, spoken to over a private channel: no sockets, no ports, no connection file. */
export interface KernelProcess {
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

const channel = 3;

/** Starts a kernel whose cells run in `cwd`. Rejects if the process cannot be started. */
export async function spawnKernel(options: {
  cwd: string;
  env?: Record<string, string>;
}): Promise<KernelProcess> {
  const program = distPath('kernel/main.js');
  if (!existsSync(program))
    throw new Error(`the kernel is not built: ${program} is missing; run \`npm run build\``);
  if (!existsSync(options.cwd)) throw new Error(`the kernel cannot start: there is no folder ${options.cwd}`);
  const env = { ...process.env, ...options.env };
  const child = spawn(process.execPath, [...startOptions(env), program, '--pipe', String(channel)], {
    cwd: options.cwd,
    env,
    stdio: ['ignore', 'ignore', 'inherit', 'pipe'],
  });
  const exited = new Promise<{ code: number | null; signal: string | null }>((resolve) => {
    child.once('exit', (code, signal) => resolve({ code, signal }));
  });
  await new Promise<void>((resolve, reject) => {
    child.once('spawn', resolve);
    child.once('error', reject);
  });

  const pipe = child.stdio[channel] as Duplex;
  const listeners = new Set<(message: JupyterMessage) => void>();
  subscribeLines(pipe, (line) => {
    const message = decodeLine(line);
    if (message) for (const listener of [...listeners]) listener(message);
  });

  const send = (message: JupyterMessage): void => {
    if (!pipe.destroyed && pipe.writable) pipe.write(encodeLine(message));
  };
  const onMessage = (listener: (message: JupyterMessage) => void): (() => void) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  };
  const ask = (type: string, content: Record<string, unknown>): Promise<void> =>
    new Promise((resolve) => {
      const msg_id = randomUUID();
      const off = onMessage((message) => {
        if (message.channel !== 'control' || message.parent_header['msg_id'] !== msg_id) return;
        off();
        resolve();
      });
      void exited.then(() => (off(), resolve()));
      const header = {
        msg_id,
        session: 'server',
        username: 'server',
        date: new Date().toISOString(),
        msg_type: type,
        version: '5.3',
      };
      send({ channel: 'control', header, parent_header: {}, metadata: {}, content });
    });

  return {
    pid: child.pid!,
    send,
    onMessage,
    interrupt: () => ask('interrupt_request', {}),
    async shutdown() {
      const force = setTimeout(() => child.kill('SIGKILL'), 3_000);
      void ask('shutdown_request', { restart: false });
      await exited;
      clearTimeout(force);
    },
    exited,
  };
}
