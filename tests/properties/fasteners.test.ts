// Laws of screws, notches, laps and stability over random sizes.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  headAllowed,
  steelAllowed,
  steelBreaks,
  threadAllowed,
  threadBreaks,
} from '../../src/materials/fasteners/screw-axial.js';
import {
  combinedLoad,
  embedment,
  johansenModes,
  penetrationFactor,
  weakestMode,
  yieldModes,
  yieldMoment,
} from '../../src/materials/fasteners/screw-lateral.js';
import { axialDistances, lateralDistances } from '../../src/materials/fasteners/screw-spacing.js';
import { crossingPolar, crossingTorque, frameSway } from '../../src/materials/working-stress/lap.js';
import {
  compressionNotch,
  netMoment,
  notchFactor,
  notchOutside,
  tensionNotch,
} from '../../src/materials/working-stress/notch.js';
import {
  loadThatTips,
  moments,
  pushThatTips,
  situationsOf,
  stabilityFactor,
  stabilityPieces,
  tiltedArm,
  verdictOf,
} from '../../src/recipes/rails/stability.js';

const num = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const little = 1 + 1e-9;

describe('a screw pulled along its axis', () => {
  const screw = fc.record({ G: num(0.25, 0.9), D: num(0.002, 0.01), L: num(0.005, 0.15) });
  it('holds more in denser wood, with a longer thread and a thicker shank', () => {
    fc.assert(
      fc.property(screw, (s) => {
        for (const f of [threadAllowed, threadBreaks]) {
          expect(f.evaluate({ ...s, G: s.G * 1.1 })).toBeGreaterThan(f.evaluate(s));
          expect(f.evaluate({ ...s, L: s.L * 1.1 })).toBeGreaterThan(f.evaluate(s));
          expect(f.evaluate({ ...s, D: s.D * 1.1 })).toBeGreaterThan(f.evaluate(s));
        }
        expect(threadAllowed.evaluate(s)).toBeLessThan(threadBreaks.evaluate(s));
      }),
    );
  });
  it('is allowed less of its steel than breaks it, and no more through a thinner board or a smaller head', () => {
    fc.assert(
      fc.property(num(2e8, 8e8), num(0.001, 0.008), num(0.3, 0.9), num(0.003, 0.05), (f_u, d_r, G, t) => {
        const breaks = steelBreaks.evaluate({ f_u, d_r });
        expect(steelAllowed.evaluate({ F_u: breaks })).toBeLessThan(breaks / 2);
        const head = headAllowed.evaluate({ D_H: 2 * d_r, G, t });
        expect(headAllowed.evaluate({ D_H: 2 * d_r, G, t: t * 0.9 })).toBeLessThanOrEqual(head * little);
        expect(headAllowed.evaluate({ D_H: 1.8 * d_r, G, t })).toBeLessThanOrEqual(head * little);
        // A board of 2.5 head diameters holds all that a thicker one does.
        expect(headAllowed.evaluate({ D_H: 0.01, G, t: 0.025 })).toBeCloseTo(
          headAllowed.evaluate({ D_H: 0.01, G, t: 0.1 }),
          6,
        );
      }),
    );
  });
});

