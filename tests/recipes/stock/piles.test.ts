import { describe, expect, it } from 'vitest';
import { steps } from '../../../src/recipes/stock/pile-totals.js';
import { pileYield } from '../../../src/recipes/stock/pile-yield.js';
import { dress } from '../../../src/recipes/stock/survey.js';
import { marksOf, pointsOf } from '../chart-data.js';
import { fieldsOf, refusalOf } from '../refused.js';

const near = (value: number, digits: number): number => expect.closeTo(value, digits) as number;

const board = { length: '2 m', width: '100 mm', thickness: '50 mm' };
type Row = Partial<Record<'length' | 'width' | 'thickness' | 'endLoss' | 'faultLength' | 'cup' | 'bow' | 'name' | 'group', string>> & { faults?: number; count?: number }; // prettier-ignore
const plain = { plane: '1 mm', kerf: '3 mm', jointing: '3 mm' };
const one = (row: Row, more: object = {}) => pileYield({ boards: [{ ...board, ...row }], ...plain, ...more });
const mm = (v: number) => expect.closeTo(v / 1000, 9) as number;

describe('one board by hand', () => {
  it('loses its faces and its edges', () => {
    // 50 - 2 mm thick, 100 - 3 mm wide: 2 x 0.097 x 0.048 of 2 x 0.1 x 0.05.
    const r = one({});
    expect(r.commonThickness.value).toEqual(mm(48));
    expect(r.area.in('m2')).toBeCloseTo(0.194, 12);
    expect(r.volume.in('m3')).toBeCloseTo(0.009312, 12);
    expect(r.roughVolume.in('m3')).toBeCloseTo(0.01, 12);
    expect(r.yield.value).toBeCloseTo(0.9312, 12);
    expect([r.pieces, r.boardsLeftOut]).toEqual([1, 0]);
    expect(r.usableLength.in('m')).toBeCloseTo(2, 12);
    expect(r.peakYield.value).toBeCloseTo(0.9312, 7);
    expect(r.peakThickness.value).toEqual(mm(48));
  });

  it('is docked, and cut out at its faults into equal stretches', () => {
    const r = one({ endLoss: '110 mm', faultLength: '90 mm', faults: 2 });
    expect(r.pieces).toBe(3);
    expect(r.usableLength.in('m')).toBeCloseTo(1.8, 12);
    expect(one({ faultLength: '90 mm' }).pieces).toBe(2);
    expect(one({ faults: 2 }).pieces).toBe(3);
    expect(one({ faults: 2, faultLength: '500 mm' }, { target: { length: '500 mm' } }).pieces).toBe(3);
    // 1999 mm in two stretches of 999.5 mm hold one piece of 999.5 mm each, and none of 999.6.
    expect(one({ faultLength: '1 mm' }, { target: { length: '999.5 mm' } }).pieces).toBe(2);
    expect(fieldsOf(() => one({ faultLength: '1 mm' }, { target: { length: '999.6 mm' } }))).toEqual(['boards']); // prettier-ignore
  });

  it('gives as many strips and pieces as saw and jointer leave, to the last tenth', () => {
    // Two strips of 42 + 3 with a kerf of 3 take 93 mm; two pieces of 500 with a kerf 1003 mm.
    const strips = (width: string) => one({ width }, { target: { width: '42 mm' } }).pieces;
    expect([strips('93 mm'), strips('92.9 mm'), strips('45 mm')]).toEqual([2, 1, 1]);
    const lengths = (length: string) => one({ length }, { target: { length: '500 mm' } }).pieces;
    expect([lengths('1003 mm'), lengths('1002.9 mm'), lengths('500 mm')]).toEqual([2, 1, 1]);
    expect(fieldsOf(() => one({ width: '44.9 mm' }, { target: { width: '42 mm' } }))).toEqual(['boards']);
    expect(fieldsOf(() => one({ width: '3 mm', thickness: '3 mm' }))).toEqual(['boards']);
    const r = one({ width: '93 mm' }, { target: { width: '42 mm' } });
    expect(r.area.in('m2')).toBeCloseTo(2 * 2 * 0.042, 12);
  });

  it('loses cup and bow by the square of what is left of the span', () => {
    expect(one({ cup: '2 mm' }).commonThickness.value).toEqual(mm(46));
    // A strip of 47 + 3 is half the width: a quarter of the cup.
    expect(one({ cup: '2 mm' }, { target: { width: '47 mm' } }).commonThickness.value).toEqual(mm(47.5));
    expect(one({ bow: '8 mm' }).commonThickness.value).toEqual(mm(40));
    expect(one({ bow: '8 mm' }, { target: { length: '1 m' } }).commonThickness.value).toEqual(mm(46));
    expect(one({ bow: '8 mm', endLoss: '1 m' }).commonThickness.value).toEqual(mm(46));
    expect(one({ bow: '8 mm', cup: '2 mm' }).commonThickness.value).toEqual(mm(38));
  });

  it('must be more than a millimetre thick in the end', () => {
    expect(fieldsOf(() => one({ thickness: '3 mm' }))).toEqual(['boards']);
    expect(one({ thickness: '3.1 mm' }).commonThickness.value).toEqual(mm(1.1));
    expect(fieldsOf(() => one({ endLoss: '2 m' }))).toEqual(['boards']);
  });

  it('gives what is asked for up to its own thickness, and says the most there is', () => {
    expect(one({}, { target: '48 mm' }).pieces).toBe(1);
    expect(refusalOf(() => one({}, { target: '48.1 mm' })).message).toMatch(/target: got 48\.1 mm, takes at most 48\.0 mm/); // prettier-ignore
    expect(one({}, { target: { thickness: '20 mm' } }).volume.in('m3')).toBeCloseTo(0.194 * 0.02, 12);
  });
});

