import Papa from 'papaparse';

/** A row of a CSV text, with the line of the file on which it begins. */
export interface CsvRow {
  readonly line: number;
  readonly cells: readonly string[];
}

const breaks = (text: string): number => [...text.matchAll(/\r\n|\r|\n/g)].length;

/** The header decides what parts the cells, not a guess over all: notes in the cells may be full of semicolons. */
function delimiterOf(text: string): string {
  const [header] = text.split(/[\r\n]/, 1) as [string];
  const parts = (d: string): number => header.split(d).length;
  return [',', ';', '\t', '|'].reduce((best, d) => (parts(d) > parts(best) ? d : best));
}

/**
 * Rows of a CSV text, empty ones too. A quoted cell may span lines, so rows and lines are counted apart.
 * `badQuote` is the line of a quotation mark that is not closed or stands in the middle of a cell.
 */
export function readCsv(text: string): {
  readonly rows: readonly CsvRow[];
  readonly delimiter: string;
  readonly badQuote?: number;
} {
  const whole = text.replace(/^\ufeff/, '');
  // Spreadsheets write a first line `sep=;` for each other.
  const declared = /^"?sep=(.)"?(?:\r\n|\r|\n)/i.exec(whole);
  const plain = whole.slice(declared?.[0].length ?? 0);
  const first = declared === null ? 1 : 2;
  const delimiter = declared?.[1] ?? delimiterOf(plain);
  const parsed = Papa.parse<string[]>(plain, { delimiter });
  let line = first;
  const rows = parsed.data.map((cells) => {
    const row = { line, cells };
    line += 1 + breaks(cells.join(' '));
    return row;
  });
  const bad = parsed.errors.find((e) => e.type === 'Quotes');
  return { rows, delimiter, ...(bad ? { badQuote: first + breaks(plain.slice(0, bad.index)) } : {}) };
}
