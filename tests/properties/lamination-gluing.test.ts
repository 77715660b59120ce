import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { caulCamber } from '../../src/recipes/lamination/caul-camber.js';
import { clampPlan } from '../../src/recipes/lamination/clamp-plan.js';
import { glueQuantity } from '../../src/recipes/lamination/glue-quantity.js';
import { glueTiming } from '../../src/recipes/lamination/glue-timing.js';

const whole = (min: number, max: number) => fc.integer({ min, max });

describe('glueQuantity', () => {
  it('is in proportion to joints, sides and spread, and alike in both systems', () => {
    fc.assert(
      fc.property(
        whole(100, 5000),
        whole(5, 300),
        whole(1, 60),
        whole(50, 400),
        whole(0, 50),
        (L, h, n, g, w) => {
          const mass = (more: object = {}) =>
            glueQuantity({
              jointLength: `${L} mm`,
              jointHeight: `${h} mm`,
              joints: n,
              spread: `${g} g/m2`,
              waste: `${w} %`,
              ...more,
            }).mass.in('g');
          const one = mass();
          // By hand, in square millimetres.
          expect(one).toBeCloseTo(((L * h * n) / 1e6) * g * (1 + w / 100), 6);
          expect(mass({ joints: 2 * n })).toBeCloseTo(2 * one, 6);
          expect(mass({ sides: 2 })).toBeCloseTo(2 * one, 6);
          expect(mass({ jointLength: `${L / 25.4} in` })).toBeCloseTo(one, 6);
        },
      ),
      { numRuns: 200 },
    );
  });
});

describe('glueTiming', () => {
  const times = fc.record({
    joints: whole(1, 60),
    per: whole(5, 240),
    open: whole(240, 3600),
    up: whole(0, 120),
  });
  it('never leaves glue wet longer than its open time, and needs every batch', () => {
    fc.assert(
      fc.property(times, ({ joints, per, open, up }) => {
        fc.pre(per + up <= open);
        const a = glueTiming({ joints, perJoint: `${per} s`, openTime: `${open} s`, clampsUp: `${up} s` });
        expect(a.plan.reduce((n, b) => n + b.joints, 0)).toBe(joints);
        expect(a.plan).toHaveLength(a.batches);
        for (const b of a.plan) {
          expect(b.joints * per + up).toBeLessThanOrEqual(open);
          expect(b.joints).toBeLessThanOrEqual(a.jointsPerBatch);
        }
        // In one batch fewer, the fullest would be too full.
        if (a.batches > 1) expect(Math.ceil(joints / (a.batches - 1)) * per + up).toBeGreaterThan(open);
        expect(a.spare.in('s')).toBeCloseTo(open - up - a.jointsPerBatch * per, 6);
      }),
      { numRuns: 400 },
    );
  });
  it('halves the open time with ten degrees more', () => {
    fc.assert(
      fc.property(whole(5, 34), (t) => {
        const at = (c: number) =>
          glueTiming({
            joints: 1,
            perJoint: '1 s',
            openTime: '10 min',
            temperature: `${c} degC`,
          }).openHere.in('s');
        expect(at(t + 10)).toBeCloseTo(at(t) / 2, 9);
        expect(at(20)).toBeCloseTo(600, 9);
      }),
    );
  });
});

