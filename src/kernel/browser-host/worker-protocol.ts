/** The messages between a page and the worker that runs its cells. */
import type { CellOutcome } from '../cell-session.js';
import type { CellReport } from '../execution/cell-graph.js';
import type { Completions } from '../compiler/completion.js';
import type { MimeBundle, NbOutput } from '../message.js';
import type { TextFiles } from './browser-program-host.js';

export type ToWorker =
  | { kind: 'start'; compiler: string; files: TextFiles }
  | { kind: 'run'; id: number; code: string; cellId?: string }
  | { kind: 'complete'; id: number; code: string; cursor: number }
  | { kind: 'inspect'; id: number; code: string; cursor: number }
  /** Stops the cell at its next await; a loop without one ends only with the worker. */
  | { kind: 'interrupt' };

export type FromWorker =
  | { kind: 'ready' }
  | { kind: 'output'; id: number; output: NbOutput }
  | { kind: 'ran'; id: number; outcome: CellOutcome; cells: Record<string, CellReport> }
  | { kind: 'completions'; id: number; completions: Completions }
  | { kind: 'inspected'; id: number; data: MimeBundle | undefined };
