import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bowUnderClamps, bucklingForce, liftingForce } from '../../src/recipes/lamination/slab-buckling.js';

const num = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('a slab under clamps', () => {
  it('buckles later the thicker, the narrower and the longer it is', () => {
    fc.assert(
      fc.property(num(2e8, 1e9), num(0.3, 3), num(0.008, 0.06), num(0.1, 1.5), (E_x, L, t, W) => {
        const F = bucklingForce.evaluate({ E_x, L, t, W });
        expect(bucklingForce.evaluate({ E_x, L, t: t * 1.1, W })).toBeGreaterThan(F);
        expect(bucklingForce.evaluate({ E_x, L, t, W: W * 1.1 })).toBeLessThan(F);
        expect(bucklingForce.evaluate({ E_x, L: L * 1.1, t, W })).toBeGreaterThan(F);
        expect(bucklingForce.evaluate({ E_x: E_x * 1.1, L, t, W })).toBeGreaterThan(F);
      }),
    );
  });
  it('opens at the buckling force where the clamps bear dead centre, earlier the farther off they are', () => {
    fc.assert(
      fc.property(num(1e3, 1e6), num(0.008, 0.06), num(0, 0.2), (F_cr, t, share) => {
        expect(liftingForce.evaluate({ F_cr, t, e: 0 })).toBeCloseTo(F_cr, 6);
        const open = liftingForce.evaluate({ F_cr, t, e: share * t });
        expect(open).toBeLessThanOrEqual(F_cr * (1 + 1e-12));
        expect(liftingForce.evaluate({ F_cr, t, e: (share + 0.01) * t })).toBeLessThanOrEqual(open);
        if (share >= 1 / 6) expect(open).toBe(0);
        // At that force offset and bow together are a sixth of the thickness.
        if (share > 0.001 && share < 0.16) {
          const e = share * t;
          expect((e + bowUnderClamps.evaluate({ e, F: open, F_cr })) / (t / 6)).toBeCloseTo(1, 6);
        }
      }),
    );
  });
});
