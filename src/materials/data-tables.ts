// Reads the tables of data/ into rows that carry their source. A row whose source, place or way of reading is missing
// does not load: a figure nobody can trace is worse than none.
import { readCsv, type CsvRow } from '../engine/csv.js';
import { readDataFile } from '../engine/data-folder.js';
import { allSources, cite, type Citation } from '../engine/source.js';

/** One row of a published table. */
export interface DataRow {
  /** Name of the file in data/. */
  readonly table: string;
  readonly line: number;
  /** Id of the species, or '' in tables of rules, grades and climates. */
  readonly species: string;
  /** The name as the source prints it. */
  readonly printedAs: string;
  readonly citation: Citation;
  /** `derived`: worked out by a printed formula from figures read in print; `practice`: common practice of the trade. */
  readonly read: 'text' | 'memory' | 'choice' | 'derived' | 'practice';
  readonly doubt: string;
  /** False where another source is preferred; `preferReason` says why. */
  readonly preferred: boolean;
  readonly preferReason: string;
  /** A cell as text, '' when empty or absent. */
  text(column: string): string;
  /** A cell as a number, undefined when empty. */
  number(column: string): number | undefined;
}

const loaded = new Map<string, readonly DataRow[]>();

/** Rows of a table of data/, such as `movement.fpl-gtr-190`. Read once. @throws Error on a row without its source */
export function tableRows(name: string): readonly DataRow[] {
  const had = loaded.get(name);
  if (had) return had;
  const rows = parseTable(`${name}.csv`, readDataFile(`${name}.csv`));
  loaded.set(name, rows);
  return rows;
}

/** The rows of a table's text; `file` names it in errors. @throws Error naming file and line */
export function parseTable(file: string, text: string): DataRow[] {
  const { rows, badQuote } = readCsv(text);
  if (badQuote !== undefined)
    throw new Error(`data/${file}, line ${badQuote}: a quotation mark is not closed`);
  const [head, ...body] = rows as [CsvRow, ...CsvRow[]];
  return body
    .filter(({ cells }) => cells.length > 1 || cells[0] !== '')
    .map(({ line, cells }) => {
      if (cells.length !== head.cells.length)
        throw new Error(
          `data/${file}, line ${line}: ${cells.length} cells, takes ${head.cells.length} as in its header`,
        );
      return rowOf(file, line, Object.fromEntries(head.cells.map((h, i) => [h, cells[i] as string])));
    });
}

const readings = ['text', 'memory', 'choice', 'derived', 'practice'] as const;
const isReading = (text: string): text is DataRow['read'] => (readings as readonly string[]).includes(text);

function rowOf(file: string, line: number, cells: Record<string, string>): DataRow {
  const text = (column: string): string =>
    Object.hasOwn(cells, column) ? (cells[column] as string).trim() : '';
  const refuse = (label: string): never => {
    throw new Error(`data/${file}, line ${line}: ${label}`);
  };
  const source = text('source');
  if (!source || !allSources().has(source))
    refuse(
      `the source ${JSON.stringify(source)} is not in data/sources.json; a row without a source does not load`,
    );
  const read = text('read');
  if (!isReading(read))
    return refuse(
      `read is ${JSON.stringify(read)}, must be one of ${readings.map((r) => `"${r}"`).join(', ')}`,
    );
  if (!text('locator')) refuse('locator is empty, takes the table, equation or page');
  return {
    table: file.replace(/\.csv$/, ''),
    line,
    species: text('species_id'),
    printedAs: text('printed_as'),
    citation: cite(source, text('locator'), read === 'memory' ? { read } : {}),
    read,
    // How a row was read, as `reading: ...`, stays in the table.
    doubt: text('doubt').startsWith('reading: ') ? '' : text('doubt'),
    preferred: text('preferred') !== 'no',
    preferReason: text('prefer_reason'),
    text,
    number: (column) => {
      const t = text(column);
      if (t === '') return undefined;
      const n = Number(t);
      return Number.isFinite(n) ? n : refuse(`${column} is ${JSON.stringify(t)}, takes a number`);
    },
  };
}

const bySpecies = new Map<string, ReadonlyMap<string, readonly DataRow[]>>();

/** Rows of one species in a table, preferred ones first. */
export function rowsOf(table: string, species: string): readonly DataRow[] {
  let map = bySpecies.get(table);
  if (!map) {
    const fresh = new Map<string, DataRow[]>();
    for (const row of tableRows(table)) fresh.set(row.species, [...(fresh.get(row.species) ?? []), row]);
    for (const rows of fresh.values()) rows.sort((a, b) => Number(b.preferred) - Number(a.preferred));
    bySpecies.set(table, (map = fresh));
  }
  return map.get(species) ?? [];
}
