import { CodeCell } from '@jupyterlab/cells';
import type { KernelSession } from '../../kernel-session.js';

/** Quiet time after the last change of a form until its cell is run. */
const pause = 900;

/** Runs the cells that forms have written, so that the values in the kernel and the results in the file follow the forms. */
export class CellRunner {
  readonly #timers = new Map<CodeCell, ReturnType<typeof setTimeout>>();
  #running: Promise<void> = Promise.resolve();

  constructor(private readonly kernel: KernelSession) {}

  /** Runs the cell once typing rests, and after it those that rest on it. */
  soon(cell: CodeCell, dependents: () => readonly CodeCell[]): void {
    clearTimeout(this.#timers.get(cell));
    this.#timers.set(
      cell,
      setTimeout(() => {
        this.#timers.delete(cell);
        this.#running = this.#running.then(() => this.#run([cell, ...dependents()]));
      }, pause),
    );
  }

  async #run(cells: readonly CodeCell[]): Promise<void> {
    const { context } = this.kernel;
    for (const cell of cells) {
      if (cell.isDisposed || !context.session?.kernel) return;
      // What goes wrong stands in the cell's own output.
      await CodeCell.execute(cell, context, { recordTiming: false }).catch(() => undefined);
    }
  }
}
