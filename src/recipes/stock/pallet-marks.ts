import type { Citation } from '../../engine/source.js';
import { tableRows } from '../../materials/data-tables.js';

/** Treatment marks of pallets, and none. */
export const markNames = ['HT', 'DH', 'MB', 'SF', 'none', 'stained'] as const;
export type Mark = (typeof markNames)[number];

/** What a mark allows, in words, and whether the wood may be used indoors or where children touch it. */
export function markAdvice(mark: Mark): {
  readonly words: string;
  readonly usable: boolean;
  readonly citation?: Citation;
} {
  const row = tableRows('marks.ispm-15-and-ps-20').find((r) => r.text('mark') === mark);
  const citation = row === undefined ? {} : { citation: row.citation };
  switch (mark) {
    case 'HT':
    case 'DH':
      return {
        words: 'Heat treated, no fumigant: may be used, unless stained or smelling.',
        usable: true,
        ...citation,
      };
    case 'MB':
    case 'SF':
      return {
        words: 'Fumigated: do not use indoors, for food, or where children touch it.',
        usable: false,
        ...citation,
      };
    case 'none':
      return { words: 'No mark: treatment and load are not known. Do not use.', usable: false };
    case 'stained':
      return { words: 'Stained or smelling: what was spilt on it is not known. Do not use.', usable: false };
  }
}
