import { number, pretty } from '../units/format-quantity.js';
import { escapeHtml, words } from './result-display.js';
import { shortCitation } from './source.js';
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

const heads = ['What was calculated', 'Book', 'Ours', 'Difference', 'Source', ''] as const;
const isNumber = (column: number): boolean => column > 0 && column < 4;

/** The question of a row in words: recipe, what was given, what was read off. */
function question(o: CheckOutcome): string {
  const one = (v: unknown): string =>
    typeof v === 'object' && v !== null
      ? Array.isArray(v)
        ? v.map(one).join(', ')
        : Object.entries(v)
            .map(([k, x]) => `${words(k)} ${one(x)}`)
            .join(', ')
      : String(v);
  const given = one(o.row.inputs);
  return `${words(o.row.recipe)}${given ? `: ${given.length > 160 ? `${given.slice(0, 157)}...` : given}` : ''}; ${words(o.row.output)}${o.row.less ? `, less the same with ${one(changed(o.row.inputs, o.row.less))}` : ''}`;
}

const changed = (
  a: Readonly<Record<string, unknown>>,
  b: Readonly<Record<string, unknown>>,
): Record<string, unknown> =>
  Object.fromEntries(Object.entries(b).filter(([k, v]) => JSON.stringify(v) !== JSON.stringify(a[k])));

function cells(o: CheckOutcome): string[] {
  const u = o.row.unit ? ` ${pretty(o.row.unit)}` : '';
  const digits = Math.max(1, o.row.printed.replace(/^-?0*\.?0*/, '').replace('.', '').length + 1);
  const ours = typeof o.ours === 'number' ? number(o.ours, Math.min(7, digits)) : (o.ours ?? o.error ?? '');
  const off =
    o.difference === undefined
      ? ''
      : Math.abs(o.difference) < 1e-9
        ? '0'
        : `${o.difference > 0 ? '+' : ''}${number(o.difference, 2)}`;
  return [
    question(o),
    `${o.row.printed}${u}`,
    typeof o.ours === 'number' ? `${ours}${u}` : ours,
    off === '' ? '' : `${off} (±${number(o.tolerance, 2)})`,
    `${shortCitation({ id: o.row.source, locator: o.row.locator })}${o.row.read === 'memory' ? ' (unverified)' : ''}${o.row.basis === 'derived' ? '; calculated from its figures' : ''}${o.row.why ? `. Wider because: ${o.row.why}` : ''}`,
    o.passes ? '✓' : '✗ differs',
  ];
}

/** Makes the table of outcomes that a notebook shows. */
export function validationTable(outcomes: readonly CheckOutcome[]): ValidationTable {
  const passed = outcomes.filter((o) => o.passes).length;
  const recalled = outcomes.filter((o) => o.row.read === 'memory').length;
  const head = `${passed} of ${outcomes.length} published checks agree; ${recalled} of them rest on a figure not yet verified.`;
  const rows = outcomes.map(cells);
  const toMarkdown = (): string => {
    const safe = (s: string): string => s.replace(/\|/g, '\\|');
    return [
      head,
      '',
      `| ${heads.join(' | ')} |`,
      '|---|--:|--:|--:|---|---|',
      ...rows.map((r) => `| ${r.map(safe).join(' | ')} |`),
    ].join('\n');
  };
  const html = (): string => {
    const td = (c: string, i: number, tag: string): string =>
      `<${tag} style="padding:.15em .8em .15em 0;vertical-align:top;text-align:${isNumber(i) ? `right;font-variant-numeric:tabular-nums${i < 3 ? ';white-space:nowrap' : ''}` : `left${i === 0 ? ';min-width:15em' : i === 4 ? ';min-width:12em' : ';white-space:nowrap'}`}">${escapeHtml(c)}</${tag}>`;
    const why = (o: CheckOutcome): string =>
      ` title="${escapeHtml([o.row.id, o.row.note].filter(Boolean).join(': '))}"`;
    return `<div class="reckoner-validation" style="overflow-x:auto"><p><strong>${escapeHtml(head)}</strong></p><table style="border-collapse:collapse;font-size:.86em;line-height:1.35"><thead><tr>${heads.map((h, i) => td(h, i, 'th')).join('')}</tr></thead><tbody>${rows
      .map(
        (r, k) => `<tr${why(outcomes[k] as CheckOutcome)}>${r.map((c, i) => td(c, i, 'td')).join('')}</tr>`,
      )
      .join('')}</tbody></table></div>`;
  };
  const text = (): string => {
    const wide = heads.map((h, i) => Math.max(h.length, ...rows.map((r) => (r[i] as string).length)));
    return [
      head,
      '',
      ...[[...heads], ...rows].map((r) =>
        r
          .map((c, i) => (isNumber(i) ? c.padStart(wide[i] as number) : c.padEnd(wide[i] as number)))
          .join('  ')
          .trimEnd(),
      ),
    ].join('\n');
  };
  return {
    outcomes,
    passed,
    failed: outcomes.length - passed,
    recalled,
    toString: text,
    toMarkdown,
    [Symbol.for('Jupyter.display')]: () => ({
      'text/plain': text(),
      'text/markdown': toMarkdown(),
      'text/html': html(),
    }),
    [Symbol.for('nodejs.util.inspect.custom')]: text,
  };
}
