import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formula, variable } from '../../src/engine/formula.js';
import { field } from '../../src/engine/field.js';
import { out } from '../../src/engine/output.js';
import { recipe } from '../../src/engine/recipe.js';
import { InputError } from '../../src/units/input-error.js';
import { renderSvg } from '../../src/charts/svg.js';
import {
  compare,
  each,
  empirical,
  normal,
  range,
  solveFor,
  sweep,
  triangular,
  uncertain,
  uniform,
  whatIf,
  cutterMarks,
  movementAcross,
  stripCount,
  Quantity,
} from '../../src/index.js';

const length = (message: string) => variable('length', message);
const sum = recipe({
  name: 'sum',
  title: 'A sum of lengths',
  topic: 'test',
  about: 'Adds three lengths, for tests with a closed form.',
  sources: [],
  inputs: {
    a: field.length({ symbol: 'a', label: 'first' }),
    b: field.length({ symbol: 'b', label: 'second' }),
    c: field.length({ symbol: 'c', label: 'third', default: '0 mm' }),
  },
  steps: [
    formula({
      symbol: 's',
      result: length('sum'),
      expression: 'a + b + c',
      variables: { a: length('first'), b: length('second'), c: length('third') },
      basis: 'geometry',
    }),
  ],
  outputs: { total: out.length({ symbol: 's', label: 'sum' }) },
  example: { a: '1 m', b: '1 m' },
});
const product = recipe({
  name: 'product',
  title: 'A product',
  topic: 'test',
  about: 'Multiplies two numbers, for tests with a closed form.',
  sources: [],
  inputs: {
    x: field.ratio({ symbol: 'x', label: 'first' }),
    y: field.ratio({ symbol: 'y', label: 'second' }),
  },
  steps: [
    formula({
      symbol: 'p',
      result: variable('ratio', 'product'),
      expression: 'x y',
      variables: { x: variable('ratio', 'first'), y: variable('ratio', 'second') },
      basis: 'geometry',
    }),
  ],
  outputs: { p: out.ratio({ symbol: 'p', label: 'product' }) },
  example: { x: 1, y: 1 },
});
const parabola = recipe({
  name: 'parabola',
  title: 'A parabola',
  topic: 'test',
  about: 'Has two roots, for tests.',
  sources: [],
  inputs: { x: field.length({ symbol: 'x', label: 'place', min: '-10 m', max: '10 m' }) },
  steps: [
    formula({
      symbol: 'y',
      result: variable('area', 'height'),
      expression: 'x^2',
      variables: { x: length('place') },
      basis: 'geometry',
    }),
  ],
  outputs: { y: out.area({ symbol: 'y', label: 'height' }) },
  example: { x: '1 m' },
});
const mm = (q: Quantity | number): number => (q as Quantity).in('mm');

