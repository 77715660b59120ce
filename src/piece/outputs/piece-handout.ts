// A page about the piece for others: what is not safe, the pictures, every question and its answer, the parts.
import { renderSvg } from '../../charts/svg.js';
import { escapeHtml as e } from '../../engine/escape-html.js';
import { writeFileAtomically } from '../../notes/atomic-write.js';
import { fileEnding } from '../../notes/file-ending.js';
import { pageHtml } from '../../notes/html-page.js';
import { sectionText } from '../../recipes/rails/section.js';
import { cutPartsNode } from '../plan-fit.js';
import { dangerLines, openLines, pieceSentence } from '../piece-text.js';
import type { PieceView } from '../piece-view.js';
import { pictureNames, piecePictures } from '../pictures/piece-pictures.js';
import { mm } from '../question.js';

export interface PieceHandout {
  /** One self-contained page. */
  toHtml(): Promise<string>;
  /** @throws InputError for a name that does not end in .html, FileError */
  save(file: string): Promise<void>;
}

const style = `.unsafe{border:2px solid var(--mark);padding:.3em .8em;margin:0 0 1em}.unsafe h2{border:0;margin:.3em 0;color:var(--mark)}
td.verdict{white-space:nowrap}.fails td{font-weight:600}.pictures{display:grid;grid-template-columns:1fr 1fr;gap:1em}.pictures figure{margin:0}
@media (max-width:40rem){.pictures{grid-template-columns:1fr}}`;

const items = (lines: readonly string[]): string =>
  `<ul>${lines.map((l) => `<li>${e(l)}</li>`).join('')}</ul>`;

/** The handout of a piece. */
export function pieceHandout(piece: PieceView): PieceHandout {
  const made: PieceHandout = {
    toHtml: async () => {
      const names = pictureNames.filter((n) => n !== 'joint');
      const pictures = await Promise.all(names.map((n) => renderSvg(piecePictures(piece.graph, n))));
      return pageHtml({ title: piece.name, style, body: bodyOf(piece, pictures) });
    },
    async save(file) {
      fileEnding(file, ['html']);
      await writeFileAtomically(file, await made.toHtml());
    },
  };
  return Object.freeze(made);
}

function bodyOf(piece: PieceView, pictures: readonly string[]): string {
  const dangers = dangerLines(piece);
  const open = openLines(piece);
  const questions = piece.questions.map(
    (a) =>
      `<tr class="${a.verdict}"><td class="verdict">${a.verdict}</td><td>${e(a.title)}</td><td>${e(a.answer)}</td></tr>`,
  );
  const parts = piece.graph.of(cutPartsNode).map((p) => {
    const section = piece.description.parts[p.name]?.section;
    return `<tr><td>${e(p.name)}</td><td>${section ? e(sectionText(section)) : ''}</td><td class="number">${mm(p.length)}</td><td class="number">${p.count}</td></tr>`;
  });
  return `<h1>${e(piece.name)}</h1>
${dangers.length > 0 ? `<section class="unsafe"><h2>Not safe as described</h2>${items(dangers)}</section>` : ''}
<p>${e(pieceSentence(piece))}</p>
${open.length > 0 ? `<h2>Open</h2>${items(open)}` : ''}
<h2>Pictures</h2><div class="pictures">${pictures.map((p) => `<figure>${p}</figure>`).join('')}</div>
<h2>Parts</h2><table><thead><tr><th>Part</th><th>Section</th><th class="number">Length</th><th class="number">Count</th></tr></thead><tbody>${parts.join('')}</tbody></table>
<h2>Questions</h2><table><thead><tr><th>Verdict</th><th>Question</th><th>Answer</th></tr></thead><tbody>${questions.join('')}</tbody></table>
<footer><p>Figures are for planning; local codes and licensed practice come first.</p></footer>`;
}
