import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tableRows } from '../../../src/materials/data-tables.js';
import { heightsForPeople } from '../../../src/recipes/people/heights-for-people.js';

const at = (height: string, more: object = {}) => heightsForPeople({ height, ...more });

describe('body measures', () => {
  it('5th and 95th percentiles are 1.645 deviations off the mean, printed to 5 mm', () => {
    const rows = tableRows('body-heights');
    expect(rows.length).toBe(8);
    for (const r of rows) {
      const [low, mean, high, sd] = ['fifth_mm', 'mean_mm', 'ninety_fifth_mm', 'deviation_mm'].map((c) =>
        r.number(c)!,
      );
      expect(Math.abs(low! - (mean! - 1.645 * sd!)), r.text('measure')).toBeLessThanOrEqual(5);
      expect(Math.abs(high! - (mean! + 1.645 * sd!)), r.text('measure')).toBeLessThanOrEqual(5);
    }
  });
});

describe('heightsForPeople', () => {
  it('a seat of 415 mm for men in 25 mm shoes: popliteal 390 to 490, Phi(1.724) - Phi(-1.724) = 91.5 %', () => {
    const r = at('415 mm', { use: 'seat', people: 'men' });
    expect(r.share.in('%')).toBeCloseTo(91.53, 1);
    expect(r.best.in('mm')).toBeCloseTo(415, 9);
    expect([r.low.in('mm'), r.high.in('mm')]).toEqual([395, 490]);
  });
  it('a counter for light work: 1105 + 25 - 100 for men; adults are the mean of both', () => {
    const men = at('1000 mm', { people: 'men' });
    expect(men.best.in('mm')).toBeCloseTo(1030, 9);
    const women = at('1000 mm', { people: 'women' });
    expect(at('1000 mm').share.value).toBeCloseTo((men.share.value + women.share.value) / 2, 12);
  });
  it('knee room suits more the higher it is', () => {
    fc.assert(
      fc.property(fc.integer({ min: 300, max: 800 }), (h) => {
        const share = (x: number) => at(`${x} mm`, { use: 'room for the knees' }).share.value;
        expect(share(h + 10)).toBeGreaterThanOrEqual(share(h));
      }),
    );
  });
  it('no height suits more of one kind than the best', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 500, max: 1400 }),
        fc.constantFrom('men', 'women'),
        fc.constantFrom('standing, light work', 'standing, heavy work', 'standing, fine work', 'seat'),
        (h, people, use) => {
          const r = at(`${h} mm`, { people, use });
          expect(r.share.value).toBeLessThanOrEqual(r.bestShare.value + 1e-9);
        },
      ),
    );
  });
  it('access: 865 mm to sit at, 915 to be served at, 685 for the knees', () => {
    expect(at('865 mm').access).toMatch(/within 710 to 865 mm/);
    expect(at('900 mm').access).toMatch(/low enough to be served at/);
    expect(at('950 mm').access).toMatch(/^too high/);
    expect(at('680 mm', { use: 'room for the knees' }).access).toMatch(/too low/);
    expect(at('690 mm', { use: 'room for the knees' }).access).toMatch(/room for a wheelchair/);
  });
  it('a child of 1.30 m sits at 350 mm at a table of 590 mm', () => {
    const r = at('600 mm', { lowerLeg: '355 mm' });
    expect([r.schoolSeat?.in('mm'), r.schoolTable?.in('mm')]).toEqual([350, 590]);
  });
});
