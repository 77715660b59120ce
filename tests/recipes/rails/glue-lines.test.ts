import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beam } from '../../../src/recipes/rails/beam.js';
import { glueLineAreaOf } from '../../../src/recipes/rails/glue-lines.js';
import { railSpan } from '../../../src/recipes/rails/rail-span.js';
import { sectionField } from '../../../src/recipes/rails/section.js';

const read = sectionField({ label: 'section' }).read;
const layers = (...depths: number[]) => ({
  layers: depths.map((d) => ({ width: '90 mm', depth: `${d} mm` })),
});

describe('shear at a glue line', () => {
  it('in the middle of two equal layers is 1.5 V/A, as in the middle of a whole rectangle', () => {
    expect(1 / (glueLineAreaOf(read(layers(30, 30)), 10e9) as number)).toBeCloseTo(1.5 / (0.09 * 0.06), 6);
  });
  it('of three equal layers is 8/9 of that: 1 - (1/3)²', () => {
    expect(1 / (glueLineAreaOf(read(layers(20, 20, 20)), 10e9) as number)).toBeCloseTo(
      (8 / 9) * (1.5 / (0.09 * 0.06)),
      6,
    );
  });
  it('of a T of 100 x 20 on 20 x 80 is V Q/(I b): Q = 60 000 mm³, I = 3 146 667 mm⁴', () => {
    // Centroid: (2000 x 90 + 1600 x 40)/3600 = 67.78 mm; Q = 2000 (90 - 67.78) = 44 444 mm³;
    // I = 100 20³/12 + 2000 22.22² + 20 80³/12 + 1600 27.78² = 3 142 222 mm⁴.
    const T = read({
      layers: [
        { width: '100 mm', depth: '20 mm' },
        { width: '20 mm', depth: '80 mm' },
      ],
    });
    const Q = 2000 * (90 - 244000 / 3600);
    const I =
      (100 * 20 ** 3) / 12 +
      2000 * (90 - 244000 / 3600) ** 2 +
      (20 * 80 ** 3) / 12 +
      1600 * (244000 / 3600 - 40) ** 2;
    expect(1e-6 / (glueLineAreaOf(T, 10e9) as number)).toBeCloseTo(Q / (I * 20), 12);
  });
  it('is there only where pieces are glued', () => {
    for (const section of [
      '45 x 95 mm',
      layers(60),
      { ...layers(30, 30), loose: true },
      { beside: layers(30).layers },
    ])
      expect(glueLineAreaOf(read(section), 10e9)).toBeUndefined();
    expect(
      glueLineAreaOf(read({ width: '60 mm', depth: '90 mm', web: '9 mm', flange: '20 mm' }), 10e9),
    ).toBeGreaterThan(0);
  });
  it('is held to half of the wood’s shear, so that a deep glued rail is limited by its glue line', () => {
    const glued = railSpan({ section: layers(100, 100), load: '40 kN/m', grade: 'C24', category: 'hall' });
    expect(glued.governedBy).toBe('glue line');
    expect(glued.span.value).toBeCloseTo((glued.spanByShear as { value: number }).value / 2, 9);
    const under = beam({
      length: '1 m',
      supports: [{ position: '0 m' }, { position: '1 m' }],
      loads: ['60 kN/m'],
      section: layers(100, 100),
      grade: 'C24',
      category: 'hall',
    });
    expect(under.glueUse!.value).toBeCloseTo(2 * under.shearUse!.value, 9);
    expect(under.verdict).toMatch(/at the glue line/);
  });
  it('never spans more with the glue line counted, with more load, or thinner layers in all', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 10, max: 60 }), { minLength: 2, maxLength: 5 }),
        fc.integer({ min: 100, max: 20000 }),
        (depths, load) => {
          const of = (d: number[], q: number) =>
            railSpan({ section: layers(...d), load: `${q} N/m`, grade: 'C24', category: 'hall' });
          const r = of(depths, load);
          expect(r.span.value).toBeLessThanOrEqual(r.spanByGlue!.value + 1e-12);
          expect(of(depths, load * 1.3).span.value).toBeLessThanOrEqual(r.span.value + 1e-12);
          expect(r.spanByGlue!.value).toBeGreaterThanOrEqual(r.spanByShear!.value / 2 - 1e-9);
        },
      ),
      { numRuns: 40 },
    );
  });
});