describe('a row that cannot be', () => {
  it.each([
    [{ endLoss: '1.2 m', faultLength: '800 mm' }, { endLoss: '1.2 m', faultLength: '801 mm' }, 'endLoss'],
    [{ cup: '25 mm' }, { cup: '25.1 mm' }, 'cup'],
    [{ bow: '500 mm' }, { bow: '501 mm' }, 'bow'],
    [{ cup: '1 mm', thickness: '100 mm' }, { cup: '1 mm', thickness: '100.1 mm' }, 'thickness'],
    [{ cup: '0 mm', thickness: '100.1 mm' }, { cup: '0.1 mm', thickness: '100.1 mm' }, 'thickness'],
    [{ faults: 0, faultLength: '0 mm' }, { faults: 0, faultLength: '1 mm' }, 'faults'],
  ] as const)('%j can, %j cannot', (right, wrong, field) => {
    // A sound board beside it, so that the pile yields something.
    const pile = (row: Row) => pileYield({ boards: [{ ...board, ...row }, board] });
    expect(() => pile(right)).not.toThrow();
    expect(fieldsOf(() => pile(wrong)).some((f) => f.includes(`boards[1].${field}`))).toBe(true);
  });
});

it('tells in millimetres what is wrong with a row', () => {
  expect(refusalOf(() => one({ endLoss: '1.2 m', faultLength: '801 mm' })).message).toMatch(/got 1200 mm docked and 801 mm of faults in a board of 2000 mm/); // prettier-ignore
});

