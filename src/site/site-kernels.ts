/** The kernels of this tab, and the sessions that join them to notebooks. */
import { randomId } from '../kernel/dispatcher/random-id.js';
import { HttpError } from '../server/http-error.js';
import type { WorkerKernel } from './worker-kernel.js';

interface Session {
  readonly id: string;
  path: string;
  name: string;
  readonly type: string;
  kernel: WorkerKernel;
}

const words = (value: unknown, otherwise: string): string => (typeof value === 'string' ? value : otherwise);

export class SiteKernels {
  readonly #kernels = new Map<string, WorkerKernel>();
  readonly #sessions = new Map<string, Session>();

  constructor(private readonly make: () => WorkerKernel) {}

  list(): WorkerKernel[] {
    return [...this.#kernels.values()];
  }

  find(id: string): WorkerKernel | undefined {
    return this.#kernels.get(id);
  }

  get(id: string): WorkerKernel {
    const kernel = this.#kernels.get(id);
    if (!kernel) throw new HttpError(404, `kernel: no kernel ${id} in this tab`);
    return kernel;
  }

  start(): WorkerKernel {
    const kernel = this.make();
    this.#kernels.set(kernel.id, kernel);
    return kernel;
  }

  remove(id: string): void {
    this.get(id).end();
    this.#kernels.delete(id);
  }

  sessions(): object[] {
    return [...this.#sessions.values()].map(modelOf);
  }

  session(id: string): object {
    return modelOf(this.#session(id));
  }

  openSession(body: Readonly<Record<string, unknown>>): object {
    const path = words(body['path'], '');
    const session = {
      id: randomId(),
      path,
      name: words(body['name'], path),
      type: words(body['type'], 'notebook'),
      kernel: this.start(),
    };
    this.#sessions.set(session.id, session);
    return modelOf(session);
  }

  changeSession(id: string, body: Readonly<Record<string, unknown>>): object {
    const session = this.#session(id);
    session.path = words(body['path'], session.path);
    session.name = words(body['name'], session.name);
    if (body['kernel'] !== undefined) {
      this.remove(session.kernel.id);
      session.kernel = this.start();
    }
    return modelOf(session);
  }

  closeSession(id: string): void {
    this.remove(this.#session(id).kernel.id);
    this.#sessions.delete(id);
  }

  #session(id: string): Session {
    const session = this.#sessions.get(id);
    if (!session) throw new HttpError(404, `session: no session ${id} in this tab`);
    return session;
  }
}

const modelOf = ({ id, path, name, type, kernel }: Session): object => ({
  id,
  path,
  name,
  type,
  kernel: kernel.model,
  notebook: { path, name },
});
