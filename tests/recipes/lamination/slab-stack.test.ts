import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clampPlan } from '../../../src/recipes/lamination/clamp-plan.js';
import { glueTiming } from '../../../src/recipes/lamination/glue-timing.js';
import { slabStack } from '../../../src/recipes/lamination/slab-stack.js';

const slab = { length: '1 m', width: '200 mm', thickness: '40 mm', glueLines: 1 };
const of = (more: object = {}) =>
  slabStack({
    slabs: [slab, slab],
    pressure: '200 kPa',
    clampForce: '5 kN',
    caulThickness: '60 mm',
    perLine: '1 min',
    openTime: '10 min',
    ...more,
  });
const said = (r: ReturnType<typeof of>): string => r.cautions.map((c) => c.text).join('\n');

describe('slabStack', () => {
  it('presses with pressure times area once, however many slabs lie in the stack', () => {
    // 200 kPa on 1 m x 200 mm: 40 kN, eight clamps of 5 kN; four pairs of cauls, but every 160 mm wants seven.
    for (const slabs of [[slab], [slab, slab], [slab, slab, slab]]) {
      const r = of({ slabs });
      expect(r.force.in('kN')).toBeCloseTo(40, 9);
      // Cover: 2 x 60 mm through the caul and 2 x 20 mm to the first glue line, 160 mm: seven places.
      expect([r.cauls, r.clamps]).toEqual([7, 14]);
      expect(r.forceEach.in('kN')).toBeCloseTo(40 / 14, 9);
      expect(r.reachNeeded.in('mm')).toBeCloseTo(slabs.length * 40 + 120, 9);
    }
  });
  it('agrees with clampPlan on the force and the count of one joint', () => {
    const one = clampPlan({
      length: '1 m',
      jointHeight: '200 mm',
      pressure: '200 kPa',
      clampForce: '5 kN',
      outerWidth: '20 mm',
      pad: '60 mm',
    });
    const r = of({ slabs: [slab] });
    expect(r.force.value).toBeCloseTo(one.totalForce.value, 6);
    expect(r.cauls).toBe(Math.max(Math.ceil(one.byForce / 2), one.bySpacing));
  });
  it('a shorter, narrower and thinner slab: more pressure bare, and what to pack', () => {
    const small = { length: '800 mm', width: '150 mm', thickness: '38 mm', thinnest: '36.5 mm' };
    const r = of({ slabs: [slab, small] });
    expect(r.joints[1]!.bare.in('kPa')).toBeCloseTo(40 / (0.8 * 0.15), 6);
    expect(r.joints[1]!.packed.in('kPa')).toBeCloseTo(200, 9);
    expect(r.joints[1]!.packing).toBe(
      '200 mm long and 38 mm thick at its end; 50 mm wide and 38 mm thick at its edge; up to 1.5 mm over its thin place',
    );
    expect(r.joints[0]!.packing).toBe('none');
    expect(said(r)).toMatch(/takes all the force/);
    expect(said(of())).not.toMatch(/takes all the force/);
  });
  it('lays the slab with most glue lines first; without a closed time the first waits from its first glue', () => {
    const r = of({ slabs: [slab, { ...slab, glueLines: 3 }], clampsUp: '2 min' });
    expect(r.order.map((o) => [o.slab, o.start.in('min'), o.closed.in('min'), o.waits.in('min')])).toEqual([
      [2, 0, 3, 3],
      [1, 3, 4, 2],
    ]);
    // Four lines and the clamps, 6 min of 10.
    expect(r.spare.in('min')).toBeCloseTo(4, 9);
    // As glueTiming has it.
    const timing = glueTiming({ joints: 4, perJoint: '1 min', openTime: '10 min', clampsUp: '2 min' });
    expect(timing.plan[0]!.spare.in('min')).toBeCloseTo(4, 9);
  });
  it('with a closed time each slab is spread within the open time and pressed within the closed one', () => {
    const r = of({ slabs: [slab, slab, slab], openTime: '2 min', closedTime: '4.5 min', clampsUp: '2 min' });
    // The first waits 2 min of spreading and 2 min of clamps; each is spread in 1 min of 2.
    expect(r.spare.in('min')).toBeCloseTo(0.5, 9);
    expect([r.inTime, r.batches]).toEqual([true, 1]);
    const late = of({
      slabs: [slab, slab, slab],
      openTime: '2 min',
      closedTime: '3.5 min',
      clampsUp: '2 min',
    });
    expect([late.inTime, late.batches]).toEqual([false, 2]);
    expect(said(late)).toMatch(/skinned before the clamps/);
    expect(late.sentence).toMatch(/too late by 30 s: glue in 2 goes/);
  });
  it('both ways: edges by clampPlan, and cauls that hold the bow of a force off the middle, 8 F e/W', () => {
    const r = of({
      way: 'two-way',
      slabs: [{ length: '900 mm', width: '300 mm', thickness: '25 mm', glueLines: 4 }],
      offset: '2 mm',
    });
    expect(r.force.in('N')).toBeCloseTo(200e3 * 0.9 * 0.025, 6);
    // Strips of 60 mm: every 120 mm, eight clamps, each with a pair of cauls.
    expect([r.cauls, r.clamps]).toEqual([8, 24]);
    expect(r.caulForceEach!.in('N')).toBeCloseTo((8 * 4500 * 0.002) / 0.3 / 16, 9);
    expect(r.reachNeeded.in('mm')).toBeCloseTo(300, 9);
    expect(() => of({ way: 'two-way' })).toThrow(/slabs: got 2 slabs, takes one panel/);
  });
  it('says by field what it cannot take', () => {
    expect(() => of({ pressure: undefined })).toThrow(/pressure: got neither/);
    expect(() => of({ slabs: [{ ...slab, thinnest: '41 mm' }] })).toThrow(/slabs\[1\]\.thinnest: got 41 mm/);
    expect(of({ reach: '150 mm' }).reachOk).toBe(false);
    expect(said(of({ reach: '150 mm' }))).toMatch(/do not reach/);
  });
  it('laws: no clamp over its force, no fewer clamps for more pressure, no more time for more slabs', () => {
    const side = (min: number, max: number) => fc.integer({ min, max }).map((n) => `${n} mm`);
    const row = fc.record({
      length: side(200, 2500),
      width: side(60, 600),
      thickness: side(10, 90),
      glueLines: fc.integer({ min: 1, max: 6 }),
    });
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 50, max: 900 }),
        (slabs, kPa) => {
          const r = of({ slabs, pressure: `${kPa} kPa` });
          expect(r.forceEach.in('N')).toBeLessThanOrEqual(5000 * (1 + 1e-9));
          expect(of({ slabs, pressure: `${kPa + 100} kPa` }).clamps).toBeGreaterThanOrEqual(r.clamps);
          const more = of({ slabs: [...slabs, slab], pressure: `${kPa} kPa` });
          expect(more.spare.value).toBeLessThanOrEqual(r.spare.value + 1e-9);
          expect(more.batches).toBeGreaterThanOrEqual(r.batches);
          for (const j of r.joints) expect(j.bare.value).toBeGreaterThanOrEqual(j.packed.value * (1 - 1e-12));
          expect(r.order.map((o) => o.slab).sort()).toEqual(slabs.map((_, i) => i + 1));
        },
      ),
      { numRuns: 50 },
    );
  });
});
