import { isPlainObject } from '../engine/field.js';

/**
 * The new tree with every part that equals the old one replaced by it, so that what did not change is the same object and
 * nothing that reads it is worked out again.
 */
export function shareEqual<T>(before: unknown, now: T): T {
  if (Object.is(before, now)) return now;
  if (Array.isArray(now)) {
    if (!Array.isArray(before)) return now;
    const list = now.map((v, i) => shareEqual<unknown>(before[i], v));
    return (list.length === before.length && list.every((v, i) => Object.is(v, before[i]))
      ? before
      : list) as unknown as T;
  }
  if (!isPlainObject(now) || !isPlainObject(before)) return now;
  const names = Object.keys(now);
  const out = Object.fromEntries(names.map((n) => [n, shareEqual<unknown>(before[n], now[n])]));
  const same =
    names.length === Object.keys(before).length && names.every((n) => Object.is(out[n], before[n]));
  return (same ? before : out) as T;
}
