import { describe, expect, it } from 'vitest';
import { cutsOf, jobOf, piecesField } from '../../../src/recipes/lamination/strip-job.js';
import { mulberry32 } from '../../../src/engine/random.js';
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
import {
  begin,
  fill,
  measure,
  pickRows,
  price,
  search,
  wasteBound,
} from '../../../src/recipes/lamination/strip-search.js';

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
const zeros = (count: number): number[] => new Array<number>(count).fill(0);
/** Draws these numbers and no more. */
const script = (...numbers: readonly number[]) => {
  const left = [...numbers];
  const random = (): number => {
    const next = left.shift();
    if (next === undefined) throw new Error('asked for more numbers than there are');
    return next;
  };
  return Object.assign(random, { left });
};
/** Draws these numbers, and zeros from then on. */
const first = (...numbers: readonly number[]) => {
  const left = [...numbers];
  return (): number => left.shift() ?? 0;
};

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
    // Too short to keep, and still nothing is lost of a piece that nobody touched.
    expect(wasteOf(j, 90, 0, 0)).toBe(0);
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
    // Like tones that only meet at a corner, or lie apart, are not side by side.
    expect(sameTone(j, row([1, 500], [0, 500]), row([3, 400], [1, 600]))).toBe(100);
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
    buildRow(j, l, neighbours, mulberry32(1), 20, only);
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
  it('takes a whole piece under the shortest, in any place, and cuts none so short', () => {
    // A joint at 60 keeps one from 50, so the short piece must come last.
    const beside = [row([0, 60], [1, 940])];
    const whole = build(job([950, 50]), beside)!;
    expect([whole.cost, jointsOf(whole.row)]).toEqual([0, [950]]);
    expect(build(job([950, 60]), beside)).toBeUndefined();
    // At just the shortest a cut is made: 900 and 100 of 150, whose other 50 are lost; a joint at 150 is in the way.
    const cut = build(job([900, 150]), [row([0, 150], [1, 850])])!;
    expect([cut.cost, jointsOf(cut.row)]).toEqual([50, [900]]);
    // In the middle of three, where 50 is the only piece that is drawn.
    expect(buildRow(job([50, 475, 475]), laid(job([50, 475, 475])), [], first(), 1)).toEqual({
      row: row([0, 50], [1, 475], [2, 475]),
      cost: 0,
    });
  });
  it('cuts back until no joint of any neighbour is in the way, to just the shortest at least', () => {
    // 750 would end 50 short of the joint at 800; 700 ends 50 past that at 650; 550 is legal. The rest is 450 of the other:
    // both offcuts are kept, for two cuts of 3.
    const twice = build(job([750, 750]), [row([0, 650], [1, 350]), row([0, 800], [1, 200])])!;
    expect([twice.cost, twice.row.map((p) => p.length)]).toEqual([6, [550, 450]]);
    // 250 ends 50 past 200 and is cut to 100, for 3; 900 of 920 follow, and 20 are lost.
    const short = job([250, 920]);
    const beside = (joint: number) => [row([0, joint], [1, 1000 - joint])];
    const drawn = (joint: number) => buildRow(short, laid(short), beside(joint), first(), 1);
    expect(drawn(200)).toEqual({ row: row([0, 100], [1, 900]), cost: 23 });
    // Cut to 99 it would be too short.
    expect(drawn(199)).toBeUndefined();
  });
  it('of those that end a row takes the two nearest, and two of those that leave an offcut, by a draw', () => {
    // Beside one tone all along, 20: the nearest lose 50, 60 and 102 more, those from 1200 a cut of 3; only 1500 is of the
    // other tone. The draw passes over none, one or two of the long ones.
    const j = job([1050, 1060, 1102, 1200, 1300, 1400, 1500], { tones: [0, 0, 0, 0, 0, 0, 1] });
    const at = (draw: number) => {
      const built = buildRow(j, laid(j), [row([0, 1000])], script(draw, ...zeros(8)), 1)!;
      return [built.row[0]!.stock, built.cost];
    };
    expect([0, 0.66, 0.67].map(at)).toEqual([
      [3, 23],
      [4, 23],
      [6, 3],
    ]);
    // Of the two nearest the second, where its tone saves more than its excess costs.
    const near = job([1050, 1060], { tones: [0, 1] });
    expect(buildRow(near, laid(near), [row([0, 1000])], first(), 1)!.cost).toBe(60);
    // Of two alike the first.
    const alike = job([1000, 1000]);
    expect(buildRow(alike, laid(alike), [], first(), 1)!.row).toEqual(row([0, 1000]));
  });
  it('counts the tone of every piece: the first of two, and the middle ones', () => {
    const pair = job([600, 400], { tones: [0, 1] });
    expect(build(pair, [row([0, 1000])])!.cost).toBe(12);
    const untoned = job([600, 400]);
    expect(build(untoned, [row([0, 1000])])!.cost).toBe(0);
    // Beside 800 of tone 0: 340 of that tone and two of 330 of another cost 6.8. The whole piece of 1000 costs 16, and 330
    // with 670 of it 3 for a cut and 9.4. It is drawn first (0.8 of four), but a middle piece must leave something to fill.
    const j = job([340, 330, 330, 1000, 1000], { tones: [0, 1, 1, 0, 2], stagger: 0 });
    const built = buildRow(
      j,
      laid(j, { 4: [1000, 1] }),
      [row([0, 800], [4, 200])],
      first(0, 0, 0, 0, 0.8, 0.5, 0.8, 0.8, 0.8, 0.8, 0.8, 0.8),
      1,
    )!;
    expect(built.row.map((p) => p.stock)).toEqual([0, 1, 2]);
    expect(built.cost).toBeCloseTo(6.8, 9);
  });
  it('takes for the middle what costs least for its length, the first drawn of equals', () => {
    // Beside 150 of tone 0: 100 of it costs 2, a fiftieth of its length; 400 costs 3, less than a hundredth.
    const j = job([400, 100, 300, 300], { tones: [0, 0, -1, 1], stagger: 0 });
    const beside = [row([0, 150], [2, 850])];
    const built = buildRow(j, laid(j), beside, first(0, 0, 0.75), 1)!;
    expect([built.row.map((p) => p.stock), built.cost]).toEqual([[0, 2, 3], 3]);
    // 300 and 310 cost nothing either of them; with 310 the row would lose 10.
    const equal = job([300, 310, 350, 350]);
    const drawn = first(0, 0, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25, 0.25);
    expect(buildRow(equal, laid(equal), [], drawn, 1)!.cost).toBe(0);
  });
  it('draws one number for an end and eight for a middle, and none once nothing is lost', () => {
    const drawn = (lengths: readonly number[], tries: number, count: number) => {
      const random = script(...zeros(count));
      buildRow(job(lengths), laid(job(lengths)), [], random, tries);
      return random.left.length;
    };
    expect([drawn([1000], 2, 9), drawn([1050], 2, 18), drawn([1050], 1, 9)]).toEqual([0, 0, 0]);
    // One piece does not reach; the first pair does, and no other is looked at: 1 + 1 + 8.
    expect(drawn([500, 500, 500], 2, 10)).toBe(0);
  });
  it('is none where nothing is left, or nothing legal reaches', () => {
    const j = job([600]);
    expect(build(j, [], undefined, laid(j, { 0: [600, 1] }))).toBeUndefined();
    expect(build(job([600, 300]))).toBeUndefined();
    // No piece is laid twice in a row.
    expect(build(job([500]))).toBeUndefined();
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
    // The same in true nanometres, which have a large common measure.
    expect(wasteBound(job([520e6, 520e6], { length: 1000e6, kerf: 3e6 }))).toBe(3e6);
    expect(wasteBound(job([501, 501, 501, 501, 501, 501], { rows: 3, kerf: 3 }))).toBe(5);
  });
  it('uses a piece once: two of 350 and one of 400 overshoot by 100, not by 50', () => {
    expect(wasteBound(job([350, 400, 350], { kerf: 1000 }))).toBe(100);
    expect(wasteBound(job([350, 350, 350], { kerf: 1000 }))).toBe(50);
  });
  it('is nothing where there is too much to calculate', () => {
    // Lengths without a common measure, and one of them long: two hundred million steps, or eighty.
    const at = (long: number) => wasteBound(job([1001, long], { kerf: 1e9 }));
    expect([at(100_000_001), at(40_000_001)]).toEqual([0, 1]);
  });
});

