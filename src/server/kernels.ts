import { quoted } from '../notebook/format/notebook.js';
import { HttpError } from './http-error.js';
import { kernelName } from '../kernel/kernel-identity.js';
import { Kernel, type LiveKernel, type SpawnKernel } from './kernel.js';

/** More kernels than any one user runs; each takes some 150 MB. */
const mostKernels = 24;

export class Kernels {
  readonly #kernels = new Map<string, Kernel>();

  constructor(
    private readonly spawn: SpawnKernel,
    live: readonly LiveKernel[] = [],
  ) {
    for (const kernel of live) this.#kernels.set(kernel.id, new Kernel(spawn, kernel.cwd, kernel));
  }

  list(): Kernel[] {
    return [...this.#kernels.values()];
  }

  start(cwd: string, name: unknown): Kernel {
    if (name !== undefined && name !== null && name !== '' && name !== kernelName)
      throw new HttpError(404, `name: no kernel ${quoted(name)}, takes ${kernelName}`);
    if (this.#kernels.size >= mostKernels)
      throw new HttpError(503, `kernels: ${mostKernels} are running already; close a notebook first`);
    const kernel = new Kernel(this.spawn, cwd);
    this.#kernels.set(kernel.id, kernel);
    return kernel;
  }

  get(id: string): Kernel {
    const kernel = this.#kernels.get(id);
    if (kernel === undefined) throw new HttpError(404, `kernel: none with id ${quoted(id)}`);
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
