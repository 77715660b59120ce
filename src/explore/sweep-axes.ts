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
  /** The numbers among which the one farthest from nought is: the ends of a range. */
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
    if (!field) {
      const near = nearest(name, Object.keys(r.inputs));
      throw new InputError(
        {
          field: name,
          message: `no such input${near ? `; did you mean ${inspectValue(near)}?` : `; takes ${Object.keys(r.inputs).join(', ')}`}`,
        },
        r.name,
      );
    }
    const fromText =
      typeof value === 'string' && isNumberField(quantityPart(field)) ? rangeFromText(value) : undefined;
    if (value instanceof Range || value instanceof ValueList) swept.push([name, value]);
    else if (fromText) swept.push([name, fromText]);
    else if (
      Array.isArray(value) &&
      field.kind !== 'list' &&
      field.kind !== 'table' &&
      !(field.items ?? []).some((x) => x.kind === 'list' || x.kind === 'table')
    )
      swept.push([name, new ValueList(value)]);
    else rest[name] = value;
  }
  if (swept.length === 0)
    throw new InputError(
      "sweep: no input has a range; takes one such as range('600 mm', '900 mm'), '600 mm .. 900 mm' or each([...])",
      r.name,
    );
  const ranges = swept.filter(([, v]) => v instanceof Range).length;
  const axes = swept.map(([name, value]) =>
    axisOf(r, name, value, steps ?? (ranges > 1 || swept.length > 1 ? 25 : 61)),
  );
  // The first value of each axis stands in, so that the rest is read and checked once as a whole.
  const base = r.read({
    ...rest,
    ...Object.fromEntries(swept.map(([name, v]) => [name, v instanceof Range ? v.from : v.values[0]])),
  });
  return { axes, base };
}

function axisOf(r: AnyRecipe, name: string, value: Range | ValueList, steps: number): Axis {
  const whole = r.inputs[name] as Field;
  const field = value instanceof Range ? quantityPart(whole) : whole;
  const read = (v: unknown): unknown => withFieldPath(r.name, name, () => field.read(v));
  if (value instanceof ValueList) {
    const values = value.values.map(read);
    const numeric = isNumberField(field);
    return {
      name,
      field,
      count: values.length,
      at: (i) => values[i],
      fill: (start, into) => into.set((values as readonly number[]).slice(start, start + into.length)),
      ends: values as readonly number[],
      even: false,
      values,
      numeric,
      labels: value.values.map((v, i) =>
        typeof v === 'string' ? v : numeric ? field.format(values[i]) : labelOf(v),
      ),
    };
  }
  if (!isNumberField(field))
    throw new InputError(
      { field: name, message: `got a range, takes ${field.expects}; use each([...])` },
      r.name,
    );
  const [from, to] = [read(value.from) as number, read(value.to) as number];
  if (from === to)
    throw new InputError(
      {
        field: name,
        message: `got a range from ${inspectValue(value.from)} to ${inspectValue(value.to)}, takes two ends that differ`,
      },
      r.name,
    );
  const count = field.kind === 'count' ? Math.abs(to - from) + 1 : (value.count ?? steps);
  if (!(count >= 2 && count <= 1_000_000))
    throw new InputError(
      { field: name, message: `got a range of ${count} values, takes 2 to 1 000 000` },
      r.name,
    );
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