describe('a screw loaded sideways', () => {
  const joint = fc.record({
    diameter: num(0.002, 0.006),
    mainGravity: num(0.3, 0.8),
    sideGravity: num(0.3, 0.8),
    mainLength: num(0.01, 0.1),
    sideLength: num(0.006, 0.06),
    bendingYield: num(3e8, 8e8),
  });
  it('is worth the least of its six modes, and none falls with stronger wood, steel or thicker pieces', () => {
    fc.assert(
      fc.property(joint, (j) => {
        const modes = yieldModes(j);
        expect(weakestMode(j).value).toBe(Math.min(...Object.values(modes)));
        for (const more of [
          { bendingYield: j.bendingYield * 1.1 },
          { mainLength: j.mainLength * 1.1 },
          { sideLength: j.sideLength * 1.1 },
          { mainGravity: j.mainGravity * 1.05, sideGravity: j.sideGravity * 1.05 },
        ])
          expect(weakestMode({ ...j, ...more }).value).toBeGreaterThanOrEqual(weakestMode(j).value / little);
      }),
    );
  });
  it('by Eurocode 5 rises with the yield moment and the thickness of both pieces', () => {
    fc.assert(
      fc.property(
        num(0.003, 0.01),
        num(0.01, 0.06),
        num(0.01, 0.08),
        num(300, 700),
        num(300, 700),
        (d, t1, t2, r1, r2) => {
          const plane = (more: object = {}) => ({
            diameter: d,
            thickness1: t1,
            thickness2: t2,
            embedment1: embedment(d, r1, true),
            embedment2: embedment(d, r2, true),
            yieldMoment: yieldMoment(4e8, d * 0.65),
            withdrawal: 300,
            ...more,
          });
          const least = (p: ReturnType<typeof plane>) => Math.min(...Object.values(johansenModes(p)));
          const now = least(plane());
          expect(now).toBeGreaterThan(0);
          for (const more of [
            { thickness1: t1 * 1.1, thickness2: t2 * 1.1 },
            { yieldMoment: yieldMoment(5e8, d * 0.65) },
            { withdrawal: 600 },
          ])
            expect(least(plane(more))).toBeGreaterThanOrEqual(now / little);
          // Pieces exchanged, modes exchanged.
          const swapped = johansenModes(
            plane({
              thickness1: t2,
              thickness2: t1,
              embedment1: embedment(d, r2, true),
              embedment2: embedment(d, r1, true),
            }),
          );
          const modes = johansenModes(plane());
          expect(swapped.a / modes.b).toBeCloseTo(1, 9);
          expect(swapped.d / modes.e).toBeCloseTo(1, 9);
          expect(swapped.c / modes.c).toBeCloseTo(1, 9);
          expect(swapped.f / modes.f).toBeCloseTo(1, 9);
        },
      ),
    );
  });
  it('counts for nothing under six diameters of penetration and fully from ten', () => {
    fc.assert(
      fc.property(num(0.001, 0.01), num(0, 15), (D, n) => {
        const share = penetrationFactor(n * D, D);
        if (n < 5.999) expect(share).toBe(0);
        else if (n > 6.001) expect(share).toBeCloseTo(Math.min(1, n / 10), 9);
      }),
    );
  });
  it('with a pull at once is between the two values, and falls with either', () => {
    fc.assert(
      fc.property(num(10, 2000), num(10, 2000), num(0, Math.PI / 2), (W, Z, a) => {
        const both = combinedLoad(W, Z, a);
        expect(both).toBeGreaterThanOrEqual(Math.min(W, Z) / little);
        expect(both).toBeLessThanOrEqual(Math.max(W, Z) * little);
        expect(combinedLoad(W * 0.9, Z, a)).toBeLessThanOrEqual(both * little);
      }),
    );
    expect(combinedLoad(0, 300, 0.5)).toBe(0);
    expect(combinedLoad(0, 0, 0.5)).toBe(0);
  });
  it('needs no more room in a drilled hole than without one, and some at every place', () => {
    fc.assert(
      fc.property(num(0.002, 0.012), num(0, Math.PI / 2), (d, angle) => {
        const drilled = lateralDistances(d, true, angle);
        const plain = lateralDistances(d, false, angle);
        expect(drilled.map((p) => p.place)).toEqual(plain.map((p) => p.place));
        drilled.forEach((p, i) => {
          expect(p.least).toBeGreaterThanOrEqual(3 * d);
          expect(p.least).toBeLessThanOrEqual((plain[i]?.least as number) * little + 2 * d);
        });
        expect(axialDistances(d).every((p) => p.least >= 4 * d)).toBe(true);
      }),
    );
  });
});

describe('a notched rail', () => {
  const beam = fc.record({
    d: num(0.05, 0.4),
    left: num(0.3, 0.98),
    b: num(0.02, 0.1),
    x: num(0, 0.2),
    taper: num(0, 10),
  });
  it('carries less the deeper the notch and the farther its corner, more with a taper, and no notch takes nothing', () => {
    fc.assert(
      fc.property(beam, ({ d, left, b, x, taper }) => {
        const k = (share: number, at = x, t = taper) =>
          notchFactor({ depth: d, left: d * share, toCorner: at, taper: t });
        expect(k(1)).toBe(1);
        expect(k(left)).toBeGreaterThan(0);
        expect(k(left)).toBeLessThanOrEqual(1);
        expect(k(left, x + 0.01)).toBeLessThanOrEqual(k(left) * little);
        expect(k(left, x, taper + 0.5)).toBeGreaterThanOrEqual(k(left) / little);
        // The force, net section and all, falls with the depth of the notch.
        const force = (share: number) => k(share, x, 0) * share;
        if (left > 0.5) expect(force(left - 0.01)).toBeLessThanOrEqual(force(left) * little);
        const at = (share: number) => ({ F_v: 1e6, b, d, d_n: d * share });
        expect(tensionNotch.evaluate(at(left - 0.01))).toBeLessThan(tensionNotch.evaluate(at(left)));
        expect(tensionNotch.evaluate(at(left))).toBeLessThanOrEqual(
          compressionNotch.evaluate({ ...at(left), x }) * little,
        );
        expect(tensionNotch.evaluate(at(1))).toBeCloseTo((2 / 3) * 1e6 * b * d, 6);
        expect(compressionNotch.evaluate({ ...at(1), x })).toBeCloseTo((2 / 3) * 1e6 * b * d, 6);
        expect(netMoment.evaluate({ f: 1e6, b, d_n: d * left })).toBeCloseTo(
          ((1e6 * b * d * d) / 6) * left ** 2,
          3,
        );
      }),
    );
  });
  it('is outside the limits where they say so', () => {
    const rail = { depth: 0.1, length: 0.02 };
    expect(notchOutside({ ...rail, cut: 0.025, along: 0 })).toBeUndefined();
    expect(notchOutside({ ...rail, cut: 0.026, along: 0 })).toMatch(/quarter/);
    expect(notchOutside({ ...rail, cut: 0.016, along: 0.2 })).toBeUndefined();
    expect(notchOutside({ ...rail, cut: 0.017, along: 0.2 })).toMatch(/sixth/);
    expect(notchOutside({ ...rail, cut: 0.016, length: 0.04, along: 0.2 })).toMatch(/third of the depth/);
    expect(notchOutside({ ...rail, cut: 0.001, along: 0.5 })).toMatch(/middle third/);
  });
});

