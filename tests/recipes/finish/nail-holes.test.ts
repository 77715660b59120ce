import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nailHoles } from '../../../src/recipes/finish/nail-holes.js';

const job = (more: object = {}) =>
  nailHoles({ counts: [7, 4, 9, 5, 6], sampleArea: '0.2 m2', area: '1.3 m2', ...more });

describe('nailHoles', () => {
  it('31 holes on 1 m² make 40.3 on 1.3 m², ± sqrt(31 1.3 2.3) = 9.63', () => {
    const r = job();
    expect(r.expected).toBe(40);
    expect(r.perArea).toBeCloseTo(31, 9);
    // Variance 3.7 of a mean of 6.2: less than chance has, so chance counts.
    expect(r.spread).toBeCloseTo(Math.sqrt(31 * 1.3 * 2.3), 9);
    expect(r.ready).toBe(Math.ceil(40.3 + 1.2815516 * 9.6276));
    // 53 holes of 5 mm, 10 mm deep, half as much again.
    expect(r.filler!.in('mL')).toBeCloseTo((53 * Math.PI * 0.25 * 1 * 1.5) / 4, 9);
    expect(job({ method: 'plugs' }).plugs).toBe(53);
  });
  it('boards that differ more than chance spread the job more', () => {
    const uneven = job({ counts: [0, 0, 31, 0, 0] });
    expect(uneven.expected).toBe(40);
    expect(uneven.ready).toBeGreaterThan(job().ready * 1.5);
  });
  it('none counted does not mean none', () => {
    const r = job({ counts: [0, 0, 0, 0, 0], certainty: '95 %' });
    // -ln 0.05 = 3.0 on a square metre: the rule of three.
    expect([r.expected, r.ready]).toEqual([0, Math.ceil(2.9957 * 1.3)]);
  });
  it('refuses fewer than three pieces', () => {
    expect(() => job({ counts: [4, 5] })).toThrow(/counts: got 2 pieces, takes at least 3/);
  });
  it('simulated: holes by chance are enough in nine jobs of ten', () => {
    let seed = 7;
    const random = (): number => (seed = (seed * 16807) % 2147483647) / 2147483647;
    const poisson = (mean: number): number => {
      let [k, p] = [0, random()];
      while (p > Math.exp(-mean)) {
        k++;
        p *= random();
      }
      return k;
    };
    let enough = 0;
    const runs = 1500;
    for (let i = 0; i < runs; i++) {
      const counts = Array.from({ length: 5 }, () => poisson(6));
      const { ready } = nailHoles.evaluate({ counts, sampleArea: 0.2, area: 1.3 }) as {
        ready: number;
      };
      if (poisson(6 * 6.5) <= ready) enough++;
    }
    expect(enough / runs).toBeGreaterThan(0.87);
    expect(enough / runs).toBeLessThan(0.96);
  });
  it('never fewer for a larger job or more certainty', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 3, maxLength: 12 }),
        fc.integer({ min: 1, max: 50 }),
        (counts, a) => {
          const at = (area: number, certainty: string) =>
            job({ counts, area: `${area} m2`, certainty }).ready;
          expect(at(a + 1, '90 %')).toBeGreaterThanOrEqual(at(a, '90 %'));
          expect(at(a, '95 %')).toBeGreaterThanOrEqual(at(a, '90 %'));
        },
      ),
      { numRuns: 50 },
    );
  });
});
