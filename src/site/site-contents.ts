/**
 * The notebooks folder of a site: what the site brought, and over it what the user keeps in the browser. Speaks the Jupyter contents
 * API as the notebook server does.
 */
import { HttpError } from '../server/http-error.js';
import { emptyNotebook, notebookForDisk, notebookForPage } from '../server/notebook-text.js';
import { StorageError, type FileStore, type StoredFile } from './file-store.js';
import { textHash } from './text-hash.js';

/** A file as the contents API describes it. */
export interface FileDescription {
  readonly name: string;
  readonly path: string;
  readonly type: 'notebook' | 'file' | 'directory';
  readonly created: string;
  readonly last_modified: string;
  readonly size: number | null;
  readonly writable: boolean;
  readonly mimetype: string | null;
  readonly format: 'json' | 'text' | null;
  readonly content: unknown;
  readonly hash?: string;
}

/** What came with the site: a list of paths, and their texts when asked for. */
export interface BroughtFiles {
  readonly paths: readonly string[];
  read(path: string): Promise<string>;
}

const nameOf = (path: string): string => path.split('/').at(-1) ?? path;
const isNotebook = (path: string): boolean => path.endsWith('.ipynb');

export class SiteContents {
  constructor(
    private readonly store: FileStore,
    private readonly brought: BroughtFiles,
  ) {}

  /** Every path with where it is. */
  async paths(): Promise<Map<string, StoredFile | undefined>> {
    const found = new Map<string, StoredFile | undefined>(
      this.brought.paths.map((path) => [path, undefined]),
    );
    for (const file of await this.store.list()) found.set(file.path, file);
    return found;
  }

  /** The texts of the user's own files, notebooks left out. */
  async userFiles(): Promise<Record<string, string>> {
    const own = (await this.store.list()).filter((file) => !isNotebook(file.path));
    return Object.fromEntries(own.map((file) => [file.path, file.text]));
  }

  /** The text of a file. @throws HttpError 404 */
  async text(path: string): Promise<string> {
    const own = await this.store.get(path);
    if (own) return own.text;
    if (this.brought.paths.includes(path)) return this.brought.read(path);
    throw new HttpError(404, `path: no file ${JSON.stringify(path)} in this browser`);
  }

  async read(path: string, query: URLSearchParams): Promise<FileDescription> {
    if (path === '') return this.#folder();
    const text = await this.text(path);
    const described = this.#describe(path, text, await this.store.get(path));
    if (query.get('content') === '0') return described;
    return isNotebook(path) && query.get('type') !== 'file'
      ? { ...described, format: 'json', content: notebookForPage(text, described.name) }
      : { ...described, type: 'file', format: 'text', content: text };
  }

  async write(path: string, model: Readonly<Record<string, unknown>>): Promise<FileDescription> {
    if (path === '' || model['type'] === 'directory')
      throw new HttpError(400, 'path: takes a file name; a site has one folder');
    const text = textOf(path, model);
    const expected = model['expected_hash'];
    const brought = this.brought.paths.includes(path) ? await this.brought.read(path) : undefined;
    const file = await this.#put(path, text, (now) => {
      const found = now?.text ?? brought;
      if (expected === undefined || expected === (found === undefined ? null : textHash(found))) return;
      throw new HttpError(409, `${nameOf(path)}: changed since it was opened; nothing was saved`, {
        reason: 'changed',
      });
    });
    return this.#describe(path, text, file);
  }

  /** A new notebook of a free name, or a copy of `copy_from`. */
  async create(wish: Readonly<Record<string, unknown>>): Promise<FileDescription> {
    const from = wish['copy_from'];
    if (typeof from === 'string') {
      const [, stem = from, ending = ''] = /^(.*?)(\.[^.]*)?$/.exec(nameOf(from)) ?? [];
      const text = await this.text(from);
      return this.#new(`${stem}-copy`, ending, text);
    }
    const name = typeof wish['name'] === 'string' ? wish['name'].trim().replace(/\.ipynb$/, '') : '';
    return this.#new(name === '' ? 'untitled' : name, '.ipynb', notebookForDisk(emptyNotebook));
  }

  async rename(path: string, to: unknown): Promise<FileDescription> {
    if (typeof to !== 'string' || to === '') throw new HttpError(400, 'path: takes the new path as text');
    const text = await this.text(path);
    if ((await this.paths()).has(to))
      throw new HttpError(409, `path: ${JSON.stringify(to)} is there already`);
    const file = await this.#put(to, text);
    await this.store.remove(path);
    return this.#describe(to, text, file);
  }

  /** Of a file that came with the site, the user's own version goes. */
  async remove(path: string): Promise<void> {
    if ((await this.store.get(path)) === undefined && this.brought.paths.includes(path))
      throw new HttpError(403, `${nameOf(path)} came with this site and stays; only your own version can go`);
    await this.store.remove(path);
  }

  async #new(stem: string, ending: string, text: string): Promise<FileDescription> {
    const taken = await this.paths();
    let path = `${stem}${ending}`;
    for (let n = 2; taken.has(path); n++) path = `${stem}-${n}${ending}`;
    return this.#describe(path, text, await this.#put(path, text));
  }

  async #put(
    path: string,
    text: string,
    mayReplace?: (now: StoredFile | undefined) => void,
  ): Promise<StoredFile> {
    try {
      return await this.store.put(path, text, mayReplace);
    } catch (error) {
      if (error instanceof StorageError) throw new HttpError(507, error.message);
      throw error;
    }
  }

  async #folder(): Promise<FileDescription> {
    const files = [...(await this.paths())].sort(([a], [b]) => a.localeCompare(b));
    const content = files.map(([path, file]) => this.#describe(path, file?.text, file));
    return { ...this.#describe('', undefined, undefined), type: 'directory', format: 'json', content };
  }

  #describe(path: string, text: string | undefined, file: StoredFile | undefined): FileDescription {
    return {
      name: nameOf(path),
      path,
      type: isNotebook(path) ? 'notebook' : 'file',
      created: new Date(file?.created ?? 0).toISOString(),
      last_modified: new Date(file?.modified ?? 0).toISOString(),
      size: text === undefined ? null : new TextEncoder().encode(text).length,
      writable: true,
      mimetype: isNotebook(path) ? null : 'text/plain',
      format: null,
      content: null,
      ...(text === undefined ? {} : { hash: textHash(text) }),
    };
  }
}

/** The text to keep of what a client sent. @throws HttpError 400 */
function textOf(path: string, model: Readonly<Record<string, unknown>>): string {
  const { content, format } = model;
  if (model['type'] === 'notebook' || (model['type'] === undefined && isNotebook(path)))
    return notebookForDisk(content);
  if (typeof content !== 'string') throw new HttpError(400, 'content: takes text');
  if (format !== 'base64') return content;
  const bytes = Uint8Array.from(atob(content), (c) => c.charCodeAt(0));
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    // A notebook that is dropped in is checked as one that is saved.
    return isNotebook(path) ? notebookForDisk(notebookForPage(text, nameOf(path))) : text;
  } catch (error) {
    if (error instanceof HttpError) throw error;
    throw new HttpError(
      400,
      `${nameOf(path)}: takes text (notebooks, CSV, JSON); this file is something else`,
    );
  }
}
