import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { matchSlabs } from '../../src/recipes/lamination/match-slabs.js';
import { stackUp } from '../../src/recipes/lamination/stack-up.js';

const whole = (min: number, max: number) => fc.integer({ min, max });
const part = fc.record({ nominal: whole(-200, 2000), off: whole(1, 50), count: whole(1, 20) });
const parts = fc.array(part, { minLength: 1, maxLength: 6 });
const given = (list: readonly { nominal: number; off: number; count: number }[]) =>
  list.map((p) => ({ nominal: `${p.nominal} mm`, plusMinus: `${p.off / 10} mm`, count: p.count }));

/** A generator of the test's own, so that the recipe is not checked by its own draws: Marsaglia's xorshift with the polar method. */
function normals(seed: number): () => number {
  let s = seed | 1;
  const u = () => {
    s ^= s << 13;
    s ^= s >>> 17;
    s ^= s << 5;
    return (s >>> 0) / 4_294_967_296;
  };
  return () => {
    for (;;) {
      const [x, y] = [2 * u() - 1, 2 * u() - 1];
      const r = x * x + y * y;
      if (r > 0 && r < 1) return x * Math.sqrt((-2 * Math.log(r)) / r);
    }
  };
}

describe('stackUp', () => {
  it('adds up by hand, and the root of squares lies between the largest piece and the worst case', () => {
    fc.assert(
      fc.property(parts, (list) => {
        const a = stackUp.evaluate({ parts: stackUp.read({ parts: given(list) }).parts });
        expect(a.nominal * 1000).toBeCloseTo(
          list.reduce((s, p) => s + p.nominal * p.count, 0),
          6,
        );
        expect(a.worstCase * 1000).toBeCloseTo(
          list.reduce((s, p) => s + (p.off * p.count) / 10, 0),
          6,
        );
        expect(a.rss).toBeLessThanOrEqual(a.worstCase + 1e-12);
        expect(a.rss * 1000).toBeGreaterThanOrEqual(Math.max(...list.map((p) => p.off / 10)) - 1e-9);
        expect(a.rss / 2).toBeCloseTo(a.sd, 12);
      }),
      { numRuns: 300 },
    );
  });

  it('does not care how alike pieces are written', () => {
    fc.assert(
      fc.property(part, (p) => {
        const once = stackUp.evaluate({ parts: stackUp.read({ parts: given([p]) }).parts });
        const apart = stackUp.evaluate({
          parts: stackUp.read({ parts: given(Array.from({ length: p.count }, () => ({ ...p, count: 1 }))) })
            .parts,
        });
        expect(apart.rss).toBeCloseTo(once.rss, 12);
        expect(apart.worstCase).toBeCloseTo(once.worstCase, 12);
      }),
      { numRuns: 100 },
    );
  });

  // Twenty thousand stacks of the test's own: the interval holds the share it states, within 1 %.
  it.each([
    [0.5, 11],
    [0.8, 12],
    [0.9, 13],
    [0.95, 14],
    [0.99, 15],
  ])('holds %f of stacks in its interval', (confidence, seed) => {
    const list = [
      { nominal: 45, off: 3, count: 14 },
      { nominal: 12, off: 6, count: 1 },
      { nominal: -3, off: 2, count: 2 },
    ];
    const a = stackUp({ parts: given(list), sigmas: 3, confidence: `${confidence * 100} %` });
    const normal = normals(seed * 7919);
    let inside = 0;
    for (let i = 0; i < 20_000; i++) {
      let x = 0;
      for (const p of list) for (let k = 0; k < p.count; k++) x += p.nominal + (normal() * p.off) / 30;
      if (x >= a.low.in('mm') && x <= a.high.in('mm')) inside++;
    }
    expect(Math.abs(inside / 20_000 - confidence)).toBeLessThanOrEqual(0.01);
  });

  it('simulates the chance that the closed form gives, within four standard errors of 20 000 draws, for any seed', () => {
    fc.assert(
      fc.property(parts, whole(1, 1e6), whole(2, 30), (list, seed, tenths) => {
        const rss = stackUp.evaluate({ parts: stackUp.read({ parts: given(list) }).parts }).rss;
        const a = stackUp({
          parts: given(list),
          sigmas: 3,
          seed,
          limits: `${(rss * 1000 * tenths) / 20} mm`,
        });
        expect(Math.abs(a.chanceSimulated!.value - a.chanceInside!.value)).toBeLessThanOrEqual(0.0145);
      }),
      { numRuns: 25 },
    );
  });

  it('counts pieces that err evenly as they are: two of them make a triangle', () => {
    // The sum of two even errors of 1 has the triangle's distribution: inside x with chance 1 - (1 - x/2)^2.
    const a = stackUp({
      parts: [{ nominal: '10 mm', plusMinus: '1 mm', count: 2 }],
      shape: 'even',
      limits: '1 mm',
    });
    expect(Math.abs(a.chanceInside!.value - 0.75)).toBeLessThanOrEqual(0.01);
    expect(a.low.in('mm')).toBeGreaterThanOrEqual(18);
    expect(a.high.in('mm')).toBeLessThanOrEqual(22);
  });

  it('gives the same answer twice, and another with another seed', () => {
    const at = (seed: number) =>
      stackUp({ parts: given([{ nominal: 45, off: 3, count: 14 }]), sigmas: 3, limits: '0.5 mm', seed })
        .chanceSimulated!.value;
    expect(at(5)).toBe(at(5));
    expect(at(5)).not.toBe(at(6));
  });
});

describe('matchSlabs', () => {
  const slabs = fc.array(whole(300, 600), { minLength: 1, maxLength: 12 });
  it('brings every slab level, either way, and counts what is lost', () => {
    fc.assert(
      fc.property(slabs, whole(0, 20), (list, clean) => {
        const a = matchSlabs({ slabs: list.map((t) => `${t / 10} mm`), cleanUp: `${clean / 10} mm` });
        const least = Math.min(...list);
        const most = Math.max(...list);
        expect(a.planeAllTo.in('mm')).toBeCloseTo((least - clean) / 10, 6);
        expect(a.loss.in('mm')).toBeCloseTo(list.reduce((s, t) => s + t - least + clean, 0) / 10, 6);
        a.orShims.forEach((r, i) => {
          expect(r.thickness.in('mm') + r.shim.in('mm')).toBeCloseTo(most / 10, 6);
          expect(r.thickness.in('mm') - r.planeOff!.in('mm')).toBeCloseTo(a.planeAllTo.in('mm'), 6);
          expect(r.thickness.in('mm')).toBeCloseTo(list[i]! / 10, 6);
        });
        expect(a.shimLoss.value).toBeLessThanOrEqual(a.loss.value + 1e-12);
      }),
      { numRuns: 300 },
    );
  });
  it('weighs the loss by the size of each slab', () => {
    const row = (thickness: number, width: number) => ({
      thickness: `${thickness} mm`,
      width: `${width} mm`,
      length: '1 m',
    });
    // 2 mm off 100 mm and 0 off 300 mm: 2 x 100 x 1000 mm3 of 42 x 100 + 40 x 300 by 1000.
    const a = matchSlabs({ slabs: [row(42, 100), row(40, 300)] });
    expect(a.lossVolume!.value).toBeCloseTo(2e-4, 12);
    expect(a.lossShare.in('%')).toBeCloseTo((100 * 200) / 16200, 9);
  });
});
