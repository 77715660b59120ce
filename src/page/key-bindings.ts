import { ask } from './dialog.js';
import { el } from './element.js';
import { NotebookActions, type Notebook } from '@jupyterlab/notebook';
import { CommandRegistry } from '@lumino/commands';
import type { Running } from './cell-running.js';
import type { CodeCompletion } from './code-completion.js';

export interface KeyActions {
  readonly notebook: Notebook;
  readonly running: Running;
  readonly completion: CodeCompletion;
  readonly save: () => void;
  readonly interrupt: () => void;
  readonly restart: () => void;
  readonly find: () => void;
  readonly recipes: () => void;
  readonly showKeys: () => void;
}

export interface KeyBinding {
  readonly name: string;
  readonly label: string;
  readonly keys: readonly string[];
  readonly where: string;
  readonly act: () => unknown;
}

const everywhere = 'body';
const inNotebook = '.jp-Notebook:focus-within';
const command =
  '.jp-Notebook.jp-mod-commandMode:not(.jp-mod-readWrite) :focus:not(:read-write), .jp-Notebook.jp-mod-commandMode:focus';
const editing = '.jp-Notebook.jp-mod-editMode';

/** The keys people know from Jupyter, and what they do here. One list makes the keys work and prints the table of keys. */
export function keyBindings(on: KeyActions): KeyBinding[] {
  return [...runningKeys(on), ...pageKeys(on), ...editorKeys(on), ...cellKeys(on), ...selectionKeys(on)];
}

const bind = (
  name: string,
  label: string,
  keys: string | readonly string[],
  where: string,
  act: () => unknown,
): KeyBinding => ({ name, label, keys: typeof keys === 'string' ? [keys] : keys, where, act });

function runningKeys({ running, interrupt, restart }: KeyActions): KeyBinding[] {
  return [
    bind('run-step', 'Run the cell, go to the next', 'Shift Enter', inNotebook, running.runAndStep),
    bind('run', 'Run the cell, stay', ['Ctrl Enter', 'Accel Enter'], inNotebook, running.run),
    bind('run-insert', 'Run the cell, new one below', 'Alt Enter', inNotebook, running.runAndInsert),
    bind('interrupt', 'Stop what runs', 'I I', command, interrupt),
    bind('restart', 'Restart the kernel', '0 0', command, restart),
  ];
}

function pageKeys(on: KeyActions): KeyBinding[] {
  return [
    bind('save', 'Save', 'Accel S', everywhere, on.save),
    bind('find', 'Find and replace', 'Accel F', everywhere, on.find),
    bind('recipes', 'Recipes', 'Accel Shift F', everywhere, on.recipes),
    bind('keys', 'This list of keys', 'H', command, on.showKeys),
  ];
}

function editorKeys({ notebook, completion }: KeyActions): KeyBinding[] {
  const offering = `${editing} .jp-mod-completer-enabled`;
  const offered = `${editing} .jp-mod-completer-active`;
  return [
    bind('complete', 'Complete the name', 'Tab', offering, completion.complete),
    bind('take', 'Take the offered name', 'Enter', offered, completion.take),
    bind(
      'explain',
      'Explain the name at the cursor',
      'Shift Tab',
      `${editing} .jp-InputArea-editor`,
      completion.explain,
    ),
    bind('leave', 'Leave the text, command the cell', 'Escape', editing, () => (notebook.mode = 'command')),
    bind('edit', 'Edit the cell', 'Enter', command, () => (notebook.mode = 'edit')),
    bind('split', 'Split the cell at the cursor', 'Ctrl Shift -', editing, () =>
      NotebookActions.splitCell(notebook),
    ),
  ];
}

