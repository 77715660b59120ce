import { asSentence, cautionWord, type Caution } from './caution.js';
import { resultParts } from './result-parts.js';
import type { ResultInternals, TableBlock, ValueLine } from './result-types.js';
import { citationText, shortCitation } from './source.js';
import type { Working } from './trace.js';
import { words } from './value-table.js';

/** A result as plain text, for a terminal: the answer first. */
export function textOf(a: ResultInternals): string {
  const parts = resultParts(a);
  const out: string[] = [a.title, ''];
  if (parts.sentence !== '') out.push(parts.sentence, '');
  const block = (head: string, rows: readonly ValueLine[]): void => {
    if (rows.length === 0) return;
    const wide = Math.max(...rows.map((r) => words(r.name).length));
    out.push(head);
    for (const r of rows)
      out.push(`  ${words(r.name).padEnd(wide)}  ${r.metric}${r.inch ? ` (${r.inch})` : ''}`);
    out.push('');
  };
  const cautions = (head: string, list: readonly Caution[]): void => {
    if (list.length > 0) out.push(head, ...list.map(cautionLine), '');
  };
  block('Answer', parts.lines);
  for (const t of parts.tables) out.push(t.label, ...textTable(t), '');
  cautions('Cautions', parts.cautions);
  block('Given', parts.given);
  block('Assumed', parts.assumed);
  block('More', parts.more);
  const workings = a.workings();
  if (workings.length > 0) out.push('Workings', ...workings.flatMap(workingLines), '');
  cautions('Further notes', parts.notes);
  const sources = a.sources();
  if (sources.length > 0) out.push('Sources', ...sources.map((s) => `  ${citationText(s)}`));
  return out.join('\n').trimEnd();
}

const cautionLine = (c: Caution): string =>
  `  ${cautionWord[c.level]}: ${asSentence(c.text)}${c.source ? ` [${shortCitation(c.source)}]` : ''}`;

const workingLines = (w: Working): string[] =>
  w.kind === 'remark' ? [`  ${w.text}`] : [`  ${w.text}: ${w.plain}`, `    ${w.numbersPlain}`];

function textTable(t: TableBlock): string[] {
  const all = [t.columns, ...t.rows];
  const widths = t.columns.map((_, i) => Math.max(...all.map((r) => (r[i] as string).length)));
  return all.map((r) => `  ${r.map((c, i) => c.padEnd(widths[i] as number)).join('  ')}`.trimEnd());
}
