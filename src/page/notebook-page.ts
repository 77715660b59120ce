import './base.css';
import './widgets.css';
import './notebook.css';
import type { Notebook } from '@jupyterlab/notebook';
import { NotebookActions } from '@jupyterlab/notebook';
import { Widget } from '@lumino/widgets';
import { ask, askLine, tell } from './dialog.js';
import { toolbar } from './toolbar.js';
import { cellTools } from './cell-toolbar.js';
import { sidePanel } from './side-panel.js';
import { makeNotebook, makeRendering } from './editing.js';
import { el } from './element.js';
import { searchBar } from './search-bar.js';
import { KernelSession } from './kernel-session.js';
import { actions, bindKeys, keyWords } from './key-bindings.js';
import { NotebookFile } from './notebook-client.js';
import { notePanel } from './note-panel.js';
import { recipePanel } from './recipe-panel.js';
import { runningOf } from './cell-running.js';
import { contentsAddress, hideKey, notebookAddress, server, type FileModel } from './server-api.js';
import { typingHelp } from './code-completion.js';

hideKey();
const path = decodeURIComponent(location.pathname.replace(/^\/notebook\//, ''));
const app = document.querySelector<HTMLElement>('#app') ?? document.body;

// Both are asked for at once: the text is shown as soon as it is there, the kernel starts meanwhile.
const reading = server.get<FileModel>(`${contentsAddress(path)}?hash=1&type=notebook`);
const kernel = new KernelSession(path);
open().catch((error: unknown) => {
  app.removeAttribute('aria-busy');
  app.replaceChildren(
    el(
      'div',
      { class: 'closed' },
      el('h1', {}, 'This notebook cannot be opened'),
      el('p', {}, error instanceof Error ? error.message : String(error)),
      el('p', {}, el('a', { href: '/' }, 'All notebooks')),
    ),
  );
});

async function open(): Promise<void> {
  reading.catch(() => undefined);
  const rendermime = makeRendering(path);
  const notebook = makeNotebook(rendermime);
  const file = new NotebookFile(path, notebook.model as NonNullable<typeof notebook.model>);
  await file.load(reading);
  void kernel
    .start()
    .catch((error: unknown) =>
      tell(`The kernel does not start: ${error instanceof Error ? error.message : String(error)}`, 15),
    );

  const running = runningOf(notebook, kernel);
  kernel.runAll = running.runAll;
  const find = searchBar(notebook);
  const notes = notePanel(notebook, () => file.path);
  const side = sidePanel([recipePanel((code) => insertCell(notebook, code)), notes]);
  const interrupt = (): void =>
    void kernel.interrupt().catch(() => tell('The kernel does not answer; restart it with the round arrow.'));
  const restart = (): void => void askRestart();
  const showKeys = (): void => void keyTable();
  const top = toolbar({
    running,
    file,
    kernel,
    interrupt,
    restart,
    showKeys,
    rename: () => void rename(file),
    addCell: () => NotebookActions.insertBelow(notebook),
    find: find.open,
    drawer: side.toggle,
  });
  // The second class is how the widgets find the room that offers and explanations may take.
  const host = el('div', { class: 'sheet jp-MainAreaWidget' });
  app.removeAttribute('aria-busy');
  app.replaceChildren(
    top.node,
    find.node,
    trustLine(notebook),
    el('div', { class: 'bench' }, host, side.node),
  );
  Widget.attach(notebook, host);
  notebook.activate();
  cellTools(notebook, running, (cell) => {
    notes.add(cell);
    side.open('notes');
  });
  top.noteCount(notes.count());
  notes.onChange(() => top.noteCount(notes.count()));
  const help = typingHelp(notebook, kernel, rendermime);
  const keys = actions({
    notebook,
    running,
    help,
    interrupt,
    restart,
    showKeys,
    save: () => void file.save(true),
    find: find.open,
    recipes: () => side.open('recipes'),
  });
  bindKeys(keys);
  file.watch();
  notebook.node.focus();
  document.body.dataset['opened'] = 'true';

  async function askRestart(): Promise<void> {
    const answer = await ask({
      title: 'Restart the kernel?',
      text: ['What the cells have reckoned so far is forgotten; the text and the results on the page stay.'],
      choices: [
        { value: 'restart', words: 'Restart', first: true },
        { value: 'all', words: 'Restart and run all cells' },
        { value: 'no', words: 'Leave it running' },
      ],
    });
    if (answer !== 'restart' && answer !== 'all') return;
    await kernel.restart();
    if (answer === 'all') await running.runAll();
  }

  async function keyTable(): Promise<void> {
    const rows = keys
      .filter((key) => !key.name.startsWith('heading'))
      .map((key) =>
        el(
          'tr',
          {},
          el(
            'td',
            {},
            ...key.keys
              .filter((k, n) => n === 0 || !k.startsWith('Accel'))
              .map((k) => el('kbd', {}, keyWords(k))),
          ),
          el('td', {}, key.label),
        ),
      );
    await ask({
      title: 'Keys',
      text: [el('table', { class: 'keys-table' }, el('tbody', {}, ...rows))],
      choices: [{ value: 'ok', words: 'Close', first: true }],
      class: 'keys',
    });
  }
}

function insertCell(notebook: Notebook, code: string): void {
  const cell = notebook.activeCell;
  const empty = cell?.model.type === 'code' && cell.model.sharedModel.getSource().trim() === '';
  if (!empty) NotebookActions.insertBelow(notebook);
  if (notebook.activeCell?.model.type !== 'code') NotebookActions.changeCellType(notebook, 'code');
  notebook.activeCell?.model.sharedModel.setSource(code);
  notebook.mode = 'command';
  void notebook.scrollToItem(notebook.activeCellIndex, 'smart');
  if (matchMedia('(max-width: 900px)').matches)
    tell('The cell is in the notebook, below the one you were at.', 3);
}

async function rename(file: NotebookFile): Promise<void> {
  const old =
    file.path
      .split('/')
      .at(-1)
      ?.replace(/\.ipynb$/, '') ?? '';
  const name = await askLine('Another name', 'Name of the notebook', old, 'Rename');
  if (name === undefined || name === old) return;
  const folder = file.path.includes('/') ? file.path.slice(0, file.path.lastIndexOf('/') + 1) : '';
  try {
    await file.rename(
      `${folder}${name
        .replace(/[\\/:*?"<>|\0]+/g, ' ')
        .trim()
        .replace(/\.ipynb$/, '')}.ipynb`,
    );
    history.replaceState(null, '', notebookAddress(file.path));
    await kernel.context.session?.setPath(file.path);
    await file.lookAtDisk();
    location.reload();
  } catch (error) {
    tell(error instanceof Error ? error.message : String(error), 10);
  }
}

/** Said only when the file brought results that are shown without their active parts. */
function trustLine(notebook: Notebook): HTMLElement {
  const active = [...(notebook.model?.cells ?? [])].some(
    (cell) =>
      cell.type === 'code' &&
      !cell.trusted &&
      (cell.sharedModel.toJSON() as { outputs?: { data?: Record<string, unknown> }[] }).outputs?.some(
        (output) =>
          /<(script|iframe|form|object|embed)|\son\w+=/i.test(String(output.data?.['text/html'] ?? '')),
      ),
  );
  const line = el(
    'p',
    { class: 'trust', hidden: !active },
    'Some results in this file hold active HTML. They are shown without it. ',
    el(
      'button',
      {
        type: 'button',
        class: 'button small',
        onclick: () => {
          for (const cell of notebook.model?.cells ?? []) cell.trusted = true;
          line.remove();
        },
      },
      'I know where it comes from',
    ),
  );
  return line;
}
