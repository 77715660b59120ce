import { FieldFault, notebookFrom } from '../notebook/format/parse-notebook.js';
import { handout } from '../notebook/handout/handout.js';
import { notebookToHtml } from '../notebook/export/notebook-html.js';
import { inlinePicture, notebookToMarkdown } from '../notebook/export/notebook-markdown.js';
import { quoted } from '../notebook/format/notebook.js';
import { FileError } from '../notes/atomic-write.js';
import { HttpError } from './http-error.js';
import type { Response } from './router.js';

const html = { 'Content-Type': 'text/html; charset=utf-8', 'Content-Disposition': 'attachment' };

/** Writes a notebook as the page holds it in another form: `{form: 'page' | 'handout' | 'answers' | 'md', content}`. Nothing is stored here. */
export async function exportPage(wish: Record<string, unknown>, folder: string): Promise<Response> {
  const { form, content } = wish;
  if (form !== 'page' && form !== 'handout' && form !== 'answers' && form !== 'md')
    throw new HttpError(400, `form: takes page, handout, answers or md, got ${quoted(form)}`);
  if (typeof content !== 'object' || content === null) throw new HttpError(400, 'content: takes a notebook');
  try {
    const notebook = notebookFrom(content as Parameters<typeof notebookFrom>[0]);
    if (form === 'page') return { headers: html, body: await notebookToHtml(notebook) };
    // Pictures go into the text itself: one file is easier to carry than a folder.
    if (form === 'md')
      return {
        headers: { 'Content-Type': 'text/markdown; charset=utf-8' },
        body: await notebookToMarkdown(notebook, inlinePicture),
      };
    const made = await handout(notebook, { cwd: folder });
    return { headers: html, body: form === 'handout' ? made.page : made.answers };
  } catch (error) {
    if (error instanceof FileError || error instanceof FieldFault) throw new HttpError(400, error.message);
    throw error;
  }
}
