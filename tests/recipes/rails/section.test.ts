import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sectionField } from '../../../src/recipes/rails/section.js';
import { sectionFacts } from '../../../src/recipes/rails/section-properties.js';

const read = (v: unknown) => sectionField({ label: 'section' }).read(v);
const E = 10e9;
const G = E / 16;
const near = (got: number, wanted: number) => expect(got / wanted).toBeCloseTo(1, 9);

describe('sections against their textbook formulas', () => {
  it('b d² / 6 and b d³ / 12: 80 by 240 mm has W = 768000 mm³, 150 by 300 mm has I = 337500000 mm⁴ and W = 2250000 mm³, 100 by 200 mm I = 66666667 mm⁴', () => {
    expect((1 / sectionFacts(read('80 x 240 mm'), E, G).stressByMoment) * 1e9).toBeCloseTo(768000, 4);
    const s = sectionFacts(read('150 x 300 mm'), E, G);
    expect((s.EI / E) * 1e12).toBeCloseTo(337500000, 2);
    expect((1 / s.stressByMoment) * 1e9).toBeCloseTo(2250000, 3);
    expect(Math.abs((sectionFacts(read('100 x 200 mm'), E, G).EI / E) * 1e12 - 200e6 / 3)).toBeLessThan(1e-3);
  });

  it('a rectangle: 5/6 of its area in shear, greatest shear 3/2 of the mean (Wood Handbook Eq. 9-4)', () => {
    const s = sectionFacts(read({ width: '45 mm', depth: '95 mm' }), E, G);
    near(s.GA, (5 / 6) * G * 0.045 * 0.095);
    near(s.stressByShear, 1.5 / (0.045 * 0.095));
  });

  it('without a shear modulus none of them gives in shear', () => {
    const all = [
      '45 x 95 mm',
      { diameter: '30 mm' },
      { width: '60 mm', depth: '120 mm', web: '9 mm', flange: '18 mm' },
      { layers: [{ width: '9 mm', depth: '9 mm' }] },
      { layers: [{ width: '9 mm', depth: '9 mm' }], loose: true },
      { beside: [{ width: '9 mm', depth: '9 mm' }] },
    ];
    for (const s of all) expect(sectionFacts(read(s), E, undefined).GA).toBe(Infinity);
  });

  it('a bar: I = π d⁴/64, 9/10 of its area in shear', () => {
    const s = sectionFacts(read({ diameter: '30 mm' }), E, G);
    near(s.EI, (E * Math.PI * 0.03 ** 4) / 64);
    near(s.GA, 0.9 * G * Math.PI * 0.015 ** 2);
  });

  it('a bar: stresses 32 M/(π d³) and 4 V/(3 A), its axis in the middle', () => {
    const s = sectionFacts(read({ diameter: '30 mm' }), E, G);
    near(s.stressByMoment, 32 / (Math.PI * 0.03 ** 3));
    near(s.stressByShear, 4 / (3 * Math.PI * 0.015 ** 2));
    near(s.axis, 0.015);
    near(s.area, Math.PI * 0.015 ** 2);
  });

  it('loose and side by side by hand: 45 by 90 beside 20 by 60 of double stiffness', () => {
    const pieces = [
      { width: '45 mm', depth: '90 mm' },
      { width: '20 mm', depth: '60 mm', modulus: '20 GPa' },
    ];
    const [I1, I2] = [(0.045 * 0.09 ** 3) / 12, (2 * 0.02 * 0.06 ** 3) / 12];
    const [beside, loose] = [
      sectionFacts(read({ beside: pieces }), E, G),
      sectionFacts(read({ layers: pieces, loose: true }), E, G),
    ];
    for (const s of [beside, loose]) {
      near(s.EI, E * (I1 + I2));
      near(s.GA, (5 / 6) * G * (0.045 * 0.09 + 2 * 0.02 * 0.06));
      near(s.area, 0.045 * 0.09 + 0.02 * 0.06);
      // The deep piece carries I1 of the whole: M y/I and 1.5 V/A of its share.
      near(s.stressByMoment, Math.max(0.045 / (I1 + I2), (2 * 0.03) / (I1 + I2)));
      near(
        s.stressByShear,
        Math.max((1.5 * I1) / (I1 + I2) / (0.045 * 0.09), (1.5 * I2) / (I1 + I2) / (0.02 * 0.06)),
      );
    }
    expect([beside.width, beside.depth, beside.axis]).toEqual([expect.closeTo(0.065, 12), 0.09, 0.045]);
    expect([loose.width, loose.depth, loose.axis]).toEqual([
      0.045,
      expect.closeTo(0.15, 12),
      expect.closeTo(0.075, 12),
    ]);
  });

  it('the depth of glued layers and of a box is from top to bottom', () => {
    expect(
      sectionFacts(
        read({
          layers: [
            { width: '9 mm', depth: '9 mm' },
            { width: '9 mm', depth: '7 mm' },
          ],
        }),
        E,
        G,
      ).depth,
    ).toBeCloseTo(0.016, 12);
    expect(
      sectionFacts(read({ width: '60 mm', depth: '120 mm', web: '9 mm', flange: '18 mm' }), E, G).depth,
    ).toBeCloseTo(0.12, 12);
  });

  it('a box: outer less inner', () => {
    const s = sectionFacts(read({ width: '60 mm', depth: '120 mm', web: '9 mm', flange: '18 mm' }), E, G);
    near(s.EI, (E * (0.06 * 0.12 ** 3 - 0.042 * 0.084 ** 3)) / 12);
    near(s.area, 0.06 * 0.12 - 0.042 * 0.084);
    // Greatest shear at the axis: V S / (I b) with S of the half section over the two webs.
    const S = 0.06 * 0.06 * 0.03 - 0.042 * 0.042 * 0.021;
    near(s.stressByShear, S / ((s.EI / E) * 0.018));
    expect(s.GA).toBeLessThan((5 / 6) * G * 0.06 * 0.12);
  });

  it('layers of unequal stiffness: transformed section, worked by parallel axes', () => {
    const s = sectionFacts(
      read({
        layers: [
          { width: '100 mm', depth: '20 mm', modulus: '14 GPa' },
          { width: '100 mm', depth: '40 mm' },
        ],
      }),
      7e9,
      undefined,
    );
    // By hand: bottom 40 mm at 7 GPa (n = 1), top 20 mm at 14 GPa (n = 2).
    const [A1, A2] = [0.1 * 0.04, 2 * 0.1 * 0.02];
    const axis = (A1 * 0.02 + A2 * 0.05) / (A1 + A2);
    const I =
      (0.1 * 0.04 ** 3) / 12 + A1 * (axis - 0.02) ** 2 + (2 * 0.1 * 0.02 ** 3) / 12 + A2 * (0.05 - axis) ** 2;
    near(s.axis, axis);
    near(s.EI, 7e9 * I);
    near(s.stressByMoment, Math.max(axis / I, (2 * (0.06 - axis)) / I));
    expect(s.GA).toBe(Infinity);
  });

  it('equal layers glued are one board, loose they are each alone', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), fc.double({ min: 5, max: 60, noNaN: true }), (n, t) => {
        const layers = Array.from({ length: n }, () => ({ width: '90 mm', depth: `${t} mm` }));
        const [glued, loose, whole] = [
          sectionFacts(read({ layers }), E, G),
          sectionFacts(read({ layers, loose: true }), E, G),
          sectionFacts(read(`90 x ${n * t} mm`), E, G),
        ];
        for (const k of ['EI', 'GA', 'stressByMoment', 'stressByShear', 'area', 'depth'] as const)
          near(glued[k], whole[k]);
        near(loose.EI * n * n, whole.EI);
      }),
    );
  });

  it('pieces side by side share by stiffness', () => {
    const s = sectionFacts(
      read({
        beside: [
          { width: '45 mm', depth: '90 mm' },
          { width: '20 mm', depth: '90 mm', modulus: '20 GPa' },
        ],
      }),
      E,
      G,
    );
    near(s.EI, ((E * 0.045 + 2 * E * 0.02) * 0.09 ** 3) / 12);
    near(s.stressByMoment, (2 * E * 0.045) / s.EI);
  });

  it('the stiffest and the strongest beam from a log (Mathalino problems 4 and 5): depth over width √3 and √2', () => {
    const best = (value: (b: number) => number): number => {
      let at = 0.1;
      for (let b = 0.1; b < 0.95; b += 1e-5) if (value(b) > value(at)) at = b;
      return Math.sqrt(1 - at * at) / at;
    };
    const of = (b: number) =>
      sectionFacts({ shape: 'solid', width: b, depth: Math.sqrt(1 - b * b) }, 1, undefined);
    expect(best((b) => of(b).EI)).toBeCloseTo(1.7321, 3);
    expect(best((b) => 1 / of(b).stressByMoment)).toBeCloseTo(1.4142, 3);
  });
});

describe('reading a section', () => {
  it.each([
    ['45 x 95 mm', 0.045, 0.095],
    ['45x95mm', 0.045, 0.095],
    ['45 mm x 95 mm', 0.045, 0.095],
    ['45 × 95 mm', 0.045, 0.095],
    ['4.5 cm by 95 mm', 0.045, 0.095],
    ['1 3/4 x 3 3/4 in', 0.04445, 0.09525],
    ['2" x 4"', 0.0508, 0.1016],
  ])('%s', (text, width, depth) => {
    const s = read(text) as { width: number; depth: number };
    expect(s.width).toBeCloseTo(width, 9);
    expect(s.depth).toBeCloseTo(depth, 9);
  });
});
