import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chamfer } from '../../../src/recipes/machining/chamfer.js';

const cut = (more: object) => chamfer({ thickness: '40 mm', ...more });

describe('chamfer', () => {
  it('10 mm wide at 45° goes 7.07 mm deep in three passes of 3 mm and leaves 25.86 mm between two', () => {
    const r = cut({ width: '10 mm', bothEdges: true });
    expect(r.depth.in('mm')).toBeCloseTo(10 / Math.SQRT2, 9);
    expect(r.alongFace.in('mm')).toBeCloseTo(10 / Math.SQRT2, 9);
    expect(r.flat.in('mm')).toBeCloseTo(40 - 20 / Math.SQRT2, 9);
    expect(r.passes).toBe(3);
    expect(cut({ depth: '6 mm' }).passes).toBe(2);
  });
  it('both ways round: at 30° to the face, 5 mm deep is 10 mm wide and 8.66 mm along the face', () => {
    const r = cut({ depth: '5 mm', angle: '30 deg' });
    expect([r.width.in('mm'), r.alongFace.in('mm')]).toEqual([
      expect.closeTo(10, 9),
      expect.closeTo(8.660254, 6),
    ]);
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 15, noNaN: true }),
        fc.double({ min: 10, max: 80, noNaN: true }),
        (f, angle) => {
          const there = cut({ width: `${f} mm`, angle: `${angle} deg` });
          const back = cut({ depth: `${there.depth.in('mm')} mm`, angle: `${angle} deg` });
          expect(back.width.in('mm')).toBeCloseTo(f, 9);
          expect(Math.hypot(there.depth.value, there.alongFace.value)).toBeCloseTo(f / 1000, 12);
        },
      ),
    );
  });
  it('a run: 4 parts with 2 chamfers of 1.5 m in 3 passes at 2 m/min take 18 min', () => {
    const r = cut({ width: '10 mm', length: '1.5 m', each: 2, parts: 4 });
    expect(r.run.in('m')).toBeCloseTo(12, 9);
    expect(r.time.in('min')).toBeCloseTo(18, 9);
  });
  it('refuses both or neither of width and depth, and chamfers that leave no edge', () => {
    expect(() => cut({})).toThrow(/width: got neither width nor depth/);
    expect(() => cut({ width: '5 mm', depth: '5 mm' })).toThrow(/both width and depth/);
    expect(() => cut({ depth: '21 mm', bothEdges: true })).toThrow(
      /depth: takes 42\.0 mm off an edge of 40\.0 mm/,
    );
  });
});
