import { InputError, inspectValue } from '../units/input-error.js';
import { kinds } from '../units/kind.js';
import { NumberStyle } from './csv-numbers.js';
import {
  isPlainObject,
  makeField,
  makeParser,
  collectIssues,
  type Field,
  type Fields,
  type Input,
  type Parsed,
} from './field.js';
import { cellValue, csvRows, type WrittenRows } from './table-rows.js';

/** A data frame, known by its shape alone so that the engine needs no frame library. */
export interface FrameLike {
  readonly columns: readonly string[];
  readonly values: readonly unknown[];
}

/** What may be given for a table: rows, a data frame, or the name of a CSV file (or its text, when it has line breaks). */
export type TableGiven<F extends Fields> = readonly Input<F>[] | FrameLike | string;

interface TableOptions {
  readonly label: string;
  readonly optional?: true;
  readonly default?: readonly object[];
  readonly least?: number;
  readonly most?: number;
  /** Looks at a whole row once its cells are read, for what no cell shows alone. @throws InputError naming columns */
  readonly row?: (row: never) => void;
}
type Optional<O> = O extends { optional: true } | { default: readonly object[] } ? true : false;
type Out<O, T> = O extends { optional: true } ? T | undefined : T;

const isFrame = (v: unknown): v is FrameLike =>
  typeof v === 'object' &&
  v !== null &&
  Array.isArray((v as FrameLike).columns) &&
  Array.isArray((v as FrameLike).values);

/**
 * A field that takes a table. A header may carry a unit: `length (mm)`, `length [mm]` or `length_mm`; a bare number in
 * that column then has it. All wrong rows come back together, each with its row number (and line, in a file).
 */
export function tableField<const F extends Fields, const O extends TableOptions>(
  columns: F,
  options: O,
): Field<TableGiven<F>, Out<O, readonly Parsed<F>[]>, Optional<O>> {
  const check = makeParser(columns);
  const takes = `a table (a list of rows, a data frame or a CSV file) with columns ${Object.entries(columns)
    .map(([n, f]) => `${n}${f.optional ? '?' : ''}`)
    .join(', ')}`;
  const read = (value: unknown): readonly Parsed<F>[] => {
    const { rows, line, header, note } = readRows(value, columns, takes);
    const least = options.least ?? 1;
    const most = options.most ?? 100_000;
    if (rows.length < least || rows.length > most)
      throw new InputError(`got ${rows.length} rows, takes ${least} to ${most}: ${takes}`);
    const parsed = collectIssues(
      rows.map((row, i): readonly [string, () => Parsed<F>] => [
        `[${i + 1}]${line ? ` (line ${line(i)})` : ''}`,
        () => {
          const read = check(renamed(row, header));
          options.row?.(read as never);
          return read;
        },
      ]),
    );
    if (note !== undefined) readingNotes.set(parsed, note);
    return parsed;
  };
  return makeField<TableGiven<F>, readonly Parsed<F>[], O>(
    {
      kind: 'table',
      expects: takes,
      read,
      accepts: (v) => Array.isArray(v) || typeof v === 'string' || isFrame(v),
      format: (rows) => {
        const note = readingNotes.get(rows);
        return `${rows.length} row${rows.length === 1 ? '' : 's'}${note === undefined ? '' : ` (${note})`}`;
      },
    },
    options,
    { fields: columns },
  ) as unknown as Field<TableGiven<F>, Out<O, readonly Parsed<F>[]>, Optional<O>>;
}

/** The rows of a table as they are written, those of a file with a decimal point in every number. @throws InputError */
export function readRows(
  value: unknown,
  columns: Fields,
  takes: string,
): WrittenRows & { header: Map<string, Column>; note?: string | undefined } {
  const { rows, line, delimiter } = rowsOf(value, takes);
  const header = headerOf(rows, Object.keys(columns));
  if (line === undefined || delimiter === undefined) return { rows, header };
  const isNumber = (key: string): boolean =>
    Object.hasOwn(kinds, columns[header.get(key)?.name ?? '']?.kind ?? 'text');
  return { line, header, ...withPlainNumbers(rows, { line, delimiter, isNumber }) };
}

