import { describe, expect, it } from 'vitest';
import type { Quantity } from '../../src/units/quantity.js';
import { field } from '../../src/engine/field.js';
import { out } from '../../src/engine/output.js';
import { recipe } from '../../src/engine/recipe.js';
import { normal, solveFor, uncertain } from '../../src/index.js';

const total = recipe({
  name: 'total',
  title: 'Two cuts',
  topic: 'test',
  about: 'Adds two cuts, for tests.',
  sources: [],
  inputs: { a: field.length({ label: 'first cut' }), b: field.length({ label: 'second cut' }) },
  outputs: { total: out.length({ label: 'both cuts' }) },
  solve: ({ a, b }) => ({ total: a + b }),
  example: { a: '1 m', b: '1 m' },
});
const inputs = { a: normal('1 m', '3 mm'), b: normal('1 m', '4 mm') };
const deviation = async (coefficient?: number): Promise<number> => {
  const correlated =
    coefficient === undefined
      ? []
      : [{ inputs: ['a', 'b'] as const, ...(coefficient < 1 ? { coefficient } : {}) }];
  const d = await uncertain(total, inputs, { samples: 20_000, correlated });
  return (d.deviation as Quantity<'length'>).in('mm');
};

describe('correlated inputs', () => {
  it('of one cause add up their deviations, independent ones the squares, others between', async () => {
    // By hand: 3 + 4 = 7; root of 9 + 16 = 5; root of 9 + 16 + 2 x 0.5 x 12 = 6.083.
    expect(await deviation(1)).toBeCloseTo(7, 1);
    expect(await deviation()).toBeCloseTo(5, 1);
    expect(await deviation(0.5)).toBeCloseTo(Math.sqrt(37), 1);
  });

  it('share one index of sensitivity', async () => {
    const options = { samples: 2000, correlated: [{ inputs: ['a', 'b'] as const, coefficient: 0.5 }] };
    const d = await uncertain(total, inputs, options);
    expect(d.sensitivity).toEqual([]);
    expect(d.toMarkdown()).toContain('normal');
  });

  it.each([
    [{ inputs: ['a'] }, /correlated: got 1 inputs, takes two or more/],
    [{ inputs: ['a', 'c'] }, /correlated: got "c", takes inputs that vary here: a, b/],
    [{ inputs: ['a', 'a'] }, /correlated: got "a" twice/],
    [{ inputs: ['a', 'b'], coefficient: 2 }, /correlated: got a coefficient of 2/],
  ])('refuses %j', async (correlation, message) => {
    await expect(uncertain(total as never, inputs, { correlated: [correlation] })).rejects.toThrow(message);
  });
});

describe('solveFor on a count', () => {
  const strips = recipe({
    name: 'strips',
    title: 'Strips of 50 mm',
    topic: 'test',
    about: 'Counts strips, for tests.',
    sources: [],
    inputs: { width: field.length({ label: 'width', min: '100 mm', max: '900 mm' }) },
    outputs: { count: out.count({ label: 'strips' }) },
    solve: ({ width }) => ({ count: Math.floor(width / 0.05 + 1e-12) }),
    example: { width: '600 mm' },
  });

  it('gives the stretch with its ends', () => {
    const s = solveFor(strips, 'width', { count: 12 }, {});
    // Twelve strips of 50 mm are 600 mm; the thirteenth begins at 650 mm.
    expect(s.intervals).toHaveLength(1);
    expect((s.intervals[0]?.from as Quantity<'length'>).in('mm')).toBeCloseTo(600, 6);
    expect((s.intervals[0]?.to as Quantity<'length'>).in('mm')).toBeCloseTo(650, 6);
    expect(s.roots).toHaveLength(2);
    expect(s.toText()).toMatch(/^width for count of 12: from 600 mm .* to 650 mm/);
  });
});
