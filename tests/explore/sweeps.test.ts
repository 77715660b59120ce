import { describe, expect, it } from 'vitest';
import { renderSvg } from '../../src/charts/svg.js';
import { inChunks, AbortError } from '../../src/explore/chunked-work.js';
import { cutterMarks, each, movementAcross, range, sweep, whatIf } from '../../src/index.js';
import { InputError } from '../../src/units/input-error.js';
import { arch, price, seen, slowSum, warmer } from './small-recipes.js';

const shown = async (value: object): Promise<Record<string, unknown>> =>
  (value as Record<symbol, () => Promise<Record<string, unknown>>>)[Symbol.for('Jupyter.display')]!();

describe('the columns of a sweep', () => {
  it('stand in the unit of the largest number, though it lies between the ends', async () => {
    const s = await sweep(arch, { x: range(0, 1, 5), h: '30 m' });
    // 4 h x (1 - x): 0, three quarters, the whole height; from 20 m on in metres.
    expect(s.column('y')).toMatchObject({ unit: 'm' });
    expect([...s.column('y').values]).toEqual([0, 22.5, 30, 22.5, 0]);
    expect((await sweep(arch, { x: range(0, 1, 5), h: '10 m' })).column('y').unit).toBe('mm');
  });

  it('of temperatures take the offset of their unit', async () => {
    const s = await sweep(warmer, { air: range('68 degF', '86 degF', 3) });
    // 20, 25, 30 °C and ten more, in °F by F = 9/5 C + 32.
    [68, 77, 86].forEach((f, i) => expect(s.column('air').values[i]).toBeCloseTo(f, 9));
    [86, 95, 104].forEach((f, i) => expect(s.column('warm').values[i]).toBeCloseTo(f, 9));
  });

  it('come from a recipe that searches, one point after the other, with the signal that stops it', async () => {
    const control = new AbortController();
    seen.signals.length = 0;
    const s = await sweep(slowSum, { a: range('1 m', '2 m', 3), b: '1 m' }, { signal: control.signal });
    expect([...s.column('total').values]).toEqual([2000, 2500, 3000]);
    expect(seen.signals).toEqual([control.signal, control.signal, control.signal]);
  });

  it('have a gap where an answer has no such number', async () => {
    const s = await sweep(price, { pieces: range(9, 11) });
    expect([...s.column('rebate').values]).toEqual([NaN, 2, 2.2]);
    expect(s.toMarkdown()).toMatch(/\| 9 \| 18 \|  \|/);
    expect(s.toJSON().columns['rebate']?.values).toEqual(['', 2, 2.2]);
  });

  it('read by one value alone are one row', async () => {
    const s = await sweep(price, { sort: each(['fine']), pieces: 2 });
    expect(s.rows).toBe(1);
    expect(s.toMarkdown().split('\n')).toHaveLength(3);
    // Two pieces at 2, twice as dear for the fine sort; money has no unit to stand in brackets.
    expect(s.toMarkdown()).toContain('| sort | total | rebate | ratio |');
    expect(s.toMarkdown()).toContain('| fine | 8 |');
    expect(await renderSvg(s.chart!)).toContain('fine');
  });

  it('take a plain list of names, and leave a list to a field that takes lists', async () => {
    const s = await sweep(price, { pieces: 1, sort: ['plain', 'fine'] as never, marks: ['A', 'B'] });
    expect(s.rows).toBe(2);
    expect([...s.column('total').values]).toEqual([2, 4]);
  });

  it('go with names of things, of flags and of groups', async () => {
    expect((await sweep(price, { pieces: 1, packed: each([false, true]) })).column('packed').values).toEqual([
      'false',
      'true',
    ]);
    const air = (humidity: string) => ({ temperature: '20 degC', humidity });
    const s = await sweep(movementAcross, {
      width: '1 m',
      timber: 'teak',
      from: each([air('40 %'), air('60 %')]),
      to: '12 %',
    });
    expect(s.column('from').values).toEqual(['20 degC 40 %', '20 degC 60 %']);
  });

  it('fill any part of the points, whole runs or pieces of them', async () => {
    // 300 times 400 points are more than one part; every column is checked against the index by hand.
    const s = await sweep(cutterMarks, {
      knives: 2,
      feed: range('1 m/min', '300 m/min', 300),
      spindleSpeed: range('100 rpm', '40000 rpm', 400),
    });
    const [feed, speed, pitch] = ['feed', 'spindleSpeed', 'pitch'].map(
      (n) => s.column(n).values as Float64Array,
    );
    for (let i = 0; i < s.rows; i += 37) {
      const [f, n] = [1 + Math.floor(i / 400), 100 + 100 * (i % 400)];
      expect(feed?.[i]).toBeCloseTo(f, 9);
      expect(speed?.[i]).toBeCloseTo(n, 6);
      expect(pitch?.[i]).toBeCloseTo((f * 1000) / (2 * n), 6);
    }
  });
});

