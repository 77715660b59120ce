// Small recipes for the tests of this folder, whose answers are calculated by hand.
import { field } from '../../src/engine/field.js';
import { formula, variable } from '../../src/engine/formula.js';
import { out } from '../../src/engine/output.js';
import { asyncRecipe, recipe } from '../../src/engine/recipe.js';
import { InputError } from '../../src/units/input-error.js';

const common = { topic: 'test', about: 'For tests.', sources: [] } as const;

/** Zero at both ends and the whole height in the middle: 4 h x (1 - x). */
export const arch = recipe({
  ...common,
  name: 'arch',
  title: 'An arch',
  inputs: {
    x: field.ratio({ symbol: 'x', label: 'place along it', min: 0, max: 1 }),
    h: field.length({ symbol: 'h', label: 'height' }),
  },
  steps: [
    formula({
      symbol: 'y',
      result: variable('length', 'height at the place'),
      expression: '4 h x * (1 - x)',
      variables: { h: variable('length', 'height'), x: variable('ratio', 'place') },
      basis: 'geometry',
    }),
  ],
  outputs: { y: out.length({ symbol: 'y', label: 'height at the place' }) },
  example: { x: 0.5, h: '1 m' },
});

/** Ten degrees (of Celsius) warmer, shown in Fahrenheit. */
export const warmer = recipe({
  ...common,
  name: 'warmer',
  title: 'Warmer by ten degrees',
  inputs: { air: field.temperature({ symbol: 'T', label: 'air', unit: 'degF' }) },
  steps: [
    formula({
      symbol: 'W',
      result: variable('temperature', 'warmer air'),
      expression: 'T + 10',
      variables: { T: variable('temperature', 'air') },
      basis: 'definition',
    }),
  ],
  outputs: { warm: out.temperature({ symbol: 'W', label: 'warmer air', unit: 'degF' }) },
  example: { air: '20 degC' },
});

/** Adds two lengths by a search that takes a moment; tells its signal and reports half way. */
export const seen: { signals: (AbortSignal | undefined)[] } = { signals: [] };
export const slowSum = asyncRecipe({
  ...common,
  name: 'slowSum',
  title: 'A slow sum',
  inputs: { a: field.length({ label: 'first' }), b: field.length({ label: 'second' }) },
  outputs: { total: out.length({ label: 'sum' }) },
  search: async (given, trace) => {
    seen.signals.push(trace.signal);
    trace.progress({ message: 'half way', done: 0.5 });
    trace.progress({ message: 'who knows' });
    await Promise.resolve();
    return { total: given.a + given.b };
  },
  example: { a: '1 m', b: '2 m' },
});

/** Chooses: prices a count of pieces of a sort, refuses three to five of them, and gives a rebate from ten on alone. */
export const price = recipe({
  ...common,
  name: 'price',
  title: 'A price',
  inputs: {
    pieces: field.count({ label: 'how many', min: 1 }),
    sort: field.choice(['plain', 'fine'], { label: 'which sort', default: 'plain' }),
    each: field.money({ label: 'price of one', default: '2' }),
    packed: field.flag({ label: 'in boxes', default: false }),
    marks: field.list(field.text({ label: 'mark' }), { label: 'marks to stamp', optional: true }),
    size: field.group({ width: field.length({ label: 'width' }) }, { label: 'size', optional: true }),
  },
  outputs: {
    total: out.money({ label: 'price of all' }),
    rebate: out.money({ label: 'rebate', optional: true }),
    words: out.text({ label: 'in words' }),
    rows: out.list(out.count({ label: 'row' }), { label: 'rows' }),
    ratio: out.ratio({ label: 'share of the dearest' }),
  },
  solve: (g) => {
    if (g.pieces >= 3 && g.pieces <= 5)
      throw new InputError({ field: 'pieces', message: 'takes no three to five' });
    const total = g.pieces * g.each * (g.sort === 'fine' ? 2 : 1);
    return {
      total,
      ...(g.pieces >= 10 ? { rebate: total / 10 } : {}),
      words: `${g.pieces} pieces`,
      rows: [g.pieces],
      ratio: total / 1000,
    };
  },
  example: { pieces: 1 },
});
