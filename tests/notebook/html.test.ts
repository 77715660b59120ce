import { describe, expect, it } from 'vitest';
import { lineChart } from '../../src/charts/line-chart.js';
import { stripCount } from '../../src/index.js';
import { notebookToHtml, overprinted } from '../../src/notebook/export/notebook-html.js';
import { notebookToMarkdown } from '../../src/notebook/export/notebook-markdown.js';
import type { Cell, JsonObject, MimeBundle, Notebook, Output } from '../../src/notebook/format/notebook.js';

const words = (source: string, more: Partial<Cell> = {}): Cell =>
  ({ cell_type: 'markdown', id: 'w', metadata: {}, source, ...more }) as Cell;
const code = (source: string, outputs: Output[] = [], metadata: JsonObject = {}): Cell => ({
  cell_type: 'code',
  id: 'c',
  metadata,
  source,
  execution_count: 3,
  outputs,
});
const shown = (data: Record<string, unknown>): Output => ({
  output_type: 'display_data',
  metadata: {},
  data: data as MimeBundle,
});
const notebook = (...cells: Cell[]): Notebook => ({
  nbformat: 4,
  nbformat_minor: 5,
  metadata: {},
  cells: cells.map((c, i) => ({ ...c, id: `${c.id}${i}` })),
});
const bodyOf = (html: string): string => html.slice(html.indexOf('<body>'));
const chart = lineChart({
  title: 'Moisture',
  x: { title: 'Week', values: [1, 2, 3] },
  y: { title: 'Moisture', unit: '%' },
  series: [{ name: 'rafters', values: [16, 15, 14] }],
});
const dot =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

