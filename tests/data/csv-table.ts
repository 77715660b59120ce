// The tables of data/ read as plain text, apart from the code that reads them for the recipes.
import { readdirSync, readFileSync } from 'node:fs';
import Papa from 'papaparse';

const folder = new URL('../../data/', import.meta.url);

export type CsvRow = Readonly<Record<string, string>> & { readonly table: string };

/** Names of the tables in data/, without `.csv`. */
export const tableNames = (): string[] =>
  readdirSync(folder)
    .filter((f) => f.endsWith('.csv'))
    .map((f) => f.replace(/\.csv$/, ''));

/** The rows of a table by column name. */
export function csvRows(table: string): CsvRow[] {
  const text = readFileSync(new URL(`${table}.csv`, folder), 'utf8');
  const { data, errors } = Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true });
  if (errors.length > 0) throw new Error(`${table}: ${errors[0]?.message ?? ''}`);
  return data.map((row) => ({ ...row, table }));
}

/** A cell as a number, undefined where it is empty or absent. */
export const numberIn = (row: CsvRow, column: string): number | undefined =>
  row[column] === undefined || row[column] === '' ? undefined : Number(row[column]);

export interface SourceEntry {
  readonly id: string;
  readonly title: string;
  readonly kind?: string;
  readonly reading?: string;
  readonly URL?: string;
}

export const sourceEntries = (): SourceEntry[] =>
  JSON.parse(readFileSync(new URL('sources.json', folder), 'utf8')) as SourceEntry[];

/** Every check row of data/checks/. */
export const checkEntries = (): { readonly id: string; readonly source: string; readonly recipe: string }[] =>
  readdirSync(new URL('checks/', folder)).flatMap(
    (f) =>
      JSON.parse(readFileSync(new URL(`checks/${f}`, folder), 'utf8')) as ReturnType<typeof checkEntries>,
  );
