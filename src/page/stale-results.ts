import { CodeCell } from '@jupyterlab/cells';
import type { Notebook } from '@jupyterlab/notebook';
import type { Kernel, KernelMessage } from '@jupyterlab/services';
import { cellRuns, runMeanwhile } from './cell-running.js';
import { tell } from './dialog.js';
import { el } from './element.js';
import type { KernelSession } from './kernel-session.js';

/** What the kernel knows of a cell that has run: the names it sets and uses, and whether one of those was set again since. */
interface CellReport {
  readonly sets: readonly string[];
  readonly usedBy: readonly string[];
  readonly stale: boolean;
}
type Report = Readonly<Record<string, CellReport>>;

/** Target of the kernel's reports. */
const target = 'reckoner.cells';
const switchKey = 'reckoner-run-stale';
/** The page settles for this long before stale cells run by themselves. */
const quietMs = 120;

/**
 * Marks cells whose results were made from values that have changed since, as soon as the kernel reports them. One button runs them in
 * the notebook's order; a switch does so after every change.
 */
export class StaleResults {
  readonly node: HTMLElement;
  readonly #count = el('span', {});
  readonly #always = el('input', { type: 'checkbox' });
  #report: Report = {};
  #comm: Kernel.IComm | undefined;
  #ids = new Set<string>();
  #pending = 0;
  /** Cells that have run by themselves since the user last ran one: two cells that set each other's names do not run for ever. */
  readonly #ranAlone = new Set<string>();
  /** Cells of the run that goes on by itself. */
  readonly #alone = new Set<string>();
  #runningAlone = false;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(
    private readonly notebook: Notebook,
    private readonly kernel: KernelSession,
  ) {
    this.#always.checked = localStorage.getItem(switchKey) === 'yes';
    this.#always.addEventListener('change', () => {
      localStorage.setItem(switchKey, this.#always.checked ? 'yes' : 'no');
      this.#ranAlone.clear();
      this.#later();
    });
    this.node = el(
      'div',
      { class: 'stale-line', role: 'status', hidden: true },
      this.#count,
      el('button', { type: 'button', class: 'button small', onclick: () => void this.runAll() }, 'Run them'),
      el('label', {}, this.#always, 'Always run them'),
    );
    this.#follow();
  }

  /** Runs every stale cell in the notebook's order, until none is stale or each has run once. */
  async runAll(): Promise<void> {
    const done = this.#alone;
    done.clear();
    this.#runningAlone = true;
    try {
      for (;;) {
        const cells = this.#staleCells().filter((cell) => !done.has(cell.model.id));
        if (cells.length === 0) return;
        for (const cell of cells) done.add(cell.model.id);
        if (!(await runMeanwhile(this.notebook, cells, this.kernel))) return;
        await this.#reported();
      }
    } finally {
      this.#runningAlone = false;
      for (const id of done) this.#ranAlone.add(id);
    }
  }

  #follow(): void {
    const { context } = this.kernel;
    context.kernelChanged.connect(() => this.#join());
    this.kernel.onWord(() => {
      if (this.kernel.word === 'ready' && this.#comm?.isDisposed !== false) this.#join();
      if (this.kernel.word === 'restarting' || this.kernel.word === 'stopped') this.#leave();
    });
    cellRuns.scheduled.connect((_, cell) => {
      this.#pending += 1;
      if (this.#runningAlone && this.#alone.has(cell.model.id)) return;
      // The user's own: what has run by itself may do so again, also where that run is not over yet.
      this.#ranAlone.clear();
      this.#alone.clear();
    });
    cellRuns.ended.connect(() => {
      this.#pending = Math.max(0, this.#pending - 1);
      this.#later();
    });
    this.#ids = this.#currentIds();
    this.notebook.model?.cells.changed.connect(
      () => void Promise.resolve().then(() => this.#lookForRemoved()),
    );
    this.notebook.modelContentChanged.connect(() => this.#mark());
    this.#join();
  }

  #join(): void {
    const kernel = this.kernel.context.session?.kernel;
    this.#leave();
    if (!kernel || kernel.isDisposed || kernel.status === 'dead' || !kernel.handleComms) return;
    const comm = kernel.createComm(target);
    comm.onMsg = (message: KernelMessage.ICommMsgMsg): void => {
      const { cells } = message.content.data as { cells?: Report };
      if (this.#comm === comm && cells !== undefined) this.#take(cells);
    };
    comm.onClose = (): void => {
      if (this.#comm === comm) this.#leave();
    };
    this.#comm = comm;
    comm.open();
  }

  /** The kernel that reported is gone, and what it knew of the cells with it. */
  #leave(): void {
    this.#comm = undefined;
    this.#take({});
  }

  #take(report: Report): void {
    this.#report = report;
    this.#mark();
    this.#show();
    this.#later();
  }

  #staleCells(): CodeCell[] {
    return this.notebook.widgets.filter(
      (cell): cell is CodeCell => cell instanceof CodeCell && this.#report[cell.model.id]?.stale === true,
    );
  }

  #mark(): void {
    const stale = new Set<unknown>(this.#staleCells());
    for (const cell of this.notebook.widgets) {
      const isStale = stale.has(cell);
      cell.node.classList.toggle('stale', isStale);
      if (isStale) cell.node.setAttribute('aria-description', 'Made from values that have changed since.');
      else cell.node.removeAttribute('aria-description');
    }
  }

  #show(): void {
    const { length } = this.#staleCells();
    this.node.hidden = length === 0;
    this.#count.textContent =
      length === 1
        ? '1 result was made from values that have changed since. '
        : `${length} results were made from values that have changed since. `;
  }

  /** With the switch on, stale cells run once nothing else does. */
  #later(): void {
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      if (!this.#always.checked || this.#pending > 0 || this.#runningAlone) return;
      if (this.#staleCells().some((cell) => !this.#ranAlone.has(cell.model.id))) void this.runAll();
    }, quietMs);
  }

  /** The kernel's report on what has just run comes on another channel than its reply. */
  #reported(): Promise<void> {
    return new Promise((resolve) => setTimeout(resolve, quietMs));
  }

  #currentIds(): Set<string> {
    return new Set([...(this.notebook.model?.cells ?? [])].map((cell) => cell.id));
  }

  /** Asked a moment after the change: a cell that is moved is taken out and put in again. */
  #lookForRemoved(): void {
    const ids = this.#currentIds();
    for (const id of this.#ids) {
      if (ids.has(id)) continue;
      const { usedBy = [], sets = [] } = this.#report[id] ?? {};
      const users = usedBy.filter((user) => ids.has(user)).length;
      if (users > 0)
        tell(
          `The deleted cell sets ${sets.join(', ')}, which ${users === 1 ? 'another cell uses' : `${users} other cells use`}. Ctrl + Z brings it back.`,
          12,
        );
      this.#comm?.send({ remove: id });
    }
    this.#ids = ids;
  }
}
