import { randomUUID } from 'node:crypto';
import { kernelName } from '../kernel/kernel-identity.js';
import type { KernelProcess } from '../kernel/kernel-process.js';
import type { JupyterMessage } from '../kernel/message.js';
import type { ExitDetails } from './exit-reason.js';

/** A kernel process as the server sees it. How it ended may be told more closely than a process itself can. */
export type ServedProcess = Omit<KernelProcess, 'exited'> & { readonly exited: Promise<ExitDetails> };

/** How a kernel process is started; the tests put a small one of their own here. */
export type SpawnKernel = (options: { cwd: string; kernelId: string }) => Promise<ServedProcess>;

export type KernelState = 'starting' | 'idle' | 'busy' | 'restarting' | 'dead';

/** A kernel that was started for an earlier server and still runs. */
export interface LiveKernel {
  readonly id: string;
  readonly cwd: string;
  readonly state: KernelState;
  readonly process: ServedProcess;
}

/** A kernel as the Jupyter API describes it. */
export interface KernelModel {
  readonly id: string;
  readonly name: string;
  readonly last_activity: string;
  readonly execution_state: KernelState;
  readonly connections: number;
  /** Of a dead kernel: why it ended, where that is known. An addition of ours. */
  readonly exit_reason?: string;
}

/** Messages kept for a page that is away for a moment. */
const mostKept = 5000;

/** A running kernel: its process may be exchanged (restart), its id and its listeners stay. */
export class Kernel {
  readonly id: string;
  state: KernelState = 'starting';
  lastActivity = new Date();
  connections = 0;
  exitReason: string | undefined;
  #process: Promise<ServedProcess>;
  #pid: number | undefined;
  readonly #listeners = new Set<(message: JupyterMessage) => void>();
  /** What came while nobody listened, for the page that comes back. */
  #kept: JupyterMessage[] = [];

  constructor(
    private readonly spawn: SpawnKernel,
    readonly cwd: string,
    live?: LiveKernel,
  ) {
    this.id = live?.id ?? randomUUID();
    this.state = live?.state ?? 'starting';
    this.#process = this.#follow(live === undefined ? this.#spawn() : Promise.resolve(live.process));
  }

  get model(): KernelModel {
    return {
      id: this.id,
      name: kernelName,
      last_activity: this.lastActivity.toISOString(),
      execution_state: this.state,
      connections: this.connections,
      ...(this.exitReason === undefined ? {} : { exit_reason: this.exitReason }),
    };
  }

  get pid(): number | undefined {
    return this.#pid;
  }

  /** Messages sent while the process starts wait for it, in order. */
  send(message: JupyterMessage): void {
    this.lastActivity = new Date();
    if (this.state === 'dead') return;
    const process = this.#process;
    void process.then(
      (child) => {
        if (process === this.#process) child.send(message);
      },
      () => undefined,
    );
  }

  /** What was kept while nobody listened goes to the first listener that comes. */
  listen(listener: (message: JupyterMessage) => void): () => void {
    this.#listeners.add(listener);
    const kept = this.#kept;
    this.#kept = [];
    for (const message of kept) listener(message);
    return () => this.#listeners.delete(listener);
  }

  async interrupt(): Promise<void> {
    await (await this.#process).interrupt();
  }

  async restart(): Promise<void> {
    const old = this.#process;
    this.#tell('restarting');
    this.exitReason = undefined;
    this.#process = this.#follow(this.#spawn());
    await (await old.catch(() => undefined))?.shutdown();
    await this.#process;
  }

  async shutdown(): Promise<void> {
    this.#tell('dead');
    await (await this.#process.catch(() => undefined))?.shutdown();
  }

  #spawn(): Promise<ServedProcess> {
    return this.spawn({ cwd: this.cwd, kernelId: this.id });
  }

  #follow(process: Promise<ServedProcess>): Promise<ServedProcess> {
    const starting: Promise<ServedProcess> = process.then((child) => {
      if (this.#process === starting) this.#pid = child.pid;
      child.onMessage((message) => {
        if (this.#process === starting) this.#heard(message);
      });
      void child.exited
        .catch(() => undefined)
        .then((exit) => {
          if (this.#process !== starting || this.state === 'dead') return;
          this.exitReason = exit?.reason;
          this.#tell('dead');
        });
      return child;
    });
    starting.catch((error: unknown) => {
      if (this.#process !== starting) return;
      this.exitReason = error instanceof Error ? error.message : String(error);
      this.#tell('dead');
    });
    return starting;
  }

  #heard(message: JupyterMessage): void {
    this.lastActivity = new Date();
    if (message.channel === 'iopub' && message.header['msg_type'] === 'status') {
      const state = message.content['execution_state'];
      if (state === 'idle' || state === 'busy' || state === 'starting') this.state = state;
    }
    this.#pass(message);
  }

  #pass(message: JupyterMessage): void {
    if (this.#listeners.size === 0) {
      this.#kept.push(message);
      if (this.#kept.length > mostKept) this.#kept.shift();
    }
    for (const listener of this.#listeners) listener(message);
  }

  /** A state the kernel cannot tell itself, sent as if it had. */
  #tell(state: KernelState): void {
    this.state = state;
    const header = {
      msg_id: randomUUID(),
      msg_type: 'status',
      session: this.id,
      username: 'kernel',
      version: '5.3',
      date: new Date().toISOString(),
    };
    this.#pass({
      channel: 'iopub',
      header,
      parent_header: {},
      metadata: {},
      content: { execution_state: state },
    });
  }
}
