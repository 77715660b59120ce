import * as z from 'zod';
import { formatQuantity } from '../quantities/format.js';
import { kinds, type Kind, type PlainKind } from '../quantities/kind.js';
import { toQuantity } from '../quantities/parse.js';
import { both, Quantity } from '../quantities/quantity.js';
import { Refusal, nearest, shown, type Trouble } from '../quantities/refusal.js';

/** What a field of a recipe takes: facts for people and pages, and the check itself. `In` is what a person writes, `Out` what `solve` gets. */
export interface Field<In = unknown, Out = unknown, Optional extends boolean = boolean> {
  /** Carries the types alone; there is no such member at run time. */
  readonly '~types'?: { readonly in: In; readonly out: Out };
  /** 'length', 'moisture', ... or 'choice', 'flag', 'text', 'list', 'table', 'group', 'record', 'either', 'timber'. */
  readonly kind: string;
  /** One line: what it means. */
  readonly says: string;
  /** What it takes, in words with a right example. */
  readonly takes: string;
  readonly optional: Optional;
  /** The default as a person would write it. */
  readonly default?: unknown;
  readonly symbol?: string;
  /** Unit in which it is shown and charted. */
  readonly unit?: string;
  /** Limits in the base unit. */
  readonly min?: number;
  readonly max?: number;
  readonly choices?: readonly string[];
  /** Columns or parts, of a table or group. */
  readonly fields?: Fields;
  /** Item of a list or record; alternatives of an either. */
  readonly items?: readonly Field[];
  /** Reads what a person wrote. @throws Refusal with paths below this field */
  read(value: unknown): Out;
  /** Shows the read value in words: metric first, inches in brackets. */
  show(value: Out): string;
  /** Could this value be meant for this field? Decides between alternatives. */
  fits(value: unknown): boolean;
}

export type Fields = { readonly [name: string]: Field };

type InOf<F> = F extends { readonly '~types'?: { readonly in: infer I } } ? I : never;
type OutOf<F> = F extends { readonly '~types'?: { readonly out: infer O } } ? O : never;
type OptionalNames<F extends Fields> = { [K in keyof F]: F[K]['optional'] extends true ? K : never }[keyof F];

/** What a person writes for a set of fields. */
export type Given<F extends Fields> = { readonly [K in Exclude<keyof F, OptionalNames<F>>]: InOf<F[K]> } & {
  readonly [K in OptionalNames<F>]?: InOf<F[K]>;
};
/** What the recipe gets: numbers in base units, checked, defaults filled in. */
export type Read<F extends Fields> = { readonly [K in keyof F]: OutOf<F[K]> };

interface Common {
  readonly says: string;
  /** May be left out and has no default. */
  readonly optional?: true;
}
interface QuantityOptions extends Common {
  readonly symbol?: string;
  readonly unit?: string;
  /** Least and greatest allowed, as text with unit. */
  readonly min?: string | number;
  readonly max?: string | number;
  /** Must be more than this. */
  readonly above?: string | number;
  readonly default?: string | number;
}
type IsOptional<O> = O extends { optional: true }
  ? true
  : O extends { default: string | number | boolean | object }
    ? true
    : false;
type MaybeOut<O, Out> = O extends { optional: true } ? Out | undefined : Out;

/** What may be written for a kind: text with a unit, a quantity, or for plain kinds a number. */
export type Written<K extends Kind> = string | Quantity<K> | (K extends PlainKind | 'money' ? number : never);

interface Parts<Out> {
  readonly kind: string;
  readonly takes: string;
  readonly read: (value: unknown) => Out;
  readonly show: (value: Out) => string;
  readonly fits: (value: unknown) => boolean;
}

/** Puts the optional and default handling round a field's own reading. Used by other rooms to make fields of their own. */
export function makeField<In, Out, const O extends Common & { readonly default?: unknown }>(
  parts: Parts<Out>,
  options: O,
  more: Partial<Pick<Field, 'symbol' | 'unit' | 'min' | 'max' | 'choices' | 'fields' | 'items'>> = {},
): Field<In, MaybeOut<O, Out>, IsOptional<O>> {
  const optional = (options.optional === true || options.default !== undefined) as IsOptional<O>;
  const read = (value: unknown): MaybeOut<O, Out> => {
    if (value === undefined) {
      if (options.default !== undefined) return parts.read(options.default) as MaybeOut<O, Out>;
      if (options.optional) return undefined as MaybeOut<O, Out>;
      throw new Refusal(`missing; takes ${parts.takes}`);
    }
    return parts.read(value) as MaybeOut<O, Out>;
  };
  return {
    kind: parts.kind,
    says: options.says,
    takes: parts.takes,
    optional,
    ...(options.default !== undefined ? { default: options.default } : {}),
    ...more,
    read,
    show: (value) => (value === undefined ? 'not given' : parts.show(value as Out)),
    fits: parts.fits,
  };
}

