/**
 * Which cells use which names, and which cells have become stale: a name they use was set again since they ran, or they
 * use a name of a stale cell. Cells are known by the ids of their notebook. A change inside an object is not seen.
 */

/** The names a run of a cell has set (declared or assigned) and those of other cells that it uses. */
export interface CellNames {
  sets: readonly string[];
  uses: readonly string[];
}

/** What clients learn of a cell. */
export interface CellReport {
  sets: string[];
  uses: string[];
  /** Cells that use names set by this one. */
  usedBy: string[];
  stale: boolean;
  /** Of the names it uses, those that a deleted cell set: they have no cell any more that could set them again. */
  usesDeleted: string[];
}

/** What remains of a deleted cell: names it set that other cells use. They keep their values until the kernel restarts. */
export interface DeletedCell {
  id: string;
  names: string[];
  usedBy: string[];
}

interface CellRecord extends CellNames {
  /** The version of each used name when the cell ended. */
  seen: ReadonlyMap<string, number>;
}

export class CellGraph {
  private readonly cells = new Map<string, CellRecord>();
  /** How often each name was set, and the cell that set it last. */
  private readonly names = new Map<string, { version: number; setBy: string | undefined }>();
  /** Deleted cells that set a name last. */
  private readonly deleted = new Set<string>();

  /** Records a run. Without an id only the names that it set are recorded. */
  record(id: string | undefined, { sets, uses }: CellNames): void {
    for (const name of sets)
      this.names.set(name, { version: (this.names.get(name)?.version ?? 0) + 1, setBy: id });
    if (id === undefined) return;
    this.deleted.delete(id);
    const seen = new Map(uses.map((name) => [name, this.versionOf(name)] as const));
    this.cells.set(id, { sets, uses, seen });
  }

  /** Removes a cell that is no longer in the notebook; the names it set keep their values. Returns which of them others use. */
  remove(id: string): DeletedCell {
    this.cells.delete(id);
    this.deleted.add(id);
    const usedBy = this.usersOf(id);
    const used = new Set(usedBy.flatMap((user) => this.cells.get(user)?.uses ?? []));
    return { id, names: this.namesSetBy(id).filter((name) => used.has(name)), usedBy };
  }

  /** Ids of stale cells, in the order in which they last ran. */
  stale(): string[] {
    const stale = new Set<string>();
    const isStale = ({ uses, seen }: CellRecord): boolean =>
      uses.some((name) => {
        const setBy = this.names.get(name)?.setBy;
        return this.versionOf(name) !== seen.get(name) || (setBy !== undefined && stale.has(setBy));
      });
    // Until nothing changes: staleness passes from cell to cell.
    for (let size = -1; size !== stale.size;) {
      size = stale.size;
      for (const [id, cell] of this.cells) if (!stale.has(id) && isStale(cell)) stale.add(id);
    }
    return [...this.cells.keys()].filter((id) => stale.has(id));
  }

  /** The cells that use names which this one set last. */
  usersOf(id: string): string[] {
    const own = new Set(this.namesSetBy(id));
    return [...this.cells]
      .filter(([other, { uses }]) => other !== id && uses.some((name) => own.has(name)))
      .map(([other]) => other);
  }

  report(): Record<string, CellReport> {
    const stale = new Set(this.stale());
    return Object.fromEntries(
      [...this.cells].map(([id, { sets, uses }]) => [
        id,
        {
          sets: [...sets],
          uses: [...uses],
          usedBy: this.usersOf(id),
          stale: stale.has(id),
          usesDeleted: uses.filter((name) => this.deleted.has(this.names.get(name)?.setBy ?? '')),
        },
      ]),
    );
  }

  /** The names that this cell was the last to set. */
  private namesSetBy(id: string): string[] {
    return [...this.names].filter(([, { setBy }]) => setBy === id).map(([name]) => name);
  }

  private versionOf(name: string): number {
    return this.names.get(name)?.version ?? 0;
  }
}
