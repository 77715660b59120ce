import { InputError, nearest, inspectValue } from '../units/input-error.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import type { Field } from '../engine/field.js';
import { isNumberField, quantityPart } from './frame-columns.js';
import { ValueList, Range, rangeFromText } from './range.js';
import { withFieldPath } from './field-path.js';

/** One swept input: its values in base units, or the things named, with the labels people read. */
export interface Axis {
  readonly name: string;
  readonly field: Field;
  readonly count: number;
  at(i: number): unknown;
  /** Writes its numbers, from the one at `start` on, into a column. */
  fill(start: number, into: Float64Array): void;
  /** The numbers among which the one farthest from 0 is: the ends of a range. */
  readonly ends: ArrayLike<number>;
  /** Whether its numbers go from one end to the other in even steps. */
  readonly even: boolean;
  readonly values: ArrayLike<unknown>;
  readonly labels: readonly string[];
  readonly numeric: boolean;
}

/** Splits what was given into the swept axes and one set of base numbers for the rest. */
export function axesOf(
  r: AnyRecipe,
  inputs: Readonly<Record<string, unknown>>,
  steps: number | undefined,
): { axes: Axis[]; base: Readonly<Record<string, unknown>> } {
  const swept: [string, Range | ValueList][] = [];
  const rest: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(inputs)) {
    const field = r.inputs[name];
    if (!field) throw noSuchInput(r, name);
    const varying = varyingOf(field, value);
    if (varying) swept.push([name, varying]);
    else rest[name] = value;
  }
  if (swept.length === 0)
    throw new InputError(
      "no input has a range; takes one such as range('600 mm', '900 mm'), '600 mm .. 900 mm' or each([...])",
      r.name,
    );
  const ranges = swept.filter(([, v]) => Range.is(v)).length;
  const axes = swept.map(([name, value]) =>
    axisOf(r, name, value, steps ?? (ranges > 1 || swept.length > 1 ? 25 : 61)),
  );
  // The first value of each axis stands in, so that the rest is read and checked once as a whole.
  const base = r.read({
    ...rest,
    ...Object.fromEntries(swept.map(([name, v]) => [name, Range.is(v) ? v.from : v.values[0]])),
  });
  return { axes, base };
}

/** A range or a list of values, as an object, as text `600 mm .. 900 mm` or as an array; undefined for one value. */
function varyingOf(field: Field, value: unknown): Range | ValueList | undefined {
  if (Range.is(value) || ValueList.is(value)) return value;
  if (typeof value === 'string') return isNumberField(quantityPart(field)) ? rangeFromText(value) : undefined;
  const takesList = [field, ...(field.items ?? [])].some((x) => x.kind === 'list' || x.kind === 'table');
  return Array.isArray(value) && !takesList ? new ValueList(value) : undefined;
}

function noSuchInput(r: AnyRecipe, name: string): InputError {
  const near = nearest(name, Object.keys(r.inputs));
  return new InputError(
    {
      field: name,
      message: `no such input${near ? `; did you mean ${inspectValue(near)}?` : `; takes ${Object.keys(r.inputs).join(', ')}`}`,
    },
    r.name,
  );
}

function axisOf(r: AnyRecipe, name: string, value: Range | ValueList, steps: number): Axis {
  const field = r.inputs[name] as Field;
  return Range.is(value)
    ? rangeAxis(r, name, quantityPart(field), value, steps)
    : listAxis(r, name, field, value);
}

function listAxis(r: AnyRecipe, name: string, field: Field, list: ValueList): Axis {
  const values = list.values.map((v) => withFieldPath(r.name, name, () => field.read(v)));
  const numeric = isNumberField(field);
  const numbers = values as readonly number[];
  return {
    name,
    field,
    count: values.length,
    at: (i) => values[i],
    fill: (start, into) => into.set(numbers.slice(start, start + into.length)),
    ends: numbers,
    even: false,
    values,
    numeric,
    labels: list.values.map((v, i) =>
      typeof v === 'string' ? v : numeric ? field.format(values[i]) : labelOf(v),
    ),
  };
}

function rangeAxis(r: AnyRecipe, name: string, field: Field, range: Range, steps: number): Axis {
  const refuse = (message: string): never => {
    throw new InputError({ field: name, message }, r.name);
  };
  if (!isNumberField(field)) refuse(`got a range, takes ${field.expects}; use each([...])`);
  const read = (v: unknown): number => withFieldPath(r.name, name, () => field.read(v)) as number;
  const [from, to] = [read(range.from), read(range.to)];
  if (from === to)
    refuse(
      `got a range from ${inspectValue(range.from)} to ${inspectValue(range.to)}, takes two ends that differ`,
    );
  const count = field.kind === 'count' ? Math.abs(to - from) + 1 : (range.count ?? steps);
  if (!(count >= 2 && count <= 1_000_000)) refuse(`got a range of ${count} values, takes 2 to 1 000 000`);
  const last = count - 1;
  const at = (i: number): number => (i === last ? to : from + ((to - from) * i) / last);
  return {
    name,
    field,
    count,
    at,
    fill: (start, into) => {
      for (let i = 0; i < into.length; i++) into[i] = from + ((to - from) * (start + i)) / last;
      // Rounding may miss the end by a bit; it is given, so it is met.
      if (start + into.length === count) into[into.length - 1] = to;
    },
    ends: [from, to],
    even: true,
    numeric: true,
    get values() {
      return Float64Array.from({ length: count }, (_, i) => at(i));
    },
    get labels() {
      return Array.from({ length: count }, (_, i) => field.format(at(i)));
    },
  };
}

const labelOf = (v: unknown): string =>
  typeof v === 'object' && v !== null ? Object.values(v).map(String).join(' ') : String(v);
