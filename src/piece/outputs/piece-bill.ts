// The bill of a piece, with what makes the piece unsafe at its head.
import { escapeHtml } from '../../engine/escape-html.js';
import type { Result } from '../../engine/result.js';
import { writeFileAtomically } from '../../notes/atomic-write.js';
import { fileEnding } from '../../notes/file-ending.js';
import { pageHtml } from '../../notes/html-page.js';
import { dangerLines } from '../piece-text.js';
import type { PieceView } from '../piece-view.js';
import { billNode } from '../questions/cost-questions.js';
import { resultOf } from '../recipe-ask.js';

/** The bill: its result, and its forms with the warnings at the head. */
export interface PieceBill {
  readonly result: Result;
  readonly warnings: readonly string[];
  toText(): string;
  toMarkdown(): string;
  toHtml(): string;
  toCSV(): string;
  /** Writes .html, .md or .csv, whole or not at all. @throws InputError, FileError */
  save(file: string): Promise<void>;
}

/** The bill of a piece. @throws InputError where a price and a quantity do not go together */
export function pieceBill(piece: PieceView): PieceBill {
  const result = resultOf(piece.graph.of(billNode).ask) as Result;
  const warnings = dangerLines(piece);
  const plain = warnings.map((w) => `NOT SAFE AS DESCRIBED: ${w}`);
  const title = `Bill: ${piece.name}`;
  const bill: PieceBill = {
    result,
    warnings,
    toText: () => [title, ...plain, '', result.toText()].join('\n'),
    toMarkdown: () => [`# ${title}`, '', ...plain.map((w) => `**${w}**\n`), result.toMarkdown()].join('\n'),
    toHtml: () =>
      pageHtml({
        title,
        body: `<h1>${escapeHtml(title)}</h1>${plain.map((w) => `<p class="unsafe">${escapeHtml(w)}</p>`).join('')}${result.toHtml()}`,
        style: '.unsafe{border:2px solid var(--mark);padding:.3em .6em;font-weight:700}',
      }),
    toCSV: () => [...plain.map((w) => `"${w.replace(/"/g, '""')}"`), result.toCSV()].join('\r\n'),
    async save(file) {
      const ending = fileEnding(file, ['html', 'md', 'csv']);
      const text = ending === 'md' ? bill.toMarkdown() : ending === 'csv' ? bill.toCSV() : bill.toHtml();
      await writeFileAtomically(file, text);
    },
  };
  return Object.freeze(bill);
}
