import { Refusal } from '../quantities/refusal.js';

/** No number that a person sees may be NaN or infinite: a fault in the recipe is said as such. @throws Refusal naming the output */
export function finiteAnswer(recipe: string, value: unknown, path = ''): void {
  if (typeof value === 'number') {
    if (!Number.isFinite(value))
      throw new Refusal(
        {
          field: path,
          says: 'these inputs give no finite answer; they are too large, too small or do not go together',
        },
        recipe,
      );
  } else if (Array.isArray(value)) value.forEach((v, i) => finiteAnswer(recipe, v, `${path}[${i + 1}]`));
  else if (typeof value === 'object' && value !== null)
    for (const [k, v] of Object.entries(value)) finiteAnswer(recipe, v, path ? `${path}.${k}` : k);
}
