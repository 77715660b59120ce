import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Load, Support } from '../../src/recipes/rails/beam-loads.js';
import { forceOf, momentAbout0 } from '../../src/recipes/rails/beam-loads.js';
import { solveBeam, type BeamCase } from '../../src/recipes/rails/beam-solver.js';
import { worstOf } from '../../src/recipes/rails/beam-worst.js';

const num = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const L = 4;

/** Places on a grid of 1/40 so that members are not absurdly short, as a rail's are not. */
const place = fc.integer({ min: 0, max: 40 }).map((i) => (i * L) / 40);
const load: fc.Arbitrary<Load> = fc.oneof(
  fc.record({ kind: fc.constant('point' as const), at: num(0, L), force: num(-2000, 5000) }),
  fc.record({ kind: fc.constant('moment' as const), at: num(0, L), moment: num(-900, 900) }),
  fc
    .tuple(num(0, L * 0.8), num(0.05, 1), num(-400, 2000), num(-400, 2000))
    .map(([from, part, q1, q2]) => ({ kind: 'spread' as const, from, to: from + (L - from) * part, q1, q2 })),
);
const support = place.chain((position): fc.Arbitrary<Support> =>
  fc.oneof(
    fc.constant({ position, lift: Infinity, turn: 0 }),
    fc.constant({ position, lift: Infinity, turn: Infinity }),
    fc.record({ position: fc.constant(position), lift: num(2e4, 1e7), turn: fc.constant(0) }),
    fc.record({ position: fc.constant(position), lift: fc.constant(Infinity), turn: num(1e2, 1e6) }),
  ),
);
const supports = fc
  .uniqueArray(support, { minLength: 2, maxLength: 6, selector: (s) => s.position })
  .filter(
    (list) => Math.max(...list.map((s) => s.position)) - Math.min(...list.map((s) => s.position)) > L / 8,
  );
const aCase: fc.Arbitrary<BeamCase> = fc.record({
  length: fc.constant(L),
  EI: num(5e3, 5e5),
  GA: fc.oneof(fc.constant(Infinity), num(5e5, 5e7)),
  supports,
  loads: fc.array(load, { minLength: 1, maxLength: 8 }),
});

const size = (beam: BeamCase): number =>
  beam.loads.reduce(
    (s, l) =>
      s +
      (l.kind === 'moment'
        ? Math.abs(l.moment)
        : l.kind === 'point'
          ? Math.abs(l.force)
          : (Math.abs(l.q1) + Math.abs(l.q2)) * (l.to - l.from)),
    0,
  ) + 1e-9;

/** A sag to measure dust against: the least that any of these beams would show were it free to bend. */
const dust = (beam: BeamCase): number => (1e-13 * size(beam) * L ** 3) / beam.EI;

/** Nine-point Gauss on each smooth stretch: the fields are polynomials of degree 5 at most, products of degree 10. */
const gauss = [
  [0, 0.3302393550012598],
  [0.3242534234038089, 0.3123470770400029],
  [0.6133714327005904, 0.2606106964029354],
  [0.8360311073266358, 0.1806481606948574],
  [0.9681602395076261, 0.0812743883615744],
] as const;
function integral(f: (x: number) => number, breaks: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i + 1 < breaks.length; i++) {
    const [a, b] = [breaks[i] as number, breaks[i + 1] as number];
    const [m, r] = [(a + b) / 2, (b - a) / 2];
    for (const [t, w] of gauss) sum += r * w * (t === 0 ? f(m) : f(m - r * t) + f(m + r * t));
  }
  return sum;
}

const workOf = (loads: readonly Load[], on: ReturnType<typeof solveBeam>): number =>
  loads.reduce((sum, l) => {
    if (l.kind === 'point') return sum + l.force * on.at(l.at).sag;
    if (l.kind === 'moment') return sum + l.moment * on.at(l.at).slope;
    const cuts = [l.from, ...on.breaks.filter((b) => b > l.from && b < l.to), l.to];
    return (
      sum + integral((x) => (l.q1 + ((l.q2 - l.q1) * (x - l.from)) / (l.to - l.from)) * on.at(x).sag, cuts)
    );
  }, 0);

