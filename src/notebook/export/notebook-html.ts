import { renderSvg } from '../../charts/svg.js';
import { ChartError, type ChartSpec } from '../../charts/chart-spec.js';
import { escapeHtml as e } from '../../engine/escape-html.js';
import { highlighted } from '../../notes/highlight.js';
import { markdownHtml, type Heading } from '../../notes/markdown-html.js';
import { mathHtml, type MathForm } from '../../notes/math-html.js';
import { pageHtml } from '../../notes/html-page.js';
import { sanitised } from '../../notes/sanitise.js';
import type {
  CodeCell,
  Json,
  JsonObject,
  MimeBundle,
  Notebook,
  Output,
  TextCell,
} from '../format/notebook.js';

export interface HtmlOptions {
  /** Default: the notebook's title, its first heading, or "Notebook". */
  readonly title?: string;
  /** Leave the code out, for readers who want the calculation alone. Default false. */
  readonly hideCode?: boolean;
  /** HTML put above the notebook, safe already, such as a link back to a list of notebooks. */
  readonly above?: string;
}

/**
 * A notebook as one self-contained page: words, code, prints, tables, typeset formulas and charts as SVG. Whatever came with the
 * file is sanitised: nothing in the page can run or load anything.
 */
export async function notebookToHtml(notebook: Notebook, options: HtmlOptions = {}): Promise<string> {
  const taken = new Set(['contents']);
  const headings: Heading[] = [];
  const parts: string[] = [];
  for (const cell of notebook.cells)
    parts.push(
      cell.cell_type === 'code' ? await codeHtml(cell, options, taken) : textHtml(cell, taken, headings),
    );
  const title = options.title ?? titleOf(notebook) ?? 'Notebook';
  const chapters = headings.filter((h) => h.level === 2);
  const contents =
    chapters.length > 2
      ? `<nav id="contents" class="keep"><details open><summary>Contents</summary><ul>${chapters.map((h) => `<li><a href="#${e(h.id)}">${e(h.text)}</a></li>`).join('')}</ul></details></nav>`
      : '';
  // The contents follow the opening words: before the first chapter, or after the first cell where that opens none.
  const [first = '', ...rest] = parts;
  const chapterAt = first.search(/<h2[ >]/);
  const opening =
    notebook.cells[0]?.cell_type !== 'markdown'
      ? contents + first
      : chapterAt >= 0
        ? first.slice(0, chapterAt) + contents + first.slice(chapterAt)
        : first + contents;
  const body = `${options.above ?? ''}<main>${opening}\n${rest.join('\n')}</main>`;
  return pageHtml({ title, body, style, language: languageOf(notebook) });
}

function textHtml(cell: TextCell, taken: Set<string>, headings: Heading[]): string {
  if (cell.cell_type === 'raw') return `<pre class="raw">${e(cell.source)}</pre>`;
  const rendered = markdownHtml(cell.source, taken, attachmentsOf(cell));
  headings.push(...rendered.headings);
  return `<div class="words">${rendered.html}</div>`;
}

async function codeHtml(cell: CodeCell, options: HtmlOptions, taken: Set<string>): Promise<string> {
  const jupyter = cell.metadata['jupyter'] as JsonObject | undefined;
  const hideCode = options.hideCode === true || jupyter?.['source_hidden'] === true;
  const hideOutputs = jupyter?.['outputs_hidden'] === true;
  const number =
    cell.execution_count === null
      ? ''
      : `<span class="count" title="run as number ${cell.execution_count}">${cell.execution_count}</span>`;
  const code =
    hideCode || cell.source.trim() === ''
      ? ''
      : `<div class="code">${number}<pre><code>${highlighted(cell.source)}</code></pre></div>`;
  const outputs: string[] = [];
  if (!hideOutputs) for (const output of cell.outputs) outputs.push(await outputHtml(output, taken));
  const shown = outputs.filter((o) => o !== '').join('\n');
  if (code === '' && shown === '') return '';
  return `<section class="cell">${code}${shown === '' ? '' : `<div class="output">${shown}</div>`}</section>`;
}

