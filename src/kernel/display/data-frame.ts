/** Data frames, known by their shape rather than their class so that the library is not loaded for it. */
import type { MimeBundle } from '../message.js';
import { shortText } from './value-text.js';

interface Frame {
  columns: string[];
  index: (string | number)[];
  values: unknown[];
  shape: number[];
}

const maxRows = 40;

/** A row of the table to show: its place in the frame, its label and its cells as text. */
interface ShownRow {
  position: number;
  label: string;
  cells: { text: string; isNumber: boolean }[];
}

/** HTML and plain text of a data frame or series: at most 40 rows, the first and last 20. Undefined for any other value. */
export function frameBundle(value: unknown): MimeBundle | undefined {
  if (!isFrame(value)) return undefined;
  const rows = shownRows(value);
  const size = `${value.values.length} rows × ${value.columns.length} columns`;
  return { 'text/html': htmlTable(value, rows, size), 'text/plain': textTable(value, rows, size) };
}

function isFrame(value: unknown): value is Frame {
  if (typeof value !== 'object' || value === null) return false;
  const { name } = (value as { constructor?: { name?: unknown } }).constructor ?? {};
  if (name !== 'DataFrame' && name !== 'Series') return false;
  const { columns, index, values, shape } = value as Partial<Record<keyof Frame, unknown>>;
  return [columns, index, values, shape].every((part) => Array.isArray(part));
}

function shownRows({ values, index }: Frame): ShownRow[] {
  const isShown = (position: number): boolean =>
    values.length <= maxRows || position < maxRows / 2 || position >= values.length - maxRows / 2;
  return values.flatMap((row: unknown, position) =>
    isShown(position)
      ? [
          {
            position,
            label: String(index[position] ?? position),
            cells: (Array.isArray(row) ? row : [row]).map((cell: unknown) => ({
              text: cellText(cell),
              isNumber: typeof cell === 'number',
            })),
          },
        ]
      : [],
  );
}

function htmlTable({ columns }: Frame, rows: ShownRow[], size: string): string {
  const head = `<tr><th></th>${columns.map((name) => `<th>${escape(name)}</th>`).join('')}</tr>`;
  const gap = `<tr><td colspan="${columns.length + 1}">⋮</td></tr>`;
  const body = rows.map(({ position, label, cells }, i) => {
    const texts = cells.map(
      ({ text, isNumber }) => `<td style="text-align:${isNumber ? 'right' : 'left'}">${escape(text)}</td>`,
    );
    const before = position > (rows[i - 1]?.position ?? -1) + 1 ? gap : '';
    return `${before}<tr><th>${escape(label)}</th>${texts.join('')}</tr>`;
  });
  return `<table><thead>${head}</thead><tbody>${body.join('')}</tbody></table><p>${size}</p>`;
}

function textTable({ columns }: Frame, rows: ShownRow[], size: string): string {
  const table = [['', ...columns], ...rows.map(({ label, cells }) => [label, ...cells.map((c) => c.text)])];
  const widths = ['', ...columns].map((_, column) =>
    Math.max(...table.map((row) => (row[column] ?? '').length)),
  );
  const lines = table.map((row) => row.map((cell, column) => cell.padStart(widths[column] ?? 0)).join('  '));
  return [...lines.map((line) => line.trimEnd()), size].join('\n');
}

/** A number to at most six significant digits; a missing value as an empty cell. */
function cellText(cell: unknown): string {
  if (typeof cell === 'number' && Number.isFinite(cell) && !Number.isInteger(cell))
    return String(Number(cell.toPrecision(6)));
  if (cell === null || cell === undefined) return '';
  return typeof cell === 'string' ? cell : shortText(cell);
}

const entities: Record<string, string> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
const escape = (text: string): string => text.replace(/[&<>"]/g, (c) => entities[c] ?? c);