describe('the beam solver', () => {
  it('is in equilibrium: forces and moments of loads and supports sum to zero', () => {
    fc.assert(
      fc.property(aCase, (beam) => {
        const { reactions } = solveBeam(beam);
        const up =
          reactions.reduce((s, r) => s + r.force, 0) - beam.loads.reduce((s, l) => s + forceOf(l), 0);
        const turn =
          beam.loads.reduce((s, l) => s + momentAbout0(l), 0) +
          reactions.reduce((s, r) => s + r.moment - r.force * r.position, 0);
        expect(Math.abs(up) / size(beam)).toBeLessThan(1e-9);
        expect(Math.abs(turn) / (size(beam) * L)).toBeLessThan(1e-9);
      }),
      { numRuns: 300 },
    );
  });

  it('keeps energy: work of the loads = bending + shear + springs', () => {
    fc.assert(
      fc.property(aCase, (beam) => {
        const s = solveBeam(beam);
        const inside = integral(
          (x) => s.at(x).M ** 2 / (2 * beam.EI) + s.at(x).V ** 2 / (2 * beam.GA),
          s.breaks,
        );
        const springs = beam.supports.reduce((sum, p) => {
          const r = s.reactions.find((q) => q.position === p.position) as { force: number; moment: number };
          return (
            sum +
            (p.lift === Infinity ? 0 : r.force ** 2 / (2 * p.lift)) +
            (p.turn === Infinity || p.turn === 0 ? 0 : r.moment ** 2 / (2 * p.turn))
          );
        }, 0);
        expect(Math.abs(workOf(beam.loads, s) / 2 - inside - springs)).toBeLessThan(
          1e-9 * (inside + springs) + size(beam) * L * dust(beam),
        );
      }),
      { numRuns: 200 },
    );
  });

  it('is reciprocal (Betti): loads A do the same work on the sag of B as B on the sag of A', () => {
    fc.assert(
      fc.property(aCase, fc.array(load, { minLength: 1, maxLength: 5 }), (beam, others) => {
        const a = solveBeam(beam);
        const b = solveBeam({ ...beam, loads: others });
        const [ab, ba] = [workOf(beam.loads, b), workOf(others, a)];
        const scale = Math.sqrt(Math.abs(workOf(beam.loads, a) * workOf(others, b)));
        const small = size({ ...beam, loads: others }) * L * dust(beam);
        expect(Math.abs(ab - ba)).toBeLessThan(1e-9 * scale + small);
      }),
      { numRuns: 200 },
    );
  });

  it('superposes: the answer to the sum of loads is the sum of the answers', () => {
    fc.assert(
      fc.property(aCase, num(0, L), (beam, x) => {
        const whole = solveBeam(beam).at(x);
        const sum = beam.loads
          .map((l) => solveBeam({ ...beam, loads: [l] }).at(x))
          .reduce((p, q) => ({ V: p.V + q.V, M: p.M + q.M, slope: p.slope + q.slope, sag: p.sag + q.sag }));
        const worst = worstOf(solveBeam(beam));
        expect(Math.abs(whole.sag - sum.sag)).toBeLessThan(1e-9 * Math.abs(worst.sag.value) + dust(beam));
        expect(Math.abs(whole.M - sum.M)).toBeLessThan(1e-9 * size(beam) * L);
      }),
      { numRuns: 150 },
    );
  });

  it('does not mind being looked at from the other side', () => {
    fc.assert(
      fc.property(aCase, num(0.01, L - 0.01), (beam, x) => {
        const turned: BeamCase = {
          ...beam,
          supports: beam.supports.map((s) => ({ ...s, position: L - s.position })),
          loads: beam.loads.map((l): Load =>
            l.kind === 'spread'
              ? { ...l, from: L - l.to, to: L - l.from, q1: l.q2, q2: l.q1 }
              : l.kind === 'point'
                ? { ...l, at: L - l.at }
                : { ...l, at: L - l.at, moment: -l.moment },
          ),
        };
        const [a, b] = [solveBeam(beam), solveBeam(turned)];
        expect(Math.abs(a.at(x).sag - b.at(L - x).sag)).toBeLessThan(
          1e-9 * Math.abs(worstOf(a).sag.value) + dust(beam),
        );
      }),
      { numRuns: 150 },
    );
  });

  it('ends free of shear and moment where nothing holds it, and joins its members without a step', () => {
    fc.assert(
      fc.property(aCase, (beam) => {
        const s = solveBeam(beam);
        const worst = worstOf(s);
        for (const x of s.breaks.slice(1, -1))
          expect(Math.abs(s.at(x, 'left').sag - s.at(x).sag)).toBeLessThan(
            1e-9 * Math.abs(worst.sag.value) + dust(beam),
          );
        if (!beam.supports.some((p) => p.position === L)) {
          const beyond = beam.loads.filter((l) => l.kind !== 'spread' && l.at === L);
          if (beyond.length === 0) {
            expect(Math.abs(s.at(L, 'left').V)).toBeLessThan(1e-9 * size(beam));
            expect(Math.abs(s.at(L, 'left').M)).toBeLessThan(1e-9 * size(beam) * L);
          }
        }
        for (const p of beam.supports)
          if (p.lift === Infinity)
            expect(Math.abs(s.at(p.position).sag)).toBeLessThan(
              1e-9 * Math.abs(worst.sag.value) + dust(beam),
            );
      }),
      { numRuns: 200 },
    );
  });

  it('obeys Clapeyron’s three moments over any continuous beam without shear', () => {
    const spans = fc.array(num(0.4, 3), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(spans, fc.array(num(0, 1500), { minLength: 8, maxLength: 8 }), (l, q) => {
        const at = l.reduce<number[]>((p, x) => [...p, (p[p.length - 1] as number) + x], [0]);
        const length = at[at.length - 1] as number;
        const s = solveBeam({
          length,
          EI: 2e4,
          GA: Infinity,
          supports: at.map((position) => ({ position, lift: Infinity, turn: 0 })),
          loads: l.map((_, i): Load => ({
            kind: 'spread',
            from: at[i] as number,
            to: at[i + 1] as number,
            q1: q[i] as number,
            q2: q[i] as number,
          })),
        });
        for (let i = 1; i < l.length; i++) {
          const [a, b] = [l[i - 1] as number, l[i] as number];
          const M = [i - 1, i, i + 1].map((k) => s.at(at[k] as number, 'left').M) as [number, number, number];
          const first = i === 1 ? 0 : M[0];
          const left = first * a + 2 * M[1] * (a + b) + M[2] * b;
          const right = -((q[i - 1] as number) * a ** 3) / 4 - ((q[i] as number) * b ** 3) / 4;
          expect(Math.abs(left - right)).toBeLessThan(1e-8 * (1 + Math.abs(right) + 1500 * 27));
        }
      }),
      { numRuns: 150 },
    );
  });

  it('finds the greatest moment and sag: nothing on a fine comb is greater', () => {
    fc.assert(
      fc.property(aCase, (beam) => {
        const s = solveBeam(beam);
        const w = worstOf(s);
        for (let i = 0; i <= 700; i++) {
          const x = (L * i) / 700;
          expect(Math.abs(s.at(x).M)).toBeLessThanOrEqual(
            Math.abs(w.M.value) * (1 + 1e-9) + 1e-9 * size(beam),
          );
          expect(Math.abs(s.at(x).sag)).toBeLessThanOrEqual(Math.abs(w.sag.value) * (1 + 1e-9) + dust(beam));
          expect(Math.abs(s.at(x).V)).toBeLessThanOrEqual(
            Math.abs(w.V.value) * (1 + 1e-9) + 1e-9 * size(beam),
          );
        }
      }),
      { numRuns: 60 },
    );
  });
});
