import { asSentence } from '../../src/engine/caution.js';
import { mkdtemp, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { lineChart } from '../../src/charts/line-chart.js';
import { buildNotes } from '../../src/notes/note.js';
import { recomputeNotes } from '../../src/notes/recompute.js';
import { catalogue, cutterMarks, InputError, stripCount } from '../../src/index.js';
import type { AnyRecipe } from '../../src/engine/any-recipe.js';

let folder: string;
beforeAll(async () => (folder = await mkdtemp(join(tmpdir(), 'reckoner-notes-'))));
afterAll(() => rm(folder, { recursive: true }));

const strips = stripCount({
  topWidth: '640 mm',
  stripWidth: '48 mm',
  jointing: '3 mm',
  finalTrim: '10 mm',
  machineWidth: '330 mm',
});
const marks = cutterMarks(cutterMarks.example);
const shed = lineChart({
  title: 'Moisture in the shed',
  x: { title: 'Week', values: [1, 2, 3] },
  y: { title: 'Moisture', unit: '%' },
  series: [{ name: 'rafters', values: [16, 15, 14] }],
});
const counter = () =>
  buildNotes('Tea counter', { date: '2026-03-08', by: 'A. Maker' })
    .addText('# Why\n\nThe hall has no counter. $F = m a$')
    .add(strips, 'Measured on *Tuesday*.')
    .add(marks)
    .add(shed);
const named = (name: string): AnyRecipe | undefined => catalogue.find((r) => r.name === name);

describe('a note as a page', () => {
  it('holds title, date, contents, given values, answers, workings, each caution once and the sources at the end', async () => {
    const html = await counter().add(strips).toHtml();
    expect(html).toContain('<h1>Tea counter</h1>');
    expect(html).toContain('8 March 2026 · A. Maker');
    expect(html.match(/<nav[^]*?<\/nav>/)?.[0].match(/<li>/g)).toHaveLength(5); // Why, three results, one chart
    expect(html).toContain('640 mm');
    expect(html).toContain('<strong>15</strong>'); // (640 + 10) / 45 = 14.4, rounded up
    expect(html).toContain('<em>Tuesday</em>');
    for (const { text } of strips.cautions)
      expect(html.split(asSentence(text).replace(/'/g, '&#39;')).length - 1, text).toBe(1);
    expect(html.indexOf('id="sources"')).toBeGreaterThan(html.lastIndexOf('class="workings"'));
    expect(html.match(/<svg role="img"/g)).toHaveLength(4);
  });
  it('stands alone: nothing in it is fetched, and the browser is told so', async () => {
    const html = await counter().toHtml();
    const loads = [...html.matchAll(/(?:src|href)\s*=\s*"([^"]*)"|url\(([^)]*)\)/g)].map(
      (m) => m[1] ?? m[2] ?? '',
    );
    expect(loads.length).toBeGreaterThan(5);
    for (const address of loads) expect(address).toMatch(/^(#|data:)/);
    expect(html).toContain(`http-equiv="Content-Security-Policy" content="default-src 'none'`);
  });
  it('typesets formulas and offers each line as text, LaTeX and Markdown', async () => {
    const html = await counter().toHtml();
    expect(html).toContain('class="katex"');
    const line = strips.workings.find((w) => w.kind === 'formula');
    const copies = [...html.matchAll(/data-copy="([^"]*)">(text|LaTeX|Markdown)</g)].map((m) => [
      m[2],
      m[1]?.replace(/&amp;/g, '&').replace(/&#39;/g, "'").replace(/&lt;/g, '<').replace(/&gt;/g, '>'),
    ]);
    expect(copies.slice(0, 3).map((c) => c[0])).toEqual(['text', 'LaTeX', 'Markdown']);
    if (line?.kind !== 'formula') throw new Error('no formula');
    expect(copies[0]?.[1]).toContain(line.numbersPlain);
    expect(copies[2]?.[1]).toContain(`$$${line.latex}$$`);
    expect(copies[1]?.[1]).toMatch(/^\\begin\{aligned\}\n.*&=.*\\\\\n.*&=.*\n\\end\{aligned\}$/);
  });
  it('lets no remark, title or caption act', async () => {
    const evil =
      '<script>alert(1)</script><img src=x onerror=alert(2)><iframe src="javascript:alert(3)"></iframe>[x](javascript:alert(4))';
    const html = await buildNotes(evil)
      .addText(evil)
      .add(strips, evil)
      .add({
        [Symbol.for('Jupyter.display')]: () => ({
          'text/html': evil,
          'image/svg+xml': `<svg onload="alert(5)">${evil}</svg>`,
        }),
      })
      .toHtml();
    const body = html
      .slice(html.indexOf('<body>'))
      .replace(/<script type="application\/json"[^]*?<\/script>/, '');
    expect(body.match(/<script/g)).toHaveLength(1); // our own
    expect(body).not.toMatch(/<[^>]*\sonerror|<[^>]*\sonload|<iframe|href="javascript:/);
    expect(html.match(/id="note-memory">[^<]*<\/script>/)).not.toBeNull();
  });
});

describe('a note as Markdown', () => {
  it('is saved with its charts beside it, whole', async () => {
    const file = join(folder, 'tea counter.md');
    await counter().save(file);
    const text = await readFile(file, 'utf8');
    const links = [...text.matchAll(/!\[[^\]]*\]\(([^)]*)\)/g)].map((m) => decodeURI(m[1] ?? ''));
    expect(links).toHaveLength(3);
    for (const link of links) expect(await readFile(join(folder, link), 'utf8')).toMatch(/^<svg /);
    expect(await readdir(join(folder, 'tea counter-charts'))).toHaveLength(3);
    expect((await readdir(folder)).filter((f) => f.endsWith('.part'))).toEqual([]);
  });
  it('has the formulas in LaTeX, tables with both systems and one title', async () => {
    const text = await counter().toMarkdown();
    expect(text.match(/^# /gm)).toHaveLength(1);
    expect(text).toContain('## Why');
    for (const w of strips.workings)
      if (w.kind === 'formula') expect(text).toContain(`$$${w.numbersLatex}$$`);
    expect(text).toContain('| top width | 640 mm | 25 3/16 in |');
  });
  it('points its contents at its headings', async () => {
    const text = await counter().toMarkdown();
    const slug = (h: string): string =>
      h
        .toLowerCase()
        .replace(/[^\p{L}\p{N} -]/gu, '')
        .replace(/ /g, '-');
    const headings = [...text.matchAll(/^#+ (.*)$/gm)].map((m) => slug(m[1] ?? ''));
    for (const [, target] of text.matchAll(/\]\(#([^)]*)\)/g)) expect(headings).toContain(target);
  });
});

describe('what may be added', () => {
  it('takes promises of results, and says when the note is rendered if one failed', async () => {
    expect(await buildNotes('x').add(Promise.resolve(strips)).toMarkdown()).toContain(
      'Strips across a glued top',
    );
    await expect(
      buildNotes('x')
        .add(Promise.reject(new Error('no plan')))
        .toHtml(),
    ).rejects.toThrow('no plan');
  });
  it.each([[5], ['words'], [null], [undefined], [{}], [[1]], [new Date(0)]])(
    'refuses %j and says what it takes',
    (thing) => {
      expect(() => buildNotes('x').add(thing)).toThrow(
        /takes a result of a recipe, a chart, or a value that a notebook can display/,
      );
    },
  );
  it('refuses a wrong title, date or file name', async () => {
    expect(() => buildNotes('')).toThrow(/title: got "", takes/);
    expect(() => buildNotes('x', { date: '8 March' })).toThrow(
      /date: got "8 March", takes a date such as "2026-03-08"/,
    );
    await expect(counter().save(join(folder, 'x.pdf'))).rejects.toThrow(
      /takes a name that ends in .html or .md/,
    );
    await expect(counter().save(join(folder, 'none', 'x.html'))).rejects.toThrow('there is no such folder');
  });
  it('keeps pictures inside the page', async () => {
    const file = join(folder, 'dot.png');
    await writeFile(
      file,
      Buffer.from(
        'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
        'base64',
      ),
    );
    expect(await buildNotes('x').addPicture(file, 'the pile').toHtml()).toContain(
      '<img id="picture-1" src="data:image/png;base64,iVBOR',
    );
    await expect(buildNotes('x').addPicture(join(folder, 'none.png')).toHtml()).rejects.toThrow(
      'there is no such file',
    );
    await expect(buildNotes('x').addPicture(join(folder, 'a.txt')).toHtml()).rejects.toThrow(
      'is no picture by its name',
    );
  });
  it('shows itself in a notebook', async () => {
    const show = (counter() as unknown as Record<symbol, () => Promise<Record<string, string>>>)[
      Symbol.for('Jupyter.display')
    ];
    const bundle = await show?.();
    expect(bundle?.['text/markdown']).toContain('# Tea counter');
    expect(bundle?.['text/markdown']).toContain('Strips across a glued top');
    expect(bundle?.['text/markdown']).not.toContain('reckoner-note');
  });
});

describe('calculating a note again', () => {
  it.each(['.html', '.md'])('finds nothing changed when nothing changed (%s)', async (ending) => {
    const file = join(folder, `same${ending}`);
    await counter().save(file);
    const again = await recomputeNotes(file, named);
    expect(again).toMatchObject({ title: 'Tea counter', results: 2, changes: [] });
    expect(again.toText()).toContain('Nothing changed.');
    await again.notes.save(join(folder, `copy${ending}`));
    expect((await recomputeNotes(join(folder, `copy${ending}`), named)).changes).toEqual([]);
  });
  it('tells each value that differs, before and after', async () => {
    const file = join(folder, 'old.html');
    await counter().save(file);
    // A later version of the recipe that jointed away more of each strip.
    const later = ((given: Record<string, unknown>) =>
      stripCount({ ...given, jointing: '6 mm' } as never)) as unknown as AnyRecipe;
    const again = await recomputeNotes(file, (name) => (name === 'stripCount' ? later : named(name)));
    const changed = Object.fromEntries(again.changes.map((c) => [c.field, [c.before, c.after]]));
    expect(changed['stripFinished']).toEqual(['45 mm', '42 mm']);
    expect(changed['strips']).toEqual(['15', '16']); // 650 / 42 = 15.5
    expect(again.changes.every((c) => c.part === 1 && c.recipe === 'stripCount')).toBe(true);
    expect(again.toText()).toContain('45 mm -> 42 mm');
    expect(await readFile(file, 'utf8')).toContain('45 mm');
  });
  it('says so when a recipe is gone or refuses its old inputs, and goes on', async () => {
    const file = join(folder, 'gone.md');
    await counter().save(file);
    const strict = (() => {
      throw new InputError({ field: 'topWidth', message: 'got "640 mm", takes less' }, 'stripCount');
    }) as unknown as AnyRecipe;
    const again = await recomputeNotes(file, (name) => (name === 'stripCount' ? strict : undefined));
    expect(again.changes.map((c) => c.message)).toEqual([
      'stripCount: topWidth: got "640 mm", takes less',
      'there is no recipe called cutterMarks any more',
    ]);
    expect(again.results).toBe(2);
  });
  it.each([
    ['plain.md', '# Not a note', 'holds no inputs to calculate again'],
    ['bad.md', 'x <!-- reckoner-note {"format": --> y', 'are damaged'],
    [
      'other.md',
      '<!-- reckoner-note {"format":"reckoner build note 9"} -->',
      'not of a form this version knows',
    ],
    [
      'half.md',
      '<!-- reckoner-note {"format":"reckoner build note 1","head":{"title":"x","date":"y","version":"1"},"parts":[{"kind":"result"}]} -->',
      'not of a form',
    ],
  ])('%s: says what is wrong', async (name, text, message) => {
    const file = join(folder, name);
    await writeFile(file, text);
    await expect(recomputeNotes(file, named)).rejects.toThrow(message);
  });
  it('cannot be ended early by words that look like its own marks', async () => {
    const file = join(folder, 'marks.md');
    const tricky = 'ends --> here </script> <!-- reckoner-note {"format":1} -->';
    await buildNotes('x').add(strips, tricky).save(file);
    expect((await recomputeNotes(file, named)).changes).toEqual([]);
  });
});
