import { InputError, inspectValue } from '../units/input-error.js';
import { readCsv } from './csv.js';
import { readOwnFile } from './data-folder.js';

/** Rows of a table as they are written, by column. */
export interface WrittenRows {
  readonly rows: Record<string, unknown>[];
  /** Line of the file on which a row begins. */
  readonly line?: (row: number) => number;
  readonly delimiter?: string;
}

/** The value of a cell; undefined where it is empty, which a frame marks by NaN or null. */
export const cellValue = (v: unknown): unknown =>
  v === null || (typeof v === 'number' && Number.isNaN(v)) || v === '' ? undefined : v;

/**
 * The rows of a CSV text, or of the file it names; empty lines and lines that begin with # are passed over.
 * `takes` tells what the table takes, for errors. @throws InputError
 */
export function csvRows(value: string, takes: string): WrittenRows {
  const isText = /[\r\n]/.test(value);
  const name = isText ? 'the text' : value.trim();
  const { rows: found, badQuote, delimiter } = readCsv(isText ? value : fileText(value, takes));
  if (badQuote !== undefined)
    throw new InputError(
      `got ${inspectValue(name)} with a quotation mark that is not closed, in line ${badQuote}; takes ${takes}`,
    );
  const [head, ...body] = found;
  const columns = head?.cells.map((h) => h.trim()) ?? [];
  if (columns.every((c) => c === ''))
    throw new InputError(`got ${inspectValue(name)} with no header line; takes ${takes}`);
  const lines: number[] = [];
  const rows: Record<string, unknown>[] = [];
  for (const { line, cells } of body) {
    if (cells.every((c) => c.trim() === '') || cells[0]?.trim().startsWith('#')) continue;
    if (cells.length > columns.length)
      throw new InputError(
        `got ${inspectValue(name)} with ${cells.length} cells in line ${line}, takes ${columns.length} as in its header`,
      );
    lines.push(line);
    rows.push(Object.fromEntries(columns.map((c, j) => [c, cellValue((cells[j] ?? '').trim())])));
  }
  return { rows, line: (row) => lines[row] as number, delimiter };
}

/** Text of the file that the value names. @throws InputError where it cannot be read or is no CSV file */
function fileText(value: string, takes: string): string {
  const name = value.trim();
  if (/\.(xlsx?|xlsm|ods|numbers)$/i.test(name))
    throw new InputError(`got the spreadsheet ${inspectValue(name)}; open it and save the sheet as CSV`);
  if (!/\.(csv|tsv|txt)$/i.test(name)) throw new InputError(`got ${inspectValue(value)}, takes ${takes}`);
  try {
    return readOwnFile(name);
  } catch (error) {
    if (error instanceof InputError) throw new InputError(`the file ${inspectValue(name)} ${error.message}`);
    const { code } = error as { readonly code: string };
    throw new InputError(
      `got the file ${inspectValue(name)}, which ${code === 'ENOENT' ? 'does not exist here' : `cannot be read (${code})`}; takes ${takes}`,
    );
  }
}
