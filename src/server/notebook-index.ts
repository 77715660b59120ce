import { fork, type ChildProcess } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { Contents } from './contents.js';
import type { RenderEvent, RenderRequest } from './render-worker.js';
import { HttpError } from './http-error.js';
import { hashOf, writeAtomically } from './save-contents.js';

export interface NotebookIndexOptions {
  readonly contents: Contents;
  /** Script forked as the page maker. Notebooks run there, so that a cell that loops does not stop the server. */
  readonly maker: string;
  readonly makerArguments: readonly string[];
  /** Where finished pages are kept. */
  readonly cache: string;
  /** Folder of the built program: a page made by another build is made again. */
  readonly program: string;
  readonly say: (line: string) => void;
}

export type RenderStatus = {
  readonly name: string;
  readonly state: 'waiting' | 'running' | 'done' | 'failed';
  readonly cell?: number;
  readonly cells?: number;
  readonly label?: string;
};

interface Job {
  readonly path: string;
  readonly key: string;
  readonly done: Promise<string>;
  finish(html: string): void;
  fail(error: Error): void;
}

/** Every notebook as a finished page: run in order in the background, kept until notebook, data or program change. */
export class NotebookIndex {
  readonly #queue: Job[] = [];
  readonly #states = new Map<string, RenderStatus>();
  #child: ChildProcess | undefined;
  #running: Job | undefined;
  #closed = false;
  #surroundings: Promise<string> | undefined;

  constructor(private readonly options: NotebookIndexOptions) {}

