import type { Notebook } from '@jupyterlab/notebook';
import { el, iconButton } from './element.js';

interface Hit {
  readonly cell: number;
  readonly start: number;
  readonly end: number;
}

/** Finds words in the text of all cells, goes from one to the next, and puts other words in their place. */
export class SearchBar {
  readonly node: HTMLElement;
  readonly #word = el('input', {
    type: 'search',
    placeholder: 'Find in this notebook',
    'aria-label': 'Find',
    spellcheck: 'false',
  });
  readonly #replacement = el('input', {
    type: 'text',
    placeholder: 'Replace by',
    'aria-label': 'Replace by',
    spellcheck: 'false',
  });
  readonly #count = el('span', { class: 'count', role: 'status' });
  #hits: Hit[] = [];
  #at = -1;

  constructor(private readonly notebook: Notebook) {
    const small = { type: 'button', class: 'button small' };
    this.node = el(
      'div',
      { class: 'find', role: 'search', hidden: true },
      this.#word,
      this.#count,
      iconButton('up', 'Previous', () => void this.#go(-1), { keys: 'Shift + Enter' }),
      iconButton('down', 'Next', () => void this.#go(1), { keys: 'Enter' }),
      this.#replacement,
      el('button', { ...small, onclick: () => this.#replaceOne() }, 'Replace'),
      el('button', { ...small, onclick: () => this.#replaceAll() }, 'All'),
      iconButton('close', 'Close', () => this.#close(), { keys: 'Esc' }),
    );
    this.#word.addEventListener('input', () => {
      this.#at = -1;
      this.#search();
    });
    this.node.addEventListener('keydown', (event) => this.#onKey(event));
  }

  open(): void {
    this.node.hidden = false;
    this.#word.focus();
    this.#word.select();
    this.#search();
  }

  #onKey(event: KeyboardEvent): void {
    if (event.key === 'Escape') this.#close();
    else if (event.key === 'Enter' && event.target === this.#word) void this.#go(event.shiftKey ? -1 : 1);
    else if (event.key === 'Enter' && event.target === this.#replacement) this.#replaceOne();
    else return;
    event.preventDefault();
  }

  #search(): void {
    const wanted = this.#word.value.toLowerCase();
    this.#hits = [...this.notebook.widgets.entries()].flatMap(([cell, widget]) =>
      placesOf(wanted, widget.model.sharedModel.getSource()).map((start) => ({
        cell,
        start,
        end: start + wanted.length,
      })),
    );
    this.#at = Math.min(this.#at, this.#hits.length - 1);
    this.#count.textContent = wanted === '' ? '' : this.#countText();
    this.#highlight();
  }

  #countText(): string {
    const { length } = this.#hits;
    if (length === 0) return 'not found';
    return this.#at < 0 ? `${length} found` : `${this.#at + 1} of ${length}`;
  }

  /** Every place is tinted in what is shown on the page, where the browser can (it needs no change to the text). */
  #highlight(): void {
    const registry = (CSS as unknown as { highlights?: Map<string, unknown> }).highlights;
    const HighlightOf = (globalThis as unknown as { Highlight?: new (...ranges: Range[]) => unknown })
      .Highlight;
    if (registry === undefined || HighlightOf === undefined) return;
    registry.delete('found');
    const wanted = this.#word.value.toLowerCase();
    if (wanted === '' || this.node.hidden) return;
    const ranges: Range[] = [];
    const walker = document.createTreeWalker(this.notebook.node, NodeFilter.SHOW_TEXT);
    while (walker.nextNode() && ranges.length < 2000) {
      const text = walker.currentNode as Text;
      for (const start of placesOf(wanted, text.data)) {
        const range = new Range();
        range.setStart(text, start);
        range.setEnd(text, start + wanted.length);
        ranges.push(range);
      }
    }
    registry.set('found', new HighlightOf(...ranges));
  }

  async #go(step: 1 | -1): Promise<void> {
    this.#search();
    const { length } = this.#hits;
    if (length === 0) return;
    const start = step > 0 ? 0 : length - 1;
    this.#at = this.#at < 0 ? start : (this.#at + step + length) % length;
    this.#search();
    const hit = this.#hits[this.#at];
    if (hit !== undefined) await this.#show(hit);
  }

  async #show(hit: Hit): Promise<void> {
    const cell = this.notebook.widgets[hit.cell];
    if (cell === undefined) return;
    this.notebook.activeCellIndex = hit.cell;
    if (cell.model.type === 'markdown') (cell as unknown as { rendered: boolean }).rendered = false;
    await cell.ready;
    await this.notebook.scrollToItem(hit.cell, 'smart').catch(() => undefined);
    const editor = cell.editor;
    const [start, end] = [editor?.getPositionAt(hit.start), editor?.getPositionAt(hit.end)];
    if (editor && start && end) editor.setSelection({ start, end });
    editor?.revealSelection(editor.getSelection());
    this.#word.focus();
    setTimeout(() => this.#highlight(), 60);
  }

  #replace(hit: Hit): void {
    const source = this.notebook.widgets[hit.cell]?.model.sharedModel;
    source?.updateSource(hit.start, hit.end, this.#replacement.value);
  }

  #replaceOne(): void {
    const hit = this.#hits[this.#at];
    if (hit !== undefined) {
      this.#replace(hit);
      this.#at -= 1;
    }
    void this.#go(1);
  }

  #replaceAll(): void {
    this.#search();
    const changed = this.#hits.length;
    for (const hit of [...this.#hits].reverse()) this.#replace(hit);
    this.#search();
    this.#count.textContent = `${changed} replaced`;
  }

  #close(): void {
    this.node.hidden = true;
    this.#highlight();
    this.notebook.node.focus();
  }
}

/** Where `wanted` (lower case) begins in `text`, capitals or not. */
function placesOf(wanted: string, text: string): number[] {
  const places: number[] = [];
  if (wanted === '') return places;
  const low = text.toLowerCase();
  for (let at = low.indexOf(wanted); at >= 0; at = low.indexOf(wanted, at + wanted.length)) places.push(at);
  return places;
}
