import { asSentence, cautionWord } from '../engine/caution.js';
import { workingBasis } from '../engine/result-display.js';
import type { ValueLine } from '../engine/result.js';
import { citationText } from '../engine/source.js';
import type { NoteContent, ResultSheet, Sheet } from './note-content.js';
import { fencedText, safeMarkdown } from './safe-markdown.js';
import { longDate } from './long-date.js';
import { jsonForHtml } from './json-for-html.js';

/** Says where a drawing will stand: takes its SVG and a short name, gives back what a Markdown link points at. */
export type PlaceDrawing = (svg: string, name: string) => string;

/** Words that start and end the memory of a note in its Markdown, inside a comment that no reader sees. */
export const noteStateMarkers = { start: '<!-- reckoner-note ', end: ' -->' } as const;

/** The note as Markdown with formulas in LaTeX between dollar signs, as repositories and most editors show them. */
export function noteMarkdown(note: NoteContent, memory: unknown, place: PlaceDrawing): string {
  const { head } = note;
  const numbered = note.sheets.filter((s) => 'number' in s);
  const out: string[] = [
    `# ${plain(head.title)}`,
    '',
    [longDate(head.date), head.by === undefined ? '' : plain(head.by)].filter(Boolean).join(' · '),
    '',
  ];
  if (numbered.length > 1)
    out.push(
      '## Contents',
      '',
      ...numbered.map((s) => `${s.number}. [${plain(s.title)}](#${anchor(`${s.number} ${s.title}`)})`),
      '',
    );
  if (note.cautions.length > 0) {
    out.push('## Read before you cut', '');
    for (const { caution, sheets, ref } of note.cautions)
      out.push(
        `- **${cautionWord[caution.level]}:** ${plain(asSentence(caution.text))}${ref === undefined ? '' : refs([ref])}${numbered.length > 1 ? ` (${sheets.length === 1 ? 'part' : 'parts'} ${sheets.join(', ')})` : ''}`,
      );
    out.push('');
  }
  for (const sheet of note.sheets) out.push(...sheetLines(sheet, place));
  if (note.sources.length > 0)
    out.push('## Sources', '', ...note.sources.map((s, i) => `${i + 1}. ${plain(citationText(s))}`), '');
  out.push(
    '---',
    '',
    `Calculated with joiners-reckoner ${head.version} on ${longDate(head.date)}. Figures are for planning; local codes and licensed practice come first.`,
    '',
  );
  out.push(`${noteStateMarkers.start}${jsonForHtml(memory)}${noteStateMarkers.end}`, '');
  return out.join('\n');
}

function sheetLines(sheet: Sheet, place: PlaceDrawing): string[] {
  switch (sheet.kind) {
    case 'text':
      return [safeMarkdown(lowered(sheet.markdown.trim())), ''];
    case 'picture':
      return [
        `![${plain(sheet.caption ?? 'picture')}](<${sheet.file}>)`,
        '',
        ...(sheet.caption === undefined ? [] : [plain(sheet.caption), '']),
      ];
    case 'chart':
      return [
        `## ${sheet.number} ${plain(sheet.title)}`,
        '',
        ...remark(sheet.remark),
        `![${plain(sheet.title)}](${place(sheet.svg, `${two(sheet.number)}-chart`)})`,
        '',
      ];
    case 'shown': {
      const text = (type: string): string | undefined =>
        typeof sheet.bundle[type] === 'string' ? sheet.bundle[type] : undefined;
      const [markdown, printed] = [text('text/markdown'), text('text/plain')];
      const words =
        markdown === undefined ? (printed === undefined ? '' : fencedText(printed)) : safeMarkdown(markdown);
      const svg = text('image/svg+xml');
      return [
        ...remark(sheet.remark),
        words.trim(),
        '',
        ...(svg === undefined ? [] : [`![chart](${place(svg, 'shown')})`, '']),
      ];
    }
    case 'result':
      return resultLines(sheet, place);
  }
}

function resultLines(s: ResultSheet, place: PlaceDrawing): string[] {
  const out = [
    `## ${s.number} ${plain(s.title)}`,
    '',
    ...remark(s.remark),
    ...table('Given', s.given, false),
    ...table('Answer', s.answer, true),
  ];
  for (const t of s.tables)
    out.push(
      `**${plain(t.label)}**`,
      '',
      `| ${t.columns.map(plain).join(' | ')} |`,
      `|${t.columns.map(() => '---').join('|')}|`,
      ...t.rows.map((r) => `| ${r.map(plain).join(' | ')} |`),
      '',
    );
  if (s.svg !== undefined)
    out.push(`![${plain(s.title)}](${place(s.svg, `${two(s.number)}-${s.recipe}`)})`, '');
  if (s.workings.length > 0) out.push('### Workings', '');
  for (const w of s.workings) {
    const basis = w.refs.length > 0 ? '' : workingBasis(w);
    out.push(
      `${plain(w.text)}${refs(w.refs)}${basis === '' || w.kind === 'remark' ? '' : ` (${plain(basis)})`}${w.kind === 'remark' ? '' : ':'}`,
      '',
    );
    if (w.kind === 'formula') out.push(`$$${w.latex}$$`, '', `$$${w.numbersLatex}$$`, '');
  }
  if (s.refs.length > 0) out.push(`Sources of this part:${refs(s.refs)}`, '');
  return out;
}

function table(head: string, lines: readonly ValueLine[], strong: boolean): string[] {
  if (lines.length === 0) return [];
  const inch = lines.some((l) => l.inch !== '');
  const value = (text: string): string => (strong && text !== '' ? `**${plain(text)}**` : plain(text));
  return [
    inch ? `| ${head} | metric | inch |` : `| ${head} | |`,
    inch ? '|---|--:|--:|' : '|---|--:|',
    ...lines.map((l) => `| ${plain(l.label)} | ${value(l.metric)} |${inch ? ` ${plain(l.inch)} |` : ''}`),
    '',
  ];
}

/** Text whose top heading stands one step below the note's title, as it does in the page; code blocks are left alone. */
function lowered(markdown: string): string {
  if (!/^# /m.test(markdown)) return markdown;
  let inCode = false;
  return markdown
    .split('\n')
    .map((line) => {
      if (/^\s*(```|~~~)/.test(line)) inCode = !inCode;
      return !inCode && /^#{1,5} /.test(line) ? `#${line}` : line;
    })
    .join('\n');
}

const remark = (text: string | undefined): string[] =>
  text === undefined
    ? []
    : [
        ...safeMarkdown(text.trim())
          .split('\n')
          .map((l) => `> ${l}`),
        '',
      ];
const refs = (numbers: readonly number[]): string =>
  numbers.length === 0 ? '' : ` ${numbers.map((n) => `[${n}]`).join('')}`;
const two = (n: number): string => String(n).padStart(2, '0');

/** Words that must stay words: what Markdown would read as a mark gets a backslash. */
function plain(text: string): string {
  return text.replace(/[\\`*_<>|[\]$]/g, '\\$&').replace(/\r?\n/g, ' ');
}

/** The name that repositories give a heading. */
function anchor(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, '')
    .replace(/ /g, '-');
}
