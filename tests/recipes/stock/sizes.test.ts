import { describe, expect, it } from 'vitest';
import { flatteningLoss } from '../../../src/recipes/stock/flattening-loss.js';
import { gradeYield } from '../../../src/recipes/stock/grade-yield.js';
import { nominalSides } from '../../../src/recipes/stock/nominal-size.js';
import { roughToDressed } from '../../../src/recipes/stock/rough-to-dressed.js';
import { barsOf, linesOf, marksOf, pointsOf, rulesOf, titleOf } from '../chart-data.js';
import { dataOf, rectangles } from '../drawn-shapes.js';
import { fieldsOf, refusalOf } from '../refused.js';

const message = (r: { cautions: readonly { text: string }[] }, text: string): boolean =>
  r.cautions.some((c) => c.text.includes(text));

describe('flattening by hand', () => {
  const board = { thickness: '22 mm', width: '142 mm', length: '1.93 m', cup: '2.5 mm', bow: '4 mm', twist: '3 mm' }; // prettier-ignore

  it('one rip and one crosscut leave a quarter of cup, bow and half the lift', () => {
    // 2.5/4 + 4/4 + 3/2/4 = 2.
    const r = flatteningLoss({ ...board, rips: 1, crosscuts: 1 });
    expect(r.byCause.map((c) => c.loss.in('mm'))).toEqual([0.625, 1, 0.375, 0].map((v) => expect.closeTo(v, 9) as number)); // prettier-ignore
    expect(r.byCause.map((c) => c.lossWhole.in('mm'))).toEqual([2.5, 4, 1.5, 0].map((v) => expect.closeTo(v, 9) as number)); // prettier-ignore
    expect(r.loss.in('mm')).toBeCloseTo(2, 9);
    expect(r.dressedThickness.in('mm')).toBeCloseTo(20, 9);
    // Kerfs narrow the pieces: (142 - 2 x 3) / 3, (1930 - 3) / 2; clean-up comes off both faces.
    const sawn = flatteningLoss({ ...board, rips: 2, crosscuts: 1, kerf: '3 mm', cleanUp: '0.5 mm' });
    expect(sawn.pieceWidth.in('mm')).toBeCloseTo(136 / 3, 9);
    expect(sawn.pieceLength.in('mm')).toBeCloseTo(963.5, 9);
    expect(sawn.byCause[3]?.loss.in('mm')).toBeCloseTo(1, 9);
    expect(sawn.byCause[3]?.lossWhole.in('mm')).toBeCloseTo(1, 9);
  });

  it('takes curves up to a quarter of their span, and kerfs up to less than the board', () => {
    const at = (more: object) => () => flatteningLoss({ thickness: '400 mm', width: '60 mm', length: '60 mm', ...more }); // prettier-ignore
    for (const right of [{ cup: '15 mm' }, { bow: '15 mm' }, { rips: 19, kerf: '3 mm' }, { crosscuts: 19, kerf: '3 mm' }]) expect(at(right)).not.toThrow(); // prettier-ignore
    expect(refusalOf(at({ cup: '15.1 mm' })).message).toMatch(/cup: got 15\.1 mm over a width of 60 mm/);
    expect(refusalOf(at({ bow: '15.1 mm' })).message).toMatch(/bow: got 15\.1 mm over a length of 60 mm/);
    expect(refusalOf(at({ rips: 20, kerf: '3 mm' })).message).toMatch(/rips: got 20 cuts of 3\.0 mm in a width of 60 mm/); // prettier-ignore
    expect(refusalOf(at({ crosscuts: 20, kerf: '3 mm' })).message).toMatch(/crosscuts: got 20 cuts of 3\.0 mm in a length of 60 mm/); // prettier-ignore
  });

  it('warns where nothing is left, and below 6 mm and 300 mm', () => {
    const at = (thickness: string, length = '2 m') => flatteningLoss({ thickness, width: '100 mm', length, cup: '10 mm' }); // prettier-ignore
    expect(at('10 mm').dressedThickness.value).toBe(0);
    expect(at('9 mm').dressedThickness.value).toBe(0);
    const shown = (t: string): boolean => at(t).workings.some((w) => w.text.includes('nothing is left'));
    expect([shown('10 mm'), shown('10.1 mm')]).toEqual([true, false]);
    expect([message(at('10 mm'), 'nothing is left'), message(at('10.1 mm'), 'nothing is left')]).toEqual([true, false]); // prettier-ignore
    expect([message(at('10 mm'), 'may shatter'), message(at('10.1 mm'), 'may shatter'), message(at('15.9 mm'), 'may shatter'), message(at('16 mm'), 'may shatter')]).toEqual([false, true, true, false]); // prettier-ignore
    expect([message(at('40 mm', '300 mm'), 'shorter than about 300'), message(at('40 mm', '299 mm'), 'shorter than about 300')]).toEqual([false, true]); // prettier-ignore
  });

  it('is drawn for ten rips, or three more than there are, but twenty at most and no more than the board holds', () => {
    const xs = (more: object) => pointsOf(flatteningLoss({ ...board, ...more }).chart, 'full length').map(([x]) => x); // prettier-ignore
    expect(xs({ rips: 7 }).at(-1)).toBe(10);
    expect(xs({ rips: 8 }).at(-1)).toBe(11);
    expect(xs({ rips: 12 }).at(-1)).toBe(15);
    expect(xs({ rips: 30 }).at(-1)).toBe(20);
    expect(xs({ width: '30 mm', kerf: '3 mm' })).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9]);
  });

  it('is drawn whole and with the crosscuts asked for, else with one', () => {
    const { chart } = flatteningLoss({ ...board, rips: 1, crosscuts: 1 });
    expect(linesOf(chart)).toEqual(['full length', 'cut once across']);
    // Whole: 22 - 2.5 - 4 - 1.5; one rip: 22 - 0.625 - 4 - 0.75; both cuts: 20.
    expect(pointsOf(chart, 'full length').slice(0, 2)).toEqual([[0, expect.closeTo(14, 9)], [1, expect.closeTo(16.625, 9)]]); // prettier-ignore
    expect(pointsOf(chart, 'cut once across')[1]).toEqual([1, expect.closeTo(20, 9)]);
    expect(marksOf(chart)).toEqual([{ x: 1, y: expect.closeTo(20, 9) as number, label: 'these cuts' }]);
    expect(rulesOf(chart)).toEqual([{ y: 22, label: 'rough thickness' }]);
    expect(linesOf(flatteningLoss({ ...board, crosscuts: 0 }).chart)[1]).toBe('cut once across');
    expect(linesOf(flatteningLoss({ ...board, crosscuts: 3 }).chart)[1]).toBe('cut 3 times across');
    // A board planed away is drawn at nothing, not below.
    expect(pointsOf(flatteningLoss({ ...board, thickness: '2 mm' }).chart, 'full length')[0]).toEqual([0, 0]);
  });
});

