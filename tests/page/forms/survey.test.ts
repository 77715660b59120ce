import { describe, expect, it } from 'vitest';
import { readSurvey } from '../../../src/page/forms/worker/read-survey.js';
import type { SurveyChoices } from '../../../src/page/forms/model/survey-reading.js';
import { pileYield } from '../../../src/recipes/stock/pile-yield.js';

const none: SurveyChoices = { columns: {}, units: {}, repairs: {}, left: [] };
const read = (text: string, choices: Partial<SurveyChoices> = {}) =>
  readSurvey({ text, choices: { ...none, ...choices } });

describe('a survey brought in', () => {
  it('is matched by its headings, with units from brackets, and gives what the recipe reads', () => {
    const reading = read(
      'Board\tQty\tLength (mm)\tWidth (mm)\tThick\tPaint\nA\t2\t2400\t96\t48\tgreen\nB\t1\t1800\t145\t21\tnone\n',
    );
    expect(reading.headings.map(({ column }) => column)).toEqual([
      'name',
      'count',
      'length',
      'width',
      'thickness',
      '',
    ]);
    expect(reading).toMatchObject({ rows: 2, boards: 3, doubts: [], missing: [], ignored: ['Paint'] });
    const result = pileYield({ boards: reading.csv! });
    const same = pileYield({
      boards: [
        { name: 'A', count: 2, length: '2400 mm', width: '96 mm', thickness: '48 mm' },
        { name: 'B', count: 1, length: '1800 mm', width: '145 mm', thickness: '21 mm' },
      ],
    });
    expect(result.toJSON().outputs).toEqual(same.toJSON().outputs);
    expect(reading.picture).toBeDefined();
  });

  it('reads decimal commas, semicolons, a byte order mark and quoted cells', () => {
    const reading = read(
      '\uFEFFPiece;Length (m);Width (mm);Thickness (mm)\n"rafter; old";2,4;96;48\nB;1,85;95;47\n',
    );
    expect(reading.doubts).toEqual([]);
    expect(reading.csv).toContain('2.4 m');
  });

  it('offers a repair for a slip of ten, and clears the doubt once it is written', () => {
    const text = 'Length (mm),Width (mm),Thickness (mm)\n2400,96,48\n2300,9600,48\n2200,95,47\n2250,96,46\n';
    const reading = read(text);
    expect(reading.doubts).toHaveLength(1);
    expect(reading.doubts[0]).toMatchObject({ repair: '96 mm', row: 1, cell: '1:Width (mm)' });
    expect(reading.csv).toBeUndefined();
    expect(read(text, { repairs: { '1:Width (mm)': '96 mm' } }).doubts).toEqual([]);
    expect(read(text, { left: [1] }).doubts).toEqual([]);
  });

  it('says what alike rows have in common in one line, never more than eight', () => {
    const rows = Array.from({ length: 26 }, (_, i) => `${2000 + i},wide,48`).join('\n');
    const reading = read(`Length,Width,Thickness\n${rows}\n`);
    expect(reading.doubts.length).toBeLessThanOrEqual(8);
    expect(reading.doubts[0]?.message).toMatch(/^26 rows/);
    expect(reading.doubts.map(({ message }) => message).join('').length).toBeLessThan(800);
  });

  it('takes bare numbers in the unit that is chosen, and asks which column a missing one is', () => {
    expect(
      read('Length,Width,Thickness\n94,4,2\n96,4,2\n', {
        units: { Length: 'in', Width: 'in', Thickness: 'in' },
      }).csv,
    ).toContain('94 in');
    expect(read('Length,Breite,Thickness\n2400,96,48\n').missing).toEqual(['width']);
    expect(read('Length,Breite,Thickness\n2400,96,48\n', { columns: { Breite: 'width' } }).missing).toEqual(
      [],
    );
  });

  it('refuses nothing with a fault of the program, whatever is pasted', () => {
    for (const text of ['', 'a', 'a,b\n"', '\n\n', 'Length,Width,Thickness\n,,\n', '===\n---', '😀,😀\n1,2'])
      expect(() => read(text)).not.toThrow();
  });
});
