import { Quantity } from '../units/quantity.js';
import { withoutTail } from '../units/clean-number.js';
import { InputError, inspectValue } from '../units/input-error.js';
import { resultInternals } from '../engine/result.js';
import { danfo } from './danfo.js';
import { frameRows } from './frame-rows.js';

/** The parts of a data frame that cells use most; the object is a danfojs DataFrame with all its methods. */
export interface Frame {
  readonly columns: string[];
  readonly values: unknown[][];
  readonly shape: [number, number];
  readonly index: (string | number)[];
  head(rows?: number): Frame;
  tail(rows?: number): Frame;
  describe(): Frame;
  sortValues(column: string, options?: { ascending?: boolean }): Frame;
  groupby(columns: string[]): {
    col(columns: string[]): { sum(): Frame; mean(): Frame; count(): Frame; max(): Frame; min(): Frame };
  };
  loc(which: { rows?: (string | number)[]; columns?: string[] }): Frame;
  iloc(which: { rows?: (string | number)[]; columns?: (string | number)[] }): Frame;
  column(name: string): FrameColumn;
  addColumn(name: string, values: FrameColumn | readonly unknown[], options?: { inplace?: boolean }): Frame;
  query(condition: unknown): Frame;
  rename(names: Readonly<Record<string, string>>, options?: { inplace?: boolean }): Frame;
  drop(which: { columns?: string[]; index?: (string | number)[] }): Frame;
  /** CSV as text; with a path it writes the file and gives nothing. */
  toCSV(options: { filePath: string; header?: boolean; sep?: string }): void;
  toCSV(options?: { header?: boolean; sep?: string }): string;
  /** Rows as objects, or columns as lists. */
  toJSON(): Record<string, unknown>[];
  toJSON(options: { format: 'row' }): Record<string, unknown[]>;
  /** @deprecated danfojs draws in a page alone, and gives no picture here; `sweep(...).chart` and Vega-Lite do. */
  plot(element: string): unknown;
  print(): void;
  toString(): string;
}
/** One column of a frame. */
export interface FrameColumn {
  readonly values: (string | number | boolean)[];
  sum(): number;
  mean(): number;
  min(): number;
  max(): number;
  median(): number;
  std(): number;
  gt(other: number): unknown;
  lt(other: number): unknown;
  eq(other: unknown): unknown;
  mul(other: FrameColumn | number): FrameColumn;
  add(other: FrameColumn | number): FrameColumn;
  print(): void;
}

/**
 * A data frame from the name of a CSV file, from rows, or from results of recipes (one row a result, what was given beside the outputs), or from a sweep. Quantities
 * become numbers in the unit they are shown in, and the unit goes into the column's name: `change (mm)`.
 * @throws InputError on a file that cannot be read or rows that are no objects
 */
export async function frame(
  source: string | readonly object[] | { frame(): Promise<Frame> },
): Promise<Frame> {
  if (isFramed(source)) return source.frame();
  const rows = typeof source === 'string' ? csvRows(source) : source;
  if (!Array.isArray(rows) || rows.length === 0)
    throw new InputError(
      `frame: got ${inspectValue(source)}, takes the name of a CSV file, or a list of rows or results that is not empty`,
    );
  if (rows.some((r) => typeof r !== 'object' || r === null))
    throw new InputError('frame: got a row that is no object, takes rows such as { length: 900, width: 90 }');
  const { DataFrame } = await Promise.resolve(danfo());
  return new DataFrame(flatRows(rows as readonly object[])) as Frame;
}

function csvRows(name: string): Record<string, unknown>[] {
  const { rows, note } = frameRows(name);
  if (note !== undefined) console.warn(`${name}: ${note}`);
  return rows;
}

const isFramed = (source: unknown): source is { frame(): Promise<Frame> } =>
  typeof (source as { frame?: unknown } | null)?.frame === 'function';

/** The cells of a row; of a result, what was given and then its outputs, which keep their name where both have it. */
function cellsOf(row: object): [string, unknown][] {
  const result = resultInternals(row);
  return Object.entries(result ? { ...result.given, ...result.shown } : row);
}

/** Rows with one plain value a cell. Each column keeps one unit, that of its largest value. */
export function flatRows(rows: readonly object[]): Record<string, string | number | boolean>[] {
  const units = new Map<string, { unit: string; size: number }>();
  const listed = rows.map(cellsOf);
  for (const row of listed) {
    for (const [name, value] of row) {
      if (!(value instanceof Quantity)) continue;
      const had = units.get(name);
      if (!had || Math.abs(value.value) > had.size)
        units.set(name, { unit: value.toJSON().unit, size: Math.abs(value.value) });
    }
  }
  return listed.map((row) => {
    const out: Record<string, string | number | boolean> = {};
    for (const [name, value] of row) {
      const unit = units.get(name)?.unit;
      if (value instanceof Quantity)
        out[`${name} (${unit})`] = withoutTail(value.currency ? value.value : value.in(unit as string));
      else if (typeof value === 'number')
        out[unit === undefined ? name : `${name} (${unit})`] = withoutTail(value);
      else if (typeof value === 'boolean' || typeof value === 'string')
        out[unit === undefined ? name : `${name} (${unit})`] = value;
    }
    return out;
  });
}
