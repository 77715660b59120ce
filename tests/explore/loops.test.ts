import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  catalogue,
  cuttingPlan,
  each,
  empirical,
  movementAcross,
  Quantity,
  range,
  speciesWith,
  sweep,
  uncertain,
} from '../../src/index.js';
import { numberOutputs } from '../../src/explore/frame-columns.js';
import { quasiRandom } from '../../src/explore/samples.js';
import { InputError } from '../../src/units/input-error.js';
import type { AnyRecipe } from '../../src/engine/any-recipe.js';
import { field } from '../../src/engine/field.js';
import { out } from '../../src/engine/output.js';
import { recipe } from '../../src/engine/recipe.js';
import { isFormulaChain, compileSweep } from '../../src/engine/recipe-registry.js';

const movement = movementAcross as unknown as AnyRecipe;
const outputs = numberOutputs(movement.outputs);

/** The loop of some outputs as they are, in base units. */
const loopFor = (
  r: AnyRecipe,
  base: Readonly<Record<string, unknown>>,
  varying: readonly string[],
  wanted: readonly string[],
) =>
  compileSweep(
    r,
    base,
    (graph) => Object.fromEntries(varying.map((name) => [name, graph.input(name)])),
    (_, answer) => Object.fromEntries(wanted.map((name) => [name, answer[name] ?? NaN])),
  );

/** Whether the loop of a recipe gives at every point what the recipe gives when it is asked point by point. */
function sameAsOneByOne(
  r: AnyRecipe,
  base: Readonly<Record<string, unknown>>,
  columns: Readonly<Record<string, readonly number[]>>,
): void {
  const wanted = numberOutputs(r.outputs);
  const n = Object.values(columns)[0]?.length ?? 0;
  const loop = loopFor(r, base, Object.keys(columns), wanted);
  const outs = Object.fromEntries(wanted.map((name) => [name, new Float64Array(n)]));
  expect(loop).toBeDefined();
  loop?.(
    0,
    n,
    Object.fromEntries(Object.entries(columns).map(([name, values]) => [name, Float64Array.from(values)])),
    outs,
  );
  for (let i = 0; i < n; i++) {
    const point = {
      ...base,
      ...Object.fromEntries(Object.entries(columns).map(([k, values]) => [k, values[i]])),
    };
    const answer = r.evaluate(point) as Readonly<Record<string, number | undefined>>;
    for (const name of wanted) {
      const [one, many] = [answer[name] ?? NaN, outs[name]?.[i] as number];
      // The same to 1e-12 of the size: to the last bit but where a formula raises to a power.
      if (!(Object.is(one, many) || Math.abs(one - many) <= 1e-12 * Math.abs(one)))
        expect.fail(`${r.name} ${name}: ${one} one by one, ${many} in the loop, at ${JSON.stringify(point)}`);
    }
  }
}

// Where the rules change: the ends of the range of the coefficients, fibre saturation, and the field's own limits.
const corners = [0, 0.06, 0.06 - 1e-9, 0.06 - 2e-9, 0.14, 0.14 + 1e-9, 0.14 + 2e-9, 0.25, 0.28, 0.3, 0.31, 3];