describe('as a page', () => {
  it('typesets words, marks up code, draws charts and keeps prints', async () => {
    const html = await notebookToHtml(
      notebook(
        words('# Strips\n\nWidth $w = 5$ and\n\n$$E = \\frac{a}{b}$$\n\n| a | b |\n|--|--|\n| 1 | 2 |'),
        code('const a: number = 5;', [
          { output_type: 'stream', name: 'stdout', text: 'a < b & c\n' },
          {
            output_type: 'execute_result',
            execution_count: 3,
            metadata: {},
            data: { 'text/plain': 'spec', 'application/vnd.vegalite.v5+json': chart as JsonObject },
          },
        ]),
      ),
    );
    expect(html).toContain('<title>Strips</title>');
    expect(html.match(/class="katex"/g)).toHaveLength(2);
    expect(html).toMatch(/<mfrac>/);
    expect(html).toContain('<span class="hljs-keyword">const</span>');
    expect(html).toContain('<td>1</td>');
    expect(html).toContain('a &lt; b &amp; c');
    expect(html.match(/<svg role="img"/g)).toHaveLength(1);
    expect(html).not.toContain('>spec<');
  });
  it('shows a recipe’s answer and its chart, with workings typeset', async () => {
    const result = stripCount(stripCount.example);
    const bundle = await (result as unknown as Record<symbol, () => Promise<Record<string, unknown>>>)[
      Symbol.for('Jupyter.display')
    ]?.();
    const html = bodyOf(await notebookToHtml(notebook(code('top', [shown(bundle ?? {})]))));
    expect(html).toContain('Strips across a glued top');
    expect(html.match(/<svg role="img"/g)).toHaveLength(1);
    const formulas = result.workings.filter((w) => w.kind === 'formula').length;
    expect(html.match(/class="katex-display"/g)).toHaveLength(2 * formulas);
    expect(html).not.toContain('data-latex');
  });
  it('lets nothing from the file act or load', async () => {
    const evil = `<script>alert(1)</script><img src=x onerror=alert(2)><iframe src="https://example.org"></iframe><a href="javascript:alert(3)">x</a><style>body{display:none}</style><form action="https://example.org"></form><img src="https://example.org/a.png"><svg onload=alert(4)></svg><p style="background:url(https://example.org/b.png);position:fixed">y</p><object data="x"></object>`;
    const html = bodyOf(
      await notebookToHtml(
        notebook(
          words(
            `${evil}\n\n[go](javascript:alert(5)) <b>kept</b> $\\href{javascript:alert(6)}{x}$ $\\includegraphics{https://example.org/c.png}$`,
          ),
          words(evil, { cell_type: 'raw' }),
          code(`"${evil}"`, [
            { output_type: 'stream', name: 'stdout', text: evil },
            { output_type: 'error', ename: evil, evalue: evil, traceback: [evil] },
            shown({ 'text/html': evil }),
            shown({ 'text/markdown': evil }),
            shown({ 'image/svg+xml': evil }),
            shown({ 'image/png': '"><script>alert(7)</script>' }),
            shown({ 'text/plain': evil, 'application/javascript': 'alert(8)' }),
            shown({
              'application/vnd.vegalite.v5+json': { mark: 'bar', data: { url: 'https://example.org/d.csv' } },
              'text/plain': 'c',
            }),
            shown({
              'application/vnd.vegalite.v5+json': {
                mark: { type: 'text', text: evil, href: null },
                data: { values: [{}] },
              },
            }),
          ]),
        ),
      ),
    );
    const tags = [...html.matchAll(/<[a-zA-Z][^>]*>/g)].map((m) => m[0]);
    for (const tag of tags) {
      expect(tag).not.toMatch(/^<(script|iframe|form|object|style|embed|link|base)\b/i);
      expect(tag.replace(/"[^"]*"/g, '""')).not.toMatch(/\son\w+\s*=/i);
      expect(tag).not.toMatch(/(href|src)\s*=\s*["']?\s*javascript:/i);
      expect(tag).not.toMatch(/src\s*=\s*["']?https?:/i);
      expect(tag).not.toMatch(/url\(|position:/i);
    }
    expect(html).toContain('<b>kept</b>');
  });
  it('says in the page, briefly, when a chart asks for an address', async () => {
    const html = await notebookToHtml(
      notebook(
        code('', [
          shown({
            'application/vnd.vegalite.v5+json': { mark: 'bar', data: { url: 'https://example.org/d.csv' } },
          }),
        ]),
      ),
    );
    expect(html).toContain('chart.data.url');
  });
  it('heeds what a notebook hides, attaches and names', async () => {
    const html = await notebookToHtml({
      ...notebook(
        words('![pile](attachment:pile.png)', {
          attachments: { 'pile.png': { 'image/png': dot } },
        }),
        code('secret()', [shown({ 'text/plain': 'open' })], { jupyter: { source_hidden: true } }),
        code('open()', [shown({ 'text/plain': 'secret' })], { jupyter: { outputs_hidden: true } }),
      ),
      metadata: { title: 'Own <title>' },
    });
    expect(html).toContain(`src="data:image/png;base64,${dot}"`);
    expect(html).not.toContain('secret');
    expect(html).toContain('<title>Own &lt;title&gt;</title>');
  });
  it('gives every heading its own id and lists the chapters', async () => {
    const html = await notebookToHtml(
      notebook(words('# A\n\n## Saw\n\n## Saw'), words('## Saw\n\n## Plane')),
    );
    const ids = [...html.matchAll(/<h2 id="([^"]*)"/g)].map((m) => m[1]);
    expect(ids).toEqual(['saw', 'saw-2', 'saw-3', 'plane']);
    for (const id of ids) expect(html).toContain(`href="#${id}"`);
  });
  it('drops terminal colours and what a progress bar printed over', async () => {
    const html = await notebookToHtml(
      notebook(
        code('x', [
          { output_type: 'stream', name: 'stderr', text: '\u001b[0;31mred\u001b[0m\n10 %\r50 %\r100 %\n' },
        ]),
      ),
    );
    expect(html).toContain('red\n100 %\n</pre>');
    expect(overprinted('a\rb\r\nc\r')).toBe('b\nc');
  });
  it('an empty notebook is a page still', async () => {
    expect(await notebookToHtml(notebook())).toContain('<title>Notebook</title>');
  });
});

describe('as Markdown', () => {
  it('keeps words, fences code and prints, and places each picture', async () => {
    const placed: string[] = [];
    const md = await notebookToMarkdown(
      notebook(
        words('# A\n\n![p](attachment:pile.png)', {
          attachments: { 'pile.png': { 'image/png': dot } },
        }),
        code('const s = "```";', [
          { output_type: 'stream', name: 'stdout', text: 'one\n' },
          shown({ 'text/plain': 'the chart', 'application/vnd.vegalite.v5+json': chart }),
          shown({ 'text/markdown': '**bold**', 'text/plain': 'bold' }),
          shown({ 'image/png': dot }),
        ]),
      ),
      (content, name) => {
        placed.push(`${name} ${typeof content === 'string' ? content.slice(0, 4) : content.length}`);
        return `pictures/${name}`;
      },
    );
    expect(placed).toEqual([
      `01-pile.png ${Buffer.from(dot, 'base64').length}`,
      '02-1.svg <svg',
      `02-2.png ${Buffer.from(dot, 'base64').length}`,
    ]);
    expect(md).toContain('````ts\nconst s = "```";\n````');
    expect(md).toContain('```\none\n```');
    expect(md).toContain('![the chart](pictures/02-1.svg)');
    expect(md).toContain('**bold**');
    expect(md).toContain('![p](pictures/01-pile.png)');
  });
  it('puts pictures inside when nobody places them', async () => {
    expect(await notebookToMarkdown(notebook(code('x', [shown({ 'image/png': dot })])))).toContain(
      `](data:image/png;base64,${dot})`,
    );
  });
});
