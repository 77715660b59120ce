// What proves each recipe, from data/evidence.csv and the published checks; and where the figures of data/ come from.
import { readCsv } from '../engine/csv.js';
import { readDataFile } from '../engine/data-folder.js';
import { checkRows, checkTopics } from './published-checks.js';

/**
 * `printed`: at least three answers that a source prints are met. `derived`: a source prints formula or figures, and the
 * answer is worked from them. `geometry`: it follows from a drawing; a table of angles or a test proves it. `practice`: a
 * rule of the trade, or plain sums, with nothing in print to compare.
 */
export type EvidenceKind = 'printed' | 'derived' | 'geometry' | 'practice';

export interface Evidence {
  readonly recipe: string;
  readonly kind: EvidenceKind;
  /** In words, what it rests on. */
  readonly restsOn: string;
  /** Published checks whose answer is printed, and whose answer is worked from printed figures. */
  readonly printed: number;
  readonly derived: number;
  /** Test file that proves what no print does, '' where checks suffice. */
  readonly proof: string;
}

let known: ReadonlyMap<string, Evidence> | undefined;

function load(): ReadonlyMap<string, Evidence> {
  const checks = checkTopics.flatMap((t) => checkRows(t));
  const [, ...rows] = readCsv(readDataFile('evidence.csv')).rows;
  return new Map(
    rows
      .map(({ cells }) => cells)
      .filter((cells) => (cells[0] ?? '') !== '')
      .map(([recipe = '', kind = '', restsOn = '', proof = '']) => {
        const own = checks.filter((c) => c.recipe === recipe);
        const derived = own.filter((c) => c.basis === 'derived').length;
        return [
          recipe,
          { recipe, kind: kind as EvidenceKind, restsOn, proof, derived, printed: own.length - derived },
        ];
      }),
  );
}

/** What proves a recipe, by its name; undefined for a name that data/evidence.csv does not hold. */
export const evidenceOf = (recipe: string): Evidence | undefined => (known ??= load()).get(recipe);

/** Every recipe's evidence. */
export const allEvidence = (): readonly Evidence[] => [...(known ??= load()).values()];

/** One line: `printed: a paint supplier's table of walls (6 printed checks)`. */
export function evidenceText(e: Evidence): string {
  const counts = [
    e.printed > 0 ? `${String(e.printed)} printed check${e.printed === 1 ? '' : 's'}` : '',
    e.derived > 0 ? `${String(e.derived)} worked from printed figures` : '',
  ].filter(Boolean);
  return `${e.kind}: ${e.restsOn}${counts.length > 0 ? ` (${counts.join(', ')})` : ''}`;
}