function bound(kind: Kind, limit: string | number | undefined): number | undefined {
  if (limit === undefined) return undefined;
  return typeof limit === 'number' ? limit : toQuantity(limit, kind).value;
}

function quantityField<K extends Kind, const O extends QuantityOptions>(
  kind: K,
  options: O,
): Field<Written<K>, MaybeOut<O, number>, IsOptional<O>> {
  const min = bound(kind, options.min);
  const max = bound(kind, options.max);
  const above = bound(kind, options.above);
  const text = (n: number): string => formatQuantity({ kind, value: n });
  const facts = kinds[kind];
  const limits = [
    above !== undefined ? `more than ${text(above)}` : min !== undefined ? `at least ${text(min)}` : '',
    max !== undefined ? `at most ${text(max)}` : '',
  ]
    .filter(Boolean)
    .join(' and ');
  const example = options.default !== undefined ? String(options.default) : facts.example;
  const takes = `${facts.called} such as ${facts.plain ? example : shown(example)}${limits ? `, ${limits}` : ''}`;
  return makeField<Written<K>, number, O>(
    {
      kind,
      takes,
      fits: (v) =>
        typeof v === 'string' ||
        typeof v === 'number' ||
        v instanceof Quantity ||
        (typeof v === 'object' && v !== null && 'value' in v && 'unit' in v),
      show: (n) => both(new Quantity(kind, meant(typeof n === 'number', n))),
      read: (v) => {
        const q = toQuantity(v, kind);
        const n = q.value;
        if (q.currency) currencySeen(q.currency);
        if (kind === 'count' && !Number.isInteger(n)) throw new Refusal(`got ${shown(v)}, takes ${takes}`);
        // A millionth of slack: 0.9 m written as 35.4330708 in must not fall off its limit.
        if (
          (min !== undefined && n < min - Math.abs(min) * 1e-12) ||
          (max !== undefined && n > max + Math.abs(max) * 1e-12) ||
          (above !== undefined && n <= above)
        ) {
          throw new Refusal(`got ${shown(v instanceof Quantity ? v.toString() : v)}, takes ${takes}`);
        }
        return n;
      },
    },
    options,
    {
      ...(options.symbol ? { symbol: options.symbol } : {}),
      ...(options.unit ? { unit: options.unit } : {}),
      ...(above !== undefined ? { min: above } : min !== undefined ? { min } : {}),
      ...(max !== undefined ? { max } : {}),
    },
  );
}

let currency: string | undefined;
function currencySeen(sign: string): void {
  if (currency !== undefined && currency !== sign)
    throw new Refusal(
      `got prices in ${shown(currency)} and ${shown(sign)}, takes one currency; nothing is exchanged here`,
    );
  currency = sign;
}
/** Runs `read` and tells which currency sign the money in it carried. */
export function watchCurrency<T>(read: () => T): { value: T; currency: string | undefined } {
  currency = undefined;
  try {
    const value = read();
    return { value, currency };
  } finally {
    currency = undefined;
  }
}

/** A field shows only what it could have read: an `either` tries its alternatives in turn and goes by this. */
function meant<T>(fits: boolean, value: T): T {
  if (!fits) throw new TypeError(`not a value of this field: ${shown(value)}`);
  return value;
}

/** Gathers the troubles of several parts, each under its own name, and throws them together. */
export function together<T>(parts: Iterable<readonly [string, () => T]>): T[] {
  const troubles: Trouble[] = [];
  const out: T[] = [];
  for (const [name, read] of parts) {
    try {
      out.push(read());
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      for (const t of error.troubles)
        troubles.push({
          field: name + (t.field && !t.field.startsWith('[') ? `.${t.field}` : t.field),
          says: t.says,
        });
    }
  }
  if (troubles.length > 0) throw new Refusal(troubles);
  return out;
}

export const isPlainObject = (v: unknown): v is Record<string, unknown> =>
  typeof v === 'object' &&
  v !== null &&
  !Array.isArray(v) &&
  !(v instanceof Quantity) &&
  [Object.prototype, null].includes(Object.getPrototypeOf(v) as object | null);

