import { describe, expect, it } from 'vitest';
import { cuttingPlan as wholePlan } from '../../../src/recipes/stock/cutting-plan.js';
import { objectiveOutput } from '../../../src/recipes/stock/cutting/objective.js';
import { scaled } from '../../../src/recipes/stock/cutting/scale.js';
import type { Quantity } from '../../../src/units/quantity.js';
import { InputError } from '../../../src/units/input-error.js';

/** These plans are found and proved at once: a search that goes on has gone wrong. */
const cuttingPlan: typeof wholePlan = Object.assign(
  (given: Parameters<typeof wholePlan>[0], options?: Parameters<typeof wholePlan>[1]) =>
    wholePlan({ timeLimit: '2 s', ...given }, options),
  wholePlan,
);

async function refusal(given: unknown): Promise<InputError> {
  try {
    await cuttingPlan(given as never);
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return error as InputError;
  }
  throw new Error('was not refused');
}
const message = (r: { cautions: readonly { text: string }[] }, text: string): boolean =>
  r.cautions.some((c) => c.text.includes(text));
/** What is written in a picture: its heading line by line put together, and the words in it. */
const words = (chart: unknown): string[] => {
  const { title } = chart as { title: { text: string[]; subtitle: string[] } };
  const inside = [...JSON.stringify(chart).matchAll(/"(?:text|label)":"([^"]*)"/g)].map(
    (m) => m[1] as string,
  );
  return [title.text, title.subtitle].map((t) => [t].flat().join(' ')).concat(inside);
};

describe('a plan by hand', () => {
  // A board of 2000 docked 10 at each end holds 1980: 900 + 3 + 900 + 3 = 1806, then 174 - 3 of a last cut beyond 170.
  const given = {
    parts: [
      { name: 'rail', length: '900 mm', count: 2 },
      { name: 'peg', length: '140 mm', count: 1 },
    ],
    stock: [{ name: 'lath', length: '2 m', cost: '£5', count: 'as needed' }],
    kerf: '3 mm',
    trimEachEnd: '10 mm',
  };

  it('lies part by part from the docked end, a kerf between them', async () => {
    const r = await cuttingPlan(given);
    const [board] = r.plan;
    expect(board?.pieces.map((p) => [p.name, p.length.in('mm'), p.from.in('mm')])).toEqual([
      ['rail', 900, 10],
      ['rail', 900, 913],
      ['peg', 140, 1816],
    ]);
    // 2000 - 10 - (1816 + 140 + 3) = 31 mm left past the last cut.
    expect(board?.offcut.in('mm')).toBeCloseTo(31, 9);
    expect([board?.stock, board?.board, board?.section, board?.keep]).toEqual(['lath', 1, undefined, false]);
    expect(r.partsLength.in('mm')).toBeCloseTo(1940, 9);
    expect(r.wasteLength.in('mm')).toBeCloseTo(60, 9);
    expect(r.waste.value).toBeCloseTo(60 / 2000, 12);
    expect([r.kept, r.missing, r.boardsShort]).toEqual([undefined, undefined, undefined]);
    expect(r.totalCost?.value).toBe(5);
    expect(r.optimal).toBe(true);
    expect(r.workings.map((w) => w.text).join()).toMatch(/Made least: the cost of stock/);
  });

  it('keeps an offcut as long as was asked for, and no shorter one', async () => {
    const at = (keepOffcut: string) => cuttingPlan({ ...given, keepOffcut });
    const [kept, short] = [await at('31 mm'), await at('31.1 mm')];
    expect([kept.plan[0]?.keep, short.plan[0]?.keep]).toEqual([true, false]);
    expect(kept.kept?.in('mm')).toBeCloseTo(31, 9);
    expect(kept.wasteLength.in('mm')).toBeCloseTo(29, 9);
    expect(kept.waste.value).toBeCloseTo(29 / 2000, 12);
    expect(short.kept?.value).toBe(0);
  });

  it('lays long parts first, long stock before short, like boards together, and gives each name its count', async () => {
    const r = await cuttingPlan({
      parts: [
        { name: 'x', length: '600 mm', count: 2 },
        { name: 'y', length: '600 mm', count: 1 },
        { length: '300 mm', count: 1 },
      ],
      stock: [
        { length: '600 mm', count: 1 },
        { length: '1500 mm', count: 1 },
      ],
      kerf: '0 mm',
    });
    expect(r.plan.map((b) => [b.stock, b.pieces.map((p) => p.name)])).toEqual([
      ['1500 mm', ['x', 'x', '300 mm']],
      ['600 mm', ['y']],
    ]);
    expect(r.achieved.toString()).toMatch(/2100 mm|2\.1 m/);
  });

  it('is proved by lengths alone, by long parts, or by a search', async () => {
    const three = await cuttingPlan({
      parts: [{ length: '600 mm', count: 3 }],
      stock: [{ length: '1 m', count: 'as needed' }],
    });
    expect([three.boardsUsed, three.optimal]).toEqual([3, true]);
    expect(three.workings.map((w) => w.text).join()).toMatch(/the long parts/);
    const full = await cuttingPlan({ parts: [{ length: '500 mm', count: 4 }], stock: [{ length: '1 m', count: 'as needed' }], kerf: '0 mm' }); // prettier-ignore
    expect([full.boardsUsed, full.optimal, full.lowerBound]).toEqual([2, true, 2]);
    expect(full.waste.value).toBeCloseTo(0, 12);
  });

  it('tells whose parts are missing, each name by itself', async () => {
    const r = await cuttingPlan({
      parts: [{ name: 'a', length: '900 mm', count: 2 }, { name: 'b', length: '900 mm', count: 3 }], // prettier-ignore
      stock: [{ length: '1 m', count: 1 }],
    });
    expect(r.missing?.map((m) => [m.name, m.length.in('mm'), m.count])).toEqual([['a', 900, 1], ['b', 900, 3]]); // prettier-ignore
    expect([r.boardsShort, r.boardsUsed, r.optimal]).toEqual([4, 1, false]);
    expect(r.lowerBound).toBeLessThanOrEqual(1);
    expect(message(r, 'every part: 4 missing; 4 more of the longest boards')).toBe(true);
    expect(message(r, 'the search ended')).toBe(false);
  });
});

