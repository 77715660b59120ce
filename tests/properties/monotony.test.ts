// Monotony wherever physics has it: more load never a longer span, a thinner finish never more solids, more clamps never
// less pressure. The rows stand beside this file, by topic; a recipe has laws there or a reason why it has none.
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/recipes/catalogue.js';
import { finishLaws } from './monotony/finish-laws.js';
import { joineryLaws } from './monotony/joinery-laws.js';
import { laminationLaws } from './monotony/lamination-laws.js';
import { moistureLaws } from './monotony/moisture-laws.js';
import { holds } from './monotony/monotony.js';
import { railsLaws } from './monotony/rails-laws.js';
import { stockLaws } from './monotony/stock-laws.js';
import { workshopLaws } from './monotony/workshop-laws.js';

const all = [
  ...moistureLaws,
  ...stockLaws,
  ...laminationLaws,
  ...joineryLaws,
  ...railsLaws,
  ...finishLaws,
  ...workshopLaws,
];
/** Recipes that no law of monotony holds for, each with its reason. */
const without: Readonly<Record<string, string>> = {};

describe('laws of monotony', () => {
  it('stand for every recipe, or a reason why there is none', () => {
    const covered = new Set(all.map((l) => l.recipe.name));
    const missing = catalogue.map((r) => r.name).filter((name) => !covered.has(name) && !without[name]);
    expect(missing).toEqual([]);
    expect(Object.keys(without).filter((name) => covered.has(name))).toEqual([]);
  });
  describe.each(all.map((l) => [l.recipe.name, l] as const))('%s', (_, l) => {
    it.each(l.laws.map((law) => [law.raise, law] as const))('where %s rises', async (_name, law) => {
      await holds(l, law);
    });
  });
});
