import { InputError, inspectValue } from '../../units/input-error.js';
import { field, collectIssues } from '../../engine/field.js';

/** Where something stands on a beam. */
export const place = (label: string) => field.length({ label: label, min: '0 mm', max: '100 m' });

/** Reads a list of 1 to `most` entries, or a text of them parted by commas. @throws InputError with every wrong entry */
export function listOf<T>(value: unknown, takes: string, one: (v: unknown) => T, most: number): T[] {
  const items =
    typeof value === 'string'
      ? value
          .split(/[;,]/)
          .map((s) => s.trim())
          .filter((s) => s !== '')
      : value;
  if (!Array.isArray(items)) throw new InputError(`got ${inspectValue(value)}, takes ${takes}`);
  if (items.length === 0 || items.length > most)
    throw new InputError(`got ${items.length} entries, takes 1 to ${most}: ${takes}`);
  return collectIssues(items.map((v, i) => [`[${i + 1}]`, () => one(v)] as const));
}

/** Whether every named part is a number within its bounds, as a sweep hands them on. */
export const inBounds = (
  parts: Readonly<Record<string, unknown>>,
  bounds: Readonly<Record<string, readonly [least: number, most: number]>>,
): boolean =>
  Object.entries(bounds).every(([name, [least, most]]) => {
    const n = parts[name];
    return typeof n === 'number' && n >= least && n <= most;
  });
