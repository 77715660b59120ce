import { dropMenu } from '../../drop-menu.js';
import type { NotebookFile } from '../../notebook-client.js';
import { download, server } from '../../server-api.js';

const forms = [
  ['handout', 'Handout with live answers', 'handout.html'],
  ['answers', 'Answers to its exercises', 'answers.html'],
  ['page', 'Page to read', 'page.html'],
  ['md', 'Markdown', 'md'],
] as const;

/** The whole notebook in another form, as it stands on the page with its results. */
export function notebookMenu(file: NotebookFile, notes: () => void): HTMLElement {
  const save = async (form: string, ending: string): Promise<void> => {
    const name = (file.path.split('/').at(-1) ?? 'notebook').replace(/\.ipynb$/, '');
    const text = await server.postForText('/reckoner/export', { form, content: file.model.toJSON() });
    const isText = ending === 'md';
    download(`${name}${isText ? '.md' : `-${ending}`}`, text, isText ? 'text/markdown' : 'text/html');
  };
  return dropMenu('Save as…', 'button small', [
    ...forms.map(([form, words, ending]) => ({ words, act: () => save(form, ending) })),
    { words: 'Build notes…', act: notes },
  ]);
}
