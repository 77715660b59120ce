import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { field } from '../../src/engine/field.js';
import { tableField } from '../../src/engine/table-field.js';
import { surveyField } from '../../src/recipes/stock/survey.js';
import { InputError } from '../../src/units/input-error.js';

const boards = tableField(
  {
    name: field.text({ label: 'mark' }),
    count: field.count({ label: 'how many', default: 1 }),
    length: field.length({ label: 'length' }),
    width: field.length({ label: 'width', optional: true }),
  },
  { label: 'boards' },
);
let folder = '';
beforeAll(() => (folder = mkdtempSync(join(tmpdir(), 'reckoner-csv-'))));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const lengths = (text: string): number[] => boards.read(text).map((row) => row.length);
const refusal = (work: () => unknown): string => {
  try {
    work();
  } catch (error) {
    if (error instanceof InputError) return error.message;
    throw error;
  }
  throw new Error('was read without complaint');
};
/** A file in the encoding, byte for byte. */
const file = (name: string, bytes: Buffer | string): string => {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
};

describe('numbers of a survey file', () => {
  it('2.400 in a file parted by semicolons is 2400, and the table says so', () => {
    const read = boards.read('name;count;length (mm)\nr;4;2.400\n');
    expect(read[0]?.length).toBeCloseTo(2.4, 12);
    expect(boards.format(read)).toBe('1 row (2.400 read as 2400: thousands)');
  });

  it.each([
    ['decimal commas', 'name;length (mm)\na;12,5\nb;2.400\n', [0.0125, 2.4]],
    ['decimal commas with thousands', 'name;length (mm)\na;1.250,5\n', [1.2505]],
    ['decimal points decide for the open ones', 'name;length (m)\na;2.4\nb;2.400\n', [2.4, 2.4]],
    ['a point in a file of commas is a decimal point', 'name,length (m)\na,2.400\n', [2.4]],
    ['commas between thousands', 'name,length (mm)\na,"1,250.5"\nb,"2,400"\n', [1.2505, 2.4]],
    ['three decimals below one', 'name,length (m)\na,"0,950"\n', [0.95]],
    ['points between thousands, twice', 'name;length (mm)\na;1.250.000\n', [1250]],
    ['tabs', 'name\tlength (mm)\na\t12,5\n', [0.0125]],
    ['CRLF and a last line without end', 'name;length (mm)\r\na;12,5\r\nb;900', [0.0125, 0.9]],
    ['sep=;', 'sep=;\nname;length (mm)\na;12,5\n', [0.0125]],
    ['no-break spaces', 'name;length (mm)\na;2\u00a0400\nb;1\u202f250,5\n', [2.4, 1.2505]],
    ['plain spaces between thousands', 'name;length (mm)\na;2 400\n', [2.4]],
    ['units in the cells', 'name;length\na;12,5 mm\nb;2,4 m\n', [0.0125, 2.4]],
    ['inches with fractions', 'name;length\na;35 7/16 in\n', [0.9001125]],
  ])('%s', (_name, text, wanted) => {
    const read = lengths(text);
    expect(read).toHaveLength(wanted.length);
    for (const [at, length] of wanted.entries()) expect(read[at]).toBeCloseTo(length, 10);
  });

  it('an open number in a file that does not settle it is refused with both readings', () => {
    for (const text of ['name\tlength (mm)\na\t2.400\n', 'name,length (mm)\na,"2,400"\n'])
      expect(refusal(() => boards.read(text))).toMatch(
        /"2[.,]400" \(line 2\), which is 2\.4 or 2400; write "2\.4" or "2400"/,
      );
  });

  it('two ways of writing in one file are refused with a cell of each', () => {
    expect(refusal(() => boards.read('name;length (mm)\na;12,5\nb;12.75\n'))).toContain(
      'got "12,5" (line 2) with a decimal comma and "12.75" (line 3) with a decimal point',
    );
  });

  it('a mark in a column of words is left as it is', () => {
    expect(boards.read('name;length (mm)\n2.400;900\n')[0]?.name).toBe('2.400');
  });

  it('a board that is too short or too long to be one is asked about', () => {
    const head = 'name;count;length (mm);width (mm);thickness (mm)\n';
    expect(surveyField.read(`${head}r;4;2.400;100;50\n`)[0]?.length).toBeCloseTo(2.4, 12);
    expect(refusal(() => surveyField.read(`${head}r;4;2,4;100;50\n`))).toContain(
      'takes a board from 50 mm to 20 m',
    );
    expect(refusal(() => surveyField.read(`${head}r;4;24000;100;50\n`))).toContain(
      'takes a board from 50 mm to 20 m',
    );
  });
});

describe('encodings of a survey file', () => {
  const text = 'name;length (mm)\nfür die Küche;12,5\n';
  it.each([
    ['UTF-8', Buffer.from(text)],
    ['UTF-8 with a byte order mark', Buffer.from(`\ufeff${text}`)],
    ['UTF-16 little endian with a mark', Buffer.from(`\ufeff${text}`, 'utf16le')],
    ['UTF-16 little endian without a mark', Buffer.from(text, 'utf16le')],
    ['UTF-16 big endian with a mark', Buffer.from(`\ufeff${text}`, 'utf16le').swap16()],
    ['the western Windows code page', Buffer.from(text, 'latin1')],
  ])('%s', (name, bytes) => {
    const [row] = boards.read(file(`${name.replaceAll(' ', '-')}.csv`, bytes));
    expect(row?.name).toBe('für die Küche');
    expect(row?.length).toBeCloseTo(0.0125, 12);
  });

  it.each([
    ['sheet.csv', 'PK\u0003\u0004rest', 'is a zipped spreadsheet; open it and save the sheet as CSV'],
    ['sheet.xlsx', 'PK\u0003\u0004rest', 'open it and save the sheet as CSV'],
    ['sheet.ods', 'PK\u0003\u0004rest', 'open it and save the sheet as CSV'],
  ])('%s is named for what it is', (name, content, label) => {
    expect(refusal(() => boards.read(file(name, content)))).toContain(label);
  });
});
