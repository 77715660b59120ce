import { kernelMetadata } from '../kernel/kernel-identity.js';
import { FieldFault, notebookFrom } from '../notebook/format/parse-notebook.js';
import { notebookText, parseNotebook } from '../notebook/format/notebook-json.js';
import { NotebookError, type Cell, type Json, type Notebook } from '../notebook/format/notebook.js';
import { HttpError } from './http-error.js';

/** A notebook of no cells, as a new file starts. */
export const emptyNotebook: Notebook = {
  cells: [],
  metadata: kernelMetadata,
  nbformat: 4,
  nbformat_minor: 5,
};

/**
 * Reads the text of an .ipynb for the page. A broken one gives a 422 that names line, cell and field; the file stays as it is. What a
 * file says of its own trust is dropped: only what was run in this page, or what the person trusts by hand, is trusted.
 */
export function notebookForPage(text: string, name: string): Notebook {
  try {
    return withoutTrust(parseNotebook(text, name));
  } catch (error) {
    if (error instanceof NotebookError)
      throw new HttpError(422, `${error.message}. The file was left as it is.`);
    throw error;
  }
}

/** The text to put on disk for what a client sent. A wrong field gives a 400 that names it, and nothing is written. */
export function notebookForDisk(value: unknown): string {
  try {
    return notebookText(withoutTrust(notebookFrom(value as Json)));
  } catch (error) {
    if (!(error instanceof FieldFault)) throw error;
    const field = error.path.length === 0 ? 'content' : `content.${error.path.join('.')}`;
    throw new HttpError(400, `${field}: ${error.complaint}. Nothing was saved.`);
  }
}

function withoutTrust(notebook: Notebook): Notebook {
  const cells = notebook.cells.map((cell): Cell => {
    const { trusted: _dropped, ...metadata } = cell.metadata;
    return { ...cell, metadata };
  });
  return { ...notebook, cells };
}