describe('sweep', () => {
  it('gives typed columns in the unit shown, equal to evaluating one by one', async () => {
    const s = await sweep(cutterMarks, {
      feed: range('4 m/min', '12 m/min', 9),
      knives: each([2, 4]),
      spindleSpeed: '6000 rpm',
    });
    expect(s.rows).toBe(18);
    const [feed, knives, pitch] = ['feed', 'knives', 'pitch'].map((n) => s.column(n));
    expect(feed?.unit).toBe('m/min');
    expect(pitch?.unit).toBe('mm');
    for (let i = 0; i < s.rows; i++) {
      // Geometry: feed a minute over knives times turns a minute.
      expect(pitch?.values[i]).toBeCloseTo(
        ((feed?.values[i] as number) * 1000) / ((knives?.values[i] as number) * 6000),
        10,
      );
    }
    const svg = await renderSvg(s.chart!);
    expect(svg).toContain('m/min');
    expect(svg).toContain('by knives');
  });

  it('chooses the chart by the inputs', async () => {
    const line = await sweep(cutterMarks, { feed: '4 .. 12 m/min', knives: 4, spindleSpeed: '6000 rpm' });
    const heat = await sweep(cutterMarks, {
      feed: range('4 m/min', '12 m/min', 12),
      spindleSpeed: range('3000 rpm', '9000 rpm', 12),
      knives: 2,
    });
    const bars = await sweep(movementAcross, {
      timber: each(['white oak', 'teak', 'Sitka spruce']),
      width: '640 mm',
      cut: 'flat-sawn',
      from: '8 %',
      to: '11 %',
    });
    expect(JSON.stringify(line.chart)).toContain('"line"');
    expect(JSON.stringify(heat.chart)).toContain('"rect"');
    expect(JSON.stringify(bars.chart)).toContain('"bar"');
    for (const s of [line, heat, bars]) expect(await renderSvg(s.chart!)).toMatch(/^<svg/);
  });

  it('makes a danfojs frame', async () => {
    const s = await sweep(cutterMarks, {
      feed: range('4 m/min', '12 m/min', 5),
      knives: 4,
      spindleSpeed: '6000 rpm',
    });
    const f = await s.frame();
    expect(f.shape).toEqual([5, s.columns.length]);
    expect(f.columns).toContain('pitch (mm)');
    expect(f.column('pitch (mm)').max()).toBeCloseTo(0.5, 9);
  }, 60_000);

  it('stops on interrupt', async () => {
    const control = new AbortController();
    setTimeout(() => control.abort(), 80);
    await expect(
      sweep(
        stripCount,
        { topWidth: range('600 mm', '900 mm', 900_000), stripWidth: '48 mm' },
        { signal: control.signal },
      ),
    ).rejects.toThrow(/stopped after/);
  });

  it.each([
    [{ feed: '6 m/min', knives: 4, spindleSpeed: '6000 rpm' }, /no input has a range/],
    [{ feed: range('1 kg', '2 kg'), knives: 4, spindleSpeed: '6000 rpm' }, /feed: got the unit "kg"/],
    [{ fed: range('1 m/min', '2 m/min') }, /fed: no such input; did you mean "feed"/],
    [{ feed: range('4 m/min', '4 m/min'), knives: 4, spindleSpeed: '6000 rpm' }, /two ends that differ/],
    [{ feed: range('4 m/min', '400 m/min'), knives: 4, spindleSpeed: '6000 rpm' }, /at most 300 m\/min/],
    [
      {
        feed: range('4 m/min', '8 m/min', 100_000),
        knives: range(1, 20),
        spindleSpeed: range('3000 rpm', '4000 rpm', 30),
      },
      /combinations/,
    ],
  ])('refuses %j', async (inputs, message) => {
    await expect(sweep(cutterMarks, inputs as never)).rejects.toThrow(message);
    await expect(sweep(cutterMarks, inputs as never)).rejects.toBeInstanceOf(InputError);
  });
});

