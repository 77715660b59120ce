/**
 * Tells clients which cells are stale. Any client finds it in the metadata of each execute_reply, under `reckoner`; a page
 * that opens a comm with the target `reckoner.cells` is sent the whole report at once and after every cell.
 *
 * Kernel to page: `{ cells: { [id]: { sets, uses, usedBy, stale, usesDeleted } } }`, and after a deletion
 * `{ deleted: { id, names, usedBy, text } }` with the names that other cells use; `text` says so in a sentence, or is empty.
 * Page to kernel: `{ remove: id }` when a cell was deleted. Other clients name deleted cells in a request's metadata.
 */
import type { CellGraph, DeletedCell } from '../execution/cell-graph.js';
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
      const deleted = this.graph.remove(remove);
      for (const page of this.pages) page.send({ deleted: { ...deleted, text: sentence([deleted]) } });
      this.publish();
    };
    comm.send({ cells: this.graph.report() });
  }

  /** Removes cells that a client names as deleted; returns what there is to say of it, or an empty text. */
  removeDeleted(ids: readonly string[]): string {
    return sentence(ids.map((id) => this.graph.remove(id)));
  }

  /** Sends every page the report. */
  publish(): void {
    for (const page of this.pages) page.send({ cells: this.graph.report() });
  }

  /** For the metadata of the reply to a cell's request. */
  replyMetadata(cellId: string | undefined): object {
    if (cellId === undefined) return {};
    const { sets = [], uses = [], usesDeleted = [] } = this.graph.report()[cellId] ?? {};
    return { reckoner: { sets, uses, stale: this.graph.stale(), usesDeleted } };
  }
}

/** Which names of deleted cells are still used. */
function sentence(deleted: readonly DeletedCell[]): string {
  const names = [...new Set(deleted.flatMap((cell) => cell.names))];
  if (names.length === 0) return '';
  const count = new Set(deleted.flatMap((cell) => cell.usedBy)).size;
  const users = count === 1 ? 'another cell uses' : `${count} other cells use`;
  const [them, keep] = names.length === 1 ? ['it', 'keeps its value'] : ['them', 'keep their values'];
  return `The cell that set ${names.join(', ')} was deleted, and ${users} ${them}: ${names.join(', ')} ${keep} only until the kernel restarts.`;
}