describe('a plan of no cost, in no hurry', () => {
  it('has no total cost, no section, and no number of sections in its progress', async () => {
    const seen: string[] = [];
    const r = await cuttingPlan({ parts: [{ length: '400 mm' }], stock: [{ length: '1 m', count: 'as needed' }] }, { onProgress: (p) => void seen.push(p.message) }); // prettier-ignore
    expect(r.totalCost).toBeUndefined();
    expect(seen.length).toBeGreaterThan(0);
    for (const text of seen) expect(text).toMatch(/^(plan|bound|linear|integer)/);
  });

  it('says so when it was stopped before it was proved', async () => {
    // Only two pieces of 800 and 700 mm fit a board: ten take five boards, but 7.3 m on 2 m could be four by length.
    const parts = [{ length: '800 mm', count: 3 }, { length: '700 mm', count: 7 }]; // prettier-ignore
    const given = { parts, stock: [{ length: '2 m', count: 'as needed' }], kerf: '0 mm' };
    const stopped = await cuttingPlan(given, { signal: AbortSignal.abort() });
    expect([stopped.boardsUsed, stopped.lowerBound, stopped.optimal]).toEqual([5, 4, false]);
    expect(message(stopped, 'the search ended before it could prove')).toBe(true);
    const whole = await cuttingPlan(given);
    expect([whole.boardsUsed, whole.lowerBound, whole.optimal]).toEqual([5, 5, true]);
    expect(message(whole, 'the search ended before it could prove')).toBe(false);
  });

  it('is proved where the boards, once offcuts are gathered, are as few as the bound', async () => {
    // 4 + 4, 3 + 3 + 3 and 3 on 10 by plain rules; gathered they are two boards of 4 + 3 + 3, and 20 on 10 takes two.
    const parts = [{ length: '400 mm', count: 2 }, { length: '300 mm', count: 4 }]; // prettier-ignore
    const r = await cuttingPlan({ parts, stock: [{ length: '1 m', count: 'as needed' }], kerf: '0 mm' }, { signal: AbortSignal.abort() }); // prettier-ignore
    expect([r.boardsUsed, r.lowerBound, r.optimal]).toEqual([2, 2, true]);
    expect(r.workings.map((w) => w.text).join()).not.toMatch(/linear programme/);
  });
});

