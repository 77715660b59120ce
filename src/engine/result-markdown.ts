import { cautionWord } from './caution.js';
import type { ResultInternals, ValueLine } from './result.js';
import { citationText, shortCitation } from './source.js';
import { valueLines } from './value-table.js';
import { workingBasis } from './step-basis.js';

const cell = (s: string): string => s.replace(/\|/g, '\\|').replace(/\n/g, ' ');

/** A result as Markdown: tables and formulas. */
export function markdownOf(a: ResultInternals): string {
  const { lines, tables } = valueLines(a);
  const out: string[] = [`### ${a.title}`, ''];
  const block = (head: string, rows: readonly ValueLine[]): void => {
    if (rows.length === 0) return;
    const inch = rows.some((r) => r.inch);
    out.push(inch ? `| ${head} | metric | inch |` : `| ${head} | |`, inch ? '|---|---|---|' : '|---|---|');
    for (const r of rows)
      out.push(
        inch
          ? `| ${cell(r.label)} | ${cell(r.metric)} | ${cell(r.inch)} |`
          : `| ${cell(r.label)} | ${cell(r.metric)} |`,
      );
    out.push('');
  };
  block('Given', a.inputs);
  block(
    '**Answer**',
    lines.map((l) => ({ ...l, metric: `**${l.metric}**` })),
  );
  for (const t of tables) {
    out.push(
      `**${t.label}**`,
      '',
      `| ${t.columns.map(cell).join(' | ')} |`,
      `|${t.columns.map(() => '---').join('|')}|`,
      ...t.rows.map((r) => `| ${r.map(cell).join(' | ')} |`),
      '',
    );
  }
  const workings = a.workings();
  if (workings.length > 0) {
    out.push('**Workings**', '');
    for (const w of workings) {
      if (w.kind === 'remark') out.push(`- ${w.text}`);
      else
        out.push(
          `- ${w.text}${workingBasis(w) ? ` (${workingBasis(w)})` : ''}`,
          '',
          `  $$${w.latex}$$`,
          '',
          `  $$${w.numbersLatex}$$`,
          '',
        );
    }
    out.push('');
  }
  const cautions = a.cautions();
  if (cautions.length > 0)
    out.push(
      '**Cautions**',
      '',
      ...cautions.map(
        (c) => `- **${cautionWord[c.level]}:** ${c.text}${c.source ? ` (${shortCitation(c.source)})` : ''}`,
      ),
      '',
    );
  const sources = a.sources();
  if (sources.length > 0) out.push('**Sources**', '', ...sources.map((s) => `- ${citationText(s)}`), '');
  return out.join('\n');
}
