import { tableRows } from '../../materials/data-tables.js';
import type { Use } from './body-heights.js';

const limit = (place: string, column: string): number | undefined =>
  tableRows('access-heights.ada-2010')
    .find((r) => r.text('place') === place)
    ?.number(column);

/** What the published access rules say of a height, in words; metres. */
export function accessWords(use: Use, height: number): string {
  const h = height * 1000;
  if (use === 'seat') return 'no rule held here for seats';
  if (use === 'room for the knees') {
    const least = limit('knee room height', 'least_mm') as number;
    return h >= least - 1e-6
      ? `room for a wheelchair user’s knees: at least ${least} mm`
      : `too low for a wheelchair user’s knees: ${least} mm at least`;
  }
  const seated = limit('table or counter to sit at', 'most_mm') as number;
  const low = limit('table or counter to sit at', 'least_mm') as number;
  const served = limit('sales or service counter', 'most_mm') as number;
  if (h >= low - 1e-6 && h <= seated + 1e-6)
    return `within ${low} to ${seated} mm for people who sit in a wheelchair`;
  return h <= served + 1e-6
    ? `low enough to be served at, up to ${served} mm, but not to sit at`
    : `too high: a part of the counter, 915 mm long at least, is to be ${served} mm high or lower`;
}
