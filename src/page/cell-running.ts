import { CodeCell, type Cell } from '@jupyterlab/cells';
import { NotebookActions, setCellExecutor, type Notebook } from '@jupyterlab/notebook';
import { tell } from './dialog.js';
import type { KernelSession } from './kernel-session.js';

/** Cells are run by this: like the widgets' own, but what goes wrong is said on the page instead of in stock dialogs. */
setCellExecutor({
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
    }
  },
});

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