/** How numbers of a file were read, where they were not read as they stand; told wherever the table is shown. */
const readingNotes = new WeakMap<object, string>();

/** The rows of a file with its numbers written with a decimal point; `note` says what was read otherwise than it stands there. */
function withPlainNumbers(
  rows: Record<string, unknown>[],
  file: { line: (row: number) => number; delimiter: string; isNumber: (key: string) => boolean },
): { rows: Record<string, unknown>[]; note?: string | undefined } {
  const cells = rows.flatMap((row, at) =>
    Object.entries(row).flatMap(([key, text]) =>
      typeof text === 'string' && file.isNumber(key) ? [{ line: file.line(at), text }] : [],
    ),
  );
  const style = NumberStyle.of(cells, file.delimiter);
  const plain = (key: string, value: unknown): unknown =>
    typeof value === 'string' && file.isNumber(key) ? style.plain(value) : value;
  return {
    rows: rows.map((row) =>
      Object.fromEntries(Object.entries(row).map(([key, value]) => [key, plain(key, value)])),
    ),
    note: style.note(cells),
  };
}

function rowsOf(value: unknown, takes: string): WrittenRows {
  if (typeof value === 'string') return csvRows(value, takes);
  if (isFrame(value)) {
    return {
      rows: value.values.map((v) =>
        Object.fromEntries(value.columns.map((c, i) => [c, cellValue((v as readonly unknown[])[i])])),
      ),
    };
  }
  if (!Array.isArray(value)) throw new InputError(`got ${inspectValue(value)}, takes ${takes}`);
  const rows = collectIssues(
    value.map(
      (row, i) =>
        [
          `[${i + 1}]`,
          (): Record<string, unknown> => {
            if (!isPlainObject(row))
              throw new InputError(`got ${inspectValue(row)}, takes a row as an object`);
            return row;
          },
        ] as const,
    ),
  );
  return { rows };
}

interface Column {
  readonly name: string;
  readonly unit?: string;
}

/** Maps each written header to a column: exact name, or name with a unit. Unknown ones stay, and the row check names them. */
function headerOf(rows: readonly Record<string, unknown>[], names: readonly string[]): Map<string, Column> {
  const written = new Set(rows.flatMap((r) => Object.keys(r)));
  const map = new Map<string, Column>();
  const plain = (s: string): string => s.toLowerCase().replace(/[\s_-]+/g, '');
  for (const w of written) {
    const bracket = /^([^([]*?)\s*[([]([^)\]]{1,20})[)\]]$/.exec(w);
    const tail = /^(.*)_([A-Za-z0-9%]{1,8})$/.exec(w);
    const exact = names.find((n) => plain(n) === plain(w));
    const inBracket = bracket && names.find((n) => plain(n) === plain(bracket[1] as string));
    const inTail = tail && names.find((n) => plain(n) === plain(tail[1] as string));
    if (exact) map.set(w, { name: exact });
    else if (inBracket) map.set(w, { name: inBracket, unit: bracket[2] });
    else if (inTail) map.set(w, { name: inTail, unit: tail[2] === 'pct' ? '%' : tail[2] });
    else map.set(w, { name: w });
  }
  return map;
}

function renamed(row: Record<string, unknown>, header: Map<string, Column>): Record<string, unknown> {
  const out: Record<string, unknown> = {};
  for (const [key, value] of Object.entries(row)) {
    if (value === undefined) continue;
    const column = header.get(key) as Column;
    const bare =
      typeof value === 'number' ||
      (typeof value === 'string' &&
        /^[+-]?(\d+[.,]?\d*|\.\d+)([eE][+-]?\d+)?$|^\d+(?:[ -]\d+)?\/\d+$|^\d+[ -]\d+\/\d+$/.test(value));
    out[column.name] = column.unit !== undefined && bare ? `${value} ${column.unit}` : value;
  }
  return out;
}