async function outputHtml(output: Output, taken: Set<string>): Promise<string> {
  switch (output.output_type) {
    case 'stream':
      return `<pre class="prints${output.name === 'stderr' ? ' stderr' : ''}">${e(withoutColours(overprinted(output.text)))}</pre>`;
    case 'error': {
      const trace = withoutColours(output.traceback.join('\n'));
      return `<div class="error"><p><strong>${e(output.ename)}</strong>: ${e(output.evalue)}</p>${trace === '' ? '' : `<details><summary>Where it came from</summary><pre>${e(trace)}</pre></details>`}</div>`;
    }
    default:
      return bundleHtml(output.data, taken);
  }
}

/** The renderings of one output that a still page can hold: a chart and words both, where there are both. */
export async function bundleHtml(
  data: MimeBundle,
  taken: Set<string>,
  form: MathForm = 'typeset',
): Promise<string> {
  const words = wordsHtml(data, taken, form);
  const chart = await chartHtml(data, words.plain);
  if (chart === '') return words.html;
  // Plain text beside a chart is its stand-in for terminals and is not printed twice.
  if (words.plain) return chart;
  // A recipe's chart belongs with its answer, before the long workings.
  const fold = words.html.indexOf('<details');
  return fold < 0 ? words.html + chart : words.html.slice(0, fold) + chart + words.html.slice(fold);
}

function wordsHtml(data: MimeBundle, taken: Set<string>, form: MathForm): { html: string; plain: boolean } {
  const html = text(data, 'text/html');
  if (html !== undefined) return { html: typesetCode(sanitised(html), form), plain: false };
  const md = text(data, 'text/markdown');
  if (md !== undefined) return { html: markdownHtml(md, taken, {}, form).html, plain: false };
  const latex = text(data, 'text/latex');
  if (latex !== undefined)
    return { html: mathHtml(latex.replace(/^\s*\$\$?|\$\$?\s*$/g, ''), true, form), plain: false };
  const json = data['application/json'];
  const plain = text(data, 'text/plain') ?? (json === undefined ? '' : JSON.stringify(json, null, 1));
  return { html: plain === '' ? '' : `<pre class="value">${e(withoutColours(plain))}</pre>`, plain: true };
}

/** A recipe's workings come as plain text with the LaTeX beside them; a page that can typeset does. */
function typesetCode(html: string, form: MathForm): string {
  return html.replace(
    /(?:<br\s*\/?>\s*)?<code[^>]*\sdata-latex="([^"]*)"[^>]*>[^<]*<\/code>/g,
    (_, latex: string) => mathHtml(unescape(latex), true, form),
  );
}

async function chartHtml(data: MimeBundle, onlyChart: boolean): Promise<string> {
  const type = Object.keys(data).find((t) => /^application\/vnd\.vegalite\.v[456]\+json$/.test(t));
  const spec = type === undefined ? undefined : data[type];
  if (typeof spec === 'object' && spec !== null && !Array.isArray(spec)) {
    try {
      return `<figure>${await renderSvg(spec as ChartSpec)}</figure>`;
    } catch (error) {
      // A chart that cannot be drawn here may still have come with a picture of itself.
      const picture = pictureHtml(data);
      if (picture !== '') return picture;
      if (!onlyChart) return '';
      return `<p class="error">${e(error instanceof ChartError ? error.message : 'this chart cannot be drawn')}</p>`;
    }
  }
  return pictureHtml(data);
}

