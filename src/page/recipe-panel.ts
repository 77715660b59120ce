import type { RecipeCard } from '../server/recipe-list.js';
import type { Panel } from './side-panel.js';
import { backend } from './backend.js';
import { el, icon } from './element.js';
import { formulaNode } from './math-typesetter.js';
import { server } from './server-api.js';
import { capitalised } from '../units/capitalised.js';

/** Recipes by topic and word: what each takes and gives, its formula and sources, and one press that puts a ready cell into the notebook. */
export function recipePanel(insert: (code: string) => void, fillIn: (recipe: string) => void): Panel {
  const search = el('input', {
    type: 'search',
    placeholder: 'A word: width, glue, sag …',
    'aria-label': 'Search recipes',
    spellcheck: 'false',
  });
  const list = el('div', { class: 'recipe-list' });
  const node = el('div', { class: 'part recipes' }, search, list);
  let cards: readonly RecipeCard[] | undefined;

  const show = (): void => {
    const words = search.value.toLowerCase().split(/\s+/).filter(Boolean);
    const found = (cards ?? [])
      .map((card) => ({ card, rank: rankOf(card, words) }))
      .filter(({ rank }) => rank > 0);
    if (words.length > 0) found.sort((a, b) => b.rank - a.rank);
    const topics = [...new Set(found.map(({ card }) => card.topic))];
    const open = found.length === 1;
    list.replaceChildren(
      ...(found.length === 0
        ? [
            el(
              'p',
              { class: 'says' },
              cards === undefined ? 'Reading the recipes…' : `No recipe matches "${search.value}".`,
            ),
          ]
        : []),
      ...topics.flatMap((topic) => [
        el('h3', {}, capitalised(topic)),
        ...found
          .filter(({ card }) => card.topic === topic)
          .map(({ card }) => cardNode(card, insert, fillIn, open)),
      ]),
    );
  };
  search.addEventListener('input', show);
  return {
    name: 'recipes',
    words: 'Recipes',
    node,
    opened() {
      if (matchMedia('(min-width: 700px)').matches) search.focus();
      if (cards !== undefined) return;
      show();
      server.get<RecipeCard[]>('/reckoner/recipes').then(
        (read) => {
          cards = read;
          show();
        },
        (error: unknown) =>
          list.replaceChildren(
            el('p', { class: 'problem' }, error instanceof Error ? error.message : String(error)),
          ),
      );
    },
  };
}

/** How well a recipe fits the words: title counts most; 0 when one of them is found nowhere. */
function rankOf(card: RecipeCard, words: readonly string[]): number {
  const fields: [number, string][] = [
    [8, card.title],
    [8, card.name],
    [4, card.topic],
    [3, card.about],
    [2, card.inputs.map((field) => `${field.name} ${field.label} ${field.help}`).join(' ')],
    [2, card.outputs.map((field) => `${field.name} ${field.label}`).join(' ')],
    [2, card.also],
    [1, card.sources.join(' ')],
  ];
  let sum = 1;
  for (const word of words) {
    const rank = Math.max(
      0,
      ...fields.map(([weight, text]) => (text.toLowerCase().includes(word) ? weight : 0)),
    );
    if (rank === 0) return 0;
    sum += rank;
  }
  return sum;
}

function cardNode(
  card: RecipeCard,
  insert: (code: string) => void,
  fillIn: (recipe: string) => void,
  open: boolean,
): HTMLElement {
  const detail = el('div', { class: 'recipe-detail' });
  const node = el(
    'details',
    { class: 'recipe', 'data-recipe': card.name, ...(open ? { open: true } : {}) },
    el('summary', {}, el('strong', {}, card.title), el('code', {}, card.name)),
    detail,
  );
  const fill = (): void => {
    if (detail.childElementCount === 0) detail.append(...detailNodes(card, insert, fillIn));
  };
  if (open) fill();
  node.addEventListener('toggle', () => {
    if (node.open) fill();
  });
  return node;
}

function detailNodes(
  card: RecipeCard,
  insert: (code: string) => void,
  fillIn: (recipe: string) => void,
): HTMLElement[] {
  const add = { type: 'button', class: 'button', 'data-insert': card.name };
  const fill = { type: 'button', class: 'button first', 'data-fill': card.name };
  return [
    el('p', {}, card.about),
    el('button', { ...fill, onclick: () => fillIn(card.name) }, icon('edit'), 'Fill in its form'),
    el('button', { ...add, onclick: () => insert(card.cell) }, icon('plus'), 'Put a cell into the notebook'),
    el('p', {}, el('a', referenceLink(card.name), 'Reference page')),
    el('h4', {}, 'Takes'),
    el(
      'dl',
      {},
      ...card.inputs.flatMap((field) => [
        el('dt', {}, el('code', {}, field.name), field.note === '' ? undefined : el('em', {}, field.note)),
        el(
          'dd',
          {},
          field.help === '' ? field.label : field.help,
          el('span', { class: 'takes' }, field.expects),
        ),
      ]),
    ),
    el('h4', {}, 'Gives'),
    el(
      'dl',
      {},
      ...card.outputs.flatMap((field) => [
        el('dt', {}, el('code', {}, field.name)),
        el('dd', {}, field.label),
      ]),
    ),
    ...section(card.formulas.length === 1 ? 'Formula' : 'Formulas', card.formulas.map(formulaLine)),
    ...section('Sources', sourceList(card.sources)),
  ];
}

/** A link to the page that holds all there is to know of a recipe, beside the notebook. */
const referenceLink = (recipe: string): Record<string, string> => ({
  href: backend.referenceAddress(recipe),
  target: '_blank',
  rel: 'noopener',
  'data-reference': recipe,
});

/** A heading over its nodes; nothing where there are none. */
const section = (title: string, nodes: readonly HTMLElement[]): HTMLElement[] =>
  nodes.length === 0 ? [] : [el('h4', {}, title), ...nodes];

const formulaLine = (formula: RecipeCard['formulas'][number]): HTMLElement =>
  el(
    'div',
    { class: 'formula' },
    formulaNode(formula.latex, true),
    el('span', { class: 'takes' }, formula.label),
  );

const sourceList = (sources: readonly string[]): HTMLElement[] =>
  sources.length === 0
    ? []
    : [el('ul', { class: 'sources' }, ...sources.map((source) => el('li', {}, source)))];
