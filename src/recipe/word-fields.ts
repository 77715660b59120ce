import { Refusal, nearest, shown } from '../quantities/refusal.js';
import { makeField, meant, type Common, type Field, type IsOptional, type MaybeOut } from './field-shape.js';

/** A field that takes one of a few words. */
export function choiceField<
  const C extends readonly string[],
  const O extends Common & { readonly default?: C[number] },
>(choices: C, options: O): Field<C[number], MaybeOut<O, C[number]>, IsOptional<O>> {
  const takes = `one of ${choices.map((c) => shown(c)).join(', ')}`;
  const plain = (s: string): string => s.toLowerCase().replace(/[\s_-]+/g, '');
  return makeField<C[number], C[number], O>(
    {
      kind: 'choice',
      takes,
      fits: (v) => typeof v === 'string' && choices.some((c) => plain(c) === plain(v)),
      show: (v) => meant(choices.includes(v), v),
      read: (v) => {
        const found = typeof v === 'string' ? choices.find((c) => plain(c) === plain(v)) : undefined;
        if (found !== undefined) return found;
        const near = typeof v === 'string' ? nearest(v, choices) : undefined;
        throw new Refusal(`got ${shown(v)}, takes ${takes}${near ? `; did you mean ${shown(near)}?` : ''}`);
      },
    },
    options,
    { choices },
  );
}

/** A field that takes yes or no. */
export function flagField<const O extends Common & { readonly default?: boolean }>(
  options: O,
): Field<boolean | 'yes' | 'no', MaybeOut<O, boolean>, IsOptional<O>> {
  const takes = 'yes or no (true or false)';
  return makeField<boolean | 'yes' | 'no', boolean, O>(
    {
      kind: 'flag',
      takes,
      fits: (v) => typeof v === 'boolean' || v === 'yes' || v === 'no' || v === 'true' || v === 'false',
      show: (v) => (meant(typeof v === 'boolean', v) ? 'yes' : 'no'),
      read: (v) => {
        if (v === true || v === 'yes' || v === 'true') return true;
        if (v === false || v === 'no' || v === 'false') return false;
        throw new Refusal(`got ${shown(v)}, takes ${takes}`);
      },
    },
    options,
    { choices: ['yes', 'no'] },
  );
}

/** A field that takes any short text. */
export function textField<const O extends Common & { readonly default?: string }>(
  options: O,
): Field<string, MaybeOut<O, string>, IsOptional<O>> {
  const takes = 'a text of 1 to 200 characters';
  return makeField<string, string, O>(
    {
      kind: 'text',
      takes,
      fits: (v) => typeof v === 'string',
      show: (v) => meant(typeof v === 'string', v),
      read: (v) => {
        if (typeof v !== 'string' || v.trim() === '' || v.length > 200)
          throw new Refusal(`got ${shown(v)}, takes ${takes}`);
        return v.trim();
      },
    },
    options,
  );
}