describe('clampPlan', () => {
  const jobs = fc.record({
    L: whole(200, 5000),
    h: whole(12, 120),
    p: whole(100, 2000),
    q: whole(500, 8000),
    w: whole(20, 300),
    t: whole(0, 40),
    a: whole(0, 100),
  });
  const plan = (j: { L: number; h: number; p: number; q: number; w: number; t: number; a: number }) =>
    clampPlan({
      length: `${j.L} mm`,
      jointHeight: `${j.h} mm`,
      pressure: `${j.p} kPa`,
      clampForce: `${j.q} N`,
      outerWidth: `${j.w} mm`,
      pad: `${j.t} mm`,
      padLength: `${j.a} mm`,
    });

  it('presses enough, reaches every point of the first glue line, and takes no clamp too many', () => {
    fc.assert(
      fc.property(jobs, (j) => {
        fc.pre((j.p * 1000 * j.L * j.h) / 1e6 / j.q <= 1000);
        const a = plan(j);
        const need = (j.p * j.L * j.h) / 1000;
        const cover = (j.a === 0 ? 2 * j.t : Math.min(j.a, 2 * j.t)) + 2 * j.w;
        expect(a.clamps * j.q).toBeGreaterThanOrEqual(need - 1e-6);
        expect((a.clamps - 1) * j.q < need - 1e-6 || (a.clamps - 1) * cover < j.L - 1e-6).toBe(true);
        const at = a.positions.map((x) => x.position.in('mm')).sort((x, y) => x - y);
        expect(at).toHaveLength(a.clamps);
        // Half a clamp's cover from either end, a whole one between neighbours.
        expect(at[0]! - cover / 2).toBeLessThanOrEqual(1e-6);
        expect(at[at.length - 1]! + cover / 2).toBeGreaterThanOrEqual(j.L - 1e-6);
        for (let i = 1; i < at.length; i++) expect(at[i]! - at[i - 1]!).toBeLessThanOrEqual(cover + 1e-6);
        expect(a.forceEach.in('N') * a.clamps).toBeCloseTo(need, 4);
      }),
      { numRuns: 400 },
    );
  });
  it('goes below and above alternately, tightened from the middle outward', () => {
    fc.assert(
      fc.property(jobs, (j) => {
        fc.pre((j.p * 1000 * j.L * j.h) / 1e6 / j.q <= 1000);
        const { positions } = plan(j);
        const fromMiddle = positions.map((x) => Math.abs(x.position.in('mm') - j.L / 2));
        for (let i = 1; i < fromMiddle.length; i++)
          expect(fromMiddle[i]!).toBeGreaterThanOrEqual(fromMiddle[i - 1]! - 1e-6);
        const inOrder = [...positions].sort((x, y) => x.clamp - y.clamp);
        inOrder.forEach((x, i) => expect(x.side).toBe(i % 2 === 0 ? 'below' : 'above'));
      }),
      { numRuns: 100 },
    );
  });
});

describe('caulCamber', () => {
  const cauls = fc.record({ L: whole(300, 2000), b: whole(20, 120), d: whole(25, 120), F: whole(200, 8000) });
  const at = (
    c: { L: number; b: number; d: number; F: number },
    times: Partial<Record<'L' | 'b' | 'd' | 'F', number>> = {},
  ) =>
    caulCamber.evaluate({
      length: (c.L / 1000) * (times.L ?? 1),
      width: (c.b / 1000) * (times.b ?? 1),
      depth: (c.d / 1000) * (times.d ?? 1),
      clampForceEach: c.F * (times.F ?? 1),
      timber: wood,
    });
  const wood = {
    ...caulCamber.read({
      length: '1 m',
      width: '40 mm',
      depth: '40 mm',
      timber: 'unknown softwood',
      clampForceEach: '1 kN',
    }).timber,
  };

  it('agrees with the deflected shape summed by small steps', () => {
    fc.assert(
      fc.property(cauls, (c) => {
        // Curvature M / EI integrated twice over 2000 steps from the middle, where the slope is zero, to the end.
        const [L, b, d] = [c.L / 1000, c.b / 1000, c.d / 1000];
        const w = (2 * c.F) / L;
        const EI = (wood.modulus.middle * b * d ** 3) / 12;
        const n = 2000;
        const dx = L / 2 / n;
        let slope = 0;
        let y = 0;
        for (let i = 0; i < n; i++) {
          const x = L / 2 + (i + 0.5) * dx;
          const curve = ((w * x * (L - x)) / 2 / EI) * dx;
          y += (slope + curve / 2) * dx;
          slope += curve;
        }
        expect(at(c).camber / y).toBeCloseTo(1, 5);
      }),
      { numRuns: 60 },
    );
  });
  it('grows with the cube of the length under given clamps, falls with the cube of the depth', () => {
    fc.assert(
      fc.property(cauls, (c) => {
        const one = at(c);
        expect(at(c, { L: 2 }).camber / one.camber).toBeCloseTo(8, 9);
        expect(at(c, { d: 2 }).camber / one.camber).toBeCloseTo(1 / 8, 9);
        expect(at(c, { F: 2 }).stress / one.stress).toBeCloseTo(2, 9);
        expect(at(c, { b: 2 }).stress / one.stress).toBeCloseTo(0.5, 9);
        expect(one.marks[0]!.planeOff).toBeCloseTo(one.camber, 12);
        expect(one.marks[4]!.planeOff).toBeCloseTo(0, 12);
      }),
      { numRuns: 100 },
    );
  });
});
