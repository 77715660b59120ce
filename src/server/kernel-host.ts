import type { JupyterMessage, KernelProcess } from '../kernel/kernel-process.js';
import { exitReason, memoryKills, type ExitDetails } from './exit-reason.js';
import type { KernelState } from './kernel.js';

/** A kernel process as the host tells the server of it. */
export interface HostedKernel {
  /** Of the process; a restarted kernel has another. */
  readonly id: string;
  readonly kernelId: string;
  readonly cwd: string;
  readonly pid: number;
  readonly state: KernelState;
}

/** What the server's process asks of the host that keeps the kernels. */
export type HostRequest =
  | { readonly kind: 'spawn'; readonly id: string; readonly kernelId: string; readonly cwd: string }
  | { readonly kind: 'send'; readonly id: string; readonly message: JupyterMessage }
  | { readonly kind: 'interrupt' | 'shutdown'; readonly id: string; readonly request: number };

/** What the server's process hears from it. */
export type HostEvent =
  | { readonly kind: 'spawned'; readonly id: string; readonly pid: number }
  | { readonly kind: 'spawn-failed'; readonly id: string; readonly message: string }
  | { readonly kind: 'message'; readonly id: string; readonly message: JupyterMessage }
  | { readonly kind: 'exited'; readonly id: string; readonly exit: ExitDetails }
  | { readonly kind: 'answered'; readonly request: number };

interface Entry {
  readonly id: string;
  readonly kernelId: string;
  readonly cwd: string;
  readonly process: KernelProcess;
  state: KernelState;
}

/** Messages kept per kernel while no server is there to take them. */
const mostKept = 5000;

/** Keeps the kernel processes while the server's process comes and goes. */
export class KernelHost {
  readonly #entries = new Map<string, Entry>();
  #listener: ((event: HostEvent) => void) | undefined;
  #kept: HostEvent[] = [];

  constructor(private readonly spawn: (options: { cwd: string }) => Promise<KernelProcess>) {}

  /** The kernels that run now; of several processes of one kernel (a restart), the last. */
  list(): HostedKernel[] {
    const last = new Map<string, HostedKernel>();
    for (const { id, kernelId, cwd, process, state } of this.#entries.values())
      last.set(kernelId, { id, kernelId, cwd, pid: process.pid, state });
    return [...last.values()];
  }

  /** From here on a server listens; what came while there was none is told first. */
  attach(listener: (event: HostEvent) => void): void {
    this.#listener = listener;
    for (const event of this.#kept.splice(0)) listener(event);
  }

  detach(): void {
    this.#listener = undefined;
  }

  async handle(request: HostRequest): Promise<void> {
    if (request.kind === 'spawn') {
      await this.#spawn(request);
      return;
    }
    const entry = this.#entries.get(request.id);
    if (request.kind === 'send') entry?.process.send(request.message);
    else {
      await (request.kind === 'interrupt' ? entry?.process.interrupt() : entry?.process.shutdown());
      this.#tell({ kind: 'answered', request: request.request });
    }
  }

  async shutdownAll(): Promise<void> {
    await Promise.all([...this.#entries.values()].map(({ process }) => process.shutdown()));
  }

  /** Ends every process at once. */
  killAll(): void {
    for (const { process: kernel } of this.#entries.values()) {
      try {
        process.kill(kernel.pid, 'SIGKILL');
      } catch {
        // It has ended by itself.
      }
    }
  }

  async #spawn({ id, kernelId, cwd }: Extract<HostRequest, { kind: 'spawn' }>): Promise<void> {
    const killsBefore = memoryKills();
    try {
      const kernel = await this.spawn({ cwd });
      const entry: Entry = { id, kernelId, cwd, process: kernel, state: 'starting' };
      this.#entries.set(id, entry);
      kernel.onMessage((message) => this.#heard(entry, message));
      void kernel.exited.then(({ code, signal }) => {
        this.#entries.delete(id);
        this.#tell({
          kind: 'exited',
          id,
          exit: { code, signal, reason: exitReason(code, signal, killsBefore) },
        });
      });
      this.#tell({ kind: 'spawned', id, pid: kernel.pid });
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      this.#tell({ kind: 'spawn-failed', id, message });
    }
  }

  #heard(entry: Entry, message: JupyterMessage): void {
    const state = message.content['execution_state'];
    if (message.channel === 'iopub' && (state === 'idle' || state === 'busy')) entry.state = state;
    this.#tell({ kind: 'message', id: entry.id, message });
  }

  #tell(event: HostEvent): void {
    if (this.#listener !== undefined) {
      this.#listener(event);
      return;
    }
    this.#kept.push(event);
    if (this.#kept.length > mostKept) this.#kept.shift();
  }
}
