import { asSentence, cautionWord } from '../engine/caution.js';
import { cellHtml, figureColumns, workingBasis } from '../engine/result-display.js';
import type { TableBlock, ValueLine } from '../engine/result.js';
import { citationText } from '../engine/source.js';
import type { ChartSheet, NoteContent, NoteWorking, ResultSheet, Sheet } from './note-content.js';
import { copyScript, copyTexts } from './copy-text.js';
import { escapeHtml as e } from '../engine/escape-html.js';
import { longDate } from './long-date.js';
import { markdownHtml, type Heading } from './markdown-html.js';
import { mathHtml } from './math-html.js';
import { pageHtml } from './html-page.js';
import { sanitised } from './sanitise.js';

/** The note as one self-contained page; `memory` is kept in it for calculating again. */
export function noteHtml(note: NoteContent, memory: unknown): string {
  const taken = new Set(note.sheets.flatMap((s) => ('id' in s ? [s.id] : [])));
  for (const id of ['cautions', 'sources', 'contents', 'note-memory']) taken.add(id);
  const contents: { text: string; id: string; number?: number }[] = [];
  let pictures = 0;
  const sections = note.sheets.map((sheet): string => {
    if (sheet.kind === 'text') {
      const { html, headings } = textHtml(sheet.markdown, taken);
      for (const h of headings.filter((x) => x.level <= 2)) contents.push({ text: h.text, id: h.id });
      return `<section class="words">${html}</section>`;
    }
    if ('number' in sheet) contents.push({ text: sheet.title, id: sheet.id, number: sheet.number });
    return sheetHtml(sheet, taken, () => ++pictures);
  });
  const { head } = note;
  const body = `<header class="keep"><h1>${e(head.title)}</h1><p class="when">${e([longDate(head.date), head.by].filter(Boolean).join(' · '))}</p></header>
${contents.length > 1 ? `<nav id="contents" class="keep"><h2>Contents</h2><ul>${contents.map((c) => `<li><a href="#${e(c.id)}"><span class="no">${c.number ?? ''}</span>${e(c.text)}</a></li>`).join('')}</ul></nav>` : ''}
${cautionsHtml(note)}
${sections.join('\n')}
${sourcesHtml(note)}
<footer><p>Calculated with joiners-reckoner ${e(head.version)} on ${e(longDate(head.date))}. Figures are for planning; local codes and licensed practice come first.</p></footer>`;
  return pageHtml({
    title: head.title,
    body,
    style,
    script: copyScript,
    data: { id: 'note-memory', value: memory },
  });
}

/** A remark or a chapter of text. Its headings stand one step below the note's title. */
function textHtml(markdown: string, taken: Set<string>): { html: string; headings: Heading[] } {
  const { html, headings } = markdownHtml(markdown, taken);
  const lower = headings.some((h) => h.level === 1);
  if (!lower) return { html, headings: [...headings] };
  return {
    html: html.replace(
      /<(\/?)h([1-5])(?=[ >])/g,
      (_, slash: string, level: string) => `<${slash}h${Number(level) + 1}`,
    ),
    headings: headings.map((h) => ({ ...h, level: Math.min(6, h.level + 1) })),
  };
}

function sheetHtml(
  sheet: Exclude<Sheet, { kind: 'text' }>,
  taken: Set<string>,
  nextPicture: () => number,
): string {
  switch (sheet.kind) {
    case 'result':
      return resultHtml(sheet, taken);
    case 'chart':
      return chartHtml(sheet, taken);
    case 'picture':
      return `<figure class="picture"><img id="picture-${nextPicture()}" src="${e(sheet.data)}" alt="${e(sheet.caption ?? '')}">${sheet.caption === undefined ? '' : `<figcaption>${e(sheet.caption)}</figcaption>`}</figure>`;
    case 'shown':
      return `<section class="words">${remarkHtml(sheet.remark, taken)}${bundleHtml(sheet.bundle, taken)}</section>`;
  }
}

/** A thing that only knows how to show itself, by the richest of what it offers that a still page can hold. */
function bundleHtml(bundle: Readonly<Record<string, unknown>>, taken: Set<string>): string {
  const text = (type: string): string | undefined =>
    typeof bundle[type] === 'string' ? bundle[type] : undefined;
  const svg = text('image/svg+xml');
  const picture =
    svg === undefined
      ? ''
      : `<figure><img alt="chart" src="data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}"></figure>`;
  const html = text('text/html');
  if (html !== undefined) return sanitised(html) + picture;
  const md = text('text/markdown');
  if (md !== undefined) return markdownHtml(md, taken).html + picture;
  return picture === '' ? `<pre>${e(text('text/plain') ?? '')}</pre>` : picture;
}

function remarkHtml(remark: string | undefined, taken: Set<string>): string {
  return remark === undefined ? '' : `<div class="remark">${markdownHtml(remark, taken).html}</div>`;
}

const refsHtml = (refs: readonly number[]): string =>
  refs.length === 0
    ? ''
    : `<sup class="refs">${refs.map((n) => `<a href="#source-${n}">[${n}]</a>`).join('')}</sup>`;

function chartHtml(s: ChartSheet, taken: Set<string>): string {
  return `<section class="part keep"><h2 id="${e(s.id)}"><span class="no">${s.number}</span>${e(s.title)}</h2>${remarkHtml(s.remark, taken)}<figure>${s.svg}</figure></section>`;
}

