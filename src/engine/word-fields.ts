import { InputError, nearest, inspectValue } from '../units/input-error.js';
import {
  makeField,
  assertAccepted,
  type BaseFieldOptions,
  type Field,
  type IsOptional,
  type MaybeOut,
} from './field-shape.js';

/** A field that takes one of a few words. */
export function choiceField<
  const C extends readonly string[],
  const O extends BaseFieldOptions & { readonly default?: C[number] },
>(choices: C, options: O): Field<C[number], MaybeOut<O, C[number]>, IsOptional<O>> {
  const takes = `one of ${choices.map((c) => inspectValue(c)).join(', ')}`;
  const plain = (s: string): string => s.toLowerCase().replace(/[\s_-]+/g, '');
  return makeField<C[number], C[number], O>(
    {
      kind: 'choice',
      expects: takes,
      accepts: (v) => typeof v === 'string' && choices.some((c) => plain(c) === plain(v)),
      format: (v) => assertAccepted(choices.includes(v), v),
      read: (v) => {
        const found = typeof v === 'string' ? choices.find((c) => plain(c) === plain(v)) : undefined;
        if (found !== undefined) return found;
        const near = typeof v === 'string' ? nearest(v, choices) : undefined;
        throw new InputError(
          `got ${inspectValue(v)}, takes ${takes}${near ? `; did you mean ${inspectValue(near)}?` : ''}`,
        );
      },
    },
    options,
    { choices },
  );
}

/** A field that takes yes or no. */
export function flagField<const O extends BaseFieldOptions & { readonly default?: boolean }>(
  options: O,
): Field<boolean | 'yes' | 'no', MaybeOut<O, boolean>, IsOptional<O>> {
  const takes = 'yes or no (true or false)';
  return makeField<boolean | 'yes' | 'no', boolean, O>(
    {
      kind: 'flag',
      expects: takes,
      accepts: (v) => typeof v === 'boolean' || v === 'yes' || v === 'no' || v === 'true' || v === 'false',
      format: (v) => (assertAccepted(typeof v === 'boolean', v) ? 'yes' : 'no'),
      read: (v) => {
        if (v === true || v === 'yes' || v === 'true') return true;
        if (v === false || v === 'no' || v === 'false') return false;
        throw new InputError(`got ${inspectValue(v)}, takes ${takes}`);
      },
    },
    options,
    { choices: ['yes', 'no'] },
  );
}

/** A field that takes any short text. */
export function textField<const O extends BaseFieldOptions & { readonly default?: string }>(
  options: O,
): Field<string, MaybeOut<O, string>, IsOptional<O>> {
  const takes = 'a text of 1 to 200 characters';
  return makeField<string, string, O>(
    {
      kind: 'text',
      expects: takes,
      accepts: (v) => typeof v === 'string',
      format: (v) => assertAccepted(typeof v === 'string', v),
      read: (v) => {
        if (typeof v !== 'string' || v.trim() === '' || v.length > 200)
          throw new InputError(`got ${inspectValue(v)}, takes ${takes}`);
        return v.trim();
      },
    },
    options,
  );
}
