import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finishQuantity } from '../../src/recipes/finish/finish-quantity.js';
import { thinningRatio } from '../../src/recipes/finish/thinning-ratio.js';

const ratio = fc.double({ min: 0.01, max: 100, noNaN: true });
const parts = fc.dictionary(fc.stringMatching(/^[a-z]{1,8}$/), ratio, { minKeys: 1, maxKeys: 8 });
const close = (a: number, b: number): boolean =>
  Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b), 1e-9);
const litres = (m3: number) => ({ kind: 'liquid' as const, value: m3 });

describe('a mix', () => {
  it('adds up to the batch, in the proportions given', () => {
    fc.assert(
      fc.property(parts, fc.double({ min: 1e-6, max: 10, noNaN: true }), (p, batch) => {
        const r = thinningRatio.evaluate({ parts: p, batch: litres(batch) });
        const sum = Object.values(r.amounts).reduce((a, b) => a + b.value, 0);
        expect(close(sum, batch)).toBe(true);
        const [first, ...others] = Object.keys(p) as [string, ...string[]];
        for (const n of others)
          expect(
            close(
              (r.amounts[n]?.value ?? NaN) * (p[first] as number),
              (r.amounts[first]?.value ?? NaN) * (p[n] as number),
            ),
          ).toBe(true);
      }),
    );
  });
  it('does not care for the scale of the ratios', () => {
    fc.assert(
      fc.property(parts, fc.double({ min: 0.1, max: 50, noNaN: true }), (p, k) => {
        const more = Object.fromEntries(Object.entries(p).map(([n, r]) => [n, r * k]));
        const [a, b] = [p, more].map((x) => thinningRatio.evaluate({ parts: x, batch: litres(0.001) }));
        for (const n of Object.keys(p))
          expect(close(a?.amounts[n]?.value ?? NaN, b?.amounts[n]?.value ?? NaN)).toBe(true);
      }),
    );
  });
  it('of what is left uses one tin up, no tin beyond what it holds, and cannot be larger', () => {
    fc.assert(
      fc.property(
        parts,
        fc.infiniteStream(fc.oneof(fc.constant(0), fc.double({ min: 1e-9, max: 0.01, noNaN: true }))),
        (p, left) => {
          const have = Object.fromEntries(
            Object.keys(p).map((n) => [n, litres(left.next().value as number)]),
          );
          const r = thinningRatio.evaluate({ parts: p, have });
          for (const [n, a] of Object.entries(r.amounts))
            expect(a.value).toBeLessThanOrEqual((have[n]?.value ?? 0) * (1 + 1e-12) + 1e-18);
          expect(
            close(r.amounts[r.limiting as string]?.value ?? NaN, have[r.limiting as string]?.value ?? NaN),
          ).toBe(true);
          expect(r.toBuy).toBeUndefined();
        },
      ),
    );
  });
  it('by mass and by volume agree through the densities', () => {
    fc.assert(
      fc.property(parts, fc.infiniteStream(fc.double({ min: 500, max: 1500, noNaN: true })), (p, rho) => {
        const densities = Object.fromEntries(Object.keys(p).map((n) => [n, rho.next().value as number]));
        const litre = thinningRatio.evaluate({ parts: p, batch: litres(0.001), densities });
        const mass = Object.entries(litre.amounts).reduce(
          (sum, [n, a]) => sum + a.value * (densities[n] as number),
          0,
        );
        const weighed = thinningRatio.evaluate({
          parts: p,
          by: 'volume',
          batch: { kind: 'mass', value: mass },
          densities,
        });
        expect(close(weighed.total.value, 0.001)).toBe(true);
        const byMass = Object.fromEntries(
          Object.entries(litre.amounts).map(([n, a]) => [n, a.value * (densities[n] as number)]),
        );
        const again = thinningRatio.evaluate({ parts: byMass, by: 'mass', batch: litres(0.001), densities });
        for (const [n, m] of Object.entries(byMass))
          expect(close(again.amounts[n]?.value ?? NaN, m)).toBe(true);
      }),
    );
  });
  it('added t is t / (1 + t) of the mix, never more than what was added', () => {
    fc.assert(
      fc.property(ratio, ratio, (a, b) => {
        const r = thinningRatio.evaluate({ parts: { varnish: a, spirit: b }, batch: litres(0.001) });
        expect(close(r.thinnerShare as number, b / (a + b))).toBe(true);
        expect(close(r.thinnerAdded as number, b / a)).toBe(true);
        expect(r.thinnerShare as number).toBeLessThan(r.thinnerAdded as number);
      }),
    );
  });
});

describe('finish for a job', () => {
  const size = fc.double({ min: 0.01, max: 5, noNaN: true });
  const base = { coats: 3, coverage: 12_000, loss: 0.1, tinSize: 0.0005 };
  it('of a piece in all its faces is that of its six faces one by one', () => {
    fc.assert(
      fc.property(size, size, size, (length, width, thickness) => {
        const piece = finishQuantity.evaluate({
          ...base,
          surfaces: { length, width, thickness, faces: 'all', count: 1 },
        });
        const faces = finishQuantity.evaluate({
          ...base,
          surfaces: [
            length * width,
            length * width,
            length * thickness,
            length * thickness,
            width * thickness,
            width * thickness,
          ],
        });
        expect(close(piece.volume, faces.volume)).toBe(true);
        const bare = finishQuantity.evaluate({
          ...base,
          surfaces: { length, width, thickness, faces: 'top and edges', count: 1 },
        });
        expect(close(piece.area - bare.area, length * width)).toBe(true);
      }),
    );
  });
  it('comes to no more than the tins hold, and one tin fewer would not do', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 500, noNaN: true }),
        fc.double({ min: 0, max: 4, noNaN: true }),
        fc.integer({ min: 1, max: 9 }),
        (area, k, coats) => {
          const r = finishQuantity.evaluate({ ...base, coats, thinnerParts: k, surfaces: [area] });
          expect(r.tins * 0.0005).toBeGreaterThanOrEqual(r.finish * (1 - 1e-6));
          expect((r.tins - 1) * 0.0005).toBeLessThan(r.finish);
          expect(
            close(
              r.perCoat.reduce((a, b) => a + b, 0),
              r.volume,
            ),
          ).toBe(true);
          expect(close(r.finish * (1 + k), r.volume)).toBe(true);
          expect(close(r.finish + r.thinner, r.volume)).toBe(true);
        },
      ),
    );
  });
  it('what reaches the piece covers it as the tin says, whatever is lost', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 500, noNaN: true }),
        fc.double({ min: 0, max: 0.9, noNaN: true }),
        (area, loss) => {
          const r = finishQuantity.evaluate({ ...base, loss, surfaces: [area] });
          expect(close(r.volume * (1 - loss) * base.coverage, base.coats * area)).toBe(true);
        },
      ),
    );
  });
});
