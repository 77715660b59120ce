import { InputError, nearest, inspectValue } from './input-error.js';
import { kinds, type Kind } from './kind.js';
import { scaleByAlgebra } from './algebra.js';
import { unitAliases } from './unit-aliases.js';
import { unitScales } from './unit-scales.js';

/** A unit as a straight line from the number written to the number in the kind's base unit: base = n * scale + offset. */
export interface Unit {
  readonly name: string;
  readonly scale: number;
  readonly offset: number;
}

const offsets: Readonly<Record<string, number>> = { degF: (-32 * 5) / 9, K: -273.15 };
const cache = new Map<string, Unit>();

/** The unit `name` read as a unit of `kind`; an InputError that lists what fits when it is none. */
export function unitOf(kind: Kind, name: string): Unit {
  const key = `${kind}|${name}`;
  const had = cache.get(key);
  if (had) return had;
  const unit = lookUp(kind, name);
  // A hostile stream of unit names must not fill the memory.
  if (cache.size < 500) cache.set(key, unit);
  return unit;
}

function lookUp(kind: Kind, written: string): Unit {
  const table = unitScales[kind];
  const name = Object.hasOwn(table, written)
    ? written
    : Object.hasOwn(unitAliases, written)
      ? (unitAliases[written] as string)
      : written;
  if (Object.hasOwn(table, name)) return { name, scale: table[name] as number, offset: offsets[name] ?? 0 };
  const takes = `takes ${kinds[kind].called} such as ${inspectValue(kinds[kind].example)}`;
  if (name === '') throw new InputError(`got no unit, ${takes}`);
  const base = kinds[kind].base;
  if (base !== '' && kind !== 'temperature' && !kind.startsWith('price')) {
    const scale = scaleByAlgebra(name, base);
    if (scale !== undefined) return { name, scale, offset: 0 };
  }
  const other = (Object.keys(unitScales) as Kind[]).find((k) => Object.hasOwn(unitScales[k], name));
  if (other)
    throw new InputError(`got the unit ${inspectValue(written)} of ${kinds[other].called}, ${takes}`);
  const near = nearest(name, [
    ...Object.keys(table),
    ...Object.keys(unitAliases).filter((a) => Object.hasOwn(table, unitAliases[a] as string)),
  ]);
  const hint = near ? `; did you mean ${inspectValue(near)}?` : '';
  const spread = /\+-|\+\/-|±/.test(written) ? '; values with a spread go to uncertain' : hint;
  throw new InputError(`got the unit ${inspectValue(written)}, ${takes}${spread}`);
}

/** Names of the units that `kind` knows by heart. */
export function unitsOf(kind: Kind): string[] {
  return Object.keys(unitScales[kind]);
}
