import { fork, type ChildProcess } from 'node:child_process';
import { join } from 'node:path';
import { HttpError } from './http-error.js';
import type { RenderEvent, RenderRequest } from './render-worker.js';

export interface RenderStatus {
  readonly name: string;
  /** `not-run`: nobody has run this notebook on this machine yet, and it is not run unasked. */
  readonly state: 'not-run' | 'waiting' | 'running' | 'done' | 'failed';
  readonly cell?: number;
  readonly cells?: number;
  readonly label?: string;
}

interface RenderQueueOptions {
  readonly maker: string;
  readonly makerArguments: readonly string[];
  readonly cellLimitMs: number;
  /** Folder of notebooks. */
  readonly root: string;
  readonly log: (line: string) => void;
  readonly onStatus: (status: RenderStatus) => void;
}

export interface RenderedPage {
  readonly name: string;
  /** Of what the page was made from. */
  readonly key: string;
  readonly html: string;
  /** Where the notebook stopped, when it did. */
  readonly failure: string | undefined;
}

/** For the compiler to load, on a machine that is busy. */
const startLimitMs = 120_000;

interface Job {
  readonly name: string;
  readonly key: string;
  readonly done: Promise<RenderedPage>;
  readonly finish: (page: RenderedPage) => void;
  readonly fail: (error: Error) => void;
}

/** Runs notebooks one after the other in a process of their own. One that loops or takes the process down does not stop the rest. */
export class RenderQueue {
  closed = false;
  readonly #jobs: Job[] = [];
  #running: Job | undefined;
  #child: ChildProcess | undefined;
  #limit: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly options: RenderQueueOptions) {}

  add({ name, key, first }: { name: string; key: string; first: boolean }): Promise<RenderedPage> {
    const known = [this.#running, ...this.#jobs].find((job) => job?.name === name && job.key === key);
    if (known !== undefined) {
      const at = this.#jobs.indexOf(known);
      if (first && at > 0) this.#jobs.unshift(...this.#jobs.splice(at, 1));
      return known.done;
    }
    const job = newJob(name, key);
    if (first) this.#jobs.unshift(job);
    else this.#jobs.push(job);
    this.#next();
    return job.done;
  }

  close(): void {
    this.closed = true;
    clearTimeout(this.#limit);
    for (const job of this.#jobs.splice(0)) job.fail(new Error('the server is closing'));
    killWithChildren(this.#child);
  }

  #next(): void {
    if (this.#running !== undefined || this.closed) return;
    const job = this.#jobs.shift();
    if (job === undefined) {
      if (this.#child?.connected) this.#child.disconnect();
      this.#child = undefined;
      return;
    }
    this.#running = job;
    this.options.onStatus({ name: job.name, state: 'running' });
    const request: RenderRequest = { file: join(this.options.root, job.name), name: job.name };
    (this.#child ??= this.#startMaker()).send(request, (error) => {
      if (error !== null && this.#running === job) this.#end(job, undefined, error.message);
    });
    // Reading the file and starting the compiler come before the first cell.
    this.#startLimit(job, 0, startLimitMs);
  }

  #startMaker(): ChildProcess {
    const child = fork(this.options.maker, [...this.options.makerArguments], {
      stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
      execArgv: ['--max-old-space-size=1024'],
      serialization: 'advanced',
      // A process group of its own, so that what a cell starts ends with it.
      detached: true,
    });
    let complaint = '';
    child.stderr?.on('data', (bytes: Buffer) => (complaint = (complaint + bytes.toString()).slice(-2000)));
    child.on('message', (message) => this.#heard(message as RenderEvent));
    child.on('exit', (code, signal) => {
      if (this.#child !== child) return;
      this.#child = undefined;
      killWithChildren(child);
      const last = complaint.trim().split('\n').at(-1) ?? '';
      if (this.#running !== undefined)
        this.#end(
          this.#running,
          undefined,
          `the process that ran it ended (${signal ?? code ?? 'unknown'})${last === '' ? '' : `: ${last}`}`,
        );
    });
    child.on('error', () => killWithChildren(child));
    return child;
  }

  #startLimit(job: Job, cell: number, limitMs = this.options.cellLimitMs): void {
    clearTimeout(this.#limit);
    this.#limit = setTimeout(() => {
      if (this.#running !== job) return;
      const child = this.#child;
      this.#child = undefined;
      killWithChildren(child);
      const what = cell === 0 ? 'its start' : `cell ${cell}`;
      this.#end(
        job,
        undefined,
        `${what} took longer than ${limitMs / 1000} s, the limit in the background; open the notebook to run it without a limit`,
      );
    }, limitMs);
    this.#limit.unref();
  }

  #heard(message: RenderEvent): void {
    const job = this.#running;
    if (job === undefined || message.name !== job.name) return;
    if (message.kind === 'cell') {
      this.#startLimit(job, message.cell);
      const { cell, cells } = message;
      this.options.onStatus({ name: job.name, state: 'running', cell, cells });
      this.options.log(`  ${job.name}: cell ${cell} of ${cells}`);
    } else this.#end(job, message.html, message.failure, message.seconds);
  }

  #end(job: Job, html: string | undefined, failure: string | undefined, seconds = 0): void {
    clearTimeout(this.#limit);
    this.#running = undefined;
    const { name, key } = job;
    this.options.onStatus(
      failure === undefined ? { name, state: 'done' } : { name, state: 'failed', label: failure },
    );
    if (!this.closed)
      this.options.log(
        failure === undefined
          ? `  ${name}: page written in ${seconds.toFixed(1)} s`
          : `  ${name}: stopped. ${failure}`,
      );
    if (html === undefined) job.fail(new HttpError(500, `${name}: ${failure ?? 'no page came out'}`));
    else job.finish({ name, key, html, failure });
    this.#next();
  }
}

/** Ends the process and everything of its group. */
function killWithChildren(child: ChildProcess | undefined): void {
  if (child?.pid === undefined) return;
  try {
    process.kill(-child.pid, 'SIGKILL');
  } catch {
    child.kill('SIGKILL');
  }
}

function newJob(name: string, key: string): Job {
  let finish: Job['finish'] = () => undefined;
  let fail: Job['fail'] = () => undefined;
  const done = new Promise<RenderedPage>((resolve, reject) => {
    finish = resolve;
    fail = reject;
  });
  done.catch(() => undefined);
  return { name, key, done, finish, fail };
}
