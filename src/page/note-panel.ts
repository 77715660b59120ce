import type { Notebook } from '@jupyterlab/notebook';
import { tell } from './dialog.js';
import type { Panel } from './side-panel.js';
import { el, icon, iconButton } from './element.js';
import { NoteList, resultName, type NoteItem } from './note-list.js';
import { download, messageOf, server } from './server-api.js';

type NoteForm = 'html' | 'md';

/** Build notes: results of cells in an order of the user's own, each with a remark; saved as HTML or Markdown, or printed. */
export class NotePanel implements Panel {
  readonly name = 'notes';
  readonly words = 'Build notes';
  readonly node: HTMLElement;
  readonly list: NoteList;
  readonly #rows = el('ol', { class: 'notes-list' });
  readonly #title = el('input', {
    type: 'text',
    class: 'notes-title',
    'aria-label': 'Title of the notes',
    placeholder: 'Title of the notes',
  });

  constructor(
    private readonly notebook: Notebook,
    private readonly path: () => string,
  ) {
    this.list = new NoteList(notebook);
    const button = (words: string, act: () => unknown, first = false): HTMLElement =>
      el(
        'button',
        { type: 'button', class: first ? 'button first' : 'button', onclick: () => void act() },
        words.startsWith('Save') ? icon('save') : undefined,
        words,
      );
    this.node = el(
      'div',
      { class: 'part notes' },
      this.#title,
      this.#rows,
      el(
        'div',
        { class: 'notes-acts' },
        button('Save as HTML', () => this.#save('html'), true),
        button('Save as Markdown', () => this.#save('md')),
        button('Print', () => this.#print()),
      ),
    );
    this.#title.addEventListener('input', () => this.list.setTitle(this.#title.value));
  }

  opened(): void {
    this.#draw();
  }

  add(cell: string): void {
    if (this.list.add(cell)) this.#draw();
    else tell('This result is in the notes already.');
  }

  #draw(): void {
    if (document.activeElement !== this.#title) this.#title.value = this.list.title;
    const items = this.list.items;
    this.#rows.replaceChildren(...items.map((item, at) => this.#row(item, at, items.length)));
    if (items.length === 0)
      this.#rows.append(
        el(
          'p',
          { class: 'says' },
          'Nothing noted yet. Choose a cell that shows a result and press ',
          icon('note'),
          ' beside it.',
        ),
      );
  }

  #row(item: NoteItem, at: number, count: number): HTMLElement {
    const cell = this.list.cellOf(item.cell);
    const remark = el('textarea', {
      rows: '2',
      placeholder: 'A remark',
      'aria-label': `Remark on note ${at + 1}`,
    });
    remark.value = item.remark;
    remark.addEventListener('input', () => this.list.setRemark(at, remark.value));
    const move = (to: number) => (): void => {
      this.list.move(at, to);
      this.#draw();
      this.#rows.children[to]?.querySelector<HTMLElement>('button')?.focus();
    };
    const remove = (): void => {
      this.list.remove(at);
      this.#draw();
    };
    return el(
      'li',
      { 'data-note': item.cell },
      el(
        'button',
        { type: 'button', class: 'note-name', title: 'Show the cell', onclick: () => this.#goTo(item.cell) },
        cell === undefined ? 'The cell is no longer there' : resultName(cell),
      ),
      remark,
      el(
        'span',
        { class: 'note-acts' },
        at > 0 ? iconButton('up', `Move note ${at + 1} up`, move(at - 1)) : undefined,
        at < count - 1 ? iconButton('down', `Move note ${at + 1} down`, move(at + 1)) : undefined,
        iconButton('close', `Take note ${at + 1} out`, remove),
      ),
    );
  }

  #goTo(id: string): void {
    const at = this.notebook.widgets.findIndex((cell) => cell.model.id === id);
    if (at < 0) return;
    this.notebook.activeCellIndex = at;
    void this.notebook.scrollToItem(at, 'smart');
  }

  async #write(form: NoteForm): Promise<{ name: string; text: string } | undefined> {
    const request = this.list.request(this.path().split('/').at(-1) ?? '');
    if (request.items.length === 0) {
      tell('There is no result in the notes yet.');
      return undefined;
    }
    try {
      const text = await server.postForText('/reckoner/notes', { ...request, form });
      const name = request.title
        .toLowerCase()
        .replace(/[^\p{L}\p{N}]+/gu, '-')
        .replace(/^-|-$/g, '');
      return { name: `${name || 'notes'}.${form}`, text };
    } catch (error) {
      tell(messageOf(error), 12);
      return undefined;
    }
  }

  async #save(form: NoteForm): Promise<void> {
    const made = await this.#write(form);
    if (made !== undefined) download(made.name, made.text, form === 'html' ? 'text/html' : 'text/markdown');
  }

  /** Prints the notes, not the page: they are laid out for A4 in a frame that is never seen. */
  async #print(): Promise<void> {
    const made = await this.#write('html');
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
}
