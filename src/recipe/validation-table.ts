import { number } from '../quantities/format.js';
import { escapeHtml } from './display.js';
import type { CheckOutcome } from './validation.js';

/** Outcomes of published checks, shown as a table: book's value, ours, difference, source. */
export interface ValidationTable {
  readonly outcomes: readonly CheckOutcome[];
  readonly passed: number;
  readonly failed: number;
  /** How many rest on a figure recalled and not seen in print. */
  readonly recalled: number;
  toString(): string;
  toMarkdown(): string;
}

const heads = ['Check', 'Book', 'Ours', 'Difference', 'May differ by', 'Source', ''] as const;

function cells(o: CheckOutcome): string[] {
  const u = o.row.unit ? ` ${o.row.unit.replace('degF', '°F').replace('m3', 'm³').replace('ft3', 'ft³')}` : '';
  const digits = Math.max(1, o.row.printed.replace(/^-?0*\.?0*/, '').replace('.', '').length + 1);
  const ours = typeof o.ours === 'number' ? number(o.ours, Math.min(7, digits)) : (o.ours ?? o.error ?? '');
  return [
    o.row.id.replace(/-/g, ' '),
    `${o.row.printed}${u}`,
    typeof o.ours === 'number' ? `${ours}${u}` : ours,
    o.difference === undefined ? '' : Math.abs(o.difference) < 1e-9 ? '0' : `${o.difference > 0 ? '+' : ''}${number(o.difference, 2)}`,
    number(o.tolerance, 2),
    `${o.source}, ${o.row.locator}${o.row.read === 'memory' ? ' (recalled)' : ''}${o.row.basis === 'derived' ? '; reckoned from its figures' : ''}`,
    o.passes ? '✓ agrees' : '✗ differs',
  ];
}

/** Makes the table of outcomes that a notebook shows. */
export function validationTable(outcomes: readonly CheckOutcome[]): ValidationTable {
  const passed = outcomes.filter((o) => o.passes).length;
  const recalled = outcomes.filter((o) => o.row.read === 'memory').length;
  const head = `${passed} of ${outcomes.length} published checks agree; ${recalled} of them rest on a figure recalled and not seen in print.`;
  const rows = outcomes.map(cells);
  const toMarkdown = (): string => {
    const safe = (s: string): string => s.replace(/\|/g, '\\|');
    return [head, '', `| ${heads.join(' | ')} |`, '|---|--:|--:|--:|--:|---|---|', ...rows.map((r) => `| ${r.map(safe).join(' | ')} |`)].join('\n');
  };
  const html = (): string => {
    const td = (c: string, i: number, tag: string): string => `<${tag} style="padding:.15em .8em .15em 0;vertical-align:top;text-align:${i > 0 && i < 5 ? 'right;white-space:nowrap;font-variant-numeric:tabular-nums' : 'left'}">${escapeHtml(c)}</${tag}>`;
    const why = (o: CheckOutcome): string => (o.row.why || o.row.note ? ` title="${escapeHtml(o.row.why ?? o.row.note ?? '')}"` : '');
    return `<div class="reckoner-validation" style="overflow-x:auto"><p><strong>${escapeHtml(head)}</strong></p><table style="border-collapse:collapse"><thead><tr>${heads.map((h, i) => td(h, i, 'th')).join('')}</tr></thead><tbody>${rows
      .map((r, k) => `<tr${why(outcomes[k] as CheckOutcome)}>${r.map((c, i) => td(c, i, 'td')).join('')}</tr>`)
      .join('')}</tbody></table></div>`;
  };
  const text = (): string => {
    const wide = heads.map((h, i) => Math.max(h.length, ...rows.map((r) => (r[i] as string).length)));
    return [head, '', ...[[...heads], ...rows].map((r) => r.map((c, i) => (i > 0 && i < 5 ? c.padStart(wide[i] as number) : c.padEnd(wide[i] as number))).join('  ').trimEnd())].join('\n');
  };
  return {
    outcomes,
    passed,
    failed: outcomes.length - passed,
    recalled,
    toString: text,
    toMarkdown,
    [Symbol.for('Jupyter.display')]: () => ({ 'text/plain': text(), 'text/markdown': toMarkdown(), 'text/html': html() }),
    [Symbol.for('nodejs.util.inspect.custom')]: text,
  } as ValidationTable;
}
