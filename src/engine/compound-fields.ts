import { InputError, inspectValue } from '../units/input-error.js';
import { isPlainObject, makeParser, collectIssues } from './field-set.js';
import {
  makeField,
  assertAccepted,
  type BaseFieldOptions,
  type Field,
  type Fields,
  type Input,
  type IsOptional,
  type MaybeOut,
  type Parsed,
} from './field-shape.js';

type ListOptions = BaseFieldOptions & {
  readonly default?: readonly unknown[];
  readonly least?: number;
  readonly most?: number;
};

/** A field that takes a list, or one line of text with commas. */
export function listField<I, Out, const O extends ListOptions>(
  item: Field<I, Out>,
  options: O,
): Field<readonly I[] | string, MaybeOut<O, readonly Out[]>, IsOptional<O>> {
  const takes = `a list, each ${item.expects}`;
  const least = options.least ?? 1;
  const most = options.most ?? 100_000;
  return makeField<readonly I[] | string, readonly Out[], O>(
    {
      kind: 'list',
      expects: takes,
      accepts: (v) => Array.isArray(v) || typeof v === 'string',
      format: (list) =>
        assertAccepted(Array.isArray(list), list).length > 12
          ? `${list
              .slice(0, 12)
              .map((x) => item.format(x))
              .join(', ')} ... (${list.length} in all)`
          : list.map((x) => item.format(x)).join(', '),
      read: (v) => {
        const list =
          typeof v === 'string'
            ? v
                .split(/[;,]/)
                .map((s) => s.trim())
                .filter((s) => s !== '')
            : v;
        if (!Array.isArray(list)) throw new InputError(`got ${inspectValue(v)}, takes ${takes}`);
        if (list.length < least || list.length > most)
          throw new InputError(`got ${list.length} entries, takes ${least} to ${most}; each ${item.expects}`);
        return collectIssues(list.map((x, i) => [`[${i + 1}]`, () => item.read(x)] as const));
      },
    },
    options,
    { items: [item] },
  );
}

/** A field that takes an object of named parts, each a field of its own. */
export function groupField<
  const F extends Fields,
  const O extends BaseFieldOptions & { readonly default?: object },
>(fields: F, options: O): Field<Input<F>, MaybeOut<O, Parsed<F>>, IsOptional<O>> {
  const check = makeParser(fields);
  const takes = `an object with ${Object.entries(fields)
    .map(([n, f]) => `${n}${f.optional ? '?' : ''} (${f.label})`)
    .join(', ')}`;
  return makeField<Input<F>, Parsed<F>, O>(
    {
      kind: 'group',
      expects: takes,
      accepts: isPlainObject,
      format: (g) => {
        assertAccepted(isPlainObject(g), g);
        return Object.entries(fields)
          .map(([n, f]) => `${n} ${f.format(g[n])}`)
          .join(', ');
      },
      read: (v) => {
        if (!isPlainObject(v)) throw new InputError(`got ${inspectValue(v)}, takes ${takes}`);
        return check(v);
      },
    },
    options,
    { fields },
  );
}

/** A field that takes values under names the person chooses. */
export function recordField<I, Out, const O extends BaseFieldOptions & { readonly default?: object }>(
  item: Field<I, Out>,
  options: O,
): Field<{ readonly [name: string]: I } | string, MaybeOut<O, Readonly<Record<string, Out>>>, IsOptional<O>> {
  const takes = `named parts such as { oil: ... }, each ${item.expects}`;
  return makeField<{ readonly [name: string]: I } | string, Readonly<Record<string, Out>>, O>(
    {
      kind: 'record',
      expects: takes,
      accepts: (v) => isPlainObject(v) || typeof v === 'string',
      format: (r) =>
        Object.entries(assertAccepted(isPlainObject(r), r))
          .map(([n, v]) => `${n} ${item.format(v)}`)
          .join(', '),
      read: (v) => {
        const entries = recordEntries(v);
        if (
          !entries ||
          entries.length === 0 ||
          entries.length > 1000 ||
          entries.some(([n]) => n === '' || n === '__proto__')
        )
          throw new InputError(`got ${inspectValue(v)}, takes ${takes}`);
        // '2:1:1' has no names, and a name given twice would lose its first value without a word.
        if (entries.some((e) => e.length !== 2))
          throw new InputError(
            `got ${inspectValue(v)}, takes name:value pairs set apart by commas; ${takes}`,
          );
        const twice = entries.find(([n], i) => entries.findIndex(([m]) => m === n) !== i);
        if (twice) throw new InputError(`got ${inspectValue(twice[0])} twice, takes each name once`);
        const values = collectIssues(entries.map(([n, x]) => [n, () => item.read(x)] as const));
        return Object.fromEntries(entries.map(([n], i) => [n, values[i] as Out]));
      },
    },
    options,
    { items: [item] },
  );
}

/** Names and values as written: an object, or text such as `oil:2, spirit:1`; undefined for anything else. */
function recordEntries(v: unknown): (readonly [string, ...unknown[]])[] | undefined {
  if (isPlainObject(v)) return Object.entries(v);
  if (typeof v !== 'string') return undefined;
  return v
    .split(/[;,]/)
    .filter((s) => s.trim() !== '')
    .map((s) => s.split(/[:=]/).map((x) => x.trim()) as [string, ...string[]]);
}
