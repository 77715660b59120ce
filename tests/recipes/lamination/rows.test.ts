import { describe, expect, it } from 'vitest';
import { cutsOf, jobOf, piecesField } from '../../../src/recipes/lamination/strip-job.js';
import { seeded } from '../../../src/recipes/lamination/seeded.js';
import {
  available,
  buildRow,
  jointsOf,
  sameTone,
  wasteOf,
  type Job,
  type Laid,
  type Row,
} from '../../../src/recipes/lamination/strip-row.js';
import { measure, search, wasteBound } from '../../../src/recipes/lamination/strip-search.js';

/** A job in small whole numbers: the code counts in nanometres, and does not mind. */
const job = (lengths: readonly number[], more: Partial<Job> & { tones?: readonly number[] } = {}): Job => ({
  length: 1000,
  rows: 1,
  stagger: 100,
  kerf: 3,
  shortest: 100,
  stocks: lengths.map((length, i) => ({ name: `p${i}`, length, tone: more.tones?.[i] ?? -1 })),
  toneWeight: 0.02,
  ...more,
});
const laid = (j: Job, sums: Readonly<Record<number, readonly [sum: number, count: number]>> = {}): Laid => {
  const out = { sum: new Float64Array(j.stocks.length), count: new Int32Array(j.stocks.length) };
  for (const [i, [sum, count]] of Object.entries(sums)) {
    out.sum[Number(i)] = sum;
    out.count[Number(i)] = count;
  }
  return out;
};
const row = (...parts: readonly (readonly [stock: number, length: number])[]): Row =>
  parts.map(([stock, length]) => ({ stock, length }));

describe('what is left and lost of a piece of 600 with saw cuts of 3', () => {
  const j = job([600]);
  it('untouched all of it; after each part that part and a cut less', () => {
    expect(available(j, laid(j), 0)).toBe(600);
    expect(available(j, laid(j, { 0: [200, 1] }), 0)).toBe(397);
    expect(available(j, laid(j, { 0: [450, 2] }), 0)).toBe(144);
  });
  it('nothing while untouched, nothing laid whole, the cut where the offcut is kept, all where it is too short', () => {
    const lost = (sum: number, count: number) => wasteOf(j, 600, sum, count);
    expect([lost(0, 0), lost(600, 1)]).toEqual([0, 0]);
    // 600 - 497 - 3 leaves 100, which is kept; 99 are thrown away with the cut.
    expect([lost(497, 1), lost(498, 1)]).toEqual([3, 102]);
    expect([lost(494, 2), lost(495, 2)]).toEqual([6, 105]);
  });
  it('where any offcut is worth keeping, a piece laid whole still loses nothing and costs no cut', () => {
    const any = job([600], { shortest: 0, kerf: 0 });
    expect([wasteOf(any, 600, 600, 1), wasteOf(any, 600, 599, 1)]).toEqual([0, 0]);
    expect(wasteOf(job([600], { shortest: 0 }), 600, 597, 1)).toBe(3);
    expect(wasteOf(job([600], { shortest: 0 }), 600, 598, 1)).toBe(2);
  });
});

describe('joints and tones of rows', () => {
  it('joints lie where pieces end, but for the last', () => {
    expect(jointsOf(row([0, 300], [1, 500], [2, 200]))).toEqual([300, 800]);
    expect(jointsOf(row([0, 1000]))).toEqual([]);
  });
  it('like tones side by side are measured where they overlap', () => {
    const j = job([300, 700, 600, 400, 1000], { tones: [0, 1, 1, 0, -1] });
    // Light to 300 then dark; below dark to 600 then light: dark over dark from 300 to 600.
    expect(sameTone(j, row([0, 300], [1, 700]), row([2, 600], [3, 400]))).toBe(300);
    // The same row twice is alike all along; without tones nothing is alike.
    expect(sameTone(j, row([0, 300], [1, 700]), row([0, 300], [1, 700]))).toBe(1000);
    expect(sameTone(j, row([4, 1000]), row([4, 1000]))).toBe(0);
    expect(sameTone(j, row([0, 300], [3, 400]), row([1, 300], [2, 400]))).toBe(0);
  });
  it('a layout is measured: waste, like tones, and the nearest joints', () => {
    const j = job([300, 700, 600, 450], { tones: [0, 1, 1, 0], rows: 2 });
    const m = measure(j, [row([0, 300], [1, 700]), row([2, 600], [3, 400])]);
    // 450 cut to 400 leaves 47, thrown away.
    expect([m.waste, m.sameTone, m.worstStagger]).toEqual([50, 300, 300]);
    expect(measure(j, [row([0, 300], [1, 700])]).worstStagger).toBe(Infinity);
  });
});

