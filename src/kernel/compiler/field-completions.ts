/** The values a recipe's field takes (species, grades, finishes), for completion inside quotes. */
import type { RecipeField, RecipeInfo } from '../display/recipe-card.js';

/** The texts that a recipe's field takes. */
export function valuesFor(recipe: RecipeInfo, field: string): string[] {
  return [...new Set(choicesOf(recipe.inputs[field]))];
}

const choicesOf = (field: RecipeField | undefined): string[] => [
  ...(field?.choices ?? []),
  ...(field?.items ?? []).flatMap(choicesOf),
];
