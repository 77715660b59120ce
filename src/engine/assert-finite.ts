import { InputError } from '../units/input-error.js';

/** No number that a person sees may be NaN or infinite: a fault in the recipe is said as such. @throws InputError naming the output */
export function assertFinite(recipe: string, value: unknown, path = ''): void {
  if (typeof value === 'number') {
    if (!Number.isFinite(value))
      throw new InputError(
        {
          field: path,
          message: 'these inputs give no finite answer; they are too large, too small or do not go together',
        },
        recipe,
      );
  } else if (Array.isArray(value)) value.forEach((v, i) => assertFinite(recipe, v, `${path}[${i + 1}]`));
  else if (typeof value === 'object' && value !== null)
    for (const [k, v] of Object.entries(value)) assertFinite(recipe, v, path ? `${path}.${k}` : k);
}
