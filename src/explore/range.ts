import { InputError, inspectValue } from '../units/input-error.js';

/** Values from one to another in equal steps, for one input of a sweep. */
export class Range {
  constructor(
    readonly from: unknown,
    readonly to: unknown,
    readonly count: number | undefined,
  ) {}
}
/** Several values for one input of a sweep, one after the other. */
export class ValueList<T = unknown> {
  constructor(readonly values: readonly T[]) {}
}

/**
 * `range('600 mm', '900 mm')` or `range('600 mm', '900 mm', 31)`: for a sweep over an input. Fits any kind of quantity.
 * @throws InputError when count is not a whole number from 2 to 1 000 000
 */
export function range(from: unknown, to: unknown, count?: number): never {
  if (count !== undefined && !(Number.isInteger(count) && count >= 2 && count <= 1_000_000))
    throw new InputError(`count: got ${inspectValue(count)}, takes a whole number from 2 to 1 000 000`);
  // Typed as never so that it may stand in the place of any input; a sweep reads it back.
  return new Range(from, to, count) as never;
}

/** `each(['white oak', 'teak'])`: for a sweep over named things or chosen values. @throws InputError on an empty list */
export function each(values: readonly unknown[]): never {
  if (!Array.isArray(values) || values.length === 0 || values.length > 1000)
    throw new InputError(`each: got ${inspectValue(values)}, takes a list of 1 to 1000 values`);
  return new ValueList(values) as never;
}

/** `'600 mm .. 900 mm'` as a Range; undefined when the text has no two dots. */
export function rangeFromText(text: string): Range | undefined {
  const parts = text.split(/\s*\.\.\.?\s*/);
  if (parts.length !== 2 || parts[0] === '' || parts[1] === '') return undefined;
  const unit = /[^\d\s.+-].*$/.exec(parts[1] as string)?.[0];
  // '600 .. 900 mm': the first takes the unit of the second.
  const first =
    /^[+-]?[\d.]+$/.test(parts[0] as string) && unit !== undefined ? `${parts[0]} ${unit}` : parts[0];
  return new Range(first, parts[1], undefined);
}
