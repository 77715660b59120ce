import { el } from '../../element.js';
import { search, type Found, type Searched } from './search-questions.js';

interface SearchOptions {
  readonly id: string;
  readonly placeholder: string;
  readonly all: () => readonly Searched[];
  readonly open: (found: Found, typed: string) => void;
  /** False while what is searched is on its way: Enter then waits for it. */
  readonly isReady: () => boolean;
}

/** The one search: questions, chapters and words of the trade. Enter opens the first or the one chosen by the arrows. */
export class SearchBox {
  readonly node: HTMLElement;
  readonly input: HTMLInputElement;
  readonly #list: HTMLElement;
  readonly #status = el('p', { class: 'says nothing-found', role: 'status' });
  #found: readonly Found[] = [];
  #at = 0;
  #isEnterWaiting = false;

  constructor(private readonly options: SearchOptions) {
    const { id, placeholder } = options;
    const listId = `${id}-found`;
    this.input = el('input', {
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
    this.#list = el('ul', {
      id: listId,
      class: 'found',
      role: 'listbox',
      'aria-label': 'Found',
      hidden: true,
    });
    this.node = el('div', { class: 'ask-box', role: 'search' }, this.input, this.#list, this.#status);
    this.input.addEventListener('input', () => {
      this.#isEnterWaiting = false;
      this.#show();
    });
    this.input.addEventListener('keydown', (event) => this.#onKey(event));
  }

  /** To be called when what can be found has changed: the choice stays on what it was on. */
  refresh(): void {
    const chosen = this.#found[this.#at];
    this.#show();
    const isChosen = ({ kind, target }: Found): boolean => kind === chosen?.kind && target === chosen.target;
    this.#choose(Math.max(this.#found.findIndex(isChosen), 0));
    if (this.#isEnterWaiting) this.#enter();
  }

  clear(): void {
    this.input.value = '';
    this.#show();
  }

  #choose(at: number): void {
    this.#at = at;
    const items = [...this.#list.children];
    for (const [i, item] of items.entries()) item.setAttribute('aria-selected', String(i === at));
    const chosen = items[at];
    if (chosen === undefined) this.input.removeAttribute('aria-activedescendant');
    else this.input.setAttribute('aria-activedescendant', chosen.id);
  }

  #show(): void {
    const { open, all, isReady } = this.options;
    this.#found = search(this.input.value, all());
    const isEmpty = this.#found.length === 0;
    this.#list.hidden = isEmpty;
    this.input.setAttribute('aria-expanded', String(!isEmpty));
    this.#list.replaceChildren(
      ...this.#found.map((thing, i) =>
        foundItem(thing, `${this.#list.id}-${i}`, () => open(thing, this.input.value)),
      ),
    );
    this.#status.textContent =
      isEmpty && isReady() && this.input.value.trim().length > 2
        ? 'Nothing found for that. Try another word: move, strips, clamps, sag, glue, cost.'
        : '';
    this.#choose(0);
  }

  #enter(): void {
    const chosen = this.#found[this.#at];
    this.#isEnterWaiting = !this.options.isReady();
    if (!this.#isEnterWaiting && chosen !== undefined) this.options.open(chosen, this.input.value);
  }

  #onKey(event: KeyboardEvent): void {
    if (event.key === 'ArrowDown') this.#choose(Math.min(this.#at + 1, this.#found.length - 1));
    else if (event.key === 'ArrowUp') this.#choose(Math.max(this.#at - 1, 0));
    else if (event.key === 'Enter') this.#enter();
    else if (event.key === 'Escape') this.clear();
    else return;
    event.preventDefault();
  }
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
