/**
 * A session: the cells of one notebook, run one after the other. It knows nothing of the platform: what it needs of that is
 * in its host, so that the same session runs in Node and in a browser's worker.
 */
import type { CompiledCell } from './compiler/compile-cell.js';
import type { IncrementalProgram } from './compiler/incremental-program.js';
import type { SessionView } from './compiler/session-view.js';
import type { CellOutcome, CellSession, RunOptions, SessionOptions } from './cell-session.js';
import { keepFinishedSearches } from '../engine/finished-searches.js';
import { CellOutput } from './display/cell-output.js';
import { formatted, formatValue, type Formatted } from './display/mime-bundle.js';
import { StreamBuffer } from './display/stream-buffer.js';
import { showProgress, type ProgressLines } from './display/progress-lines.js';
import { interruption, TracebackFormatter, type CellError } from './display/traceback.js';
import { Interrupted, type ExecutionResult } from './execution/cell-execution.js';
import { CellGraph, type CellNames } from './execution/cell-graph.js';
import { Executor } from './execution/executor.js';
import { installGlobals } from './globals.js';
import { addLanguageFeatures } from './language-additions.js';
import { CellPreparation, type EndCell } from './prepare-cell.js';
import type { MimeBundle, NbOutput } from './message.js';
import type { ConsoleCapture, SessionHost, SessionPrograms } from './session-host.js';

/** What a run has set, and what it uses of other cells: a name that it assigns to is one of theirs too. */
const namesOf = (cell: CompiledCell, set: ReadonlySet<string>): CellNames => ({
  sets: [...set, ...cell.writes],
  uses: [...new Set([...cell.reads, ...cell.writes])],
});

/** Searches whose answers are kept for cells that run again with the same inputs. */
const keptSearches = 24;

export class CoreSession implements CellSession, SessionView {
  readonly executor: Executor;
  readonly graph = new CellGraph();
  executionCount = 0;
  private readonly tracebacks: TracebackFormatter;
  private readonly programs: SessionPrograms;
  private readonly preparation: CellPreparation;
  private readonly printed: StreamBuffer;
  private readonly capture: ConsoleCapture;
  private readonly removeGlobals: () => void;
  private readonly forgetSearches = keepFinishedSearches(keptSearches);
  private readonly progress: ProgressLines | undefined;
  private output = new CellOutput(() => undefined);
  private queue: Promise<unknown> = Promise.resolve();
  private silentCount = 0;
  private lastValue: unknown;
  private cancelCurrent: (() => void) | undefined;

  constructor(
    host: SessionHost,
    private readonly options: SessionOptions,
  ) {
    addLanguageFeatures();
    this.programs = host.openPrograms();
    const execution = host.openExecution((output) => this.emit(output));
    this.executor = new Executor(execution, options.hooks);
    this.tracebacks = new TracebackFormatter(execution.stack);
    this.preparation = new CellPreparation(this, this.tracebacks, {
      loadPackage: () => this.executor.warm(),
      duringCompile: (yes) => options.hooks?.duringCompile?.(yes),
    });
    this.printed = new StreamBuffer((name, text) => this.output.push({ output_type: 'stream', name, text }));
    this.capture = host.captureConsole((name, text) => this.printed.write(name, text));
    this.removeGlobals = installGlobals({
      emit: (output) => this.emit(output),
      emitPending: (pending) => {
        this.printed.flush();
        this.output.pushPending(pending);
      },
      signal: () => this.executor.signal,
      lastValue: { get: () => this.lastValue, set: (value) => (this.lastValue = value) },
      ...options.globals,
    });
    if (options.keepConsole) this.capture.start();
    if (options.progress)
      this.progress = showProgress(
        (output) => this.emit(output),
        () => this.executor.signal,
      );
  }

  get program(): IncrementalProgram {
    return this.programs.checking;
  }

  language(): IncrementalProgram {
    return this.programs.language();
  }

  lookup(name: string): unknown {
    const own = this.executor.bindings.lookup(name);
    return own ? own.value : this.executor.loadedPackage?.[name];
  }

  run(code: string, onOutput: (output: NbOutput) => void, options: RunOptions = {}): Promise<CellOutcome> {
    const turn = this.queue.then(() => this.runNow(code, onOutput, options));
    this.queue = turn.catch(() => undefined);
    return turn;
  }

  /** Adds an output of the cell, printed text first. */
  private emit(output: NbOutput): void {
    this.printed.flush();
    this.output.push(output);
  }

