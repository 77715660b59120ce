import type { Notebook } from '@jupyterlab/notebook';
import { el, iconButton } from './element.js';

interface Hit {
  readonly cell: number;
  readonly start: number;
  readonly end: number;
}

/** Finds words in the text of all cells, goes from one to the next, and puts other words in their place. */
export function searchBar(notebook: Notebook): { open(): void; node: HTMLElement } {
  const word = el('input', {
    type: 'search',
    placeholder: 'Find in this notebook',
    'aria-label': 'Find',
    spellcheck: 'false',
  });
  const other = el('input', {
    type: 'text',
    placeholder: 'Replace by',
    'aria-label': 'Replace by',
    spellcheck: 'false',
  });
  const count = el('span', { class: 'count', role: 'status' });
  let hits: Hit[] = [];
  let at = -1;

  const look = (): void => {
    const wanted = word.value.toLowerCase();
    hits = [];
    if (wanted !== '') {
      for (const [cell, widget] of notebook.widgets.entries()) {
        const text = widget.model.sharedModel.getSource().toLowerCase();
        for (let from = text.indexOf(wanted); from >= 0; from = text.indexOf(wanted, from + wanted.length))
          hits.push({ cell, start: from, end: from + wanted.length });
      }
    }
    at = Math.min(at, hits.length - 1);
    count.textContent =
      wanted === ''
        ? ''
        : hits.length === 0
          ? 'not found'
          : at < 0
            ? `${hits.length} found`
            : `${at + 1} of ${hits.length}`;
    paint();
  };

  /** Every place is tinted in what is shown on the page, where the browser can (it needs no change to the text). */
  const paint = (): void => {
    const registry = (CSS as unknown as { highlights?: Map<string, unknown> }).highlights;
    const HighlightOf = (globalThis as unknown as { Highlight?: new (...ranges: Range[]) => unknown })
      .Highlight;
    if (registry === undefined || HighlightOf === undefined) return;
    registry.delete('found');
    const wanted = word.value.toLowerCase();
    if (wanted === '' || node.hidden) return;
    const ranges: Range[] = [];
    const walker = document.createTreeWalker(notebook.node, NodeFilter.SHOW_TEXT);
    while (walker.nextNode() && ranges.length < 2000) {
      const text = walker.currentNode as Text;
      const low = text.data.toLowerCase();
      for (let from = low.indexOf(wanted); from >= 0; from = low.indexOf(wanted, from + wanted.length)) {
        const range = new Range();
        range.setStart(text, from);
        range.setEnd(text, from + wanted.length);
        ranges.push(range);
      }
    }
    registry.set('found', new HighlightOf(...ranges));
  };

  const go = async (step: 1 | -1): Promise<void> => {
    look();
    if (hits.length === 0) return;
    at = at < 0 ? (step > 0 ? 0 : hits.length - 1) : (at + step + hits.length) % hits.length;
    look();
    const hit = hits[at];
    const cell = hit === undefined ? undefined : notebook.widgets[hit.cell];
    if (hit === undefined || cell === undefined) return;
    notebook.activeCellIndex = hit.cell;
    if (cell.model.type === 'markdown') (cell as unknown as { rendered: boolean }).rendered = false;
    await cell.ready;
    await notebook.scrollToItem(hit.cell, 'smart').catch(() => undefined);
    const editor = cell.editor;
    const [start, end] = [editor?.getPositionAt(hit.start), editor?.getPositionAt(hit.end)];
    if (editor && start && end) editor.setSelection({ start, end });
    editor?.revealSelection(editor.getSelection());
    word.focus();
    setTimeout(paint, 60);
  };

  const replaceAt = (hit: Hit): void =>
    notebook.widgets[hit.cell]?.model.sharedModel.updateSource(hit.start, hit.end, other.value);
  const replaceOne = (): void => {
    const hit = hits[at];
    if (hit === undefined) return void go(1);
    replaceAt(hit);
    at -= 1;
    void go(1);
  };
  const replaceAll = (): void => {
    look();
    const changed = hits.length;
    for (const hit of [...hits].reverse()) replaceAt(hit);
    look();
    count.textContent = `${changed} replaced`;
  };
  const close = (): void => {
    node.hidden = true;
    paint();
    (CSS as unknown as { highlights?: Map<string, unknown> }).highlights?.delete('found');
    notebook.node.focus();
  };

  const node = el(
    'div',
    { class: 'find', role: 'search', hidden: true },
    word,
    count,
    iconButton('up', 'Previous', () => void go(-1), { keys: 'Shift + Enter' }),
    iconButton('down', 'Next', () => void go(1), { keys: 'Enter' }),
    other,
    el('button', { type: 'button', class: 'button small', onclick: replaceOne }, 'Replace'),
    el('button', { type: 'button', class: 'button small', onclick: replaceAll }, 'All'),
    iconButton('close', 'Close', close, { keys: 'Esc' }),
  );
  word.addEventListener('input', () => {
    at = -1;
    look();
  });
  node.addEventListener('keydown', (event) => {
    if (event.key === 'Escape') close();
    else if (event.key === 'Enter' && event.target === word) void go(event.shiftKey ? -1 : 1);
    else if (event.key === 'Enter' && event.target === other) replaceOne();
    else return;
    event.preventDefault();
  });
  return {
    node,
    open() {
      node.hidden = false;
      word.focus();
      word.select();
      look();
    },
  };
}
