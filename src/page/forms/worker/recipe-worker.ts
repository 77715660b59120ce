import type { AnyRecipe } from '../../../engine/any-recipe.js';
import { setUnits, unitSystems } from '../../../units/unit-system.js';
import { catalogue } from '../../../recipes/catalogue.js';
import { glossary, recipesUsing } from '../../../recipes/glossary.js';
import type { AnswerOf, AskOf, ReplyMessage, RequestKind, RequestMessage } from '../model/worker-messages.js';
import { calculate, detailsOf } from './calculate.js';
import { figuresOf } from './figures.js';
import { readSurvey } from './read-survey.js';
import { namesFor, recipeModel } from './recipe-models.js';
import { checkShop, shopModel } from './shop-model.js';
import { Resolver } from './resolve.js';
import { tryValues } from './try-values.js';

/** Runs the recipes beside the page: a long search never holds up what is typed. */
const recipes: ReadonlyMap<string, AnyRecipe> = new Map(catalogue.map((recipe) => [recipe.name, recipe]));

const handlers: { [K in RequestKind]: (ask: AskOf<K>) => AnswerOf<K> | Promise<AnswerOf<K>> } = {
  models: () => catalogue.map(recipeModel),
  words: () =>
    glossary().map((entry) => ({ ...entry, recipes: recipesUsing(entry).map(({ name }) => name) })),
  calculate: ({ call, scope, shop, search }) =>
    calculate(recipeNamed(call.recipe), call, new Resolver(recipes, scope, shop), search),
  details: ({ call, scope, shop }) =>
    detailsOf(recipeNamed(call.recipe), call, new Resolver(recipes, scope, shop)),
  names: ({ recipe, path }) => namesFor(recipeNamed(recipe), path),
  figures: ({ scope, shop }) => figuresOf(scope, new Resolver(recipes, scope, shop)),
  shopModel: () => shopModel(),
  checkShop,
  survey: readSurvey,
  tryValues: (ask) =>
    tryValues(recipeNamed(ask.call.recipe), ask, new Resolver(recipes, ask.scope, ask.shop)),
};

function recipeNamed(name: string): AnyRecipe {
  const recipe = recipes.get(name);
  if (recipe === undefined) throw new Error(`there is no recipe ${name}`);
  return recipe;
}

// The page's types know windows; of a worker only these two are used.
const port = globalThis as unknown as {
  onmessage: (event: MessageEvent<RequestMessage>) => void;
  postMessage: (message: ReplyMessage) => void;
};

port.onmessage = ({ data: { id, kind, ask } }) => {
  const handle = handlers[kind] as (ask: unknown) => unknown;
  const units = (ask as { shop?: { units?: unknown } } | null)?.shop?.units;
  setUnits(unitSystems.find((u) => u === units) ?? 'both');
  void Promise.resolve()
    .then(() => handle(ask))
    .then(
      (answer) => port.postMessage({ id, answer }),
      (error: unknown) =>
        port.postMessage({ id, problem: error instanceof Error ? error.message : String(error) }),
    );
};
