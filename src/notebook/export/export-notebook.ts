import { basename, dirname, extname, join } from 'node:path';
import { FileError, makeFolder, writeFileAtomically } from '../../notes/atomic-write.js';
import { writeNotebook } from '../format/notebook-file.js';
import type { Notebook } from '../format/notebook.js';

/** The endings a notebook can be saved with. */
export const notebookEndings: readonly string[] = ['.ipynb', '.html', '.md'];

/**
 * Saves a notebook by the ending of `file`: as a notebook, as one page, or as Markdown with its pictures in the folder
 * `NAME-pictures` beside it. Whole or not at all. Throws {@link FileError}.
 */
export async function saveNotebookAs(file: string, notebook: Notebook): Promise<void> {
  const ending = extname(file).toLowerCase();
  // Each form loads what it needs: a page its typesetting, a notebook nothing.
  if (ending === '.ipynb') return writeNotebook(file, notebook);
  if (ending === '.html')
    return writeFileAtomically(file, await (await import('./notebook-html.js')).notebookToHtml(notebook));
  if (ending !== '.md') throw new FileError(file, `takes a name that ends in ${notebookEndings.join(', ')}`);
  const { notebookToMarkdown } = await import('./notebook-markdown.js');
  const folder = `${basename(file, extname(file))}-pictures`;
  const pictures = new Map<string, string | Uint8Array>();
  const text = await notebookToMarkdown(notebook, (content, name) => {
    pictures.set(name, content);
    return `${encodeURI(folder)}/${encodeURI(name)}`;
  });
  if (pictures.size > 0) await makeFolder(join(dirname(file), folder));
  for (const [name, content] of pictures)
    await writeFileAtomically(join(dirname(file), folder, name), content);
  await writeFileAtomically(file, text);
}