describe('rough and dressed by hand', () => {
  it('dressing must leave something', () => {
    const at = (thickness: string) => () => roughToDressed({ rough: { thickness, width: '97 mm' } });
    expect(refusalOf(at('4 mm')).message).toMatch(
      /rough\.thickness: got 4\.0 mm, takes more than the 4\.0 mm/,
    );
    expect(at('4.1 mm')().dressedThickness.in('mm')).toBeCloseTo(0.1, 9);
  });

  it('warns below 300 mm of length and 6 mm of thickness', () => {
    const at = (thickness: string, length?: string) => roughToDressed({ dressed: { thickness, width: '97 mm', ...(length ? { length } : {}) } }); // prettier-ignore
    expect([message(at('6 mm'), 'may shatter'), message(at('5.9 mm'), 'may shatter')]).toEqual([false, true]);
    expect(['300 mm', '299 mm', undefined].map((l) => message(at('20 mm', l), 'shorter than about 300'))).toEqual([false, true, false]); // prettier-ignore
    expect(at('20 mm', '300 mm').roughLength?.in('mm')).toBeCloseTo(340, 9);
    expect(at('20 mm').roughLength).toBeUndefined();
  });

  it('tells where the sizes come from', () => {
    const r = roughToDressed(roughToDressed.example);
    const named = roughToDressed({ nominal: '2x4' });
    expect([message(r, 'custom of the workshop'), message(r, 'do not follow these sizes')]).toEqual([
      true,
      false,
    ]);
    expect([message(named, 'custom of the workshop'), message(named, 'do not follow these sizes')]).toEqual([false, true]); // prettier-ignore
    expect(r.roughLength?.in('mm')).toBeCloseTo(1870, 9);
    expect(r.dressedLength?.in('mm')).toBeCloseTo(1830, 9);
  });

  it('is drawn to scale, the dressed section in the middle of the rough one', () => {
    const dims = (r: { chart: unknown }): string => JSON.stringify(r.chart);
    const rough = dims(roughToDressed(roughToDressed.example));
    for (const text of ['rough 97 mm', 'rough 47 mm', 'dressed 91 mm', 'dressed 43 mm']) expect(rough).toContain(text); // prettier-ignore
    // A nominal size is drawn as what it is: 4 in and 2 in are 101.6 and 50.8 mm, 3 1/2 and 1 1/2 in 88.9 and 38.1.
    const named = dims(roughToDressed({ nominal: '2x4' }));
    for (const text of ['nominal 101.6 mm', 'nominal 50.8 mm', 'dressed 88.9 mm', 'dressed 38.1 mm']) expect(named).toContain(text); // prettier-ignore
    expect(named).not.toContain('"rough ');
    // 97 x 47 with 3 mm off each edge and 2 mm off each face.
    const { chart } = roughToDressed(roughToDressed.example);
    expect(rectangles(chart)).toEqual([[0, 0, 97, 47], [3, 2, 94, 45]].map((r) => r.map((v) => expect.closeTo(v, 9) as number))); // prettier-ignore
    // Arrows of the rough size above and on the left, of the dressed one below and on the right, each over what it measures.
    const tips = dataOf(chart, 'point').map((p): [number, number] => [p['x'] as number, p['y'] as number]);
    const where = (outside: (x: number, y: number) => boolean, along: 0 | 1): number[] =>
      tips.filter(([x, y]) => outside(x, y)).map((t) => Number(t[along].toFixed(9)));
    expect(where((_, y) => y > 47, 0)).toEqual([0, 97]);
    expect(where((_, y) => y < 0, 0)).toEqual([3, 94]);
    expect(where((x) => x < 0, 1)).toEqual([0, 47]);
    expect(where((x) => x > 97, 1)).toEqual([2, 45]);
  });

  it('takes one size and one only', () => {
    expect(fieldsOf(() => roughToDressed({}))).toEqual(['rough']);
    expect(refusalOf(() => roughToDressed({})).message).toMatch(/got no size, takes one of/);
    expect(refusalOf(() => roughToDressed({ rough: { thickness: '2 in', width: '4 in' }, nominal: '2x4' })).message).toMatch(/nominal: got rough and nominal, takes one of/); // prettier-ignore
    expect(fieldsOf(() => roughToDressed({ rough: { thickness: '2 in', width: '4 in' }, dressed: { thickness: '2 in', width: '4 in' } }))).toEqual(['dressed']); // prettier-ignore
  });
});