  /** Makes the pages that are missing, one after the other; the number made. */
  async makeAll(): Promise<number> {
    const names = (await readdir(this.options.contents.place.root))
      .filter((name) => name.endsWith('.ipynb') && !name.startsWith('.'))
      .sort();
    for (const name of names) this.#states.set(name, { name, state: 'waiting' });
    let failed = 0;
    for (const name of names) if (!this.#closed) await this.page(name, false).catch(() => (failed += 1));
    failed = this.states().filter(({ state }) => state === 'failed').length || failed;
    if (!this.#closed && names.length > 0)
      this.options.say(
        failed === 0
          ? `All ${names.length} notebooks have a finished page.`
          : `${failed} of ${names.length} notebooks have no finished page.`,
      );
    return names.length - failed;
  }

  states(): RenderStatus[] {
    return [...this.#states.values()];
  }

  /** The finished page of a notebook; waits for one still being made. `first` lets it go before the rest. */
  async page(name: string, first = true): Promise<string> {
    const real = await this.options.contents.place.resolve(name);
    const text = await readFile(real).catch(() => {
      throw new HttpError(404, `pages: no notebook ${JSON.stringify(name)}`);
    });
    const key = hashOf(`${hashOf(text)}${await (this.#surroundings ??= this.#readSurroundings())}`);
    const kept = await this.#kept(name, key);
    if (kept !== undefined) {
      if (this.#states.get(name)?.state !== 'failed') this.#states.set(name, { name, state: 'done' });
      return kept;
    }
    const known = [this.#running, ...this.#queue].find((job) => job?.path === name && job.key === key);
    if (known !== undefined) {
      const at = this.#queue.indexOf(known);
      if (first && at > 0) this.#queue.unshift(...this.#queue.splice(at, 1));
      return known.done;
    }
    const job = newJob(name, key);
    if (first) this.#queue.unshift(job);
    else this.#queue.push(job);
    this.#next();
    return job.done;
  }

  close(): void {
    this.#closed = true;
    for (const job of this.#queue.splice(0)) job.fail(new Error('the server is closing'));
    this.#child?.kill('SIGKILL');
  }

  #next(): void {
    if (this.#running !== undefined || this.#closed) return;
    const job = this.#queue.shift();
    if (job === undefined) {
      this.#child?.disconnect();
      this.#child = undefined;
      return;
    }
    this.#running = job;
    this.#states.set(job.path, { name: job.path, state: 'running' });
    const ask: RenderRequest = { file: join(this.options.contents.place.root, job.path), name: job.path };
    (this.#child ??= this.#startMaker()).send(ask);
  }

  #startMaker(): ChildProcess {
    const child = fork(this.options.maker, [...this.options.makerArguments], {
      stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
      execArgv: ['--max-old-space-size=1024'],
      serialization: 'advanced',
    });
    let complaint = '';
    child.stderr?.on('data', (bytes: Buffer) => (complaint = (complaint + bytes.toString()).slice(-2000)));
    child.on('message', (message) => this.#heard(message as RenderEvent));
    child.on('exit', (code, signal) => {
      if (this.#child === child) this.#child = undefined;
      const job = this.#running;
      if (job === undefined || this.#child !== undefined) return;
      this.#end(
        job,
        undefined,
        `the process that ran it ended (${signal ?? code ?? 'unknown'})${complaint === '' ? '' : `: ${complaint.trim().split('\n').at(-1) ?? ''}`}`,
      );
    });
    child.on('error', () => child.kill('SIGKILL'));
    return child;
  }

  #heard(message: RenderEvent): void {
    const job = this.#running;
    if (job === undefined || message.name !== job.path) return;
    if (message.kind === 'cell') {
      this.#states.set(job.path, {
        name: job.path,
        state: 'running',
        cell: message.cell,
        cells: message.cells,
      });
      this.options.say(`  ${job.path}: cell ${message.cell} of ${message.cells}`);
    } else this.#end(job, message.html, message.failure, message.seconds);
  }

  #end(job: Job, html: string | undefined, failure: string | undefined, seconds = 0): void {
    this.#running = undefined;
    this.#states.set(job.path, {
      name: job.path,
      state: failure === undefined ? 'done' : 'failed',
      ...(failure === undefined ? {} : { label: failure }),
    });
    if (!this.#closed)
      this.options.say(
        failure === undefined
          ? `  ${job.path}: page written in ${seconds.toFixed(1)} s`
          : `  ${job.path}: stopped. ${failure}`,
      );
    if (html === undefined) job.fail(new HttpError(500, `${job.path}: ${failure ?? 'no page came out'}`));
    // A page that shows where its notebook stopped is shown, but not kept: the next start tries again.
    else if (failure !== undefined) job.finish(html);
    else
      void this.#keep(job, html).then(
        () => job.finish(html),
        (error: Error) => job.fail(error),
      );
    this.#next();
  }

  async #keep(job: Job, html: string): Promise<void> {
    await mkdir(this.options.cache, { recursive: true });
    await writeAtomically(this.#file(job.path), html);
    await writeAtomically(`${this.#file(job.path)}.key`, job.key);
  }

  async #kept(name: string, key: string): Promise<string | undefined> {
    const had = await readFile(`${this.#file(name)}.key`, 'utf8').catch(() => '');
    return had === key ? readFile(this.#file(name), 'utf8').catch(() => undefined) : undefined;
  }

  #file(name: string): string {
    return join(this.options.cache, basename(name).replace(/\.ipynb$/, '.html'));
  }

  /** A print of all that a notebook's figures hang on besides its own text: the program, and the tables beside the notebooks. */
  async #readSurroundings(): Promise<string> {
    const hash = createHash('sha256');
    const walk = async (folder: string, wanted: RegExp): Promise<void> => {
      for (const entry of (await readdir(folder, { withFileTypes: true }).catch(() => [])).sort((a, b) =>
        a.name < b.name ? -1 : 1,
      )) {
        const path = join(folder, entry.name);
        if (
          entry.isDirectory() &&
          !entry.name.startsWith('.') &&
          entry.name !== 'pages' &&
          entry.name !== 'page'
        )
          await walk(path, wanted);
        else if (wanted.test(entry.name) && (await stat(path)).size < 5_000_000)
          hash.update(entry.name).update(await readFile(path));
      }
    };
    await walk(this.options.program, /\.js$/);
    await walk(join(this.options.program, '..', 'data'), /\.(csv|json)$/);
    await walk(this.options.contents.place.root, /\.(csv|json|txt)$/);
    return hash.digest('hex');
  }
}

function newJob(path: string, key: string): Job {
  let finish: (html: string) => void = () => undefined;
  let fail: (error: Error) => void = () => undefined;
  const done = new Promise<string>((resolve, reject) => {
    finish = resolve;
    fail = reject;
  });
  done.catch(() => undefined);
  return { path, key, done, finish, fail };
}
