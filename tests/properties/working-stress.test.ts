// Laws of the working stresses over random sections, loads and woods. The figures come from the data; the laws do not.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { allGrades } from '../../src/materials/grades.js';
import { allSpecies, findSpecies } from '../../src/materials/species.js';
import { factor } from '../../src/materials/working-stress/factors.js';
import { greenFigures } from '../../src/materials/working-stress/green-figures.js';
import { durations, type LoadCase } from '../../src/materials/working-stress/load-case.js';
import {
  centreKnot,
  edgeKnot,
  grainRatio,
  pieceRatio,
} from '../../src/materials/working-stress/piece-defects.js';
import { classStress, fitsSize } from '../../src/materials/working-stress/strength-class.js';
import { ungradedStress } from '../../src/materials/working-stress/ungraded.js';
import { longTermFactor } from '../../src/materials/working-stress/use-category.js';

const grades = allGrades().filter((g) => g.row.preferred);
const woods = allSpecies()
  .map((timber) => ({ timber, means: greenFigures(timber) }))
  .filter(({ means }) => means.bending !== undefined);

const sizes = fc.record({
  width: fc.double({ min: 0.015, max: 0.2, noNaN: true }),
  depth: fc.double({ min: 0.03, max: 0.4, noNaN: true }),
});
const loads: fc.Arbitrary<LoadCase> = fc
  .record({
    permanent: fc.double({ min: 0, max: 5, noNaN: true }),
    imposed: fc.double({ min: 0, max: 5, noNaN: true }),
    duration: fc.constantFrom(...durations),
    serviceClass: fc.constantFrom(1 as const, 2 as const, 3 as const),
  })
  .filter((l) => l.permanent + l.imposed > 0.01)
  .map(({ permanent, imposed, ...rest }) => ({ mix: { permanent, imposed }, ...rest }));
const ratios = fc.double({ min: 0.02, max: 0.26, noNaN: true });
const kinds = ['bending', 'shear'] as const;

describe('ungraded wood', () => {
  it('is held for a good many species of both groups', () => {
    expect(woods.filter((w) => w.timber.group === 'softwood').length).toBeGreaterThan(45);
    expect(woods.filter((w) => w.timber.group === 'hardwood').length).toBeGreaterThan(65);
  });
  it('never goes above a held grade of its group that fits the size, for the same load', () => {
    fc.assert(
      fc.property(fc.constantFrom(...woods), sizes, loads, ratios, (wood, size, load, ratio) => {
        const own = ungradedStress(wood.means, ratio, size, load);
        for (const g of grades) {
          if (!fitsSize(g, size) || (g.group !== '' && g.group !== wood.timber.group)) continue;
          const grade = classStress(g, size, load);
          for (const k of kinds)
            if (own[k] !== undefined && grade[k] !== undefined)
              expect(own[k]).toBeLessThanOrEqual(grade[k] * (1 + 1e-12));
          expect(own.modulus ?? 0).toBeLessThanOrEqual((grade.modulus as number) * (1 + 1e-12));
        }
      }),
    );
  });
  it('stays under F5 without the cap too, for every softwood at the ratio of a piece nobody examined', () => {
    const f5 = grades.find((g) => g.name === 'F5')!;
    for (const wood of woods.filter((w) => w.timber.group === 'softwood'))
      for (const depth of [0.045, 0.07, 0.095, 0.14, 0.19, 0.24, 0.3])
        for (const duration of ['medium', 'long', 'permanent'] as const)
          for (const mix of [
            { permanent: 0.1676, imposed: 1.5 },
            { permanent: 1, imposed: 0 },
            { permanent: 0.5, imposed: 0.5 },
          ]) {
            const load = { mix, duration, serviceClass: 1 } as const;
            const size = { width: 0.045, depth };
            const own = ungradedStress(wood.means, factor('ratio.ungraded'), size, load, { cap: false });
            const limit = classStress(f5, size, load).bending as number;
            expect(own.bending as number, wood.timber.name).toBeLessThanOrEqual(limit);
          }
  });
  it('falls with depth, rises with the ratio and the mean, and never gains from a longer or wetter load', () => {
    fc.assert(
      fc.property(fc.constantFrom(...woods), sizes, loads, ratios, (wood, size, load, ratio) => {
        const at = (more: { depth?: number; ratio?: number; mean?: number; load?: LoadCase }) => {
          const means = { ...wood.means, bending: (wood.means.bending as number) * (more.mean ?? 1) };
          const s = { ...size, depth: size.depth * (more.depth ?? 1) };
          return ungradedStress(means, ratio * (more.ratio ?? 1), s, more.load ?? load).bending as number;
        };
        const base = at({}) * (1 + 1e-12);
        expect(at({ depth: 1.1 })).toBeLessThanOrEqual(base);
        expect(at({ ratio: 0.9 })).toBeLessThanOrEqual(base);
        expect(at({ mean: 0.9 })).toBeLessThanOrEqual(base);
        const i = durations.indexOf(load.duration);
        if (i > 0)
          expect(at({ load: { ...load, duration: durations[i - 1] as never } })).toBeLessThanOrEqual(base);
        if (load.serviceClass < 3)
          expect(
            at({ load: { ...load, serviceClass: (load.serviceClass + 1) as 2 | 3 } }),
          ).toBeLessThanOrEqual(base);
      }),
    );
  });
  it('of an unknown kind is weaker than nine in ten of its species', () => {
    for (const kind of ['softwood', 'hardwood'] as const) {
      const unknown = greenFigures(findSpecies(`unknown ${kind}`));
      const own = woods.filter((w) => w.timber.group === kind);
      for (const k of ['bending', 'modulus'] as const) {
        const weaker = own.filter((w) => (w.means[k] ?? Infinity) < (unknown[k] as number));
        expect(weaker.length).toBeLessThanOrEqual(own.length * 0.1 + 1);
      }
    }
  });
  it('of a trade name is at most as strong as each of its species', () => {
    const members = ['white-oak', 'bur-oak', 'post-oak'];
    const trade = greenFigures(findSpecies('white oak'), members);
    for (const id of members)
      for (const k of ['bending', 'shear', 'modulus'] as const)
        expect(trade[k] as number).toBeLessThanOrEqual(greenFigures(findSpecies(id))[k] as number);
    expect(trade.bending).toBeLessThan(greenFigures(findSpecies('white-oak')).bending as number);
  });
});

