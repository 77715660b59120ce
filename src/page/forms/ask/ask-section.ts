import { tell } from '../../dialog.js';
import { el } from '../../element.js';
import type { ListedNotebook } from '../../notebook-row.js';
import { messageOf, notebookAddress } from '../../server-api.js';
import type { RecipeModel } from '../model/recipe-model.js';
import { recipeClient } from '../recipe-client.js';
import { commonest } from '../worker/questions.js';
import { shopPage } from '../shop/shop-page.js';
import { readShop } from '../shop/shop-client.js';
import { surveyPage } from '../survey/survey-page.js';
import { QuestionPage } from './question-page.js';
import { searchBox } from './search-box.js';
import { searchedQuestions, type Found, type Searched } from './search-questions.js';
import { understand } from './understand.js';

const address = (recipe: string): string => `#question=${recipe}`;
const recipeOf = (hash: string): string | undefined => /^#question=(\w+)$/.exec(hash)?.[1];

/** "What do you want to know?" on the first page: the search, the questions asked most, and the one that is open. */
export function askSection(app: HTMLElement): {
  readonly node: HTMLElement;
  readonly setNotebooks: (notebooks: readonly ListedNotebook[]) => void;
} {
  let models: ReadonlyMap<string, RecipeModel> = new Map();
  let questions: Searched[] = [];
  let notebooks: Searched[] = [];
  let typed = '';
  let fromSurvey: string | undefined;
  const open = (found: Found, words: string): void => {
    typed = words;
    if (found.kind === 'notebook') location.href = notebookAddress(found.target);
    else location.hash = address(found.target);
  };
  const box = searchBox({
    id: 'ask',
    placeholder: 'How much will a 640 mm pine top shrink?',
    all: () => [...questions, ...notebooks],
    open,
  });
  const list = el('ul', { class: 'questions' }, el('li', { class: 'says' }, 'Opening the questions…'));
  const front = el(
    'div',
    { class: 'ask-front' },
    el('h2', {}, el('label', { for: 'ask' }, 'What do you want to know?')),
    box.node,
    el(
      'p',
      { class: 'ask-links' },
      el('a', { href: '#shop', class: 'button small' }, 'My shop'),
      el('a', { href: '#survey', class: 'button small' }, 'Bring in a survey'),
    ),
    el('h3', {}, 'Asked most often'),
    list,
    el('details', { class: 'all-questions' }, el('summary', {}, 'All questions by topic')),
  );
  const place = el('div', { class: 'question-place', hidden: true });
  const show = async (): Promise<void> => {
    const model = models.get(recipeOf(location.hash) ?? '');
    const isShop = location.hash === '#shop';
    const isSurvey = location.hash === '#survey';
    const isOpen = model !== undefined || isShop || isSurvey;
    app.classList.toggle('asking', isOpen);
    front.hidden = isOpen;
    place.hidden = !isOpen;
    if (isSurvey)
      return showPage(
        place,
        'Bring in a survey',
        surveyPage((file) => {
          fromSurvey = file;
          location.hash = address('topFromPile');
        }),
      );
    if (isShop) return showPage(place, 'My shop', await shopPage());
    if (model === undefined) return place.replaceChildren();
    const words = typed;
    typed = '';
    const [shop, given] = await Promise.all([readShop(), understoodIn(words, model)]);
    const boards = fromSurvey === undefined ? {} : { boards: fromSurvey };
    fromSurvey = undefined;
    const page = new QuestionPage({ model, recipes: models, given: { ...given, ...boards }, shop });
    showPage(place, model.question, page.element);
    page.begin();
  };
  addEventListener('hashchange', () => void show());
  recipeClient.models().then(
    (read) => {
      models = read;
      questions = searchedQuestions(models.values());
      list.replaceChildren(...commonest.flatMap((name) => questionItem(models.get(name))));
      front.querySelector('.all-questions')?.append(...topicLists(models));
      void show();
    },
    (error: unknown) => {
      list.replaceChildren(el('li', { class: 'problem' }, messageOf(error)));
      tell(messageOf(error), 10);
    },
  );
  addEventListener('keydown', (event) => {
    const isText = event.target instanceof HTMLElement && event.target.matches('input, textarea, select');
    if (event.key !== '/' || isText || front.hidden) return;
    event.preventDefault();
    box.input.focus();
  });
  return {
    node: el('div', { class: 'ask-section' }, front, place),
    setNotebooks: (listed) => (notebooks = listed.map(searchedNotebook)),
  };
}

function showPage(place: HTMLElement, title: string, page: HTMLElement): void {
  place.replaceChildren(page);
  scrollTo(0, 0);
  document.title = `${title} · Joiner's Reckoner`;
}

/** Sizes and timbers of the typed question; the list of timbers is only asked for where the recipe takes one. */
async function understoodIn(words: string, model: RecipeModel): Promise<Readonly<Record<string, unknown>>> {
  if (!/\d|\p{L}/u.test(words)) return {};
  const field = model.inputs.find(({ kind }) => kind === 'timber');
  const timbers =
    field === undefined ? [] : await recipeClient.ask('names', { recipe: model.name, path: [field.name] });
  return understand(words, model, timbers);
}

function questionItem(model: RecipeModel | undefined): HTMLElement[] {
  if (model === undefined) return [];
  const needed = model.inputs.filter(({ optional }) => !optional).length;
  const count =
    needed === 0 ? model.title : `${model.title} · ${needed} ${needed === 1 ? 'value' : 'values'} to fill in`;
  return [
    el(
      'li',
      {},
      el(
        'a',
        { href: address(model.name), 'data-question': model.name },
        el('strong', {}, model.question),
        el('span', { class: 'says' }, count),
      ),
    ),
  ];
}

function topicLists(models: ReadonlyMap<string, RecipeModel>): HTMLElement[] {
  const topics = [...new Set([...models.values()].map(({ topic }) => topic))];
  return topics.flatMap((topic) => [
    el('h4', {}, topic.charAt(0).toUpperCase() + topic.slice(1)),
    el(
      'ul',
      { class: 'questions' },
      ...[...models.values()].filter((model) => model.topic === topic).flatMap(questionItem),
    ),
  ]);
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
