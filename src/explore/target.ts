import type { Kind } from '../quantities/kind.js';
import { toQuantity } from '../quantities/parse.js';
import { Refusal, nearest, shown } from '../quantities/refusal.js';
import type { RecipeEntry } from '../recipe/entry.js';
import { isNumberField, numberOutputs } from './columns.js';
import { readUnder } from './reading.js';

/** The number that stands for text of a field, for targets and limits. @throws Refusal */
export function targetOf(r: RecipeEntry, output: string, value: unknown): number {
  const o = r.outputs[output];
  if (!o || !isNumberField(o)) {
    const names = numberOutputs(r.outputs);
    const near = nearest(output, names);
    throw new Refusal(
      {
        field: output,
        says: `no such output with a number${near ? `; did you mean ${shown(near)}?` : `; takes ${names.join(', ')}`}`,
      },
      r.name,
    );
  }
  return readUnder(r.name, output, () => toQuantity(value, o.kind as Kind).value);
}