describe('what the search is made of', () => {
  it('one price: waste, a fiftieth of like tones, and a thousandth of the stagger off it, at most of the length', () => {
    const at = (worstStagger: number) => price(job([]), { rows: [], waste: 50, sameTone: 300, worstStagger });
    expect([at(200), at(Infinity)]).toEqual([55.8, 55]);
  });
  it('fills a row with its joints clear of the rows before and after it', () => {
    const joint500 = row([2, 500], [3, 500]);
    const at = (stagger: number, rows: readonly (Row | undefined)[], r: number) =>
      fill(job([600, 400, 500, 500], { stagger }), rows, [r], mulberry32(1))?.[r]?.length;
    expect([at(100, [undefined, joint500], 0), at(101, [undefined, joint500], 0)]).toEqual([2, undefined]);
    expect([at(100, [joint500, undefined], 1), at(101, [joint500, undefined], 1)]).toEqual([2, undefined]);
  });
  it('fills rows anew from all that the others leave, in the order given', () => {
    // The row taken out gives back its piece of 1000; the other keeps the two halves.
    const j = job([1000, 500, 500], { rows: 2 });
    const full = [row([0, 1000]), row([1, 500], [2, 500])];
    expect(fill(j, full, [0], first())).toEqual(full);
    expect(fill(j, full, [1, 0], first())!.map((r) => r.length)).toEqual([2, 1]);
  });
  it('a beginning by chance, or striped in the two or three tones there is most of', () => {
    // Tones weigh nothing here, so by chance the pieces come as they lie. There is most without a tone, which is none to take turns.
    const tones = [0, 1, 1, 1, 2, 2, -1, -1, -1, -1];
    const j = job(
      tones.map(() => 1000),
      { tones, rows: 3, toneWeight: 0 },
    );
    const at = (draw: number) => begin(j, first(draw))!.map((r) => tones[r[0]!.stock]);
    expect([0.33, 0.34, 0.66, 0.67].map(at)).toEqual([
      [0, 1, 1],
      [1, 2, 1],
      [1, 2, 1],
      [1, 2, 0],
    ]);
  });
  it('a tone that fills no row gives way to any other; pieces that fill none make no beginning', () => {
    const tones = [0, 0, 1, 2];
    const j = job([1000, 1000, 900, 1000], { tones, rows: 3, toneWeight: 0 });
    // Alternately 0, 2, 1; but of 1 there are 900, too little, and what reaches is of 0.
    expect(begin(j, first(0.67))!.map((r) => tones[r[0]!.stock])).toEqual([0, 2, 0]);
    expect(begin(job([600, 300]), first())).toBeUndefined();
  });
  it('one to four rows to lay anew: neighbours, on past the last to the first, or any', () => {
    expect(pickRows(12, script(0.5, 0.95, 0.49))).toEqual([11, 0, 1]);
    expect(pickRows(12, script(0.99, 0.5, 0.5, 0, 0, 0.25, 0.5, 0.99))).toEqual([0, 3, 6, 11]);
    expect(pickRows(2, script(0.99, 0, 0))).toEqual([0, 1]);
    expect(pickRows(2, script(0.24, 0.5, 0))).toEqual([1]);
  });
});

