import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cuttingPlan } from '../../src/recipes/stock/cutting-plan.js';
import { legal, seeded } from './legal-plan.js';

const mm = (v: number): string => `${v} mm`;
const written = (job: {
  parts: readonly { length: number; count: number }[];
  stock: readonly { length: number; count?: number; cost?: number }[];
  kerf: number;
  trim: number;
}) => ({
  parts: job.parts.map((p) => ({ length: mm(p.length), count: p.count })),
  stock: job.stock.map((s) => ({
    length: mm(s.length),
    count: s.count ?? ('as needed' as const),
    ...(s.cost === undefined ? {} : { cost: s.cost }),
  })),
  kerf: mm(job.kerf),
  trimEachEnd: mm(job.trim),
});

/** The least total by trying every way of putting pieces on boards: subsets of pieces, boards one after another. */
function leastByTrying(
  pieces: readonly number[],
  stock: readonly { length: number; count?: number; cost: number }[],
  kerf: number,
  trim: number,
): number {
  const n = pieces.length;
  const sum = new Array<number>(1 << n).fill(0);
  for (let m = 1; m < 1 << n; m++)
    for (let i = 0; i < n; i++)
      if (m & (1 << i)) sum[m] = (sum[m] as number) + (pieces[i] as number) + (sum[m] === 0 ? 0 : kerf);
  const known = new Map<string, number>();
  const least = (left: number, used: readonly number[]): number => {
    if (left === 0) return 0;
    const key = `${left}|${used.join(',')}`;
    const had = known.get(key);
    if (had !== undefined) return had;
    let best = Infinity;
    const first = left & -left;
    for (let sub = left; sub > 0; sub = (sub - 1) & left) {
      if (!(sub & first)) continue;
      stock.forEach((s, k) => {
        if ((sum[sub] as number) > s.length - 2 * trim || (used[k] as number) >= (s.count ?? Infinity))
          return;
        best = Math.min(
          best,
          s.cost +
            least(
              left & ~sub,
              used.map((u, j) => (j === k && s.count !== undefined ? u + 1 : u)),
            ),
        );
      });
    }
    known.set(key, best);
    return best;
  };
  return least(
    (1 << n) - 1,
    stock.map(() => 0),
  );
}

const part = fc.record({ length: fc.integer({ min: 40, max: 830 }), count: fc.integer({ min: 1, max: 2 }) });
const board = fc.record({
  length: fc.integer({ min: 900, max: 2000 }),
  count: fc.option(fc.integer({ min: 1, max: 3 }), { nil: undefined }),
  cost: fc.integer({ min: 1, max: 40 }),
});

