import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { readCsv } from '../../src/engine/csv.js';
import { field } from '../../src/engine/field.js';
import { tableField } from '../../src/engine/table-field.js';

const folder = mkdtempSync(join(tmpdir(), 'tables-'));
afterAll(() => rmSync(folder, { recursive: true }));

const boards = tableField(
  {
    length: field.length({ label: 'length', max: '9 m' }),
    moisture: field.moisture({ label: 'moisture', optional: true }),
    mark: field.text({ label: 'mark', optional: true }),
  },
  { label: 'boards', most: 5 },
);

function refusalOf(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return (error as InputError).message;
  }
  throw new Error('nothing was refused');
}

describe('a table', () => {
  it('is read from rows, a data frame, a text and a file alike', () => {
    const read = [
      { length: 0.9, moisture: 0.12 },
      { length: 2.4, moisture: undefined },
    ];
    expect(boards.read([{ length: '900 mm', moisture: '12 %' }, { length: '2400 mm' }])).toEqual(read);
    const frame = {
      columns: ['length_mm', 'moisture_pct'],
      values: [
        [900, 12],
        [2400, NaN],
      ],
    };
    expect(boards.read(frame)).toEqual(read);
    const text = '\ufeffLength (mm),moisture [%]\n900,12\n\n# a remark\n2400,\n';
    expect(boards.read(text)).toEqual(read);
    writeFileSync(join(folder, 'boards.csv'), text);
    expect(boards.read(join(folder, 'boards.csv'))).toEqual(read);
  });

  it('gives a bare number the unit of its header, and leaves a number with a unit alone', () => {
    // 10 in is 254 mm, 3 1/2 in is 88.9 mm and 1/4 in is 6.35 mm.
    const read = boards.read('length (in)\n10\n3 1/2\n1/4\n254 mm').map((r) => r.length);
    expect(read).toEqual([0.254, 0.0889, 0.00635, 0.254].map((n) => expect.closeTo(n, 12) as number));
    expect(refusalOf(() => boards.read('length\n10\n'))).toContain('[1] (line 2).length: got');
  });

  it('says how many rows it takes', () => {
    expect(refusalOf(() => boards.read([]))).toContain('got 0 rows, takes 1 to 5');
    expect(boards.read(Array(5).fill({ length: '1 m' }))).toHaveLength(5);
    expect(refusalOf(() => boards.read(Array(6).fill({ length: '1 m' })))).toContain('got 6 rows');
    expect(boards.format([{} as never])).toBe('1 row');
    expect(boards.format([{}, {}] as never)).toBe('2 rows');
  });

  it('refuses what is no table and a row that is no object', () => {
    expect(refusalOf(() => boards.read(5))).toMatch(/^got 5, takes a table/);
    expect(refusalOf(() => boards.read([{ length: '1 m' }, 7 as never]))).toBe(
      '[2]: got 7, takes a row as an object',
    );
    expect(refusalOf(() => boards.read('three boards'))).toMatch(/^got "three boards", takes a table/);
  });

  it('names a column that it does not know', () => {
    expect(refusalOf(() => boards.read([{ length: '1 m', colour: 'red' }]))).toContain(
      '[1].colour: no such input; takes length, moisture, mark',
    );
  });

  it('looks at a whole row where it is told to', () => {
    const pairs = tableField(
      { low: field.ratio({ label: 'low' }), high: field.ratio({ label: 'high' }) },
      {
        label: 'pairs',
        row: (r: { low: number; high: number }) => {
          if (r.low > r.high) throw new InputError({ field: 'low', message: 'is above high' });
        },
      },
    );
    expect(pairs.read([{ low: 1, high: 2 }])).toEqual([{ low: 1, high: 2 }]);
    expect(refusalOf(() => pairs.read('low,high\n1,2\n3,2\n'))).toBe('[2] (line 3).low: is above high');
  });
});

describe('a file of a table', () => {
  it('that is not there, or cannot be read, is named with the reason', () => {
    expect(refusalOf(() => boards.read(join(folder, 'none.csv')))).toContain('which does not exist here');
    mkdirSync(join(folder, 'folder.csv'));
    expect(refusalOf(() => boards.read(join(folder, 'folder.csv')))).toContain('cannot be read (EISDIR)');
  });

  it('without a header is refused', () => {
    writeFileSync(join(folder, 'empty.csv'), '');
    expect(refusalOf(() => boards.read(join(folder, 'empty.csv')))).toContain('with no header line');
    expect(refusalOf(() => boards.read('\n900\n'))).toContain('got "the text" with no header line');
  });

  it('may part its cells by commas, semicolons, tabs or bars: the header decides', () => {
    const read = [{ length: 1, mark: 'a; b; c, d', moisture: undefined }];
    for (const d of [',', ';', '\t', '|'])
      expect(boards.read(`length (m)${d}mark\n1${d}"a; b; c, d"\n`)).toEqual(read);
    expect(boards.read('mark,length\nx; y; z,1 m\nu; v; w,2 m\n').map((r) => r.length)).toEqual([1, 2]);
    expect(boards.read('length\n1 m\n')).toHaveLength(1);
  });

  it('with too many cells in a row is refused by its line, with too few is read', () => {
    expect(refusalOf(() => boards.read('length,mark\n1 m,a\n2 m,b,c\n'))).toContain(
      'with 3 cells in line 3, takes 2 as in its header',
    );
    expect(boards.read('length,mark\n1 m\n')).toEqual([{ length: 1, mark: undefined, moisture: undefined }]);
  });

  // Lines as an editor counts them: the quoted cell of the first row stands on lines 2 to 4.
  const spanning = 'mark,length\n"a\r\nb\n c",1 m\n\nd,far\n';
  it('names the line of the file, not the row, where a quoted cell spans lines', () => {
    expect(refusalOf(() => boards.read(spanning))).toMatch(/^\[2\] \(line 6\)\.length: got "far"/);
    expect(readCsv(spanning).rows.map((r) => r.line)).toEqual([1, 2, 5, 6, 7]);
    expect(refusalOf(() => boards.read('mark,length\n"a\n\nb",1 m\nc,2 m,3\n'))).toContain('in line 5');
  });

  it('names the line of a quotation mark that is not closed', () => {
    expect(refusalOf(() => boards.read('mark,length\n"a\nb",1 m\n"c,2 m\nd,3 m\n'))).toContain(
      'a quotation mark that is not closed, in line 4',
    );
  });

  it('takes inch marks inside a cell for what they are', () => {
    expect(boards.read('length\n5\' 10 1/2"\n3/4"\n').map((r) => r.length)).toEqual([
      expect.closeTo(1.7907, 12),
      expect.closeTo(0.01905, 12),
    ]);
  });
});
