import type { NbOutput } from './message.ts';

export type { MimeBundle, NbOutput } from './message.ts';

/** How a cell ended. `line` and `column` count from 1 in the cell's own text. */
export interface CellOutcome {
  status: 'ok' | 'error' | 'aborted';
  executionCount: number;
  error?: { ename: string; evalue: string; traceback: string[]; line?: number; column?: number };
}

/** Cells of one notebook, run one after the other in this process; each sees the names of those before it. */
export interface CellSession {
  run(code: string, onOutput: (output: NbOutput) => void): Promise<CellOutcome>;
  interrupt(): void;
  dispose(): Promise<void>;
}

/** Opens a session whose cells resolve files and packages from `cwd`; `file` names the notebook in messages. */
export function createSession(options: { cwd: string; file?: string }): Promise<CellSession> {
  return Promise.reject(new Error(`no session for ${options.file ?? options.cwd}: the compiler is not built yet`));
}