describe('what is made least', () => {
  const parts = [{ length: '900 mm', count: 2 }];
  const kindAndCost = async (stock: object[], more: object = {}) => {
    const r = await cuttingPlan({ parts, stock, ...more } as never);
    return [/Made least: the (\w+)/.exec(r.workings.map((w) => w.text).join())?.[1], r.achieved] as const;
  };
  it('is as asked; else cost where there are costs, length where lengths differ, else boards', async () => {
    expect((await kindAndCost([{ length: '2 m' }]))[0]).toBe('number');
    expect((await kindAndCost([{ length: '2 m' }, { length: '2 m' }]))[0]).toBe('number');
    expect((await kindAndCost([{ length: '2 m' }, { length: '1 m' }]))[0]).toBe('length');
    expect((await kindAndCost([{ length: '2 m', cost: 0 }]))[0]).toBe('number');
    expect((await kindAndCost([{ length: '2 m', cost: 1 }, { length: '1 m' }]))[0]).toBe('cost');
    expect((await kindAndCost([{ length: '2 m', cost: 1 }, { length: '1 m' }], { aim: 'boards' }))[0]).toBe(
      'number',
    );
  });

  it('is shown as boards, as metres with feet beside them, or as money', async () => {
    const shown = async (stock: object[]) => (await cuttingPlan({ parts, stock } as never)).toText();
    expect(await shown([{ length: '2 m' }])).toMatch(/achieved\s+1 board\n/);
    expect(await shown([{ length: '1 m', count: 'as needed' }])).toMatch(/achieved\s+2 boards\n/);
    expect(await shown([{ length: '2 m' }, { length: '3 m' }])).toMatch(/achieved\s+2 m .*(in|ft)/);
    expect(await shown([{ length: '2 m', cost: '£7.50' }])).toMatch(/achieved\s+£7\.50/);
    expect(await shown([{ length: '2 m', cost: 7.5 }])).toMatch(/achieved\s+7\.50/);
  });

  it('takes free boards before dear ones, and calculates a dear plan right', async () => {
    const r = await cuttingPlan({
      parts: [{ length: '900 mm', count: 4 }],
      stock: [{ length: '1 m', cost: 0, count: 2 }, { length: '2 m', cost: 9.25, count: 'as needed' }], // prettier-ignore
    });
    expect(r.totalCost?.value).toBe(9.25);
    expect(r.boardsUsed).toBe(3);
  });
});

describe('sections', () => {
  const given = {
    parts: [{ name: 'leg', length: '860 mm', width: '70 mm', thickness: '34 mm' }, { name: 'any', length: '100 mm' }], // prettier-ignore
    stock: [{ name: 'batten', length: '900 mm', width: '34 mm', thickness: '70 mm', count: 'as needed' }, { name: 'lath', length: '120 mm', width: '45 mm', count: 'as needed' }], // prettier-ignore
  };
  it('go by their sides in either order; parts without one take any stock', async () => {
    const r = await cuttingPlan({ ...given, aim: 'length' });
    expect(r.plan.map((b) => [b.stock, b.section, b.pieces[0]?.name])).toEqual([['batten', '70 x 34 mm', 'leg'], ['lath', undefined, 'any']]); // prettier-ignore
    const seen: string[] = [];
    await cuttingPlan({ ...given, aim: 'length' }, { onProgress: (p) => void seen.push(p.message) });
    expect(seen.some((s) => s.startsWith('section 1 of 2: '))).toBe(true);
    expect(seen.some((s) => s.startsWith('section 2 of 2: '))).toBe(true);
    expect(r.workings.map((w) => w.text).join()).toMatch(/70 x 34 mm: plan by/);
  });

  it('that the stock has not are refused with those it has', async () => {
    const r = await refusal({ parts: [{ length: '1 m', width: '70 mm' }], stock: [{ length: '2 m', width: '45 mm', count: 'as needed' }, { length: '2 m', width: '20 mm', thickness: '45 mm', count: 'as needed' }] }); // prettier-ignore
    expect(r.message).toMatch(/parts\[1\]: got the section 70 mm, takes one that the stock has: 45 mm, 45 x 20 mm/); // prettier-ignore
  });

  it('cannot share counted boards, one or several', async () => {
    const parts = [{ length: '1 m', width: '70 mm' }, { length: '1 m', width: '45 mm' }]; // prettier-ignore
    expect((await refusal({ parts, stock: [{ length: '2 m', count: 1 }] })).message).toMatch(/stock\[1\]\.width: missing.*since 1 board cannot be shared among 2 sections/); // prettier-ignore
    expect((await refusal({ parts, stock: [{ length: '2 m', count: 3 }] })).message).toMatch(/since 3 boards cannot/); // prettier-ignore
    expect((await cuttingPlan({ parts, stock: [{ length: '2 m', count: 'as needed' }] })).boardsUsed).toBe(2);
    expect((await cuttingPlan({ parts, stock: [{ length: '2 m', width: '70 mm', count: 1 }, { length: '2 m', width: '45 mm', count: 1 }] })).boardsUsed).toBe(2); // prettier-ignore
    // One section of parts has no one to share with.
    expect((await cuttingPlan({ parts: parts.slice(1), stock: [{ length: '2 m', count: 3 }] })).boardsUsed).toBe(1); // prettier-ignore
  });
});

