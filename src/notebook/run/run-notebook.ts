import { dirname, resolve } from 'node:path';
import { isMainThread } from 'node:worker_threads';
import { kernelMetadata } from '../../kernel/kernel-identity.js';
import { requirePackages, sessionPackages } from '../../kernel/optional-packages.js';
import type { CellOutcome, CellSession } from '../../kernel/session.js';
import { readNotebook } from '../format/notebook-file.js';
import type { CodeCell, Json, JsonObject, Notebook } from '../format/notebook.js';
import { OutputCollector } from './outputs.js';

/** How far a run has come. Cells count from 1, text cells included, as a reader counts them on the page. */
export interface RunProgress {
  readonly file: string;
  readonly cell: number;
  /** Of how many cells; `codeCell` of `codeCells` counts those that run. */
  readonly cells: number;
  readonly codeCell: number;
  readonly codeCells: number;
  readonly state: 'running' | 'done' | 'failed';
  /** First line of the cell. */
  readonly line: string;
  /** Seconds the cell took; 0 while it runs. */
  readonly seconds: number;
}

export interface RunOptions {
  readonly onProgress?: (progress: RunProgress) => void;
  readonly signal?: AbortSignal;
  /** Folder from which cells read files and find packages; default the notebook's own. */
  readonly cwd?: string;
  /** What messages call the notebook when it is not given as a file. */
  readonly name?: string;
  /** A session to run in, kept open afterwards; default a fresh one. */
  readonly session?: CellSession;
}

/** A cell that failed, or a run that was interrupted. `notebook` holds every output up to there. */
export class RunError extends Error {
  override readonly name = 'RunError';
  constructor(
    message: string,
    readonly notebook: Notebook,
    /** Counted from 1, text cells included. */
    readonly cell: number,
    /** Line in the cell, from 1, where it is known. */
    readonly line: number | undefined,
    readonly interrupted: boolean,
  ) {
    super(message);
  }
}

/**
 * Runs every code cell from top to bottom in a fresh session and gives back the notebook with its outputs; the file is not
 * written. A cell tagged `raises-exception` may fail, as is the custom in notebooks. Throws {@link RunError} at the first
 * other cell that fails, naming cell and line, and {@link NotebookError} for a broken file.
 */
export async function runNotebook(source: string | Notebook, options: RunOptions = {}): Promise<Notebook> {
  const file = typeof source === 'string' ? source : (options.name ?? 'notebook');
  const notebook = typeof source === 'string' ? await readNotebook(source) : source;
  refuseOtherLanguages(notebook, file);
  const cwd = resolve(options.cwd ?? (typeof source === 'string' ? dirname(source) : '.'));
  options.signal?.throwIfAborted();
  const session = options.session ?? (await openSession(cwd, file));
  const stop = (): void => session.interrupt();
  // Cells run in this process and read files as they would in Jupyter: from the notebook's own folder.
  // A worker thread has no folder of its own to change; there, cells name their files from the process's.
  const before = process.cwd();
  if (isMainThread) process.chdir(cwd);
  options.signal?.addEventListener('abort', stop);
  try {
    return await runCells(notebook, file, session, options);
  } finally {
    if (isMainThread) process.chdir(before);
    options.signal?.removeEventListener('abort', stop);
    if (options.session === undefined) await session.dispose();
  }
}

async function runCells(
  notebook: Notebook,
  file: string,
  session: CellSession,
  options: RunOptions,
): Promise<Notebook> {
  const cells: Notebook['cells'][number][] = notebook.cells.map((cell) =>
    cell.cell_type === 'code' ? { ...cell, outputs: [], execution_count: null } : cell,
  );
  const state = (): Notebook => ({ ...notebook, cells: [...cells] });
  const jobs = cells.flatMap((cell, at) =>
    cell.cell_type === 'code' && cell.source.trim() !== '' ? [{ cell, at }] : [],
  );
  const collector = new OutputCollector(
    (at, outputs) => (cells[at] = { ...(cells[at] as CodeCell), outputs }),
  );
  const stopWhereAborted = (at: number): void => {
    if (options.signal?.aborted) throw interruptedAt(file, state(), at);
  };
  for (const [n, { cell, at }] of jobs.entries()) {
    const counts = { file, cell: at + 1, cells: cells.length, codeCell: n + 1, codeCells: jobs.length };
    const report = (step: RunProgress['state'], seconds: number): void =>
      options.onProgress?.({ ...counts, state: step, line: firstLine(cell.source), seconds });
    stopWhereAborted(at);
    report('running', 0);
    const began = performance.now();
    const outcome = await session.run(cell.source, (output) => collector.take(at, output));
    const seconds = (performance.now() - began) / 1000;
    collector.endCell(at);
    cells[at] = { ...(cells[at] as CodeCell), execution_count: outcome.executionCount };
    if (outcome.status !== 'ok') collector.ensureError(at, outcome.error);
    stopWhereAborted(at);
    report(outcome.status === 'ok' ? 'done' : 'failed', seconds);
    if (outcome.status !== 'ok' && !mayFail(cell)) throw failedAt(file, state(), at, outcome);
  }
  return { ...state(), metadata: withKernel(notebook.metadata) };
}

async function openSession(cwd: string, file: string): Promise<CellSession> {
  // The compiler is loaded only when a notebook is run.
  requirePackages('running a notebook', sessionPackages);
  const { createSession } = await import('../../kernel/session.js');
  return createSession({ cwd, file: resolve(file) });
}

function failedAt(file: string, notebook: Notebook, at: number, outcome: CellOutcome): RunError {
  const e = outcome.error;
  const line = e?.line;
  const where = `${file}, cell ${at + 1}${line === undefined ? '' : `, line ${line}`}`;
  const what =
    e === undefined
      ? 'stopped'
      : e.ename === 'Error' || e.ename === ''
        ? e.evalue
        : `${e.ename}: ${e.evalue}`;
  return new RunError(`${where}: ${what}`, notebook, at + 1, line, false);
}

function interruptedAt(file: string, notebook: Notebook, at: number): RunError {
  return new RunError(
    `${file}, cell ${at + 1}: interrupted; the cells before it are done`,
    notebook,
    at + 1,
    undefined,
    true,
  );
}

function mayFail(cell: CodeCell): boolean {
  const tags: Json | undefined = cell.metadata['tags'];
  return Array.isArray(tags) && tags.includes('raises-exception');
}

function firstLine(source: string): string {
  const line =
    source.split('\n').find((l) => l.trim() !== '' && !l.trim().startsWith('import ')) ??
    source.split('\n')[0] ??
    '';
  return line.trim().slice(0, 80);
}

const runnableLanguages = new Set(['typescript', 'javascript', 'ts', 'js']);

function refuseOtherLanguages(notebook: Notebook, file: string): void {
  const info = notebook.metadata['language_info'] as JsonObject | undefined;
  const spec = notebook.metadata['kernelspec'] as JsonObject | undefined;
  const language = info?.['name'] ?? spec?.['language'];
  if (typeof language === 'string' && !runnableLanguages.has(language.toLowerCase()))
    throw new RunError(
      `${file}: is written in ${language.slice(0, 40)}; takes a notebook in TypeScript or JavaScript`,
      notebook,
      1,
      undefined,
      false,
    );
}

/** The kernel a notebook says it was run with; what is set already stays. */
function withKernel(metadata: JsonObject): JsonObject {
  return {
    ...metadata,
    kernelspec: metadata['kernelspec'] ?? kernelMetadata.kernelspec,
    language_info: metadata['language_info'] ?? kernelMetadata.language_info,
  };
}
