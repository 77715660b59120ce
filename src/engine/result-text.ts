import { cautionWord } from './caution.js';
import type { ResultInternals, TableBlock, ValueLine } from './result-types.js';
import { citationText, shortCitation } from './source.js';
import { valueLines, words } from './value-table.js';

/** A result as plain text, for a terminal. */
export function textOf(a: ResultInternals): string {
  const { lines, tables } = valueLines(a);
  const out: string[] = [a.title, ''];
  const block = (rows: readonly ValueLine[]): void => {
    const wide = Math.max(0, ...rows.map((r) => words(r.name).length));
    for (const r of rows)
      out.push(`  ${words(r.name).padEnd(wide)}  ${r.metric}${r.inch ? ` (${r.inch})` : ''}`);
  };
  out.push('Given');
  block(a.inputs);
  out.push('', 'Answer');
  block(lines);
  for (const t of tables) out.push('', t.label, ...textTable(t));
  const workings = a.workings();
  if (workings.length > 0) {
    out.push('', 'Workings');
    for (const w of workings) {
      if (w.kind === 'remark') out.push(`  ${w.text}`);
      else out.push(`  ${w.text}: ${w.plain}`, `    ${w.numbersPlain}`);
    }
  }
  for (const c of a.cautions())
    out.push(
      ...(c === a.cautions()[0] ? ['', 'Cautions'] : []),
      `  ${cautionWord[c.level]}: ${c.text}${c.source ? ` [${shortCitation(c.source)}]` : ''}`,
    );
  const sources = a.sources();
  if (sources.length > 0) out.push('', 'Sources', ...sources.map((s) => `  ${citationText(s)}`));
  return out.join('\n');
}

function textTable(t: TableBlock): string[] {
  const all = [t.columns, ...t.rows];
  const widths = t.columns.map((_, i) => Math.max(...all.map((r) => (r[i] as string).length)));
  return all.map((r) => `  ${r.map((c, i) => c.padEnd(widths[i] as number)).join('  ')}`.trimEnd());
}
