import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { filmBuild } from '../../src/recipes/finish/film-build.js';
import { gritSequence } from '../../src/recipes/finish/grit-sequence.js';
import { shellacCut } from '../../src/recipes/finish/shellac-cut.js';
import { thinnedVoc } from '../../src/recipes/finish/thinned-voc.js';
import { thinToSolids } from '../../src/recipes/finish/thin-to-solids.js';
import { finishQuantity } from '../../src/recipes/finish/finish-quantity.js';
import { thinningRatio } from '../../src/recipes/finish/thinning-ratio.js';

/** The troubles of a refusal; anything else that is thrown, or an answer, fails the test. */
function refused(run: () => unknown): InputError {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return error as InputError;
  }
  throw new Error('was taken');
}

const parts = { oil: 2, varnish: 1, spirit: 1 };

describe('thinningRatio refuses', () => {
  it.each([
    ['neither batch nor have', { parts }, 'batch', /have/],
    [
      'a name that is not among the parts',
      { parts, have: { vanish: '1 L' } },
      'have.vanish',
      /did you mean "varnish"/,
    ],
    [
      'a density of an unknown part',
      { parts, batch: '1 L', densities: { tar: '1 kg/L' } },
      'densities.tar',
      /among the parts/,
    ],
    [
      'a thinner that is not among the parts',
      { parts, batch: '1 L', thinner: 'water' },
      'thinner.water',
      /among the parts/,
    ],
    [
      'a batch by mass of parts by volume with no densities',
      { parts, by: 'volume' as const, batch: '1 kg' },
      'densities.oil',
      /such as "0.8 kg\/L"/,
    ],
    ['a part of nothing', { parts: { oil: 1, spirit: 0 }, batch: '1 L' }, 'parts.spirit', /more than 0/],
    ['a part below nothing', { parts: { oil: 1, spirit: -1 }, batch: '1 L' }, 'parts.spirit', /more than 0/],
    ['parts with no names', { parts: '2:1:1', batch: '1 L' }, 'parts', /name:value/],
    ['no parts', { parts: {}, batch: '1 L' }, 'parts', /named parts/],
    ['a batch of nothing', { parts, batch: '0 L' }, 'batch', /more than nothing/],
    ['a batch below nothing', { parts, batch: '-1 L' }, 'batch', /more than nothing/],
    ['a batch that is a length', { parts, batch: '2 m' }, 'batch', /liquid/],
    ['a batch beyond any workshop', { parts, batch: '1e9 L' }, 'batch', /1000 m3/],
    ['negative in a tin', { parts, have: { oil: '-1 mL' } }, 'have.oil', /at least nothing/],
  ])('%s', (_what, given, field, message) => {
    const r = refused(() => thinningRatio(given));
    expect(r.issues.map((t) => t.field)).toContain(field);
    expect(r.message).toMatch(message);
    expect(r.message.split('\n')).toHaveLength(1);
  });
  it('names every wrong part at once', () => {
    expect(
      refused(() => thinningRatio({ parts: { a: 'x', b: NaN, c: 1 }, batch: 'full' })).issues.map(
        (t) => t.field,
      ),
    ).toEqual(['parts.a', 'parts.b', 'batch']);
  });
  it('nothing when a tin is empty: it says so instead', () => {
    const r = thinningRatio({ parts, have: { oil: '1 L', varnish: '0 L' } });
    expect(r.total.value).toBe(0);
    expect(r.limiting).toBe('varnish');
    expect(r.cautions.map((c) => c.text).join()).toMatch(/no varnish left/);
    expect(r.toText()).not.toMatch(/NaN|undefined/);
  });
  it('no odd name, and lets none out of the page', () => {
    const r = thinningRatio({
      parts: { '<img src=x onerror=alert(1)>': 1, constructor: 1, toString: 2 },
      batch: '1 L',
    });
    expect(r.toHtml()).not.toContain('<img');
    expect(r.amounts['toString']?.in('mL')).toBeCloseTo(500, 9);
  });
});

