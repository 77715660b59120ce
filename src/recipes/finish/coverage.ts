// Coverages as printed, from data/coverage.various.csv, and what to mind when you use one.
import { note, type Caution } from '../../engine/caution.js';
import { tableRows } from '../../materials/data-tables.js';
import type { Piece } from './coated-surface.js';

interface Rate {
  readonly amount: number;
  readonly text: string;
}

/** The least and the greatest coverage of data/coverage.various.csv, in m² a cubic metre. */
export function printedCoverages() {
  const rising = (column: 'low' | 'high') =>
    tableRows('coverage.various')
      .map((r) => ({ finish: r.text('finish'), rate: r.number(column) as number }))
      .sort((a, b) => a.rate - b.rate)
      .map(({ finish, rate }) => ({ amount: rate * 1000, text: `${String(rate)} m²/L (${finish})` }));
  return { low: rising('low')[0] as Rate, high: rising('high').at(-1) as Rate };
}

interface Asked {
  readonly surfaces: unknown;
  readonly loss?: number | undefined;
  readonly method?: string | undefined;
  readonly thinnerParts: number;
}

/** What to mind: faces left bare, loss not counted, thinned mix. */
export function coverageNotes(given: Asked): Caution[] {
  // An area as a plain number has no faces.
  const faces = ([given.surfaces].flat() as readonly Partial<Piece>[]).map((p) => p.faces);
  return [
    ...(faces.includes('top') || faces.includes('top and edges')
      ? [
          note(
            'a top left bare underneath takes up and gives off moisture faster on that side and can cup: give the underside as many coats as the top (common practice)',
          ),
        ]
      : []),
    ...(given.loss === undefined && given.method === undefined
      ? [note('no loss was counted: what stays in brush, roller, tray and tin comes on top')]
      : []),
    ...(given.thinnerParts > 0
      ? [
          note(
            'the coverage is taken as that of the thinned mix; thinned finish leaves a thinner film, see filmBuild',
          ),
        ]
      : []),
    note('coverage varies with timber, sanding and hand: measure it on the first coat and calculate again'),
  ];
}
