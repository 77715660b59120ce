// Long searches are not repeated for the same inputs once somebody asked to keep their answers.
import { afterEach, describe, expect, it } from 'vitest';
import { field } from '../../src/engine/field.js';
import { finishedOr, keepFinishedSearches } from '../../src/engine/finished-searches.js';
import { out } from '../../src/engine/output.js';
import { asyncRecipe } from '../../src/engine/recipe.js';

let searches = 0;
const shelfCount = asyncRecipe({
  name: 'shelfCount',
  title: 'Shelves',
  topic: 'stock',
  about: 'How many shelves fit.',
  sources: [],
  inputs: {
    height: field.length({ label: 'height', min: '0 mm', max: '5 m' }),
    pitch: field.length({ label: 'pitch', above: '0 mm', max: '5 m', default: '300 mm' }),
  },
  outputs: { shelves: out.count({ label: 'shelves' }) },
  search: ({ height, pitch }) => {
    searches++;
    if (height > 4) return Promise.reject(new Error('too high'));
    return Promise.resolve({ shelves: Math.floor(height / pitch) });
  },
  example: { height: '2 m' },
});

let forget: (() => void) | undefined;
afterEach(() => {
  forget?.();
  searches = 0;
});

describe('a finished search', () => {
  it('is repeated each time by default', async () => {
    await shelfCount({ height: '2 m' });
    await shelfCount({ height: '2 m' });
    expect(searches).toBe(2);
  });
  it('is reused for equal inputs, however they are written, and answers the same', async () => {
    forget = keepFinishedSearches(5);
    const first = await shelfCount({ height: '2 m' });
    const again = await shelfCount({ height: '2000 mm', pitch: '300 mm' });
    expect(searches).toBe(1);
    expect([first.shelves, again.shelves]).toEqual([6, 6]);
    expect((await shelfCount({ height: '2.4 m' })).shelves).toBe(8);
    expect((await shelfCount({ height: '2.4 m', pitch: '500 mm' })).shelves).toBe(4);
    expect(searches).toBe(3);
  });
  it('that failed is tried again', async () => {
    forget = keepFinishedSearches(5);
    await expect(shelfCount({ height: '4.5 m' })).rejects.toThrow('too high');
    await expect(shelfCount({ height: '4.5 m' })).rejects.toThrow('too high');
    expect(searches).toBe(2);
  });
  it('used longest ago is forgotten first', async () => {
    forget = keepFinishedSearches(2);
    for (const height of ['1 m', '2 m', '1 m', '3 m', '1 m', '2 m']) await shelfCount({ height });
    expect(searches).toBe(4);
    forget();
    await shelfCount({ height: '1 m' });
    expect(searches).toBe(5);
  });
  it('with inputs that text cannot tell apart is not reused', async () => {
    forget = keepFinishedSearches(5);
    let runs = 0;
    const run = (inputs: unknown): Promise<number> => finishedOr('x', inputs, () => Promise.resolve(++runs));
    expect([await run({ a: 1 }), await run({ a: 1 }), await run({ a: '1' })]).toEqual([1, 1, 2]);
    expect([await run([undefined]), await run([null]), await run([NaN]), await run([Infinity])]).toEqual([
      3, 4, 5, 6,
    ]);
    expect([await run(new Map([[1, 2]])), await run(new Map([[1, 3]]))]).toEqual([7, 8]);
    expect([await run({ f: () => 1 }), await run({ f: () => 2 })]).toEqual([9, 10]);
  });
});
