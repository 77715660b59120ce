// The answer first: every recipe opens with a sentence that can be said aloud.
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/recipes/catalogue.js';
import { glueTiming } from '../../src/recipes/lamination/glue-timing.js';
import { topSag } from '../../src/recipes/rails/top-sag.js';
import { beam } from '../../src/recipes/rails/beam.js';
import { resultInternals } from '../../src/engine/result.js';
import { resultParts } from '../../src/engine/result-parts.js';
import { spokenAnswer } from '../../src/engine/spoken.js';

const sentenceOf = (result: unknown): string => spokenAnswer(resultInternals(result)!);

describe('the sentence of every recipe', () => {
  it.each(catalogue.map((r) => [r.name, r] as const))('%s', async (_name, recipe) => {
    const result = await recipe(recipe.example);
    const sentence = sentenceOf(result);
    expect(sentence).toMatch(/^[\p{Lu}\d].*[.!]$/u);
    // Nothing left to fill in, no flag, no yes or no, no more than two breaths.
    expect(sentence).not.toMatch(/[{}]|undefined|NaN|\btrue\b|\bfalse\b|: (yes|no)\b/);
    const mend = resultInternals(result)!.mend();
    expect(sentence.length - mend.length).toBeLessThanOrEqual(180);
    expect(mend.length).toBeLessThanOrEqual(140);
    expect(result.toText().split('\n')[2]).toBe(sentence);
    expect(result.toMarkdown()).toContain(`**${sentence}**`);
  });
  it.each(catalogue.map((r) => [r.name, r] as const))(
    '%s shows five figures and three cautions at once',
    async (_name, recipe) => {
      const parts = resultParts(resultInternals(await recipe(recipe.example))!);
      expect(parts.lines.length).toBeLessThanOrEqual(5);
      const dangers = [...parts.cautions, ...parts.notes].filter((c) => c.level === 'danger');
      expect(parts.cautions.length).toBeLessThanOrEqual(Math.max(3, dangers.length));
      // No danger is ever folded away.
      expect(parts.notes.filter((c) => c.level === 'danger')).toEqual([]);
    },
  );
});

describe('what a sentence says', () => {
  it('is that it is too tight where less than a tenth of the open time is left, and not where there is more', () => {
    const job = {
      joints: 14,
      perJoint: '45 s',
      openTime: '10 min',
      clampsUp: '2 min',
      hold: '40 min',
    } as const;
    expect(sentenceOf(glueTiming({ ...job, temperature: '24 degC' }))).toMatch(
      /20 s to spare: too tight\. Glue 6 joints at a time\. Or take a glue with an open time of 11 min\.$/,
    );
    expect(sentenceOf(glueTiming({ ...job, joints: 4, temperature: '20 degC' }))).toMatch(
      /^Glue all 4 joints at once, with 5 min to spare\.$/,
    );
  });
  it('tells of a top and of a beam whether they hold', () => {
    const top = { ...topSag.example, grade: 'C24' };
    expect(sentenceOf(topSag(topSag.example))).toMatch(
      /^The top sags too far at an end that hangs over: 3\.4 mm where L\/300 allows 2\.3 mm/,
    );
    expect(sentenceOf(topSag({ ...top, thickness: '80 mm' }))).toMatch(/^It holds: the sag is \d+ % of what/);
    expect(sentenceOf(beam(beam.example))).toMatch(/^It is strong enough\. It sags 0\.7 mm at most\.$/);
  });
});

describe('given and assumed', () => {
  it('are what was typed and what was not', () => {
    const parts = resultParts(
      resultInternals(glueTiming({ joints: 4, perJoint: '45 s', openTime: '10 min' }))!,
    );
    expect(parts.given.map((l) => l.name)).toEqual(['joints', 'perJoint', 'openTime']);
    expect(parts.assumed.map((l) => l.name)).toEqual(['clampsUp', 'hold']);
  });
});
