import { el, icon, iconButton } from './element.js';
import { filesAddress, notebookAddress } from './server-api.js';

/** A notebook of the folder as the server lists it. */
export interface ListedNotebook {
  readonly path: string;
  readonly number?: string;
  readonly title: string;
  readonly summary: string;
  readonly problem?: string;
}
/** How far its finished page is. */
export interface RenderStatus {
  readonly name: string;
  readonly state: 'waiting' | 'running' | 'done' | 'failed';
  readonly cell?: number;
  readonly cells?: number;
  readonly label?: string;
}
export interface Listing {
  readonly chapters: readonly ListedNotebook[];
  readonly files: readonly { readonly path: string; readonly size: number }[];
  readonly pages: readonly RenderStatus[];
}

export interface RowActions {
  readonly copy: (path: string) => void;
  readonly remove: (notebook: ListedNotebook) => void;
}

export function notebookRow(
  notebook: ListedNotebook,
  page: RenderStatus | undefined,
  actions: RowActions,
): HTMLElement {
  const base = notebook.path.replace(/\.ipynb$/, '');
  const finished = el(
    'a',
    { class: 'quiet', href: `/pages/${encodeURIComponent(base)}.html`, 'data-page-of': notebook.path },
    'Finished page',
  );
  return el(
    'li',
    { class: 'chapter' },
    el(
      'a',
      { class: 'open', href: notebookAddress(notebook.path) },
      el('span', { class: 'number', 'aria-hidden': 'true' }, notebook.number ?? '·'),
      el(
        'span',
        { class: 'about' },
        el('strong', {}, notebook.title),
        notebook.problem === undefined
          ? el('span', { class: 'says' }, notebook.summary)
          : el('span', { class: 'says problem' }, notebook.problem),
      ),
    ),
    el(
      'span',
      { class: 'acts' },
      page === undefined ? undefined : finished,
      page === undefined
        ? undefined
        : el(
            'span',
            { class: `state ${page.state}`, 'data-state-of': notebook.path, title: page.label ?? '' },
            stateWords(page),
          ),
      iconButton('copy', `Copy ${notebook.title}`, () => actions.copy(notebook.path), { words: 'Copy' }),
      el(
        'a',
        {
          class: 'tool',
          href: filesAddress(notebook.path),
          download: true,
          title: `Download ${notebook.path}`,
          'aria-label': `Download ${notebook.title}`,
        },
        icon('save'),
        el('span', { class: 'words' }, 'Download'),
      ),
      notebook.number === undefined
        ? iconButton('bin', `Delete ${notebook.title}`, () => actions.remove(notebook), { words: 'Delete' })
        : undefined,
    ),
  );
}

export function stateWords(page: RenderStatus): string {
  if (page.state === 'running')
    return page.cell === undefined ? 'being run' : `cell ${page.cell} of ${page.cells ?? 0}`;
  return { waiting: 'waits its turn', done: '', failed: 'stopped at a cell' }[page.state];
}