/** Pictures from a file stand in an image element, where an SVG can neither run nor load anything. */
function pictureHtml(data: MimeBundle): string {
  const svg = text(data, 'image/svg+xml');
  const image = (type: string, base64: string): string =>
    `<figure><img alt="${e(text(data, 'text/plain')?.slice(0, 200) ?? 'picture')}" src="data:${type};base64,${base64}"></figure>`;
  if (svg !== undefined) return image('image/svg+xml', Buffer.from(svg).toString('base64'));
  for (const type of ['image/png', 'image/jpeg', 'image/gif', 'image/webp']) {
    const base64 = text(data, type);
    if (base64 !== undefined) return image(type, base64.replace(/[^A-Za-z0-9+/=]/g, ''));
  }
  return '';
}

function text(data: MimeBundle, type: string): string | undefined {
  const value: Json | undefined = Object.hasOwn(data, type) ? data[type] : undefined;
  return typeof value === 'string' ? value : undefined;
}

export function attachmentsOf(cell: TextCell): Record<string, string> {
  return Object.fromEntries(
    Object.entries(cell.attachments ?? {}).flatMap(([name, data]) => {
      const type = Object.keys(data).find((t) => /^image\/(png|jpeg|gif|webp|svg\+xml)$/.test(t));
      const value = type === undefined ? undefined : text(data, type);
      if (type === undefined || value === undefined) return [];
      const base64 =
        type === 'image/svg+xml' && value.includes('<')
          ? Buffer.from(value).toString('base64')
          : value.replace(/\s/g, '');
      return [[name, `data:${type};base64,${base64}`]];
    }),
  );
}

/** Title in the metadata, or the first heading of the text. */
export function titleOf(notebook: Notebook): string | undefined {
  const own = notebook.metadata['title'];
  if (typeof own === 'string' && own.trim() !== '') return own;
  for (const cell of notebook.cells) {
    const heading =
      cell.cell_type === 'markdown' ? /^#{1,2}\s+(.+?)\s*#*$/m.exec(cell.source)?.[1] : undefined;
    if (heading !== undefined) return heading.replace(/[*_`]/g, '');
  }
  return undefined;
}

function languageOf(notebook: Notebook): string {
  const lang = notebook.metadata['lang'];
  return typeof lang === 'string' && /^[a-zA-Z-]{2,12}$/.test(lang) ? lang : 'en';
}

/** Terminal colours are for terminals. */
export function withoutColours(s: string): string {
  return s.replace(/\u001b\[[0-9;?]*[A-Za-z]/g, '');
}

/** A line that printed over itself with carriage returns, as progress bars do, keeps what it ended as. */
export function overprinted(s: string): string {
  return s
    .replace(/\r\n/g, '\n')
    .split('\n')
    .map((line) => line.slice(line.lastIndexOf('\r', line.length - 2) + 1).replace(/\r$/, ''))
    .join('\n');
}

function unescape(s: string): string {
  return s.replace(
    /&(amp|lt|gt|quot|#39);/g,
    (_, name: string) => ({ amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" })[name] ?? '',
  );
}

const style = `
main{counter-reset:figure}
.cell{margin:0 0 1.4em}
.code{position:relative}.code pre{margin:0}
.count{position:absolute;right:100%;margin-right:.7em;top:.85em;color:var(--soft);font-size:.75em;font-variant-numeric:tabular-nums}
.output{border-left:3px solid var(--line);padding:.2em 0 .2em 1em;margin-top:.6em}
.output>*:last-child{margin-bottom:0}
.prints,.value{background:none;padding:0;white-space:pre-wrap;overflow-wrap:anywhere}
.stderr{color:var(--mark)}
.error{color:var(--mark)}.error pre{color:var(--ink)}
nav ul{margin:.4em 0 0;padding-left:1.2em}
.reckoner-cautions{background:var(--wash);border-radius:6px;padding:.6em 1em .6em 2em!important}
@media (max-width:56rem){.count{display:none}}
@media print{.output{border-left:1px solid #bbb}.count{display:none}.cell{break-inside:auto}.code{break-inside:avoid}nav details{display:block}}
`;
