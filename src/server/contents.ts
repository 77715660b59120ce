import { readdir, readFile, stat, mkdir, rename, rm, access, constants } from 'node:fs/promises';
import { basename, extname } from 'node:path';
import { emptyNotebook, notebookForDisk, notebookForPage } from './notebook-text.js';
import type { ContentsRoot } from './safe-path.js';
import { HttpError } from './http-error.js';
import { hashOf, writeAtomically, type WriteQueue } from './save-contents.js';

/** A file, notebook or folder as the Jupyter contents API describes it. */
export interface ContentsModel {
  name: string;
  path: string;
  type: 'file' | 'notebook' | 'directory';
  created: string;
  last_modified: string;
  size: number | null;
  writable: boolean;
  mimetype: string | null;
  format: 'json' | 'text' | 'base64' | null;
  content: unknown;
  hash?: string;
  hash_algorithm?: string;
}

export interface ReadOptions {
  readonly content?: boolean;
  readonly hash?: boolean;
  readonly type?: string | null;
  readonly format?: string | null;
}

const mimes: Record<string, string> = {
  '.csv': 'text/csv',
  '.md': 'text/markdown',
  '.html': 'text/html',
  '.json': 'application/json',
  '.txt': 'text/plain',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.pdf': 'application/pdf',
};

/** Reading and writing in the one folder of notebooks. Every path is checked by `place`; every write is whole or not at all. */
export class Contents {
  constructor(
    readonly place: ContentsRoot,
    readonly turns: WriteQueue,
  ) {}