describe('movement across the grain over many points', () => {
  it.each(['flat-sawn', 'mixed', '30 deg'])(
    '%s: no change of moisture moves nothing, exactly and never -0',
    (cut) => {
      const base = movement.read({ timber: 'white oak', cut, width: '1 m', from: '8 %', to: '8 %' });
      for (const at of corners) {
        const answer = movement.evaluate({ ...base, from: at, to: at }) as Record<string, number>;
        expect(['change', 'low', 'high', 'perSide', 'finalWidth'].map((name) => answer[name])).toEqual([
          0, 0, 0, 0, 1,
        ]);
      }
    },
  );

  it('gives a million samples', async () => {
    const d = await uncertain(
      movementAcross,
      { width: '900 mm +- 2 mm', timber: 'red oak', from: '8 % .. 9 %', to: '12 %' },
      { samples: 1_000_000, sensitivity: false },
    );
    expect(d.values).toHaveLength(1_000_000);
  });

  it('two defaults at fibre saturation and above are one place', async () => {
    // Hand: above 30 % nothing moves, so that going to 30 % and to 300 % is the same for a timber that has no other figure.
    const s = await sweep(movementAcross, {
      width: '500 mm',
      timber: 'white oak',
      cut: 'flat-sawn',
      from: '8 %',
      to: each(['30 %', '31 %', '300 %']),
    });
    const change = s.column('change').values;
    expect(change[1]).toBe(change[0]);
    expect(change[2]).toBe(change[0]);
  });

  it.each([
    ['a distance held at', { fixedAt: '100 mm' }],
    ['a rule of a standard', { rule: 'EN 336' }],
  ])('%s is calculated board by board, with the same numbers', async (_, more) => {
    const given = { width: range('600 mm', '700 mm', 3), timber: 'teak', from: '8 %', to: '12 %', ...more };
    const s = await sweep(movement, given);
    for (const [i, w] of [0.6, 0.65, 0.7].entries()) {
      const one = movement.evaluate(movement.read({ ...given, width: new Quantity('length', w) })) as Record<
        string,
        number
      >;
      expect(s.column('change').values[i]).toBeCloseTo((one['change'] as number) * 1000, 9);
    }
  });

  it('strips are calculated one by one, with the same numbers', async () => {
    const strips = [{ timber: 'teak', width: '60 mm', count: 5 }];
    const s = await sweep(movement, { strips, from: '8 %', to: each(['10 %', '12 %']) });
    const board = await sweep(movement, {
      timber: 'teak',
      width: '300 mm',
      from: '8 %',
      to: each(['10 %', '12 %']),
    });
    [0, 1].forEach((i) =>
      expect(s.column('change').values[i]).toBeCloseTo(board.column('change').values[i] as number, 9),
    );
  });

  it.each([
    ['the width is missing', { timber: 'teak', to: range('8 %', '12 %') }, /width: missing/],
    ['the timber is missing', { width: '1 m', to: range('8 %', '12 %') }, /timber: missing/],
    [
      'two figures of one’s own are given',
      { width: '1 m', coefficient: 0.002, shrinkage: '6 %', to: range('8 %', '12 %') },
      /shrinkage: given together with coefficient/,
    ],
    [
      'the line that is held lies beyond the width',
      { width: '1 m', timber: 'teak', fixedAt: '2 m', to: range('8 %', '12 %') },
      /fixedAt: got 2000\.0 mm/,
    ],
  ])('refuses by field where %s', async (_, given, message) => {
    await expect(sweep(movement, { from: '8 %', ...given })).rejects.toThrow(message);
    await expect(sweep(movement, { from: '8 %', ...given })).rejects.toBeInstanceOf(InputError);
  });

  it('a sawing without a figure is refused by name of the recipe and field', async () => {
    const one = timbersWith((m, s) => m || s).find((timber) => {
      try {
        movementAcross({ width: '1 m', timber, cut: 'quarter-sawn', from: '8 %', to: '12 %' });
        return false;
      } catch {
        return true;
      }
    });
    expect(one).toBeDefined();
    await expect(
      sweep(movement, {
        width: '1 m',
        timber: one,
        cut: 'quarter-sawn',
        from: '8 %',
        to: range('9 %', '12 %'),
      }),
    ).rejects.toThrow(/^movementAcross: cut: .* has a published figure for flat-sawn timber alone/);
  });
});

