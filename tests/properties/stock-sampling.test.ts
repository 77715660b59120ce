import { describe, expect, it } from 'vitest';
import { partsCost } from '../../src/recipes/stock/parts-cost.js';
import { pileSampling } from '../../src/recipes/stock/pile-sampling.js';

/** Numbers from 0 to 1 that are the same in every run (mulberry32). */
function numbers(seed: number): () => number {
  return () => {
    seed = (seed + 0x6d2b79f5) | 0;
    let t = Math.imul(seed ^ (seed >>> 15), 1 | seed);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
const normals = (seed: number) => {
  const u = numbers(seed);
  return (mean: number, sd: number): number =>
    mean + sd * Math.sqrt(-2 * Math.log(1 - u())) * Math.cos(2 * Math.PI * u());
};

describe('sampling a pile', () => {
  // Each draw: a sample, an answer, then the pile goes on being taken apart. Standard error of 20 000 draws: 0.2 %.
  it.each([
    [0.9, 8, 1.6, 0.25, 60],
    [0.8, 5, 1.2, 0.2, 50],
    [0.95, 12, 0.9, 0.2, 40],
  ])(
    'at %s, the yield of the pieces falls in its interval as often as said',
    (confidence, n, mean, sd, needed) => {
      const draw = normals(1);
      let inside = 0;
      let enough = 0;
      let counted = 0;
      const runs = 20_000;
      for (let i = 0; i < runs; i++) {
        const values = Array.from({ length: n }, () => draw(mean, sd));
        const r = pileSampling.evaluate({
          sample: { kind: 'length', values },
          needed: { kind: 'length', value: needed },
          confidence,
        });
        let sum = 0;
        let reached = 0;
        for (let k = 1; k <= Math.max(r.piecesToPull, r.high); k++) {
          sum += draw(mean, sd);
          if (reached === 0 && sum >= needed) reached = k;
          if (k === r.piecesToPull) {
            if (sum >= r.yieldLow.value && sum <= r.yieldHigh.value) inside++;
            if (sum >= needed) enough++;
          }
        }
        if (reached >= r.low && reached <= r.high) counted++;
      }
      expect(Math.abs(inside / runs - confidence)).toBeLessThan(0.01);
      // Whole pieces round up, so the other two may be surer than was asked, never less sure.
      expect(enough / runs).toBeGreaterThan(confidence - 0.01);
      expect(counted / runs).toBeGreaterThan(confidence - 0.01);
    },
    60_000,
  );

  it('asks for more pieces when more is needed or more sureness wanted; order low, pieces, high', () => {
    const sample = ['1.6 m', '1.5 m', '1.7 m', '1.3 m', '1.6 m', '1.7 m'];
    let before = 0;
    for (let need = 2; need < 60; need += 1.7) {
      const r = pileSampling({ sample, needed: `${need} m`, confidence: '90 %' });
      expect(r.piecesToPull).toBeGreaterThanOrEqual(before);
      expect(r.low).toBeLessThanOrEqual(r.expected);
      expect(r.piecesToPull).toBeLessThanOrEqual(r.high);
      expect(
        pileSampling({ sample, needed: `${need} m`, confidence: '99 %' }).piecesToPull,
      ).toBeGreaterThanOrEqual(r.piecesToPull);
      before = r.piecesToPull;
    }
  });

  it('agrees with a hand calculation from a printed t table', () => {
    // n = 5, values 10 12 11 13 14: mean 12, s = 1.5811. t(0.95; 4) = 2.132 in any table. For m = 4: 48 +- 2.132 * 1.5811 * sqrt(4 + 16 / 5) = 48 +- 9.045
    const r = pileSampling({ sample: [10, 12, 11, 13, 14], needed: 40, confidence: '90 %' });
    // One-sided t(0.90; 4) = 1.533: 4 pieces give at least 48 - 6.50 = 41.5, 3 pieces 36 - 1.533 * 1.5811 * sqrt(3 + 9 / 5) = 30.7.
    expect(r.piecesToPull).toBe(4);
    expect(r.yieldLow).toBeCloseTo(48 - 9.045, 2);
    expect(r.yieldHigh).toBeCloseTo(48 + 9.045, 2);
  });

  it('needs exactly so many of equal pieces', () => {
    const r = pileSampling({ sample: ['2 m2', '2 m2', '2 m2'], needed: '12 m2' });
    expect([r.low, r.piecesToPull, r.high]).toEqual([6, 6, 6]);
  });
});

describe('cost of parts', () => {
  it('is the sum of its parts and follows every way of pricing', () => {
    const part = { name: 'a', count: 3, length: '2 m', width: '100 mm', thickness: '50 mm' };
    for (const [price, want] of [
      ['1000/m3', 30],
      ['20/m2', 12],
      ['5/m', 30],
      ['4 each', 12],
      ['£4', 12],
    ] as const) {
      const r = partsCost({ parts: [part], price, waste: '10 %' });
      expect(r.netCost.value).toBeCloseTo(want, 9);
      expect(r.total.value).toBeCloseTo(want * 1.1, 9);
    }
    const both = partsCost({
      parts: [
        { ...part, material: 'oak' },
        { ...part, material: 'pine' },
        { ...part, price: '1/m' },
      ],
      prices: { oak: '2000/m3', pine: '500/m3' },
    });
    expect(both.byPart.map((p) => p.cost.value)).toEqual(
      [60, 15, 6].map((v) => expect.closeTo(v, 9) as number),
    );
    expect(both.byPart.reduce((s, p) => s + p.share.value, 0)).toBeCloseTo(1, 12);
  });
});