describe('what a plan is refused for', () => {
  const fields = async (given: object) => (await refusal(given)).issues.map((t) => t.field);
  it('the least cost where no board has one', async () => {
    expect((await refusal({ parts: [{ length: '1 m' }], stock: [{ length: '2 m', count: 'as needed' }], aim: 'cost' })).message).toMatch(/stock: got no cost, takes a cost/); // prettier-ignore
    const priced = await cuttingPlan({ parts: [{ length: '1 m' }], stock: [{ length: '2 m', cost: 2, count: 'as needed' }, { length: '3 m', count: 'as needed' }], aim: 'cost' }); // prettier-ignore
    expect(priced.totalCost?.value).toBe(0);
  });

  it('those parts alone whose section is not there, or that are too long for theirs', async () => {
    const parts = [{ length: '1 m', width: '70 mm' }, { length: '1 m', width: '45 mm' }, { length: '3 m', width: '45 mm' }]; // prettier-ignore
    expect(await fields({ parts, stock: [{ length: '2 m', width: '45 mm', count: 'as needed' }] })).toEqual(['parts[1]', 'parts[3].length']); // prettier-ignore
    expect(await fields({ parts: [{ length: '3 m' }, { length: '1 m' }], stock: [{ length: '2 m', count: 'as needed' }] })).toEqual(['parts[1].length']); // prettier-ignore
  });
});

describe('limits of a plan', () => {
  it('a part may be as long as a board leaves, and no longer', async () => {
    const given = {
      parts: [{ length: '1980 mm' }],
      stock: [{ length: '2 m', count: 'as needed' }],
      trimEachEnd: '10 mm',
    };
    expect((await cuttingPlan(given)).boardsUsed).toBe(1);
    expect((await refusal({ ...given, parts: [{ length: '1980.1 mm' }] })).message).toMatch(/parts\[1\]\.length: got 1980\.1 mm, takes at most 1980 mm: the longest that the stock leaves once both ends are docked/); // prettier-ignore
    expect((await refusal({ ...given, trimEachEnd: '0 mm', parts: [{ length: '2.1 m' }] })).message).toMatch(/takes at most 2000 mm: the longest that the stock leaves$/); // prettier-ignore
    expect((await refusal({ ...given, trimEachEnd: '2 m' })).message).toMatch(/takes at most 0 mm/);
  });

  it('a hundred thousand parts are taken, one more is refused', async () => {
    const stock = [{ length: '1 km' }];
    expect((await cuttingPlan({ parts: [{ length: '5 mm', count: 100_000 }], stock, kerf: '3 mm' })).boardsUsed).toBe(1); // prettier-ignore
    expect((await refusal({ parts: [{ length: '5 mm', count: 100_000 }, { length: '5 mm' }], stock })).message).toMatch(/parts: got 100001 parts in all/); // prettier-ignore
    expect((await refusal({ parts: [{ length: '0.09 mm' }], stock })).message).toMatch(/parts\[1\]\.length/);
  });

  it('a counted stock must not be exceeded, and no board is of nothing', async () => {
    const r = await cuttingPlan({ parts: [{ length: '100 mm' }], stock: [{ length: '1 m', count: 'as needed' }, { length: '5 mm', count: 'as needed' }], aim: 'boards' }); // prettier-ignore
    expect(r.plan.map((b) => b.stockLength.in('m'))).toEqual([1]);
    expect(r.optimal).toBe(true);
  });

  it('short parts below 150 mm come with a warning', async () => {
    const at = async (length: string) => message(await cuttingPlan({ parts: [{ length }], stock: [{ length: '1 m', count: 'as needed' }] }), 'shorter than about 150 mm'); // prettier-ignore
    expect([await at('150 mm'), await at('149 mm')]).toEqual([false, true]);
  });
});

