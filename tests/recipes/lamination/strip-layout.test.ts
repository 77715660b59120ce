import { describe, expect, it } from 'vitest';
import { stripLayout } from '../../../src/recipes/lamination/strip-layout.js';
import { faultsOfLayout, likeTones, worstStagger, type Pile } from './layout-checker.js';

/** A pile of the test's own making: lengths in whole mm, tones at random. */
function pileOf(count: number, from: number, to: number, tones: readonly string[], seed: number): Pile[] {
  let s = seed * 2654435761;
  const random = () => {
    s = (Math.imul(s ^ (s >>> 15), 2246822519) + 374761393) | 0;
    return ((s ^ (s >>> 13)) >>> 0) / 4_294_967_296;
  };
  return Array.from({ length: count }, (_, i) => ({
    name: `p${i + 1}x`,
    length: Math.round(from + random() * (to - from)),
    ...(tones.length ? { tone: tones[Math.floor(random() * tones.length)]! } : {}),
  }));
}

async function lay(
  pile: readonly Pile[],
  topLength: number,
  rows: number,
  minStagger: number,
  more: { kerf?: number; timeLimit?: string } = {},
) {
  const start = performance.now();
  const answer = await stripLayout({
    topLength: `${topLength} mm`,
    rows,
    minStagger: `${minStagger} mm`,
    kerf: `${more.kerf ?? 3} mm`,
    timeLimit: more.timeLimit ?? '1 s',
    lengths: pile.map((p) => ({
      name: p.name,
      length: `${p.length} mm`,
      ...(p.tone ? { tone: p.tone } : {}),
    })),
  });
  const seconds = (performance.now() - start) / 1000;
  const plain = answer.rows.map((row) =>
    row.map((p) => ({ ...p, start: p.start.in('mm'), length: p.length.in('mm') })),
  );
  const faults = faultsOfLayout(plain, pile, {
    topLength,
    rows,
    minStagger,
    kerf: more.kerf ?? 3,
    shortest: Math.min(minStagger, 100),
  });
  // What the answer says of itself must agree with the layout.
  const used = pile.reduce((s, p) => s + p.length, 0) - answer.unused.in('mm') - answer.waste.in('mm');
  expect(used).toBeCloseTo(topLength * rows, 3);
  expect(answer.sameTone.in('mm')).toBeCloseTo(likeTones(plain), 3);
  expect(answer.worstStagger.in('mm')).toBeCloseTo(Math.min(worstStagger(plain), topLength), 3);
  expect(answer.waste.value).toBeGreaterThanOrEqual(answer.leastWaste.value - 1e-9);
  return { answer, faults, seconds };
}

