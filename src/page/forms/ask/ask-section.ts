import { tell } from '../../dialog.js';
import { el } from '../../element.js';
import type { ListedNotebook } from '../../notebook-row.js';
import { backend } from '../../backend.js';
import { messageOf } from '../../server-api.js';
import type { GlossaryWord } from '../model/glossary-word.js';
import type { RecipeModel } from '../model/recipe-model.js';
import { recipeClient } from '../recipe-client.js';
import { readShop } from '../shop/shop-client.js';
import { shopPage } from '../shop/shop-page.js';
import { surveyPage } from '../survey/survey-page.js';
import { commonest } from '../worker/questions.js';
import { awaitedQuestions, questionItem, topicLists } from './question-list.js';
import { QuestionPage } from './question-page.js';
import { SearchBox } from './search-box.js';
import { searchedQuestions, searchedWords, type Found, type Searched } from './search-questions.js';
import { understand } from './understand.js';
import { explainWord } from './word-dialog.js';

export const questionAddress = (recipe: string): string => `#question=${recipe}`;
const recipeOf = (hash: string): string => /^#question=(\w+)$/.exec(hash)?.[1] ?? '';

/** "What do you want to know?" on the first page: the search, the questions asked most, and what is open of them. */
export class AskSection {
  readonly node: HTMLElement;
  readonly #list = el('ul', { class: 'questions' }, ...awaitedQuestions());
  readonly #all = el('details', { class: 'all-questions' }, el('summary', {}, 'All questions by topic'));
  readonly #front: HTMLElement;
  readonly #place = el('div', { class: 'question-place', hidden: true });
  readonly #search: SearchBox;
  #models: ReadonlyMap<string, RecipeModel> = new Map();
  #questions: Searched[] = [];
  #notebooks: Searched[] = [];
  #words: readonly GlossaryWord[] = [];
  #searchedWords: Searched[] = [];
  #typed = '';
  #opened: string | undefined;
  #isLoading = true;
  #survey: string | undefined;

  /** `acts` stand in the row of buttons, above all that comes later. */
  constructor(
    private readonly app: HTMLElement,
    acts: readonly HTMLElement[],
  ) {
    this.#search = new SearchBox({
      id: 'ask',
      placeholder: 'How much will a 640 mm pine top shrink?',
      all: () => [...this.#questions, ...this.#notebooks, ...this.#searchedWords],
      open: (found, words) => this.#open(found, words),
      isReady: () => !this.#isLoading,
    });
    this.#front = el(
      'div',
      { class: 'ask-front' },
      el('h2', {}, el('label', { for: 'ask' }, 'What do you want to know?')),
      this.#search.node,
      el(
        'p',
        { class: 'ask-links' },
        el('a', { href: '#shop', class: 'button small' }, 'My shop'),
        el('a', { href: '#survey', class: 'button small' }, 'Bring in a survey'),
        ...acts,
      ),
      el('h3', {}, 'Asked most often'),
      this.#list,
      this.#all,
    );
    this.node = el('div', { class: 'ask-section' }, this.#front, this.#place);
    addEventListener('hashchange', () => void this.#show());
    addEventListener('keydown', (event) => this.#onKey(event));
    void this.#load();
  }

  setNotebooks(listed: readonly ListedNotebook[]): void {
    this.#notebooks = listed.map(searchedNotebook);
    this.#search.refresh();
  }

  async #load(): Promise<void> {
    try {
      this.#models = await recipeClient.models();
    } catch (error) {
      this.#list.replaceChildren(el('li', { class: 'problem' }, messageOf(error)));
      tell(messageOf(error), 10);
      return;
    } finally {
      this.#isLoading = false;
    }
    this.#questions = searchedQuestions(this.#models.values());
    this.#list.replaceChildren(...commonest.flatMap((name) => questionItem(this.#models.get(name))));
    this.#all.append(...topicLists([...this.#models.values()]));
    // What was typed while the questions were on their way is looked up now.
    this.#search.refresh();
    // The questions do not wait for the glossary.
    void this.#loadWords();
    // A page that needs no recipes may be open already, with something typed in it.
    if (this.#opened !== location.hash) await this.#show();
  }

  async #loadWords(): Promise<void> {
    try {
      this.#words = await recipeClient.ask('words', null);
      this.#searchedWords = searchedWords(this.#words);
      this.#search.refresh();
    } catch (error) {
      tell(messageOf(error), 10);
    }
  }

  #open(found: Found, words: string): void {
    this.#typed = words;
    const word = this.#words.find(({ term }) => found.kind === 'word' && term === found.target);
    if (found.kind === 'notebook') location.href = backend.notebookAddress(found.target);
    else if (word !== undefined) void explainWord(word, this.#models);
    else location.hash = questionAddress(found.target);
  }

  async #show(): Promise<void> {
    const page = await this.#page();
    this.app.classList.toggle('asking', page !== undefined);
    this.#front.hidden = page !== undefined;
    this.#place.hidden = page === undefined;
    document.title = page === undefined ? "Joiner's Reckoner" : `${page.title} · Joiner's Reckoner`;
    this.#place.replaceChildren(...(page === undefined ? [] : [page.element]));
    if (page === undefined) return;
    scrollTo(0, 0);
    page.begin?.();
  }

  /** What the address asks for; undefined for the first page itself. */
  async #page(): Promise<{ title: string; element: HTMLElement; begin?: () => void } | undefined> {
    this.#opened = /^#(shop|survey)$/.test(location.hash) ? location.hash : undefined;
    if (location.hash === '#shop') return { title: 'My shop', element: await shopPage() };
    if (location.hash === '#survey') {
      const element = surveyPage((file) => {
        this.#survey = file;
        location.hash = questionAddress('topFromPile');
      });
      return { title: 'Bring in a survey', element };
    }
    const model = this.#models.get(recipeOf(location.hash));
    if (model === undefined) return undefined;
    const words = this.#typed;
    const boards = this.#survey === undefined ? {} : { boards: this.#survey };
    this.#typed = '';
    this.#survey = undefined;
    const [shop, understood] = await Promise.all([readShop(), understoodIn(words, model)]);
    const given = { ...understood, ...boards };
    const page = new QuestionPage({ model, recipes: this.#models, given, shop });
    return { title: model.question, element: page.element, begin: () => page.begin() };
  }

  #onKey(event: KeyboardEvent): void {
    const isText = event.target instanceof HTMLElement && event.target.matches('input, textarea, select');
    if (event.key !== '/' || isText || this.#front.hidden) return;
    event.preventDefault();
    this.#search.input.focus();
  }
}

/** Sizes and timbers of the typed question; the list of timbers is only asked for where the recipe takes one. */
async function understoodIn(words: string, model: RecipeModel): Promise<Readonly<Record<string, unknown>>> {
  if (words.trim() === '') return {};
  const field = model.inputs.find(({ kind }) => kind === 'timber');
  const timbers =
    field === undefined ? [] : await recipeClient.ask('names', { recipe: model.name, path: [field.name] });
  return understand(words, model, timbers);
}

const searchedNotebook = ({ path, title, summary }: ListedNotebook): Searched => ({
  kind: 'notebook',
  title,
  detail: summary,
  target: path,
  texts: [
    [5, title],
    [2, summary],
  ],
});
