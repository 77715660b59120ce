import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { boardMeasure } from '../../src/recipes/stock/board-measure.js';
import { flatteningLoss } from '../../src/recipes/stock/flattening-loss.js';
import { gradeYield } from '../../src/recipes/stock/grade-yield.js';
import { partsCost } from '../../src/recipes/stock/parts-cost.js';
import { pileSampling } from '../../src/recipes/stock/pile-sampling.js';
import { pileYield } from '../../src/recipes/stock/pile-yield.js';
import { roughToDressed } from '../../src/recipes/stock/rough-to-dressed.js';

const folder = mkdtempSync(join(tmpdir(), 'reckoner-stock-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The refusal that `run` raises; anything else fails the test. */
function refused(run: () => unknown): InputError {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    expect((error as InputError).message).not.toMatch(/undefined|\n/);
    return error as InputError;
  }
  throw new Error('was not refused');
}

const junk: readonly unknown[] = [
  undefined,
  null,
  Number.NaN,
  Infinity,
  -1,
  0,
  1e308,
  '',
  ' ',
  'x',
  '-5 mm',
  '1e999 mm',
  '5 kg',
  '900',
  'NaN mm',
  {},
  [],
  [1],
  true,
  () => 1,
  Symbol('a'),
  10n,
  '\u0000',
  'a'.repeat(5000),
  { value: 'x', unit: 'mm' },
  { __proto__: null },
];

describe('bad sizes are refused by name', () => {
  it.each(['length', 'width', 'thickness'])('board measure, %s', (field) => {
    for (const value of junk) {
      const r = refused(() =>
        boardMeasure({ length: '2 m', width: '100 mm', thickness: '25 mm', [field]: value }),
      );
      expect(r.issues.map((t) => t.field.split(/[.[]/)[0])).toContain(field);
    }
  });

  it('prices', () => {
    for (const price of ['', 'cheap', '-3/m', '4/kg', '1/0', 'NaN', '5/bf/m', {}, [], NaN, -1]) {
      expect(
        refused(() => boardMeasure({ length: '2 m', width: '100 mm', thickness: '25 mm', price } as never))
          .issues[0]?.field,
      ).toBe('price');
    }
  });

  it.each(['thickness', 'width', 'length', 'cup', 'bow', 'twist', 'rips', 'crosscuts', 'kerf', 'cleanUp'])(
    'flattening, %s',
    (field) => {
      for (const value of junk) {
        if (value === undefined && !['thickness', 'width', 'length'].includes(field)) continue;
        if (value === 0 && ['rips', 'crosscuts'].includes(field)) continue;
        const r = refused(() =>
          flatteningLoss({ thickness: '40 mm', width: '200 mm', length: '2 m', [field]: value }),
        );
        expect(r.issues.map((t) => t.field)).toContain(field);
      }
    },
  );

  it('a cup too deep for its width, and kerfs that eat the board', () => {
    expect(
      refused(() => flatteningLoss({ thickness: '40 mm', width: '100 mm', length: '2 m', cup: '30 mm' }))
        .issues[0]?.field,
    ).toBe('cup');
    expect(
      refused(() =>
        flatteningLoss({ thickness: '40 mm', width: '100 mm', length: '2 m', rips: 40, kerf: '3 mm' }),
      ).issues[0]?.field,
    ).toBe('rips');
  });
});

describe('a bad survey', () => {
  const good = { length: '2 m', width: '100 mm', thickness: '40 mm' };

  it('names every wrong row and why, all together', () => {
    const r = refused(() =>
      pileYield({
        boards: [
          good,
          { ...good, length: 'long' },
          { ...good, width: '-3 mm' },
          { ...good, thicknes: '4 mm' },
          { length: '2 m' },
        ] as never,
      }),
    );
    const fields = r.issues.map((t) => t.field);
    expect(fields).toEqual(
      expect.arrayContaining([
        'boards[2].length',
        'boards[3].width',
        'boards[4].thicknes',
        'boards[5].width',
        'boards[5].thickness',
      ]),
    );
    expect(r.message).toContain('did you mean "thickness"');
  });

  it('names rows that cannot be: docked more than the board, cupped past sense, faults without a place', () => {
    const r = refused(() =>
      pileYield({
        boards: [
          { ...good, endLoss: '1.5 m', faultLength: '0.8 m' },
          { ...good, cup: '60 mm' },
          { ...good, faults: 0, faultLength: '10 mm' },
        ],
      }),
    );
    expect(r.issues.map((t) => t.field)).toEqual(['boards[1].endLoss', 'boards[2].cup', 'boards[3].faults']);
  });

  it('tells both what a cell and what a row has wrong, with its line', () => {
    const r = refused(() =>
      pileYield({
        boards:
          'length (mm),width (mm),thickness (mm),endLoss (mm)\n2310,97,47,110\n1870,98,47,1900\n1620,142,22 cm2,65\n',
      }),
    );
    expect(r.issues.map((t) => t.field)).toEqual([
      'boards[2] (line 3).endLoss',
      'boards[3] (line 4).thickness',
    ]);
  });

  it('tells the line of a CSV file', () => {
    const file = join(folder, 'pile.csv');
    writeFileSync(file, 'length (mm),width (mm),thickness (mm)\n2000,100,40\n\n2000,wide,40\n');
    expect(refused(() => pileYield({ boards: file })).message).toMatch(
      /boards\[2\].*line 4.*width.*"wide mm"|boards\[2\].*line 4.*width.*"wide"/,
    );
    expect(refused(() => pileYield({ boards: join(folder, 'none.csv') })).message).toContain(
      'does not exist',
    );
    expect(refused(() => pileYield({ boards: folder })).issues[0]?.field).toBe('boards');
  });

  it.each([
    ['', 'boards'],
    ['\n', 'boards'],
    ['length,width\n', 'boards'],
    ['length,width,thickness\n1 m,"2', 'boards'],
    ['length,width,thickness\n1 m,1 mm,1 mm,1 mm\n', 'boards'],
    ['a\u0000b\n\u0000', 'boards'],
  ])('CSV text %j', (boards, field) => {
    expect(refused(() => pileYield({ boards })).issues[0]?.field.split(/[.[]/)[0]).toBe(field);
  });

  it('refuses junk for the table, a target no board reaches, and a pile that leaves nothing', () => {
    for (const boards of junk) refused(() => pileYield({ boards } as never));
    expect(refused(() => pileYield({ boards: [good], target: '45 mm' })).issues[0]).toMatchObject({
      field: 'target',
      message: expect.stringContaining('38') as string,
    });
    expect(refused(() => pileYield({ boards: [{ ...good, endLoss: '2 m' }] })).issues[0]?.field).toBe(
      'boards',
    );
  });

  it('takes ten thousand rows without complaint or delay', () => {
    const boards = Array.from({ length: 10_000 }, (_, i) => ({
      ...good,
      length: `${1000 + (i % 997)} mm`,
      thickness: `${20 + (i % 313) / 10} mm`,
    }));
    const start = performance.now();
    expect(pileYield({ boards }).pieces).toBe(10_000);
    expect(performance.now() - start).toBeLessThan(5000);
  });
});

describe('the smaller recipes refuse by name', () => {
  it.each([
    [() => gradeYield({ grade: 'FAS' }), 'surfaceMeasure'],
    [() => gradeYield({ grade: 'FAS', surfaceMeasure: 8, width: '7 in' }), 'surfaceMeasure'],
    [() => gradeYield({ grade: 'No.1 Comon' as never, surfaceMeasure: 8 }), 'grade'],
    [() => gradeYield({ grade: 'FAS', width: '1 mm', length: '1 mm' }), 'width'],
    [() => roughToDressed({}), 'rough'],
    [() => roughToDressed({ nominal: '2x4', rough: { thickness: '2 in', width: '4 in' } }), 'nominal'],
    [() => roughToDressed({ nominal: 'two by four' }), 'nominal'],
    [() => roughToDressed({ nominal: '2/0x4' }), 'nominal'],
    [() => roughToDressed({ nominal: '2.2x4' }), 'nominal'],
    [() => roughToDressed({ rough: { thickness: '3 mm', width: '97 mm' } }), 'rough.thickness'],
    [() => roughToDressed({ rough: { thickness: 'x', width: '97 mm' } }), 'rough.thickness'],
    [() => pileSampling({ sample: ['1 m'], needed: '3 m' }), 'sample'],
    [() => pileSampling({ sample: ['1 m', '2 kg'], needed: '3 m' }), 'sample[2]'],
    [() => pileSampling({ sample: ['1 m', '2 m'], needed: '3 m2' }), 'needed'],
    [() => pileSampling({ sample: ['1 m', '2 m'], needed: '-3 m' }), 'needed'],
    [() => pileSampling({ sample: ['0 m', '0 m'], needed: '3 m' }), 'sample'],
    [() => pileSampling({ sample: ['0 m', '9 m'], needed: '3 m', confidence: '99 %' }), 'sample'],
    [() => partsCost({ parts: [{ name: 'a', length: '1 m' }] }), 'price'],
    [() => partsCost({ parts: [{ name: 'a', length: '1 m' }], price: '9/m3' }), 'parts[1].width'],
    [
      () => partsCost({ parts: [{ name: 'a', length: '1 m', material: 'oak' }], prices: { ash: '9/m' } }),
      'prices.oak',
    ],
    [() => partsCost({ parts: [{ name: 'a', length: '1 m' }], price: '9/m', waste: 'some' }), 'waste'],
    [
      () =>
        partsCost({
          parts: [
            { name: 'a', length: '1 m', price: '$9/m' },
            { name: 'b', length: '1 m', price: '€9/m' },
          ],
        }),
      'parts[2].price',
    ],
  ] as const)('%s', (run, field) => {
    expect(refused(run as () => unknown).issues.map((t) => t.field)).toContain(field);
  });
});
