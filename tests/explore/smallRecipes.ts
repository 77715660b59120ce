// Small recipes for the tests of this room, whose answers are reckoned by hand.
import { field } from '../../src/recipe/field.js';
import { formula, letter } from '../../src/recipe/formula.js';
import { out } from '../../src/recipe/output.js';
import { longRecipe, recipe } from '../../src/recipe/recipe.js';
import { Refusal } from '../../src/quantities/refusal.js';

const common = { topic: 'test', about: 'For tests.', sources: [] } as const;

/** Nought at both ends and the whole height in the middle: 4 h x (1 - x). */
export const arch = recipe({
  ...common,
  name: 'arch',
  title: 'An arch',
  inputs: {
    x: field.ratio({ symbol: 'x', says: 'place along it', min: 0, max: 1 }),
    h: field.length({ symbol: 'h', says: 'height' }),
  },
  steps: [
    formula({
      symbol: 'y',
      gives: letter('length', 'height at the place'),
      text: '4 h x * (1 - x)',
      where: { h: letter('length', 'height'), x: letter('ratio', 'place') },
      basis: 'geometry',
    }),
  ],
  outputs: { y: out.length({ symbol: 'y', says: 'height at the place' }) },
  example: { x: 0.5, h: '1 m' },
});

/** Ten degrees (of Celsius) warmer, shown in Fahrenheit. */
export const warmer = recipe({
  ...common,
  name: 'warmer',
  title: 'Warmer by ten degrees',
  inputs: { air: field.temperature({ symbol: 'T', says: 'air', unit: 'degF' }) },
  steps: [
    formula({
      symbol: 'W',
      gives: letter('temperature', 'warmer air'),
      text: 'T + 10',
      where: { T: letter('temperature', 'air') },
      basis: 'definition',
    }),
  ],
  outputs: { warm: out.temperature({ symbol: 'W', says: 'warmer air', unit: 'degF' }) },
  example: { air: '20 degC' },
});

/** Adds two lengths by a search that takes a moment; tells its signal and reports half way. */
export const seen: { signals: (AbortSignal | undefined)[] } = { signals: [] };
export const slowSum = longRecipe({
  ...common,
  name: 'slowSum',
  title: 'A slow sum',
  inputs: { a: field.length({ says: 'first' }), b: field.length({ says: 'second' }) },
  outputs: { total: out.length({ says: 'sum' }) },
  search: async (given, work) => {
    seen.signals.push(work.signal);
    work.progress({ says: 'half way', done: 0.5 });
    work.progress({ says: 'who knows' });
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
    pieces: field.count({ says: 'how many', min: 1 }),
    sort: field.choice(['plain', 'fine'], { says: 'which sort', default: 'plain' }),
    each: field.money({ says: 'price of one', default: '2' }),
    packed: field.flag({ says: 'in boxes', default: false }),
    marks: field.list(field.text({ says: 'mark' }), { says: 'marks to stamp', optional: true }),
    size: field.group({ width: field.length({ says: 'width' }) }, { says: 'size', optional: true }),
  },
  outputs: {
    total: out.money({ says: 'price of all' }),
    rebate: out.money({ says: 'rebate', optional: true }),
    words: out.text({ says: 'in words' }),
    rows: out.list(out.count({ says: 'row' }), { says: 'rows' }),
    ratio: out.ratio({ says: 'share of the dearest' }),
  },
  solve: (g) => {
    if (g.pieces >= 3 && g.pieces <= 5)
      throw new Refusal({ field: 'pieces', says: 'takes no three to five' });
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
