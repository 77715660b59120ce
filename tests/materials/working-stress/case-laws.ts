// The laws among the worked cases, each over a grid of inputs, on the formulas of the library.
import { findGrade } from '../../../src/materials/grades.js';
import { gradedBending } from '../../../src/materials/working-stress/clear-wood.js';
import { durationFactor, factor } from '../../../src/materials/working-stress/factors.js';
import { durations, type LoadCase } from '../../../src/materials/working-stress/load-case.js';
import { notchFactor } from '../../../src/materials/working-stress/notch.js';
import { classStress } from '../../../src/materials/working-stress/strength-class.js';
import { ungradedStress } from '../../../src/materials/working-stress/ungraded.js';
import { longTermFactor } from '../../../src/materials/working-stress/use-category.js';
import { screwHold } from '../../../src/recipes/joinery/screw-hold.js';
import { stabilityFactor } from '../../../src/recipes/rails/stability.js';

const psi = 6894.757293168;
const upTo = (a: number, b: number, k: number): number[] =>
  Array.from({ length: k + 1 }, (_, j) => a + ((b - a) * j) / k);
// Least and greatest means of green wood held, psi.
const woods = [
  ...upTo(4200, 8700, 47).map((mean) => ({ mean, group: 'softwood' as const })),
  ...upTo(3900, 13800, 66).map((mean) => ({ mean, group: 'hardwood' as const })),
];
const softwoods = woods.filter((w) => w.group === 'softwood');
const mixes = [
  { permanent: 0.1676, imposed: 1.5 },
  { permanent: 1, imposed: 0 },
  { permanent: 0.5, imposed: 0.5 },
];
const loads: LoadCase[] = (['medium', 'long', 'permanent'] as const).flatMap((duration) =>
  mixes.map((mix) => ({ mix, duration, serviceClass: 1 as const })),
);
const crowd = loads[0] as LoadCase;

function ungraded(
  wood: (typeof woods)[number],
  of: { depth?: number; ratio?: number; load?: LoadCase; cap?: boolean },
): number {
  const means = { group: wood.group, bending: wood.mean * psi, shear: undefined, modulus: undefined };
  const size = { width: 0.045, depth: (of.depth ?? 95) / 1000 };
  return ungradedStress(means, of.ratio ?? factor('ratio.ungraded'), size, of.load ?? crowd, {
    cap: of.cap ?? false,
  }).bending as number;
}
const bendingOf = (name: string, load: LoadCase, depth = 95): number =>
  classStress(findGrade(name), { width: 0.045, depth: depth / 1000 }, load).bending as number;
const atMost = (a: number, b: number): boolean => a <= b * (1 + 1e-12);
const middling = { mean: 7000, group: 'softwood' } as const;
const notch = (left: number, taper = 0): number =>
  notchFactor({ depth: 0.095, left: left / 1000, toCorner: 0.04, taper }, 5);
const stands = (F: number, arm: number, overhang: number): number =>
  stabilityFactor(
    { mass: 60, arm: arm / 1000, overhang: overhang / 1000 },
    { label: '', down: F, inset: 0.05, outward: 30, height: 0.9 },
  ) as number;

/** Whether each law holds, by the name that the cases give it. */
export const caseLaws: Readonly<Record<string, () => boolean>> = {
  'bending falls with depth': () =>
    upTo(51, 400, 50).every((d) => ungraded(middling, { depth: d + 5 }) < ungraded(middling, { depth: d })),
  'bending rises with ratio': () =>
    upTo(0.05, 0.9, 30).every(
      (r) => ungraded(middling, { ratio: r + 0.02 }) > ungraded(middling, { ratio: r }),
    ),
  'bending falls with longer duration': () =>
    ([1, 2, 3] as const).every((sc) =>
      durations.every(
        (d, i) =>
          i === 0 ||
          durationFactor('ec5', d, sc).value > durationFactor('ec5', durations[i - 1] as typeof d, sc).value,
      ),
    ),
  'default never above F5, 47 softwoods and 66 hardwoods, with cap': () =>
    woods.every((w) =>
      loads.every((load) =>
        [factor('ratio.ungraded'), factor('ratio.examined')].every((ratio) =>
          atMost(ungraded(w, { ratio, load, cap: true }), bendingOf('F5', load)),
        ),
      ),
    ),
  'default without cap never above F5 for any softwood': () =>
    softwoods.every((w) =>
      loads.every((load) =>
        [45, 95, 190, 300].every((depth) =>
          atMost(ungraded(w, { depth, load }), bendingOf('F5', load, depth)),
        ),
      ),
    ),
  'same stress whatever the units': () => {
    const of = (mean: number): number =>
      gradedBending({ mean }, { group: 'softwood', ratio: 1, seasoning: 'green' }, 0.0508);
    return Math.abs(of(6600) * psi - of(6600 * psi)) < 1e-9 * of(6600 * psi);
  },
  'kv falls as the notch deepens': () =>
    upTo(55, 94, 30).every((left) => atMost(notch(left - 1), notch(left))),
  'kv rises with taper': () => upTo(0, 9, 20).every((i) => atMost(notch(60, i), notch(60, i + 0.5))),
  'screw capacity never above steel': () =>
    upTo(5, 150, 40).every((L) => {
      const r = screwHold.evaluate({
        specificGravity: 0.5,
        diameter: 0.004826,
        penetration: L / 1000,
        count: 1,
      });
      return atMost(r.allowable, r.steel);
    }),
  'sag in the long run not under first sag': () =>
    upTo(1, 5, 8).every((k) =>
      upTo(0, 1, 8).every((s) => longTermFactor.evaluate({ G: 0.2, Q: 1.1, k, s }) >= 1 - 1e-12),
    ),
  'factor falls with force': () =>
    upTo(50, 2000, 30).every((F) => stands(F + 50, 220, 150) < stands(F, 220, 150)),
  'wider feet never worse': () =>
    upTo(0, 150, 30).every((w) => stands(400, 125 + w, 195 - w) > stands(400, 120 + w, 200 - w)),
  'utilisation = stress over f_w': () => {
    const [G, Q] = [0.2, 1.4];
    const load: LoadCase = { mix: { permanent: G, imposed: Q }, duration: 'medium', serviceClass: 1 };
    const resistance = (0.8 * (150 / 95) ** 0.2 * 24e6) / 1.3;
    const [factored, plain] = [(1.35 * G + 1.5 * Q) / resistance, (G + Q) / bendingOf('C24', load)];
    return Math.abs(factored - plain) < 1e-12 * plain;
  },
  'ungraded below each held grade of its group at the same load': () =>
    softwoods.every((w) =>
      loads
        .filter((l) => l.mix === mixes[0])
        .every((load) =>
          ['F5', 'MGP10', 'C14', 'Hem-Fir No.2 2x-4x'].every((g) =>
            atMost(ungraded(w, { load }), bendingOf(g, load)),
          ),
        ),
    ),
};
