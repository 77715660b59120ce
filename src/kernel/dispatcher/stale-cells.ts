/**
 * Tells clients which cells are stale. Any client finds it in the metadata of each execute_reply, under `reckoner`; a page
 * that opens a comm with the target `reckoner.cells` is sent the whole report at once and after every cell.
 *
 * Kernel to page: `{ cells: { [id]: { sets, uses, usedBy, stale } } }`.
 * Page to kernel: `{ remove: id }` when a cell was deleted.
 */
import type { CellGraph } from '../execution/cell-graph.js';
import type { Comm, Comms } from './comms.js';

export const staleCellsTarget = 'reckoner.cells';

export class StaleCells {
  private readonly pages = new Set<Comm>();

  constructor(
    private readonly graph: CellGraph,
    comms: Comms,
  ) {
    comms.cellInterface.register(staleCellsTarget, (comm) => this.join(comm));
  }

  private join(comm: Comm): void {
    this.pages.add(comm);
    comm.onClose = () => this.pages.delete(comm);
    comm.onMessage = (data) => {
      const { remove } = (data ?? {}) as { remove?: unknown };
      if (typeof remove !== 'string') return;
      this.graph.remove(remove);
      this.publish();
    };
    comm.send({ cells: this.graph.report() });
  }

  /** Sends every page the report. */
  publish(): void {
    for (const page of this.pages) page.send({ cells: this.graph.report() });
  }

  /** For the metadata of the reply to a cell's request. */
  replyMetadata(cellId: string | undefined): object {
    if (cellId === undefined) return {};
    const { sets = [], uses = [] } = this.graph.report()[cellId] ?? {};
    return { reckoner: { sets, uses, stale: this.graph.stale() } };
  }
}
