import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exampleCell, type RecipeCard } from '../../src/server/recipe-list.js';
import { catalogue } from '../../src/recipes/catalogue.js';
import { openBench, raw, type Bench } from './server-bench.js';

let bench: Bench;
let cards: RecipeCard[];
beforeAll(async () => {
  bench = await openBench();
  cards = (await bench.ask('GET', '/reckoner/recipes')).body as unknown as RecipeCard[];
});
afterAll(() => bench.close());

describe('the drawer of recipes', () => {
  it('holds every recipe with what it takes, gives, and where that comes from', () => {
    expect(cards.map(({ name }) => name)).toEqual(catalogue.map(({ name }) => name));
    for (const card of cards) {
      expect(card.inputs.length, card.name).toBeGreaterThan(0);
      expect(card.outputs.length, card.name).toBeGreaterThan(0);
      expect(card.about.length, card.name).toBeGreaterThan(20);
      for (const source of card.sources) expect(source, card.name).not.toMatch(/undefined|\[object/);
    }
  });

  it('leads to a page of the reference for each, which needs no key and runs nothing', async () => {
    const page = await raw(bench.server.port, '/reference/cupDepth.html', {});
    expect(page.status).toBe(200);
    expect(page.headers['content-type']).toBe('text/html; charset=utf-8');
    expect(page.headers['content-security-policy']).toContain("default-src 'none'");
    for (const part of ['Sketch', 'Inputs', 'Formulas', 'Limits', 'Related', 'href="index.html"'])
      expect(page.text).toContain(part);
    const index = await raw(bench.server.port, '/reference/index.html', {});
    for (const { name } of catalogue) expect(index.text).toContain(`href="${name}.html"`);
    expect((await raw(bench.server.port, '/reference/noSuch.html', {})).status).toBe(404);
  });

  it.each(catalogue.map((recipe) => [recipe.name, recipe] as const))(
    'the cell of %s runs as it stands and gives what the example gives',
    async (name, recipe) => {
      if (recipe.isAsync) return;
      const cell = cards.find((card) => card.name === name)?.cell ?? '';
      // eslint-disable-next-line @typescript-eslint/no-implied-eval -- the cell is code; running it is what is tested
      const run = new Function(name, `return ${cell}`) as (recipe: unknown) => { toText(): string };
      const fromCell = run(recipe);
      const fromExample = (await recipe(recipe.example)) as unknown as { toText(): string };
      expect(fromCell.toText()).toBe(fromExample.toText());
    },
  );

  it('writes values as a person would', () => {
    expect(
      exampleCell({
        name: 'r',
        isAsync: false,
        example: { width: '900 mm', n: 3, on: true, list: ['a', "it's"], part: { 'odd key': '1"', b: [] } },
      }),
    ).toBe(
      "r({\n  width: '900 mm',\n  n: 3,\n  on: true,\n  list: ['a', 'it\\'s'],\n  part: { 'odd key': '1\"', b: [] },\n})",
    );
    expect(exampleCell({ name: 'r', isAsync: true, example: {} })).toBe('await r({\n})');
  });
});

describe('build notes', () => {
  const item = {
    remark: 'as *measured*',
    bundle: {
      'text/plain': 'plain',
      'text/html':
        '<h4>Top</h4><table><tr><td>900 mm</td></tr></table><script>alert(1)</script><img src=x onerror=alert(1)>',
    },
  };
  it('become one page in which nothing foreign can run', async () => {
    const { status, body } = await bench.ask('POST', '/reckoner/notes', {
      title: 'Tea <counter>',
      form: 'html',
      items: [item],
    });
    // What the note remembers of its own results is data in an inert element, spelled so that no tag can arise in it.
    const html = String(body['text']).replace(
      /<script type="application\/json" id="note-memory">[^<]*<\/script>/,
      '',
    );
    expect(status).toBe(200);
    expect(html).toContain('900 mm');
    expect(html).toContain('<em>measured</em>');
    expect(html).toContain('Tea &lt;counter&gt;');
    expect(html).not.toContain('alert(1)');
    expect(html).not.toMatch(/\b(src|href)="https?:/);
  });

  it('calculate a recipe again from what was given, and show as it was what cannot be calculated', async () => {
    const type = 'application/vnd.joiners-reckoner.result+json';
    const kept = {
      'text/html': '<p>shown then</p>',
      [type]: {
        recipe: 'boardMeasure',
        inputs: catalogue.find(({ name }) => name === 'boardMeasure')?.example,
      },
    };
    const gone = { 'text/html': '<p>shown then</p>', [type]: { recipe: 'noSuchRecipe', inputs: {} } };
    const again = String(
      (await bench.ask('POST', '/reckoner/notes', { title: 'x', form: 'html', items: [{ bundle: kept }] }))
        .body['text'],
    );
    expect(again).not.toContain('<p>shown then</p>');
    expect(again).toMatch(/katex/);
    expect(again).toMatch(/<h2[^>]*>Sources/);
    expect(
      String(
        (await bench.ask('POST', '/reckoner/notes', { title: 'x', form: 'html', items: [{ bundle: gone }] }))
          .body['text'],
      ),
    ).toContain('<p>shown then</p>');
  });

  it('become Markdown', async () => {
    const { body } = await bench.ask('POST', '/reckoner/notes', {
      title: 'Tea counter',
      form: 'md',
      items: [{ remark: 'dry', bundle: { 'text/markdown': ['### Top\n', '900 mm'] } }],
    });
    expect(String(body['text'])).toMatch(/^# Tea counter/);
    expect(String(body['text'])).toContain('900 mm');
    expect(String(body['text'])).toContain('dry');
  });

  it.each([
    [{ form: 'html', items: [item] }, /^title:/],
    [{ title: 'x', form: 'pdf', items: [item] }, /^form: takes html or md, got "pdf"/],
    [{ title: 'x', form: 'md', items: [] }, /^items:/],
    [{ title: 'x', form: 'md', items: [{ bundle: 7 }] }, /^items\[0\]\.bundle:/],
    [{ title: 'x', form: 'md', items: [null] }, /^items\[0\]\.bundle:/],
  ])('say which field is wrong: %j', async (wish, message) => {
    const { status, body } = await bench.ask('POST', '/reckoner/notes', wish);
    expect(status).toBe(400);
    expect(body['message']).toMatch(message);
  });
});