describe('stripLayout', () => {
  describe.each([[1], [2], [3], [4]])('twelve rows of 1.95 m from 120 lengths, pile %i', (seed) => {
    it('is legal and found in under two seconds, without tones', async () => {
      const { faults, seconds, answer } = await lay(pileOf(120, 300, 900, [], seed), 1950, 12, 150);
      expect(faults).toEqual([]);
      expect(seconds).toBeLessThan(2);
      // Two metres of slack in 70: a pile like this goes with next to no waste.
      expect(answer.waste.in('mm')).toBeLessThanOrEqual(12);
    });
    it('keeps two tones wholly apart', async () => {
      const { faults, seconds, answer } = await lay(
        pileOf(120, 300, 900, ['light', 'dark'], seed),
        1950,
        12,
        150,
        { timeLimit: '1.5 s' },
      );
      expect(faults).toEqual([]);
      expect(seconds).toBeLessThan(2);
      // Chance would put half of the eleven seams, 10.7 m, side by side.
      expect(answer.sameTone.in('mm')).toBeLessThan(2000);
    });
  });

  it('lays a pile that just suffices, sawing pieces in two', async () => {
    const pile = pileOf(45, 300, 800, [], 9);
    const total = pile.reduce((s, p) => s + p.length, 0);
    const topLength = Math.floor((total - 400) / 12);
    const { faults, answer } = await lay(pile, topLength, 12, 100);
    expect(faults).toEqual([]);
    // A cut ends each part, but for the last where no more is over than the cuts between the parts take.
    const cutsOf = (from: number, parts: readonly number[]) => {
      const over = from - parts.reduce((a, b) => a + b, 0);
      return over <= 3 * (parts.length - 1) ? parts.length - 1 : parts.length;
    };
    expect(answer.cutCount).toBe(
      answer.cuts.reduce(
        (n, c) => n + cutsOf(Math.round(c.from.in('mm')), c.parts.split(', ').map(Number.parseFloat)),
        0,
      ),
    );
  });

  it('lays long pieces that each reach over a row, and short ones five to a row', async () => {
    expect((await lay(pileOf(30, 900, 2600, ['a', 'b'], 5), 1950, 12, 150)).faults).toEqual([]);
    expect((await lay(pileOf(160, 200, 420, ['a', 'b', 'c'], 6), 1950, 12, 60)).faults).toEqual([]);
  });

  it('sets even pieces half over half, as a bricklayer would', async () => {
    // Four rows of 2 m from metre pieces with half a metre of stagger: only halves at the ends of every other row do it.
    const pile = Array.from({ length: 9 }, (_, i) => ({ name: `m${i}x`, length: 1000 }));
    const { faults, answer } = await lay(pile, 2000, 4, 500, { kerf: 0 });
    expect(faults).toEqual([]);
    expect(answer.worstStagger.in('mm')).toBe(500);
  });

  it('proves a layout that fits as it lies', async () => {
    const { answer } = await lay(
      ['A', 'B', 'C', 'D'].map((name, i) => ({ name, length: i % 2 === 0 ? 600 : 400 })),
      1000,
      2,
      100,
    );
    expect([answer.waste.value, answer.cutCount, answer.optimal]).toEqual([0, 0, true]);
    expect(answer.rows.map((r) => r.map((p) => p.length.in('mm'))).map((r) => r[0]! + r[1]!)).toEqual([
      1000, 1000,
    ]);
  });

  it('says in words what it laid, and what no layout can better', async () => {
    const { answer } = await lay(
      [600, 400, 1000].map((length, i) => ({ name: 'ABC'[i]!, length, tone: 'dark' })),
      1000,
      2,
      100,
      { timeLimit: '50 ms' },
    );
    const text = answer.workings.map((w) => w.text);
    expect(text[0]).toBe('3 pieces of 2000 mm in all for 2 rows of 1000 mm.');
    // Nothing is wasted, but one tone cannot be kept from itself: the search goes on to its end and proves nothing.
    expect(text[1]).toMatch(/Waste 0 mm; no layout can waste less than 0 mm\. Not proven best\.$/);
    expect([answer.waste.value, answer.sameTone.in('mm'), answer.optimal]).toEqual([0, 1000, false]);
    expect(answer.plan.map((p) => p.row)).toEqual([1, 2]);
    const [pair, whole] = [...answer.plan].sort((a, b) => b.joints.length - a.joints.length);
    expect(['600 mm', '400 mm']).toContain(pair!.joints);
    expect([whole!.joints, whole!.pieces]).toEqual(['none', 'C 1000 mm dark']);
    // Shown in a table by how many pieces each row has, and drawn with the pieces' names.
    expect(answer.toText()).toMatch(/2, with (1, 2|2, 1) pieces/);
    expect(JSON.stringify(answer.chart)).toMatch(/"C"/);
  });

  it('says what is wasted, in the end and on the way: two of 530 overshoot a row of a metre by 60', async () => {
    const reports: { message: string; best?: number; bound?: number }[] = [];
    const answer = await stripLayout(
      {
        topLength: '1 m',
        rows: 2,
        minStagger: '0 mm',
        shortest: '100 mm',
        timeLimit: '50 ms',
        lengths: [{ length: '530 mm', tone: 'dark', count: 4 }],
      },
      { onProgress: (p) => reports.push(p) },
    );
    // A row wastes 60, or shares a saw cut of 3 with another: that would leave a part of 470 and an end of 57, too short to
    // lay or keep. So both rows waste 60, and lie dark by dark over their whole length; the bound knows only of the cut.
    expect(answer.workings[1]!.text).toMatch(/Waste 120 mm; no layout can waste less than 3 mm\./);
    expect(reports[0]).toMatchObject({
      message: 'waste 120 mm, like tones side by side 1000 mm',
      best: expect.closeTo(0.12, 12) as number,
      bound: expect.closeTo(0.003, 12) as number,
    });
    // Without tones nothing touches that ought not, and still the waste is over the bound: nothing is proven.
    const plain = await stripLayout({
      topLength: '1 m',
      rows: 1,
      minStagger: '0 mm',
      shortest: '100 mm',
      timeLimit: '50 ms',
      lengths: '530 mm, 530 mm',
    });
    expect([plain.waste.in('mm'), plain.sameTone.value, plain.optimal]).toEqual([60, 0, false]);
  });

  it('tells its progress with best and bound, and stops when asked to, with the best it has', async () => {
    const pile = pileOf(45, 400, 720, ['light', 'dark'], 3);
    const topLength = Math.floor((pile.reduce((s, p) => s + p.length, 0) - 500) / 12);
    const stop = new AbortController();
    const reports: { best?: number; bound?: number; done?: number }[] = [];
    const start = performance.now();
    const answer = await stripLayout(
      {
        topLength: `${topLength} mm`,
        rows: 12,
        minStagger: '100 mm',
        timeLimit: '5 min',
        lengths: pile.map((p) => ({ name: p.name, length: `${p.length} mm`, tone: p.tone! })),
      },
      {
        signal: stop.signal,
        onProgress: (p) => {
          if (reports.push(p) === 8) stop.abort();
        },
      },
    );
    expect(performance.now() - start).toBeLessThan(4500);
    const plain = answer.rows.map((row) =>
      row.map((p) => ({ ...p, start: p.start.in('mm'), length: p.length.in('mm') })),
    );
    expect(
      faultsOfLayout(plain, pile, { topLength, rows: 12, minStagger: 100, kerf: 3, shortest: 100 }),
    ).toEqual([]);
    expect(reports).toHaveLength(8);
    const best = reports.flatMap((p) => p.best ?? []);
    expect(best.length).toBeGreaterThan(0);
    expect(reports.at(-1)!.bound).toBeLessThanOrEqual(reports.at(-1)!.best!);
    expect(answer.workings.some((w) => w.kind === 'remark' && /Stopped early/.test(w.text))).toBe(true);
  });
});

