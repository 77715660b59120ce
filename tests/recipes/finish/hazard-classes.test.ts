import { describe, expect, it } from 'vitest';
import {
  hazardCautions,
  hazardClasses,
  hazardsOf,
  waterBorneNote,
} from '../../../src/recipes/finish/hazard-classes.js';

const classes = (name: string): string[] => hazardClasses(name).map((c) => c.name);
const text = (names: string[], sprayed = false): string =>
  hazardCautions(names, sprayed)
    .map((c) => c.text)
    .join('\n');

describe('the class of a name', () => {
  it.each([
    ['spar varnish', 'oil varnish'],
    ['exterior yacht varnish', 'oil varnish'],
    ['oil enamel', 'enamel'],
    ['boiled linseed oil', 'drying oil'],
    ['2K polyurethane hardener', 'isocyanate'],
    ['two-pack lacquer', 'isocyanate'],
    ['2-part polyurethane', 'isocyanate'],
    ['clear epoxy resin', 'epoxy'],
    ['pre-cat lacquer', 'acid-catalysed'],
    ['Catalysed conversion varnish', 'acid-catalysed'],
    ['nitrocellulose lacquer', 'lacquer'],
    ['cellulose thinner', 'lacquer'],
    ['paint stripper', 'stripper'],
    ['button shellac', 'spirit finish'],
    ['beeswax polish', 'wax'],
    ['white spirit', 'solvent'],
    ['water', 'water-borne'],
    ['acrylic clear coat', 'water-borne'],
  ])('%s is %s', (name, wanted) => {
    expect(classes(name)).toContain(wanted);
  });
  it('is not found inside another word', () => {
    expect(classes('transparent')).toEqual([]);
    expect(classes('premium')).toEqual([]);
  });
  it('of a water-borne finish keeps its hardener', () => {
    expect(classes('water-based varnish')).toEqual(['water-borne']);
    expect(classes('water-borne polyurethane with crosslinker')).toEqual(['isocyanate', 'water-borne']);
  });
});

describe('the warnings', () => {
  it('of an unknown name are all kept, beside known ones too', () => {
    for (const names of [['Brand X 400'], ['water', 'Brand X 400']]) {
      const { hazards, unknown } = hazardsOf(names);
      expect(unknown).toEqual(['Brand X 400']);
      for (const h of ['rags', 'vapour', 'flammable'] as const) expect(hazards.has(h)).toBe(true);
      expect(text(names)).toMatch(/Brand X 400 .* the name is not known here, so every warning is kept/);
    }
    expect([...hazardsOf([]).hazards]).toEqual(['rags', 'vapour', 'flammable']);
  });
  it('of isocyanate name air-fed apparatus when sprayed, and not at home', () => {
    expect(text(['2K lacquer'], true)).toMatch(/only air-fed breathing apparatus.*Not at home/);
    expect(text(['2K lacquer'])).toMatch(/asthma and skin allergy/);
  });
  it('of a sprayed finish name the filter and the fan, whatever it is', () => {
    for (const name of ['water', 'shellac', 'Brand X']) expect(text([name], true)).toMatch(/A2P3/);
    expect(text(['shellac'])).not.toMatch(/A2P3/);
  });
  it('never name a filter mask as enough where it is not', () => {
    expect(text(['2K lacquer'], true)).not.toMatch(/A2P3/);
    // Formaldehyde is a gas at -19 °C; filters of type A are for boiling points over 65 °C.
    expect(text(['conversion varnish'], true)).not.toMatch(/A2P3/);
    expect(text(['conversion varnish'])).toMatch(/A2\) does not hold formaldehyde back/);
    for (const names of [['Brand X'], []])
      expect(text(names, true)).toMatch(/not enough against an isocyanate/);
  });
  it('stay when a thing is added to the mix', () => {
    const names = ['linseed oil', 'turpentine', 'epoxy', '2K hardener', 'acrylic', 'Brand X', 'lacquer'];
    for (let i = 1; i < names.length; i++) {
      const before = hazardsOf(names.slice(0, i)).hazards;
      const after = hazardsOf(names.slice(0, i + 1)).hazards;
      for (const h of before) expect(after.has(h)).toBe(true);
    }
  });
  it('of water-borne finish alone are a note', () => {
    expect(text(['water', 'acrylic'])).toBe('');
    expect(waterBorneNote(['acrylic'], false).map((c) => c.level)).toEqual(['note']);
    expect(waterBorneNote(['acrylic', 'Brand X'], false)).toEqual([]);
    expect(waterBorneNote([], false)).toEqual([]);
  });
  it('each name a source, but for what is not known', () => {
    for (const c of hazardCautions(['2K lacquer', 'epoxy', 'pre-cat', 'stripper', 'nitrocellulose'], true))
      expect(c.source, c.text).toBeDefined();
  });
});