/** A zod schema over a set of fields: unknown names are refused with the nearest right one. Built once, at definition. */
export function schemaOf<F extends Fields>(fields: F): (value: unknown) => Read<F> {
  const shape = Object.fromEntries(
    Object.entries(fields).map(([name, field]) => [
      name,
      z.unknown().transform((value, ctx) => {
        try {
          return field.read(value);
        } catch (error) {
          if (!(error instanceof Refusal)) throw error;
          for (const t of error.troubles)
            ctx.addIssue({ code: 'custom', message: t.says, params: { below: t.field } });
          return z.NEVER;
        }
      }),
    ]),
  );
  const schema = z.strictObject(shape);
  const names = Object.keys(fields);
  return (value) => {
    // Missing keys are put in as undefined so that each field itself says what it takes.
    const whole = isPlainObject(value)
      ? { ...Object.fromEntries(names.map((n) => [n, undefined])), ...value }
      : value;
    const result = schema.safeParse(whole);
    if (result.success) return result.data as Read<F>;
    const troubles: Trouble[] = result.error.issues.flatMap((issue): Trouble[] => {
      if (issue.code === 'unrecognized_keys') {
        return issue.keys.map((key) => {
          const near = nearest(key, names);
          return {
            field: key.slice(0, 60),
            says: `no such input${near ? `; did you mean ${shown(near)}?` : `; takes ${names.join(', ')}`}`,
          };
        });
      }
      if (issue.path.length === 0)
        return [{ field: '', says: `got ${shown(value)}, takes an object with ${names.join(', ')}` }];
      const below =
        issue.code === 'custom' ? ((issue.params as { below?: string } | undefined)?.below ?? '') : '';
      return [
        {
          field: issue.path.join('.') + (below && !below.startsWith('[') ? `.${below}` : below),
          says: issue.message,
        },
      ];
    });
    throw new Refusal(troubles);
  };
}

type ListOptions = Common & {
  readonly default?: readonly unknown[];
  readonly least?: number;
  readonly most?: number;
};

function listField<I, Out, const O extends ListOptions>(
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

function groupField<const F extends Fields, const O extends Common & { readonly default?: object }>(
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

function recordField<I, Out, const O extends Common & { readonly default?: object }>(
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

type Alternatives = readonly Field[];
function eitherField<const A extends Alternatives, const O extends Common & { readonly default?: unknown }>(
  alternatives: A,
  options: O,
): Field<InOf<A[number]>, MaybeOut<O, OutOf<A[number]>>, IsOptional<O>> {
  const all = alternatives as readonly Field[];
  const takes = all.map((f) => f.takes).join(', or ');
  return makeField<InOf<A[number]>, OutOf<A[number]>, O>(
    {
      kind: 'either',
      takes,
      fits: (v) => all.some((f) => f.fits(v)),
      show: (v) => {
        for (const f of all) {
          try {
            return f.show(v);
          } catch {
            continue;
          }
        }
        return String(v);
      },
      read: (v) => {
        const meant = all.filter((f) => f.fits(v));
        if (meant.length === 0) throw new Refusal(`got ${shown(v)}, takes ${takes}`);
        let first: Refusal | undefined;
        for (const f of meant) {
          try {
            return f.read(v) as OutOf<A[number]>;
          } catch (error) {
            if (!(error instanceof Refusal)) throw error;
            first ??= error;
          }
        }
        // With several alternatives of one shape the sentence must name them all.
        throw meant.length > 1 && first?.troubles.every((t) => t.field === '')
          ? new Refusal(`got ${shown(v)}, takes ${takes}`)
          : first;
      },
    },
    options,
    { items: all },
  );
}

function choiceField<
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

function flagField<const O extends Common & { readonly default?: boolean }>(
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

function textField<const O extends Common & { readonly default?: string }>(
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

const of =
  <K extends Kind>(kind: K) =>
  <const O extends QuantityOptions>(options: O): Field<Written<K>, MaybeOut<O, number>, IsOptional<O>> =>
    quantityField(kind, options);

/** Makers of fields. Each takes `says` (one line of meaning) and what limits it; see architecture in DEVELOPERS.md. */
export const field = {
  quantity: quantityField,
  length: of('length'),
  thickness: of('thickness'),
  area: of('area'),
  volume: of('volume'),
  liquid: of('liquid'),
  mass: of('mass'),
  force: of('force'),
  pressure: of('pressure'),
  stress: of('stress'),
  modulus: of('modulus'),
  areaLoad: of('areaLoad'),
  lineLoad: of('lineLoad'),
  springRate: of('springRate'),
  moment: of('moment'),
  density: of('density'),
  concentration: of('concentration'),
  spread: of('spread'),
  coverage: of('coverage'),
  moisture: of('moisture'),
  humidity: of('humidity'),
  share: of('share'),
  temperature: of('temperature'),
  time: of('time'),
  speed: of('speed'),
  rotation: of('rotation'),
  angle: of('angle'),
  money: of('money'),
  ratio: of('ratio'),
  count: of('count'),
  choice: choiceField,
  flag: flagField,
  text: textField,
  list: listField,
  group: groupField,
  record: recordField,
  either: eitherField,
} as const;