describe('nominal sizes', () => {
  it.each([
    ['2x4', 2, 4],
    ['4 x 2', 2, 4],
    ['1 1/4 x 6', 1.25, 6],
    ['2 in x 4 in', 2, 4],
    ['2"×10"', 2, 10],
    ['2.5 X 8', 2.5, 8],
    ['.75x3', 0.75, 3],
  ])('%s is %s by %s in', (text, thickness, width) => {
    expect(nominalSides(text)).toEqual({ thickness, width });
  });

  it.each([
    '',
    'x',
    '2',
    '2x',
    'x4',
    '2x4x8',
    '0x4',
    '2x0',
    '2/0x4',
    '2x4/0',
    '1..2x4',
    '2x1..2',
    '-2x4',
    '2x4 mm',
  ])('%j is none', (text) => {
    expect(fieldsOf(() => nominalSides(text))).toEqual(['nominal']);
  });

  it('beyond the table are timbers, by the greatest undersize of the rule; part inches are refused', () => {
    // PS 20-05 summary: 1/2 in under for 5 and 6 in, 3/4 in for 7 to 15 in, 1 in from 16 in.
    const inches = (nominal: string) => {
      const r = roughToDressed({ nominal });
      return [r.dressedThickness.in('in'), r.dressedWidth.in('in')].map((v) => Number(v.toFixed(9)));
    };
    expect(inches('5x6')).toEqual([4.5, 5.5]);
    expect(inches('7x13')).toEqual([6.25, 12.25]);
    expect(inches('15x15')).toEqual([14.25, 14.25]);
    expect(inches('16x18')).toEqual([15, 17]);
    expect(fieldsOf(() => roughToDressed({ nominal: '5.5x6' }))).toEqual(['nominal']);
    expect(refusalOf(() => roughToDressed({ nominal: '1.1x4' })).message).toMatch(/got a size of 1\.1 in, takes 0\.75, 1, 1\.25.* or a whole number of inches from 5/); // prettier-ignore
    // Boards have a green size beside the dry one, timbers have not.
    const two = roughToDressed({ nominal: '2x4' });
    expect([two.greenThickness?.in('in'), two.greenWidth?.in('in')]).toEqual([expect.closeTo(1.5625, 9), expect.closeTo(3.5625, 9)]); // prettier-ignore
    expect(roughToDressed({ nominal: '6x6' }).greenThickness).toBeUndefined();
    expect(roughToDressed({ nominal: '6x13' }).greenWidth).toBeUndefined();
    // 1 - 1.5 x 3.5 / 8.
    expect(two.planedAway.value).toBeCloseTo(1 - 5.25 / 8, 9);
  });
});

