import { randomUUID } from 'node:crypto';
import type { KernelProcess } from '../kernel/kernel-process.js';
import type { JupyterMessage } from '../kernel/message.js';
import { quoted } from '../notebook/format/notebook.js';
import { HttpError } from './http-error.js';

/** How a kernel process is started; the tests put a small one of their own here. */
export type SpawnKernel = (options: { cwd: string }) => Promise<KernelProcess>;

export type KernelState = 'starting' | 'idle' | 'busy' | 'restarting' | 'dead';

/** A kernel as the Jupyter API describes it. */
export interface KernelModel {
  readonly id: string;
  readonly name: string;
  readonly last_activity: string;
  readonly execution_state: KernelState;
  readonly connections: number;
}

export const kernelName = 'reckoner';
/** More kernels than any one person runs; each takes some 150 MB. */
const most = 24;

/** A running kernel: its process may be exchanged (restart), its id and its listeners stay. */
export class Kernel {
  readonly id = randomUUID();
  state: KernelState = 'starting';
  lastActivity = new Date();
  connections = 0;
  #process: Promise<KernelProcess>;
  #pid: number | undefined;
  readonly #listeners = new Set<(message: JupyterMessage) => void>();

  constructor(
    private readonly spawn: SpawnKernel,
    readonly cwd: string,
  ) {
    this.#process = this.#start();
  }

  get model(): KernelModel {
    return {
      id: this.id,
      name: kernelName,
      last_activity: this.lastActivity.toISOString(),
      execution_state: this.state,
      connections: this.connections,
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

  listen(listener: (message: JupyterMessage) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  async interrupt(): Promise<void> {
    await (await this.#process).interrupt();
  }

  async restart(): Promise<void> {
    const old = this.#process;
    this.#tell('restarting');
    this.#process = this.#start();
    await (await old.catch(() => undefined))?.shutdown();
    await this.#process;
  }

  async shutdown(): Promise<void> {
    this.#tell('dead');
    await (await this.#process.catch(() => undefined))?.shutdown();
  }

  #start(): Promise<KernelProcess> {
    const starting: Promise<KernelProcess> = this.spawn({ cwd: this.cwd }).then((child) => {
      if (this.#process === starting) this.#pid = child.pid;
      child.onMessage((message) => {
        if (this.#process === starting) this.#heard(message);
      });
      void child.exited
        .catch(() => undefined)
        .then(() => {
          if (this.#process === starting && this.state !== 'dead') this.#tell('dead');
        });
      return child;
    });
    starting.catch(() => {
      if (this.#process === starting) this.#tell('dead');
    });
    return starting;
  }

  #heard(message: JupyterMessage): void {
    this.lastActivity = new Date();
    if (message.channel === 'iopub' && message.header['msg_type'] === 'status') {
      const state = message.content['execution_state'];
      if (state === 'idle' || state === 'busy' || state === 'starting') this.state = state;
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
    for (const listener of this.#listeners)
      listener({
        channel: 'iopub',
        header,
        parent_header: {},
        metadata: {},
        content: { execution_state: state },
      });
  }
}

export class Kernels {
  readonly #kernels = new Map<string, Kernel>();

  constructor(private readonly spawn: SpawnKernel) {}

  list(): Kernel[] {
    return [...this.#kernels.values()];
  }

  start(cwd: string, name: unknown): Kernel {
    if (name !== undefined && name !== null && name !== '' && name !== kernelName) {
      throw new HttpError(404, `name: no kernel ${quoted(name)}, takes ${kernelName}`);
    }
    if (this.#kernels.size >= most)
      throw new HttpError(503, `kernels: ${most} are running already; close a notebook first`);
    const kernel = new Kernel(this.spawn, cwd);
    this.#kernels.set(kernel.id, kernel);
    return kernel;
  }

  get(id: string): Kernel {
    const kernel = this.#kernels.get(id);
    if (kernel === undefined)
      throw new HttpError(404, `kernel: none with id ${JSON.stringify(id.slice(0, 60))}`);
    return kernel;
  }

  async remove(id: string): Promise<void> {
    const kernel = this.get(id);
    this.#kernels.delete(id);
    await kernel.shutdown();
  }

  /** Ends kernels that nobody has open and that have been still for `idleMs`; each holds some 150 MB. The number ended. */
  async sweepIdle(idleMs: number): Promise<number> {
    const idle = this.list().filter(
      (kernel) =>
        kernel.connections === 0 &&
        kernel.state !== 'busy' &&
        Date.now() - kernel.lastActivity.getTime() > idleMs,
    );
    await Promise.all(idle.map((kernel) => this.remove(kernel.id)));
    return idle.length;
  }

  async removeAll(): Promise<void> {
    await Promise.all([...this.#kernels.keys()].map((id) => this.remove(id)));
  }
}
