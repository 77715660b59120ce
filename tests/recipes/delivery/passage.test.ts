import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { longestIn, longestRoundCorner } from '../../../src/recipes/delivery/corner.js';
import { peopleFor } from '../../../src/recipes/delivery/lifting.js';
import { passage } from '../../../src/recipes/delivery/passage.js';

const foot = 0.3048;

describe('round a corner', () => {
  it('a thin piece: (a^2/3 + b^2/3)^3/2; halls of 3 and 4 ft take 9.87 ft', () => {
    expect(longestRoundCorner(3 * foot, 4 * foot, 0) / foot).toBeCloseTo(9.8657, 3);
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 3, noNaN: true }),
        fc.double({ min: 0.5, max: 3, noNaN: true }),
        (a, b) => {
          expect(longestRoundCorner(a, b, 0)).toBeCloseTo((a ** (2 / 3) + b ** (2 / 3)) ** 1.5, 6);
        },
      ),
    );
  });
  it('equal corridors: 2 (sqrt 2 a - w) for a piece w across', () => {
    expect(longestRoundCorner(1, 1, 0.2)).toBeCloseTo(2 * (Math.SQRT2 - 0.2), 9);
  });
  it('brute force: pushed round in half degrees its back never crosses the inner corner, and a little longer it does', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.7, max: 2, noNaN: true }),
        fc.double({ min: 0.7, max: 2, noNaN: true }),
        fc.double({ min: 0, max: 0.6, noNaN: true }),
        (a, b, w) => {
          const L = longestRoundCorner(a, b, w);
          const passes = (length: number): boolean =>
            Array.from({ length: 1801 }, (_, i) => (i / 1800) * (Math.PI / 2)).every((t) => {
              // Ends slide on the outer walls; the inner corner lies this far behind the front edge.
              const behind = a * Math.sin(t) + b * Math.cos(t) - length * Math.sin(t) * Math.cos(t);
              return behind >= w - 1e-9;
            });
          expect(passes(L * 0.9999)).toBe(true);
          expect(passes(L * 1.005)).toBe(false);
        },
      ),
      { numRuns: 50 },
    );
  });
  it('never longer for a wider piece or a narrower corridor', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.7, max: 2, noNaN: true }),
        fc.double({ min: 0.7, max: 2, noNaN: true }),
        fc.double({ min: 0, max: 0.6, noNaN: true }),
        (a, b, w) => {
          const L = longestRoundCorner(a, b, w);
          expect(longestRoundCorner(a, b, w + 0.05)).toBeLessThanOrEqual(L + 1e-9);
          expect(longestRoundCorner(a * 0.95, b, w)).toBeLessThanOrEqual(L + 1e-9);
          expect(longestRoundCorner(b, a, w)).toBeCloseTo(L, 6);
        },
      ),
    );
  });
});

describe('in a van', () => {
  it('a thin piece lies along the diagonal, one as wide as the van along its side', () => {
    expect(longestIn(2.4, 1.0, 0)).toBeCloseTo(2.6, 6);
    expect(longestIn(2.4, 1.0, 1.0)).toBeCloseTo(2.4, 6);
    expect(longestIn(2.4, 1.0, 1.1)).toBe(0);
  });
});

describe('the people to carry it', () => {
  it('16 kg for one woman, two thirds of the sum for two, half for three: 21 and 24 kg', () => {
    expect([
      peopleFor(16, 16),
      peopleFor(16.1, 16),
      peopleFor(21.3, 16),
      peopleFor(21.4, 16),
      peopleFor(24.1, 16),
    ]).toEqual([1, 2, 2, 3, 4]);
    // Men: 25, 33 and 37.5 kg.
    expect([peopleFor(33.3, 25), peopleFor(37.5, 25), peopleFor(37.6, 25), peopleFor(50, 25)]).toEqual([
      2, 3, 4, 4,
    ]);
    // Teams of more than four seldom work: half of four times 25 kg is the most.
    expect([peopleFor(50.1, 25), peopleFor(32.1, 16)]).toEqual([undefined, undefined]);
    const heavy = passage({
      length: '1 m',
      width: '500 mm',
      height: '500 mm',
      mass: '38 kg',
      gates: [{ kind: 'door', first: '800 mm' }],
    });
    expect(heavy.people).toBeUndefined();
    expect(heavy.cautions.map((c) => c.text).join(' ')).toMatch(
      /38 kg is over the 32 kg that 4 people carry/,
    );
  });
});

describe('passage', () => {
  const piece = { length: '1950 mm', width: '640 mm', height: '60 mm', spare: '0 mm' } as const;
  const through = (gates: readonly object[], more: object = {}) =>
    passage({ ...piece, gates, ...more } as never);
  it('a door takes any length on edge or lying, and nothing too wide both ways', () => {
    const r = through([{ kind: 'door', first: '100 mm', height: '700 mm' }]);
    expect([r.fits, r.longest, r.gates[0]?.way]).toEqual([true, undefined, 'on edge']);
    const no = through([{ kind: 'door', first: '600 mm', height: '600 mm' }]);
    expect([no.fits, no.parts]).toEqual([false, 0]);
    expect(no.sentence).toMatch(/does not go in at any length/);
  });
  it('a corner it does not pass says in how many parts, and who carries one', () => {
    const r = through([{ kind: 'corner', first: '600 mm', second: '600 mm', height: '640 mm' }], {
      mass: '40 kg',
    });
    // On edge, 60 mm across: 2 (sqrt 2 600 - 60) = 1577 mm.
    expect(r.longest!.in('mm')).toBeCloseTo(2 * (Math.SQRT2 * 600 - 60), 3);
    expect([r.parts, r.partLength.in('mm'), r.partMass!.in('kg'), r.people]).toEqual([2, 975, 20, 2]);
    expect(r.sentence).toBe(
      'It does not go in whole: make it in 2 parts of 975 mm. 20 kg each: 2 people carry it.',
    );
  });
  it('tilting up helps under a high ceiling', () => {
    const low = through([{ kind: 'corner', first: '600 mm', second: '600 mm', height: '640 mm' }]);
    const high = through([{ kind: 'corner', first: '600 mm', second: '600 mm', height: '2400 mm' }]);
    expect(high.longest!.value).toBeGreaterThan(low.longest!.value);
  });
  it('names what lacks its second width', () => {
    expect(() => through([{ kind: 'van', first: '2 m' }])).toThrow(/gates\.second: missing for a van/);
  });
});
