/** A session: the cells of one notebook, run in this process one after the other. The kernel and the runner share it. */
import { compileCell } from './compiler/compile-cell.js';
import { IncrementalProgram } from './compiler/incremental-program.js';
import { installGlobals, type CellGlobals } from './globals.js';
import type { MimeBundle, NbOutput } from './message.js';
import { Executor, type ExecutorHooks } from './execution/executor.js';
import { Interrupted, type ExecutionResult } from './execution/cell-execution.js';
import { formatValueSync, formatValue } from './display/mime-bundle.js';
import { showProgress, type ProgressLines } from './display/progress-lines.js';
import { OutputCapture, StreamBuffer } from './display/output-capture.js';
import { TracebackFormatter, type CellError } from './display/traceback.js';
import { takePrewarmedProgram } from './snapshot/snapshot-state.js';

export type { MimeBundle, NbOutput } from './message.js';

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
  hooks?: ExecutorHooks & { duringCompile?(yes: boolean): void };
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
  storeHistory?: boolean;
}

/** The room that a frozen start holds, if this process began from one; else a new one. */
function prewarmedProgram(cwd: string): IncrementalProgram {
  const room = takePrewarmedProgram() ?? new IncrementalProgram(cwd);
  room.setCwd(cwd);
  return room;
}

/** Opens a session whose cells resolve files and packages from `cwd`; `file` names the notebook in messages. */
export function createSession(options: { cwd: string; file?: string }): Promise<CellSession> {
  return Promise.resolve(new KernelSession(options));
}

export class KernelSession implements CellSession {
  readonly program: IncrementalProgram;
  readonly executor: Executor;
  executionCount = 0;
  private readonly traces = new TracebackFormatter();
  private readonly printed: StreamBuffer;
  private readonly capture: OutputCapture;
  private readonly returnGlobals: () => void;
  private output: (output: NbOutput) => void = () => undefined;
  private queue: Promise<unknown> = Promise.resolve();
  private silentCount = 0;
  private cancelCurrent: (() => void) | undefined;
  private readonly progress: ProgressLines | undefined;

  constructor(private readonly options: SessionOptions) {
    this.program = prewarmedProgram(options.cwd);
    this.executor = new Executor(options.cwd, options.file, options.hooks);
    this.printed = new StreamBuffer((name, text) => this.output({ output_type: 'stream', name, text }));
    this.capture = new OutputCapture((name, text) => this.printed.write(name, text));
    this.returnGlobals = installGlobals({
      emit: (output) => this.emit(output),
      signal: () => this.executor.signal,
      ...options.globals,
    });
    if (options.keepConsole) this.capture.start();
    if (options.progress)
      this.progress = showProgress(
        (output) => this.emit(output),
        () => this.executor.signal,
      );
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
  private runNow(
    code: string,
    onOutput: (output: NbOutput) => void,
    { silent = false, storeHistory: countsUp = !silent }: RunOptions,
  ): Promise<CellOutcome> {
    if (countsUp) this.executionCount++;
    const executionCount = this.executionCount;
    const label = countsUp ? `In[${executionCount}]` : `In[quiet ${++this.silentCount}]`;
    this.printed.flush();
    this.output = silent ? () => undefined : onOutput;
    if (code.trim() === '') return Promise.resolve({ status: 'ok', executionCount });

    return new Promise((resolve) => {
      let over = false;
      const end = (error?: CellError): void => {
        if (over) return;
        over = true;
        this.cancelCurrent = undefined;
        if (error === interruption) this.progress?.stop();
        if (error)
          this.emit({
            output_type: 'error',
            ename: error.ename,
            evalue: error.evalue,
            traceback: error.traceback,
          });
        this.printed.flush();
        if (!this.options.keepConsole) this.capture.stop();
        resolve(error ? { status: 'error', executionCount, error } : { status: 'ok', executionCount });
      };
      this.cancelCurrent = () => end(interruption);
      if (!this.options.keepConsole) this.capture.start();

      let compiled: ReturnType<typeof compileCell>;
      try {
        compiled = this.compile(code);
      } catch (error) {
        // A defect of the compiler is told as the cell's error; the session goes on.
        return end({ ...this.traces.format(error), ename: 'CompilerDefect' });
      }
      if ('problems' in compiled) return end(this.traces.fromDiagnostics(label, code, compiled.problems));
      const { cell } = compiled;
      this.traces.registerSource(label, code, cell.map, cell.shift);
      this.executor.run(cell, label, (how: ExecutionResult, set) => {
        cell.publish(
          (name) => set.has(name) || ('value' in how && cell.declares.some((d) => d.name === name)),
        );
        if ('interrupted' in how) return end(interruption);
        if ('error' in how)
          return end(how.error instanceof Interrupted ? interruption : this.traces.format(how.error));
        if (how.value === undefined || silent) return end();
        this.show(how.value, executionCount, end);
      });
    });
  }

  private compile(code: string): ReturnType<typeof compileCell> {
    this.options.hooks?.duringCompile?.(true);
    try {
      return compileCell(this.program, code);
    } finally {
      this.options.hooks?.duringCompile?.(false);
    }
  }

  private show(value: unknown, executionCount: number, end: (error?: CellError) => void): void {
    const emit = (data: MimeBundle): void => {
      this.emit({ output_type: 'execute_result', execution_count: executionCount, data, metadata: {} });
      end();
    };
    const atOnce = formatValueSync(value);
    if (atOnce) return emit(atOnce);
    formatValue(value).then(emit, (error: unknown) => end(this.traces.format(error)));
  }

  /** Evaluates an expression beside the cells: no count, no output, its bundle or its error as the result. */
  async evaluate(expression: string): Promise<{ data: MimeBundle } | { error: CellError }> {
    const label = `In[expression ${++this.silentCount}]`;
    const compiled = this.compile(`(${expression}\n)`);
    if ('problems' in compiled)
      return { error: this.traces.fromDiagnostics(label, `(${expression}\n)`, compiled.problems) };
    const how = await new Promise<ExecutionResult>((resolve) =>
      this.executor.run(compiled.cell, label, resolve),
    );
    if ('interrupted' in how) return { error: interruption };
    if ('error' in how) return { error: this.traces.format(how.error) };
    try {
      return { data: await formatValue(how.value) };
    } catch (error) {
      return { error: this.traces.format(error) };
    }
  }

  /** An error that no cell caught, such as one thrown by a timer: told on stderr, the session goes on. */
  reportUncaught(error: unknown): void {
    if (error instanceof Interrupted) return;
    this.printed.write('stderr', `${this.traces.format(error).traceback.join('\n')}\n`);
    this.printed.flush();
  }

  /** Hands on what has been printed so far. */
  flush(): void {
    this.printed.flush();
  }

  interrupt(): void {
    this.executor.interrupt();
    this.cancelCurrent?.();
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
