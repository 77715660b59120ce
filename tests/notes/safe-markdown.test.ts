import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { markdownHtml } from '../../src/notes/markdown-html.js';
import { notesWith } from '../../src/notes/note.js';
import { recomputeNotes } from '../../src/notes/recompute.js';
import { safeMarkdown } from '../../src/notes/safe-markdown.js';
import { stripCount } from '../../src/index.js';
import { catalogue } from '../../src/recipes/catalogue.js';

let folder = '';
beforeAll(() => (folder = mkdtempSync(join(tmpdir(), 'reckoner-notes-'))));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const head = { title: 'A note', date: '2026-11-30', version: '0' };

describe('Markdown of a saved note', () => {
  it.each([
    '<script>hit()</script>',
    '<img src=x onerror="hit()">',
    '<iframe src="http://evil.example"></iframe>',
    '<meta http-equiv="refresh" content="0;url=http://evil.example">',
    '<form action="http://evil.example"><input></form>',
    '<svg onload=hit()>',
    'text <b onclick="hit()">bold</b>',
    '<img src="http://evil.example/x.png"',
  ])('carries no raw HTML that acts: %s', (bad) => {
    const safe = safeMarkdown(bad);
    expect(safe).not.toMatch(/<(?!\/?(?:b|i)>)[a-z!?]/i);
    expect(safe).toContain('&lt;');
  });

  it('loads no picture from elsewhere and follows no script', () => {
    expect(safeMarkdown('![a](http://evil.example/x.png)')).toBe('[a](http://evil.example/x.png)');
    expect(safeMarkdown('![a](//evil.example/x.png)')).toBe('[a](//evil.example/x.png)');
    expect(safeMarkdown('![a][b]\n\n[b]: http://evil.example/x.png')).toMatch(/^\[a\]\[b\]/);
    expect(safeMarkdown('[a](javascript:hit())')).not.toContain('javascript:');
    expect(safeMarkdown('[a]: javascript:hit()')).not.toContain('javascript:');
  });

  it('keeps words, code, formulas, tables, links and pictures of its own', () => {
    const good =
      '# Head\n\n**a** < b, 2<sup>3</sup> `<script>` [w](https://a.example) <https://a.example>\n\n```\n<script>\n```\n\n| a | b |\n|---|---|\n\n![p](pictures/p.png) ![d](data:image/png;base64,AA==) $a<b$';
    expect(safeMarkdown(good)).toBe(good);
  });

  it('of a whole note is safe, and printed text cannot leave its fence', async () => {
    const bundle = { 'text/markdown': 'hi <script>hit()</script> ![x](https://evil.example/x.png)' };
    const printed = { 'text/plain': 'a\n```\n<script>hit()</script>' };
    const show = (data: object): object => ({ [Symbol.for('Jupyter.display')]: data });
    const text = await notesWith(head, []).add(show(bundle)).add(show(printed)).toMarkdown();
    const visible = text.replace(/<!-- reckoner-note [^]*? -->/, '');
    expect(visible).toContain('&lt;script>');
    expect(visible).not.toContain('![x](https');
    expect(markdownHtml(visible, new Set()).html).not.toMatch(/<script/i);
    expect(visible).toContain('````\na\n```\n<script>');
  });
});

describe('the words of the user in a saved note', () => {
  it.each([
    [
      'a remark',
      (bad: string) =>
        notesWith(head, []).add({ [Symbol.for('Jupyter.display')]: { 'text/plain': '1' } }, bad),
    ],
    ['a remark on a result', (bad: string) => notesWith(head, []).add(stripCount(stripCount.example), bad)],
    ['a text', (bad: string) => notesWith(head, []).addText(bad)],
  ])('carry no raw script and no remote picture: %s', async (_where, noteWith) => {
    const bad = 'see <script>hit()</script>\n\n![x](https://evil.example/x.png) <img src=x onerror=hit()>';
    const visible = (await noteWith(bad).toMarkdown()).replace(/<!-- reckoner-note [^]*? -->/, '');
    expect(visible).toContain('see &lt;script>');
    expect(visible).not.toMatch(/!\[x\]|<script|<img/);
  });
});

describe('notes redo on a damaged file', () => {
  it('says what is wrong and never "undefined"', async () => {
    const recipe = catalogue.find(({ name }) => name === 'equilibriumMoisture')!;
    const result = await recipe({ temperature: '21 degC', humidity: '50 %' });
    const file = join(folder, 'note.md');
    writeFileSync(file, await notesWith(head, []).add(result).toMarkdown());
    const whole = readFileSync(file, 'utf8');
    const json = /<!-- reckoner-note ([^]*?) -->/.exec(whole)?.[1] ?? '';
    const spoil = (change: (part: Record<string, unknown>) => void): string => {
      const state = JSON.parse(json) as { parts: Record<string, unknown>[] };
      change(state.parts[0]!);
      return whole.replace(json, JSON.stringify(state));
    };
    const named = (name: string): (typeof catalogue)[number] | undefined =>
      catalogue.find((r) => r.name === name);
    const spoiled = [
      spoil((part) => (part['shown'] = [{}])),
      spoil((part) => (part['shown'] = [null])),
      spoil((part) => (part['shown'] = [{ name: 'moisture' }])),
      spoil((part) => (part['sources'] = [null])),
      spoil((part) => delete part['inputs']),
      spoil((part) => (part['recipe'] = 7)),
      spoil((part) => (part['outputs'] = null)),
      spoil((part) => (part['outputs'] = { moisture: 'x' })),
      whole.slice(0, whole.indexOf(json) + 40),
    ];
    for (const text of spoiled) {
      writeFileSync(file, text);
      const said = await recomputeNotes(file, named).then(
        (redone) => redone.toText(),
        (error: unknown) => (error as Error).message,
      );
      expect(said).not.toMatch(/undefined|NaN|\[object/);
    }
  });
});
