import { readFile } from 'node:fs/promises';
import { FileError, reason, writeFileAtomically } from '../../notes/atomic-write.js';
import { lineAndColumn, notebookText, parseNotebook } from './notebook-json.js';
import { NotebookError, type Notebook } from './notebook.js';

/** Reads a notebook file. Throws {@link NotebookError}, or {@link FileError} when the file cannot be read. */
export async function readNotebook(path: string): Promise<Notebook> {
  const bytes = await readFile(path).catch((error: unknown) => {
    throw new FileError(path, `could not be read: ${reason(error, 'read')}`);
  });
  return parseNotebook(decode(bytes, path), path);
}

/** Writes a notebook in nbformat 4.5, whole or not at all. Throws {@link NotebookError} when it is no valid notebook, {@link FileError}. */
export async function writeNotebook(path: string, notebook: Notebook): Promise<void> {
  const text = notebookText(notebook);
  parseNotebook(text, path); // nothing is written that could not be read again
  await writeFileAtomically(path, text);
}

function decode(bytes: Uint8Array, file: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    const loose = new TextDecoder('utf-8').decode(bytes);
    const at = Math.max(0, loose.indexOf('\uFFFD'));
    const wide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
    throw new NotebookError(
      { file, ...lineAndColumn(loose, at), field: '' },
      wide
        ? 'is UTF-16 text; save it as UTF-8'
        : 'a byte here is not UTF-8 text; the file is damaged or no notebook',
    );
  }
}