describe('finishQuantity refuses', () => {
  const given = { surfaces: ['1 m2'], coats: 2, coverage: '12 m2/L' };
  it.each([
    ['no surface', { ...given, surfaces: [] }, 'surfaces'],
    ['an area of nothing', { ...given, surfaces: ['0 m2'] }, 'surfaces[1]'],
    ['an area below nothing', { ...given, surfaces: ['1 m2', '-2 m2'] }, 'surfaces[2]'],
    ['a bare number', { ...given, surfaces: [1.2] }, 'surfaces[1]'],
    [
      'a piece with no thickness',
      { ...given, surfaces: { length: '1 m', width: '1 m' } },
      'surfaces.thickness',
    ],
    [
      'faces nobody knows',
      { ...given, surfaces: { length: '1 m', width: '1 m', thickness: '1 mm', faces: 'inside' } },
      'surfaces.faces',
    ],
    ['half a coat', { ...given, coats: 1.5 }, 'coats'],
    ['no coat', { ...given, coats: 0 }, 'coats'],
    ['coverage of nothing', { ...given, coverage: '0 m2/L' }, 'coverage'],
    ['all of it lost', { ...given, loss: '100 %' }, 'loss'],
    ['a tin of nothing', { ...given, tinSize: '0 L' }, 'tinSize'],
    ['a way nobody knows', { ...given, method: 'mop' }, 'method'],
    ['thinner below nothing', { ...given, thinnerParts: -1 }, 'thinnerParts'],
  ])('%s', (_what, bad, field) => {
    const r = refused(() => finishQuantity(bad as never));
    expect(r.issues.map((t) => t.field).join(), r.message).toContain(field);
    expect(r.message).toMatch(/takes/);
  });
  it('nothing within its limits, and gives finite answers at their ends', () => {
    for (const surfaces of [
      ['0.000001 m2'],
      ['100000 m2'],
      { length: '100 m', width: '100 m', thickness: '10 m', count: 100 },
    ])
      for (const coverage of ['0.5 m2/L', '60 m2/L'])
        for (const loss of ['0 %', '95 %']) {
          const r = finishQuantity({
            surfaces,
            coats: 50,
            coverage,
            loss,
            thinnerParts: 20,
            tinSize: '10 mL',
          });
          expect(Number.isFinite(r.volume.value) && r.tins >= 1).toBe(true);
        }
  });
});

describe('the other recipes of finish refuse', () => {
  it.each([
    ['neither target nor parts', () => thinToSolids({ volumeSolids: '40 %' }), 'target'],
    [
      'both target and parts',
      () => thinToSolids({ volumeSolids: '40 %', target: '20 %', thinnerParts: 1 }),
      'target',
    ],
    ['more solids than there are', () => thinToSolids({ volumeSolids: '40 %', target: '41 %' }), 'target'],
    ['no solids', () => thinToSolids({ volumeSolids: '0 %', thinnerParts: 1 }), 'volumeSolids'],
    ['a film from nothing', () => filmBuild({ volumeSolids: '40 %' }), 'spreadingRate'],
    [
      'a film from two things',
      () => filmBuild({ volumeSolids: '40 %', wetFilm: '100 um', spreadingRate: '8 m2/L' }),
      'wetFilm',
    ],
    [
      'solids as a bare number',
      () => filmBuild({ volumeSolids: 40 as never, wetFilm: '100 um' }),
      'volumeSolids',
    ],
    ['no VOC and no data sheet', () => thinnedVoc({ thinnerParts: 0.1 }), 'voc'],
    [
      'a data sheet past 100 %',
      () =>
        thinnedVoc({ thinnerParts: 0.1, solidsByMass: '60 %', waterByMass: '50 %', finishDensity: '1 kg/L' }),
      'waterByMass',
    ],
    [
      'water that fills the whole',
      () =>
        thinnedVoc({ thinnerParts: 0.1, solidsByMass: '0 %', waterByMass: '100 %', finishDensity: '1 kg/L' }),
      'waterByMass',
    ],
    ['a grit that is not made', () => gritSequence({ from: 'P85', to: 'P220' }), 'from'],
    ['a finer grit first', () => gritSequence({ from: 'P220', to: 'P80' }), 'to'],
    [
      'a gap in the drawer',
      () => gritSequence({ from: 'P80', to: 'P220', grits: ['P80', 'P220'] }),
      'stepRatio',
    ],
    ['a step of one', () => gritSequence({ from: 'P80', to: 'P220', stepRatio: 1 }), 'stepRatio'],
    ['no amount of shellac', () => shellacCut({ cut: 2 }), 'volume'],
    ['two amounts of shellac', () => shellacCut({ cut: 2, volume: '1 L', flakes: '100 g' }), 'volume'],
    ['a stronger cut than there is', () => shellacCut({ cut: 3, existing: '1 L', existingCut: 2 }), 'cut'],
    ['shellac of no known cut', () => shellacCut({ cut: 1, existing: '1 L' }), 'existingCut'],
    ['a cut of nothing', () => shellacCut({ cut: 0, volume: '1 L' }), 'cut'],
    ['a cut by length', () => shellacCut({ cut: '2 m', volume: '1 L' }), 'cut'],
  ])('%s', (_what, run, field) => {
    const r = refused(run);
    expect(
      r.issues.map((t) => t.field),
      r.message,
    ).toContain(field);
    expect(r.message).toMatch(/takes/);
  });
  it('names the nearest grits and the gap', () => {
    expect(refused(() => gritSequence({ from: 'P85', to: 'P220' })).message).toMatch(/P80 and P100/);
    expect(refused(() => gritSequence({ from: 80, to: 220, grits: [80, 220] })).message).toMatch(
      /P80 to P220.*2\.96/,
    );
  });
});