describe('the problem in whole numbers', () => {
  const metres = { parts: [{ length: 0.5, count: 3 }, { length: 0.25, count: 2 }, { length: 0.5, count: 1 }], kerf: 0, trimEachEnd: 0 }; // prettier-ignore
  it('by hand: 500 and 250 mm on 2 m are 2 and 1 on 8', () => {
    const got = scaled({ ...metres, stock: [{ length: 2, count: Infinity, cost: 0 }], aim: 'boards' });
    expect(got.problem).toEqual({ sizes: [2, 1], demand: [4, 2], stock: [{ capacity: 8, cost: 1, count: Infinity }], step: 1 }); // prettier-ignore
    expect([got.partsOf, got.stockOf, got.unit]).toEqual([[[0, 2], [1]], [0], 1]); // prettier-ignore
  });

  it('each part takes its kerf with it, each board has room for one more, less its docked ends', () => {
    const got = scaled({ ...metres, kerf: 0.003, trimEachEnd: 0.01, stock: [{ length: 2, count: 9, cost: 0 }], aim: 'length' }); // prettier-ignore
    expect(got.problem.sizes).toEqual([503, 253]);
    // 2000 - 20 + 3; nine of them may not do, so a dear one stands in.
    expect(got.problem.stock.map((k) => [k.capacity, k.count])).toEqual([[1983, 9], [1983, Infinity]]); // prettier-ignore
    expect(got.problem.stock[1]!.cost).toBe(1000);
    expect(got.stockOf).toEqual([0, undefined]);
    expect(got.unit).toBe(2);
  });

  it('leaves out boards too short for any part, and knows when there is plenty for every size', () => {
    const stock = [{ length: 0.2, count: 5, cost: 1 }, { length: 0.3, count: Infinity, cost: 2 }, { length: 2, count: 1, cost: 3 }]; // prettier-ignore
    const got = scaled({ ...metres, stock, aim: 'cost' });
    expect(got.stockOf).toEqual([1, 2, undefined]);
    expect(got.problem.stock.map((k) => k.cost)).toEqual([2 / 3, 1, 1000]);
    expect(got.problem.step).toBeCloseTo(1 / 3, 12);
    expect(got.unit).toBeCloseTo(3, 12);
    const plenty = scaled({ ...metres, stock: [{ length: 0.5, count: Infinity, cost: 0 }, { length: 0.25, count: 2, cost: 5 }], aim: 'cost' }); // prettier-ignore
    expect(plenty.stockOf).toEqual([0, 1]);
    // What costs nothing counts as a hundredth of a cent: 1 beside 50000.
    expect(plenty.problem.stock[0]!.cost).toBeCloseTo(1 / 50_000, 15);
    expect(plenty.problem.step).toBeCloseTo(1 / 50_000, 15);
  });
});

describe('the problem in whole numbers, further', () => {
  const plain = { kerf: 0, trimEachEnd: 0 };
  it('has its sizes falling whatever the order they came in', () => {
    const parts = [{ length: 0.2, count: 1 }, { length: 0.4, count: 2 }, { length: 0.1, count: 3 }, { length: 0.3, count: 4 }]; // prettier-ignore
    const got = scaled({ ...plain, parts, stock: [{ length: 1, count: Infinity, cost: 0 }], aim: 'boards' });
    expect([got.problem.sizes, got.problem.demand, got.partsOf]).toEqual([[4, 3, 2, 1], [2, 4, 1, 3], [[1], [3], [0], [2]]]); // prettier-ignore
  });

  it('measures all with their kerfs, and leaves out a board a hair too short', () => {
    // With a kerf of 2: 8 and 18 take 10 and 20, a board of 38 holds 40.
    const parts = [{ length: 0.018, count: 1 }, { length: 0.008, count: 1 }]; // prettier-ignore
    const stock = [{ length: 0.038, count: Infinity, cost: 0 }, { length: 0.0079, count: Infinity, cost: 0 }]; // prettier-ignore
    const got = scaled({ kerf: 0.002, trimEachEnd: 0, parts, stock, aim: 'boards' });
    expect(got.problem.sizes).toEqual([2, 1]);
    expect(got.problem.stock).toEqual([{ capacity: 4, cost: 1, count: Infinity }]);
    expect(got.stockOf).toEqual([0]);
  });

  it('for the fewest boards every board costs one, whatever its price', () => {
    const stock = [{ length: 1, count: Infinity, cost: 3 }, { length: 2, count: Infinity, cost: 5 }]; // prettier-ignore
    const got = scaled({ ...plain, parts: [{ length: 0.5, count: 1 }], stock, aim: 'boards' });
    expect(got.problem.stock.map((k) => k.cost)).toEqual([1, 1]);
    expect([got.problem.step, got.unit]).toEqual([1, 1]);
  });
});

