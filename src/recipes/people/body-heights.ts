import type { Citation } from '../../engine/source.js';
import { tableRows } from '../../materials/data-tables.js';

export const people = ['adults', 'men', 'women'] as const;
export type People = (typeof people)[number];

interface UseRule {
  readonly measure: string;
  /** The body measure with shoes lies at least and at most this far above the height, metres. */
  readonly least: number;
  readonly most: number;
  readonly words: string;
}

/** What a height is for, and how it lies to the body: common practice of workplaces. */
export const uses = {
  'standing, light work': {
    measure: 'elbow height',
    least: 0.05,
    most: 0.15,
    words: '50 to 150 mm above it',
  },
  'standing, heavy work': { measure: 'elbow height', least: 0.1, most: 0.3, words: '100 to 300 mm above it' },
  'standing, fine work': { measure: 'elbow height', least: -0.1, most: 0, words: 'up to 100 mm below it' },
  // Feet on the floor: the hollow of the knee with shoes no lower than the seat.
  seat: { measure: 'popliteal height', least: 0, most: 0.1, words: 'up to 100 mm above it' },
  'room for the knees': {
    measure: 'knee height',
    least: -Infinity,
    most: -0.01,
    words: 'at least 10 mm below it',
  },
} as const satisfies Record<string, UseRule>;
export type Use = keyof typeof uses;

/** A body measure: metres. */
export interface BodyMeasure {
  readonly fifth: number;
  readonly mean: number;
  readonly ninetyFifth: number;
  readonly deviation: number;
  readonly citation: Citation;
}

/** A body measure of men or of women. @throws Error for one that is not in data/body-heights.csv */
export function bodyOf(who: 'men' | 'women', measure: string): BodyMeasure {
  const row = tableRows('body-heights').find(
    (r) => r.text('people') === who && r.text('measure') === measure,
  );
  if (!row) throw new Error(`data/body-heights.csv has no ${measure} of ${who}`);
  const m = (column: string): number => (row.number(column) as number) / 1000;
  return {
    fifth: m('fifth_mm'),
    mean: m('mean_mm'),
    ninetyFifth: m('ninety_fifth_mm'),
    deviation: m('deviation_mm'),
    citation: row.citation,
  };
}

/**
 * Seat and table of the largest school size whose seat is no higher than the lower leg: a seat too high presses the thighs.
 * Undefined below the smallest. Lengths in m.
 */
export function schoolSize(
  lowerLeg: number,
): { seat: number; table: number; citation: Citation } | undefined {
  return tableRows('school-heights.en-1729')
    .map((r) => ({
      seat: (r.number('seat_mm') as number) / 1000,
      table: (r.number('table_mm') as number) / 1000,
      citation: r.citation,
    }))
    .filter(({ seat }) => seat <= lowerLeg + 1e-9)
    .sort((a, b) => b.seat - a.seat)[0];
}