describe('one row', () => {
  const build = (j: Job, neighbours: readonly Row[] = [], only?: number, l: Laid = laid(j)) =>
    buildRow(j, l, neighbours, seeded(1), 20, only);
  it('is the one piece, or the pair, that fits', () => {
    expect(build(job([1000]))).toEqual({ row: [{ stock: 0, length: 1000 }], cost: 0 });
    const pair = build(job([600, 400]))!;
    expect(pair.cost).toBe(0);
    expect(pair.row.map((p) => p.length).sort()).toEqual([400, 600]);
  });
  it('wastes least: of 1050, 1200 and 500 with 500 the pair; of 1050 and 1103 the one whose offcut is kept', () => {
    expect(build(job([1050, 1200, 500, 500]))!.cost).toBe(0);
    const kept = build(job([1050, 1103]))!;
    expect([kept.row[0]!.stock, kept.cost]).toEqual([1, 3]);
    expect(build(job([1050, 1102]))!.cost).toBe(50);
  });
  it('takes three where three fit better than two', () => {
    const three = build(job([300, 300, 400, 750, 380]))!;
    expect(three.cost).toBe(0);
    expect(three.row).toHaveLength(3);
  });
  it('keeps its joints the stagger from a neighbour’s, at just the stagger too', () => {
    const under = (joint: number) => build(job([600, 400, 1100]), [row([0, joint], [1, 1000 - joint])])!;
    // A joint at 600 or 400 is legal beside one at 500; beside 501 only that at 400 is, beside 450 only 600.
    expect(under(500).cost).toBe(0);
    expect(jointsOf(under(501).row)).toEqual([400]);
    expect(jointsOf(under(499).row)).toEqual([600]);
  });
  it('cuts a piece back where whole ones would meet the joint of a neighbour', () => {
    const j = job([600, 600, 600]);
    const r = build(j, [row([0, 590], [1, 410])])!;
    for (const x of jointsOf(r.row)) expect(Math.abs(x - 590)).toBeGreaterThanOrEqual(100);
    expect(r.row.reduce((s, p) => s + p.length, 0)).toBe(1000);
  });
  it('is of one tone where one is asked for, and none where that tone is not there', () => {
    const j = job([600, 400, 600, 400], { tones: [0, 0, 1, 1] });
    expect(build(j, [], 1)!.row.every((p) => p.stock >= 2)).toBe(true);
    expect(build(j, [], 2)).toBeUndefined();
  });
  it('prefers another tone beside a neighbour', () => {
    const j = job([1000, 1000, 1000], { tones: [0, 1, 0] });
    expect(build(j, [row([0, 1000])])!.row[0]!.stock).toBe(1);
  });
  it('goes on from what is left of pieces cut before, if it is long enough', () => {
    const j = job([1200, 500]);
    // 697 are left of the first after a part of 500: laid beside 303 of the second, or 500 of it beside the whole second.
    // Either way one more cut is made and an offcut kept.
    const r = build(j, [], undefined, laid(j, { 0: [500, 1] }))!;
    expect(r.cost).toBe(3);
    expect(r.row.reduce((s, p) => s + p.length, 0)).toBe(1000);
    expect(r.row.find((p) => p.stock === 0)!.length).toBeLessThanOrEqual(697);
    // Of 1000 with 898 laid 99 are left, too short to lay; with 897 laid 100 are, and reach.
    const rest = job([1000, 900]);
    expect(build(rest, [], undefined, laid(rest, { 0: [898, 1] }))).toBeUndefined();
    expect(build(rest, [], undefined, laid(rest, { 0: [897, 1] }))!.row).toHaveLength(2);
  });
  it('is none where nothing is left, or nothing legal reaches', () => {
    const j = job([600]);
    expect(build(j, [], undefined, laid(j, { 0: [600, 1] }))).toBeUndefined();
    expect(build(job([600, 300]))).toBeUndefined();
  });
});