describe('a strength class', () => {
  it('falls with a longer load and a wetter place, and never rises with depth', () => {
    fc.assert(
      fc.property(fc.constantFrom(...grades), sizes, loads, (grade, size, load) => {
        const at = (l: LoadCase, depth = size.depth) => classStress(grade, { ...size, depth }, l);
        const base = at(load);
        for (const k of kinds) {
          if (base[k] === undefined) continue;
          const most = base[k] * (1 + 1e-12);
          expect(at(load, size.depth * 1.2)[k] as number).toBeLessThanOrEqual(most);
          const i = durations.indexOf(load.duration);
          if (i > 0)
            expect(at({ ...load, duration: durations[i - 1] as never })[k] as number).toBeLessThanOrEqual(
              most,
            );
          if (load.serviceClass < 3)
            expect(
              at({ ...load, serviceClass: (load.serviceClass + 1) as 2 | 3 })[k] as number,
            ).toBeLessThanOrEqual(most);
        }
      }),
    );
  });
  it('allows a load and its permanent part each by its own duration', () => {
    const c24 = grades.find((g) => g.name === 'C24')!;
    const size = { width: 0.045, depth: 0.2 };
    const of = (permanent: number, imposed: number, duration: 'medium' | 'short') =>
      classStress(c24, size, { mix: { permanent, imposed }, duration, serviceClass: 1 }).bending as number;
    // All permanent: 0.6 x 24 / (1.3 x 1.35), whatever the duration named.
    expect(of(1, 0, 'short')).toBeCloseTo((0.6 * 24e6) / (1.3 * 1.35), 3);
    // A little imposed load of a short duration must not lift the permanent one over that.
    expect(of(1, 0.01, 'short')).toBeLessThanOrEqual(of(1, 0, 'short') * 1.01 * (1 + 1e-12));
  });
});

describe('what knots, grain and holes leave', () => {
  it('only ever falls', () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(part, part, part, fc.double({ min: 3, max: 30, noNaN: true }), (base, k, holes, run) => {
        const of = (knot: number, s: number, n: number) =>
          pieceRatio.evaluate({
            R_0: base,
            R_k: edgeKnot.evaluate({ k: knot, h: 1 }),
            R_g: grainRatio(n),
            s,
            h: 1,
          });
        const now = of(k, holes, run);
        expect(now).toBeGreaterThanOrEqual(0);
        expect(now).toBeLessThanOrEqual(base);
        expect(of(k + 0.05, holes, run)).toBeLessThanOrEqual(now);
        expect(of(k, holes + 0.05, run)).toBeLessThanOrEqual(now);
        expect(of(k, holes, run - 0.5)).toBeLessThanOrEqual(now);
        expect(edgeKnot.evaluate({ k, h: 1 })).toBeLessThanOrEqual(centreKnot.evaluate({ k, h: 1 }));
      }),
    );
  });
});

describe('the sag in the long run', () => {
  it('is never under the first, and rises with the creep factor and the share that stays', () => {
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(part, fc.double({ min: 1, max: 4, noNaN: true }), part, (G, k, s) => {
        const K = longTermFactor.evaluate({ G, Q: 1 - G, k, s });
        expect(K).toBeGreaterThanOrEqual(1 - 1e-12);
        expect(longTermFactor.evaluate({ G, Q: 1 - G, k: k + 0.1, s })).toBeGreaterThanOrEqual(K);
        expect(longTermFactor.evaluate({ G, Q: 1 - G, k, s: s + 0.1 })).toBeGreaterThanOrEqual(K);
        // The permanent load keeps its whole creep whatever stays of the rest.
        expect(longTermFactor.evaluate({ G: 1, Q: 0, k, s })).toBeCloseTo(k, 12);
      }),
    );
  });
});
