import './theme.css';
import './base.css';
import './controls.css';
import './widgets.css';
import './notebook.css';
import './notebook-toolbar.css';
import './cells.css';
import './outputs.css';
import './side-panel.css';
import './forms/styles/forms.css';
import './forms/styles/answer.css';
import './forms/styles/ask.css';
import './forms/styles/notebook-forms.css';
import './screen-sizes.css';
import type { Notebook } from '@jupyterlab/notebook';
import { NotebookActions } from '@jupyterlab/notebook';
import { Widget } from '@lumino/widgets';
import { backend } from './backend.js';
import { ask, askLine, tell } from './dialog.js';
import { toolbar } from './toolbar.js';
import { cellToolbar } from './cell-toolbar.js';
import { StaleResults } from './stale-results.js';
import { sidePanel } from './side-panel.js';
import { makeNotebook, makeRendering } from './editing.js';
import { el } from './element.js';
import { SearchBar } from './search-bar.js';
import { KernelSession } from './kernel-session.js';
import { bindKeys, keyBindings, showKeyTable } from './key-bindings.js';
import { NotebookFile } from './notebook-client.js';
import { NotePanel } from './note-panel.js';
import { recipePanel } from './recipe-panel.js';
import { runningOf, type Running } from './cell-running.js';
import { contentsAddress, messageOf, server, type FileModel } from './server-api.js';
import { codeCompletion } from './code-completion.js';
import { CellRunner } from './forms/notebook/cell-runner.js';
import { notebookMenu } from './forms/notebook/notebook-menu.js';
import { firstView, formsBar } from './forms/notebook/forms-bar.js';
import { NotebookForms } from './forms/notebook/notebook-forms.js';

const path = backend.openNotebook();
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
      el('p', {}, messageOf(error)),
      el('p', {}, el('a', { href: backend.homeAddress }, 'All notebooks')),
    ),
  );
});

async function open(): Promise<void> {
  reading.catch(() => undefined);
  const rendermime = makeRendering(path);
  const notebook = makeNotebook(rendermime);
  const file = new NotebookFile(path, notebook.model as NonNullable<typeof notebook.model>);
  await file.load(reading);
  void kernel.start().catch((error: unknown) => tell(`The kernel does not start: ${messageOf(error)}`, 15));

  const running = runningOf(notebook, kernel, () => void rememberRun(file));
  kernel.runAll = running.runAll;
  kernel.onKernelGone = async () => {
    await file.save();
    location.reload();
  };
  const search = new SearchBar(notebook);
  const notes = new NotePanel(notebook, () => file.path);
  const forms = new NotebookForms(notebook, new CellRunner(kernel), firstView(notebook));
  const side = sidePanel([
    recipePanel(
      (code) => insertCell(notebook, code),
      (recipe) => void forms.addQuestion(recipe),
    ),
    notes,
  ]);
  const shared = {
    notebook,
    running,
    file,
    kernel,
    completion: codeCompletion(notebook, kernel, rendermime),
    interrupt: () =>
      void kernel
        .interrupt()
        .catch(() => tell('The kernel does not answer; restart it with the round arrow.')),
    restart: () => void askRestart(running),
    showKeys: () => void showKeyTable(keys),
    save: () => void file.save(true),
    rename: () => void rename(file),
    addCell: () => NotebookActions.insertBelow(notebook),
    find: () => search.open(),
    recipes: () => side.open('recipes'),
    toggleSidePanel: side.toggle,
  };
  const keys = keyBindings(shared);
  const top = toolbar(shared);
  const menu = notebookMenu(file, () => side.open('notes'));
  const stale = new StaleResults(notebook, kernel).node;
  const bars = [top.node, formsBar(notebook, forms, menu), search.node, trustLine(notebook), stale];
  layOut(notebook, bars, side.node);
  cellToolbar(notebook, running, (cell) => {
    notes.add(cell);
    side.open('notes');
  });
  const showCount = (): void => top.noteCount(notes.list.items.length);
  notes.list.onChange(showCount);
  showCount();
  bindKeys(keys);
  begin(notebook, file);
}

function begin(notebook: Notebook, file: NotebookFile): void {
  file.watch();
  void file.offerDraft();
  notebook.node.focus();
  document.body.dataset['opened'] = 'true';
}

function layOut(notebook: Notebook, above: readonly HTMLElement[], beside: HTMLElement): void {
  // The second class is how the widgets find the space that offers and explanations may take.
  const host = el('div', { class: 'sheet jp-MainAreaWidget' });
  app.removeAttribute('aria-busy');
  app.replaceChildren(...above, el('div', { class: 'bench' }, host, beside));
  Widget.attach(notebook, host);
  notebook.activate();
  editAddedCell(notebook);
}

/** A cell added by the line below the last one is typed into at once. */
function editAddedCell(notebook: Notebook): void {
  notebook.node.addEventListener('click', (event) => {
    if (!(event.target instanceof Element) || event.target.closest('.jp-Notebook-footer') === null) return;
    setTimeout(() => {
      notebook.mode = 'edit';
      notebook.activeCell?.editor?.focus();
    });
  });
}

/** The user has run this notebook as it is on disk: the server may make its finished page unasked from now on. */
async function rememberRun(file: NotebookFile): Promise<void> {
  await file.save();
  if (file.state === 'saved') await server.post('/reckoner/run', { path: file.path }).catch(() => undefined);
}

async function askRestart(running: Running): Promise<void> {
  const answer = await ask({
    title: 'Restart the kernel?',
    text: ['What the cells have computed so far is forgotten; the text and the results on the page stay.'],
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
    history.replaceState(null, '', backend.notebookAddress(file.path));
    await kernel.context.session?.setPath(file.path);
    await file.lookAtDisk();
    location.reload();
  } catch (error) {
    tell(messageOf(error), 10);
  }
}

/** Said only when the file brought results that are shown without their active parts. */
function trustLine(notebook: Notebook): HTMLElement {
  const active = [...(notebook.model?.cells ?? [])].some(
    (cell) =>
      cell.type === 'code' &&
      !cell.trusted &&
      (cell.sharedModel.toJSON() as { outputs?: { data?: Record<string, unknown> }[] }).outputs?.some(
        (output) => /<(script|iframe|form|object|embed)|\son\w+=/i.test(htmlOf(output.data)),
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

function htmlOf(data: Readonly<Record<string, unknown>> | undefined): string {
  const html = data?.['text/html'];
  return typeof html === 'string' ? html : Array.isArray(html) ? html.join('') : '';
}
