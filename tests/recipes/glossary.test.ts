import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/recipes/catalogue.js';
import { glossary, glossaryEntry, recipesFor, recipesUsing, termsOf } from '../../src/recipes/glossary.js';

const plain = (text: string): string => text.toLowerCase();

describe('the glossary', () => {
  it('has about 150 words of the trade or more, each once', () => {
    const terms = glossary().map((e) => plain(e.term));
    expect(terms.length).toBeGreaterThanOrEqual(150);
    expect(new Set(terms).size).toBe(terms.length);
  });
  it.each(glossary().map((e) => [e.term, e] as const))('%s: one plain sentence', (_term, e) => {
    expect(e.meaning).toMatch(/^[A-Z0-9].*\.$/);
    expect(e.meaning).not.toMatch(/[.!?] [A-Z]/);
    expect(e.meaning.length).toBeLessThanOrEqual(140);
    expect(e.meaning).not.toMatch(/reckon|nought|\bshall\b|from memory/i);
  });
  it.each([
    ['EMC', 'equilibrium moisture content'],
    ['MOE', 'elastic modulus'],
    ['cauls', 'caul'],
    ['dado', 'dado'],
    ['plain-sawn', 'flat-sawn'],
    ['Quartersawn', 'quarter-sawn'],
    ['miter', 'mitre'],
  ])('%s leads to %s', (asked, term) => {
    expect(glossaryEntry(asked)?.term).toBe(term);
  });
  it('has nothing for what is no word', () => {
    expect(glossaryEntry('xyzzy')).toBeUndefined();
    expect(glossaryEntry('')).toBeUndefined();
  });
});

describe('words of a recipe', () => {
  it.each(catalogue.map((r) => [r.name, r] as const))(
    '%s uses words that the glossary explains',
    (_name, r) => {
      expect(termsOf(r).length).toBeGreaterThan(0);
      for (const e of termsOf(r)) expect(recipesUsing(e)).toContain(r);
    },
  );
});

describe('search', () => {
  // American words, abbreviations and near things.
  it.each([
    ['EMC', 'equilibriumMoisture'],
    ['MOE', 'beam'],
    ['miter', 'mitredEnd'],
    ['half lap', 'halfLap'],
    ['jointer', 'stripCount'],
    ['cut list', 'cuttingPlan'],
    ['warp', 'flatteningLoss'],
    ['heavy', 'pieceWeight'],
    ['lift', 'pieceWeight'],
    ['enough wood', 'pileYield'],
    ['buckle', 'movementAcross'],
    ['clamps', 'clampPlan'],
    ['sandpaper', 'gritSequence'],
    ['wobble', 'rackingFrame'],
    ['tip over', 'tipping'],
    ['wood movement', 'seasonalMovement'],
  ])('%s finds %s', (words, name) => {
    expect(recipesFor(words).map((r) => r.name)).toContain(name);
  });
  it('puts names first, and finds nothing for nonsense', () => {
    expect(recipesFor('glue')[0]?.name).toMatch(/glue/i);
    expect(recipesFor('xyzzy')).toEqual([]);
    expect(recipesFor('')).toHaveLength(catalogue.length);
  });
});
