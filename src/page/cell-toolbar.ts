import { CodeCell } from '@jupyterlab/cells';
import { NotebookActions, type Notebook } from '@jupyterlab/notebook';
import { el, iconButton } from './element.js';
import type { Running } from './cell-running.js';

/** The small row of tools on the active cell. It is moved from cell to cell, so a notebook of a thousand cells has one. */
export function cellToolbar(notebook: Notebook, running: Running, addNote: (cellId: string) => void): void {
  const note = iconButton(
    'note',
    'Add the result to the build notes',
    () => {
      const cell = notebook.activeCell;
      if (cell) addNote(cell.model.id);
    },
    { words: 'Note' },
  );
  const kind = iconButton('edit', 'Edit this text', () => {
    const cell = notebook.activeCell;
    if (cell?.model.type !== 'markdown') return;
    notebook.mode = 'edit';
    (cell as unknown as { rendered: boolean }).rendered = false;
  });
  const row = el(
    'div',
    { class: 'cell-tools', role: 'toolbar', 'aria-label': 'This cell' },
    iconButton('run', 'Run this cell', running.run, { keys: 'Ctrl + Enter' }),
    kind,
    note,
    iconButton('up', 'Move up', () => NotebookActions.moveUp(notebook)),
    iconButton('down', 'Move down', () => NotebookActions.moveDown(notebook)),
    iconButton('plus', 'New cell below', () => NotebookActions.insertBelow(notebook), { keys: 'B' }),
    iconButton('bin', 'Delete this cell', () => deleteCell(notebook), { keys: 'D, D' }),
  );
  // The notebook takes the focus on a press inside it; the row's own buttons must keep their click.
  for (const name of ['mousedown', 'pointerdown', 'dblclick', 'keydown'])
    row.addEventListener(name, (event) => event.stopPropagation());
  const place = (): void => {
    const cell = notebook.activeCell;
    if (!cell) {
      row.remove();
      return;
    }
    if (row.parentElement !== cell.node) cell.node.append(row);
    const hasResult = cell instanceof CodeCell && cell.model.outputs.length > 0;
    note.hidden = !hasResult;
    kind.hidden = cell.model.type !== 'markdown';
  };
  notebook.activeCellChanged.connect(place);
  NotebookActions.executed.connect(place);
  notebook.modelContentChanged.connect(place);
  place();
}

/** The next cell takes the focus, so that Ctrl + Z brings the deleted one back. */
function deleteCell(notebook: Notebook): void {
  NotebookActions.deleteCells(notebook);
  notebook.mode = 'command';
  notebook.activate();
}
