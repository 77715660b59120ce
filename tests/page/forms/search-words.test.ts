// The search knows American words, abbreviations and near things.
import { describe, expect, it } from 'vitest';
import { search, searchedQuestions } from '../../../src/page/forms/ask/search-questions.js';
import { recipeModel } from '../../../src/page/forms/worker/recipe-models.js';
import { catalogue } from '../../../src/recipes/catalogue.js';

const all = searchedQuestions(catalogue.map(recipeModel));
const found = (words: string): string[] => search(words, all, 6).map(({ target }) => target);

describe('the search', () => {
  it.each([
    ['EMC', 'equilibriumMoisture'],
    ['MOE', 'beam'],
    ['miter', 'mitreGap'],
    ['dado', 'jointFit'],
    ['rabbet', 'jointFit'],
    ['jointer', 'planingTime'],
    ['cut list', 'cuttingPlan'],
    ['warp', 'flatteningLoss'],
    ['heavy', 'pieceWeight'],
    ['lift', 'pieceWeight'],
    ['enough wood', 'topFromPile'],
    ['buckle', 'clampPlan'],
    ['clamps', 'clampPlan'],
  ])('finds for %s the recipe %s', (words, name) => {
    expect(found(words)).toContain(name);
  });
  it('says plainly that nothing matches', () => {
    expect(found('zzzz qqqq')).toEqual([]);
  });
});