  /**
   * The outcome depends on callbacks, not on code after the call into the cell: V8 may terminate a looping cell together
   * with everything below it on the stack, and only the interrupt that follows reports it to this session.
   */
  private runNow(
    code: string,
    onOutput: (output: NbOutput) => void,
    { silent = false, storeHistory = !silent, cellId }: RunOptions,
  ): Promise<CellOutcome> {
    if (storeHistory) this.executionCount++;
    const executionCount = this.executionCount;
    const label = storeHistory ? `In[${executionCount}]` : `In[quiet-${++this.silentCount}]`;
    this.printed.flush();
    this.output = new CellOutput(silent ? () => undefined : onOutput);
    if (code.trim() === '') return Promise.resolve({ status: 'ok', executionCount });
    return new Promise((resolve) => {
      const end = this.endOfCell(executionCount, resolve);
      if (!this.options.keepConsole) this.capture.start();
      const cell = this.preparation.prepare(code, label, end);
      if (!cell) return;
      this.execute(code, cell, label, cellId, end, (value) => {
        if (value === undefined || silent) end();
        else this.show(value, executionCount, end);
      });
    });
  }

  /** The function that ends a cell, once its outputs have been sent; an interrupted one at once. */
  private endOfCell(executionCount: number, resolve: (outcome: CellOutcome) => void): EndCell {
    const { output } = this;
    let isOver = false;
    const finish = (error: CellError | undefined): void => {
      if (isOver) return;
      isOver = true;
      this.cancelCurrent = undefined;
      this.printed.flush();
      if (error) {
        const { ename, evalue, traceback } = error;
        output.push({ output_type: 'error', ename, evalue, traceback });
      }
      if (!this.options.keepConsole) this.capture.stop();
      resolve(error ? { status: 'error', executionCount, error } : { status: 'ok', executionCount });
    };
    const cancel = (): void => {
      if (!isOver) this.progress?.stop();
      output.abandonPending();
      finish(interruption);
    };
    this.cancelCurrent = cancel;
    return (error) => {
      if (isOver) return;
      this.printed.flush();
      if (error === interruption) cancel();
      else output.whenSent(() => finish(error));
    };
  }

  private execute(
    code: string,
    cell: CompiledCell,
    label: string,
    cellId: string | undefined,
    end: EndCell,
    then: (value: unknown) => void,
  ): void {
    this.executor.run(cell, label, (result: ExecutionResult, set) => {
      const ran = 'value' in result;
      const isSet = (name: string): boolean =>
        set.has(name) || (ran && cell.declares.some((d) => d.name === name));
      cell.publish(isSet);
      this.programs.record(code, isSet);
      this.graph.record(cellId, namesOf(cell, set));
      if (ran) then(result.value);
      else end('interrupted' in result ? interruption : this.describe(result.error));
    });
  }

  private describe(error: unknown): CellError {
    return error instanceof Interrupted ? interruption : this.tracebacks.format(error);
  }

  private show(value: unknown, executionCount: number, end: EndCell): void {
    const show = (data: Formatted): void => {
      if (data) {
        this.lastValue = value;
        this.emit({ output_type: 'execute_result', execution_count: executionCount, data, metadata: {} });
      }
      end();
    };
    formatted(value, show, (error) => end(this.describe(error)));
  }

  /** Evaluates an expression beside the cells: no count, no output, its bundle or its error as the result. */
  async evaluate(expression: string): Promise<{ data: MimeBundle } | { error: CellError }> {
    const label = `In[expression-${++this.silentCount}]`;
    const code = `(${expression}\n)`;
    const compiled = this.preparation.compile(code);
    if ('problems' in compiled)
      return { error: this.tracebacks.fromDiagnostics(label, code, compiled.problems) };
    const result = await new Promise<ExecutionResult>((resolve) => {
      this.executor.run(compiled.cell, label, resolve);
    });
    if ('interrupted' in result) return { error: interruption };
    if ('error' in result) return { error: this.describe(result.error) };
    try {
      return { data: (await formatValue(result.value)) ?? {} };
    } catch (error) {
      return { error: this.describe(error) };
    }
  }

  /** An error that no cell caught, such as one thrown by a timer: printed on stderr, the session goes on. */
  reportUncaught(error: unknown): void {
    if (error instanceof Interrupted) return;
    this.printed.write('stderr', `${this.tracebacks.format(error).traceback.join('\n')}\n`);
    this.printed.flush();
  }

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
    this.removeGlobals();
    this.forgetSearches();
    this.programs.close();
    this.executor.close();
  }
}