describe('the bound on the waste of any layout', () => {
  it('is nothing where pieces fill rows as they lie', () =>
    expect(wasteBound(job([600, 400, 600, 400], { rows: 2 }))).toBe(0));
  it('is the least excess in every row, or a cut for every two of them', () => {
    // Any two of 520 overshoot by 40: one row wastes 40, or a cut of 3; two rows share a cut.
    expect(wasteBound(job([520, 520, 520, 520]))).toBe(3);
    expect(wasteBound(job([520, 520, 520, 520], { rows: 2 }))).toBe(3);
    expect(wasteBound(job([520, 520, 520, 520, 520, 520], { rows: 3 }))).toBe(6);
    expect(wasteBound(job([501, 501], { kerf: 5 }))).toBe(2);
    expect(wasteBound(job([501, 501, 501, 501, 501, 501], { rows: 3, kerf: 3 }))).toBe(5);
  });
  it('uses a piece once: two of 350 and one of 400 overshoot by 100, not by 50', () => {
    expect(wasteBound(job([350, 400, 350], { kerf: 1000 }))).toBe(100);
    expect(wasteBound(job([350, 350, 350], { kerf: 1000 }))).toBe(50);
  });
  it('is nothing where there is too much to reckon', () => {
    // Lengths without a common measure: ten million steps for each of thirty pieces.
    const odd = Array.from({ length: 30 }, (_, i) => 10_000_001 + 2 * i);
    expect(wasteBound(job(odd, { length: 10_000_000, kerf: 1e9 }))).toBe(0);
    expect(wasteBound(job(odd.slice(0, 3), { length: 10_000_000, kerf: 1e9 }))).toBe(1);
  });
});

describe('the search', () => {
  const options = (more: object = {}) => ({
    seconds: 0.3,
    random: seeded(1),
    bound: 0,
    signal: undefined,
    onBetter: () => undefined,
    ...more,
  });
  it('stops at once with a layout that cannot be bettered', async () => {
    const start = performance.now();
    const j = job([600, 400, 400, 600], { rows: 2 });
    const best = await search(j, options({ seconds: 20 }));
    expect([best!.waste, best!.rows.length]).toEqual([0, 2]);
    expect(performance.now() - start).toBeLessThan(5000);
  });
  it('looks on while like tones touch', async () => {
    const j = job([1000, 1000, 1000, 1000], { tones: [0, 0, 1, 1], rows: 4 });
    const best = await search(j, options());
    expect(best!.sameTone).toBe(0);
  });
  it('finds none where none reaches', async () => {
    expect(await search(job([600, 300]), options())).toBeUndefined();
  });
});

