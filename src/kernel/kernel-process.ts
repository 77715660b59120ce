/** A kernel in a process of its own for our own notebook server, reached over an inherited descriptor. */
import { spawn, type ChildProcess } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { existsSync } from 'node:fs';
import type { Duplex } from 'node:stream';
import type { JupyterMessage } from './message.js';
import { distPath } from './dist-path.js';
import { requirePackages, sessionPackages } from './optional-packages.js';
import { kernelEnvironment, startOptions } from './snapshot/snapshot-paths.js';
import { subscribeLines, decodeLine, encodeLine } from './transport/json-lines.js';

export type { JupyterMessage } from './message.js';

/** A kernel in a process of its own, reached over a private channel: no sockets, no ports, no connection file. */
export interface KernelProcess {
  readonly pid: number;
  /** Sends the kernel one message (`shell`, `control` or `stdin`). */
  send(message: JupyterMessage): void;
  /** Calls `listener` with every message from the kernel, in order; the function returned removes it. */
  onMessage(listener: (message: JupyterMessage) => void): () => void;
  /** Stops the running cell, also an endless loop; resolves once the kernel has answered. */
  interrupt(): Promise<void>;
  /** Asks the kernel to end and waits for it; after three seconds it is killed. */
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
  requirePackages('a notebook', sessionPackages);
  const env = { ...kernelEnvironment, ...process.env, ...options.env };
  const child = spawn(process.execPath, [...startOptions(env), program, '--pipe', String(channel)], {
    cwd: options.cwd,
    env,
    stdio: ['ignore', 'ignore', 'inherit', 'pipe'],
  });
  await new Promise<void>((resolve, reject) => {
    child.once('spawn', resolve);
    child.once('error', reject);
  });
  return new PipedKernel(child);
}

class PipedKernel implements KernelProcess {
  readonly pid: number;
  readonly exited: Promise<{ code: number | null; signal: string | null }>;
  private readonly pipe: Duplex;
  private readonly listeners = new Set<(message: JupyterMessage) => void>();

  constructor(private readonly child: ChildProcess) {
    this.pid = child.pid ?? 0;
    this.pipe = child.stdio[channel] as Duplex;
    this.exited = new Promise((resolve) => {
      child.once('exit', (code, signal) => resolve({ code, signal }));
    });
    subscribeLines(this.pipe, (line) => {
      const message = decodeLine(line);
      if (message) for (const listener of [...this.listeners]) listener(message);
    });
  }

  send(message: JupyterMessage): void {
    if (!this.pipe.destroyed && this.pipe.writable) this.pipe.write(encodeLine(message));
  }

  onMessage(listener: (message: JupyterMessage) => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }

  interrupt(): Promise<void> {
    return this.request('interrupt_request', {});
  }

  async shutdown(): Promise<void> {
    const force = setTimeout(() => this.child.kill('SIGKILL'), 3_000);
    void this.request('shutdown_request', { restart: false });
    await this.exited;
    clearTimeout(force);
  }

  /** Sends a control request; resolves at its reply, or when the process has ended. */
  private request(type: string, content: Record<string, unknown>): Promise<void> {
    return new Promise((resolve) => {
      const msg_id = randomUUID();
      const end = (): void => {
        off();
        resolve();
      };
      const off = this.onMessage((message) => {
        if (message.channel === 'control' && message.parent_header['msg_id'] === msg_id) end();
      });
      void this.exited.then(end);
      const header = {
        msg_id,
        session: 'server',
        username: 'server',
        date: new Date().toISOString(),
        msg_type: type,
        version: '5.3',
      };
      this.send({ channel: 'control', header, parent_header: {}, metadata: {}, content });
    });
  }
}
