// Where the figures of data/ come from: rows by the kind of their source, by how the source was read, and those recalled.
import { dataFileNames } from '../engine/data-folder.js';
import { allSources } from '../engine/source.js';
import { tableRows } from '../materials/data-tables.js';

/** Counts of rows of figures; names of species and of evidence are no figures. */
export interface DataCounts {
  readonly rows: number;
  /** `text`, `derived`, `choice`, `memory`. */
  readonly byReading: Readonly<Record<string, number>>;
  /** By kind of source: `standard`, `handbook` ... */
  readonly bySourceKind: Readonly<Record<string, number>>;
  /** By how the source itself was seen: `original`, `reprint`, `quoted`, `recalled`. */
  readonly bySourceReading: Readonly<Record<string, number>>;
  /** Tables with rows from memory, most first. */
  readonly fromMemory: readonly { readonly table: string; readonly rows: number; readonly of: number }[];
}

const noFigures = ['species.csv', 'evidence.csv', 'timber-aliases.csv', 'glossary.csv'];

function count(items: readonly string[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const item of [...items].sort()) counts[item] = (counts[item] ?? 0) + 1;
  return counts;
}

/** Counts every row of every table of data/. */
export function dataCounts(): DataCounts {
  const tables = dataFileNames()
    .filter((f) => f.endsWith('.csv') && !noFigures.includes(f))
    .map((f) => tableRows(f.replace(/\.csv$/, '')));
  const rows = tables.flat();
  const sources = allSources();
  return {
    rows: rows.length,
    byReading: count(rows.map((r) => r.read)),
    bySourceKind: count(rows.map((r) => sources.get(r.citation.id)?.kind ?? 'unknown')),
    bySourceReading: count(rows.map((r) => sources.get(r.citation.id)?.reading ?? 'unknown')),
    fromMemory: tables
      .map((t) => ({
        table: t[0]?.table ?? '',
        rows: t.filter((r) => r.read === 'memory').length,
        of: t.length,
      }))
      .filter((t) => t.rows > 0)
      .sort((a, b) => b.rows - a.rows),
  };
}
