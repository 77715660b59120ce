import { CodeCell, type Cell } from '@jupyterlab/cells';
import {
  NotebookActions,
  setCellExecutor,
  type INotebookCellExecutor,
  type Notebook,
} from '@jupyterlab/notebook';
import { Signal, type ISignal } from '@lumino/signaling';
import { tell } from './dialog.js';
import type { KernelSession } from './kernel-session.js';

const owner = {};
const scheduled = new Signal<object, CodeCell>(owner);
const ended = new Signal<object, CodeCell>(owner);
/** Tells of every code cell that is handed to the kernel, whoever asked for it, and of its end. */
export const cellRuns: {
  readonly scheduled: ISignal<object, CodeCell>;
  readonly ended: ISignal<object, CodeCell>;
} = { scheduled, ended };

/** Cells are run by this: like the widgets' own, but what goes wrong is said on the page instead of in stock dialogs. */
const executor: INotebookCellExecutor = {
  async runCell({ cell, notebook, onCellExecuted, onCellExecutionScheduled, sessionContext }) {
    if (cell.model.type === 'markdown') {
      (cell as unknown as { rendered: boolean }).rendered = true;
      onCellExecuted({ cell, success: true });
      return true;
    }
    if (!(cell instanceof CodeCell) || sessionContext === undefined) return true;
    if (sessionContext.hasNoKernel || sessionContext.session?.kernel?.isDisposed) {
      tell('There is no kernel to run this. Restart it with the round arrow.');
      return false;
    }
    if (sessionContext.pendingInput) {
      tell('A cell waits for an answer in its input line; give that first.');
      return false;
    }
    onCellExecutionScheduled({ cell });
    scheduled.emit(cell);
    const deleted = notebook.deletedCells;
    try {
      const reply = await CodeCell.execute(cell, sessionContext, {
        deletedCells: deleted,
        recordTiming: false,
      });
      deleted.splice(0, deleted.length);
      const success =
        !cell.isDisposed &&
        reply?.content.status !== 'error' &&
        (reply?.content.status as string) !== 'abort';
      onCellExecuted({ cell, success });
      return success;
    } catch {
      // The kernel went away while the cell ran; that is said where the kernel is watched.
      if (!cell.isDisposed) onCellExecuted({ cell, success: false });
      return false;
    } finally {
      ended.emit(cell);
    }
  },
};
setCellExecutor(executor);

export interface Running {
  readonly run: () => void;
  readonly runAndStep: () => void;
  readonly runAndInsert: () => void;
  readonly runAll: () => Promise<unknown>;
  readonly runFromHere: () => void;
}

/** Runs cells; the active cell stays the active one, and the view where it is. False when one of them failed. */
export function runInPlace(
  notebook: Notebook,
  cells: readonly Cell[],
  kernel: KernelSession,
): Promise<boolean> {
  const view = notebook.outerNode;
  const top = view.scrollTop;
  const running = NotebookActions.runCells(notebook, cells, kernel.context);
  // The widgets scroll to the active cell within the next frames.
  for (const wait of [0, 50, 150])
    setTimeout(() => {
      if (Math.abs(view.scrollTop - top) > 1) view.scrollTop = top;
    }, wait);
  return running;
}

/**
 * Runs code cells while the user goes on: the focus, the keys' mode and the active cell stay as they are, so that what is being typed
 * goes where it was going. False when one of them failed.
 */
export async function runMeanwhile(
  notebook: Notebook,
  cells: readonly CodeCell[],
  kernel: KernelSession,
): Promise<boolean> {
  const { model } = notebook;
  if (model === null) return false;
  const results = await Promise.all(
    cells.map((cell) =>
      executor.runCell({
        cell,
        notebook: model,
        notebookConfig: notebook.notebookConfig,
        sessionContext: kernel.context,
        onCellExecuted: () => {},
        onCellExecutionScheduled: () => {},
      }),
    ),
  );
  if (!notebook.isDisposed) notebook.update();
  return results.every(Boolean);
}

/** `ranAll` is called when every cell has run without an error. */
export function runningOf(notebook: Notebook, kernel: KernelSession, ranAll: () => void): Running {
  const { context } = kernel;
  return {
    run: () => void NotebookActions.run(notebook, context),
    runAndStep: () => void NotebookActions.runAndAdvance(notebook, context),
    runAndInsert: () => void NotebookActions.runAndInsert(notebook, context),
    runAll: async () => {
      if (await runInPlace(notebook, notebook.widgets, kernel)) ranAll();
    },
    runFromHere: () => void NotebookActions.runAllBelow(notebook, context),
  };
}
