/** Data frames, known by their shape rather than their class so that the library is not loaded for it. */
import type { MimeBundle } from '../message.js';

interface Frame {
  columns: string[];
  index: (string | number)[];
  values: unknown[] | unknown[][];
  shape: number[];
  dtypes?: string[];
  toString(): string;
}

const most = 40;

export function frameBundle(value: unknown): MimeBundle | undefined {
  if (!isFrame(value)) return undefined;
  const rows = value.values.map((row) => (Array.isArray(row) ? row : [row]));
  const shown =
    rows.length > most
      ? [...rows.keys()].filter((i) => i < most / 2 || i >= rows.length - most / 2)
      : [...rows.keys()];
  const head = `<tr><th></th>${value.columns.map((name) => `<th>${escape(name)}</th>`).join('')}</tr>`;
  let before = -1;
  const body = shown.map((i) => {
    const gap = i > before + 1 ? `<tr><td colspan="${value.columns.length + 1}">⋮</td></tr>` : '';
    before = i;
    const cells = rows[i]!.map(
      (cell) =>
        `<td style="text-align:${typeof cell === 'number' ? 'right' : 'left'}">${escape(written(cell))}</td>`,
    );
    return `${gap}<tr><th>${escape(String(value.index[i] ?? i))}</th>${cells.join('')}</tr>`;
  });
  const size = `${rows.length} rows × ${value.columns.length} columns`;
  return {
    'text/html': `<table><thead>${head}</thead><tbody>${body.join('')}</tbody></table><p>${size}</p>`,
    'text/plain': plain(value, rows, shown, size),
  };
}

function isFrame(value: unknown): value is Frame {
  if (typeof value !== 'object' || value === null) return false;
  const { name } = value.constructor ?? {};
  if (name !== 'DataFrame' && name !== 'Series') return false;
  const frame = value as Partial<Frame>;
  return (
    Array.isArray(frame.columns) &&
    Array.isArray(frame.index) &&
    Array.isArray(frame.values) &&
    Array.isArray(frame.shape)
  );
}

/** A number to at most six significant digits, as a table wants it. */
function written(cell: unknown): string {
  if (typeof cell === 'number' && Number.isFinite(cell) && !Number.isInteger(cell))
    return String(Number(cell.toPrecision(6)));
  return String(cell ?? '');
}

function plain(frame: Frame, rows: unknown[][], shown: number[], size: string): string {
  const table = [
    ['', ...frame.columns],
    ...shown.map((i) => [String(frame.index[i] ?? i), ...rows[i]!.map(written)]),
  ];
  const widths = table[0]!.map((_, column) => Math.max(...table.map((row) => (row[column] ?? '').length)));
  return [
    ...table.map((row) =>
      row
        .map((cell, column) => cell.padStart(widths[column]!))
        .join('  ')
        .trimEnd(),
    ),
    size,
  ].join('\n');
}

function escape(text: string): string {
  return text.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c]!);
}
