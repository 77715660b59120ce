// Errors that pieces share because one setting made them all.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jointFit } from '../../src/recipes/joinery/joint-fit.js';
import { stackUp } from '../../src/recipes/lamination/stack-up.js';

describe('stackUp of pieces cut at one setting', () => {
  const stack = (setting: string, more: object = {}) =>
    stackUp({ parts: [{ nominal: '45 mm', plusMinus: '0.2 mm', count: 14, setting }], ...more });
  it('14 strips, each 0.2 mm and the fence 0.1 mm: 4.2 mm at worst, sd sqrt(14 0.1² + 14² 0.05²)', () => {
    const r = stack('0.1 mm');
    expect(r.worstCase.in('mm')).toBeCloseTo(14 * 0.3, 9);
    expect(r.sd.in('mm')).toBeCloseTo(Math.sqrt(14 * 0.01 + 196 * 0.0025), 9);
    expect(r.rss.in('mm')).toBeCloseTo(Math.sqrt(14 * 0.04 + 196 * 0.01), 9);
  });
  it('the simulation agrees with the closed form', () => {
    const r = stack('0.1 mm', { limits: '1 mm' });
    expect(r.chanceSimulated?.value).toBeCloseTo(r.chanceInside!.value, 1);
    expect(Math.abs(r.chanceSimulated!.value - r.chanceInside!.value)).toBeLessThan(0.02);
    const even = stack('0.3 mm', { shape: 'even', limits: '4.2 mm' });
    expect(even.sd.in('mm')).toBeCloseTo(Math.sqrt((14 * 0.04) / 3 + (196 * 0.09) / 3), 9);
    expect(even.chanceInside!.value).toBeGreaterThan(0.9);
  });
  it('a shared error is never better than one of each piece by itself', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 50 }), (count, t) => {
        const one = (part: object) => stackUp({ parts: [{ nominal: '40 mm', count, ...part }] });
        const own = one({ plusMinus: `${t / 100} mm` });
        const shared = one({ plusMinus: '0 mm', setting: `${t / 100} mm` });
        expect(shared.worstCase.value).toBeCloseTo(own.worstCase.value, 12);
        expect(shared.sd.value).toBeGreaterThanOrEqual(own.sd.value - 1e-15);
      }),
      { numRuns: 40 },
    );
  });
});

describe('jointFit of joints cut at one setting', () => {
  const base = {
    slot: { size: '6.2 mm', plusMinus: '0.05 mm' },
    part: { size: '6.1 mm', plusMinus: '0.05 mm' },
    tightest: '0 mm',
    loosest: '0.2 mm',
  };
  const fit = (more: object) => jointFit({ ...base, ...more });
  it('without one, all fit as often as one to that power; the worst pair is told', () => {
    const r = fit({ joints: 12 });
    expect(r.chanceAll.value).toBeCloseTo(r.chanceFits.value ** 12, 12);
    expect([r.worstTight.in('mm'), r.worstLoose.in('mm')]).toEqual([
      expect.closeTo(0, 9),
      expect.closeTo(0.2, 9),
    ]);
    expect(r.worstCase).toBe('even the worst pairs fit');
    expect(fit({ setting: '0.01 mm' }).worstCase).toBe('the tightest pair jams and the loosest is loose');
    expect(fit({ part: { size: '6.16 mm', plusMinus: '0.05 mm' } }).worstCase).toBe('the tightest pair jams');
    expect(fit({ part: { size: '6.04 mm', plusMinus: '0.05 mm' } }).worstCase).toBe(
      'the loosest pair is loose',
    );
  });
  it('one error for all: of twelve joints all fit nearly as often as one', () => {
    const r = fit({
      slot: { size: '6.2 mm', plusMinus: '0 mm' },
      part: { size: '6.1 mm', plusMinus: '0 mm' },
      setting: '0.1 mm',
      joints: 12,
    });
    // Two standard deviations to each side.
    expect(r.chanceFits.value).toBeCloseTo(0.9545, 4);
    expect(r.chanceAll.value).toBeCloseTo(r.chanceFits.value, 9);
  });
  it('lies between the power and the single chance', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 20 }), (joints, t) => {
        const r = fit({ setting: `${t / 100} mm`, joints });
        expect(r.chanceAll.value).toBeLessThanOrEqual(r.chanceFits.value + 1e-6);
        expect(r.chanceAll.value).toBeGreaterThanOrEqual(r.chanceFits.value ** joints - 1e-6);
      }),
      { numRuns: 40 },
    );
  });
});
