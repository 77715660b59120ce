import { describe, expect, it } from 'vitest';
import { renderSvg } from '../../src/charts/svg.js';
import { field } from '../../src/engine/field.js';
import { out } from '../../src/engine/output.js';
import { recipe } from '../../src/engine/recipe.js';
import {
  compare,
  each,
  empirical,
  movementAcross,
  normal,
  Quantity,
  solveFor,
  triangular,
  uncertain,
  uniform,
} from '../../src/index.js';
import { setProgressReporter } from '../../src/engine/progress.js';
import { arch, price, seen, slowSum, warmer } from './small-recipes.js';

const shown = async (value: object): Promise<Record<string, unknown>> =>
  (value as Record<symbol, () => Promise<Record<string, unknown>>>)[Symbol.for('Jupyter.display')]!();
const options = { samples: 2000 };

describe('how an input spreads', () => {
  it('over named things, each as likely', async () => {
    const d = await uncertain(price, { pieces: 1, sort: each(['plain', 'fine']) }, options);
    // One piece at 2 or at 4: half of the draws each.
    expect([d.values[0], d.values[1999]]).toEqual([2, 4]);
    expect(d.mean).toMatchObject({ value: expect.closeTo(3, 2) as number });
    const plain = await uncertain(price, { pieces: 1, sort: ['plain', 'fine'] }, options);
    expect(plain.values).toEqual(d.values);
  });

  it('over moistures or over air, one by one', async () => {
    const d = await uncertain(
      movementAcross,
      { width: '1 m', timber: ['teak', 'white oak'], from: '8 %', to: '12 %' },
      options,
    );
    const [teak, oak] = ['teak', 'white oak'].map(
      (timber) =>
        (movementAcross({ width: '1 m', timber, from: '8 %', to: '12 %' }).change as Quantity).value,
    );
    expect(d.values[0]).toBeCloseTo(Math.min(teak!, oak!), 14);
    expect(d.values[1999]).toBeCloseTo(Math.max(teak!, oak!), 14);
  });

  it('by a tolerance whose first number takes the unit of the second', async () => {
    const d = await uncertain(arch, { x: 0.5, h: '900 +- 2 mm' }, options);
    expect((d.mean as Quantity).in('mm')).toBeCloseTo(900, 1);
    expect((d.deviation as Quantity).in('mm')).toBeCloseTo(1, 1);
  });

  it('by a difference of temperatures, which has no offset', async () => {
    // 18 °F are 10 °C; a tolerance spans two deviations.
    const d = await uncertain(warmer, { air: '20 degC +- 18 degF' }, { samples: 20_000 });
    expect((d.mean as Quantity).value).toBeCloseTo(30, 1);
    expect(d.deviation).toBeCloseTo(5, 1);
    const c = await uncertain(warmer, { air: normal('20 degC', '3 °C') }, { samples: 20_000 });
    expect(c.deviation).toBeCloseTo(3, 1);
  });

  it('not at all where the deviation is 0; then nothing weighs', async () => {
    const d = await uncertain(arch, { x: 0.5, h: normal('1 m', '0 mm') }, options);
    expect([d.values[0], d.values[1999]]).toEqual([1, 1]);
    // At the foot of the arch every draw is 0 exactly.
    const two = await uncertain(arch, { x: normal(0, 0), h: normal('1 m', '0 mm') }, options);
    expect(two.sensitivity.map((x) => [x.first, x.total])).toEqual([
      [0, 0],
      [0, 0],
    ]);
    expect(JSON.stringify(two.tornado)).toContain('below 0.1 %');
  });

  it('over an input of which the recipe knows neither example nor default', async () => {
    // A coefficient of one's own: 1 m times four per cent times 0.002 to 0.003.
    const d = await uncertain(
      movementAcross,
      { width: '1 m', from: '8 %', to: '12 %', coefficient: uniform(0.002, 0.003) },
      options,
    );
    expect((d.mean as Quantity).in('mm')).toBeCloseTo(10, 2);
    expect((d.percentile(100) as Quantity).in('mm')).toBeCloseTo(12, 2);
  });

  it.each([
    ['an empty list', { pieces: 1, sort: [] }, /sort: got an empty list, takes at least one value/],
    [
      'a spread of what is no number',
      { pieces: 1, sort: normal('a', 'b') },
      /sort: got a distribution, takes .*; use each/,
    ],
    ['a wrong thing in a list', { pieces: 1, sort: ['plain', 'coarse'] }, /sort: got "coarse"/],
    ['a wrong part of a thing', { pieces: 1, size: [{ width: '1 kg' }] }, /size\.width: got the unit "kg"/],
  ])('refuses %s', async (_, inputs, message) => {
    await expect(uncertain(price, inputs as never, options)).rejects.toThrow(message);
  });

  it.each([
    ['a deviation below 0', normal('1 m', '-1 mm'), /h: got a width of "-1 mm", takes 0 or more/],
    [
      'a triangle out of order',
      triangular('3 m', '2 m', '4 m'),
      /h: takes low, most likely, high in that order/,
    ],
    ['one measurement', empirical(['1 m']), /h: got 1 measurements, takes at least 2/],
    ['a deviation of another kind', normal('1 m', '1 kg'), /h: got the unit "kg"/],
  ])('refuses %s', async (_, h, message) => {
    await expect(uncertain(arch, { x: 0.5, h }, options)).rejects.toThrow(message);
  });

  it('refuses a seed that is no whole number and an input there is not', async () => {
    await expect(uncertain(arch, { x: 0.5, h: '1 m +- 1 mm' }, { seed: 1.5 })).rejects.toThrow(
      /seed: got 1.5/,
    );
    await expect(uncertain(arch as never, { x: 0.5, h: '1 m +- 1 mm', k: 3 }, options)).rejects.toThrow(
      /k: no such input/,
    );
  });
});

