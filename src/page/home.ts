import './base.css';
import './home.css';
import { ask, askLine, tell } from './dialog.js';
import { el, icon, iconButton } from './element.js';
import { themeToggle } from './theme-toggle.js';
import {
  contentsAddress,
  filesAddress,
  hideKey,
  notebookAddress,
  server,
  type FileModel,
} from './server-api.js';

interface Chapter {
  readonly path: string;
  readonly number?: string;
  readonly title: string;
  readonly summary: string;
  readonly problem?: string;
}
interface PageState {
  readonly name: string;
  readonly state: 'waiting' | 'running' | 'done' | 'failed';
  readonly cell?: number;
  readonly cells?: number;
  readonly label?: string;
}
interface Listing {
  readonly chapters: readonly Chapter[];
  readonly files: readonly { readonly path: string; readonly size: number }[];
  readonly pages: readonly PageState[];
}

const app = document.querySelector<HTMLElement>('#app') ?? document.body;
const lists = el('div', { class: 'lists' });

function chapterRow(chapter: Chapter, page: PageState | undefined): HTMLElement {
  const base = chapter.path.replace(/\.ipynb$/, '');
  const finished = el(
    'a',
    { class: 'quiet', href: `/pages/${encodeURIComponent(base)}.html`, 'data-page-of': chapter.path },
    'Finished page',
  );
  return el(
    'li',
    { class: 'chapter' },
    el(
      'a',
      { class: 'open', href: notebookAddress(chapter.path) },
      el('span', { class: 'number', 'aria-hidden': 'true' }, chapter.number ?? '·'),
      el(
        'span',
        { class: 'about' },
        el('strong', {}, chapter.title),
        chapter.problem === undefined
          ? el('span', { class: 'says' }, chapter.summary)
          : el('span', { class: 'says problem' }, chapter.problem),
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
            { class: `state ${page.state}`, 'data-state-of': chapter.path, title: page.label ?? '' },
            stateWords(page),
          ),
      iconButton('copy', `Copy ${chapter.title}`, () => void copy(chapter.path), { words: 'Copy' }),
      el(
        'a',
        {
          class: 'tool',
          href: filesAddress(chapter.path),
          download: true,
          title: `Download ${chapter.path}`,
          'aria-label': `Download ${chapter.title}`,
        },
        icon('save'),
        el('span', { class: 'words' }, 'Download'),
      ),
      chapter.number === undefined
        ? iconButton('bin', `Delete ${chapter.title}`, () => void remove(chapter), { words: 'Delete' })
        : undefined,
    ),
  );
}

function stateWords(page: PageState): string {
  if (page.state === 'running')
    return page.cell === undefined ? 'being run' : `cell ${page.cell} of ${page.cells ?? 0}`;
  return { waiting: 'waits its turn', done: '', failed: 'stopped at a cell' }[page.state];
}

async function refresh(): Promise<void> {
  const listing = await server.get<Listing>('/reckoner/chapters');
  const pageOf = (path: string): PageState | undefined => listing.pages.find((page) => page.name === path);
  const numbered = listing.chapters.filter(
    (chapter) => chapter.number !== undefined && !/-copy(-\d+)?\.ipynb$/.test(chapter.path),
  );
  const own = listing.chapters.filter((chapter) => !numbered.includes(chapter));
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
      numbered.map((c) => chapterRow(c, pageOf(c.path))),
    ),
    section(
      'Your own notebooks',
      'None yet. Start an empty one, or copy a chapter and change its figures.',
      own.map((c) => chapterRow(c, pageOf(c.path))),
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
                el('a', { href: filesAddress(file.path), download: true }, file.path),
                el('span', { class: 'says' }, sizeWords(file.size)),
              ),
            ),
          ),
        ]),
  );
  app.removeAttribute('aria-busy');
  if (listing.pages.some((page) => page.state === 'waiting' || page.state === 'running'))
    setTimeout(() => void watchPages(), 1500);
}

