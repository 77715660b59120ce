/** A session: the cells of one notebook, run in this process one after the other. The kernel and the runner share it. */
import { compileCell } from './compiler/compile.ts';
import { CompilerRoom } from './compiler/room.ts';
import { provideGlobals, type CellGlobals } from './globals.ts';
import type { MimeBundle, NbOutput } from './message.ts';
import { Executor, type ExecutorHooks } from './running/executor.ts';
import { Interrupted, type RunEnd } from './running/run.ts';
import { bundleAtOnce, bundleOf } from './showing/bundle.ts';
import { showProgress, type ProgressLines } from './showing/progress.ts';
import { PrintCapture, PrintedText } from './showing/stream.ts';
import { Traces, type CellError } from './showing/trace.ts';
import { takeRoom } from './start/frozen.ts';

export type { MimeBundle, NbOutput } from './message.ts';

/** How a cell ended. `line` and `column` count from 1 in the cell's own text. */
export interface CellOutcome {
  status: 'ok' | 'error' | 'aborted';
  executionCount: number;
  error?: { ename: string; evalue: string; traceback: string[]; line?: number; column?: number };
}

/** Cells of one notebook, run one after the other in this process; each sees the names of those before it. */
export interface CellSession {
  /** Runs a cell once those before it are done. Never rejects: what goes wrong is in the outcome and in the outputs. */
  run(code: string, onOutput: (output: NbOutput) => void): Promise<CellOutcome>;
  /** Stops the running cell at its next wait; a loop that never waits can only be stopped from outside its thread. */
  interrupt(): void;
  dispose(): Promise<void>;
}

export interface SessionOptions {
  /** Folder the cells resolve files and packages from. */
  cwd: string;
  /** The notebook's file, for messages. */
  file?: string;
  hooks?: ExecutorHooks & { compiling?(yes: boolean): void };
  /** Parts of the kernel a cell reaches that need a person or a page at the other end. */
  globals?: Partial<CellGlobals>;
  /** Keep the console for the session's whole life, as a kernel does, rather than while a cell runs. */
  keepConsole?: boolean;
  /** Show how far long work is, as a kernel does; a notebook run from start to end keeps no such lines. */
  progress?: boolean;
}

export interface RunOptions {
  /** No count, no outputs, no result. */
  silent?: boolean;
  countsUp?: boolean;
}

/** The room that a frozen start holds, if this process began from one; else a new one. */
function readyRoom(cwd: string): CompilerRoom {
  const room = takeRoom() ?? new CompilerRoom(cwd);
  room.moveTo(cwd);
  return room;
}

/** Opens a session whose cells resolve files and packages from `cwd`; `file` names the notebook in messages. */
export function createSession(options: { cwd: string; file?: string }): Promise<CellSession> {
  return Promise.resolve(new KernelSession(options));
}

export class KernelSession implements CellSession {
  readonly room: CompilerRoom;
  readonly executor: Executor;
  count = 0;
  private readonly traces = new Traces();
  private readonly printed: PrintedText;
  private readonly capture: PrintCapture;
  private readonly returnGlobals: () => void;
  private output: (output: NbOutput) => void = () => undefined;
  private queue: Promise<unknown> = Promise.resolve();
  private quiet = 0;
  private abandon: (() => void) | undefined;
  private readonly progress: ProgressLines | undefined;

  constructor(private readonly options: SessionOptions) {
    this.room = readyRoom(options.cwd);
    this.executor = new Executor(options.cwd, options.file, options.hooks);
    this.printed = new PrintedText((name, text) => this.output({ output_type: 'stream', name, text }));
    this.capture = new PrintCapture((name, text) => this.printed.write(name, text));
    this.returnGlobals = provideGlobals({
      emit: (output) => this.emit(output),
      signal: () => this.executor.signal,
      ...options.globals,
    });
    if (options.keepConsole) this.capture.start();
    if (options.progress) this.progress = showProgress((output) => this.emit(output), () => this.executor.signal);
  }

  run(code: string, onOutput: (output: NbOutput) => void, options: RunOptions = {}): Promise<CellOutcome> {
    const turn = this.queue.then(() => this.runNow(code, onOutput, options));
    this.queue = turn.catch(() => undefined);
    return turn;
  }

  /** Everything that leaves a session passes here, printed text first. */
  private emit(output: NbOutput): void {
    this.printed.flush();
    this.output(output);
  }

