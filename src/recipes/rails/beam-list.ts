import { Refusal, shown } from '../../quantities/refusal.js';
import { field, together } from '../../recipe/field.js';

/** Where something stands on a beam. */
export const place = (says: string) => field.length({ says, min: '0 mm', max: '100 m' });

/** Reads a list of 1 to `most` entries, or a text of them parted by commas. @throws Refusal with every wrong entry */
export function listOf<T>(value: unknown, takes: string, one: (v: unknown) => T, most: number): T[] {
  const items =
    typeof value === 'string'
      ? value
          .split(/[;,]/)
          .map((s) => s.trim())
          .filter((s) => s !== '')
      : value;
  if (!Array.isArray(items)) throw new Refusal(`got ${shown(value)}, takes ${takes}`);
  if (items.length === 0 || items.length > most)
    throw new Refusal(`got ${items.length} entries, takes 1 to ${most}: ${takes}`);
  return together(items.map((v, i) => [`[${i + 1}]`, () => one(v)] as const));
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
