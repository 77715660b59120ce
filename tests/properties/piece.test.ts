import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Piece } from '../../src/piece/piece.js';
import { pieceOf, porchBenchInput, teaCounterInput } from '../piece/samples.js';

const counter = pieceOf(teaCounterInput());
const bench = pieceOf(porchBenchInput());
const runs = { numRuns: 25 };

const mm = (low: number, high: number) => fc.integer({ min: low, max: high }).map((n) => `${n} mm`);
const margin = (p: Piece, name: string): number => p.question(name).margin ?? 0;

/** Changes that leave every piece whole. */
const changes = fc.record({
  'top.length': mm(1700, 2400),
  'top.width': mm(620, 900),
  'top.thickness': mm(25, 60),
  'use.goods': fc.integer({ min: 1, max: 50 }).map((n) => `${n / 10} kPa`),
  'use.leaning': fc.integer({ min: 0, max: 900 }).map((n) => `${n} N`),
  'parts.leg.section': fc.constantFrom('45 x 70 mm', '45 x 95 mm', '60 x 60 mm', '70 x 70 mm'),
  'parts.cross rail.section': fc.constantFrom('45 x 95 mm', '45 x 120 mm', '60 x 95 mm'),
});

describe('of random pieces', () => {
  it('every question has a verdict and a sentence without holes', () => {
    fc.assert(
      fc.property(changes, (change) => {
        const p = counter.with(change);
        for (const a of p.questions) {
          expect(['ok', 'tight', 'fails', 'open']).toContain(a.verdict);
          expect(a.answer).not.toMatch(/NaN|undefined|Infinity/);
          if (a.margin !== undefined) expect(Number.isFinite(a.margin)).toBe(true);
        }
      }),
      runs,
    );
  });

  it('a variant answers as one that was described from scratch', () => {
    fc.assert(
      fc.property(changes, changes, (first, second) => {
        const onTheWay = counter.with(first).with(second);
        const fresh = pieceOf(teaCounterInput()).with(second);
        expect(onTheWay.questions.map((a) => [a.name, a.answer])).toEqual(
          fresh.questions.map((a) => [a.name, a.answer]),
        );
      }),
      { numRuns: 10 },
    );
  });

  it('more goods never make the top sag less, nor the rails carry more', () => {
    fc.assert(
      fc.property(changes, fc.integer({ min: 1, max: 40 }), (change, more) => {
        const p = counter.with(change);
        const q = p.with({ 'use.goods': `${p.description.use.goods / 1000 + more / 10} kPa` });
        for (const name of ['sagTop', 'topStrength', 'sagRails', 'railStrength'])
          expect(margin(q, name), name).toBeLessThanOrEqual(margin(p, name) + 1e-9);
      }),
      runs,
    );
  });

  it('a heavier lean never makes it stand better', () => {
    fc.assert(
      fc.property(changes, fc.integer({ min: 1, max: 500 }), (change, more) => {
        const p = counter.with(change);
        const q = p.with({ 'use.leaning': `${p.description.use.leaning + more} N` });
        expect(margin(q, 'tipping')).toBeLessThanOrEqual(margin(p, 'tipping') + 1e-9);
      }),
      runs,
    );
  });

  it('feet farther out never make it tip sooner', () => {
    fc.assert(
      fc.property(changes, fc.integer({ min: 1, max: 60 }), (change, out) => {
        const p = counter.with(change);
        const width = Math.round(p.description.top.width * 1000);
        const q = p.with({ 'parts.foot.from': `${-out} mm`, 'parts.foot.to': `${width + out} mm` });
        const r = p.with({ 'parts.foot.from': `${-out - 20} mm`, 'parts.foot.to': `${width + out + 20} mm` });
        expect(margin(r, 'tipping')).toBeGreaterThanOrEqual(margin(q, 'tipping') - 1e-9);
      }),
      runs,
    );
  });

  it('the mass is that of its parts, and grows with each of them', () => {
    fc.assert(
      fc.property(mm(900, 1600), mm(300, 500), mm(30, 60), (length, width, thickness) => {
        const p = bench.with({ 'top.length': length, 'top.width': width, 'top.thickness': thickness });
        const thicker = p.with({ 'top.thickness': `${p.description.top.thickness * 1000 + 5} mm` });
        const mass = (x: Piece): number => (x.weight() as unknown as { mass: { value: number } }).mass.value;
        expect(mass(thicker)).toBeGreaterThan(mass(p));
        // The top's mass goes with its volume, at one density.
        const volume = (x: Piece): number =>
          x.description.top.length * x.description.top.width * x.description.top.thickness;
        expect(mass(thicker) / volume(thicker)).toBeCloseTo(mass(p) / volume(p), 6);
      }),
      runs,
    );
  });

  it('parts to cut are as many and as long as the parts in place', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 18 }), { minLength: 2, maxLength: 5 }),
        (places) => {
          const along = [...places].sort((a, b) => a - b).map((n) => `${n * 100} mm`);
          const p = counter.with({ 'parts.leg.along': along, 'parts.brace.rise': '0 mm' });
          const text = p.questions.find((a) => a.name === 'joints')?.answer ?? '';
          // Two legs at every place, each lapped by one of two long rails.
          expect(text).toContain(`long rail lap: ${2 * along.length} ×`);
        },
      ),
      runs,
    );
  });
});
