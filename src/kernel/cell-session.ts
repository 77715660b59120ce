/** What a session of cells is to those that run one: the kernel, the notebook runner. */
import type { ExecutorHooks } from './execution/executor.js';
import type { CellGlobals } from './globals.js';
import type { NbOutput } from './message.js';

/** How a cell ended. `line` and `column` count from 1 in the cell's own text. */
export interface CellOutcome {
  status: 'ok' | 'error' | 'aborted';
  executionCount: number;
  error?: { ename: string; evalue: string; traceback: string[]; line?: number; column?: number };
}

/** Cells of one notebook, run one after the other in this process; each sees the names of those before it. */
export interface CellSession {
  /**
   * Runs a cell once those before it are done. Never rejects: errors are in the outcome and in the outputs. All outputs
   * of the cell have been passed to `onOutput`, in order, when it resolves.
   */
  run(code: string, onOutput: (output: NbOutput) => void): Promise<CellOutcome>;
  /** Stops the running cell at its next await; a loop without one can only be stopped from another thread. */
  interrupt(): void;
  dispose(): Promise<void>;
}

export interface SessionOptions {
  hooks?: ExecutorHooks & { duringCompile?(yes: boolean): void };
  /** What cells reach that needs a client at the other end. */
  globals?: Partial<CellGlobals>;
  /** Keep the console for the session's whole life, as a kernel does, rather than while a cell runs. */
  keepConsole?: boolean;
  /** Show the progress of long work, as a kernel does; a notebook run from start to end keeps no such lines. */
  progress?: boolean;
}

export interface RunOptions {
  /** No count, no outputs, no result. */
  silent?: boolean;
  storeHistory?: boolean;
  /** The cell's id in its notebook, by which stale cells are found. */
  cellId?: string | undefined;
}
