// A piece as text: what fails first, what is open, every question, what was assumed.
import { escapeHtml } from '../engine/escape-html.js';
import type { Answer } from './answers.js';
import type { PieceView } from './piece-view.js';
import type { PieceVerdict } from './question.js';

export const verdictWords: Readonly<Record<PieceVerdict, string>> = {
  ok: 'ok',
  tight: 'tight',
  fails: 'FAILS',
  open: 'open',
};

/** One sentence on the piece as a whole. */
export function pieceSentence(piece: PieceView): string {
  const { dangers, questions } = piece;
  if (dangers.length > 0)
    return `${piece.name} is not safe as described: ${dangers.map((d) => d.answer).join(' ')}`;
  const of = (v: PieceVerdict): number => questions.filter((a) => a.verdict === v).length;
  const parts = [
    of('fails') > 0 ? `${of('fails')} fail` : '',
    of('open') > 0 ? `${of('open')} are open` : '',
    of('tight') > 0 ? `${of('tight')} are tight` : '',
  ].filter(Boolean);
  const safe = questions.some((a) => a.safety && a.verdict === 'open')
    ? 'Not every safety question is answered yet'
    : 'No safety question fails';
  return parts.length === 0
    ? `${piece.name}: all ${questions.length} questions come out well.`
    : `${piece.name}: of ${questions.length} questions ${parts.join(', ')}. ${safe}.`;
}

/** Failing safety questions, as they stand at the head of everything made from the piece. */
export const dangerLines = (piece: PieceView): string[] => piece.dangers.map((d) => `${d.title} ${d.answer}`);

/** Open questions, safety first. */
export const openLines = (piece: PieceView): string[] =>
  [...piece.open].sort((a, b) => Number(b.safety) - Number(a.safety)).map((a) => `${a.title} ${a.answer}`);

const marginText = (a: Answer): string =>
  a.margin === undefined ? '' : a.margin >= 10 ? 'ample' : `${Math.round(a.margin * 100)} %`;

export function pieceText(piece: PieceView): string {
  const wide = Math.max(...piece.questions.map((a) => a.title.length));
  const newsLines = piece.news.map((n) => `  ${n.plan}: ${n.message}`);
  return [
    pieceSentence(piece),
    ...section('Not safe', dangerLines(piece)),
    ...section('Open', openLines(piece)),
    '',
    'Questions',
    ...piece.questions.map(
      (a) =>
        `  ${verdictWords[a.verdict].padEnd(5)}  ${a.title.padEnd(wide)}  ${marginText(a).padStart(6)}  ${a.answer}`,
    ),
    ...(newsLines.length > 0 ? ['', 'Searches', ...newsLines] : []),
    ...section(
      'Assumed',
      piece.assumed.map((x) => `${x.path}: ${x.label}, ${x.value}`),
    ),
  ].join('\n');
}

const section = (title: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : ['', title, ...lines.map((l) => `  ${l}`)];

const cell = (s: string): string => escapeHtml(s).replace(/\|/g, '\\|').replace(/\s+/g, ' ');

/** The table of questions. */
export function questionsMarkdown(piece: PieceView): string {
  return [
    '| Verdict | Question | Answer | Margin |',
    '| --- | --- | --- | ---: |',
    ...piece.questions.map(
      (a) =>
        `| ${a.verdict === 'fails' ? '**fails**' : a.verdict} | ${cell(a.title)} | ${cell(a.answer)} | ${marginText(a)} |`,
    ),
  ].join('\n');
}

export function pieceMarkdown(piece: PieceView): string {
  const list = (title: string, lines: readonly string[]): string[] =>
    lines.length === 0 ? [] : ['', `**${title}**`, '', ...lines.map((l) => `- ${cell(l)}`)];
  return [
    cell(pieceSentence(piece)),
    ...list('Not safe', dangerLines(piece)),
    ...list('Open', openLines(piece)),
    '',
    questionsMarkdown(piece),
    ...list(
      'Searches',
      piece.news.map((n) => `${n.plan}: ${n.message}`),
    ),
    ...list(
      'Assumed',
      piece.assumed.map((x) => `${x.path}: ${x.label}, ${x.value}`),
    ),
    '',
  ].join('\n');
}

/** The same as HTML, its verdicts marked. */
export function pieceHtml(piece: PieceView): string {
  const list = (title: string, lines: readonly string[]): string =>
    lines.length === 0
      ? ''
      : `<p><strong>${title}</strong></p><ul>${lines.map((l) => `<li>${escapeHtml(l)}</li>`).join('')}</ul>`;
  const rows = piece.questions.map(
    (a) =>
      `<tr data-question="${a.name}" data-verdict="${a.verdict}"><td>${a.verdict === 'fails' ? '<strong>fails</strong>' : a.verdict}</td><td>${escapeHtml(a.title)}</td><td>${escapeHtml(a.answer)}</td><td>${marginText(a)}</td></tr>`,
  );
  return `<p>${escapeHtml(pieceSentence(piece))}</p>${list('Not safe', dangerLines(piece))}${list('Open', openLines(piece))}<table><thead><tr><th>Verdict</th><th>Question</th><th>Answer</th><th>Margin</th></tr></thead><tbody>${rows.join('')}</tbody></table>${list(
    'Searches',
    piece.news.map((n) => `${n.plan}: ${n.message}`),
  )}<details><summary>Assumed: ${piece.assumed.length} values</summary><ul>${piece.assumed
    .map((x) => `<li>${escapeHtml(`${x.path}: ${x.label}, ${x.value}`)}</li>`)
    .join('')}</ul></details>`;
}
