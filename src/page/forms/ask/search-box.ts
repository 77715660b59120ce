import { el } from '../../element.js';
import { search, type Found, type Searched } from './search-questions.js';

/** The one search: questions, chapters and words of the trade. Enter opens the first or the one chosen by the arrows. */
export function searchBox(options: {
  readonly id: string;
  readonly placeholder: string;
  readonly all: () => readonly Searched[];
  readonly open: (found: Found, typed: string) => void;
}): { readonly node: HTMLElement; readonly input: HTMLInputElement } {
  const { id, placeholder, all, open } = options;
  const listId = `${id}-found`;
  const input = el('input', {
    id,
    type: 'search',
    placeholder,
    role: 'combobox',
    'aria-expanded': 'false',
    'aria-controls': listId,
    'aria-autocomplete': 'list',
    autocomplete: 'off',
    spellcheck: 'false',
    enterkeyhint: 'go',
  });
  const list = el('ul', { id: listId, class: 'found', role: 'listbox', 'aria-label': 'Found', hidden: true });
  const status = el('p', { class: 'says nothing-found', role: 'status' });
  let found: readonly Found[] = [];
  let at = 0;
  const choose = (i: number): void => {
    at = i;
    for (const [j, item] of [...list.children].entries()) item.setAttribute('aria-selected', String(i === j));
    const chosen = list.children[i];
    if (chosen === undefined) input.removeAttribute('aria-activedescendant');
    else input.setAttribute('aria-activedescendant', chosen.id);
  };
  const show = (): void => {
    found = search(input.value, all());
    list.hidden = found.length === 0;
    input.setAttribute('aria-expanded', String(found.length > 0));
    list.replaceChildren(
      ...found.map((thing, i) => foundItem(thing, `${listId}-${i}`, () => open(thing, input.value))),
    );
    status.textContent =
      found.length === 0 && input.value.trim().length > 2
        ? 'Nothing found for that. Try another word: move, strips, clamps, sag, glue, cost.'
        : '';
    choose(0);
  };
  input.addEventListener('input', show);
  input.addEventListener('keydown', (event) => {
    const chosen = found[at];
    if (event.key === 'ArrowDown') choose(Math.min(at + 1, found.length - 1));
    else if (event.key === 'ArrowUp') choose(Math.max(at - 1, 0));
    else if (event.key === 'Enter' && chosen !== undefined) open(chosen, input.value);
    else if (event.key === 'Escape') {
      input.value = '';
      show();
    } else return;
    event.preventDefault();
  });
  return { node: el('div', { class: 'ask-box', role: 'search' }, input, list, status), input };
}

const kindWords = { question: '', notebook: 'chapter', word: 'word' } as const;

function foundItem(thing: Found, id: string, open: () => void): HTMLElement {
  return el(
    'li',
    { id, role: 'option', 'aria-selected': 'false', onclick: open },
    el('strong', {}, thing.title),
    el(
      'span',
      { class: 'says' },
      [thing.detail, kindWords[thing.kind]].filter((text) => text !== '').join(' · '),
    ),
  );
}
