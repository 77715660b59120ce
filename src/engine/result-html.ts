import { asSentence, cautionWord, type Caution } from './caution.js';
import { resultParts } from './result-parts.js';
import type { ResultInternals, ValueLine } from './result-types.js';
import { citationText, shortCitation } from './source.js';
import { escapeHtml } from './escape-html.js';
import { tableHtml } from './table-html.js';
import { workingBasis } from './step-basis.js';

const e = escapeHtml;
const td = 'style="text-align:left;padding:.15em .9em .15em 0;vertical-align:top"';
const label = 'style="text-align:left;padding:.15em .9em .15em 0;vertical-align:top;min-width:12em"';
const num =
  'style="text-align:right;padding:.15em .9em .15em 0;white-space:nowrap;font-variant-numeric:tabular-nums;vertical-align:top"';

/**
 * What opens and closes a part. Some pages take the triangle off (the style sheet of the classic notebook does), and then
 * nothing shows that the part can be opened: the style here puts it back.
 */
const summary = (text: string): string =>
  `<summary style="display:list-item;cursor:pointer">${e(text)}</summary>`;

/** A fragment with its own few styles inline, so that it looks the same in any notebook page, light or dark. */
export function htmlOf(a: ResultInternals): string {
  const shown = resultParts(a);
  const block = (head: string, rows: readonly ValueLine[], strong: boolean): string => {
    if (rows.length === 0) return '';
    const inch = rows.some((r) => r.inch);
    // Words stand on the left across both columns, or they would push the numbers apart.
    const isWords = (r: ValueLine): boolean =>
      !/^[-+−£$€¥A-Z]{0,4} ?\d/.test(r.metric) || r.metric.length > 40 || r.metric.includes(', ');
    return `<table style="border-collapse:collapse;margin:.4em 0"><thead><tr><th ${td}>${e(head)}</th><th ${num}></th>${inch ? `<th ${num}></th>` : ''}</tr></thead><tbody>${rows
      .map(
        (r) =>
          `<tr title="${e(r.name)}"><td ${label}>${e(r.label)}</td><td ${isWords(r) ? `${inch ? 'colspan="2" ' : ''}${td}` : num}>${strong ? `<strong>${e(r.metric)}</strong>` : e(r.metric)}${isWords(r) && r.inch ? ` (${e(r.inch)})` : ''}</td>${inch && !isWords(r) ? `<td ${num}>${e(r.inch)}</td>` : ''}</tr>`,
      )
      .join('')}</tbody></table>`;
  };
  const cautions = (list: readonly Caution[]): string =>
    list.length === 0
      ? ''
      : `<ul class="reckoner-cautions" style="margin:.5em 0;padding-left:1.2em">${list.map((c) => `<li><strong>${e(cautionWord[c.level])}:</strong> ${e(asSentence(c.text))}${c.source ? ` <small>(${e(shortCitation(c.source))})</small>` : ''}</li>`).join('')}</ul>`;
  const parts: string[] = [
    `<h4 style="margin:.2em 0 .4em">${e(a.title)}</h4>`,
    shown.sentence === ''
      ? ''
      : `<p class="reckoner-sentence" style="margin:.2em 0 .4em"><strong>${e(shown.sentence)}</strong></p>`,
    block('Answer', shown.lines, true),
    ...shown.tables.map(tableHtml),
    cautions(shown.cautions),
  ];
  if (shown.more.length + shown.notes.length > 0)
    parts.push(
      `<details>${summary('More')}${block('Further figures', shown.more, false)}${cautions(shown.notes)}</details>`,
    );
  const workings = a.workings();
  const mono =
    'style="font-family:ui-monospace,Menlo,Consolas,monospace;font-size:.95em;overflow-wrap:anywhere"';
  const worked = workings
    .map((w) =>
      w.kind === 'remark'
        ? `<li>${e(w.text)}</li>`
        : `<li>${e(w.text)}${workingBasis(w) ? ` <small>(${e(workingBasis(w))})</small>` : ''}<div><code data-latex="${e(w.latex)}" ${mono}>${e(w.plain)}</code></div><div><code${w.numbersLatex === '' ? '' : ` data-latex="${e(w.numbersLatex)}"`} ${mono}>${e(w.numbersPlain)}</code></div></li>`,
    )
    .join('');
  parts.push(
    `<details class="reckoner-workings">${summary('Workings')}${block('Given', shown.given, false)}${block('Assumed', shown.assumed, false)}<ol style="padding-left:1.4em">${worked}</ol></details>`,
  );
  const sources = a.sources();
  if (sources.length > 0)
    parts.push(
      `<details>${summary('Sources')}<ul>${sources.map((s) => `<li>${e(citationText(s))}</li>`).join('')}</ul></details>`,
    );
  return `<div class="reckoner-result">${parts.join('')}</div>`;
}
