import type { Kind } from './kind.js';

/** Drops the last binary digit or two that a change of unit leaves, so that 0.9 m in mm is 900 and not 900.0000000000001. */
export function tidy(x: number): number {
  const rounded = Number(x.toPrecision(15));
  return Math.abs(rounded - x) <= Math.abs(x) * 4e-16 ? rounded : x;
}

/**
 * A number as people would write it: 8, not 8.000000000000002, and 25, not the 24.9999999999999 that a difference of larger
 * numbers leaves. Where 10 or 12 digits come within rounding of the number they are meant; any other number keeps its 15 digits.
 */
export function clean(x: number): number {
  const shorter = withoutTail(x);
  if (shorter !== x) return shorter;
  const short = Number(x.toPrecision(12));
  return Math.abs(short - x) <= Math.abs(x) * 2e-15 ? short : Number(x.toPrecision(15));
}

/** Where 10 digits come within rounding of the number they are meant; any other number stays as it is. */
export function withoutTail(x: number): number {
  const shorter = Number(x.toPrecision(10));
  return Math.abs(shorter - x) <= Math.abs(x) * 1e-13 ? shorter : x;
}

/** A length below a picometre is what rounding leaves of a difference of equal lengths: it is 0. */
export const withoutResidue = (kind: Kind, x: number): number =>
  (kind === 'length' || kind === 'thickness') && Math.abs(x) < 1e-12 ? 0 : x;

/** To the nearest step, without the last binary digits. */
export const roundedTo = (x: number, step: number): number =>
  Number((Math.round(x / step) * step).toFixed(4));