describe('the search', () => {
  const options = (more: object = {}) => ({
    seconds: 0.3,
    random: mulberry32(1),
    bound: 0,
    signal: undefined,
    now: () => performance.now(),
    tell: () => undefined,
    ...more,
  });
  /** The best of a search of so many rounds, each with its draws, the last of them ever after. */
  const played = async (j: Job, ...rounds: readonly (readonly number[])[]) => {
    let looks = 0;
    let left: number[] = [];
    const best = await search(
      j,
      options({
        bound: -1,
        random: () => (left.length > 1 ? left.shift() : left[0]),
        // Looked at once at the start, then as each round begins and as it ends.
        now: () => {
          if (looks++ % 2 === 1) left = [...(rounds[looks / 2 - 1] ?? [])];
          return Math.floor(looks / 2) > rounds.length ? 1e9 : 0;
        },
      }),
    );
    return best!;
  };
  it('stops at once with a layout that cannot be bettered', async () => {
    // One number for the tones, nine for the row; the clock stands still, and there is no more to draw.
    const random = script(...zeros(10));
    const best = await search(job([1000]), options({ random, now: () => 0 }));
    expect([best!.waste, random.left.length]).toEqual([0, 0]);
  });
  it('looks on while like tones touch', async () => {
    const j = job([1000, 1000, 1000, 1000], { tones: [0, 0, 1, 1], rows: 4 });
    expect((await search(j, options()))!.sameTone).toBe(0);
    // Of one tone alone nothing is ever proven, though nothing is wasted: the clock must reach the end.
    let clock = 0;
    const one = job([1000, 1000], { tones: [0, 0], rows: 2 });
    const best = await search(one, options({ now: () => (clock += 10) }));
    expect([best!.waste, best!.sameTone, clock >= 300]).toEqual([0, 1000, true]);
  });
  it('finds none where none reaches, and none in no time', async () => {
    expect(await search(job([600, 300]), options())).toBeUndefined();
    expect(await search(job([1000]), options({ seconds: 0, random: script() }))).toBeUndefined();
  });
  it('takes turns with the event loop every 40 ms, and tells the share of time that is gone', async () => {
    // The clock moves on by ten at each look. Looks: at 10 whether to go on, at 20 whether to pause, 30, 40: pause; 50, when
    // that is over; 60 to tell; 70, 80, 90, 100: pause; 110; 120 to tell; at 130 the time is up.
    let clock = 490;
    const reports: unknown[] = [];
    const none = await search(
      job([600, 300]),
      options({
        seconds: 0.13,
        now: () => (clock += 10),
        tell: (...all: readonly unknown[]) => reports.push(all),
      }),
    );
    expect([none, clock]).toEqual([undefined, 500 + 130]);
    expect(reports).toEqual([
      [undefined, expect.closeTo(60 / 130, 9)],
      [undefined, expect.closeTo(120 / 130, 9)],
    ]);
  });

  describe('of two rows that waste nothing by draws of zero, 50 or 60 by draws of one', () => {
    // The small pieces fill two rows by threes, which only a draw of the smallest finds. Of the long ones 1050, 1060 and 1070
    // one is a row and loses what it is over; beside a small one it would lose 350 or more.
    const j = job([300, 350, 350, 300, 350, 350, 1050, 1060, 1070], { rows: 2, shortest: 500, stagger: 0 });
    const poor = [0, 0.99];
    const good = [0];
    const anew = (r: 0 | 1, how: 0 | 0.99) => [0, r / 2, 0, how];
    const wasteAfter = async (...rounds: readonly (readonly number[])[]) =>
      (await played(j, ...rounds)).waste;

    it('keeps a better layout, and goes on from it when a worse one turns up', async () => {
      const steps = [poor, anew(0, 0), anew(0, 0.99)];
      expect(await wasteAfter(poor)).toBe(110);
      expect(await wasteAfter(...steps)).toBe(60);
      expect(await wasteAfter(...steps, anew(1, 0))).toBe(0);
    });
    it('goes on from another as good, and keeps the one found first', async () => {
      // Both rows laid anew, the second first: now that loses 50 and the first 60. The first then comes down to nothing.
      const turned = [poor, [0.25, 0.5, 0, 0.99]];
      expect((await played(j, ...turned)).rows.map((r) => r[0]!.stock)).toEqual([6, 7]);
      expect(await wasteAfter(...turned, anew(0, 0))).toBe(50);
    });
    it('begins afresh after forty rounds a row with none better, not before', async () => {
      // Draws of zero throughout lay both rows of a beginning, and the first row alone of one that goes on.
      const stuck = Array.from({ length: 80 }, () => anew(0, 0.99));
      expect(await wasteAfter(poor, ...stuck, good)).toBe(0);
      expect(await wasteAfter(poor, ...stuck.slice(1), good)).toBe(60);
    });
    it('counts those rounds from the last better one', async () => {
      const stuck = Array.from({ length: 80 }, () => anew(0, 0.99));
      expect(await wasteAfter(poor, ...stuck.slice(1), anew(1, 0), ...stuck, good)).toBe(0);
    });
    it('keeps the best through a fresh beginning that is worse', async () => {
      const stuck = Array.from({ length: 80 }, () => anew(0, 0));
      expect(await wasteAfter(good, ...stuck, poor, anew(0, 0.99))).toBe(0);
    });
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
    // A part of no length is none.
    expect(jobOf(given('600 mm, 500 mm', { shortest: 0 })).shortest).toBe(1);
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
    expect(piecesField.format(piecesField.read([{ length: '600 mm', count: 3 }, { length: '400 mm' }]))).toBe(
      '4 pieces, 2200 mm in all',
    );
    expect([['600 mm'], '600 mm', [{ length: '1 m' }]].map((v) => piecesField.accepts(v))).toEqual([
      true,
      true,
      true,
    ]);
    expect([5, true].map((v) => piecesField.accepts(v))).toEqual([false, false]);
    expect(() => piecesField.read([null])).toThrow(/got null, takes a length/);
  });
  it('knows a piece without a tone from one whose tone is called undefined', () => {
    const { stocks } = jobOf(given([{ length: '1 m', tone: 'undefined' }, { length: '1 m' }]));
    expect(stocks.map((s) => s.tone)).toEqual([0, -1]);
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
    expect(cutsOf(j, [row([2, 347])])[0]).toMatchObject({ from: 450e-9, saw: 1, left: 100e-9, fate: 'kept' });
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