describe('uncertain', () => {
  it('a sum of normals is normal with the root of the sum of squares', async () => {
    const d = await uncertain(
      sum,
      { a: normal('100 mm', '3 mm'), b: normal('50 mm', '4 mm') },
      { samples: 200_000 },
    );
    expect(mm(d.mean)).toBeCloseTo(150, 2);
    expect(mm(d.deviation)).toBeCloseTo(5, 2);
    // 97.5 % of a normal lie below the mean and 1.959964 deviations.
    expect(mm(d.percentile(97.5))).toBeCloseTo(150 + 1.959964 * 5, 1);
    const share = Object.fromEntries(d.sensitivity.map((x) => [x.input, x]));
    expect(share['a']?.first).toBeCloseTo(9 / 25, 1);
    expect(share['b']?.total).toBeCloseTo(16 / 25, 1);
  });

  it('reads a tolerance as 95 % within, and a range as uniform', async () => {
    const d = await uncertain(sum, { a: '100 mm +- 2 mm', b: '10 mm .. 16 mm' }, { samples: 200_000 });
    // Variances: 1 for the tolerance, width squared over 12 for the range.
    expect(mm(d.deviation)).toBeCloseTo(Math.sqrt(1 + 36 / 12), 2);
  });

  it('a product of two uniforms on 0 to 1 has the closed form F(z) = z - z ln z', async () => {
    const d = await uncertain(
      product,
      { x: uniform(0, 1), y: uniform(0, 1) },
      { samples: 400_000, atMost: 0.25 },
    );
    expect(d.chance).toBeCloseTo(0.25 - 0.25 * Math.log(0.25), 2);
    // First-order index of each is 3/7, total 4/7 (variance 7/144, that of E(p|x) = x/2 is 1/48).
    for (const x of d.sensitivity) {
      expect(x.first).toBeCloseTo(3 / 7, 1);
      expect(x.total).toBeCloseTo(4 / 7, 1);
    }
  });

  it('triangular and measured spreads have their means', async () => {
    const t = await uncertain(
      sum,
      { a: triangular('0 mm', '2 mm', '10 mm'), b: '0 mm' },
      { samples: 100_000 },
    );
    expect(mm(t.mean)).toBeCloseTo(4, 1);
    const m = await uncertain(
      sum,
      { a: empirical(['10 mm', '12 mm', '14 mm']), b: '0 mm' },
      { samples: 100_000 },
    );
    expect(mm(m.mean)).toBeCloseTo(12, 1);
    expect(mm(m.percentile(100))).toBeLessThanOrEqual(14);
  });

  it('the same seed gives the same draws, another does not', async () => {
    const run = async (seed: number) =>
      (await uncertain(sum, { a: '100 mm +- 2 mm', b: '1 mm' }, { samples: 1000, seed })).values;
    expect(await run(3)).toEqual(await run(3));
    expect(await run(3)).not.toEqual(await run(4));
  });

  it.each([
    [{ a: '1 m', b: '1 m' }, {}, /no input varies/],
    [{ a: '1 m +- 2 kg', b: '1 m' }, {}, /a: got the unit "kg"/],
    [{ a: uniform('2 m', '1 m'), b: '1 m' }, {}, /low end above/],
    [{ a: '1 m +- 2 mm', b: '1 m' }, { samples: 3 }, /samples: got 3/],
    [{ a: '1 m +- 2 mm', b: '1 m' }, { output: 'x' }, /output: got "x", takes one of total/],
    [{ a: '1 m +- 2 mm', b: '1 m' }, { atMost: '3 kg' }, /total: got the unit "kg"/],
  ])('refuses %j %j', async (inputs, options, message) => {
    await expect(uncertain(sum as never, inputs, options)).rejects.toThrow(message);
  });
});

describe('solveFor', () => {
  it('finds all roots in the range, with their unit', () => {
    const s = solveFor(parabola, 'x', { y: '4 m2' }, {});
    expect(s.roots.map((q) => (q as Quantity).in('m'))).toEqual([
      expect.closeTo(-2, 12),
      expect.closeTo(2, 12),
    ]);
    expect(solveFor(parabola, 'x', { y: '4 m2' }, {}, { from: '0 m', to: '5 m' }).roots).toHaveLength(1);
  });

  it('says how near it comes when there is none', () => {
    const s = solveFor(parabola, 'x', { y: '400 m2' }, {});
    expect(s.roots).toEqual([]);
    expect(Math.abs((s.nearest?.input as Quantity).in('m'))).toBe(10);
    expect(s.toText()).toMatch(/no x in the range.*nearest is 100 m²/);
  });

  it('round trip: the input found gives the target', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.0002, max: 0.004, noNaN: true }), (pitch) => {
        const s = solveFor(
          cutterMarks,
          'feed',
          { pitch: new Quantity('length', pitch) },
          { spindleSpeed: '6000 rpm', knives: 2 },
        );
        expect(s.roots).toHaveLength(1);
        expect(
          cutterMarks.evaluate({ feed: (s.roots[0] as Quantity).value, spindleSpeed: 100, knives: 2 }).pitch,
        ).toBeCloseTo(pitch, 12);
      }),
      { numRuns: 100 },
    );
  });

  it('refuses wrong names', () => {
    expect(() => solveFor(parabola as never, 'z', { y: '1 m2' }, {})).toThrow(/z: no such input/);
    expect(() => solveFor(parabola as never, 'x', { z: '1 m2' }, {})).toThrow(/z: no such output/);
    expect(() => solveFor(sum, 'a', { total: '1 m' }, { b: '1 m' })).toThrow(/from: missing/);
  });

  it('draws its chart', async () => {
    expect(await renderSvg(solveFor(parabola, 'x', { y: '4 m2' }, {}).chart)).toContain('target');
  });
});

