import { access, constants, lstat, mkdir, readdir, rename, rmdir, stat, unlink } from 'node:fs/promises';
import { basename, extname } from 'node:path';
import { reason } from '../notes/atomic-write.js';
import { contentsModel, type ContentsModel } from './contents-model.js';
import { emptyNotebook, notebookForDisk, notebookForPage } from './notebook-text.js';
import { mustBePlain, type ContentsRoot } from './safe-path.js';
import { HttpError } from './http-error.js';
import { hashOf, writeEntry, type WriteQueue } from './save-contents.js';

export interface ReadOptions {
  readonly content?: boolean;
  readonly hash?: boolean;
  readonly type?: string | null;
  readonly format?: string | null;
}

/** Reading and writing in the one folder of notebooks. Every path is checked by `root`; every write is whole or not at all. */
export class Contents {
  /** Entries that cannot be read are reported once. */
  readonly #told = new Set<string>();

  constructor(
    readonly root: ContentsRoot,
    readonly queue: WriteQueue,
    private readonly log: (line: string) => void = () => undefined,
  ) {}

  async read(path: string, options: ReadOptions = {}): Promise<ContentsModel> {
    const real = await this.root.resolve(path);
    const model = await this.#describe(path, real);
    mustBeOfType(model, options.type);
    if (options.content === false && !options.hash) return model;
    if (model.type === 'directory')
      return options.content === false
        ? model
        : { ...model, format: 'json', content: await this.#list(path, real) };
    const bytes = await this.root.read(path);
    if (options.hash ?? true) Object.assign(model, { hash: hashOf(bytes), hash_algorithm: 'sha256' });
    if (options.content === false) return model;
    if (model.type === 'notebook' && options.type !== 'file')
      return { ...model, format: 'json', content: notebookForPage(bytes.toString('utf8'), model.name) };
    return { ...model, type: 'file', ...fileContent(path, bytes, options.format) };
  }

  /**
   * Saves. `expected_hash` in the model is an addition of ours: the sha256 the writer last read (null: no such file). When the disk
   * holds something else the save is refused with 409, so that a change made elsewhere is never overwritten in silence.
   */
  async write(path: string, model: Record<string, unknown>): Promise<ContentsModel> {
    const real = await this.root.resolve(path);
    if (this.root.split(path).length === 0) throw new HttpError(400, 'path: takes a file name');
    if (model['type'] === 'directory') {
      await this.root
        .inFolderOf(real, (entry) => mkdir(entry))
        .catch((error: unknown) => {
          if (error instanceof HttpError) throw error;
          if ((error as NodeJS.ErrnoException).code === 'EEXIST')
            throw new HttpError(409, `path: ${JSON.stringify(path)} is there already`);
          throw new HttpError(
            403,
            `path: ${JSON.stringify(path)} could not be made: ${reason(error, 'write')}`,
          );
        });
      return this.read(path, { content: false });
    }
    const bytes = bytesOf(path, model);
    return this.queue.run(real, async () => {
      const now = await this.root.read(path).catch((error: unknown) => {
        if (error instanceof HttpError && error.status === 404) return undefined;
        throw error;
      });
      const found = now === undefined ? null : hashOf(now);
      if (model['expected_hash'] !== undefined && model['expected_hash'] !== found) {
        throw new HttpError(
          409,
          `${basename(path)}: changed on disk since it was opened; nothing was saved`,
          { hash: found, reason: 'changed' },
        );
      }
      await this.#put(path, real, bytes);
      const saved = await this.#describe(path, real);
      return { ...saved, hash: hashOf(bytes), hash_algorithm: 'sha256' };
    });
  }

  /** A new file or folder of a free name in `folder`, or a copy of `copy_from`. One at a time, so that no two get the same name. */
  create(folder: string, wish: Record<string, unknown>): Promise<ContentsModel> {
    return this.queue.run(`new in ${folder}`, () => this.#create(folder, wish));
  }

  async #create(folder: string, wish: Record<string, unknown>): Promise<ContentsModel> {
    const from = wish['copy_from'];
    if (typeof from === 'string') {
      const extension = extname(from);
      const bytes = await this.root.read(from);
      const to = await this.#freeName(folder, `${basename(from, extension)}-copy`, extension);
      await this.#put(to, await this.root.resolve(to), bytes);
      return this.read(to, { content: false });
    }
    const type = wish['type'] ?? 'file';
    if (type === 'directory') return this.write(await this.#freeName(folder, 'folder', ''), { type });
    if (type === 'notebook') {
      const stem =
        typeof wish['name'] === 'string' && wish['name'].trim() !== ''
          ? wish['name'].trim().replace(/\.ipynb$/, '')
          : 'untitled';
      return this.write(await this.#freeName(folder, stem, '.ipynb'), { type, content: emptyNotebook });
    }
    const extension = typeof wish['ext'] === 'string' ? wish['ext'] : '.txt';
    const path = await this.#freeName(folder, 'untitled', extension);
    return this.write(path, { type: 'file', format: 'text', content: '' });
  }

  async rename(path: string, to: unknown): Promise<ContentsModel> {
    if (typeof to !== 'string' || to === '') throw new HttpError(400, 'path: takes the new path as text');
    const [source, target] = [await this.root.resolveEntry(path), await this.root.resolveEntry(to)];
    await lstat(source).catch(() => notThere(path));
    if (source !== target && (await exists(target)))
      throw new HttpError(409, `path: ${JSON.stringify(to)} is there already`);
    // Both folders are opened and checked first: one that is exchanged for a link meanwhile is not followed.
    await this.root
      .inFolderOf(source, (from) => this.root.inFolderOf(target, (onto) => rename(from, onto)))
      .catch((error: unknown) => {
        if (error instanceof HttpError) throw error;
        throw new HttpError(
          403,
          `path: ${JSON.stringify(path)} could not be renamed: ${reason(error, 'write')}`,
        );
      });
    return this.read(to, { content: false });
  }

  /** Of a link, the link goes and what it leads to stays. */
  async remove(path: string): Promise<void> {
    if (this.root.split(path).length === 0)
      throw new HttpError(400, 'path: the notebooks folder itself stays');
    const entry = await this.root.resolveEntry(path);
    const found = await lstat(entry).catch(() => notThere(path));
    if (found.isDirectory() && (await readdir(entry)).length > 0)
      throw new HttpError(400, `path: folder ${JSON.stringify(path)} is not empty`);
    const work = found.isDirectory() ? rmdir : unlink;
    await this.root
      .inFolderOf(entry, (spot) => work(spot))
      .catch((error: unknown) => {
        if (error instanceof HttpError) throw error;
        throw new HttpError(
          403,
          `path: ${JSON.stringify(path)} could not be deleted: ${reason(error, 'write')}`,
        );
      });
  }

  #put(path: string, real: string, bytes: Buffer): Promise<void> {
    return this.root.inFolderOf(real, (entry) => writeEntry(entry, bytes, path));
  }

  async #freeName(folder: string, stem: string, extension: string): Promise<string> {
    for (let n = 0; ; n += 1) {
      const name = `${stem}${n === 0 ? '' : `-${n + 1}`}${extension}`;
      const path = folder === '' ? name : `${folder}/${name}`;
      if (!(await exists(await this.root.resolveEntry(path)))) return path;
    }
  }

  async #list(path: string, real: string): Promise<ContentsModel[]> {
    const out: ContentsModel[] = [];
    for (const name of (await readdir(real)).sort()) {
      if (name.startsWith('.')) continue;
      const below = path === '' ? name : `${path}/${name}`;
      // An entry that cannot be shown (a broken link, a link that leads outside, a pipe) is left out and does not spoil the list.
      const model = await this.read(below, { content: false }).catch((error: unknown) => {
        if (!this.#told.has(below)) this.log(`${below} is left out: ${messageOf(error)}`);
        this.#told.add(below);
      });
      if (model !== undefined) out.push(model);
    }
    return out;
  }

  async #describe(path: string, real: string): Promise<ContentsModel> {
    const found = await stat(real).catch(() => notThere(path));
    mustBePlain(found, path);
    const writable = await access(real, constants.W_OK).then(
      () => true,
      () => false,
    );
    return contentsModel(path, found, writable);
  }
}

function mustBeOfType({ path, type }: ContentsModel, wanted: string | null | undefined): void {
  if (!wanted || wanted === type || (wanted === 'file' && type === 'notebook')) return;
  throw new HttpError(400, `type: ${JSON.stringify(path)} is a ${type}, asked for as ${wanted}`);
}

function fileContent(
  path: string,
  bytes: Buffer,
  format: string | null | undefined,
): Pick<ContentsModel, 'format' | 'content'> {
  const text = format === 'base64' ? undefined : utf8(bytes);
  if (text === undefined && format === 'text')
    throw new HttpError(400, `format: ${JSON.stringify(path)} is not text; ask for base64`);
  return text === undefined
    ? { format: 'base64', content: bytes.toString('base64') }
    : { format: 'text', content: text };
}

const exists = (path: string): Promise<boolean> =>
  lstat(path).then(
    () => true,
    () => false,
  );

const messageOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

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
