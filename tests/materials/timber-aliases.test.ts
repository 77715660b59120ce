import { describe, expect, it } from 'vitest';
import { allSpecies, findSpecies } from '../../src/materials/species.js';
import { timberAliases } from '../../src/materials/timber-aliases.js';

const aliases = timberAliases();

describe('other names of timbers', () => {
  it.each(aliases.map((a) => [a.alias, a] as const))('%s', (_name, a) => {
    expect(allSpecies().map((s) => s.id)).toContain(a.species);
    expect(findSpecies(a.alias).id).toBe(a.species);
    // One name in two languages stands once.
    expect(aliases.filter((b) => b.alias.toLowerCase() === a.alias.toLowerCase())).toHaveLength(1);
  });
  it('cover six languages and the trade', () => {
    const languages = new Set(aliases.flatMap((a) => a.language.split(', ')));
    for (const l of ['German', 'French', 'Spanish', 'Italian', 'Dutch', 'Swedish', 'Polish', 'trade'])
      expect(languages).toContain(l);
  });
  it.each([
    ['deal', 'scots-pine', /white deal is spruce/],
    ['meranti', 'meranti', /light red, dark red, white and yellow differ/],
    ['Oregon', 'douglas-fir', /Douglas-fir/],
    ['redwood', 'redwood', /in Britain redwood is Scots pine/],
    ['mahogany', 'true-mahogany', /Khaya, sapele/],
    ['yellow pine', 'southern-yellow-pine', /eastern white pine/],
  ])('%s is taken for %s with a caution', (name, id, says) => {
    const found = findSpecies(name);
    expect(found.id).toBe(id);
    expect(found.readAs).toMatch(says);
  });
  it('without a caution where the name is plain', () => {
    expect(findSpecies('Eiche').readAs).toBeUndefined();
    expect(findSpecies('Scots pine').readAs).toBeUndefined();
  });
});
