import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutterMarks } from '../../src/recipes/machining/cutter-marks.js';
import { planingTime } from '../../src/recipes/machining/planing-time.js';
import { chipVolume } from '../../src/recipes/machining/chip-volume.js';

const close = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
const feed = fc.double({ min: 0.01, max: 4, noNaN: true });
const speed = fc.double({ min: 10, max: 300, noNaN: true });
const knives = fc.integer({ min: 1, max: 12 });

describe('knife marks', () => {
  it('as many knives at half the speed leave the same board', () => {
    fc.assert(
      fc.property(feed, speed, fc.integer({ min: 1, max: 6 }), (v, n, z) => {
        const a = cutterMarks.evaluate({ spindleSpeed: n, knives: z, feed: v });
        const b = cutterMarks.evaluate({ spindleSpeed: n / 2, knives: 2 * z, feed: v });
        expect(close(a.pitch, b.pitch) && close(a.waveDepth, b.waveDepth)).toBe(true);
      }),
    );
  });
  it('twice the feed doubles the spacing and makes the ripple four times as deep', () => {
    fc.assert(
      fc.property(feed, speed, knives, (v, n, z) => {
        const a = cutterMarks.evaluate({ spindleSpeed: n, knives: z, feed: v });
        const b = cutterMarks.evaluate({ spindleSpeed: n, knives: z, feed: 2 * v > 5 ? v : 2 * v });
        if (2 * v <= 5) expect(close(b.pitch, 2 * a.pitch) && close(b.waveDepth, 4 * a.waveDepth)).toBe(true);
      }),
    );
  });
  it('the feed for the marks wanted gives them', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 200, max: 2000, noNaN: true }),
        fc.double({ min: 20, max: 150, noNaN: true }),
        fc.integer({ min: 1, max: 4 }),
        (wanted, n, z) => {
          const { feedForWanted } = cutterMarks.evaluate({ spindleSpeed: n, knives: z, feed: 0.1, wanted });
          expect(
            close(
              cutterMarks.evaluate({ spindleSpeed: n, knives: z, feed: feedForWanted }).marksPerInch,
              wanted,
            ),
          ).toBe(true);
        },
      ),
    );
  });
  it('the ripple is the height of a chord of the cutting circle, while marks stand close', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.02, max: 0.5, noNaN: true }),
        fc.double({ min: 0.001, max: 0.2, noNaN: true }),
        (d, part) => {
          const p = d * part * 0.5;
          const exact = d / 2 - Math.sqrt((d / 2) ** 2 - (p / 2) ** 2);
          // pitch p: 60 marks a second at the feed 60 p; the chord's height is p²/(4 d) to first order.
          const got = cutterMarks.evaluate({
            spindleSpeed: 60,
            knives: 1,
            feed: Math.min(5, 60 * p),
            cutterDiameter: d,
          });
          if (60 * p <= 5) expect(Math.abs(got.waveDepth - exact)).toBeLessThanOrEqual(exact * 0.01 + 1e-12);
        },
      ),
    );
  });
});

describe('time at the thicknesser', () => {
  it('takes off what is asked, with one pass fewer it would not', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 0.1, noNaN: true }),
        fc.double({ min: 1e-4, max: 0.005, noNaN: true }),
        (removal, depthPerPass) => {
          const r = planingTime.evaluate({ totalLength: 10, removal, depthPerPass, feed: 0.1 });
          expect(r.passes * depthPerPass).toBeGreaterThanOrEqual(removal * (1 - 1e-6));
          expect((r.passes - 1) * depthPerPass).toBeLessThan(removal);
          expect(close(r.cutting * 0.1, 10 * r.passes)).toBe(true);
        },
      ),
    );
  });
  it('one pile in two heaps takes as long as in one', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 100, noNaN: true }),
        fc.double({ min: 0.5, max: 100, noNaN: true }),
        fc.integer({ min: 1, max: 20 }),
        fc.integer({ min: 1, max: 20 }),
        (a, b, m, n) => {
          const of = (totalLength: number, pieces: number) =>
            planingTime.evaluate({ totalLength, pieces, passes: 3, feed: 0.1 }).time;
          expect(close(of(a, m) + of(b, n), of(a + b, m + n))).toBe(true);
        },
      ),
    );
  });
});

describe('shavings', () => {
  it('weigh what the wood weighed, and fit their bags', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 10, noNaN: true }),
        fc.double({ min: 50, max: 1500, noNaN: true }),
        fc.constantFrom('planer shavings' as const, 'sawdust' as const),
        (V, density, waste) => {
          const r = chipVolume.evaluate({ volumeRemoved: V, density, waste });
          expect(close(r.mass, V * density)).toBe(true);
          expect(close(r.bulkDensity * r.volume, r.mass)).toBe(true);
          expect(r.bags * 0.1).toBeGreaterThanOrEqual(r.volume * (1 - 1e-6));
          expect((r.bags - 1) * 0.1).toBeLessThan(r.volume);
        },
      ),
    );
  });
});
