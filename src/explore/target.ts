import type { Kind } from '../units/kind.js';
import { toQuantity } from '../units/parse-quantity.js';
import { InputError, nearest, inspectValue } from '../units/input-error.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import { isNumberField, numberOutputs } from './frame-columns.js';
import { withFieldPath } from './field-path.js';

/** The number that stands for text of a field, for targets and limits. @throws InputError */
export function targetOf(r: AnyRecipe, output: string, value: unknown): number {
  const o = r.outputs[output];
  if (!o || !isNumberField(o)) {
    const names = numberOutputs(r.outputs);
    const near = nearest(output, names);
    throw new InputError(
      {
        field: output,
        message: `no such output with a number${near ? `; did you mean ${inspectValue(near)}?` : `; takes ${names.join(', ')}`}`,
      },
      r.name,
    );
  }
  return withFieldPath(r.name, output, () => toQuantity(value, o.kind as Kind).value);
}
