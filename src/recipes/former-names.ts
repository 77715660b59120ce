import type { AnyRecipe } from '../engine/any-recipe.js';
import { formerName } from '../engine/recipe.js';
import { catalogue, chipVolume, restraintStress } from './catalogue.js';

/** Former names of recipes, which answer for one version and tell the new name. */
export const formerNames: Readonly<Record<string, string>> = {
  crampedStress: 'restraintStress',
  sheetAndDust: 'chipVolume',
};

/** @deprecated Called restraintStress since version 0.2. */
export const crampedStress = formerName(restraintStress, 'crampedStress');
/** @deprecated Called chipVolume since version 0.2. */
export const sheetAndDust = formerName(chipVolume, 'sheetAndDust');

/** The recipe called `name`, now or formerly. */
export function recipeCalled(name: string): AnyRecipe | undefined {
  const now = Object.hasOwn(formerNames, name) ? formerNames[name] : name;
  return catalogue.find((r) => r.name === now);
}