describe('the job read', () => {
  const given = (lengths: unknown, more: object = {}) => ({
    topLength: 1,
    rows: 1,
    lengths: piecesField.read(lengths),
    minStagger: 0.15,
    kerf: 0.003,
    shortest: undefined,
    ...more,
  });
  it('counts in nanometres, names alike pieces apart and numbers tones by name', () => {
    const j = jobOf(
      given([
        { name: 'A', length: '600 mm', tone: 'light', count: 2 },
        { name: 'B2', length: '500 mm', tone: 'dark', count: 2 },
        { length: '400 mm' },
      ]),
    );
    expect(j.stocks).toEqual([
      { name: 'A1', length: 600e6, tone: 1 },
      { name: 'A2', length: 600e6, tone: 1 },
      { name: 'B2.1', length: 500e6, tone: 0 },
      { name: 'B2.2', length: 500e6, tone: 0 },
      { name: '3', length: 400e6, tone: -1 },
    ]);
    expect([j.length, j.stagger, j.kerf, j.shortest, j.toneNames]).toEqual([
      1e9,
      150e6,
      3e6,
      100e6,
      ['dark', 'light'],
    ]);
  });
  it('keeps offcuts of the stagger where that is under 100 mm', () => {
    expect(jobOf(given('600 mm, 500 mm', { minStagger: 0.06 })).shortest).toBe(60e6);
    expect(jobOf(given('600 mm, 500 mm', { shortest: 0.2 })).shortest).toBe(200e6);
  });
  it('leaves out pieces under a shortest that is asked for, not those of just that length', () => {
    const stocks = (shortest: number | undefined) =>
      jobOf(given('600 mm, 500 mm, 90 mm', { shortest })).stocks.length;
    expect([stocks(undefined), stocks(0.09), stocks(0.0901)]).toEqual([3, 3, 2]);
    expect(() => jobOf(given('600 mm, 390 mm, 20 mm', { shortest: 0.05 }))).toThrow(
      /got 990 mm in all that is not shorter than 50 mm, takes at least the 1000 mm of 1 rows: 10 mm more/,
    );
  });
  it('takes a pile that just reaches, and five thousand pieces', () => {
    expect(() => jobOf(given('600 mm, 400 mm'))).not.toThrow();
    expect(() => jobOf(given('600 mm, 399 mm'))).toThrow(
      /got 999 mm in all, takes at least the 1000 mm of 1 rows: 1 mm more/,
    );
    const many = (count: number) => () =>
      jobOf(
        given([
          { length: '1 m', count: 1000 },
          { length: '1 m', count: 1000 },
          { length: '1 m', count: 1000 },
          { length: '1 m', count: 1000 },
          { length: '1 m', count },
        ]),
      );
    expect(many(1000)).not.toThrow();
    expect(() => jobOf(given(Array.from({ length: 6 }, () => ({ length: '1 m', count: 834 }))))).toThrow(
      /got 5004 pieces, takes 5000 at most/,
    );
  });
  it('is shown as how many pieces there are, and how long in all', () => {
    expect(piecesField.show(piecesField.read([{ length: '600 mm', count: 3 }, { length: '400 mm' }]))).toBe(
      '4 pieces, 2200 mm in all',
    );
    expect([['600 mm'], '600 mm', [{ length: '1 m' }]].map((v) => piecesField.fits(v))).toEqual([
      true,
      true,
      true,
    ]);
    expect([5, true].map((v) => piecesField.fits(v))).toEqual([false, false]);
  });
});

describe('the cuts', () => {
  const j = job([1000, 600, 450, 700], { kerf: 3, shortest: 100 });
  it('a piece laid whole meets no saw; one sawn in two, with nothing over but the cut, meets it once', () => {
    expect(cutsOf(j, [row([0, 1000])])).toEqual([]);
    const [once] = cutsOf(j, [row([1, 300]), row([1, 297])]);
    expect(once).toMatchObject({
      piece: 'p1',
      saw: 1,
      left: 0,
      fate: 'lost',
      parts: '0 mm for row 1, 0 mm for row 2',
    });
  });
  it('an offcut is kept from the shortest up, and costs a cut', () => {
    expect(cutsOf(j, [row([2, 347])])[0]).toMatchObject({ saw: 1, left: 100e-9, fate: 'kept' });
    expect(cutsOf(j, [row([2, 348])])[0]).toMatchObject({ saw: 1, left: 99e-9, fate: 'lost' });
    // Two parts and an offcut: two cuts. An end thinner than the saw is sawn off whole.
    expect(cutsOf(j, [row([3, 300]), row([3, 200])])[0]).toMatchObject({
      saw: 2,
      left: 194e-9,
      fate: 'kept',
    });
    expect(cutsOf(j, [row([2, 449])])[0]).toMatchObject({ saw: 1, left: 0, fate: 'lost' });
  });
});