describe('every recipe that is a row of formulas', () => {
  const rows = catalogue.filter(isFormulaChain);

  it('there are several, and one that solves is none', () => {
    expect(rows.length).toBeGreaterThanOrEqual(3);
    expect(isFormulaChain(movementAcross)).toBe(false);
  });

  it.each(rows.map((r) => [r.name, r] as const))('%s: its loop gives what it gives', (_, r) => {
    const base = r.read(r.example) as Readonly<Record<string, number>>;
    const numbers = Object.entries(r.inputs).flatMap(([name, f]) =>
      f.symbol && f.kind !== 'count' && typeof base[name] === 'number' ? [name] : [],
    );
    fc.assert(
      fc.property(
        fc.subarray(numbers, { minLength: 1 }),
        fc.array(fc.double({ min: 0.9, max: 1.1, noNaN: true }), { minLength: 5, maxLength: 5 }),
        (varying, by) =>
          sameAsOneByOne(
            r,
            base,
            Object.fromEntries(
              varying.map((name) => [
                name,
                by.map((k) =>
                  Math.min(
                    r.inputs[name]?.max ?? Infinity,
                    Math.max(r.inputs[name]?.min ?? -Infinity, (base[name] as number) * k),
                  ),
                ),
              ]),
            ),
          ),
      ),
      { numRuns: 50 },
    );
  });
});

describe('a recipe that leaves an output out', () => {
  const half = recipe({
    name: 'half',
    title: 'Half',
    topic: 'test',
    about: 'Halves a length, for tests.',
    sources: [],
    inputs: { whole: field.length({ label: 'whole' }) },
    outputs: { half: out.length({ label: 'half' }), rest: out.length({ label: 'rest', optional: true }) },
    solve: ({ whole }) => ({ half: whole / 2 }),
    example: { whole: '1 m' },
  });

  it('gives a column without numbers, and no distribution', async () => {
    const s = await sweep(half, { whole: range('1 m', '3 m', 3) });
    expect([...s.column('half').values]).toEqual([500, 1000, 1500]);
    expect([...s.column('rest').values]).toEqual([NaN, NaN, NaN]);
    await expect(uncertain(half, { whole: '1 m .. 2 m' }, { output: 'rest' })).rejects.toThrow(
      /some samples give no finite answer/,
    );
  });
});

describe('draws', () => {
  it('of the loop are those of single boards', async () => {
    const samples = 3000;
    const d = await uncertain(
      movementAcross,
      {
        width: empirical(['630 mm', '650 mm']),
        from: '5 % .. 9 %',
        to: '11 % .. 35 %',
        timber: 'white oak',
        cut: 'flat-sawn',
      },
      { samples: samples, sensitivity: false, seed: 4 },
    );
    const draw = quasiRandom(3, 4);
    const u = [0, 1, 2].map((k) => {
      const column = new Float64Array(samples);
      draw(k, 0, column);
      return column;
    });
    const base = movement.read({
      width: '630 mm',
      from: '5 %',
      to: '11 %',
      timber: 'white oak',
      cut: 'flat-sawn',
    });
    const single = Array.from({ length: samples }, (_, i) => {
      const at = (k: number, low: number, high: number) => low + (high - low) * (u[k]?.[i] as number);
      const answer = movement.evaluate({
        ...base,
        width: at(0, 0.63, 0.65),
        from: at(1, 0.05, 0.09),
        to: at(2, 0.11, 0.35),
      });
      return (answer as Record<string, number>)['change'] as number;
    }).sort((a, b) => a - b);
    single.forEach((v, i) => expect(d.values[i]).toBeCloseTo(v, 13));
    expect(outputs[0]).toBe('change');
  });

  it('begin anywhere in the sequence and are the same', () => {
    const draw = quasiRandom(2, 9);
    const [whole, part] = [new Float64Array(100), new Float64Array(40)];
    draw(1, 0, whole);
    draw(1, 60, part);
    expect([...part]).toEqual([...whole.subarray(60)]);
  });

  it('are refused for a recipe that searches', async () => {
    await expect(uncertain(cuttingPlan as never, {})).rejects.toThrow(
      /cuttingPlan: uncertain takes a recipe that answers at once/,
    );
  });
});

/** Timbers of the data, by whether they have coefficients and shrinkage. */
function timbersWith(which: (movement: boolean, shrinkage: boolean) => boolean): string[] {
  const all = [...speciesWith('movement'), ...speciesWith('shrinkage')];
  return [...new Set(all.filter((t) => which(t.has('movement'), t.has('shrinkage'))).map((t) => t.id))];
}