describe('a glued crossing and its frame', () => {
  it('twists less the larger it is, whichever way round', () => {
    fc.assert(
      fc.property(num(0.02, 0.2), num(0.02, 0.2), (a, b) => {
        const torque = (p: number, q: number) =>
          crossingTorque.evaluate({ tau: 1e6, I_p: crossingPolar.evaluate({ a: p, b: q }), a: p, b: q });
        expect(torque(a, b)).toBeCloseTo(torque(b, a), 9);
        expect(torque(a * 1.05, b)).toBeGreaterThan(torque(a, b));
      }),
    );
  });
  it('sways less with stiffer corners and thicker legs, and like a stiff frame where corners do not give', () => {
    fc.assert(
      fc.property(num(0.3, 2), num(0.3, 3), num(1e-7, 1e-5), num(1e3, 1e6), (h, L, I, k) => {
        const of = (more: object = {}) =>
          frameSway.evaluate({ H: 100, h, L, E: 7e9, I_leg: I, I_rail: I, k, ...more });
        expect(of({ k: k * 2 })).toBeLessThan(of());
        expect(of({ I_leg: I * 2 })).toBeLessThan(of());
        expect(of({ I_rail: I * 2 })).toBeLessThan(of());
        const stiff = ((100 * h * h) / 2) * (h / (3 * 7e9 * I) + L / (6 * 7e9 * I));
        expect(of({ k: 1e18 }) / stiff).toBeCloseTo(1, 6);
      }),
    );
  });
});

describe('stability', () => {
  const side = fc.record({ mass: num(1, 200), arm: num(0.02, 1), overhang: num(-0.1, 0.6) });
  const force = fc.record({
    down: num(0, 2000),
    inset: num(0, 0.1),
    outward: num(0, 300),
    height: num(0.2, 2),
  });
  it('falls with every force that tips, rises with mass and wider feet', () => {
    fc.assert(
      fc.property(side, force, (s, f) => {
        const of = (a: object = {}, b: object = {}) =>
          stabilityFactor({ ...s, ...a }, { label: '', ...f, ...b }) ?? Infinity;
        const now = of();
        expect(of({}, { outward: f.outward + 10 })).toBeLessThanOrEqual(now);
        expect(of({}, { height: f.height * 1.1 })).toBeLessThanOrEqual(now * little);
        expect(of({ mass: s.mass * 1.1 })).toBeGreaterThanOrEqual(now / little);
        expect(of({ arm: s.arm + 0.01, overhang: s.overhang - 0.01 })).toBeGreaterThanOrEqual(now / little);
        if (s.overhang > f.inset) expect(of({}, { down: f.down + 10 })).toBeLessThanOrEqual(now * little);
      }),
    );
  });
  it('agrees with the forces that just tip it', () => {
    fc.assert(
      fc.property(side, force, (s, f) => {
        const down = loadThatTips(s, f.inset);
        if (down === undefined) expect(s.overhang - f.inset).toBeLessThanOrEqual(1e-9);
        else expect(stabilityFactor(s, { label: '', ...f, down, outward: 0 })).toBeCloseTo(1, 9);
        const push = pushThatTips(s, f);
        if (push > 0) {
          const m = moments(s, { label: '', ...f, outward: push });
          expect(m.tipping / m.holding).toBeCloseTo(1, 9);
        }
      }),
    );
  });
  it('is not checked where nothing was looked at, and stands only where every check passes', () => {
    expect(verdictOf([])).toBe('not checked');
    expect(verdictOf([{ factor: undefined, wanted: 1.5 }])).toBe('stands');
    expect(
      verdictOf([
        { factor: 2, wanted: 1.5 },
        { factor: 1.4, wanted: 1.5 },
      ]),
    ).toBe('tips');
    expect(verdictOf([{ factor: 1.5, wanted: 1.5 }])).toBe('stands');
  });
  it('has situations for every kind of piece, each of a force that can tip it', () => {
    for (const piece of stabilityPieces) {
      const all = situationsOf(piece, 0.9);
      expect(all.length).toBeGreaterThan(0);
      for (const s of all) expect(s.down + s.outward).toBeGreaterThan(0);
    }
    expect(tiltedArm(0.2, 0.5, 0)).toBe(0.2);
    expect(tiltedArm(0.2, 0.5, 0.02)).toBeLessThan(0.2);
  });
});
