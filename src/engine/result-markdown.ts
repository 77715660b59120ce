import { asSentence, cautionWord, type Caution } from './caution.js';
import { resultParts } from './result-parts.js';
import type { ResultInternals, TableBlock, ValueLine } from './result-types.js';
import { citationText, shortCitation } from './source.js';
import { workingBasis } from './step-basis.js';
import type { Working } from './trace.js';

const cell = (s: string): string => s.replace(/\|/g, '\\|').replace(/\n/g, ' ');

/** A result as Markdown: tables and formulas. */
export function markdownOf(a: ResultInternals): string {
  const parts = resultParts(a);
  const answer = parts.lines.map((l) => ({ ...l, metric: `**${l.metric}**` }));
  return [
    `### ${a.title}`,
    '',
    ...(parts.sentence === '' ? [] : [`**${parts.sentence}**`, '']),
    ...valueBlock('**Answer**', answer),
    ...parts.tables.flatMap(tableLines),
    ...listBlock('Cautions', parts.cautions.map(cautionText)),
    ...valueBlock('Given', parts.given),
    ...valueBlock('Assumed', parts.assumed),
    ...valueBlock('More', parts.more),
    ...workingLines(a.workings()),
    ...listBlock('Further notes', parts.notes.map(cautionText)),
    ...listBlock('Sources', a.sources().map(citationText)),
  ].join('\n');
}

const cautionText = (c: Caution): string =>
  `**${cautionWord[c.level]}:** ${asSentence(c.text)}${c.source ? ` (${shortCitation(c.source)})` : ''}`;

function valueBlock(head: string, rows: readonly ValueLine[]): string[] {
  if (rows.length === 0) return [];
  const inch = rows.some((r) => r.inch);
  return [
    ...(inch ? [`| ${head} | metric | US customary |`, '|---|---|---|'] : [`| ${head} | |`, '|---|---|']),
    ...rows.map((r) =>
      inch
        ? `| ${cell(r.label)} | ${cell(r.metric)} | ${cell(r.inch)} |`
        : `| ${cell(r.label)} | ${cell(r.metric)} |`,
    ),
    '',
  ];
}

function tableLines(t: TableBlock): string[] {
  return [
    `**${t.label}**`,
    '',
    `| ${t.columns.map(cell).join(' | ')} |`,
    `|${t.columns.map(() => '---').join('|')}|`,
    ...t.rows.map((r) => `| ${r.map(cell).join(' | ')} |`),
    '',
  ];
}

function workingLines(workings: readonly Working[]): string[] {
  if (workings.length === 0) return [];
  return [
    '**Workings**',
    '',
    ...workings.flatMap((w) =>
      w.kind === 'remark'
        ? [`- ${w.text}`]
        : [
            `- ${w.text}${workingBasis(w) ? ` (${workingBasis(w)})` : ''}`,
            '',
            `  $$${w.latex}$$`,
            '',
            `  $$${w.numbersLatex}$$`,
            '',
          ],
    ),
    '',
  ];
}

function listBlock(head: string, items: readonly string[]): string[] {
  return items.length === 0 ? [] : [`**${head}**`, '', ...items.map((item) => `- ${item}`), ''];
}
