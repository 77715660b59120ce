import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { postCasing } from '../../../src/recipes/joinery/post-casing.js';

const post = {
  width: '90 mm',
  depth: '70 mm',
  height: '800 mm',
  thickness: '20 mm',
  clearance: '5 mm',
} as const;
const of = (more: object = {}) => postCasing({ ...post, ...more });
const said = (r: ReturnType<typeof of>): string => r.cautions.map((c) => c.text).join('\n');

describe('postCasing', () => {
  it('butt: the front over the sides; inside 100 x 80, outside 140 x 120', () => {
    const r = of();
    expect([r.frontWidth, r.sideWidth, r.outsideWidth, r.outsideDepth].map((q) => q.in('mm'))).toEqual(
      [140, 80, 140, 120].map((n): unknown => expect.closeTo(n, 9)),
    );
    expect(r.boards.map((b) => [b.board, b.count, b.edges])).toEqual([
      ['front and back', 2, 'both square'],
      ['side', 2, 'both square'],
    ]);
    expect(r.mitreLeft).toBeUndefined();
  });
  it('mitred: both pairs as wide as the outside, and a mitre of t times the root of two', () => {
    const r = of({ corner: 'mitred' });
    expect([r.frontWidth.in('mm'), r.sideWidth.in('mm')]).toEqual([
      expect.closeTo(140, 9),
      expect.closeTo(120, 9),
    ]);
    expect(r.mitreLeft!.in('mm')).toBeCloseTo(20 * Math.SQRT2, 9);
  });
  it('rebated: the sides go in by the rebate on both edges', () => {
    expect(of({ corner: 'rebated' }).sideWidth.in('mm')).toBeCloseTo(100, 9);
    const r = of({ corner: 'rebated', rebate: '8 mm' });
    expect(r.sideWidth.in('mm')).toBeCloseTo(96, 9);
    expect(r.boards[0]!.edges).toBe('both rebated 20 mm wide, 8 mm deep');
  });
  it('a chamfer of 6 mm leaves 128 and 108 mm and is 8.49 mm wide; over the joint it says so', () => {
    const r = of({ corner: 'rebated', chamfer: '6 mm' });
    expect([r.frontFace.in('mm'), r.sideFace.in('mm')]).toEqual([
      expect.closeTo(128, 9),
      expect.closeTo(108, 9),
    ]);
    expect(r.chamferFace!.in('mm')).toBeCloseTo(6 * Math.SQRT2, 9);
    expect(said(r)).not.toMatch(/line of the joint/);
    expect(said(of({ corner: 'rebated', chamfer: '11 mm' }))).toMatch(/line of the joint/);
  });
  it('an uneven post widens the inside once; lengths lose the floor gap and gain the trim', () => {
    const r = of({ uneven: '6 mm', floorGap: '5 mm', trim: '15 mm', posts: 3 });
    expect(r.frontWidth.in('mm')).toBeCloseTo(146, 9);
    expect(r.boards.map((b) => [b.count, b.length.in('mm')])).toEqual([
      [6, expect.closeTo(810, 9)],
      [6, expect.closeTo(810, 9)],
    ]);
    expect(r.area.in('m2')).toBeCloseTo(6 * 0.81 * (0.146 + 0.086), 9);
  });
  it('moves by the published coefficient: Douglas-fir 0.00267 per per cent over 140 mm and 4 % is 1.5 mm', () => {
    // Wood Handbook Table 13-5, coast Douglas-fir, tangential.
    const r = of({ timber: 'Douglas-fir' });
    expect(r.movement!.in('mm')).toBeCloseTo(140 * 0.00267 * 4, 6);
    expect(r.clearanceLeft!.in('mm')).toBeCloseTo(5 - (140 * 0.00267 * 4) / 2, 6);
    expect(said(of({ timber: 'Douglas-fir', clearance: '0 mm' }))).toMatch(/shrink onto the post/);
  });
  it('says by field what it cannot take', () => {
    expect(() => of({ rebate: '5 mm' })).toThrow(/rebate: got 5 mm with butt corners/);
    expect(() => of({ corner: 'rebated', rebate: '20 mm' })).toThrow(
      /rebate: got 20 mm, takes less than the thickness/,
    );
    expect(() => of({ chamfer: '40 mm' })).toThrow(/chamfer: got 40 mm, takes less than 40 mm/);
    expect(() => of({ floorGap: '100 mm', height: '80 mm' })).toThrow(/floorGap: .*less than the height/);
  });
  it('laws: the boards close round the post whatever the corner, and the pieces of a section fill its ring', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 40, max: 300 }),
        fc.integer({ min: 40, max: 300 }),
        fc.integer({ min: 9, max: 40 }),
        fc.integer({ min: 0, max: 15 }),
        fc.constantFrom('butt', 'mitred', 'rebated'),
        (w, d, t, c, corner) => {
          const r = postCasing({
            width: `${w} mm`,
            depth: `${d} mm`,
            height: '1 m',
            thickness: `${t} mm`,
            clearance: `${c} mm`,
            corner,
          });
          const [W, D] = [r.outsideWidth.in('mm'), r.outsideDepth.in('mm')];
          expect([W, D]).toEqual([
            expect.closeTo(w + 2 * c + 2 * t, 9),
            expect.closeTo(d + 2 * c + 2 * t, 9),
          ]);
          const ring = W * D - (W - 2 * t) * (D - 2 * t);
          const [f, s] = [r.frontWidth.in('mm'), r.sideWidth.in('mm')];
          // A mitred board is a trapezium; a rebate of half the thickness takes t by t/2 off either edge of the front.
          const pieces =
            corner === 'mitred'
              ? 2 * t * (f - t) + 2 * t * (s - t)
              : corner === 'butt'
                ? 2 * t * (f + s)
                : 2 * (t * f - 2 * t * (t / 2)) + 2 * t * s;
          expect(pieces).toBeCloseTo(ring, 6);
        },
      ),
    );
  });
});
