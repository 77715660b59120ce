import { Refusal, shown } from '../quantities/refusal.js';
import { isPlainObject, schemaOf, together } from './field-set.js';
import {
  makeField,
  meant,
  type Common,
  type Field,
  type Fields,
  type Given,
  type IsOptional,
  type MaybeOut,
  type Read,
} from './field-shape.js';

type ListOptions = Common & {
  readonly default?: readonly unknown[];
  readonly least?: number;
  readonly most?: number;
};

/** A field that takes a list, or one line of text with commas. */
export function listField<I, Out, const O extends ListOptions>(
  item: Field<I, Out>,
  options: O,
): Field<readonly I[] | string, MaybeOut<O, readonly Out[]>, IsOptional<O>> {
  const takes = `a list, each ${item.takes}`;
  const least = options.least ?? 1;
  const most = options.most ?? 100_000;
  return makeField<readonly I[] | string, readonly Out[], O>(
    {
      kind: 'list',
      takes,
      fits: (v) => Array.isArray(v) || typeof v === 'string',
      show: (list) =>
        meant(Array.isArray(list), list).length > 12
          ? `${list.slice(0, 12).map(item.show).join(', ')} ... (${list.length} in all)`
          : list.map(item.show).join(', '),
      read: (v) => {
        const list =
          typeof v === 'string'
            ? v
                .split(/[;,]/)
                .map((s) => s.trim())
                .filter((s) => s !== '')
            : v;
        if (!Array.isArray(list)) throw new Refusal(`got ${shown(v)}, takes ${takes}`);
        if (list.length < least || list.length > most)
          throw new Refusal(`got ${list.length} entries, takes ${least} to ${most}; each ${item.takes}`);
        return together(list.map((x, i) => [`[${i + 1}]`, () => item.read(x)] as const));
      },
    },
    options,
    { items: [item as Field] },
  );
}

/** A field that takes an object of named parts, each a field of its own. */
export function groupField<const F extends Fields, const O extends Common & { readonly default?: object }>(
  fields: F,
  options: O,
): Field<Given<F>, MaybeOut<O, Read<F>>, IsOptional<O>> {
  const check = schemaOf(fields);
  const takes = `an object with ${Object.entries(fields)
    .map(([n, f]) => `${n}${f.optional ? '?' : ''} (${f.says})`)
    .join(', ')}`;
  return makeField<Given<F>, Read<F>, O>(
    {
      kind: 'group',
      takes,
      fits: isPlainObject,
      show: (g) =>
        meant(isPlainObject(g), g) &&
        Object.entries(fields)
          .map(([n, f]) => `${n} ${(f.show as (v: unknown) => string)(g[n as keyof F])}`)
          .join(', '),
      read: (v) => {
        if (!isPlainObject(v)) throw new Refusal(`got ${shown(v)}, takes ${takes}`);
        return check(v);
      },
    },
    options,
    { fields },
  );
}

/** A field that takes values under names the person chooses. */
export function recordField<I, Out, const O extends Common & { readonly default?: object }>(
  item: Field<I, Out>,
  options: O,
): Field<{ readonly [name: string]: I } | string, MaybeOut<O, Readonly<Record<string, Out>>>, IsOptional<O>> {
  const takes = `named parts such as { oil: ... }, each ${item.takes}`;
  return makeField<{ readonly [name: string]: I } | string, Readonly<Record<string, Out>>, O>(
    {
      kind: 'record',
      takes,
      fits: (v) => isPlainObject(v) || typeof v === 'string',
      show: (r) =>
        Object.entries(meant(isPlainObject(r), r))
          .map(([n, v]) => `${n} ${item.show(v)}`)
          .join(', '),
      read: (v) => {
        const entries =
          typeof v === 'string'
            ? v
                .split(/[;,]/)
                .filter((s) => s.trim() !== '')
                .map((s) => s.split(/[:=]/).map((x) => x.trim()) as [string, string | undefined])
            : isPlainObject(v)
              ? Object.entries(v)
              : undefined;
        if (
          !entries ||
          entries.length === 0 ||
          entries.length > 1000 ||
          entries.some(([n]) => n === '' || n === '__proto__')
        )
          throw new Refusal(`got ${shown(v)}, takes ${takes}`);
        // '2:1:1' has no names, and a name given twice would lose its first value without a word.
        if (typeof v === 'string' && entries.some((e) => e.length !== 2))
          throw new Refusal(`got ${shown(v)}, takes name:value pairs set apart by commas; ${takes}`);
        const twice = entries.find(([n], i) => entries.findIndex(([m]) => m === n) !== i);
        if (twice) throw new Refusal(`got ${shown(twice[0])} twice, takes each name once`);
        const values = together(entries.map(([n, x]) => [n, () => item.read(x)] as const));
        return Object.fromEntries(entries.map(([n], i) => [n, values[i] as Out]));
      },
    },
    options,
    { items: [item as Field] },
  );
}