describe('several boards', () => {
  const boards = [
    { ...board, name: 'beam', group: 'beams', count: 2 },
    { ...board, thickness: '22 mm', group: 'boards', count: 3 },
    { ...board, endLoss: '2 m', group: 'scrap' },
  ];
  it('are governed by the thinnest that gives anything', () => {
    const r = pileYield({ boards, ...plain });
    expect(r.commonThickness.value).toEqual(mm(20));
    expect(r.boardsLeftOut).toBe(1);
    // Five pieces of 0.194 m2 by 20 mm; the beams alone at 48 mm give 2 x 0.194 x 0.048, less than 5 x 0.194 x 0.02.
    expect(r.volume.in('m3')).toBeCloseTo(5 * 0.194 * 0.02, 12);
    expect(r.peakThickness.value).toEqual(mm(20));
    expect(r.workings.map((w) => w.text).join()).toMatch(/3 rows, 6 boards.*1 mm off each face.*The thinnest board, row 2, governs/); // prettier-ignore
    expect(r.byGroup.map((g) => [g.group, g.boards, g.pieces, g.thinnest?.in('mm')])).toEqual([
      ['beams', 2, 2, expect.closeTo(48, 9)],
      ['boards', 3, 3, expect.closeTo(20, 9)],
      ['scrap', 1, 0, undefined],
    ]);
    expect(r.byThickness[1]?.yield.value).toBeCloseTo((2 * 0.194 * 0.048) / 0.0432, 9);
    expect(r.byGroup[0]?.yield.value).toBeCloseTo((0.194 * 0.02) / 0.01, 9);
    expect(r.byThickness.map((t) => [t.thickness.in('mm'), t.boards])).toEqual([[expect.closeTo(20, 6), 5], [expect.closeTo(48, 6), 2]]); // prettier-ignore
  });

  it('of which the first of the thinnest is named, wherever it lies', () => {
    const named = (...mm: number[]) =>
      /The thinnest board, (.*), governs/.exec(
        pileYield({ boards: mm.map((t, i) => ({ ...board, thickness: `${t} mm`, name: `b${i}` })), ...plain })
          .workings.map((w) => w.text)
          .join(),
      )?.[1];
    expect([named(22, 50), named(50, 22), named(22, 22)]).toEqual(['b0', 'b1', 'b0']);
  });

  it('too narrow to joint give nothing', () => {
    const r = pileYield({ boards: [board, { ...board, width: '3 mm' }], ...plain });
    expect([r.pieces, r.boardsLeftOut]).toEqual([1, 1]);
  });

  it('peak where most boards join in, should two thicknesses yield alike', () => {
    // Two at 20 mm are as much as one at 40 mm.
    const r = pileYield({ boards: [{ ...board, thickness: '22 mm' }, { ...board, thickness: '42 mm' }], ...plain }); // prettier-ignore
    expect(r.peakThickness.value).toEqual(mm(20));
  });

  it('leave the thin ones out when a thickness is asked for', () => {
    const r = pileYield({ boards, ...plain, target: '30 mm' });
    expect([r.pieces, r.boardsLeftOut]).toEqual([2, 4]);
    expect(r.workings.map((w) => w.text).join()).toContain('is as asked');
  });

  it('are drawn as cliffs: each board goes just above its own thickness', () => {
    const r = pileYield({ boards, ...plain, target: '30 mm' });
    // Rough: 2 x 0.01 + 3 x 0.0044 + 0.01 = 0.0432 m3.
    const points = pointsOf(r.chart);
    expect(points.map(([x]) => x)).toEqual([0, 20, 20.002, 48].map((x) => expect.closeTo(x, 6) as number));
    const yields = [0, 5 * 0.194 * 0.02, 2 * 0.194 * 0.020002, 2 * 0.194 * 0.048];
    expect(points.map(([, y]) => y)).toEqual(
      yields.map((v) => expect.closeTo((100 * v) / 0.0432, 3) as number),
    );
    expect(marksOf(r.chart)).toEqual([
      { x: near(20, 6), y: near((100 * yields[1]!) / 0.0432, 3), label: 'peak, 20 mm' },
      { x: near(30, 6), y: near((100 * 2 * 0.194 * 0.03) / 0.0432, 3), label: 'taken, 30 mm' },
    ]);
    expect(marksOf(pileYield({ boards, ...plain }).chart).length).toBe(1);
  });
});

describe('resawing', () => {
  it('tries every number of layers: (50 + 3) / n - 5 mm down to a millimetre', () => {
    const r = one({}, { resaw: true });
    // 53/8 - 5 = 1.625 is the last above 1 mm; 53/9 - 5 = 0.889 is not.
    const layers = [8, 7, 6, 5, 4, 3, 2, 1];
    expect(r.byThickness.map((t) => t.thickness.in('mm'))).toEqual(layers.map((n) => expect.closeTo(53 / n - 5, 3) as number)); // prettier-ignore
    r.byThickness.forEach((t, i) =>
      expect(t.volume.in('m3')).toBeCloseTo((layers[i]! * 0.194 * (53 / layers[i]! - 5)) / 1000, 7),
    );
    expect(r.pieces).toBe(1);
    expect(one({}, { resaw: true, target: '21.5 mm' }).pieces).toBe(2);
    expect(one({}, { resaw: true, target: '21.6 mm' }).pieces).toBe(1);
    expect(one({}, { target: '12 mm' }).pieces).toBe(1);
    // 54/9 - 5 is a millimetre to the last: still one.
    expect(one({ thickness: '51 mm' }, { resaw: true }).byThickness[0]?.thickness.in('mm')).toBeCloseTo(1, 6);
  });

  it('without kerf and planing still has a chart, which begins with nothing', () => {
    const r = one({}, { resaw: true, kerf: '0 mm', plane: '0 mm', target: '25 mm' });
    expect(r.pieces).toBe(2);
    expect(pointsOf(r.chart)[0]).toEqual([0, 0]);
  });
});

