import { randomUUID } from 'node:crypto';
import { stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { Kernel, KernelModel } from './kernel.js';
import type { Kernels } from './kernels.js';
import type { ContentsRoot } from './safe-path.js';
import { HttpError } from './http-error.js';

/** A session joins a file to a kernel, so that two tabs on one notebook share one kernel. */
export interface SessionModel {
  readonly id: string;
  readonly path: string;
  readonly name: string;
  readonly type: string;
  readonly kernel: KernelModel;
  readonly notebook?: { readonly path: string; readonly name: string };
}

/** A session as it is written down for a server that takes the place of this one. */
export interface StoredSession {
  readonly id: string;
  readonly path: string;
  readonly name: string;
  readonly type: string;
  readonly kernelId: string;
}

interface Session {
  readonly id: string;
  path: string;
  name: string;
  type: string;
  kernel: Kernel;
}

export class Sessions {
  readonly #sessions = new Map<string, Session>();

  constructor(
    private readonly kernels: Kernels,
    private readonly root: ContentsRoot,
    stored: readonly StoredSession[] = [],
    /** Told after every change. */
    private readonly onChange: () => void = () => undefined,
  ) {
    for (const { kernelId, ...session } of stored) {
      const kernel = kernels.list().find(({ id }) => id === kernelId);
      if (kernel !== undefined) this.#sessions.set(session.id, { ...session, kernel });
    }
  }

  stored(): StoredSession[] {
    return [...this.#sessions.values()].map(({ kernel, ...session }) => ({
      ...session,
      kernelId: kernel.id,
    }));
  }

  list(): SessionModel[] {
    return [...this.#sessions.values()]
      .filter((session) => this.kernels.list().includes(session.kernel))
      .map(model);
  }

  get(id: string): SessionModel {
    return model(this.#find(id));
  }

  /** The session of the file, or a new one with a kernel that works in the file's folder. */
  async open(wish: Record<string, unknown>): Promise<SessionModel> {
    const path = text(wish['path'], 'path');
    const wanted = asRecord(wish['kernel']);
    const known = [...this.#sessions.values()].find(
      (session) => session.path === path && this.kernels.list().includes(session.kernel),
    );
    if (known !== undefined) return model(known);
    const kernel =
      typeof wanted['id'] === 'string'
        ? this.kernels.get(wanted['id'])
        : this.kernels.start(await this.folderOf(path), wanted['name']);
    const session: Session = {
      id: randomUUID(),
      path,
      name: typeof wish['name'] === 'string' ? wish['name'] : path,
      type: typeof wish['type'] === 'string' ? wish['type'] : 'notebook',
      kernel,
    };
    this.#sessions.set(session.id, session);
    this.onChange();
    return model(session);
  }

  async change(id: string, wish: Record<string, unknown>): Promise<SessionModel> {
    const session = this.#find(id);
    if (wish['path'] !== undefined) session.path = text(wish['path'], 'path');
    if (typeof wish['name'] === 'string') session.name = wish['name'];
    if (typeof wish['type'] === 'string') session.type = wish['type'];
    const wanted = asRecord(wish['kernel']);
    if (typeof wanted['id'] === 'string' && wanted['id'] !== session.kernel.id)
      session.kernel = this.kernels.get(wanted['id']);
    else if (typeof wanted['name'] === 'string') {
      const old = session.kernel;
      session.kernel = this.kernels.start(await this.folderOf(session.path), wanted['name']);
      await this.kernels.remove(old.id).catch(() => undefined);
    }
    this.onChange();
    return model(session);
  }

  async close(id: string): Promise<void> {
    const session = this.#find(id);
    this.#sessions.delete(id);
    this.onChange();
    const shared = [...this.#sessions.values()].some((other) => other.kernel === session.kernel);
    if (!shared) await this.kernels.remove(session.kernel.id).catch(() => undefined);
  }

  /** A notebook was renamed: its session follows. */
  moved(from: string, to: string): void {
    for (const session of this.#sessions.values()) if (session.path === from) session.path = to;
    this.onChange();
  }

  /** The folder a kernel works in: the file's own, or the notebooks folder when there is no such folder. */
  async folderOf(path: string): Promise<string> {
    const real = await this.root.resolve(path).catch((error: unknown) => {
      if (error instanceof HttpError && error.status === 404) return this.root.folder;
      throw error;
    });
    const isFolder = await stat(real).then(
      (s) => s.isDirectory(),
      () => false,
    );
    return isFolder ? real : dirname(real);
  }

  #find(id: string): Session {
    const session = this.#sessions.get(id);
    if (session === undefined)
      throw new HttpError(404, `session: none with id ${JSON.stringify(id.slice(0, 60))}`);
    return session;
  }
}

const model = (session: Session): SessionModel => ({
  id: session.id,
  path: session.path,
  name: session.name,
  type: session.type,
  kernel: session.kernel.model,
  ...(session.type === 'notebook' ? { notebook: { path: session.path, name: session.name } } : {}),
});

const asRecord = (value: unknown): Record<string, unknown> =>
  typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};

function text(value: unknown, field: string): string {
  if (typeof value !== 'string' || value === '')
    throw new HttpError(
      400,
      `${field}: takes text, got ${value === undefined ? 'nothing' : JSON.stringify(value)}`,
    );
  return value;
}
