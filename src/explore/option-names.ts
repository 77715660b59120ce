import { InputError, nearest, inspectValue } from '../units/input-error.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import { numberOutputs } from './frame-columns.js';

/** The output asked for, default the first that is a number. @throws InputError with the nearest name */
export function outputNamed(r: AnyRecipe, output: string | undefined, option = 'output'): string {
  const names = numberOutputs(r.outputs);
  const wanted = output ?? names[0];
  if (wanted !== undefined && names.includes(wanted)) return wanted;
  const near = output === undefined ? undefined : nearest(output, names);
  throw new InputError(
    {
      field: option,
      message: `got ${inspectValue(output)}, takes one of ${names.join(', ')}${near ? `; did you mean ${inspectValue(near)}?` : ''}`,
    },
    r.name,
  );
}