describe('a cutting plan', () => {
  it('is legal and as good as trying every way, by boards, length and cost', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(part, { minLength: 1, maxLength: 4 }),
        fc.array(board, { minLength: 1, maxLength: 3 }),
        fc.constantFrom('boards' as const, 'length' as const, 'cost' as const),
        fc.integer({ min: 0, max: 5 }),
        fc.integer({ min: 0, max: 30 }),
        async (parts, boards, aim, kerf, trim) => {
          // Lengths of stock apart, so that a plan names its board without doubt.
          const stock = boards.map((b, i) => ({
            length: b.length + i * 1101,
            cost: b.cost,
            ...(b.count === undefined ? {} : { count: b.count }),
          }));
          const job = { parts, stock, kerf, trim };
          const r = await cuttingPlan({ ...written(job), aim });
          const pieces = parts.flatMap((p) => new Array<number>(p.count).fill(p.length));
          const weighed = stock.map((s) => ({
            ...s,
            cost: aim === 'boards' ? 1 : aim === 'length' ? s.length : s.cost,
          }));
          const least = leastByTrying(pieces, weighed, kerf, trim);
          const used = legal(job, r.plan, r.missing?.reduce((n, m) => n + m.count, 0) ?? 0);
          if (least === Infinity) {
            expect(r.missing?.length).toBeGreaterThan(0);
            expect(r.optimal).toBe(false);
            return;
          }
          expect(r.missing).toBeUndefined();
          const got = [...used].reduce(
            (n, [length, count]) =>
              n + count * (weighed.find((w) => w.length === length) as { cost: number }).cost,
            0,
          );
          expect(r.optimal).toBe(true);
          expect(got).toBeCloseTo(least, 6);
        },
      ),
      { numRuns: 120 },
    );
  }, 120_000);

  it('never claims what it has not proved: a bound is never above any plan', async () => {
    const u = seeded(5);
    for (let run = 0; run < 6; run++) {
      const parts = Array.from({ length: 12 }, () => ({
        length: 150 + Math.floor(u() * 1500),
        count: 1 + Math.floor(u() * 5),
      }));
      const stock = [{ length: 2400 }, { length: 2900 }, { length: 3300 }];
      const job = { parts, stock, kerf: 3, trim: 10 };
      const quick = await cuttingPlan({ ...written(job), timeLimit: '0.05 s' });
      const long = await cuttingPlan({ ...written(job), timeLimit: '1 s' });
      legal(job, quick.plan);
      legal(job, long.plan);
      const value = (q: unknown): number => (q as { value: number }).value;
      expect(value(quick.lowerBound)).toBeLessThanOrEqual(value(long.achieved) + 1e-9);
      expect(value(long.lowerBound)).toBeLessThanOrEqual(value(long.achieved) + 1e-9);
      if (quick.optimal) expect(value(quick.achieved)).toBeCloseTo(value(long.achieved), 9);
    }
  }, 120_000);

  it('is the same in inches as in millimetres', async () => {
    const parts = [
      [30, 4],
      [21.5, 3],
      [14.25, 5],
      [40.125, 2],
    ] as const;
    const inch = await cuttingPlan({
      parts: parts.map(([l, count]) => ({ length: `${l} in`, count })),
      stock: [{ length: '96 in', count: 'as needed' }],
      kerf: '1/8 in',
    });
    const metric = await cuttingPlan({
      parts: parts.map(([l, count]) => ({ length: `${l * 25.4} mm`, count })),
      stock: [{ length: `${96 * 25.4} mm`, count: 'as needed' }],
      kerf: '3.175 mm',
    });
    expect(inch.boardsUsed).toBe(metric.boardsUsed);
    expect(inch.optimal && metric.optimal).toBe(true);
  });

  it('counts kerfs as a saw does: n pieces need n - 1, and a last one only for an offcut', async () => {
    const cut = (stock: string) =>
      cuttingPlan({
        parts: [{ length: '600 mm', count: 4 }],
        stock: [{ length: stock, count: 'as needed' }],
        kerf: '3 mm',
      });
    expect((await cut('2409 mm')).boardsUsed).toBe(1);
    expect((await cut('2408.9 mm')).boardsUsed).toBe(2);
    const spare = (await cut('2420 mm')).plan[0];
    // Four pieces, four kerfs: 2420 - 2400 - 12.
    expect(spare?.offcut.in('mm')).toBeCloseTo(8, 6);
    // A board that ends inside the last kerf has no offcut.
    expect((await cut('2410 mm')).plan[0]?.offcut.in('mm')).toBe(0);
  });

  it('keeps sections apart, whichever side is named the width', async () => {
    const r = await cuttingPlan({
      parts: [
        { name: 'leg', length: '860 mm', count: 4, width: '70 mm', thickness: '34 mm' },
        { name: 'slat', length: '400 mm', count: 9, width: '45 mm', thickness: '20 mm' },
      ],
      stock: [
        { name: 'batten', length: '1.9 m', width: '34 mm', thickness: '70 mm', count: 'as needed' },
        { name: 'lath', length: '1.5 m', width: '45 mm', thickness: '20 mm', count: 'as needed' },
      ],
    });
    for (const b of r.plan)
      for (const p of b.pieces) expect(p.name).toBe(b.stock === 'batten' ? 'leg' : 'slat');
    expect(r.boardsUsed).toBe(2 + 3);
    expect(r.optimal).toBe(true);
  });

  it('gathers what is left over, at no cost in boards', async () => {
    const r = await cuttingPlan({
      parts: [
        { length: '500 mm', count: 4 },
        { length: '400 mm', count: 3 },
      ],
      stock: [{ length: '2000 mm', count: 'as needed' }],
      kerf: '0 mm',
      keepOffcut: '600 mm',
    });
    // 3200 mm of parts on two boards of 2000 mm: the 800 mm to spare can lie on one board (2000 + 1200).
    expect(r.boardsUsed).toBe(2);
    expect(r.kept?.in('mm')).toBeCloseTo(800, 6);
    expect(r.waste.value).toBeCloseTo(0, 9);
  });

  it('tells what is missing when stock runs out, and how many boards would fix it', async () => {
    const job = { parts: [{ length: 900, count: 5 }], stock: [{ length: 2000, count: 2 }], kerf: 3, trim: 0 };
    const r = await cuttingPlan(written(job));
    legal(job, r.plan, 1);
    expect(r.missing?.map((m) => m.count)).toEqual([1]);
    expect(r.boardsShort).toBe(1);
    expect(r.optimal).toBe(false);
    expect(r.cautions.some((c) => c.text.includes('missing'))).toBe(true);
  });
});

describe('classes of the published benchmarks, made anew', () => {
  const u = seeded(11);
  const whole = (low: number, high: number): number => low + Math.floor(u() * (high - low + 1));
  const count = (items: readonly number[]) =>
    [...items.reduce((m, l) => m.set(l, (m.get(l) ?? 0) + 1), new Map<number, number>())].map(
      ([length, n]) => ({ length, count: n }),
    );

  it.each([60, 120, 249])(
    'triplets, %s items: every bin exactly full, a third as many bins as items',
    async (n) => {
      const items: number[] = [];
      while (items.length < n) {
        const a = whole(380, 490);
        const b = whole(250, Math.floor((1000 - a) / 2));
        if (1000 - a - b >= 250) items.push(a, b, 1000 - a - b);
      }
      const job = { parts: count(items), stock: [{ length: 1000 }], kerf: 0, trim: 0 };
      const r = await cuttingPlan({ ...written(job), timeLimit: '60 s' });
      legal(job, r.plan);
      expect(r.boardsUsed).toBe(n / 3);
      expect(r.optimal).toBe(true);
    },
    90_000,
  );

  it.each([
    ['uniform 20 to 100', 150, 20, 100, 250],
    ['Scholl 1', 120, 1, 100, 200],
    ['Scholl 2', 1000, 114, 172, 100],
    ['hard', 100000, 20000, 35000, 200],
  ])(
    '%s is solved and proved',
    async (_name, capacity, low, high, n) => {
      const items = Array.from({ length: n }, () => whole(low, high));
      const job = {
        parts: count(items),
        stock: [{ length: capacity }],
        kerf: 0,
        trim: 0,
      };
      const r = await cuttingPlan({ ...written(job), timeLimit: '60 s' });
      legal(job, r.plan);
      expect(r.optimal).toBe(true);
      expect(r.boardsUsed).toBeGreaterThanOrEqual(Math.ceil(items.reduce((a, b) => a + b, 0) / capacity));
    },
    90_000,
  );
});
