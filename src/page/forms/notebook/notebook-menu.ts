import { tell } from '../../dialog.js';
import type { NotebookFile } from '../../notebook-client.js';
import { el } from '../../element.js';
import { download, messageOf, server } from '../../server-api.js';

const forms = [
  ['handout', 'Handout with live answers', 'handout.html'],
  ['answers', 'Answers to its exercises', 'answers.html'],
  ['page', 'Page to read', 'page.html'],
  ['md', 'Markdown', 'md'],
] as const;

/** The whole notebook in another form, as it stands on the page with its results. */
export function notebookMenu(file: NotebookFile, notes: () => void): HTMLElement {
  const menu = el('details', { class: 'menu' }, el('summary', { class: 'button small' }, 'Save as…'));
  const save = async (form: string, ending: string): Promise<void> => {
    const name = (file.path.split('/').at(-1) ?? 'notebook').replace(/\.ipynb$/, '');
    try {
      const text = await server.postForText('/reckoner/export', { form, content: file.model.toJSON() });
      download(
        `${name}${ending === 'md' ? '.md' : `-${ending}`}`,
        text,
        ending === 'md' ? 'text/markdown' : 'text/html',
      );
    } catch (error) {
      tell(messageOf(error), 10);
    }
  };
  const item = (words: string, act: () => void): HTMLElement =>
    el(
      'button',
      {
        type: 'button',
        class: 'menu-item',
        onclick: () => {
          menu.open = false;
          act();
        },
      },
      words,
    );
  menu.append(
    el(
      'div',
      { class: 'menu-items' },
      ...forms.map(([form, words, ending]) => item(words, () => void save(form, ending))),
      item('Build notes…', notes),
    ),
  );
  menu.addEventListener('keydown', (event) => {
    if (event.key === 'Escape') menu.open = false;
  });
  menu.addEventListener('focusout', (event) => {
    if (!(event.relatedTarget instanceof Node) || !menu.contains(event.relatedTarget)) menu.open = false;
  });
  return menu;
}
