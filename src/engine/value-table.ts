import { valueInUnits } from '../units/unit-system.js';
import type { Output, Outputs } from './output.js';
import type { ResultInternals, TableBlock, ValueCell, ValueLine } from './result-types.js';

/** Single-valued outputs as lines; tables apart. */
export function valueLines(a: ResultInternals): { lines: ValueLine[]; tables: TableBlock[] } {
  const lines: ValueLine[] = [];
  const tables: TableBlock[] = [];
  for (const [name, o] of Object.entries(a.outputs)) {
    const output = o;
    const raw = a.raw[name];
    if (raw === undefined) continue;
    if (output.columns === undefined)
      lines.push(valueInUnits({ name, label: output.label, ...output.format(raw, a.currency) }));
    else tables.push(...tableBlock(name, output.label, output.columns, raw as Row[], a.currency));
  }
  return { lines, tables };
}

type Row = Readonly<Record<string, unknown>>;

/** None where there are no rows. */
function tableBlock(
  name: string,
  label: string,
  columns: Outputs,
  rows: readonly Row[],
  currency?: string,
): TableBlock[] {
  const used = Object.entries(columns).filter(([n]) => rows.some((r) => r[n] !== undefined));
  const cells = rows.map((r) => used.map(([n, o]) => cellOf(o, r[n], currency)));
  const withInch = used.map((_, i) => cells.some((r) => (r[i] as ValueCell).inch !== ''));
  const heads = used.map(([n]) => words(n));
  if (rows.length === 0) return [];
  return [
    {
      name,
      label: label,
      heads,
      cells,
      columns: heads.flatMap((h, i) =>
        withInch[i] ? [h, `${h} (${inchUnit(cells.map((r) => (r[i] as ValueCell).inch))})`] : [h],
      ),
      rows: cells.map((r) => r.flatMap((c, i) => (withInch[i] ? [c.metric, c.inch] : [c.metric]))),
    },
  ];
}

/** What heads a column of customary figures: their unit where all share one. */
function inchUnit(texts: readonly string[]): string {
  const units = new Set(
    texts.filter((t) => t !== '').map((t) => /(?:^|[\d)] ?)([^\d\s].*)$/.exec(t)?.[1] ?? ''),
  );
  const [unit = ''] = units;
  return units.size === 1 && unit !== '' && !unit.includes(',') ? unit : 'US customary';
}

/** A table inside a table's cell is written out as a short list. */
function cellOf(o: Output, value: unknown, currency?: string): ValueCell {
  if (value === undefined) return { metric: '', inch: '' };
  if (o.columns === undefined) return valueInUnits(o.format(value, currency));
  const columns = Object.entries(o.columns);
  const rows = (value as readonly Row[]).map((row) =>
    columns.flatMap(([n, c]) => (row[n] === undefined ? [] : [valueInUnits(c.format(row[n], currency))])),
  );
  return {
    metric: rows.map((parts) => parts.map((p) => p.metric).join(' ')).join('; '),
    inch: '',
    items: rows.map((parts) => ({
      metric: parts.map((p) => p.metric).join(', '),
      inch: parts.flatMap((p) => (p.inch === '' ? [] : [p.inch])).join(', '),
    })),
  };
}

/** `finalWidth` as people read it: final width. */
export function words(name: string): string {
  return name.replace(/([a-z0-9])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
}
