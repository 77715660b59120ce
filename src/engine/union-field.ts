import { InputError, nearest, inspectValue } from '../units/input-error.js';
import { tryParse } from '../units/try-parse.js';
import {
  makeField,
  type BaseFieldOptions,
  type Field,
  type InputOf,
  type IsOptional,
  type MaybeOut,
  type ParsedOf,
} from './field-shape.js';

type Alternatives = readonly Field[];
/** A field that takes one of several kinds of thing. */
export function unionField<
  const A extends Alternatives,
  const O extends BaseFieldOptions & { readonly default?: unknown },
>(alternatives: A, options: O): Field<InputOf<A[number]>, MaybeOut<O, ParsedOf<A[number]>>, IsOptional<O>> {
  const all = alternatives as readonly Field[];
  const takes = all.map((f) => f.expects).join(', or ');
  return makeField<InputOf<A[number]>, ParsedOf<A[number]>, O>(
    {
      kind: 'either',
      expects: takes,
      accepts: (v) => all.some((f) => f.accepts(v)),
      format: (v) => {
        for (const f of all) {
          try {
            return f.format(v);
          } catch {
            continue;
          }
        }
        return String(v);
      },
      read: (v) => {
        const meant = all.filter((f) => f.accepts(v));
        const refused: InputError[] = [];
        for (const f of meant) {
          const got = tryParse(() => f.read(v) as ParsedOf<A[number]>);
          if (!(got instanceof InputError)) return got;
          refused.push(got);
        }
        const [first, second] = refused;
        // An issue in a part of it tells that this alternative was meant.
        if (first?.issues.some((t) => t.field !== '')) throw first;
        const words = all.flatMap((f) => f.choices ?? []);
        const near = typeof v === 'string' ? nearest(v, words) : undefined;
        const rest = all.filter((f) => !meant.includes(f)).map((f) => f.expects);
        // One alternative alone knows best what is wrong, but a word may have been meant for another.
        const message =
          first && !second
            ? `${first.issues.map((t) => t.message).join('; ')}; or ${rest.join(', or ')}`
            : `got ${inspectValue(v)}, takes ${takes}`;
        throw new InputError(near ? `${message}; did you mean ${inspectValue(near)}?` : message);
      },
    },
    options,
    { items: all },
  );
}
