import { nearest, InputError, inspectValue } from '../units/input-error.js';
import { escapeHtml } from '../engine/result-display.js';
import { citationText, shortCitation } from '../engine/source.js';
import { tableRows, type DataRow } from './data-tables.js';

/** Tables worth reading as they stand, by a name in plain words, and the columns shown. */
const shelf: Readonly<Record<string, { readonly table: string; readonly columns: readonly string[] }>> = {
  'marks on pallets and lumber': { table: 'marks.ispm-15-and-ps-20', columns: ['mark', 'meaning'] },
  'recommended moisture': {
    table: 'recommended-moisture.fpl-gtr-190',
    columns: ['item', 'region', 'average_pct', 'pieces_low_pct', 'pieces_high_pct', 'note'],
  },
  'outdoor moisture': {
    table: 'outdoor-moisture.fpl-gtr-190',
    columns: [
      'place',
      'state',
      ...'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ').map((m) => `${m}_pct`),
    ],
  },
  'rules of movement': {
    table: 'movement-rules.various',
    columns: ['applies_to', 'rule', 'fraction_per_pct'],
  },
  'strength groups': {
    table: 'strength-groups.as-2878',
    columns: ['strength_group', 'state', 'mor_mpa', 'moe_mpa', 'max_crushing_mpa'],
  },
  'strength classes': {
    table: 'grades.en-338-2016',
    columns: ['grade', 'group', 'bending_mpa', 'shear_mpa', 'e_mean_mpa', 'e_low_mpa', 'density_kg_m3'],
  },
  'moisture meters': { table: 'meter-correction.fpl-gtr-190', columns: ['item', 'figure'] },
};

/** A published table as it stands in data/, shown with where each row was read. */
export interface PublishedTable {
  readonly name: string;
  readonly rows: readonly Readonly<Record<string, string>>[];
  toString(): string;
}

/** Names that {@link publishedTable} takes. */
export const publishedTables = (): string[] => Object.keys(shelf);

/** A table of data/ to read: `publishedTable('marks on pallets and lumber')`. @throws InputError with the nearest name */
export function publishedTable(name: string): PublishedTable {
  const key = Object.keys(shelf).find((n) => n === name.trim().toLowerCase());
  const found = key === undefined ? undefined : shelf[key];
  if (!key || !found) {
    const near = nearest(name, Object.keys(shelf));
    throw new InputError(
      `no table ${inspectValue(name)}${near ? `; did you mean ${inspectValue(near)}?` : `; takes one of ${Object.keys(shelf).map(inspectValue).join(', ')}`}`,
    );
  }
  const rows = tableRows(found.table);
  const columns = found.columns.filter((c) => rows.some((r) => r.text(c) !== ''));
  return tableOf(key, columns, rows);
}

/** `emc_at_rh50_pct` as people read it. */
function headOf(column: string): string {
  return column
    .replace(/_pct$/, ' (%)')
    .replace(/_mpa$/, ' (MPa)')
    .replace(/_kg_m3$/, ' (kg/m³)')
    .replace(/^mor/, 'bending')
    .replace(/^(moe|e_mean)/, 'modulus')
    .replace(/^e_low/, 'low modulus')
    .replace(/^printed_as$/, 'timber')
    .replace(/_/g, ' ');
}

function tableOf(name: string, columns: readonly string[], rows: readonly DataRow[]): PublishedTable {
  const cells = (r: DataRow): string[] => columns.map((c) => r.text(c));
  // A doubt that several rows share stands once, below the table.
  const shared = [...new Set(rows.map((r) => r.doubt))].filter(
    (d) => d !== '' && rows.filter((r) => r.doubt === d).length > 1,
  );
  const remark = (r: DataRow): string =>
    [shortCitation(r.citation), shared.includes(r.doubt) ? '' : r.doubt].filter(Boolean).join('; ');
  const one = new Set(rows.map((r) => citationText(r.citation))).size === 1;
  const numeric = columns.map((c) => rows.every((r) => /^[\d.]*$/.test(r.text(c))));
  const heads = [...columns.map(headOf), ...(one ? [] : ['source'])];
  const all = rows.map((r) => [...cells(r), ...(one ? [] : [remark(r)])]);
  const foot = [one && rows[0] ? citationText(rows[0].citation) : '', ...shared.map((d) => `Note: ${d}`)]
    .filter(Boolean)
    .join('. ');
  const text = (): string => {
    const wide = heads.map((h, i) => Math.max(h.length, ...all.map((r) => (r[i] as string).length)));
    const line = (r: readonly string[]): string =>
      r
        .map((c, i) => (numeric[i] ? c.padStart(wide[i] as number) : c.padEnd(wide[i] as number)))
        .join('  ')
        .trimEnd();
    return [name, '', line(heads), ...all.map(line), ...(foot ? ['', foot] : [])].join('\n');
  };
  const td = (c: string, i: number, tag: string): string =>
    `<${tag} style="padding:.15em .8em .15em 0;vertical-align:top;text-align:${numeric[i] ? 'right' : 'left'}">${escapeHtml(c)}</${tag}>`;
  const html = (): string =>
    `<div class="reckoner-table" style="overflow-x:auto"><table style="border-collapse:collapse;font-size:.9em"><thead><tr>${heads.map((h, i) => td(h, i, 'th')).join('')}</tr></thead><tbody>${all.map((r) => `<tr>${r.map((c, i) => td(c, i, 'td')).join('')}</tr>`).join('')}</tbody></table>${foot ? `<p><small>${escapeHtml(foot)}</small></p>` : ''}</div>`;
  return {
    name,
    rows: rows.map((r) => Object.fromEntries(columns.map((c) => [c, r.text(c)]))),
    toString: text,
    [Symbol.for('Jupyter.display')]: () => ({ 'text/plain': text(), 'text/html': html() }),
    [Symbol.for('nodejs.util.inspect.custom')]: text,
  };
}