describe('a sweep as it is shown', () => {
  it('lines up numbers to the right and names to the left, without a chart for three inputs', async () => {
    const s = await sweep(price, {
      pieces: [1, 2] as never,
      sort: ['plain', 'fine'] as never,
      each: ['1', '3'] as never,
    });
    expect(s.chart).toBeUndefined();
    const bundle = await shown(s);
    expect(Object.keys(bundle).sort()).toEqual(['text/html', 'text/markdown', 'text/plain']);
    expect(bundle['text/html']).toContain('<td style="text-align:left">fine</td>');
    expect(bundle['text/html']).toContain('<td style="text-align:right">2</td>');
    expect(bundle['text/html']).toContain('<th style="text-align:right">each</th>');
  });

  it('has bars for two inputs that are named, without those that have no number', async () => {
    const s = await sweep(
      price,
      { sort: ['plain', 'fine'] as never, packed: [false, true] as never, pieces: 12 },
      { output: 'rebate' },
    );
    const svg = await renderSvg(s.chart!);
    for (const name of ['plain, false', 'plain, true', 'fine, false', 'fine, true'])
      expect(svg).toContain(name);
    const few = await sweep(
      price,
      { sort: ['plain', 'fine'] as never, packed: [false, true] as never, pieces: 2 },
      { output: 'rebate' },
    );
    expect(await renderSvg(few.chart!)).not.toContain('plain, false');
  });

  it('has a heat map of two ranges, whose legend is named after a number that has no unit', async () => {
    const s = await sweep(price, { pieces: range(6, 20), each: range('1', '9', 9) }, { output: 'ratio' });
    expect(await renderSvg(s.chart!)).toContain('>ratio<');
    const bundle = await shown(s);
    expect(bundle['image/svg+xml']).toMatch(/^<svg/);
    expect(bundle['text/plain']).toBe('A price: 135 rows of pieces, each, total, rebate, ratio');
  });

  it('draws one line with a gap where there is no number, and lines by name', async () => {
    const line = await sweep(price, { pieces: range(8, 12) }, { output: 'rebate' });
    expect(await renderSvg(line.chart!)).toMatch(/^<svg/);
    const family = await sweep(price, { pieces: range(6, 12), sort: ['plain', 'fine'] as never });
    expect(await renderSvg(family.chart!)).toContain('by sort');
    const bars = await sweep(price, { sort: ['plain', 'fine'] as never, pieces: 2 }, { output: 'rebate' });
    expect(await renderSvg(bars.chart!)).not.toContain('fine');
  });

  it('is a frame whose columns carry their units', async () => {
    const f = await (await sweep(price, { sort: ['plain', 'fine'] as never, pieces: 2 })).frame();
    expect(f.columns).toContain('sort');
  }, 60_000);
});

