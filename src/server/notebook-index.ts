import { basename, join } from 'node:path';
import type { Contents } from './contents.js';
import type { ContentsModel } from './contents-model.js';
import type { KnownNotebooks } from './known-notebooks.js';
import { HttpError } from './http-error.js';
import { readPrivateFile, writePrivateFile } from './private-file.js';
import { RenderQueue, type RenderedPage, type RenderStatus } from './render-queue.js';
import { hashOf } from './save-contents.js';
import { surroundingsHash } from './surroundings.js';

/** How finished pages are made and kept. */
export interface RenderOptions {
  /** Script forked as the page maker. Notebooks run there, so that a cell that loops does not stop the server. */
  readonly maker: string;
  readonly makerArguments: readonly string[];
  /** Private folder where finished pages are kept; undefined keeps them for this run only. */
  readonly cache: string | undefined;
  /** Folder of the built program: a page made by another build is made again. */
  readonly program: string;
  /** Longest time that one cell may take in the background; default 60 s. */
  readonly cellLimitMs?: number;
}

export interface NotebookIndexOptions extends RenderOptions {
  readonly contents: Contents;
  readonly known: KnownNotebooks;
  readonly log: (line: string) => void;
}

export const defaultCellLimitMs = 60_000;

/** Every notebook as a finished page: run in order in the background, kept until notebook, data or program change. */
export class NotebookIndex {
  readonly #states = new Map<string, RenderStatus>();
  readonly #queue: RenderQueue;
  readonly #memory = new Map<string, string>();
  /** Notebooks that the user asked for in this run. */
  readonly #wanted = new Set<string>();
  #surroundings: Promise<string> | undefined;

  constructor(private readonly options: NotebookIndexOptions) {
    this.#queue = new RenderQueue({
      ...options,
      cellLimitMs: options.cellLimitMs ?? defaultCellLimitMs,
      root: options.contents.root.folder,
      onStatus: (status) => this.#states.set(status.name, status),
    });
  }

  /**
   * Lists the notebooks and, where `unasked` allows it, makes the pages of the known ones, one after the other; the number that have a
   * page. A notebook that came from elsewhere and was never run here waits until the user asks for it.
   */
  async makeAll({ unasked = true } = {}): Promise<number> {
    const { contents, log } = this.options;
    const listing = (await contents.read('')).content as ContentsModel[];
    const names = listing.filter(({ type }) => type === 'notebook').map(({ name }) => name);
    for (const name of names) {
      const may = unasked && (await this.#isKnown(name));
      this.#states.set(name, { name, state: may ? 'waiting' : 'not-run' });
    }
    const waiting = names.filter((name) => this.#states.get(name)?.state === 'waiting');
    for (const name of names) {
      if (this.#queue.closed) break;
      if (waiting.includes(name)) await this.page(name, false).catch(() => undefined);
      else await this.#current(name).catch(() => undefined);
    }
    if (this.#queue.closed || names.length === 0) return 0;
    const done = names.filter((name) => this.#states.get(name)?.state === 'done').length;
    const left = waiting.filter((name) => this.#states.get(name)?.state !== 'done').length;
    const notRun = names.filter((name) => this.#states.get(name)?.state === 'not-run').length;
    if (left > 0) log(`${left} of ${names.length} notebooks have no finished page.`);
    else if (done > 0) log(`${done} of ${names.length} notebooks have a finished page.`);
    if (notRun > 0)
      log(`${notRun} of ${names.length} notebooks were not run before and wait until you ask for them.`);
    return done;
  }

  states(): RenderStatus[] {
    return [...this.#states.values()];
  }

  /** The user asks for the page of a notebook: it is run, before others that wait. */
  request(name: string): void {
    this.#wanted.add(name);
    this.#states.set(name, { name, state: 'waiting' });
    void this.page(name).catch(() => undefined);
  }

  /** The finished page of a notebook; waits for one still being made. `first` lets it go before the rest. */
  async page(name: string, first = true): Promise<string> {
    const { key, kept } = await this.#current(name);
    if (kept !== undefined) return kept;
    if (this.#states.get(name)?.state !== 'waiting' && !(await this.#isKnown(name))) {
      this.#states.set(name, { name, state: 'not-run' });
      throw new HttpError(409, `${name}: not run yet; press "Run" beside it in the list of notebooks`);
    }
    const page = await this.#queue.add({ name, key, first });
    // A page that shows where its notebook stopped is shown, but not kept: the next start tries again.
    if (page.failure === undefined) await this.#keep(page);
    return page.html;
  }

  close(): void {
    this.#queue.close();
  }

  /** What the page of a notebook is made from now, and the page, where it was made from just that. */
  async #current(name: string): Promise<{ key: string; kept: string | undefined }> {
    const text = (await this.options.contents.root.read(name)).toString('utf8');
    const key = hashOf(`${hashOf(text)}${await this.#surroundingsOf()}`);
    const kept = await this.#kept(name, key);
    if (kept !== undefined && this.#states.get(name)?.state !== 'failed')
      this.#states.set(name, { name, state: 'done' });
    return { key, kept };
  }

  async #isKnown(name: string): Promise<boolean> {
    if (this.#wanted.has(name)) return true;
    const bytes = await this.options.contents.root.read(name).catch(() => undefined);
    return bytes !== undefined && this.options.known.isKnown(bytes.toString('utf8'));
  }

  async #keep({ name, key, html }: RenderedPage): Promise<void> {
    const file = this.#file(name);
    if (file === undefined) this.#memory.set(`${name} ${key}`, html);
    else {
      await writePrivateFile(file, html);
      await writePrivateFile(`${file}.key`, key);
    }
  }

  async #kept(name: string, key: string): Promise<string | undefined> {
    const file = this.#file(name);
    if (file === undefined) return this.#memory.get(`${name} ${key}`);
    return (await readPrivateFile(`${file}.key`)) === key ? readPrivateFile(file) : undefined;
  }

  #file(name: string): string | undefined {
    const { cache } = this.options;
    return cache === undefined ? undefined : join(cache, basename(name).replace(/\.ipynb$/, '.html'));
  }

  #surroundingsOf(): Promise<string> {
    const { program, contents } = this.options;
    return (this.#surroundings ??= surroundingsHash(program, contents.root.folder));
  }
}
