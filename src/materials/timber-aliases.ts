// Other names of timbers: in other languages, in the trade, and names that more than one timber goes by. Names are no
// figures: data/timber-aliases.csv holds no sources, for they are common knowledge of the trade.
import Papa from 'papaparse';
import { readDataFile } from '../engine/data-folder.js';

export interface TimberAlias {
  readonly alias: string;
  /** Language, or `trade`. */
  readonly language: string;
  readonly species: string;
  /** What to mind where the name is used of other timbers too; '' where it is plain. */
  readonly caution: string;
}

let known: readonly TimberAlias[] | undefined;

/** Every alias, in the order of the file. */
export function timberAliases(): readonly TimberAlias[] {
  return (known ??= Papa.parse<Record<string, string>>(readDataFile('timber-aliases.csv'), {
    header: true,
    skipEmptyLines: true,
  }).data.map((row) => ({
    alias: row['alias'] as string,
    language: row['language'] as string,
    species: row['species_id'] as string,
    caution: row['caution'] as string,
  })));
}
