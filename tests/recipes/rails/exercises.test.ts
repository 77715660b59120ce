import { describe, expect, it } from 'vitest';
import type { Exercise } from '../../../src/index.js';
import { codeCells, exercisesIn } from '../exercise-cells.js';

// The class exercises of the two notebooks, each with an answer worked out by hand and a slip that pupils make.
const byHand: Readonly<Record<string, Readonly<Record<string, readonly [right: unknown, wrong: unknown]>>>> =
  {
    '06-what-the-rails-carry': {
      r1: [8, 2], // 2 x 2 x 2
      r2: ['500 N m', '1000 N m'], // 500 N x 1 m
      r3: ['3.125 mm', '0.625 mm'], // 5 x 0.4 x 1000^4 / (384 x 10000 x 250 x 20^3 / 12)
      r4: ['-200 N', '200 N'], // 600 x 0.5 / 1.5, held down
      r5: ['65.4 N', '131 N'], // 30 x 9.81 x 200 / 900
      r6: ['4.69 mm', '3.125 mm'], // half as much again
    },
    '07-joints-that-go-together': {
      j1: ['1700 mm', '1150 mm'], // 15, 8, 17
      j2: ['left', 'right'],
      j3: ['13.5 mm', '27 mm'],
      j4: ['22.5 deg', '45 deg'],
      j5: ['2128.5 mm', '2120 mm'], // 1200 + 2 x 450 + 2 x 10 + 2 x 3 x 1.4142
      j6: ['11.925 mm', '11.85 mm'],
      j7: ['0.1146 deg', '0.2292 deg'], // asin(2 / 1000)
      j8: ['134 mm', '116 mm'], // 90 + 2 x 4 + 2 x 18
    },
    '12-will-it-go-in': {
      w1: ['2828 mm', '2000 mm'], // the root of 8
      w2: [4, 2], // 2/3 x 32 = 21.3 and 1/2 x 48 = 24 are too little, 1/2 x 64 = 32 is not
    },
  };

describe.each(Object.entries(byHand))('class exercises of %s', (notebook, answers) => {
  const sources = codeCells(notebook);
  const definitions = sources.filter((s) => s.includes('= exercise('));
  const made = exercisesIn(definitions.join('\n'), Object.keys(answers));

  it('are all asked, and all answered here', () => {
    expect(definitions.join('').match(/= exercise\(/g)).toHaveLength(Object.keys(answers).length);
    for (const name of Object.keys(answers)) expect(sources).toContain(`${name}.check('?')`);
  });
  it.each(Object.entries(answers))(
    '%s takes the answer by hand and not the usual slip',
    (name, [right, wrong]) => {
      const exercise = made[name] as Exercise;
      expect(exercise.check(right).message, String(right)).toMatch(/^Right/);
      expect(exercise.check(wrong).right, String(wrong)).toBe(false);
      expect(exercise.check('?').right).toBe(false);
      expect(exercise.question).toMatch(/\?$/);
    },
  );
});
