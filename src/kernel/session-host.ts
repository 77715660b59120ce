/** What a session needs of the platform it runs on: Node's process, or a worker in a browser. */
import type { CompiledCell } from './compiler/compile-cell.js';
import type { IncrementalProgram } from './compiler/incremental-program.js';
import type { StreamName } from './display/stream-buffer.js';
import type { NbOutput } from './message.js';

/** The programs of a session: the one that checks its cells, and the one that completes and inspects names by their types. */
export interface SessionPrograms {
  readonly checking: IncrementalProgram;
  /** Knows the types of all names that the cells so far have published. */
  language(): IncrementalProgram;
  /** Records a cell that ran, and which of its names are set. */
  record(code: string, isSet: (name: string) => boolean): void;
  close(): void;
}

export type ModuleExports = Record<string, unknown>;

/** Loads the modules that cells import. */
export interface CellLoader {
  /** What a cell's `require` is. */
  readonly require: unknown;
  /** The package's exports, which every cell has without an import. */
  package(): Promise<ModuleExports>;
  /** @throws an error whose message says how to get a module that is not there */
  load(specifier: string): Promise<ModuleExports>;
}

/**
 * Tasks done one after the other, each from an event of its own. `ref` keeps the process alive while a cell runs.
 */
export interface TaskQueue {
  post(work: () => void): void;
  ref(): void;
  unref(): void;
  close(): void;
}

/** A compiled cell: `kernel` and `require` are what the code reaches of the kernel, `bindings` its names. */
export type CellBody = (kernel: object, require: unknown, bindings: Record<string, unknown>) => unknown;

/** How the platform reports where an error arose. */
export interface StackForm {
  /** Lines by which a place in compiled code is ahead of the cell's code. */
  lineOffset: number;
  /** Whether a line of a stack is the kernel's own rather than a cell's or a library's. */
  isKernelFrame: (line: string) => boolean;
}

/** How cells run. */
export interface ExecutionHost {
  readonly loader: CellLoader;
  readonly tasks: TaskQueue;
  /** `import.meta` of a cell. */
  readonly meta: { url: string; dirname: string; filename: string };
  readonly stack: StackForm;
  /** The code as a function; errors in it name `label` and a line. */
  compileBody(cell: CompiledCell, label: string): CellBody;
}

/** A console that writes into the session's output between `start` and `stop`. */
export interface ConsoleCapture {
  start(): void;
  stop(): void;
}

export interface SessionHost {
  openPrograms(): SessionPrograms;
  /** `emit` takes the outputs of libraries that display by themselves. */
  openExecution(emit: (output: NbOutput) => void): ExecutionHost;
  captureConsole(write: (name: StreamName, text: string) => void): ConsoleCapture;
}
