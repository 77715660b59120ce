// A recipe asked of a piece: its inputs taken from the description, with where each came from.
import type { AnyRecipe } from '../engine/any-recipe.js';
import type { Field, Fields } from '../engine/field.js';
import type { Outputs, RawOutput } from '../engine/output.js';
import type { Recipe } from '../engine/recipe.js';
import type { Result } from '../engine/result.js';
import { kinds, type Kind } from '../units/kind.js';
import { Quantity } from '../units/quantity.js';
import type { Model } from './piece-graph.js';

/** One use of a recipe: numbers in base units, or text where the recipe reads it. */
export interface Ask {
  readonly recipe: AnyRecipe;
  readonly given: Readonly<Record<string, unknown>>;
  /** Paths each input came from; none where it was set by the question itself. */
  readonly from: Readonly<Record<string, readonly string[]>>;
  /** The part or surface it is about. */
  readonly about?: string;
}

/** An ask and what the recipe answered, in base units. */
export interface Asked<O extends Outputs> {
  readonly ask: Ask;
  readonly out: RawOutput<O>;
}

/** A value with the path it came from, where it was read before the recipe was asked. */
export class Placed {
  constructor(
    readonly path: string,
    readonly value: unknown,
  ) {}
}
export const placed = (path: string, value: unknown): Placed => new Placed(path, value);

/** Asks a recipe. @throws InputError where the recipe does not take the inputs */
export function ask<F extends Fields, O extends Outputs>(
  m: Model,
  recipe: Recipe<F, O>,
  inputs: { readonly [K in keyof F]?: () => unknown },
  about?: string,
): Asked<O> {
  const given: Record<string, unknown> = {};
  const from: Record<string, readonly string[]> = {};
  for (const [name, read] of Object.entries(inputs) as [string, () => unknown][]) {
    const before = m.readCount;
    const got = read();
    const value = got instanceof Placed ? got.value : got;
    if (value === undefined) continue;
    given[name] = value;
    from[name] = got instanceof Placed ? [got.path] : m.readsSince(before);
  }
  const numbers = Object.fromEntries(
    Object.entries(given).map(([name, value]) => [name, readOnce((recipe.inputs as Fields)[name], value)]),
  );
  const out = recipe.evaluate(numbers as never);
  const made: Ask = {
    recipe: recipe as unknown as AnyRecipe,
    given,
    from,
    ...(about === undefined ? {} : { about }),
  };
  return { ask: made, out };
}

const texts = new WeakMap<Field, Map<string, unknown>>();
/** Text that a field reads, such as the name of a timber, read once. */
function readOnce(f: Field | undefined, value: unknown): unknown {
  if (!f || typeof value !== 'string') return value;
  let known = texts.get(f);
  if (!known) texts.set(f, (known = new Map<string, unknown>()));
  if (!known.has(value)) {
    if (known.size > 500) known.clear();
    known.set(value, f.read(value));
  }
  return known.get(value);
}

/** The recipe's result, with workings and cautions, on the same numbers. */
export function resultOf(asked: Ask): Result | Promise<Result> {
  return asked.recipe(writtenInputs(asked));
}

/** The inputs as a person could have written them, in full precision. */
export const writtenInputs = (asked: Ask): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(asked.given).map(([name, value]) => [name, asWritten(asked.recipe.inputs[name], value)]),
  );

const measuredKinds: Readonly<Record<string, Kind>> = {
  length: 'length',
  area: 'area',
  liquid: 'liquid',
  mass: 'mass',
  time: 'time',
};

function asWritten(f: Field | undefined, value: unknown): unknown {
  if (!f || value === undefined || typeof value === 'string') return value;
  if (typeof value === 'number') return numberAsWritten(f, value);
  const own = ownWritten[f.kind];
  if (own) return own(value);
  if (Array.isArray(value)) return listAsWritten(f, value);
  if (f.kind === 'record') {
    const item = f.items?.[0];
    return Object.fromEntries(
      Object.entries(value as object).map(([n, v]: [string, unknown]) => [n, asWritten(item, v)]),
    );
  }
  if (f.kind === 'either' && f.items) return asWritten(f.items.find((x) => x.fields) ?? f.items[0], value);
  return f.fields ? recordAsWritten(f.fields, value) : value;
}

/** Values of kinds that are read into objects of their own. */
const ownWritten: Readonly<Record<string, (value: unknown) => unknown>> = {
  measured: (value) => {
    const { by, value: n } = value as { readonly by: string; readonly value: number };
    const kind = measuredKinds[by];
    return kind ? new Quantity(kind, n) : n;
  },
  price: (value) => (value as { readonly text: string }).text,
  climate: (value) => climateAsWritten(value as ClimateLike),
};

function listAsWritten(f: Field, list: readonly unknown[]): unknown[] {
  const each = f.items?.[0];
  return list.map((v) => (each ? asWritten(each, v) : f.fields ? recordAsWritten(f.fields, v) : v));
}

function numberAsWritten(f: Field, value: number): unknown {
  if (f.kind === 'measured') return value;
  if (f.kind === 'screw') return new Quantity('length', value);
  if (f.kind === 'either') {
    const meant = f.items?.find((x) => Object.hasOwn(kinds, x.kind));
    return meant ? numberAsWritten(meant, value) : value;
  }
  if (!Object.hasOwn(kinds, f.kind)) return value;
  return kinds[f.kind as Kind].plain ? value : new Quantity(f.kind as Kind, value);
}

const recordAsWritten = (fields: Fields, value: unknown): unknown =>
  Object.fromEntries(
    Object.entries(value as Readonly<Record<string, unknown>>).flatMap(([name, v]) =>
      v === undefined ? [] : [[name, asWritten(fields[name], v)]],
    ),
  );

interface ClimateLike {
  readonly name: string;
  readonly moisture: readonly number[];
  readonly place?: unknown;
}
/** A place by its name; any other year by its twelve moistures. */
const climateAsWritten = (year: ClimateLike): unknown =>
  year.place ? year.name : year.moisture.map((m) => new Quantity('moisture', m));
