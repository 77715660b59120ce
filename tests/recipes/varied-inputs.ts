// Inputs of a recipe made from its example: other choices, other sizes, fields left out and filled in.
import { kinds, type Kind } from '../../src/units/kind.js';
import type { AnyRecipe } from '../../src/engine/any-recipe.js';
import type { Field, Fields } from '../../src/engine/field.js';
import { formatQuantity } from '../../src/units/format-quantity.js';

type Given = Readonly<Record<string, unknown>>;
/** A number from 0 to below 1. */
type Random = () => number;
type Maker = (f: Field, given: unknown, random: Random) => unknown;

const pick = <T>(random: Random, list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;

const timbers = [
  'white oak',
  'Scots pine',
  'spotted gum',
  'unknown hardwood',
  'teak',
  'C24',
  'MGP10',
  'Hem-Fir No.2 2x-4x',
];

/** How the fields of a kind that is no quantity are filled in. */
const makers: Readonly<Record<string, Maker>> = {
  timber: (_f, _given, random) => pick(random, timbers),
  flag: (_f, _given, random) => random() < 0.5,
  either: (f, given, random) => valueOf(pick(random, f.items ?? []), given, random) ?? given,
  list: ({ items: [item] = [] }, given, random) =>
    Array.isArray(given) && item
      ? given.map((value: unknown) => valueOf(item, value, random) ?? value)
      : given,
  table: ({ fields = {} }, given, random) =>
    Array.isArray(given) ? given.map((row: Given) => varied(fields, row, random)) : given,
  group: ({ fields = {} }, given, random) =>
    varied(fields, typeof given === 'object' && given !== null ? (given as Given) : {}, random),
};

/** A value of a field, near `given` where there is one; undefined leaves the field out. */
function valueOf(f: Field, given: unknown, random: Random): unknown {
  if (f.optional && random() < 0.25) return undefined;
  if (f.kind !== 'timber' && f.choices?.length && random() < 0.8) return pick(random, f.choices);
  const make = makers[f.kind];
  if (make) return make(f, given, random);
  return Object.hasOwn(kinds, f.kind) ? sizeOf(f, f.kind as Kind, given, random) : given;
}

/** A number within the limits: that of the example, or up to eight times more or less. */
function sizeOf(f: Field, kind: Kind, given: unknown, random: Random): unknown {
  const near = baseNumber(f, given ?? f.default ?? kinds[kind].example);
  const wanted = random() < 0.5 ? near : near * 2 ** (6 * random() - 3);
  const whole = kind === 'count' ? Math.round(wanted) : wanted;
  const value = Math.min(f.max ?? Infinity, Math.max(f.min ?? -Infinity, whole));
  return kind === 'ratio' || kind === 'count' ? value : formatQuantity({ kind, value }, { digits: 6 });
}

/** The number as the field reads it; where it lies outside the limits, one inside. */
function baseNumber(f: Field, written: unknown): number {
  try {
    const read = f.read(written);
    if (typeof read === 'number') return read;
  } catch {
    // An example of the kind need not suit the field.
  }
  return f.min !== undefined && f.max !== undefined ? (f.min + f.max) / 2 : (f.min ?? 0) + 1;
}

const varied = (fields: Fields, given: Given, random: Random): Given =>
  Object.fromEntries(
    Object.entries(fields).flatMap(([name, f]) => {
      const value = random() < 0.5 ? given[name] : valueOf(f, given[name], random);
      return value === undefined ? [] : [[name, value]];
    }),
  );

/** The recipe's example with about half of its inputs changed; not every one is valid. */
export const variedInputs = (r: AnyRecipe, random: Random): Given => varied(r.inputs, r.example, random);
