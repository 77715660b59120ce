import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stainTrials } from '../../../src/recipes/finish/stain-trials.js';

describe('stainTrials', () => {
  it('from an eighth to the whole in four strips doubles each time: 12.5, 25, 50, 100 %', () => {
    const r = stainTrials({
      strongest: '100 %',
      weakest: '12.5 %',
      strips: 4,
      toolError: '0.25 mL',
      strengthError: '5 %',
    });
    expect(r.step).toBeCloseTo(2, 12);
    expect(r.ladder.map((row) => row.strength.in('%'))).toEqual(
      [12.5, 25, 50, 100].map((x) => expect.closeTo(x, 9) as number),
    );
    // 0.25 / (0.05 0.125) = 40 mL; 5 mL of stain is off by 0.25, a twentieth.
    expect(r.batch.in('mL')).toBeCloseTo(40, 9);
    expect(r.ladder[0]?.off.in('%')).toBeCloseTo(5, 9);
    expect(r.stain.in('mL')).toBeCloseTo(40 * 1.875, 9);
    expect(r.sentence).toBe(
      '4 strips, each 2.00 times as strong as the one before: batches of 40 mL, 75 mL of stain in all.',
    );
  });
  it('the least batch counts where the measure is fine', () => {
    expect(stainTrials({ toolError: '0.01 mL', least: '15 mL' }).batch.in('mL')).toBeCloseTo(15, 9);
  });
  it('refuses a ladder that goes down', () => {
    expect(() => stainTrials({ strongest: '20 %', weakest: '20 %' })).toThrow(
      /weakest: got 20\.0 %, takes less than the strongest of 20\.0 %/,
    );
  });
  it('steps are even in ratio, every mix adds up, and no strength is off by more than allowed', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 2, max: 12 }),
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 41, max: 99 }),
        (strips, low, high) => {
          const r = stainTrials({
            strips,
            weakest: `${low} %`,
            strongest: `${high} %`,
            strengthError: '10 %',
          });
          const c = r.ladder.map((row) => row.strength.value);
          for (let i = 1; i < c.length; i++) expect(c[i]! / c[i - 1]!).toBeCloseTo(r.step, 9);
          for (const row of r.ladder) {
            expect(row.stain.value + row.other.value).toBeCloseTo(r.batch.value, 12);
            expect(row.off.value).toBeLessThanOrEqual(0.1 + 1e-9);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
