import './theme.css';
import './base.css';
import './controls.css';
import './home.css';
import './forms/styles/forms.css';
import './forms/styles/answer.css';
import './forms/styles/ask.css';
import { backend } from './backend.js';
import { connection } from './connection.js';
import { ask, askLine, tell } from './dialog.js';
import { el, icon } from './element.js';
import { fileName, upload } from './file-upload.js';
import {
  notebookRow,
  statusNodes,
  type ListedNotebook,
  type Listing,
  type RenderStatus,
  type RowActions,
} from './notebook-row.js';
import { AskSection } from './forms/ask/ask-section.js';
import { themeToggle } from './theme-toggle.js';
import { contentsAddress, messageOf, server, type FileModel } from './server-api.js';

const app = document.querySelector<HTMLElement>('#app') ?? document.body;
const lists = el('div', { class: 'lists' });
const rowActions: RowActions = {
  copy: (path) => reporting(() => copy(path)),
  remove: (notebook) => reporting(() => remove(notebook)),
  run: (path) => reporting(() => run(path)),
};

/** Does the work; says on the page what went wrong with it. */
function reporting(work: () => Promise<void>): void {
  void work().catch((error: unknown) => tell(messageOf(error), 12));
}

async function refresh(): Promise<void> {
  const listing = await server.get<Listing>('/reckoner/notebooks');
  const pageOf = (path: string): RenderStatus | undefined => listing.pages.find((page) => page.name === path);
  const numbered = listing.notebooks.filter(
    (chapter) => chapter.number !== undefined && !/-copy(-\d+)?\.ipynb$/.test(chapter.path),
  );
  const own = listing.notebooks.filter((chapter) => !numbered.includes(chapter));
  const section = (title: string, label: string, rows: HTMLElement[]): HTMLElement =>
    el(
      'section',
      {},
      el('h2', {}, title),
      rows.length === 0 ? el('p', { class: 'says' }, label) : el('ol', {}, ...rows),
    );
  lists.replaceChildren(
    section(
      'Chapters',
      'This folder holds no numbered chapters.',
      numbered.map((c) => notebookRow(c, pageOf(c.path), rowActions)),
    ),
    section(
      'Your own notebooks',
      'None yet. Start an empty one, or copy a chapter and change its figures.',
      own.map((c) => notebookRow(c, pageOf(c.path), rowActions)),
    ),
    ...(listing.files.length === 0
      ? []
      : [
          section(
            'Surveys and other files',
            '',
            listing.files.map((file) =>
              el(
                'li',
                { class: 'file' },
                el('a', { href: file.download, download: true }, file.path),
                el('span', { class: 'says' }, sizeWords(file.size)),
              ),
            ),
          ),
        ]),
  );
  app.removeAttribute('aria-busy');
  asking.setNotebooks(listing.notebooks);
  if (listing.pages.some((page) => page.state === 'waiting' || page.state === 'running'))
    setTimeout(() => void watchPages(), 1500);
}

/** Only the small words about finished pages change while they are made; the lists stay still under the hand. */
async function watchPages(): Promise<void> {
  const listing = await server.get<Listing>('/reckoner/notebooks').catch(() => undefined);
  if (listing === undefined) return;
  for (const status of listing.pages) {
    const spot = lists.querySelector<HTMLElement>(`[data-state-of="${CSS.escape(status.name)}"]`);
    const notebook = listing.notebooks.find(({ path }) => path === status.name);
    if (notebook !== undefined) spot?.replaceChildren(...statusNodes(notebook, status, rowActions));
  }
  if (listing.pages.some((page) => page.state === 'waiting' || page.state === 'running'))
    setTimeout(() => void watchPages(), 1500);
}

const sizeWords = (bytes: number): string =>
  bytes < 1000
    ? `${bytes} B`
    : bytes < 1e6
      ? `${Math.round(bytes / 1000)} kB`
      : `${(bytes / 1e6).toFixed(1)} MB`;

async function create(): Promise<void> {
  const name = await askLine('A new notebook', 'Its name', 'my bench', 'Start it');
  if (name === undefined) return;
  const made = await server.post<FileModel>('/api/contents', { type: 'notebook', name: fileName(name) });
  location.href = backend.notebookAddress(made.path);
}

async function copy(path: string): Promise<void> {
  const made = await server.post<FileModel>('/api/contents', { copy_from: path });
  location.href = backend.notebookAddress(made.path);
}

/** The user asks for a notebook that was never run on this machine. */
async function run(path: string): Promise<void> {
  await server.post('/reckoner/run', { path, pageWanted: true });
  await watchPages();
}

async function remove(chapter: ListedNotebook): Promise<void> {
  const answer = await ask({
    title: `Delete ${chapter.path}?`,
    text: ['The file is removed from the disk. This cannot be taken back.'],
    choices: [
      { value: 'keep', words: 'Keep it', first: true },
      { value: 'delete', words: 'Delete', loses: true },
    ],
  });
  if (answer !== 'delete') return;
  await server.remove(contentsAddress(chapter.path));
  await refresh();
}

async function addFiles(files: FileList): Promise<void> {
  await upload(files);
  await refresh();
}

const picker = el('input', {
  type: 'file',
  multiple: true,
  accept: '.ipynb,.csv,.json,.txt,.md',
  class: 'hidden',
  'aria-label': 'Choose files to upload',
  tabindex: '-1',
});
picker.addEventListener('change', () => {
  if (picker.files !== null) void addFiles(picker.files).finally(() => (picker.value = ''));
});

const asking = new AskSection(app, [
  el(
    'button',
    { type: 'button', class: 'button small', onclick: () => reporting(create) },
    icon('plus'),
    'New notebook',
  ),
  el(
    'button',
    { type: 'button', class: 'button small', onclick: () => picker.click() },
    icon('load'),
    'Upload a notebook or survey',
  ),
  picker,
]);
app.replaceChildren(
  el(
    'header',
    { class: 'home-head' },
    el(
      'div',
      { class: 'name' },
      el('img', { src: backend.assetAddress('mark.svg'), alt: '', width: '52', height: '52' }),
      el(
        'div',
        {},
        el('h1', {}, "Joiner's Reckoner"),
        el('p', {}, 'The figures before the cut: with units, workings, sources and cautions.'),
      ),
    ),
    themeToggle(),
  ),
  asking.node,
  lists,
  el(
    'footer',
    { class: 'home-foot' },
    el(
      'p',
      {},
      `${backend.placeWords} Figures are for planning: local codes and licensed practice come first.`,
    ),
  ),
);
document.addEventListener('dragover', (event) => event.preventDefault());
document.addEventListener('drop', (event) => {
  event.preventDefault();
  if (event.dataTransfer !== null && event.dataTransfer.files.length > 0)
    void addFiles(event.dataTransfer.files);
});
void refresh().catch((error: unknown) =>
  lists.replaceChildren(el('p', { class: 'says problem' }, messageOf(error))),
);
connection.onReturn(() => reporting(refresh));
addEventListener('pageshow', (event) => {
  if (event.persisted) void refresh();
});