describe('what a plan takes', () => {
  const { wrap } = objectiveOutput('what the plan takes');
  it('is a number of boards, or a length or money, money alone with its currency', () => {
    expect(wrap({ kind: 'count', value: 3 }, '£')).toBe(3);
    expect(wrap({ kind: 'money', value: 3 }, '£')).toMatchObject({ kind: 'money', value: 3, currency: '£' });
    const length = wrap({ kind: 'length', value: 3 }, '£') as Quantity;
    expect([length.kind, length.value, length.currency]).toEqual(['length', 3, undefined]);
  });
});

describe('the picture of a plan', () => {
  it('draws boards cut alike once, with their numbers, parts by name and length', async () => {
    const r = await cuttingPlan({
      parts: [{ name: 'long rail', length: '900 mm', count: 6 }, { name: 'b', length: '60 mm', count: 1 }], // prettier-ignore
      stock: [{ length: '2 m', count: 'as needed' }],
      keepOffcut: '150 mm',
      trimEachEnd: '5 mm',
    });
    const texts = words(r.chart);
    expect(texts).toContain('3 boards and their cuts, lengths in mm');
    expect(texts).toContain('1–2 (2 alike)');
    expect(texts).toContain('3');
    expect(texts).toContain('long rail 900');
    // 60 mm of 2 m leave room for the length alone: 60/2000 of 580 px.
    expect(texts).toContain('60');
    expect(texts).not.toContain('b 60');
    // 2000 - 10 - 2 x 903 is kept, 63 less is not.
    expect(texts).toContain('keep 184');
    expect(texts).not.toContain('keep 121');
    expect(texts).toContain('2000');
  });

  it('of one board, of parts without names, and of sections', async () => {
    const r = await cuttingPlan({ parts: [{ length: '900 mm', width: '70 mm' }], stock: [{ length: '2 m', width: '70 mm', count: 'as needed' }] }); // prettier-ignore
    const texts = words(r.chart);
    expect(texts).toContain('1 board and its cuts, lengths in mm');
    expect(texts).toContain('900');
    expect(texts).toContain('2000, 70 mm');
    expect(texts.join()).not.toContain('more ways');
  });

  it('shows forty ways of cutting, and says how many more there are', async () => {
    const at = async (n: number) =>
      words((await cuttingPlan({ parts: Array.from({ length: n }, (_, i) => ({ length: `${600 + i} mm` })), stock: [{ length: '1 m', count: 'as needed' }] })).chart).join(); // prettier-ignore
    expect(await at(40)).not.toContain('more ways of cutting');
    expect(await at(42)).toContain('2 more ways of cutting are in the table');
  });
});

describe('stock without a count', () => {
  it('is one board, and the plan says how many there were', async () => {
    const parts = [{ length: '900 mm', count: 4 }];
    const one = await cuttingPlan({ parts, stock: [{ name: 'salvaged', length: '2 m' }] });
    expect(one.boardsUsed).toBe(1);
    expect(one.missing?.map((m) => m.count)).toEqual([2]);
    expect(one.optimal).toBe(false);
    expect(one.stockUsed.map((s) => [s.stock, s.there, s.used])).toEqual([['salvaged', '1', 1]]);
    const many = await cuttingPlan({ parts, stock: [{ length: '2 m', count: 'as needed' }] });
    expect(many.boardsUsed).toBe(2);
    expect(many.stockUsed.map((s) => [s.stock, s.there, s.used])).toEqual([['2000 mm', 'as needed', 2]]);
  });
});