describe('what is known of the draws', () => {
  it('is the chance of both limits, of one, and of none', async () => {
    const from = (limits: object) =>
      uncertain(arch, { x: 0.5, h: '1 m .. 2 m' }, { samples: 10_000, ...limits });
    // Even from 1 to 2 m: a quarter lies from 1.25 to 1.5 m, three quarters above 1.25 m.
    const both = await from({ atLeast: '1.25 m', atMost: '1.5 m' });
    expect(both.chance).toBeCloseTo(0.25, 2);
    expect(both.toMarkdown()).toContain('chance of at least 1250 mm and at most 1500 mm | 25 %');
    expect((await from({ atLeast: '1.25 m' })).chance).toBeCloseTo(0.75, 2);
    expect((await from({ atMost: '1.25 m' })).toMarkdown()).toContain('chance of at most');
    const none = await from({});
    expect(none.chance).toBeUndefined();
    expect(none.toJSON()).not.toHaveProperty('chance');
    expect(both.toJSON()).toHaveProperty('chance', both.chance);
  });

  it('has percentiles from 0 to 100 and no others', async () => {
    const d = await uncertain(arch, { x: 0.5, h: '1 m .. 2 m' }, options);
    expect((d.percentile(0) as Quantity).value).toBe(d.values[0]);
    expect(() => d.percentile(101)).toThrow(/percent: got 101, takes 0 to 100/);
    expect(() => d.percentile(NaN)).toThrow(/percent: got NaN/);
  });

  it('is shown with what matters most only where several inputs spread', async () => {
    const one = await uncertain(arch, { x: 0.5, h: '1 m .. 2 m' }, options);
    expect(one.tornado).toBeUndefined();
    const two = await uncertain(arch, { x: '0.4 .. 0.6', h: '1 m .. 2 m' }, options);
    expect(two.sensitivity[0]?.input).toBe('h');
    const [a, b] = [await shown(one), await shown(two)];
    expect(a['image/svg+xml']).not.toContain('matters most to the');
    expect(b['image/svg+xml']).toContain('matters most to the');
    expect(b['text/plain']).toMatch(/share of the spread that height causes: \d/);
  });

  it('is refused where some draws have no answer', async () => {
    await expect(
      uncertain(price, { pieces: empirical([8, 12]) }, { ...options, output: 'rebate' }),
    ).rejects.toThrow(/some samples give no finite answer/);
  });
});