function cellKeys({ notebook }: KeyActions): KeyBinding[] {
  const cell = (
    name: string,
    label: string,
    key: string | readonly string[],
    work: (notebook: Notebook) => unknown,
    where = command,
  ): KeyBinding => bind(name, label, key, where, () => work(notebook));
  const type = (value: 'code' | 'markdown' | 'raw') => (): void =>
    NotebookActions.changeCellType(notebook, value);
  return [
    cell('above', 'New cell above', 'A', NotebookActions.insertAbove),
    cell('below', 'New cell below', 'B', NotebookActions.insertBelow),
    cell('cut', 'Cut cells', 'X', NotebookActions.cut),
    cell('copy', 'Copy cells', 'C', NotebookActions.copy),
    cell('paste', 'Paste cells below', 'V', (n) => NotebookActions.paste(n)),
    cell('delete', 'Delete cells', 'D D', NotebookActions.deleteCells),
    cell('undo', 'Undo what was done to cells', ['Z', 'Accel Z'], NotebookActions.undo),
    cell('redo', 'Do it again', ['Shift Z', 'Accel Shift Z'], NotebookActions.redo),
    cell('merge', 'Join the chosen cells', 'Shift M', (n) => NotebookActions.mergeCells(n)),
    cell('move-up', 'Move the cell up', 'Ctrl Shift ArrowUp', NotebookActions.moveUp, inNotebook),
    cell('move-down', 'Move the cell down', 'Ctrl Shift ArrowDown', NotebookActions.moveDown, inNotebook),
    cell('to-code', 'Make it code', 'Y', type('code')),
    cell('to-text', 'Make it text', 'M', type('markdown')),
    cell('to-raw', 'Make it raw', 'R', type('raw')),
    cell('outputs', 'Hide or show the result', 'O', NotebookActions.toggleOutput),
    cell('lines', 'Line numbers', 'Shift L', NotebookActions.toggleAllLineNumbers),
    ...[1, 2, 3, 4, 5, 6].map((level) =>
      cell(`heading-${level}`, `Heading of level ${level}`, String(level), (n) =>
        NotebookActions.setMarkdownHeader(n, level),
      ),
    ),
  ];
}

function selectionKeys({ notebook }: KeyActions): KeyBinding[] {
  const move = (
    name: string,
    label: string,
    keys: string[],
    work: (notebook: Notebook) => unknown,
  ): KeyBinding => bind(name, label, keys, command, () => work(notebook));
  return [
    move('previous', 'Cell above', ['ArrowUp', 'K'], NotebookActions.selectAbove),
    move('next', 'Cell below', ['ArrowDown', 'J'], NotebookActions.selectBelow),
    move('more-up', 'Choose the cell above too', ['Shift ArrowUp', 'Shift K'], (n) =>
      NotebookActions.extendSelectionAbove(n),
    ),
    move('more-down', 'Choose the cell below too', ['Shift ArrowDown', 'Shift J'], (n) =>
      NotebookActions.extendSelectionBelow(n),
    ),
  ];
}

export function bindKeys(list: readonly KeyBinding[]): void {
  const commands = new CommandRegistry();
  for (const { name, label, keys, where, act } of list) {
    commands.addCommand(name, { label, execute: act });
    for (const key of keys) {
      for (const selector of where.split(', '))
        commands.addKeyBinding({
          command: name,
          keys: /^\S \S$/.test(key) ? key.split(' ') : [key],
          selector,
        });
    }
  }
  document.addEventListener(
    'keydown',
    (event) => {
      if (document.querySelector('dialog[open]') === null) commands.processKeydownEvent(event);
    },
    true,
  );
}

/** Shows the list of keys in a dialog. */
export async function showKeyTable(list: readonly KeyBinding[]): Promise<void> {
  const rows = list
    .filter(({ name }) => !name.startsWith('heading'))
    .map(({ keys, label }) => {
      const shown = keys.filter((key, n) => n === 0 || !key.startsWith('Accel'));
      return el(
        'tr',
        {},
        el('td', {}, ...shown.map((key) => el('kbd', {}, keyWords(key)))),
        el('td', {}, label),
      );
    });
  await ask({
    title: 'Keys',
    text: [el('table', { class: 'keys-table' }, el('tbody', {}, ...rows))],
    choices: [{ value: 'ok', words: 'Close', first: true }],
    class: 'keys',
  });
}

/** How keys are printed here: ⌘ on a Mac, Ctrl elsewhere. */
function keyWords(key: string): string {
  const mac = /Mac|iPhone|iPad/.test(navigator.userAgent);
  return key
    .replace('Accel', mac ? '⌘' : 'Ctrl')
    .replace('ArrowUp', '↑')
    .replace('ArrowDown', '↓')
    .replace('Escape', 'Esc')
    .replace(/ /g, ' + ')
    .replace(/^(\S) \+ (\S)$/, '$1, $2');
}