describe('compare', () => {
  it('marks the best by the rule named', async () => {
    const ways = {
      slow: { spindleSpeed: '6000 rpm', knives: 4, feed: '4 m/min' },
      fast: { spindleSpeed: '6000 rpm', knives: 4, feed: '12 m/min' },
    };
    const c = await compare(cutterMarks, ways, { least: 'pitch' });
    expect(c.best).toBe('slow');
    expect((await compare(cutterMarks, ways, { most: 'pitch' })).best).toBe('fast');
    expect(c.toMarkdown()).toContain('slow (best)');
    expect(await renderSvg(c.chart!)).toContain('slow (best)');
  });

  it('names the way and the field that is wrong', async () => {
    await expect(
      compare(cutterMarks as never, {
        a: { spindleSpeed: '6000 rpm', knives: 4, feed: '4 kg' },
        b: { knives: 4, feed: '4 m/min' },
      }),
    ).rejects.toThrow(/a\.feed: got the unit "kg".*b\.spindleSpeed: missing/);
    await expect(compare(cutterMarks as never, { a: {} })).rejects.toThrow(/two or more/);
  });
});

describe('whatIf', () => {
  it('carries the formulas into the chart, where Vega calculates what the recipe does', async () => {
    const w = whatIf(cutterMarks, {
      feed: range('2 m/min', '12 m/min'),
      spindleSpeed: range('3000 rpm', '9000 rpm'),
      knives: range(2, 6),
    });
    const [vega, lite] = await Promise.all([import('vega'), import('vega-lite')]);
    const view = new vega.View(vega.parse(lite.compile(w.chart as never).spec), { renderer: 'none' });
    await view.signal('s_spindleSpeed', 4500).signal('s_knives', 3).runAsync();
    const rows =
      Object.values((view.getState() as { data: Record<string, unknown> }).data).length >= 0
        ? (view.data('source_0') as { x: number; y: number }[])
        : [];
    const table =
      rows.length > 0 && rows[0]?.y !== undefined
        ? rows
        : (view.data('data_0') as { x: number; y: number }[]);
    expect(table.length).toBe(81);
    for (const d of table) expect(d.y).toBeCloseTo((d.x * 1000) / (3 * 4500), 9);
    view.finalize();
  });

  it('says in a picture, where no slider moves, at which values it is drawn', async () => {
    const w = whatIf(cutterMarks, {
      feed: range('2 m/min', '12 m/min'),
      spindleSpeed: range('3000 rpm', '9000 rpm'),
      knives: range(2, 6),
    });
    for (const shown of [w, w.chart]) {
      const bundle = await (shown as unknown as Record<symbol, () => Promise<Record<string, unknown>>>)[
        Symbol.for('Jupyter.display')
      ]!();
      const picture = String(bundle['image/svg+xml']).replace(/<[^>]+>/g, ' ');
      expect(picture).toMatch(/Drawn at spindle speed 6000 rpm, knives 4/);
      expect(picture).not.toContain('Move the sliders');
      const live = bundle['application/vnd.vegalite.v5+json'] as { title: { subtitle: unknown } };
      expect(JSON.stringify(live.title.subtitle)).toContain('Move the sliders');
    }
  });

  it('tables a recipe that solves', async () => {
    const w = whatIf(
      stripCount,
      { topWidth: range('500 mm', '900 mm', 9), stripWidth: range('40 mm', '60 mm', 5) },
      { output: 'gluedWidth' },
    );
    expect((w.chart['data'] as { values: unknown[] }).values).toHaveLength(45);
    expect(await renderSvg(w.chart)).toMatch(/^<svg/);
  });

  it('takes one range, and then has no slider', async () => {
    const w = whatIf(stripCount, { topWidth: range('500 mm', '900 mm', 9), stripWidth: '48 mm' });
    expect(w.chart['params']).toEqual([]);
    expect((w.chart['data'] as { values: unknown[] }).values).toHaveLength(9);
    expect(await renderSvg(w.chart)).toMatch(/^<svg/);
    expect(() => whatIf(stripCount, { topWidth: '600 mm', stripWidth: '48 mm' })).toThrow(
      /no input has a range/,
    );
    expect(() =>
      whatIf(stripCount, { topWidth: '600 mm', stripWidth: '48 mm', count: range(1, 2) } as never),
    ).toThrow(/count: no such input/);
  });
});
