import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nullTrace } from '../../src/engine/trace.js';
import { reaching, reachingInPairs, stagesOf } from '../../src/recipes/lamination/staged-glue-up.js';

const row = fc.record({
  each: fc.integer({ min: 500, max: 5000 }),
  count: fc.integer({ min: 1, max: 2 }),
  reach: fc.integer({ min: 2, max: 12 }).map((n) => n / 10),
});
const rows = fc.array(row, { minLength: 1, maxLength: 4 });
const reach = fc.integer({ min: 3, max: 20 }).map((n) => n / 10);

/** Most pairs that reach, by trying every way. */
function mostPairs(lengths: readonly number[], wanted: number): number {
  const [first, ...rest] = lengths;
  if (first === undefined) return 0;
  return Math.max(
    mostPairs(rest, wanted),
    ...rest.map((other, i) =>
      first + other >= wanted - 1e-9 ? 1 + mostPairs(rest.toSpliced(i, 1), wanted) : 0,
    ),
  );
}

describe('clamps joined head to head', () => {
  it('make as many pairs as any way of pairing', () => {
    fc.assert(
      fc.property(rows, reach, (owned, wanted) => {
        const short = owned
          .filter((r) => r.reach < wanted - 1e-9)
          .flatMap((r) => Array.from({ length: r.count }, () => r.reach));
        const got = reachingInPairs(owned, wanted);
        expect(got.pairs).toBe(mostPairs(short, wanted));
        expect(got.clamps - got.pairs).toBe(reaching(owned, wanted).clamps);
      }),
    );
  });
  it('reach less often the farther they are to reach, and one more clamp never takes force away', () => {
    fc.assert(
      fc.property(rows, reach, row, (owned, wanted, more) => {
        expect(reachingInPairs(owned, wanted + 0.1).clamps).toBeLessThanOrEqual(
          reachingInPairs(owned, wanted).clamps,
        );
        expect(reaching([...owned, more], wanted).force).toBeGreaterThanOrEqual(
          reaching(owned, wanted).force,
        );
      }),
    );
  });
});

describe('a glue-up in stages', () => {
  it('presses each slab as hard as is needed, makes the whole width, and is not offered where it is not needed', () => {
    fc.assert(
      fc.property(rows, reach, fc.integer({ min: 500, max: 9000 }), (owned, whole, force) => {
        const need = { whole, pads: 0.04, narrowest: 0.1, force, count: 2, jointArea: 0.04 };
        const stages = stagesOf(owned, need, nullTrace);
        const alone = reaching(owned, whole);
        if (alone.force >= force && alone.clamps >= 2) expect(stages).toBeUndefined();
        if (!stages) return;
        const [slabs, last] = stages as [(typeof stages)[0], (typeof stages)[0]];
        expect(slabs.pressure * need.jointArea).toBeGreaterThanOrEqual(force * (1 - 1e-9));
        expect(slabs.clamps).toBeGreaterThanOrEqual(2);
        expect(Math.round((whole - 0.04) / slabs.width) * slabs.width).toBeCloseTo(last.width, 9);
        expect(slabs.width).toBeGreaterThanOrEqual(0.1 - 1e-9);
        if (last.enough) expect(last.pressure * need.jointArea).toBeGreaterThanOrEqual(force * (1 - 1e-9));
      }),
    );
  });
});