describe('a sweep refuses', () => {
  it.each([
    [
      'an output there is not',
      { pieces: range(6, 8) },
      { output: 'words' },
      /output: got "words", takes one of total, rebate, ratio/,
    ],
    ['an input there is not', { zzzzzz: range(1, 2) }, {}, /zzzzzz: no such input; takes pieces, sort/],
    [
      'a range of what is no number',
      { pieces: 1, sort: range('plain', 'fine') },
      {},
      /sort: got a range, takes .*; use each/,
    ],
    [
      'too long a range',
      { pieces: range(1, 2_000_000) },
      {},
      /pieces: got a range of 2000000 values, takes 2 to 1 000 000/,
    ],
    ['a wrong value among several', { sort: each(['plain', 'coarse']), pieces: 1 }, {}, /sort: got "coarse"/],
    [
      'a wrong part of one',
      { pieces: 1, size: each([{ width: '1 kg' }]) },
      {},
      /size\.width: got the unit "kg"/,
    ],
    ['a point that the recipe refuses', { pieces: range(1, 9) }, {}, /price: pieces: takes no three to five/],
  ])('%s', async (_, inputs, options, message) => {
    await expect(sweep(price as never, inputs, options)).rejects.toThrow(message);
    await expect(sweep(price as never, inputs, options)).rejects.toBeInstanceOf(InputError);
  });

  it('a column there is not', async () => {
    const s = await sweep(price, { pieces: range(6, 8) });
    expect(() => s.column('totals')).toThrow(/column: no column "totals"; there are pieces, total/);
  });

  it('ranges of no or too many values, and lists of none or no list', () => {
    expect(() => range(1, 2, 1)).toThrow(/count: got 1, takes a whole number from 2 to 1 000 000/);
    expect(() => range(1, 2, 2.5)).toThrow(/count: got 2.5/);
    expect(() => each([])).toThrow(/each: got .*, takes a list of 1 to 1000/);
    expect(() => each('oak' as never)).toThrow(/each: got "oak"/);
  });

  it('words with two dots are a range whose first end may have a unit of its own', async () => {
    const s = await sweep(arch, { x: 0.5, h: '100 cm .. 3 m' }, { steps: 3 });
    expect([...s.column('h').values]).toEqual([1000, 2000, 3000]);
  });
});

describe('work in parts', () => {
  it('tells how far it is and stops where it stands', async () => {
    const control = new AbortController();
    const done: number[] = [];
    let points = 0;
    const slow = (start: number, end: number): void => {
      for (const until = performance.now() + 12; performance.now() < until;);
      points += end - start;
    };
    await expect(
      inChunks(
        {
          signal: control.signal,
          onProgress: (p) => {
            done.push(p.done as number);
            if (done.length === 2) control.abort();
          },
        },
        1000,
        'counting',
        slow,
      ),
    ).rejects.toThrow(AbortError);
    expect(points).toBeLessThan(1000);
    expect(done).toHaveLength(2);
    expect(done[1]).toBe(points / 1000);
  });

  it('stopped in its last part it is stopped all the same', async () => {
    const control = new AbortController();
    await expect(inChunks({ signal: control.signal }, 1, 'counting', () => control.abort())).rejects.toThrow(
      'stopped after 1 of 1 points',
    );
  });

  it('is not begun when it was stopped before', async () => {
    await expect(
      inChunks({ signal: AbortSignal.abort() }, 5, 'counting', () => expect.fail('begun')),
    ).rejects.toThrow('stopped after 0 of 5 points');
  });
});

describe('whatIf', () => {
  it.each([
    [{ pieces: range(6, 8), each: range('1', '2') }, { output: 'words' }, /output: got "words"/],
    [{ pieces: range(6, 3000), each: range('1', '2') }, {}, /points to table, takes at most 20 000/],
  ])('refuses %j %j', (inputs, options, message) => {
    expect(() => whatIf(price as never, inputs, options)).toThrow(message);
  });

  it('refuses a recipe that searches', () => {
    expect(() => whatIf(slowSum as never, { a: range('1 m', '2 m'), b: range('1 m', '2 m') })).toThrow(
      /whatIf takes a recipe that answers at once/,
    );
  });

  it('tables without the points that have no number, and steps a count by ones', () => {
    const w = whatIf(price, { pieces: range(8, 12), each: range('1', '2', 2) }, { output: 'rebate' });
    const rows = (w.chart['data'] as { values: { x: number }[] }).values;
    // From ten pieces on there is a rebate: 10, 11 and 12, at two prices.
    expect(rows.map((r) => r.x).sort((a, b) => a - b)).toEqual([10, 10, 11, 11, 12, 12]);
    const live = whatIf(cutterMarks, {
      knives: range(2, 6),
      feed: range('4 m/min', '8 m/min'),
      spindleSpeed: '6000 rpm',
    });
    expect((live.chart['data'] as { values: { x: number }[] }).values.map((d) => d.x)).toEqual([
      2, 3, 4, 5, 6,
    ]);
  });
});