describe('graded boards by hand', () => {
  const fas = (width: string, length: string) => gradeYield({ grade: 'FAS', width, length });

  it('surface measure is rounded to the whole foot, and a board must have half of one', () => {
    // 6 in x 9 ft / 12 = 4.5; 6 x 8.9 / 12 = 4.45.
    expect(fas('6 in', '9 ft').surfaceMeasure).toBe(5);
    expect(fas('6 in', '8.9 ft').surfaceMeasure).toBe(4);
    expect(fas('6 in', '1 ft').surfaceMeasure).toBe(1);
    expect(refusalOf(() => fas('5.9 in', '1 ft')).message).toMatch(/width: gives a surface measure of 0\.49/);
  });

  it('takes a surface measure or a size, whole', () => {
    const given = { grade: 'FAS' } as const;
    for (const bad of [
      { surfaceMeasure: 8, width: '7 in' },
      { surfaceMeasure: 8, length: '7 ft' },
      { width: '7 in' },
      { length: '7 ft' },
      {},
    ])
      // prettier-ignore
      expect(fieldsOf(() => gradeYield({ ...given, ...bad }))).toEqual(['surfaceMeasure']);
  });

  it('says when a board is below the least of its grade: 6 in by 8 ft for FAS', () => {
    const small = (r: { cautions: readonly { text: string }[] }): boolean =>
      message(r, 'least size of its grade');
    expect([fas('6 in', '8 ft'), fas('5.9 in', '8 ft'), fas('6 in', '7.9 ft')].map(small)).toEqual([false, true, true]); // prettier-ignore
    expect(small(gradeYield({ grade: 'FAS', surfaceMeasure: 1 }))).toBe(false);
  });

  it('allows one more cutting in the range printed, and at least one in all', () => {
    const extra = (grade: 'FAS' | 'No.1 Common' | 'Selects' | 'No.3A Common', s: number) => gradeYield({ grade, surfaceMeasure: s }).unitsWithExtraCut; // prettier-ignore
    expect([5, 6, 15, 16].map((s) => extra('FAS', s))).toEqual([undefined, 66, 165, undefined]);
    expect([2, 3, 10, 11].map((s) => extra('No.1 Common', s))).toEqual([undefined, 27, 90, undefined]);
    expect([extra('Selects', 8), extra('No.3A Common', 8)]).toEqual([undefined, undefined]);
    expect(Object.keys(gradeYield({ grade: 'FAS', surfaceMeasure: 16 }))).not.toContain('unitsWithExtraCut');
    const shown = (grade: 'FAS' | 'No.3A Common') => gradeYield({ grade, surfaceMeasure: 8 }).workings.map((w) => w.text).join(); // prettier-ignore
    expect(shown('FAS')).toContain('no more than 4 are allowed');
    expect(shown('No.3A Common')).not.toContain('are allowed');
    const cuts = (s: number) => gradeYield({ grade: 'FAS', surfaceMeasure: s }).cuttings;
    expect([1, 3, 4, 7, 8].map(cuts)).toEqual([1, 1, 1, 1, 2]);
    expect(gradeYield({ grade: 'FAS', surfaceMeasure: 8 }).leastCutting).toBe('4 in x 5 ft or 3 in x 7 ft');
    expect(gradeYield({ grade: 'No.2A Common', surfaceMeasure: 8 }).leastCutting).toBe('3 in x 2 ft');
    expect(gradeYield({ grade: 'No.2A Common', surfaceMeasure: 8 }).leastBoard).toBe('3 in x 4 ft');
  });

  it('is drawn for every grade: 10, 8, 6, 4 and 3 units a foot', () => {
    const bars = barsOf(gradeYield(gradeYield.example).chart);
    expect(bars.map((b) => b.value)).toEqual([50, 50, 50, 40, 30, 30, 20, 15]);
    expect(bars.map((b) => b.label)).toEqual(['50', '50', '50', '40', '30', '30', '20', '15']);
    expect(bars.filter((b) => b.chosen).map((b) => b.name)).toEqual(['No.1 Common']);
    expect(titleOf(gradeYield(gradeYield.example).chart)).toContain('5 ft²');
  });
});
