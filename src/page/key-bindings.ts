import { NotebookActions, type Notebook } from '@jupyterlab/notebook';
import { CommandRegistry } from '@lumino/commands';
import type { Running } from './cell-running.js';
import type { TypingHelp } from './code-completion.js';

export interface KeyBindings {
  readonly notebook: Notebook;
  readonly running: Running;
  readonly help: TypingHelp;
  save(): void;
  interrupt(): void;
  restart(): void;
  find(): void;
  recipes(): void;
  showKeys(): void;
}

interface Action {
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
export function actions(on: KeyBindings): Action[] {
  const { notebook, running, help } = on;
  const change = (work: (notebook: Notebook) => unknown) => (): unknown => work(notebook);
  const type = (value: 'code' | 'markdown' | 'raw') => (): void =>
    NotebookActions.changeCellType(notebook, value);
  return [
    {
      name: 'run-step',
      label: 'Run the cell, go to the next',
      keys: ['Shift Enter'],
      where: inNotebook,
      act: running.runAndStep,
    },
    {
      name: 'run',
      label: 'Run the cell, stay',
      keys: ['Ctrl Enter', 'Accel Enter'],
      where: inNotebook,
      act: running.run,
    },
    {
      name: 'run-insert',
      label: 'Run the cell, new one below',
      keys: ['Alt Enter'],
      where: inNotebook,
      act: running.runAndInsert,
    },
    { name: 'save', label: 'Save', keys: ['Accel S'], where: everywhere, act: on.save },
    { name: 'find', label: 'Find and replace', keys: ['Accel F'], where: everywhere, act: on.find },
    {
      name: 'complete',
      label: 'Complete the name',
      keys: ['Tab'],
      where: `${editing} .jp-mod-completer-enabled`,
      act: help.complete,
    },
    {
      name: 'take',
      label: 'Take the offered name',
      keys: ['Enter'],
      where: `${editing} .jp-mod-completer-active`,
      act: help.take,
    },
    {
      name: 'explain',
      label: 'Explain the name at the cursor',
      keys: ['Shift Tab'],
      where: `${editing} .jp-InputArea-editor`,
      act: help.explain,
    },
    {
      name: 'leave',
      label: 'Leave the text, command the cell',
      keys: ['Escape'],
      where: editing,
      act: () => (notebook.mode = 'command'),
    },
    {
      name: 'split',
      label: 'Split the cell at the cursor',
      keys: ['Ctrl Shift -'],
      where: editing,
      act: change(NotebookActions.splitCell),
    },
    {
      name: 'edit',
      label: 'Edit the cell',
      keys: ['Enter'],
      where: command,
      act: () => (notebook.mode = 'edit'),
    },
    {
      name: 'above',
      label: 'New cell above',
      keys: ['A'],
      where: command,
      act: change(NotebookActions.insertAbove),
    },
    {
      name: 'below',
      label: 'New cell below',
      keys: ['B'],
      where: command,
      act: change(NotebookActions.insertBelow),
    },
    { name: 'cut', label: 'Cut cells', keys: ['X'], where: command, act: change(NotebookActions.cut) },
    { name: 'copy', label: 'Copy cells', keys: ['C'], where: command, act: change(NotebookActions.copy) },
    {
      name: 'paste',
      label: 'Paste cells below',
      keys: ['V'],
      where: command,
      act: change((n) => NotebookActions.paste(n)),
    },
    {
      name: 'delete',
      label: 'Delete cells',
      keys: ['D D'],
      where: command,
      act: change(NotebookActions.deleteCells),
    },
    {
      name: 'undo',
      label: 'Undo what was done to cells',
      keys: ['Z'],
      where: command,
      act: change(NotebookActions.undo),
    },
    {
      name: 'redo',
      label: 'Do it again',
      keys: ['Shift Z'],
      where: command,
      act: change(NotebookActions.redo),
    },
    {
      name: 'merge',
      label: 'Join the chosen cells',
      keys: ['Shift M'],
      where: command,
      act: change((n) => NotebookActions.mergeCells(n)),
    },
    {
      name: 'move-up',
      label: 'Move the cell up',
      keys: ['Ctrl Shift ArrowUp'],
      where: inNotebook,
      act: change(NotebookActions.moveUp),
    },
    {
      name: 'move-down',
      label: 'Move the cell down',
      keys: ['Ctrl Shift ArrowDown'],
      where: inNotebook,
      act: change(NotebookActions.moveDown),
    },
    { name: 'to-code', label: 'Make it code', keys: ['Y'], where: command, act: type('code') },
    { name: 'to-text', label: 'Make it text', keys: ['M'], where: command, act: type('markdown') },
    { name: 'to-raw', label: 'Make it raw', keys: ['R'], where: command, act: type('raw') },
    {
      name: 'previous',
      label: 'Cell above',
      keys: ['ArrowUp', 'K'],
      where: command,
      act: change(NotebookActions.selectAbove),
    },
    {
      name: 'next',
      label: 'Cell below',
      keys: ['ArrowDown', 'J'],
      where: command,
      act: change(NotebookActions.selectBelow),
    },
    {
      name: 'more-up',
      label: 'Choose the cell above too',
      keys: ['Shift ArrowUp', 'Shift K'],
      where: command,
      act: change((n) => NotebookActions.extendSelectionAbove(n)),
    },
    {
      name: 'more-down',
      label: 'Choose the cell below too',
      keys: ['Shift ArrowDown', 'Shift J'],
      where: command,
      act: change((n) => NotebookActions.extendSelectionBelow(n)),
    },
    {
      name: 'outputs',
      label: 'Hide or show the result',
      keys: ['O'],
      where: command,
      act: change(NotebookActions.toggleOutput),
    },
    {
      name: 'lines',
      label: 'Line numbers',
      keys: ['Shift L'],
      where: command,
      act: change(NotebookActions.toggleAllLineNumbers),
    },
    { name: 'interrupt', label: 'Stop what runs', keys: ['I I'], where: command, act: on.interrupt },
    { name: 'restart', label: 'Restart the kernel', keys: ['0 0'], where: command, act: on.restart },
    { name: 'recipes', label: 'Recipes', keys: ['Accel Shift F'], where: everywhere, act: on.recipes },
    { name: 'keys', label: 'This list of keys', keys: ['H'], where: command, act: on.showKeys },
    ...[1, 2, 3, 4, 5, 6].map((level) => ({
      name: `heading-${level}`,
      label: `Heading of level ${level}`,
      keys: [String(level)],
      where: command,
      act: change((n) => NotebookActions.setMarkdownHeader(n, level)),
    })),
  ];
}

export function bindKeys(list: readonly Action[]): void {
  const commands = new CommandRegistry();
  for (const { name, label, keys, where, act } of list) {
    commands.addCommand(name, { label: label, execute: act });
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

/** How keys are printed here: ⌘ on a Mac, Ctrl elsewhere. */
export function keyWords(key: string): string {
  const mac = /Mac|iPhone|iPad/.test(navigator.platform);
  return key
    .replace('Accel', mac ? '⌘' : 'Ctrl')
    .replace('ArrowUp', '↑')
    .replace('ArrowDown', '↓')
    .replace('Escape', 'Esc')
    .replace(/ /g, ' + ')
    .replace(/^(\S) \+ (\S)$/, '$1, $2');
}
