// A printed figure is kept as text: its last digit tells how exactly it was printed, and half of that is the tolerance.
import { expect } from 'vitest';

/** Half a unit of the last digit of `printed`. */
export function halfUnit(printed: string): number {
  const digits = /^-?\d+(?:\.(\d+))?$/.exec(printed);
  if (!digits) throw new Error(`not a printed figure: ${printed}`);
  return 0.5 * 10 ** -(digits[1]?.length ?? 0);
}

/** Expects `got` to round to what is printed; `within` replaces half a unit where the source itself says so. */
export function expectPrinted(got: number, printed: string, name: string, within = halfUnit(printed)): void {
  expect(
    Math.abs(got - Number(printed)),
    `${name}: calculated ${String(got)}, printed ${printed}`,
  ).toBeLessThanOrEqual(within * (1 + 1e-9));
}
