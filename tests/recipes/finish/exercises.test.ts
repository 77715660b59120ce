import { describe, expect, it } from 'vitest';
import type { Exercise } from '../../../src/index.js';
import { codeCells, exercisesIn } from '../exercise-cells.js';

// The class exercises of "The last coat", each with an answer worked out by hand, which the notebook must accept.
const byHand: Readonly<Record<string, readonly [right: unknown, wrong: unknown]>> = {
  spirit: ['250 mL', '200 mL'], // a litre is 80 %, so the whole is 1.25 L
  coats: [5, 3], // 42 / 28 x 3 = 4.5
  bare: ['407 mL', '366 mL'], // (1.95 x 0.64 + 2 x 0.042 x 2.59) m2 x 3 / 12 / 0.9; without the loss 366 mL
  five: [0.444, 0.875], // (5 / 3 - 1) / 1.5; the chart prints 7/8
};

describe('class exercises of the last coat', () => {
  const sources = codeCells('08-the-last-coat').filter((s) => s.includes('= exercise('));
  it('are all answered here', () => {
    expect(sources).toHaveLength(Object.keys(byHand).length);
  });
  it.each(Object.entries(byHand))(
    '%s takes the answer by hand and not the usual slip',
    (name, [right, wrong]) => {
      const code = sources.find((s) => s.includes(`const ${name} = exercise(`)) as string;
      const exercise = exercisesIn(code, [name])[name] as Exercise;
      expect(exercise.check(right).message, String(right)).toMatch(/^Right/);
      expect(exercise.check(wrong).right, String(wrong)).toBe(false);
      expect(exercise.check('?').right).toBe(false);
      expect(exercise.question).toMatch(/\?$/);
    },
  );
});
