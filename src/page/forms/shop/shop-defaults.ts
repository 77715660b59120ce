import { CodeText } from '../cell-text/literal-text.js';
import type { RecipeModel } from '../model/recipe-model.js';
import { shopKeys } from './shop-keys.js';

/** Fields of a new form that the shop knows, as code that reads it there. */
export function shopDefaults(model: RecipeModel, shop: unknown): Record<string, CodeText> {
  if (typeof shop !== 'object' || shop === null) return {};
  const keys = shopKeys[model.name] ?? {};
  return Object.fromEntries(
    Object.entries(keys).flatMap(([field, key]) =>
      (shop as Record<string, unknown>)[key] === undefined
        ? []
        : [[field, new CodeText(`shop().${key}`)] as const],
    ),
  );
}