describe('long surveys', () => {
  const pile = (n: number, step: number) =>
    pileYield({
      boards: Array.from({ length: n }, (_, i) => ({ ...board, thickness: `${20 + i * step} mm` })),
      ...plain,
    }).byThickness.map((t) => t.thickness.in('mm'));

  it('show every step up to 24, then every second or third, and always the peak', () => {
    expect(pile(24, 0.1).length).toBe(24);
    // The yield of equal boards n of which are thick enough is greatest well inside: 25 steps are every second, and the peak.
    const shown = pile(25, 0.1);
    expect(shown[0]).toBeCloseTo(18, 6);
    expect(shown[1]).toBeCloseTo(18.2, 6);
    expect(shown.length).toBe(13);
    // Sixty boards from 20 mm, 0.5 mm apart: (60 - i) (18 + i / 2) is greatest at i = 12: every third, and it is one.
    expect(pile(60, 0.5).length).toBe(20);
    // From 20 mm, 0.46 mm apart: (60 - i) (18 + 0.46 i) is greatest at 10.4: i = 10 (50 x 22.6), no third one.
    expect(pile(60, 0.46).length).toBe(21);
    expect(pile(60, 0.46)).toContainEqual(expect.closeTo(22.6, 6));
  });

  it('of more than 400 steps are read to the tenth of a millimetre', () => {
    const whole = (mm: number): boolean => Math.abs(mm * 10 - Math.round(mm * 10)) < 1e-6;
    expect(pile(400, 0.033).every(whole)).toBe(false);
    expect(pile(401, 0.033).every(whole)).toBe(true);
    expect(pile(401, 0.033)[0]).toBeCloseTo(18, 6);
  });

  it('are of as many thicknesses as boards up to 400; of 401 a hundredth of a millimetre apart, 41 tenths are left', () => {
    const how = { plane: 0, jointing: 0, kerf: 0, resaw: false };
    const row = {
      name: undefined,
      faults: undefined,
      group: 'all',
      count: 1,
      length: 2,
      width: 0.1,
      endLoss: 0,
      faultLength: 0,
      cup: 0,
      bow: 0,
    };
    const of = (n: number) => steps(Array.from({ length: n }, (_, i) => dress({ ...row, thickness: (2000 + i) / 100_000 }, how)), how); // prettier-ignore
    // 20.00 to 23.99 mm, and 20.00 to 24.00 mm.
    expect(of(400)).toEqual(
      Array.from({ length: 400 }, (_, i) => expect.closeTo(0.02 + i * 1e-5, 8) as number),
    );
    expect(of(401)).toEqual(
      Array.from({ length: 41 }, (_, i) => expect.closeTo(0.02 + i * 1e-4, 8) as number),
    );
  });
});

describe('what to mind with a pile', () => {
  const message = (r: { cautions: readonly { text: string }[] }, text: string): boolean =>
    r.cautions.some((c) => c.text.includes(text));

  it('short pieces below 300 mm', () => {
    expect(message(one({}, { target: { length: '300 mm' } }), 'shorter than about 300 mm')).toBe(false);
    expect(message(one({}, { target: { length: '299 mm' } }), 'shorter than about 300 mm')).toBe(true);
    // A row that gives nothing has no short pieces.
    const lost = pileYield({ boards: [board, { ...board, length: '200 mm', thickness: '2 mm' }], ...plain });
    expect(message(lost, 'shorter than about 300 mm')).toBe(false);
  });

  it('thin boards below 6 mm', () => {
    expect(message(one({ thickness: '8 mm' }), 'under about 6 mm')).toBe(false);
    expect(message(one({ thickness: '7.9 mm' }), 'under about 6 mm')).toBe(true);
  });

  it('faults that are not placed, and only then', () => {
    expect(message(one({}), 'where faults lie')).toBe(false);
    expect(message(one({}, { target: { length: '300 mm' } }), 'where faults lie')).toBe(false);
    expect(message(one({ faultLength: '1 mm' }), 'where faults lie')).toBe(true);
  });

  it('rows that give nothing, by name, twenty at most', () => {
    const scrap = (n: number) =>
      pileYield({
        boards: [board, ...Array.from({ length: n }, (_, i) => ({ ...board, endLoss: '2 m', ...(i === 0 ? { name: 'stub' } : {}) }))], // prettier-ignore
        ...plain,
      }).cautions.find((c) => c.text.startsWith('these give nothing'))?.text;
    expect(scrap(0)).toBeUndefined();
    expect(scrap(2)).toBe('these give nothing: stub, row 3');
    expect(scrap(20)).toMatch(/row 21$/);
    expect(scrap(23)).toMatch(/row 21 and 3 more$/);
  });
});
