import { el, icon, iconButton } from './element.js';
import { themeToggle } from './theme-toggle.js';
import type { KernelSession, KernelWord } from './kernel-session.js';
import type { NotebookFile, SaveState } from './notebook-client.js';
import type { Running } from './cell-running.js';

export interface ToolbarActions {
  readonly running: Running;
  readonly file: NotebookFile;
  readonly kernel: KernelSession;
  rename(): void;
  interrupt(): void;
  restart(): void;
  addCell(): void;
  find(): void;
  drawer(): void;
  showKeys(): void;
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
export function toolbar(acts: ToolbarActions): { node: HTMLElement; noteCount(count: number): void } {
  const { file, kernel, running } = acts;
  const title = el('button', {
    type: 'button',
    class: 'title',
    title: 'Give it another name',
    onclick: acts.rename,
  });
  const saved = el('button', { type: 'button', class: 'saved', onclick: () => void file.save(true) });
  const state = el('span', { class: 'kernel', role: 'status' });
  const stop = iconButton('stop', 'Stop what runs', acts.interrupt, { keys: 'I, I', words: 'Stop' });
  const count = el('span', { class: 'badge', hidden: true });
  const showFile = (): void => {
    const name =
      file.path
        .split('/')
        .at(-1)
        ?.replace(/\.ipynb$/, '') ?? file.path;
    title.textContent = name;
    document.title = `${file.state === 'saved' ? '' : '• '}${name}`;
    saved.textContent = saveWords[file.state];
    saved.className = `saved ${file.state}`;
    saved.title =
      file.state === 'failed' || file.state === 'conflict'
        ? `${file.problem} Press to try again.`.trim()
        : 'Save now (Ctrl + S)';
  };
  const showKernel = (): void => {
    state.textContent = kernelWords[kernel.word];
    state.className = `kernel ${kernel.word}`;
    stop.classList.toggle('wanted', kernel.word === 'working');
  };
  file.onState(showFile);
  kernel.onWord(showKernel);
  showFile();
  showKernel();
  const drawerButton = iconButton('book', 'Recipes and build notes', acts.drawer, {
    words: 'Recipes & notes',
    long: true,
    class: 'drawer-toggle',
    keys: 'Ctrl + Shift + F',
  });
  drawerButton.append(count);
  const node = el(
    'header',
    { class: 'bar' },
    el(
      'div',
      { class: 'bar-name' },
      el(
        'a',
        { class: 'tool home', href: '/', title: 'All notebooks', 'aria-label': 'All notebooks' },
        icon('back'),
      ),
      title,
      saved,
    ),
    el(
      'div',
      { class: 'bar-run', role: 'toolbar', 'aria-label': 'Run' },
      iconButton('run', 'Run the cell and go on', running.runAndStep, {
        keys: 'Shift + Enter',
        words: 'Run',
        long: true,
      }),
      iconButton('all', 'Run all cells', () => void running.runAll(), { words: 'Run all', long: true }),
      stop,
      iconButton('again', 'Restart the kernel', acts.restart, { keys: '0, 0', words: 'Restart' }),
      iconButton('plus', 'New cell below', acts.addCell, { keys: 'B', words: 'Cell' }),
    ),
    el(
      'div',
      { class: 'bar-side' },
      state,
      iconButton('look', 'Find and replace', acts.find, { keys: 'Ctrl + F' }),
      el(
        'button',
        {
          type: 'button',
          class: 'tool keys',
          title: 'Keys (H)',
          'aria-label': 'List of keys',
          onclick: acts.showKeys,
        },
        '?',
      ),
      themeToggle(),
      drawerButton,
    ),
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
