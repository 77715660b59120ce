import { CodeCell } from '@jupyterlab/cells';
import type { KernelSession } from '../../kernel-session.js';

/** Quiet time after the last change of a form until its cell is run. */
const pause = 900;

/** Cells to be run with one, in order. */
export interface CellPlan {
  readonly before: readonly CodeCell[];
  readonly after: readonly CodeCell[];
}

/** Runs the cells that forms have written, so that the values in the kernel and the results in the file follow the forms. */
export class CellRunner {
  readonly #timers = new Map<CodeCell, ReturnType<typeof setTimeout>>();
  /** The text of a cell as it was last run from here. */
  readonly #ran = new WeakMap<CodeCell, string>();
  #running: Promise<void> = Promise.resolve();

  constructor(private readonly kernel: KernelSession) {}

  /** Runs cells once typing rests: what the cell rests on and was not run as it stands, the cell, and those that rest on it. */
  soon(cell: CodeCell, plan: () => CellPlan): void {
    clearTimeout(this.#timers.get(cell));
    this.#timers.set(
      cell,
      setTimeout(() => {
        this.#timers.delete(cell);
        const { before, after } = plan();
        const stale = before.filter((other) => this.#ran.get(other) !== other.model.sharedModel.getSource());
        this.#running = this.#running.then(() => this.#run([...stale, cell, ...after]));
      }, pause),
    );
  }

  async #run(cells: readonly CodeCell[]): Promise<void> {
    const { context } = this.kernel;
    for (const cell of cells) {
      if (cell.isDisposed || !context.session?.kernel) return;
      this.#ran.set(cell, cell.model.sharedModel.getSource());
      // What goes wrong stands in the cell's own output.
      await CodeCell.execute(cell, context, { recordTiming: false }).catch(() => undefined);
    }
  }
}
