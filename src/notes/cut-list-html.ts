import { escapeHtml as e } from '../engine/result-display.js';
import {
  fromText,
  inchText,
  millimetres,
  numbersText,
  pieceText,
  takeText,
  type CutRow,
  type CutSheet,
} from './cut-sheet.js';

/** Black edges and hatching carry the drawing, so that it reads in print and without colour. */
const style = `
.cutlist{font:14px/1.4 "DejaVu Sans",Verdana,system-ui,sans-serif;color:#2b2620;max-width:60em}
.cutlist h1{font-size:1.5em;margin:.2em 0}.cutlist h2{font-size:1.1em;margin:1em 0 .3em}
.cutlist table{border-collapse:collapse;width:100%}
.cutlist th,.cutlist td{border:1px solid #8a7f70;padding:.2em .5em;text-align:left;vertical-align:top}
.cutlist td.n{text-align:right;white-space:nowrap}
.cutlist .row{display:flex;align-items:center;gap:.6em;margin:.35em 0;break-inside:avoid}
.cutlist .no{flex:0 0 7.5em;text-align:right;font-size:.9em}
.cutlist .lane{flex:1 1 auto}
.cutlist .bar{display:flex;height:1.9em;border:1px solid #2b2620;box-sizing:border-box;background:repeating-linear-gradient(45deg,#fff 0 4px,#bdb6ab 4px 5px)}
.cutlist .bar span{box-sizing:border-box;border-right:2px solid #2b2620;overflow:hidden;white-space:nowrap;text-align:center;font-size:.8em;line-height:2.2;background:#ecd3ab}
.cutlist .bar span:nth-child(even){background:#cfa873}
.cutlist .bar span.gap{background:none;border:0}.cutlist .bar span.keep{background:#fff;border:1px dashed #2b2620}
@media print{.cutlist{font-size:11px}.cutlist .bar,.cutlist .bar span{print-color-adjust:exact;-webkit-print-color-adjust:exact}}
`;

/** The list as a page, or with `fragment` as a part of one. */
export function cutListHtml(sheet: CutSheet, fragment = false): string {
  const sections = sheet.rows.some((r) => r.section !== undefined);
  const td = (s: string, number = false): string => `<td${number ? ' class="n"' : ''}>${s}</td>`;
  const table = (head: readonly string[], rows: readonly string[]): string =>
    `<table><thead><tr>${head.map((h) => `<th>${h}</th>`).join('')}</tr></thead><tbody>${rows.map((r) => `<tr>${r}</tr>`).join('')}</tbody></table>`;
  const opt = (s: string | undefined): string => (sections ? td(e(s ?? '')) : '');
  const longest = sheet.rows.reduce((a, r) => Math.max(a, r.stockLength), 0);
  const body = [
    `<h1>Cut list</h1><p>${e(sheet.summary)}</p>`,
    '<h2>Running order</h2><p>Longest stop first; what is left of a board waits for the next stop. Mark each piece as it comes off.</p>',
    table(
      ['', 'Run', ...(sections ? ['Section'] : []), 'Stop (mm)', 'Stop (in)', 'Pieces', 'Parts', 'Boards'],
      sheet.runs.map(
        (r) =>
          td('☐') +
          td(`${r.run}`, true) +
          opt(r.section) +
          td(millimetres(r.length), true) +
          td(inchText(r.length), true) +
          td(`${r.pieces}`, true) +
          td(r.names.map((n) => `${e(n.name)} × ${n.count}`).join(', ')) +
          td(e(fromText(r.from))),
      ),
    ),
    '<h2>Boards</h2>',
    ...sheet.rows.map((r) => bar(r, longest)),
    table(
      ['', 'Board', ...(sections ? ['Section'] : []), 'Take', 'Cuts in order (mm)', 'Left over (mm)'],
      sheet.rows.map(
        (r) =>
          td('☐') +
          td(numbersText(r.numbers)) +
          opt(r.section) +
          td(e(takeText(r))) +
          td(r.pieces.map((p) => e(pieceText(p))).join(' + ')) +
          td(`${millimetres(r.offcut)}${r.keep ? ', keep' : ''}`, true),
      ),
    ),
    ...(sheet.missing.length > 0
      ? [
          '<h2>Not in the stock</h2>',
          table(
            ['Part', 'Length (mm)', 'Count'],
            sheet.missing.map(
              (m) => td(e(m.name)) + td(millimetres(m.length), true) + td(`${m.count}`, true),
            ),
          ),
        ]
      : []),
    `<h2>Cautions</h2><ul>${sheet.cautions.map((c) => `<li>${e(c)}</li>`).join('')}</ul>`,
  ].join('\n');
  const inner = `<style>${style}</style>\n<div class="cutlist">${body}</div>`;
  return fragment
    ? inner
    : `<!doctype html>\n<html lang="en"><head><meta charset="utf-8"><title>Cut list</title></head><body>\n${inner}\n</body></html>\n`;
}

/** One board to scale against the longest: parts, what is worth keeping, and hatching for the rest. */
function bar(r: CutRow, longest: number): string {
  const share = (l: number): string => `${Number(((100 * l) / r.stockLength).toFixed(3))}%`;
  let at = 0;
  const parts = r.pieces.map((p) => {
    const gap = p.from - at;
    at = p.from + p.length;
    // Gaps smaller than a line are the line itself.
    return `${gap > r.stockLength * 0.004 ? `<span class="gap" style="width:${share(gap)}"></span>` : ''}<span style="width:${share(p.length)}" title="${e(pieceText(p))} mm">${e(pieceText(p))}</span>`;
  });
  const keep = r.keep
    ? `<span class="keep" style="width:${share(r.offcut)}">keep ${millimetres(r.offcut)}</span>`
    : '';
  return `<div class="row"><div class="no">${e(numbersText(r.numbers))}${r.numbers.length > 1 ? ` (${r.numbers.length})` : ''}</div><div class="lane"><div class="bar" style="width:${Number(((100 * r.stockLength) / longest).toFixed(3))}%">${parts.join('')}${keep}</div></div></div>`;
}
