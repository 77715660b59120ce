import { InputError, inspectValue } from '../units/input-error.js';
import type { Quantity } from '../units/quantity.js';

/** Text with a unit, a quantity, or a number for counts and ratios. */
export type Written = string | number | Quantity;

/** Values from one to another in equal steps, for one input of a sweep. */
export class Range {
  // Private, so that no other type passes for a range.
  readonly #isRange = true;
  constructor(
    readonly from: Written,
    readonly to: Written,
    readonly count: number | undefined,
  ) {}
  static is(value: unknown): value is Range {
    return typeof value === 'object' && value !== null && #isRange in value;
  }
}
/** Several values for one input of a sweep, one after the other. */
export class ValueList<T = unknown> {
  readonly #isValueList = true;
  constructor(readonly values: readonly T[]) {}
  static is(value: unknown): value is ValueList {
    return typeof value === 'object' && value !== null && #isValueList in value;
  }
}

/**
 * `range('600 mm', '900 mm')` or `range('600 mm', '900 mm', 31)`: for a sweep over an input. Fits any kind of quantity.
 * @throws InputError when count is not a whole number from 2 to 1 000 000
 */
export function range(from: Written, to: Written, count?: number): Range {
  if (count !== undefined && !(Number.isInteger(count) && count >= 2 && count <= 1_000_000))
    throw new InputError(`count: got ${inspectValue(count)}, takes a whole number from 2 to 1 000 000`);
  return new Range(from, to, count);
}

/** `each(['white oak', 'teak'])`: for a sweep over named things or chosen values. @throws InputError on an empty list */
export function each<const T>(values: readonly T[]): ValueList<T> {
  const list: unknown = values;
  if (!Array.isArray(list) || list.length === 0 || list.length > 1000)
    throw new InputError(`each: got ${inspectValue(values)}, takes a list of 1 to 1000 values`);
  return new ValueList<T>(values);
}

/** `'600 mm .. 900 mm'` as a Range; undefined when the text has no two dots. */
export function rangeFromText(text: string): Range | undefined {
  const [from, to, more] = text.split(/\s*\.\.\.?\s*/);
  if (!from || !to || more !== undefined) return undefined;
  return new Range(withUnitOf(from, to), to, undefined);
}

/** '600 .. 900 mm', '900 +- 2 mm': a bare first number takes the unit of the second. */
export function withUnitOf(first: string, second: string): string {
  const unit = /[^\d\s.+-].*$/.exec(second)?.[0];
  return unit !== undefined && /^[+-]?[\d.]+$/.test(first) ? `${first} ${unit}` : first;
}
