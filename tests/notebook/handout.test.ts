import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  boardMeasure,
  exercise,
  length,
  movementAcross,
  pileYield,
  railSpan,
  stripCount,
  thinningRatio,
} from '../../src/index.js';
import { handoutScript } from '../../src/notebook/handout/bundle.js';
import { handout, type Handout } from '../../src/notebook/handout/handout.js';
import { niceStep, sliderRange } from '../../src/notebook/handout/slider.js';
import type { Cell, MimeBundle, Notebook } from '../../src/notebook/format/notebook.js';

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reckoner-handout-'));
  await writeFile(
    join(folder, 'pile.csv'),
    'count,length (mm),width (mm),thickness (mm)\n3,2400,98,42\n2,1800,97,\n'
      .replace(',\n2', ',\n2')
      .replace('97,\n', '97,40\n'),
  );
});
afterAll(() => rm(folder, { recursive: true }));

async function shown(thing: unknown): Promise<MimeBundle> {
  const display = (thing as Record<symbol, () => unknown>)[Symbol.for('Jupyter.display')];
  return JSON.parse(JSON.stringify(await display?.call(thing))) as MimeBundle;
}
async function notebookWith(...things: unknown[]): Promise<Notebook> {
  const cells: Cell[] = [
    { cell_type: 'markdown', id: 'w', metadata: {}, source: '# A class\n\nHow wide is $w$?' },
  ];
  for (const [i, thing] of things.entries())
    cells.push({
      cell_type: 'code',
      id: `c${i}`,
      metadata: {},
      source: `secretCode${i}()`,
      execution_count: 1,
      outputs: [{ output_type: 'display_data', metadata: {}, data: await shown(thing) }],
    });
  return { nbformat: 4, nbformat_minor: 5, metadata: {}, cells };
}
const gap = exercise({
  question: 'How far does it move, with $\\Delta = 8\\,\\%$?',
  answer: () => length('13.284 mm'),
  tolerance: 0.02,
  hint: 'mind the cut',
});
const count = exercise({ question: 'How many strips?', answer: () => 15 });
const month = exercise({ question: 'Which month?', answer: () => 'August', alsoRight: ['Aug'] });

function dataOf(page: string): {
  results: { recipe: string; inputs: Record<string, unknown> }[];
  exercises: { exercise: unknown }[];
  key: string;
} {
  return JSON.parse(/id="handout-data">([^<]*)</.exec(page)?.[1] ?? '') as ReturnType<typeof dataOf>;
}