describe('solveFor', () => {
  it('counts are tried one by one, and money and counts are shown plainly', () => {
    const s = solveFor(price, 'pieces', { total: 24 }, {}, { to: 30 });
    // Two apiece: twelve pieces; three to five are refused and left out.
    expect(s.roots).toEqual([12]);
    expect(s.toText()).toContain('12');
    const none = solveFor(price, 'pieces', { total: 7 }, {}, { to: 30 });
    expect(none.roots).toEqual([]);
    // 7 lies between 2 at 4 and 6 at 12, and nearer to 4.
    expect(none.nearest?.input).toBe(2);
  });

  it('draws gaps where the recipe gives nothing', async () => {
    expect(await renderSvg(solveFor(price, 'pieces', { rebate: 3 }, {}, { to: 30 }).chart)).toMatch(/^<svg/);
    expect(await renderSvg(solveFor(price, 'pieces', { total: 7 }, {}, { to: 30 }).chart)).toMatch(/^<svg/);
    const bundle = await shown(solveFor(arch, 'h', { y: '1 m' }, { x: 0.5 }, { from: '0 m', to: '2 m' }));
    expect(bundle['text/markdown']).toMatch(/^\*\*h for y of/);
  });

  it('a jump past the target is no root', () => {
    const steps = recipe({
      name: 'steps',
      title: 'Steps',
      topic: 'test',
      about: 'Rises by whole metres.',
      sources: [],
      inputs: { x: field.ratio({ label: 'x', min: 0, max: 3 }) },
      outputs: { y: out.length({ label: 'y' }) },
      solve: ({ x }) => ({ y: Math.floor(x) }),
      example: { x: 1 },
    });
    expect(solveFor(steps, 'x', { y: '1.5 m' }, {}).roots).toEqual([]);
    expect(solveFor(steps, 'x', { y: '1.5 m' }, {}).toText()).toContain('no x in the range');
  });

  it.each([
    [
      () => solveFor(slowSum as never, 'a', { total: '1 m' }, {}),
      /solveFor takes a recipe that answers at once/,
    ],
    [() => solveFor(arch as never, 'x', {}, {}), /target: got 0 outputs, takes one/],
    [
      () => solveFor(arch as never, 'qqqqqq', { y: '1 m' }, {}),
      /qqqqqq: no such input with a number; takes x, h/,
    ],
    [
      () => solveFor(arch as never, 'x', { qqqqqq: '1 m' }, {}),
      /qqqqqq: no such output with a number; takes y/,
    ],
    [
      () => solveFor(arch, 'h', { y: '1 m' }, { x: 0.5 }, { from: '2 m', to: '1 m' }),
      /to: takes an end above the other/,
    ],
    [
      () => solveFor(arch, 'h', { y: '1 m' }, { x: 0.5 }, { from: '2 kg', to: '1 m' }),
      /from: got the unit "kg"/,
    ],
    [
      () => solveFor(price, 'pieces', { rebate: 1 }, {}, { to: 8 }),
      /nowhere in the range do these inputs give rebate/,
    ],
  ])('refuses %#', (run, message) => {
    expect(run).toThrow(message);
  });
});

describe('compare', () => {
  it('a recipe that searches reports way by way, and can be stopped', async () => {
    const control = new AbortController();
    const told: unknown[] = [];
    const off = setProgressReporter({
      signal: control.signal,
      start: (what) => ({
        report: (p) => told.push([what, p.message, p.done]),
        end: (done) => told.push(done),
      }),
    });
    seen.signals.length = 0;
    try {
      const c = await compare(
        slowSum,
        { near: { a: '1 m', b: '1 m' }, far: { a: '5 m', b: '1 m' } },
        { most: 'total' },
      );
      expect(c.best).toBe('far');
    } finally {
      off();
    }
    expect(seen.signals).toEqual([control.signal, control.signal]);
    expect(told).toEqual([
      ['A slow sum', 'near', 0],
      ['A slow sum', 'near: half way', 0.25],
      ['A slow sum', 'near: who knows', 0],
      ['A slow sum', 'far', 0.5],
      ['A slow sum', 'far: half way', 0.75],
      ['A slow sum', 'far: who knows', 0.5],
      true,
    ]);
  });

  it('without a rule has no best, and leaves out what a way has not', async () => {
    const c = await compare(price, { few: { pieces: 1 }, many: { pieces: 10 } });
    expect(c.best).toBeUndefined();
    expect(c.toMarkdown()).toMatch(/\| rebate \|  \| 2/);
    expect(c.toMarkdown()).not.toContain('rows');
    const rebate = await compare(price, { few: { pieces: 1 }, many: { pieces: 10 } }, { least: 'rebate' });
    expect(rebate.best).toBe('many');
    const svg = await renderSvg(rebate.chart!);
    expect(svg).toContain('many (best)');
    expect(svg).not.toContain('few');
    const bundle = await shown(rebate);
    expect(bundle['text/html']).toContain('<td style="text-align:right;vertical-align:top"></td>');
    expect(bundle['image/svg+xml']).toMatch(/^<svg/);
    expect((await c.frame()).columns).toContain('way');
  }, 60_000);

  it('without any number has no chart', async () => {
    const words = recipe({
      name: 'words',
      title: 'Words',
      topic: 'test',
      about: 'Says it.',
      sources: [],
      inputs: { a: field.text({ label: 'a' }) },
      outputs: { said: out.text({ label: 'said' }) },
      solve: ({ a }) => ({ said: a }),
      example: { a: 'x' },
    });
    const c = await compare(words, { one: { a: 'x' }, two: { a: 'y' } });
    expect(c.chart).toBeUndefined();
    expect(Object.keys(await shown(c))).not.toContain('image/svg+xml');
  });

  it.each([
    [{ least: 'totl' }, /least: got "totl", takes one of total, rebate, ratio; did you mean "total"/],
    [{ most: 'qqqqqqq' }, /most: got "qqqqqqq", takes one of total, rebate, ratio$/],
  ])('refuses %j', async (rule, message) => {
    await expect(compare(price, { a: { pieces: 1 }, b: { pieces: 2 } }, rule as never)).rejects.toThrow(
      message,
    );
  });
});