  async read(path: string, options: ReadOptions = {}): Promise<ContentsModel> {
    const real = await this.place.resolve(path);
    const model = await this.#describe(path, real);
    if (
      options.type &&
      options.type !== model.type &&
      !(options.type === 'file' && model.type === 'notebook')
    ) {
      throw new HttpError(
        400,
        `type: ${JSON.stringify(path)} is a ${model.type}, asked for as ${options.type}`,
      );
    }
    if (options.content === false && !options.hash) return model;
    if (model.type === 'directory')
      return options.content === false
        ? model
        : { ...model, format: 'json', content: await this.#list(path, real) };
    const bytes = await readFile(real);
    if (options.hash ?? true) Object.assign(model, { hash: hashOf(bytes), hash_algorithm: 'sha256' });
    if (options.content === false) return model;
    if (model.type === 'notebook' && options.type !== 'file')
      return { ...model, format: 'json', content: notebookForPage(bytes.toString('utf8'), model.name) };
    const text = options.format === 'base64' ? undefined : utf8(bytes);
    if (text === undefined && options.format === 'text')
      throw new HttpError(400, `format: ${JSON.stringify(path)} is not text; ask for base64`);
    return {
      ...model,
      type: 'file',
      format: text === undefined ? 'base64' : 'text',
      content: text ?? bytes.toString('base64'),
    };
  }

  /**
   * Saves. `expected_hash` in the model is an addition of ours: the sha256 the writer last read (null: no such file). When the disk
   * holds something else the save is refused with 409, so that a change made elsewhere is never overwritten in silence.
   */
  async write(path: string, model: Record<string, unknown>): Promise<ContentsModel> {
    const real = await this.place.resolve(path);
    if (this.place.split(path).length === 0) throw new HttpError(400, 'path: takes a file name');
    if (model['type'] === 'directory') {
      await mkdir(real).catch(() => {
        throw new HttpError(409, `path: ${JSON.stringify(path)} is there already`);
      });
      return this.read(path, { content: false });
    }
    const bytes = bytesOf(path, model);
    return this.turns.take(real, async () => {
      const now = await readFile(real).catch((error: NodeJS.ErrnoException) => {
        if (error.code === 'ENOENT') return undefined;
        throw new HttpError(
          400,
          `path: ${JSON.stringify(path)} cannot be written over (${error.code ?? 'unreadable'})`,
        );
      });
      const found = now === undefined ? null : hashOf(now);
      if (model['expected_hash'] !== undefined && model['expected_hash'] !== found) {
        throw new HttpError(
          409,
          `${basename(path)}: changed on disk since it was opened; nothing was saved`,
          { hash: found, reason: 'changed' },
        );
      }
      await writeAtomically(real, bytes);
      const saved = await this.#describe(path, real);
      return { ...saved, hash: hashOf(bytes), hash_algorithm: 'sha256' };
    });
  }

  /** A new file or folder of a free name in `folder`, or a copy of `copy_from`. */
  async create(folder: string, wish: Record<string, unknown>): Promise<ContentsModel> {
    const inFolder = (name: string): string => (folder === '' ? name : `${folder}/${name}`);
    const from = wish['copy_from'];
    if (typeof from === 'string') {
      const source = await this.place.resolve(from);
      const extension = extname(from);
      const to = await this.#freeName(inFolder, basename(from, extension) + '-copy', extension);
      const bytes = await readFile(source).catch(() => {
        throw new HttpError(404, `copy_from: no file ${JSON.stringify(from)}`);
      });
      await writeAtomically(await this.place.resolve(to), bytes);
      return this.read(to, { content: false });
    }
    const type = wish['type'] ?? 'file';
    if (type === 'directory') return this.write(await this.#freeName(inFolder, 'folder', ''), { type });
    if (type === 'notebook') {
      const stem =
        typeof wish['name'] === 'string' && wish['name'].trim() !== ''
          ? wish['name'].trim().replace(/\.ipynb$/, '')
          : 'untitled';
      return this.write(await this.#freeName(inFolder, stem, '.ipynb'), { type, content: emptyNotebook });
    }
    return this.write(
      await this.#freeName(inFolder, 'untitled', typeof wish['ext'] === 'string' ? wish['ext'] : '.txt'),
      { type: 'file', format: 'text', content: '' },
    );
  }

  async rename(path: string, to: unknown): Promise<ContentsModel> {
    if (typeof to !== 'string' || to === '') throw new HttpError(400, 'path: takes the new path as text');
    const [source, target] = [await this.place.resolve(path), await this.place.resolve(to)];
    await stat(source).catch(() => notThere(path));
    if (
      source !== target &&
      (await stat(target).then(
        () => true,
        () => false,
      ))
    )
      throw new HttpError(409, `path: ${JSON.stringify(to)} is there already`);
    await rename(source, target);
    return this.read(to, { content: false });
  }

  async remove(path: string): Promise<void> {
    if (this.place.split(path).length === 0)
      throw new HttpError(400, 'path: the notebooks folder itself stays');
    const real = await this.place.resolve(path);
    const found = await stat(real).catch(() => notThere(path));
    if (found.isDirectory() && (await readdir(real)).length > 0)
      throw new HttpError(400, `path: folder ${JSON.stringify(path)} is not empty`);
    await rm(real, { recursive: found.isDirectory() });
  }

  async #freeName(inFolder: (name: string) => string, stem: string, extension: string): Promise<string> {
    for (let n = 0; ; n += 1) {
      const path = inFolder(`${stem}${n === 0 ? '' : `-${n + 1}`}${extension}`);
      if (
        !(await stat(await this.place.resolve(path)).then(
          () => true,
          () => false,
        ))
      )
        return path;
    }
  }

  async #list(path: string, real: string): Promise<ContentsModel[]> {
    const out: ContentsModel[] = [];
    for (const name of (await readdir(real)).sort()) {
      if (name.startsWith('.')) continue;
      const below = path === '' ? name : `${path}/${name}`;
      // A link that leads outside is left out of the list rather than spoiling it.
      const model = await this.read(below, { content: false }).catch(() => undefined);
      if (model !== undefined) out.push(model);
    }
    return out;
  }

  async #describe(path: string, real: string): Promise<ContentsModel> {
    const found = await stat(real).catch(() => notThere(path));
    const name = path === '' ? '' : basename(path);
    const type = found.isDirectory() ? 'directory' : name.endsWith('.ipynb') ? 'notebook' : 'file';
    return {
      name,
      path,
      type,
      created: found.birthtime.toISOString(),
      last_modified: found.mtime.toISOString(),
      size: type === 'directory' ? null : found.size,
      writable: await access(real, constants.W_OK).then(
        () => true,
        () => false,
      ),
      mimetype: type === 'file' ? (mimes[extname(name).toLowerCase()] ?? 'application/octet-stream') : null,
      format: null,
      content: null,
    };
  }
}

function bytesOf(path: string, model: Record<string, unknown>): Buffer {
  const content = model['content'];
  if (model['type'] === 'notebook' || (model['type'] === undefined && path.endsWith('.ipynb'))) {
    return Buffer.from(notebookForDisk(content));
  }
  if (typeof content !== 'string')
    throw new HttpError(
      400,
      `content: takes text, got ${content === undefined ? 'nothing' : `a ${typeof content}`}; nothing was saved`,
    );
  const bytes = Buffer.from(content, model['format'] === 'base64' ? 'base64' : 'utf8');
  if (path.endsWith('.ipynb')) notebookForPage(bytes.toString('utf8'), basename(path));
  return bytes;
}

function utf8(bytes: Buffer): string | undefined {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return undefined;
  }
}

function notThere(path: string): never {
  throw new HttpError(404, `path: no file ${JSON.stringify(path)}`);
}
