// A result as rows of plain cells, for CSV files and spreadsheets.
import { clean } from '../units/clean-number.js';
import { pretty } from '../units/format-quantity.js';
import { Quantity } from '../units/quantity.js';
import type { Output, Outputs } from './output.js';
import type { ResultInternals } from './result-types.js';

/** One value of a result: where it stands, such as `slots[1].travel`, what it means, the number or text, and the unit. */
export interface ResultRow {
  readonly name: string;
  readonly label: string;
  readonly value: number | string | boolean;
  readonly unit: string;
}

/** Every value of a result, tables row by row. */
export function resultRows(a: Pick<ResultInternals, 'outputs' | 'shown'>): ResultRow[] {
  return rowsOf(a.outputs, a.shown, '');
}

function rowsOf(outputs: Outputs, shown: Readonly<Record<string, unknown>>, under: string): ResultRow[] {
  return Object.entries(outputs).flatMap(([name, o]) => {
    const value = shown[name];
    return value === undefined ? [] : rowsOfValue(o, value, under + name);
  });
}

function rowsOfValue(o: Output, value: unknown, name: string): ResultRow[] {
  if (o.columns && Array.isArray(value))
    return (value as Readonly<Record<string, unknown>>[]).flatMap((row, i) =>
      rowsOf(o.columns as Outputs, row, `${name}[${i + 1}].`),
    );
  if (Array.isArray(value)) return value.flatMap((v, i) => rowsOfValue(o, v, `${name}[${i + 1}]`));
  const row = (v: number | string | boolean, unit: string): ResultRow[] => [
    { name, label: o.label, value: v, unit },
  ];
  if (value instanceof Quantity) {
    const q = value as Quantity;
    const { value: number, unit } = o.unit ? { value: clean(q.in(o.unit)), unit: o.unit } : q.toJSON();
    return row(number, pretty(unit));
  }
  if (typeof value === 'number') return row(clean(value), '');
  if (typeof value === 'string' || typeof value === 'boolean') return row(value, '');
  return Object.entries(value as object).flatMap(([k, v]) => rowsOfValue(o, v, `${name}.${k}`));
}

/** CSV as RFC 4180 has it; text that a spreadsheet would take for a formula gets an apostrophe before it. */
export function csvText(rows: readonly (readonly (number | string | boolean)[])[]): string {
  return `${rows.map((row) => row.map(csvCell).join(',')).join('\r\n')}\r\n`;
}

function csvCell(v: number | string | boolean): string {
  if (typeof v !== 'string') return String(v);
  const safe = withoutFormula(v);
  return /[",\r\n]/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe;
}

const withoutFormula = (text: string): string => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text);

/** Tab-separated text, which a spreadsheet takes from the clipboard. */
export function tabText(rows: readonly (readonly (number | string | boolean)[])[]): string {
  const cell = (v: number | string | boolean): string =>
    typeof v === 'string' ? withoutFormula(v.replace(/[\t\r\n]+/g, ' ')) : String(v);
  return rows.map((row) => row.map(cell).join('\t')).join('\n');
}

/** Head and rows of a result, for {@link csvText} and {@link tabText}. */
export function resultCells(a: Pick<ResultInternals, 'outputs' | 'shown'>): (number | string | boolean)[][] {
  return [
    ['name', 'meaning', 'value', 'unit'],
    ...resultRows(a).map((r) => [r.name, r.label, r.value, r.unit]),
  ];
}
