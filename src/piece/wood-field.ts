import { field, makeField, type Field } from '../engine/field.js';
import { timberOrGrade } from '../materials/elastic-properties.js';
import { InputError, inspectValue } from '../units/input-error.js';

const takes =
  'a species such as "white oak", a grade such as "C24", or "unknown softwood" or "unknown hardwood" for salvaged timber';

interface WoodOptions {
  readonly label: string;
  readonly optional?: true;
  readonly default?: string;
}
type Out<O> = O extends { optional: true } ? string | undefined : string;
type Opt<O> = O extends { optional: true } | { default: string } ? true : false;

/** A field for a timber or a grade that keeps its name, since each recipe reads of it what it needs. */
export function woodField<const O extends WoodOptions>(options: O): Field<string, Out<O>, Opt<O>> {
  const text = field.text({ label: options.label });
  return makeField<string, string, O>(
    {
      kind: 'text',
      expects: takes,
      accepts: (v) => typeof v === 'string',
      format: (v) => v,
      read: (v) => {
        if (typeof v !== 'string') throw new InputError(`got ${inspectValue(v)}, takes ${takes}`);
        const name = text.read(v);
        // Throws with the nearest name where there is no such timber.
        timberOrGrade(name);
        return name;
      },
    },
    options,
  ) as unknown as Field<string, Out<O>, Opt<O>>;
}