// The checker is worth nothing if it passes what is wrong.
describe('the checker', () => {
  const pile: Pile[] = [
    { name: 'a', length: 600 },
    { name: 'b', length: 400 },
    { name: 'c', length: 550 },
    { name: 'd', length: 450 },
  ];
  const rules = { topLength: 1000, rows: 2, minStagger: 40, kerf: 3, shortest: 100 };
  const p = (piece: string, start: number, length: number, cut = false) => ({ piece, start, length, cut });
  const good = [
    [p('a', 0, 600), p('b', 600, 400)],
    [p('c', 0, 550), p('d', 550, 450)],
  ];
  it('passes a legal layout and finds every kind of fault', () => {
    expect(faultsOfLayout(good, pile, rules)).toEqual([]);
    expect(faultsOfLayout(good, pile, { ...rules, minStagger: 51 })).toHaveLength(1);
    expect(faultsOfLayout([good[0]!], pile, rules)).toHaveLength(1);
    expect(faultsOfLayout([good[0]!, [p('c', 0, 550), p('d', 560, 450)]], pile, rules).join()).toMatch(
      /starts at/,
    );
    expect(faultsOfLayout([good[0]!, [p('c', 0, 550), p('d', 550, 440, true)]], pile, rules).join()).toMatch(
      /long, not/,
    );
    expect(faultsOfLayout([good[0]!, [p('c', 0, 550), p('a', 550, 450, true)]], pile, rules).join()).toMatch(
      /is cut from/,
    );
    expect(faultsOfLayout([good[0]!, [p('c', 0, 550), p('d', 550, 450, true)]], pile, rules).join()).toMatch(
      /cut is true/,
    );
  });
});
