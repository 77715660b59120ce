import { describe, expect, it } from 'vitest';
import { agentsIn, finishHazards } from '../../../src/recipes/finish/hazards.js';
import { thinningRatio } from '../../../src/recipes/finish/thinning-ratio.js';
import { tableRows } from '../../../src/materials/data-tables.js';

const text = (names: readonly string[]): string =>
  finishHazards(names)
    .map((c) => c.text)
    .join('\n');

describe('what burns, by the names on jars', () => {
  it.each([
    ['white spirit', 'mineral spirits'],
    ['Mineral Turpentine', 'mineral spirits'],
    ['turps substitute', 'mineral spirits'],
    ['turpentine', 'turpentine'],
    ['gum turps', 'turpentine'],
    ['meths', 'ethyl alcohol'],
    ['denatured alcohol', 'ethyl alcohol'],
    ['methanol', 'methyl alcohol'],
    ['acetone', 'acetone'],
    ['kerosene', 'kerosine'],
    ['paraffin', 'kerosine'],
  ])('%s is %s', (name, agent) => {
    expect(agentsIn([name])[0]).toBe(agent);
  });
  // The tables print both scales: turpentine 95 F = 35 C (NIOSH), alcohol 55 F = 12.8 C, acetone 0 F = -17.8 C, methyl alcohol 52 F = 11.1 C (fire-safety table).
  it.each([
    ['turpentine', '35 °C'],
    ['meths', '13 °C'],
    ['acetone', '-18 °C'],
    ['methanol', '11 °C'],
  ])('%s has its printed flash point, %s', (name, point) => {
    expect(text([name])).toContain(`flash point ${point}`);
  });
  it('takes a finish called sprayed as sprayed', () => {
    expect(text(['2K lacquer, sprayed'])).toMatch(/only air-fed breathing apparatus/);
    expect(text(['aerosol shellac'])).toMatch(/hangs in the air as mist/);
  });
  it('warns of rags wherever an oil dries, and not for water-borne finish', () => {
    for (const n of ['linseed oil', 'tung oil', 'danish oil', 'varnish'])
      expect(text([n])).toMatch(/heat by themselves/);
    expect(text(['water', 'acrylic clear coat'])).not.toMatch(/heat by themselves|flash point/);
  });
  it('names where each danger was read', () => {
    for (const c of finishHazards(['linseed oil', 'turpentine', 'spirit'], { food: true }).filter(
      (x) => x.level === 'danger' && !x.text.includes('taken for'),
    ))
      expect(c.source, c.text).toBeDefined();
  });
  it('says what an unclear name was taken for', () => {
    expect(text(['spirit'])).toMatch(/read the tin: spirit is taken for mineral spirits/);
    expect(text(['white spirit'])).not.toMatch(/taken for/);
  });
  it('comes with the result, dangers first', () => {
    const r = thinningRatio({ parts: { 'linseed oil': 2, turpentine: 1 }, batch: '1 L' });
    const levels = r.cautions.map((c) => c.level);
    expect(levels.indexOf('danger')).toBe(0);
    expect(levels.lastIndexOf('danger')).toBeLessThan(levels.indexOf('note'));
  });
});

describe('the tables of finish and machining', () => {
  it.each([
    'safety-limits.various',
    'coverage.various',
    'application-loss.various',
    'grit-sizes.fepa',
    'shellac-dilution.shellac-chart',
    'paint-walls.paint-supplier',
    'knife-marks.various',
    'thicknesser-limits.various',
    'residue-expansion.briggs-1994',
  ])('%s has a source in every row', (name) => {
    const rows = tableRows(name);
    expect(rows.length).toBeGreaterThan(1);
    for (const r of rows) expect(r.citation.locator.length).toBeGreaterThan(2);
  });
});
