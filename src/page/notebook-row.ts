import { el, icon, iconButton } from './element.js';
import { backend } from './backend.js';

/** A notebook of the folder as the server lists it. */
export interface ListedNotebook {
  readonly path: string;
  readonly number?: string;
  readonly title: string;
  readonly summary: string;
  readonly problem?: string;
  /** Addresses that the browser may follow by itself. */
  readonly download: string;
  readonly page?: string;
}
/** How far its finished page is. */
export interface RenderStatus {
  readonly name: string;
  readonly state: 'not-run' | 'waiting' | 'running' | 'done' | 'failed';
  readonly cell?: number;
  readonly cells?: number;
  readonly label?: string;
}
export interface Listing {
  readonly notebooks: readonly ListedNotebook[];
  readonly files: readonly { readonly path: string; readonly size: number; readonly download: string }[];
  readonly pages: readonly RenderStatus[];
}

export interface RowActions {
  readonly copy: (path: string) => void;
  readonly remove: (notebook: ListedNotebook) => void;
  readonly run: (path: string) => void;
}

export function notebookRow(
  notebook: ListedNotebook,
  status: RenderStatus | undefined,
  actions: RowActions,
): HTMLElement {
  const { path, title, number } = notebook;
  const download = {
    class: 'tool',
    href: notebook.download,
    download: true,
    title: `Download ${path}`,
    'aria-label': `Download ${title}`,
  };
  return el(
    'li',
    { class: 'chapter' },
    el(
      'a',
      { class: 'open', href: backend.notebookAddress(path) },
      el('span', { class: 'number', 'aria-hidden': 'true' }, number ?? '·'),
      el(
        'span',
        { class: 'about' },
        el('strong', {}, title),
        notebook.problem === undefined
          ? el('span', { class: 'says' }, notebook.summary)
          : el('span', { class: 'says problem' }, notebook.problem),
      ),
    ),
    el(
      'span',
      { class: 'acts' },
      status === undefined
        ? undefined
        : el(
            'span',
            { class: 'page-state', 'data-state-of': path },
            ...statusNodes(notebook, status, actions),
          ),
      iconButton('copy', `Copy ${title}`, () => actions.copy(path), { words: 'Copy' }),
      el('a', download, icon('save'), el('span', { class: 'words' }, 'Download')),
      number === undefined
        ? iconButton('bin', `Delete ${title}`, () => actions.remove(notebook), { words: 'Delete' })
        : undefined,
    ),
  );
}

/** The finished page, how far it is, or a button that runs a notebook which was never run on this machine. */
export function statusNodes(
  { path, title, page }: ListedNotebook,
  status: RenderStatus,
  actions: RowActions,
): HTMLElement[] {
  const words = el('span', { class: `state ${status.state}` }, statusWords(status));
  if (status.state === 'not-run')
    return [words, iconButton('run', `Run ${title}`, () => actions.run(path), { words: 'Run' })];
  const link = el('a', { class: 'quiet', href: page ?? '#', 'data-page-of': path }, 'Finished page');
  return status.state === 'failed' ? [link, words] : status.state === 'done' ? [link] : [words];
}

function statusWords(status: RenderStatus): string {
  if (status.state === 'running')
    return status.cell === undefined ? 'being run' : `cell ${status.cell} of ${status.cells ?? 0}`;
  return {
    'not-run': 'not run yet',
    waiting: 'waits its turn',
    done: '',
    failed: `stopped: ${status.label ?? 'at a cell'}`,
  }[status.state];
}
