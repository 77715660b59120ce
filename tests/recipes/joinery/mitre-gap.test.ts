import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mitreGap } from '../../../src/recipes/joinery/mitre-gap.js';

const gap = (more: object = {}) => mitreGap({ thickness: '40 mm', bevelError: '0.5 deg', ...more });

describe('mitreGap', () => {
  it('40 mm at 90°, half a degree at each cut: 40 sqrt 2 opened by one degree, 0.987 mm', () => {
    const r = gap();
    // 2 56.5685 sin 0.5° = 0.98728.
    expect(r.gap.in('mm')).toBeCloseTo(0.98728, 4);
    expect(r.opensAt).toBe('the inside: the outside edges meet first');
    expect(gap({ bevelError: '-0.5 deg' }).opensAt).toBe('the outside: the inside edges meet first');
    expect(gap({ bevelError: '0 deg' }).gap.value).toBe(0);
  });
  it('brute force: two boards cut at 45.5°, butted at their tips, lie this far apart at the other end', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -3, max: 3, noNaN: true }),
        fc.integer({ min: 10, max: 100 }),
        (error, t) => {
          // Faces of equal length that meet in one point, with 2 error between them: the chord.
          const f = t / Math.cos(Math.PI / 4);
          const e = (error * Math.PI) / 180;
          const [p, q] = [
            [f * Math.cos(e), f * Math.sin(e)],
            [f * Math.cos(-e), f * Math.sin(-e)],
          ] as const;
          const chord = Math.hypot(p[0] - q[0], p[1] - q[1]);
          expect(gap({ thickness: `${t} mm`, bevelError: `${error} deg` }).gap.in('mm')).toBeCloseTo(
            chord,
            9,
          );
        },
      ),
      { numRuns: 60 },
    );
  });
  it('the correction undoes what the trial showed: 1.5 mm over 500 mm is 0.0859° at each cut', () => {
    expect(gap({ trialGap: '1.5 mm' }).correction!.in('deg')).toBeCloseTo(0.085944, 5);
    expect(gap({ trialGap: '-1.5 mm' }).correction!.in('deg')).toBeCloseTo(-0.085944, 5);
    fc.assert(
      fc.property(fc.double({ min: -2, max: 2, noNaN: true }), (e) => {
        const g = 2 * 500 * Math.sin((e * Math.PI) / 180);
        expect(gap({ trialGap: `${g} mm` }).correction!.in('deg')).toBeCloseTo(e, 9);
      }),
    );
  });
  it('several slabs add what differs from cut to cut, fence and hollow add along the joint', () => {
    const r = gap({
      slabs: 3,
      cutVariation: '0.1 deg',
      fenceError: '0.05 deg',
      outOfFlat: '0.3 mm',
      length: '640 mm',
    });
    const f = 40 * Math.SQRT2;
    const step = 4 * f * Math.sin((0.05 * Math.PI) / 180);
    const fence = 2 * 640 * Math.tan((0.05 * Math.PI) / 180);
    expect(r.step!.in('mm')).toBeCloseTo(step, 9);
    expect(r.worst.in('mm')).toBeCloseTo(0.98728 + step + fence + 0.3, 3);
    expect(gap().step).toBeUndefined();
  });
  it('says whether glue, spline or neither takes it up', () => {
    expect(gap({ bevelError: '0.05 deg' }).sentence).toMatch(/glue bridges it, with 0\.05 mm to spare/);
    expect(gap({ bevelError: '0.15 deg', splineWidth: '20 mm', splineClearance: '0.1 mm' }).sentence).toMatch(
      /the spline lets clamps pull it shut/,
    );
    expect(gap().sentence).toMatch(/0\.84 mm too much/);
  });
  it('never gapes less with a larger error or thicker boards', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5, noNaN: true }), fc.integer({ min: 5, max: 100 }), (e, t) => {
        const at = (error: number, thick: number) =>
          gap({ bevelError: `${error} deg`, thickness: `${thick} mm` }).worst.value;
        expect(at(e + 0.1, t)).toBeGreaterThanOrEqual(at(e, t));
        expect(at(e, t + 5)).toBeGreaterThanOrEqual(at(e, t));
      }),
      { numRuns: 60 },
    );
  });
});
