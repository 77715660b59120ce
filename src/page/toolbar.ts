import { backend } from './backend.js';
import { el, icon, iconButton } from './element.js';
import { themeToggle } from './theme-toggle.js';
import type { KernelSession, KernelWord } from './kernel-session.js';
import type { NotebookFile, SaveState } from './notebook-client.js';
import type { Running } from './cell-running.js';

export interface ToolbarActions {
  readonly running: Running;
  readonly file: NotebookFile;
  readonly kernel: KernelSession;
  readonly rename: () => void;
  readonly interrupt: () => void;
  readonly restart: () => void;
  readonly addCell: () => void;
  readonly find: () => void;
  readonly toggleSidePanel: () => void;
  readonly showKeys: () => void;
}

const saveWords: Record<SaveState, string> = {
  saved: 'Saved',
  changed: 'Not saved yet',
  saving: 'Saving…',
  conflict: 'Changed elsewhere',
  failed: 'Not saved',
};
const kernelWords: Record<KernelWord, string> = {
  starting: 'Kernel starts',
  ready: 'Ready',
  working: 'Working',
  stopped: 'Kernel stopped',
  restarting: 'Restarting',
  away: 'No connection',
};

/** The bar over the notebook: where it belongs, whether it is saved, what runs it. */
export function toolbar(actions: ToolbarActions): { node: HTMLElement; noteCount(count: number): void } {
  const count = el('span', { class: 'badge', hidden: true });
  const node = el(
    'header',
    { class: 'bar' },
    nameGroup(actions),
    runGroup(actions),
    sideGroup(actions, count),
  );
  return {
    node,
    noteCount(number) {
      count.hidden = number === 0;
      count.textContent = String(number);
      count.title = `${number} in the build notes`;
    },
  };
}

/** Name of the notebook and whether it is saved. */
function nameGroup({ file, rename }: ToolbarActions): HTMLElement {
  const title = el('button', {
    type: 'button',
    class: 'title',
    title: 'Give it another name',
    onclick: rename,
  });
  const saved = el('button', { type: 'button', class: 'saved', onclick: () => void file.save(true) });
  const show = (): void => {
    const name = (file.path.split('/').at(-1) ?? file.path).replace(/\.ipynb$/, '');
    title.textContent = name;
    document.title = `${file.state === 'saved' ? '' : '• '}${name}`;
    saved.textContent = saveWords[file.state];
    saved.className = `saved ${file.state}`;
    saved.title =
      file.state === 'failed' || file.state === 'conflict'
        ? `${file.problem} Press to try again.`.trim()
        : 'Save now (Ctrl + S)';
  };
  file.onState(show);
  show();
  const home = {
    class: 'tool home',
    href: backend.homeAddress,
    title: 'All notebooks',
    'aria-label': 'All notebooks',
  };
  return el('div', { class: 'bar-name' }, el('a', home, icon('back')), title, saved);
}

/** Running, stopping, restarting. */
function runGroup({ running, kernel, interrupt, restart, addCell }: ToolbarActions): HTMLElement {
  const stop = iconButton('stop', 'Stop what runs', interrupt, { keys: 'I, I', words: 'Stop' });
  const show = (): void => void stop.classList.toggle('wanted', kernel.word === 'working');
  kernel.onWord(show);
  show();
  return el(
    'div',
    { class: 'bar-run', role: 'toolbar', 'aria-label': 'Run' },
    iconButton('run', 'Run the cell and go on', running.runAndStep, {
      keys: 'Shift + Enter',
      words: 'Run',
      long: true,
    }),
    iconButton('all', 'Run all cells', () => void running.runAll(), { words: 'Run all', long: true }),
    stop,
    iconButton('again', 'Restart the kernel', restart, { keys: '0, 0', words: 'Restart' }),
    iconButton('plus', 'New cell below', addCell, { keys: 'B', words: 'Cell' }),
  );
}

/** State of the kernel, search, keys, theme and the side panel. */
function sideGroup(actions: ToolbarActions, count: HTMLElement): HTMLElement {
  const { kernel } = actions;
  const state = el('span', { class: 'kernel', role: 'status' });
  const show = (): void => {
    state.textContent = kernelWords[kernel.word];
    state.className = `kernel ${kernel.word}`;
  };
  kernel.onWord(show);
  show();
  const panelButton = iconButton('book', 'Recipes and build notes', actions.toggleSidePanel, {
    words: 'Recipes & notes',
    long: true,
    class: 'side-panel-toggle',
    keys: 'Ctrl + Shift + F',
  });
  panelButton.append(count);
  const keys = { type: 'button', class: 'tool keys', title: 'Keys (H)', 'aria-label': 'List of keys' };
  return el(
    'div',
    { class: 'bar-side' },
    state,
    iconButton('look', 'Find and replace', actions.find, { keys: 'Ctrl + F' }),
    el('button', { ...keys, onclick: actions.showKeys }, '?'),
    themeToggle(),
    panelButton,
  );
}
