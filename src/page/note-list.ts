import type { ICodeCellModel } from '@jupyterlab/cells';
import type { Notebook } from '@jupyterlab/notebook';

export interface NoteItem {
  /** Id of the cell whose result is noted; the result is read when the note is written, so it is never stale. */
  readonly cell: string;
  readonly remark: string;
}

/** What the server needs to write build notes. */
export interface NotesRequest {
  readonly title: string;
  readonly items: readonly { readonly remark: string; readonly bundle: Readonly<Record<string, unknown>> }[];
}

const metadataKey = 'reckoner_notes';

/** The list of noted results, kept in the notebook's metadata, so that it is saved with the notebook and travels with it. */
export class NoteList {
  readonly #listeners: (() => void)[] = [];

  constructor(private readonly notebook: Notebook) {}

  onChange(listener: () => void): void {
    this.#listeners.push(listener);
  }

  get title(): string {
    const title = this.#stored()['title'];
    return typeof title === 'string' ? title : '';
  }

  get items(): NoteItem[] {
    const items = this.#stored()['items'];
    if (!Array.isArray(items)) return [];
    return items.flatMap((item: unknown): NoteItem[] => {
      const { cell, remark } = (item ?? {}) as { cell?: unknown; remark?: unknown };
      return typeof cell === 'string' ? [{ cell, remark: typeof remark === 'string' ? remark : '' }] : [];
    });
  }

  /** False where the cell is in the list already. */
  add(cell: string): boolean {
    const items = this.items;
    if (items.some((item) => item.cell === cell)) return false;
    this.#store({ items: [...items, { cell, remark: '' }] });
    return true;
  }

  setTitle(title: string): void {
    this.#store({ title });
  }

  setRemark(at: number, remark: string): void {
    this.#store({ items: this.items.map((item, n) => (n === at ? { ...item, remark } : item)) });
  }

  move(from: number, to: number): void {
    const items = this.items;
    items.splice(to, 0, ...items.splice(from, 1));
    this.#store({ items });
  }

  remove(at: number): void {
    this.#store({ items: this.items.filter((_, n) => n !== at) });
  }

  cellOf(id: string): ICodeCellModel | undefined {
    return this.notebook.widgets.find((cell) => cell.model.id === id)?.model as ICodeCellModel | undefined;
  }

  /** Title and, for each note, the remark and every output of its cell that can be shown. */
  request(fileName: string): NotesRequest {
    const items = this.items.flatMap((item) =>
      bundlesOf(this.cellOf(item.cell)).map((bundle, n) => ({ remark: n === 0 ? item.remark : '', bundle })),
    );
    return { title: this.title.trim() || titleFrom(fileName), items };
  }

  #stored(): Readonly<Record<string, unknown>> {
    const stored: unknown = this.notebook.model?.getMetadata(metadataKey);
    return typeof stored === 'object' && stored !== null ? (stored as Record<string, unknown>) : {};
  }

  #store(change: { readonly title?: string; readonly items?: readonly NoteItem[] }): void {
    this.notebook.model?.setMetadata(metadataKey, { title: this.title, items: this.items, ...change });
    for (const listener of this.#listeners) listener();
  }
}

/** The first heading or line of a cell's result, else its first line of code. */
export function resultName(cell: ICodeCellModel): string {
  for (const bundle of bundlesOf(cell)) {
    const line = joined(bundle['text/markdown'] ?? bundle['text/plain'] ?? '')
      .split('\n')
      .map((part) => part.replace(/[#*_`]+/g, '').trim())
      .find((part) => part !== '');
    if (line !== undefined) return line.slice(0, 90);
  }
  return cell.sharedModel.getSource().split('\n')[0]?.slice(0, 90) ?? 'Result';
}

type Bundle = Readonly<Record<string, unknown>>;

function bundlesOf(cell: ICodeCellModel | undefined): Bundle[] {
  return (cell?.outputs.toJSON() ?? []).flatMap((output) => {
    const data: unknown = output['data'];
    if (isBundle(data)) return [data];
    return output.output_type === 'stream' ? [{ 'text/plain': joined(output['text']) }] : [];
  });
}

const isBundle = (value: unknown): value is Bundle => typeof value === 'object' && value !== null;

const titleFrom = (fileName: string): string =>
  fileName
    .replace(/\.ipynb$/, '')
    .replace(/^\d+[-_]/, '')
    .replace(/[-_]+/g, ' ');

const joined = (text: unknown): string =>
  Array.isArray(text) ? text.join('') : typeof text === 'string' ? text : '';
