/** Drops the last binary digit or two that a change of unit leaves, so that 0.9 m in mm is 900 and not 900.0000000000001. */
export function tidy(x: number): number {
  const rounded = Number(x.toPrecision(15));
  return Math.abs(rounded - x) <= Math.abs(x) * 4e-16 ? rounded : x;
}

/**
 * A number as people would write it: 8, not 8.000000000000002. Where 12 digits come within a few last bits of the number
 * they are meant; any other number keeps its 15 digits.
 */
export function clean(x: number): number {
  const short = Number(x.toPrecision(12));
  return Math.abs(short - x) <= Math.abs(x) * 2e-15 ? short : Number(x.toPrecision(15));
}
