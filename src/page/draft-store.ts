import type { INotebookContent } from '@jupyterlab/nbformat';

/** What was typed and may not be on disk yet: the text of every cell, without results. */
export interface Draft {
  readonly time: string;
  /** SHA-256 of the file it was typed into; undefined where that is not known. */
  readonly base: string | undefined;
  readonly cells: readonly DraftCell[];
}

interface DraftCell {
  readonly id: string;
  readonly type: string;
  readonly source: string;
}

const lockQuestions = 6;
const lockPause = 250;

/** Keeps the draft of one notebook in the browser's own storage, where it outlives the tab, the browser and the server. */
export class DraftStore {
  readonly #key: string;
  #locked = false;

  constructor(path: string) {
    this.#key = `reckoner-draft ${document.documentElement.dataset['folder'] ?? ''} ${path}`;
  }

  read(): Draft | undefined {
    try {
      const draft = JSON.parse(localStorage.getItem(this.#key) ?? 'null') as Draft | null;
      return draft !== null && Array.isArray(draft.cells) ? draft : undefined;
    } catch {
      return undefined;
    }
  }

  /** Whether another open tab is typing into this notebook: its draft is its own. A tab that is just going holds its lock for a moment. */
  async isOfOpenTab(): Promise<boolean> {
    for (let n = 0; n < lockQuestions; n += 1) {
      const { held = [] } = await navigator.locks.query();
      if (this.#locked || !held.some((lock) => lock.name === this.#key)) return false;
      await new Promise((resolve) => setTimeout(resolve, lockPause));
    }
    return true;
  }

  /** False where the browser keeps nothing (a private window, a full storage). */
  write(content: INotebookContent, base: string | undefined): boolean {
    this.#lock();
    const draft: Draft = { time: new Date().toISOString(), base, cells: cellsOf(content) };
    try {
      localStorage.setItem(this.#key, JSON.stringify(draft));
      return true;
    } catch {
      return false;
    }
  }

  /** A lock ends with its tab, also when the tab crashes. */
  #lock(): void {
    if (this.#locked) return;
    this.#locked = true;
    void navigator.locks.request(this.#key, () => new Promise(() => undefined));
  }

  remove(): void {
    localStorage.removeItem(this.#key);
  }
}

/** Whether the draft says anything that the notebook does not. */
export function differs(draft: Draft, content: INotebookContent): boolean {
  return JSON.stringify(draft.cells) !== JSON.stringify(cellsOf(content));
}

/** The notebook with the words and code of the draft; results stay with the cells that are still the same. */
export function withDraft(content: INotebookContent, draft: Draft): INotebookContent {
  const known = new Map(content.cells.map((cell) => [cell['id'], cell]));
  const cells = draft.cells.map(({ id, type, source }) => {
    const former = known.get(id);
    if (former?.cell_type === type) return { ...former, source };
    const code = type === 'code' ? { execution_count: null, outputs: [] } : {};
    return { id, cell_type: type, metadata: {}, source, ...code };
  });
  return { ...content, cells };
}

const cellsOf = (content: INotebookContent): DraftCell[] =>
  content.cells.map((cell) => ({
    id: typeof cell['id'] === 'string' ? cell['id'] : '',
    type: cell.cell_type,
    source: Array.isArray(cell.source) ? cell.source.join('') : cell.source,
  }));