function resultHtml(s: ResultSheet, taken: Set<string>): string {
  const workings = s.workings.map((w) => `<li>${workingHtml(w)}</li>`).join('\n');
  return `<section class="part" data-recipe="${e(s.recipe)}">
<div class="keep"><h2 id="${e(s.id)}"><span class="no">${s.number}</span>${e(s.title)}${refsHtml(s.refs)}</h2>
${remarkHtml(s.remark, taken)}<div class="values"><div><h3>Given</h3>${linesHtml(s.given, false)}</div><div class="answer"><h3>Answer</h3>${linesHtml(s.answer, true)}</div></div></div>
${s.tables.map(tableHtml).join('\n')}
${s.svg === undefined ? '' : `<figure>${s.svg}</figure>`}
${workings === '' ? '' : `<h3>Workings</h3><ol class="workings">${workings}</ol>`}
</section>`;
}

function linesHtml(lines: readonly ValueLine[], strong: boolean): string {
  const inch = lines.some((l) => l.inch !== '');
  const rows = lines.map((l) => {
    const wide = l.metric.length > 36;
    const metric = strong ? `<strong>${e(l.metric)}</strong>` : e(l.metric);
    return `<tr><td>${e(l.label)}</td><td class="${wide ? 'long' : 'number'}">${metric}</td>${inch ? `<td class="number">${e(l.inch)}</td>` : ''}</tr>`;
  });
  return `<table><tbody>${rows.join('')}</tbody></table>`;
}

function tableHtml(t: TableBlock): string {
  const figures = figureColumns(t);
  const cls = (i: number): string => (figures[i] ? ' class="number"' : '');
  const rows = t.cells.map(
    (r) => `<tr>${r.map((c, i) => `<td${cls(i)}>${cellHtml(c, figures[i] === true)}</td>`).join('')}</tr>`,
  );
  return `<h3>${e(t.label)}</h3><table><thead><tr>${t.heads.map((h, i) => `<th${cls(i)}>${e(h)}</th>`).join('')}</tr></thead><tbody>${rows.join('')}</tbody></table>`;
}

function workingHtml(w: NoteWorking): string {
  const texts = copyTexts(w);
  const buttons = Object.entries(texts)
    .map(([kind, text]) => `<button type="button" data-copy="${e(text)}">${e(kind)}</button>`)
    .join('');
  const copy = `<span class="copy screen">copy as ${buttons}</span>`;
  if (w.kind === 'remark') return `<p>${e(w.text)}${refsHtml(w.refs)}</p>`;
  const basis = w.refs.length > 0 ? '' : workingBasis(w);
  return `<p>${e(w.text)}${refsHtml(w.refs)}${basis === '' ? '' : ` <small>(${e(basis)})</small>`} ${copy}</p>${mathHtml(w.latex, true)}${mathHtml(w.numbersLatex, true)}`;
}

function cautionsHtml(note: NoteContent): string {
  if (note.cautions.length === 0) return '';
  const items = note.cautions.map(({ caution, sheets, ref }) => {
    const where =
      note.sheets.filter((s) => 'number' in s).length > 1
        ? ` <small>(${sheets.length === 1 ? 'part' : 'parts'} ${sheets.join(', ')})</small>`
        : '';
    return `<li class="${caution.level}"><strong>${e(cautionWord[caution.level])}:</strong> ${e(asSentence(caution.text))}${ref === undefined ? '' : refsHtml([ref])}${where}</li>`;
  });
  return `<section id="cautions" class="cautions"><h2>Read before you cut</h2><ul>${items.join('')}</ul></section>`;
}

function sourcesHtml(note: NoteContent): string {
  if (note.sources.length === 0) return '';
  return `<section class="sources"><h2 id="sources">Sources</h2><ol>${note.sources.map((s, i) => `<li id="source-${i + 1}">${e(citationText(s))}</li>`).join('')}</ol></section>`;
}

const style = `
.when{color:var(--soft);margin-top:-.4em}
h2 .no{color:var(--accent);margin-right:.6em;font-variant-numeric:tabular-nums}
nav ul{list-style:none;padding:0;columns:2 17rem}nav li{margin:.15em 0;break-inside:avoid}nav a{color:inherit;text-decoration:none}nav .no{display:inline-block;min-width:1.8em;color:var(--accent)}
.refs{font-size:.62em;font-weight:normal;margin-left:.15em}.refs a{text-decoration:none}
.remark{border-left:3px solid var(--accent);padding-left:1em}
.values h3{margin:.9em 0 .25em}.values table{display:table;width:100%;font-size:.95em}.values td:first-child{width:auto}
.answer table{border-top:2px solid var(--accent)}
td.long{text-align:right;max-width:22rem}
.workings{padding-left:1.5em}.workings li{margin-bottom:1em}.workings p{margin:0 0 .3em}.workings .katex-display{margin:.35em 0}.workings .katex-display>.katex{text-align:left}
.copy{white-space:nowrap;font-size:.78em;color:var(--soft);font-family:system-ui,sans-serif;margin-left:.6em}
.copy button{font:inherit;color:var(--accent);background:none;border:0;border-bottom:1px dotted;padding:.35em .1em;margin:0 .35em;cursor:pointer}
.copy button.done{color:var(--soft)}.copy button.done::after{content:" ✓"}
.cautions{background:var(--wash);border-radius:8px;padding:.2rem 1.2rem .6rem;margin:1.5em 0}.cautions h2{border:0;margin:.7em 0 .3em;font-size:1.2rem}.cautions ul{padding-left:1.1em;margin:0}
.cautions .danger strong{color:var(--mark)}
footer{margin-top:3em;font-size:.88em;color:var(--soft)}
@media (max-width:34rem){.values td.number{white-space:normal;overflow-wrap:break-word}.values td:first-child{min-width:9rem}}
@media print{.cautions{border:1px solid #999;break-inside:avoid-page}.copy{display:none}.sources li{break-inside:avoid}nav ul{columns:2}}
`;