  /**
   * The outcome rests on callbacks, not on code after the call into the cell: the engine may tear a looping cell down,
   * and everything on the stack below it, and only the interrupt that follows tells this session so.
   */
  private runNow(code: string, onOutput: (output: NbOutput) => void, { silent = false, countsUp = !silent }: RunOptions): Promise<CellOutcome> {
    if (countsUp) this.count++;
    const executionCount = this.count;
    const label = countsUp ? `In[${executionCount}]` : `In[quiet ${++this.quiet}]`;
    this.printed.flush();
    this.output = silent ? () => undefined : onOutput;
    if (code.trim() === '') return Promise.resolve({ status: 'ok', executionCount });

    return new Promise((resolve) => {
      let over = false;
      const end = (error?: CellError): void => {
        if (over) return;
        over = true;
        this.abandon = undefined;
        if (error === interruption) this.progress?.stop();
        if (error) this.emit({ output_type: 'error', ename: error.ename, evalue: error.evalue, traceback: error.traceback });
        this.printed.flush();
        if (!this.options.keepConsole) this.capture.stop();
        resolve(error ? { status: 'error', executionCount, error } : { status: 'ok', executionCount });
      };
      this.abandon = () => end(interruption);
      if (!this.options.keepConsole) this.capture.start();

      let compiled: ReturnType<typeof compileCell>;
      try {
        compiled = this.compile(code);
      } catch (error) {
        // A defect of the compiler is told as the cell's error; the session goes on.
        return end({ ...this.traces.describe(error), ename: 'CompilerDefect' });
      }
      if ('problems' in compiled) return end(this.traces.refuse(label, code, compiled.problems));
      const { cell } = compiled;
      this.traces.remember(label, code, cell.map, cell.shift);
      this.executor.run(cell, label, (how: RunEnd, set) => {
        cell.publish((name) => set.has(name) || ('value' in how && cell.declares.some((d) => d.name === name)));
        if ('interrupted' in how) return end(interruption);
        if ('error' in how) return end(how.error instanceof Interrupted ? interruption : this.traces.describe(how.error));
        if (how.value === undefined || silent) return end();
        this.show(how.value, executionCount, end);
      });
    });
  }

  private compile(code: string): ReturnType<typeof compileCell> {
    this.options.hooks?.compiling?.(true);
    try {
      return compileCell(this.room, code);
    } finally {
      this.options.hooks?.compiling?.(false);
    }
  }

  private show(value: unknown, executionCount: number, end: (error?: CellError) => void): void {
    const emit = (data: MimeBundle): void => {
      this.emit({ output_type: 'execute_result', execution_count: executionCount, data, metadata: {} });
      end();
    };
    const atOnce = bundleAtOnce(value);
    if (atOnce) return emit(atOnce);
    bundleOf(value).then(emit, (error: unknown) => end(this.traces.describe(error)));
  }

  /** Evaluates an expression beside the cells: no count, no output, its bundle or its error as the result. */
  async evaluate(expression: string): Promise<{ data: MimeBundle } | { error: CellError }> {
    const label = `In[expression ${++this.quiet}]`;
    const compiled = this.compile(`(${expression}\n)`);
    if ('problems' in compiled) return { error: this.traces.refuse(label, `(${expression}\n)`, compiled.problems) };
    const how = await new Promise<RunEnd>((resolve) => this.executor.run(compiled.cell, label, resolve));
    if ('interrupted' in how) return { error: interruption };
    if ('error' in how) return { error: this.traces.describe(how.error) };
    try {
      return { data: await bundleOf(how.value) };
    } catch (error) {
      return { error: this.traces.describe(error) };
    }
  }

  /** An error that no cell caught, such as one thrown by a timer: told on stderr, the session goes on. */
  reportStray(error: unknown): void {
    if (error instanceof Interrupted) return;
    this.printed.write('stderr', `${this.traces.describe(error).traceback.join('\n')}\n`);
    this.printed.flush();
  }

  /** Hands on what has been printed so far. */
  flush(): void {
    this.printed.flush();
  }

  interrupt(): void {
    this.executor.interrupt();
    this.abandon?.();
  }

  async dispose(): Promise<void> {
    this.interrupt();
    await this.queue;
    this.capture.stop();
    this.progress?.close();
    this.returnGlobals();
    this.executor.close();
  }
}

const interruption: CellError = {
  ename: 'Interrupted',
  evalue: 'the cell was interrupted',
  traceback: ['\u001b[0;31mInterrupted: the cell was interrupted\u001b[0m'],
};
