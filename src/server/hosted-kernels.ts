import { randomUUID } from 'node:crypto';
import type { JupyterMessage } from '../kernel/message.js';
import type { ExitDetails } from './exit-reason.js';
import type { HostedKernel, HostEvent, HostRequest } from './kernel-host.js';
import type { LiveKernel, ServedProcess, SpawnKernel } from './kernel.js';

/** The server's side of the kernel host: kernel processes that live in another process, used as if they were children of this one. */
export class HostedKernels {
  readonly #processes = new Map<string, HostedProcess>();
  readonly #starting = new Map<string, { resolve: (pid: number) => void; reject: (error: Error) => void }>();
  readonly #answers = new Map<number, () => void>();
  #requests = 0;

  constructor(private readonly tell: (request: HostRequest) => void) {}

  readonly spawn: SpawnKernel = async ({ cwd, kernelId }) => {
    const id = randomUUID();
    const hosted = this.#add(id);
    const started = new Promise<number>((resolve, reject) => this.#starting.set(id, { resolve, reject }));
    this.tell({ kind: 'spawn', id, kernelId, cwd });
    hosted.pid = await started;
    return hosted;
  };

  /** Takes over a kernel that was started for an earlier server. */
  adopt({ id, kernelId, cwd, pid, state }: HostedKernel): LiveKernel {
    const process = this.#add(id);
    process.pid = pid;
    return { id: kernelId, cwd, state, process };
  }

  hear(event: HostEvent): void {
    if (event.kind === 'answered') {
      this.#answers.get(event.request)?.();
      this.#answers.delete(event.request);
    } else if (event.kind === 'message') this.#processes.get(event.id)?.hear(event.message);
    else if (event.kind === 'exited') {
      this.#processes.get(event.id)?.end(event.exit);
      this.#processes.delete(event.id);
    } else this.#started(event);
  }

  #started(event: Extract<HostEvent, { kind: 'spawned' | 'spawn-failed' }>): void {
    const waiting = this.#starting.get(event.id);
    this.#starting.delete(event.id);
    if (event.kind === 'spawned') waiting?.resolve(event.pid);
    else waiting?.reject(new Error(event.message));
  }

  #add(id: string): HostedProcess {
    const process = new HostedProcess(id, this.tell, (kind) => this.#ask(kind, id));
    this.#processes.set(id, process);
    return process;
  }

  #ask(kind: 'interrupt' | 'shutdown', id: string): Promise<void> {
    const request = ++this.#requests;
    return new Promise((resolve) => {
      this.#answers.set(request, resolve);
      this.tell({ kind, id, request });
    });
  }
}

class HostedProcess implements ServedProcess {
  pid = 0;
  readonly exited: Promise<ExitDetails>;
  readonly #listeners = new Set<(message: JupyterMessage) => void>();
  /** What came before anybody listened. */
  #early: JupyterMessage[] | undefined = [];
  #end: (exit: ExitDetails) => void = () => undefined;

  constructor(
    private readonly id: string,
    private readonly tell: (request: HostRequest) => void,
    private readonly ask: (kind: 'interrupt' | 'shutdown') => Promise<void>,
  ) {
    this.exited = new Promise((resolve) => (this.#end = resolve));
  }

  send(message: JupyterMessage): void {
    this.tell({ kind: 'send', id: this.id, message });
  }

  onMessage(listener: (message: JupyterMessage) => void): () => void {
    this.#listeners.add(listener);
    for (const message of this.#early ?? []) listener(message);
    this.#early = undefined;
    return () => this.#listeners.delete(listener);
  }

  interrupt(): Promise<void> {
    return Promise.race([this.ask('interrupt'), this.exited.then(() => undefined)]);
  }

  shutdown(): Promise<void> {
    return Promise.race([this.ask('shutdown'), this.exited.then(() => undefined)]);
  }

  hear(message: JupyterMessage): void {
    this.#early?.push(message);
    for (const listener of this.#listeners) listener(message);
  }

  end(exit: ExitDetails): void {
    this.#end(exit);
  }
}