describe('a handout', { timeout: 60_000 }, () => {
  let made: Handout;
  beforeAll(async () => {
    const results = [
      stripCount(stripCount.example),
      movementAcross(movementAcross.example),
      railSpan(railSpan.example),
      thinningRatio(thinningRatio.example),
      boardMeasure(boardMeasure.example),
    ];
    made = await handout(await notebookWith(...results, gap, count, month, gap.check('1 mm')));
  }, 60_000);

  it('is under 700 kB gzipped with five recipes of five topics in it', () => {
    expect(gzipSync(made.page).length).toBeLessThan(700_000);
    expect(made).toMatchObject({ alive: 5, exercises: 3 });
  });
  it('asks for nothing from anywhere', () => {
    const markup = made.page.replace(/<script[^]*?<\/script>/g, '');
    for (const [, a, b] of markup.matchAll(/(?:src|href)="([^"]*)"|url\(([^)]*)\)/g))
      expect(a ?? b).toMatch(/^(#|data:)/);
    expect(made.page.includes(`default-src 'none'`)).toBe(true);
    expect(made.page.includes('connect-src')).toBe(false);
  });
  it('keeps what was given, so that the page can calculate it; shows no code and no verdicts', () => {
    const { results } = dataOf(made.page);
    expect(results.map((r) => r.recipe)).toEqual([
      'stripCount',
      'movementAcross',
      'railSpan',
      'thinningRatio',
      'boardMeasure',
    ]);
    expect(results[0]?.inputs).toEqual(stripCount.example);
    const markup = made.page.replace(/<script[^]*?<\/script>/g, '');
    expect(markup.includes('secretCode')).toBe(false);
    expect(markup.includes('reckoner-verdict')).toBe(false);
  });
  it('carries no answer that can be read', () => {
    const data = JSON.stringify(dataOf(made.page).exercises.map((x) => x.exercise));
    expect(data).not.toMatch(/0?13[.]?28|August|"value"|Right/i);
    expect(data).toContain('mind the cut');
  });
  it('is a readable page before any script has run', () => {
    const markup = made.page.replace(/<script[^]*?<\/script>/g, '');
    expect(markup.includes('Strips across a glued top')).toBe(true);
    expect([...markup.matchAll(/<section class="exercise/g)].length).toBe(3);
    const tasks = [...markup.matchAll(/<section class="exercise[^]*?<\/section>/g)].join();
    expect(/13\.[23]|August|\b15\b/.test(tasks)).toBe(false);
  });
  it('gives the teacher every answer', () => {
    expect(/<strong>13\.(3|28\d*) mm/.test(made.answers)).toBe(true);
    expect(made.answers.includes('within 2 % is taken as right')).toBe(true);
    expect(made.answers.includes('<strong>15</strong>')).toBe(true);
    expect(made.answers.includes('also right: Aug')).toBe(true);
    expect(made.answers.includes('mind the cut')).toBe(true);
  });
  it('keeps its answers under a key of its own', async () => {
    const other = await handout(await notebookWith(count));
    expect(dataOf(other.page).key).not.toBe(dataOf(made.page).key);
    expect(dataOf((await handout(await notebookWith(count))).page).key).toBe(dataOf(other.page).key);
  });
  it('puts a table given as a file into the page, and says so when the file is gone', async () => {
    const here = process.cwd();
    const nb = await notebookWith(
      pileYield({ boards: join(folder, 'pile.csv'), plane: '4 mm', kerf: '3 mm' }),
    );
    const page = await handout(nb, { cwd: here });
    expect(dataOf(page.page).results[0]?.inputs['boards']).toEqual([
      { count: '3', 'length (mm)': '2400', 'width (mm)': '98', 'thickness (mm)': '42' },
      { count: '2', 'length (mm)': '1800', 'width (mm)': '97', 'thickness (mm)': '40' },
    ]);
    await rm(join(folder, 'pile.csv'));
    await expect(handout(nb, { cwd: here })).rejects.toThrow(
      /pile\.csv: could not be read into the handout: there is no such file/,
    );
  });
  it('an empty notebook makes an empty handout', async () => {
    expect(await handout(await notebookWith())).toMatchObject({ alive: 0, exercises: 0 });
  });
});

describe('the script', () => {
  it('carries the tables its recipes read and leaves the others out', () => {
    const tables = (...recipes: string[]): string[] => {
      const text = handoutScript(recipes);
      return Object.keys(JSON.parse(/^globalThis\.reckonerTables=(.*);$/m.exec(text)?.[1] ?? '{}') as object);
    };
    expect(tables('stripCount')).not.toContain('movement.fpl-gtr-190.csv');
    const movement = tables('movementAcross');
    expect(movement).toContain('movement.fpl-gtr-190.csv');
    expect(movement).toContain('species.csv');
    expect(movement).toContain('sources.json');
  });
});

describe('a slider', () => {
  const width = stripCount.inputs.topWidth;
  it('runs round what was written, in its unit, by steps of 1, 2 or 5', () => {
    const mm = sliderRange(width, '640 mm');
    expect(mm?.from).toBeLessThan(400);
    expect(mm?.to).toBeGreaterThan(1000);
    expect(String(mm?.step)).toMatch(/^[125]0*$/);
    expect(mm?.text(700)).toBe('700 mm');
    expect(sliderRange(width, '25.2 in')?.text(26)).toBe('26.0 in');
  });
  it('stays inside the limits of the field', () => {
    const r = sliderRange(movementAcross.inputs.from.items?.[0] ?? movementAcross.inputs.from, '8 %');
    expect(r === undefined || r.from >= 0).toBe(true);
    const jointing = sliderRange(stripCount.inputs.jointing, '90 mm'); // at most 100 mm
    expect(jointing?.to).toBeLessThanOrEqual(100);
    expect(jointing?.from).toBeGreaterThanOrEqual(0);
  });
  it('is left out where there is nothing to slide', () => {
    for (const text of ['', 'L/300', '35 7/16 in', 'unknown softwood', '0 mm', '5 parsecs'])
      expect(sliderRange(width, text), text).toBeUndefined();
  });
  it('steps are nice', () => {
    for (const [least, step] of [
      [0.011, 0.02],
      [0.9, 1],
      [1, 1],
      [2.1, 5],
      [51, 100],
    ] as const)
      expect(niceStep(least)).toBeCloseTo(step, 12);
  });
});
