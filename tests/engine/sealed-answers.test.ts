import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Tolerance } from '../../src/engine/answer-check.js';
import { openAnswers, sealAnswers } from '../../src/engine/sealed-answers.js';

const answers = [
  { place: 0, value: 4.32, says: 'Right: 4.32 mm.' },
  { place: 1, value: 10.368, says: 'By how much did the moisture change?' },
  { place: 2, value: 0, says: 'Does it not move at all?' },
  { place: 3, value: -4.32, says: 'Does it grow or shrink?' },
];

describe('sealed answers', () => {
  it('open to their own value and say nothing else', async () => {
    const sealed = await sealAnswers('moisture 1 27', { relative: 0.015 }, answers);
    for (const { place, value, says } of answers)
      expect(await openAnswers(sealed, value)).toEqual([{ place, says }]);
    expect(await openAnswers(sealed, 7)).toEqual([]);
    expect(await openAnswers({ ...sealed, salt: 'moisture 1 28' }, 4.32)).toEqual([]);
  });
  it('cannot be read: no text, no value, more rows than answers, boxes of one length', async () => {
    const sealed = await sealAnswers('s', { relative: 0.015 }, answers);
    const text = JSON.stringify(sealed);
    expect(text).not.toMatch(/Right|moisture change|4\.32|10\.36/);
    expect(sealed.rows).toHaveLength(answers.length + 2);
    expect(new Set(sealed.rows.map(({ box }) => box.length)).size).toBe(1);
  });
  it('take words', async () => {
    const sealed = await sealAnswers('s', { relative: 0.01 }, [
      { place: 0, value: 'august', says: 'Right: August.' },
      { place: 1, value: 'july', says: 'Is the air wettest when the sun is highest?' },
    ]);
    expect(await openAnswers(sealed, 'august')).toEqual([{ place: 0, says: 'Right: August.' }]);
    expect(await openAnswers(sealed, 'may')).toEqual([]);
  });
  // A phase is kept to 1/64 of a cell, so the edge may lie 1/128 of a cell (1/64 of the tolerance) off.
  it('open within the tolerance and not beyond it', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.double({ min: 0.001, max: 1e6, noNaN: true }),
        fc.constantFrom<Tolerance>({ relative: 0.004 }, { relative: 0.02 }, { absolute: 0.3 }),
        fc.double({ min: -2, max: 2, noNaN: true }),
        async (value, tolerance, share) => {
          fc.pre(Math.abs(Math.abs(share) - 1) > 0.03);
          const wide = 'absolute' in tolerance ? tolerance.absolute : value * tolerance.relative;
          const sealed = await sealAnswers('s', tolerance, [{ place: 0, value, says: 'Right.' }]);
          const found = await openAnswers(sealed, value + share * wide);
          expect(found.length).toBe(Math.abs(share) < 1 ? 1 : 0);
        },
      ),
      { numRuns: 60 },
    );
  });
});
