import { displayableChart } from '../charts/chart-display.js';
import type { ChartSpec } from '../charts/chart-spec.js';
import { clean } from '../units/clean-number.js';
import { number } from '../units/format-quantity.js';
import { InputError, inspectValue } from '../units/input-error.js';
import { escapeHtml, words } from '../engine/result-display.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import { csvText } from '../engine/result-table.js';
import { withDisplay } from './display.js';
import type { Axis } from './sweep-axes.js';
import { axisUnit, type Column } from './frame-columns.js';
import { frame, type Frame } from './frame.js';
import { sweepChart } from './sweep-chart.js';

/** What a sweep gives: typed columns, one row a combination. */
export interface Sweep {
  readonly recipe: string;
  readonly columns: readonly Column[];
  readonly rows: number;
  readonly chart: ChartSpec | undefined;
  /** The column called `name`. @throws InputError */
  column(name: string): Column;
  /** The same as a danfojs data frame. */
  frame(): Promise<Frame>;
  toMarkdown(): string;
  /** One column an input or output, its unit in the head. RFC 4180. */
  toCSV(): string;
  toJSON(): {
    recipe: string;
    columns: Record<string, { unit: string | undefined; values: readonly (number | string)[] }>;
  };
}

/** The columns of a sweep and what is shown of them; `wanted` is the output drawn. */
export function makeSweep(
  r: AnyRecipe,
  axes: readonly Axis[],
  columns: readonly Column[],
  n: number,
  wanted: string,
): Sweep {
  const printed = printedColumns(axes, columns, wanted);
  const result: Sweep = {
    recipe: r.name,
    columns,
    rows: n,
    get chart() {
      const chart = sweepChart(r, axes, columns, wanted);
      return chart && displayableChart(chart);
    },
    column: (name) => columnNamed(columns, name),
    frame: () => frame(rowsOf(columns, n)),
    toMarkdown: () => markdownTable(printed, n),
    toCSV: () => sweepCsv(columns, n),
    toJSON: () => ({
      recipe: r.name,
      columns: Object.fromEntries(columns.map((c) => [c.name, { unit: c.unit, values: finiteValues(c) }])),
    }),
  };
  return withDisplay(
    result,
    () => ({
      'text/plain': `${r.title}: ${n} rows of ${columns.map((c) => c.name).join(', ')}`,
      'text/markdown': result.toMarkdown(),
      'text/html': htmlTable(printed, n),
    }),
    () => result.chart,
  );
}

/** People read the inputs and the output asked for, and a few more; the frame has them all. */
function printedColumns(axes: readonly Axis[], columns: readonly Column[], wanted: string): Column[] {
  const outs = columns.slice(axes.length);
  return [
    ...columns.slice(0, axes.length),
    ...outs.filter((c) => c.name === wanted),
    ...outs.filter((c) => c.name !== wanted),
  ].slice(0, Math.max(axes.length + 1, 5));
}

function columnNamed(columns: readonly Column[], name: string): Column {
  const found = columns.find((c) => c.name === name);
  if (found) return found;
  throw new InputError(
    `column: no column ${inspectValue(name)}; there are ${columns.map((c) => c.name).join(', ')}`,
  );
}

/** A point without an answer has an empty cell. */
function sweepCsv(columns: readonly Column[], n: number): string {
  const cell = (v: number | string): number | string =>
    typeof v === 'string' ? v : Number.isFinite(v) ? clean(v) : '';
  return csvText([
    columns.map((c) => withUnit(c.name, c.unit)),
    ...Array.from({ length: n }, (_, i) => columns.map((c) => cell(c.values[i] as number | string))),
  ]);
}

const rowsOf = (columns: readonly Column[], n: number): Record<string, unknown>[] =>
  Array.from({ length: n }, (_, i) =>
    Object.fromEntries(columns.map((c) => [withUnit(c.name, c.unit), c.values[i]])),
  );

/** A point without an answer has an empty text. */
const finiteValues = (c: Column): (number | string)[] =>
  [...c.values].map((v) => (typeof v === 'string' ? v : Number.isFinite(v) ? clean(v) : ''));

const markdownTable = (columns: readonly Column[], n: number): string =>
  table(
    columns,
    n,
    (cells) => `| ${cells.join(' | ')} |`,
    (k) => `|${'---|'.repeat(k)}`,
  ).join('\n');

function htmlTable(columns: readonly Column[], n: number): string {
  const align = (i: number): string => (columns[i]?.unit === undefined ? 'left' : 'right');
  const cell = (c: string, i: number): string => `<td style="text-align:${align(i)}">${escapeHtml(c)}</td>`;
  const [head, ...body] = table(
    columns,
    n,
    (cells) => cells.map(cell).join(''),
    () => '',
  );
  return `<table><thead><tr>${head?.replace(/(<\/?)td/g, '$1th')}</tr></thead><tbody>${body.map((b) => `<tr>${b}</tr>`).join('')}</tbody></table>`;
}

/** A name with the unit of its column; money, counts and names of things have none. */
const withUnit = (name: string, unit: string | undefined): string =>
  unit === undefined || axisUnit(unit) === '' ? name : `${name} (${unit})`;

/** At most twelve rows are printed, spread evenly, the first and last among them. */
function table(
  columns: readonly Column[],
  n: number,
  row: (cells: string[]) => string,
  rule: (k: number) => string,
): string[] {
  const show = Math.min(n, 12);
  const picks = Array.from({ length: show }, (_, k) =>
    show === 1 ? 0 : Math.round((k * (n - 1)) / (show - 1)),
  );
  const cell = (v: number | string): string =>
    typeof v === 'string' ? v : Number.isFinite(v) ? number(v, 4) : '';
  return [
    row(columns.map((c) => withUnit(words(c.name), c.unit && axisUnit(c.unit)))),
    rule(columns.length),
    ...picks.map((i) => row(columns.map((c) => cell(c.values[i] as number | string)))),
  ].filter((x) => x !== '');
}
