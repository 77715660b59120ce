import type { ICodeCellModel } from '@jupyterlab/cells';
import type { Notebook } from '@jupyterlab/notebook';
import { tell } from './dialog.js';
import type { Panel } from './side-panel.js';
import { el, icon, iconButton } from './element.js';
import { download, server } from './server-api.js';

interface Item {
  /** Id of the cell whose result is noted; the result is read when the note is written, so it is never stale. */
  readonly cell: string;
  readonly remark: string;
}
interface Notes {
  readonly title: string;
  readonly items: readonly Item[];
}

const key = 'reckoner_notes';

/**
 * Build notes: results of cells in an order of the person's own, each with a remark. The list is kept in the notebook's metadata, so it
 * is saved with it and travels with it.
 */
export function notePanel(
  notebook: Notebook,
  path: () => string,
): Panel & { add(cellId: string): void; count(): number; onChange(listener: () => void): void } {
  const list = el('ol', { class: 'notes-list' });
  const title = el('input', {
    type: 'text',
    class: 'notes-title',
    'aria-label': 'Title of the notes',
    placeholder: 'Title of the notes',
  });
  const node = el(
    'div',
    { class: 'part notes' },
    title,
    list,
    el(
      'div',
      { class: 'notes-acts' },
      el(
        'button',
        { type: 'button', class: 'button first', onclick: () => void write('html') },
        icon('save'),
        'Save as HTML',
      ),
      el(
        'button',
        { type: 'button', class: 'button', onclick: () => void write('md') },
        icon('save'),
        'Save as Markdown',
      ),
      el('button', { type: 'button', class: 'button', onclick: () => void print() }, 'Print'),
    ),
  );
  const listeners: (() => void)[] = [];

  const read = (): Notes => {
    const kept = notebook.model?.getMetadata(key) as Partial<Notes> | undefined;
    const items = Array.isArray(kept?.items)
      ? kept.items
          .filter((item) => typeof item?.cell === 'string')
          .map((item) => ({ cell: item.cell, remark: String(item.remark ?? '') }))
      : [];
    return { title: typeof kept?.title === 'string' ? kept.title : '', items };
  };
  const keep = (notes: Notes, redraw = true): void => {
    notebook.model?.setMetadata(key, notes);
    if (redraw) show();
    for (const listener of listeners) listener();
  };
  const cellOf = (id: string): ICodeCellModel | undefined =>
    notebook.widgets.find((cell) => cell.model.id === id)?.model as ICodeCellModel | undefined;

  function show(): void {
    const notes = read();
    if (document.activeElement !== title) title.value = notes.title;
    list.replaceChildren(
      ...(notes.items.length === 0
        ? [
            el(
              'p',
              { class: 'says' },
              'Nothing noted yet. Choose a cell that shows a result and press ',
              icon('note'),
              ' beside it.',
            ),
          ]
        : []),
      ...notes.items.map((item, at) => itemNode(item, at, notes)),
    );
  }

  function itemNode(item: Item, at: number, notes: Notes): HTMLElement {
    const cell = cellOf(item.cell);
    const remark = el('textarea', {
      rows: '2',
      placeholder: 'A remark',
      'aria-label': `Remark on note ${at + 1}`,
    });
    remark.value = item.remark;
    remark.addEventListener('input', () => {
      const now = read();
      keep(
        {
          ...now,
          items: now.items.map((other, n) => (n === at ? { ...other, remark: remark.value } : other)),
        },
        false,
      );
    });
    const move = (to: number): void => {
      // Read anew: a remark may have been written since this row was drawn.
      const now = read();
      const items = [...now.items];
      items.splice(to, 0, ...items.splice(at, 1));
      keep({ ...now, items });
      list.children[to]?.querySelector<HTMLElement>('button')?.focus();
    };
    return el(
      'li',
      { 'data-note': item.cell },
      el(
        'button',
        { type: 'button', class: 'note-name', title: 'Show the cell', onclick: () => goTo(item.cell) },
        cell === undefined ? 'The cell is no longer there' : nameOf(cell),
      ),
      remark,
      el(
        'span',
        { class: 'note-acts' },
        at > 0 ? iconButton('up', `Move note ${at + 1} up`, () => move(at - 1)) : undefined,
        at < notes.items.length - 1
          ? iconButton('down', `Move note ${at + 1} down`, () => move(at + 1))
          : undefined,
        iconButton('close', `Take note ${at + 1} out`, () =>
          keep({ ...read(), items: read().items.filter((_, n) => n !== at) }),
        ),
      ),
    );
  }

  function goTo(id: string): void {
    const at = notebook.widgets.findIndex((cell) => cell.model.id === id);
    if (at < 0) return;
    notebook.activeCellIndex = at;
    void notebook.scrollToItem(at, 'smart');
  }

  /** What the server needs to write the notes: title, and for each the remark and the last output that can be shown. */
  function collected(): { title: string; items: { remark: string; bundle: Record<string, unknown> }[] } {
    const notes = read();
    const items = notes.items.flatMap((item) => {
      const outputs = cellOf(item.cell)?.outputs.toJSON() ?? [];
      const shown = outputs.flatMap((output) =>
        'data' in output
          ? [output['data'] as Record<string, unknown>]
          : output.output_type === 'stream'
            ? [{ 'text/plain': joined(output['text']) }]
            : [],
      );
      return shown.map((bundle, n) => ({ remark: n === 0 ? item.remark : '', bundle }));
    });
    return {
      title:
        notes.title.trim() ||
        (path().split('/').at(-1) ?? '')
          .replace(/\.ipynb$/, '')
          .replace(/^\d+[-_]/, '')
          .replace(/[-_]+/g, ' '),
      items,
    };
  }

  async function ask(form: 'html' | 'md'): Promise<{ name: string; text: string } | undefined> {
    const wish = collected();
    if (wish.items.length === 0) {
      tell('There is no result in the notes yet.');
      return undefined;
    }
    const text = await server
      .postForText('/reckoner/notes', { ...wish, form })
      .catch((error: unknown) => tell(error instanceof Error ? error.message : String(error), 12));
    return text === undefined
      ? undefined
      : {
          name: `${
            wish.title
              .toLowerCase()
              .replace(/[^\p{L}\p{N}]+/gu, '-')
              .replace(/^-|-$/g, '') || 'notes'
          }.${form}`,
          text,
        };
  }

  async function write(form: 'html' | 'md'): Promise<void> {
    const made = await ask(form);
    if (made !== undefined) download(made.name, made.text, form === 'html' ? 'text/html' : 'text/markdown');
  }

  /** Prints the notes, not the page: they are laid out for A4 in a frame that is never seen. */
  async function print(): Promise<void> {
    const made = await ask('html');
    if (made === undefined) return;
    const frame = el('iframe', {
      class: 'print-frame',
      sandbox: 'allow-same-origin allow-modals',
      srcdoc: made.text,
      title: 'Build notes for printing',
    });
    frame.addEventListener('load', () => {
      frame.contentWindow?.print();
      setTimeout(() => frame.remove(), 60_000);
    });
    document.body.append(frame);
  }

  title.addEventListener('input', () => keep({ ...read(), title: title.value }, false));
  return {
    name: 'notes',
    words: 'Build notes',
    node,
    opened: show,
    add(cell) {
      const notes = read();
      if (notes.items.some((item) => item.cell === cell))
        return void tell('This result is in the notes already.');
      keep({ ...notes, items: [...notes.items, { cell, remark: '' }] });
    },
    count: () => read().items.length,
    onChange: (listener) => void listeners.push(listener),
  };
}

const joined = (text: unknown): string => (Array.isArray(text) ? text.join('') : String(text));

/** The first heading or line of a cell's result, else its first line of code. */
function nameOf(cell: ICodeCellModel): string {
  for (const output of cell.outputs?.toJSON() ?? []) {
    const data = 'data' in output ? (output['data'] as Record<string, unknown>) : {};
    const text = joined(data['text/markdown'] ?? data['text/plain'] ?? '');
    const line = text
      .split('\n')
      .map((part) => part.replace(/[#*_`]+/g, '').trim())
      .find((part) => part !== '');
    if (line !== undefined) return line.slice(0, 90);
  }
  return cell.sharedModel.getSource().split('\n')[0]?.slice(0, 90) ?? 'Result';
}