/** Only the small words about finished pages change while they are made; the lists stay still under the hand. */
async function watchPages(): Promise<void> {
  const listing = await server.get<Listing>('/reckoner/chapters').catch(() => undefined);
  if (listing === undefined) return;
  for (const page of listing.pages) {
    const words = lists.querySelector<HTMLElement>(`[data-state-of="${CSS.escape(page.name)}"]`);
    if (words === null) continue;
    words.textContent = stateWords(page);
    words.className = `state ${page.state}`;
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
  location.href = notebookAddress(made.path);
}

const fileName = (words: string): string =>
  words
    .trim()
    .replace(/[\\/:*?"<>|\0]+/g, ' ')
    .replace(/^\.+/, '')
    .replace(/\s+/g, '-')
    .slice(0, 80);

async function copy(path: string): Promise<void> {
  const made = await server.post<FileModel>('/api/contents', { copy_from: path });
  location.href = notebookAddress(made.path);
}

async function remove(chapter: Chapter): Promise<void> {
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

async function upload(files: FileList): Promise<void> {
  for (const file of Array.from(files)) {
    const bytes = new Uint8Array(await file.arrayBuffer());
    let binary = '';
    for (let at = 0; at < bytes.length; at += 32768)
      binary += String.fromCharCode(...bytes.subarray(at, at + 32768));
    const body = { type: 'file', format: 'base64', content: btoa(binary) };
    const name = fileName(file.name);
    try {
      await server.put(contentsAddress(name), { ...body, expected_hash: null });
      tell(`${name} is in the folder.`);
    } catch (error) {
      const there = error instanceof Error && 'status' in error && error.status === 409;
      if (!there) {
        tell(error instanceof Error ? error.message : String(error), 12);
        continue;
      }
      const answer = await ask({
        title: `${name} is there already`,
        text: ['A file of this name is in the folder. Which one shall stay?'],
        choices: [
          { value: 'keep', words: 'Keep the one there', first: true },
          { value: 'replace', words: 'Put this one in its place', loses: true },
        ],
      });
      if (answer === 'replace')
        await server
          .put(contentsAddress(name), body)
          .catch((e: unknown) => tell(e instanceof Error ? e.message : String(e), 12));
    }
  }
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
  if (picker.files !== null) void upload(picker.files).finally(() => (picker.value = ''));
});

hideKey();
const guarded = (work: () => Promise<void>) => (): void =>
  void work().catch((error: unknown) => tell(error instanceof Error ? error.message : String(error), 12));
app.replaceChildren(
  el(
    'header',
    { class: 'home-head' },
    el(
      'div',
      { class: 'name' },
      el('img', { src: '/page/mark.svg', alt: '', width: '52', height: '52' }),
      el(
        'div',
        {},
        el('h1', {}, "Joiner's Reckoner"),
        el('p', {}, 'The figures before the cut: with units, workings, sources and cautions.'),
      ),
    ),
    themeToggle(),
  ),
  el(
    'div',
    { class: 'home-acts' },
    el(
      'button',
      { type: 'button', class: 'button first', onclick: guarded(create) },
      icon('plus'),
      'New notebook',
    ),
    el(
      'button',
      { type: 'button', class: 'button', onclick: () => picker.click() },
      icon('load'),
      'Upload a notebook or survey',
    ),
    picker,
  ),
  lists,
  el(
    'footer',
    { class: 'home-foot' },
    el(
      'p',
      {},
      'Everything stays on this machine. Figures are for planning: local codes and licensed practice come first.',
    ),
  ),
);
document.addEventListener('dragover', (event) => event.preventDefault());
document.addEventListener('drop', (event) => {
  event.preventDefault();
  if (event.dataTransfer !== null && event.dataTransfer.files.length > 0)
    void upload(event.dataTransfer.files);
});
void refresh().catch((error: unknown) =>
  lists.replaceChildren(
    el('p', { class: 'says problem' }, error instanceof Error ? error.message : String(error)),
  ),
);
addEventListener('pageshow', (event) => {
  if (event.persisted) void refresh();
});
