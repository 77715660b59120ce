import { pileYield } from '../../../recipes/stock/pile-yield.js';
import { toQuantity } from '../../../units/parse-quantity.js';
import { InputError } from '../../../units/input-error.js';
import type { SurveyDoubt } from '../model/survey-reading.js';
import type { SurveyTable } from './survey-table.js';
import { isLengthColumn } from './survey-columns.js';

type Rows = readonly (Readonly<Record<string, unknown>> | undefined)[];

interface Found extends SurveyDoubt {
  /** Column and kind of the doubt: alike ones are told together. */
  readonly kind: string;
}

/** What cannot be right, row by row: values the recipes refuse, and those far from the others of their column. */
export function doubtsOf(table: SurveyTable, rows: Rows): Found[] {
  return rows.flatMap((row, at) => (row === undefined ? [] : doubtsOfRow(table, row, at, rows)));
}

function doubtsOfRow(
  table: SurveyTable,
  row: Readonly<Record<string, unknown>>,
  at: number,
  rows: Rows,
): Found[] {
  try {
    pileYield.inputs.boards.read([row]);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.issues.map((issue) => {
      const column = issue.field.replace(/^\[1\]\.?/, '');
      return found(table, at, column, issue.message, repairOf(table, rows, at, column));
    });
  }
  return table.headings.flatMap(({ column }) => {
    const value = lengthOf(row[column]);
    const usual = medianOf(rows, column);
    if (!isLengthColumn(column) || value === undefined || usual === undefined || usual === 0) return [];
    const share = value / usual;
    if (column !== 'length' && column !== 'width' && column !== 'thickness') return [];
    if (share < 8 && share > 1 / 8) return [];
    const words = `${String(row[column])} is far from the usual ${text(usual)}`;
    return [found(table, at, column, words, repairOf(table, rows, at, column))];
  });
}

function found(
  table: SurveyTable,
  at: number,
  column: string,
  message: string,
  repair: string | undefined,
): Found {
  const heading = table.headings.find((known) => known.column === column)?.heading;
  return {
    message: `Row ${at + 1}${column === '' ? '' : `, ${heading ?? column}`}: ${message}`,
    cell: heading === undefined ? undefined : `${at}:${heading}`,
    repair,
    row: at,
    kind: `${column} ${message.replace(/"[^"]*"|\d[\d.]*/g, '')}`,
  };
}

/** The same figures a power of ten nearer to the usual size of the column; offered, never written unasked. */
function repairOf(table: SurveyTable, rows: Rows, at: number, column: string): string | undefined {
  const value = lengthOf(rows[at]?.[column]);
  const usual = medianOf(rows, column);
  if (value === undefined || usual === undefined || value === 0 || usual === 0 || !isLengthColumn(column))
    return undefined;
  const power = Math.round(Math.log10(usual / value));
  return power === 0 ? undefined : text(value * 10 ** power);
}

const text = (metres: number): string => `${Number((metres * 1000).toPrecision(6))} mm`;

function lengthOf(value: unknown): number | undefined {
  try {
    return toQuantity(value, 'length').value;
  } catch {
    return undefined;
  }
}

function medianOf(rows: Rows, column: string): number | undefined {
  const values = rows.flatMap((row) => lengthOf(row?.[column]) ?? []).sort((a, b) => a - b);
  return values[Math.floor(values.length / 2)];
}

/** Doubts alike in many rows become one line that says how many. */
export function grouped(all: readonly Found[]): SurveyDoubt[] {
  const kinds = new Map<string, Found[]>();
  for (const one of all) kinds.set(one.kind, [...(kinds.get(one.kind) ?? []), one]);
  return [...kinds.values()].flatMap((alike): SurveyDoubt[] => {
    const [first] = alike;
    if (alike.length <= 3 || first === undefined) return alike.map(({ kind: _kind, ...one }) => one);
    return [
      {
        message: `${alike.length} rows, the first of them row ${(first.row ?? 0) + 1}: ${first.message.replace(/^Row \d+,? ?/, '')}`,
        cell: undefined,
        repair: undefined,
        row: undefined,
      },
    ];
  });
}
