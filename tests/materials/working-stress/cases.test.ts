// Cases worked out elsewhere, by hand or in another language, from the standards and handbooks that each names; cases.json
// keeps its source and whether its figures were read, recalled or derived.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  headAllowed,
  headCharacteristic,
  steelAllowed,
  steelBreaks,
  threadAllowed,
  threadBreaks,
  withdrawalCharacteristic,
  withdrawalHardwood,
  withdrawalParameter,
} from '../../../src/materials/fasteners/screw-axial.js';
import {
  embedment,
  johansenModes,
  olderSideways,
  penetrationFactor,
  weakestMode,
  yieldModes,
  yieldMoment,
  type YieldMode,
} from '../../../src/materials/fasteners/screw-lateral.js';
import { findGrade, type Grade } from '../../../src/materials/grades.js';
import {
  australianLoadFactor,
  eurocodeDepthFactor,
  eurocodeLoadFactor,
} from '../../../src/materials/working-stress/class-formulas.js';
import {
  fifthPercentile,
  gradedAcross,
  gradedBending,
  gradedModulusOf,
  gradedShear,
  type Seasoning,
  type WoodGroup,
} from '../../../src/materials/working-stress/clear-wood.js';
import { sizeFactor } from '../../../src/materials/working-stress/clear-wood-formulas.js';
import { durationFactor, factor } from '../../../src/materials/working-stress/factors.js';
import {
  crossingPolar,
  crossingStiffness,
  crossingTorque,
  frameSway,
  rollingShear,
} from '../../../src/materials/working-stress/lap.js';
import type { Duration, LoadCase, ServiceClass } from '../../../src/materials/working-stress/load-case.js';
import {
  eurocodeNotchForce,
  netMoment,
  notchFactor,
  tensionNotch,
} from '../../../src/materials/working-stress/notch.js';
import {
  centreKnot,
  edgeKnot,
  grainRatio,
  pieceRatio,
  proofStress,
} from '../../../src/materials/working-stress/piece-defects.js';
import { classStress } from '../../../src/materials/working-stress/strength-class.js';
import { ungradedStress } from '../../../src/materials/working-stress/ungraded.js';
import { railSpan } from '../../../src/recipes/rails/rail-span.js';
import { caseLaws } from './case-laws.js';
import { longTermFactor } from '../../../src/materials/working-stress/use-category.js';
import {
  loadThatTips,
  moments,
  pushThatTips,
  stabilityFactor,
  verdictOf,
} from '../../../src/recipes/rails/stability.js';

/** The figures a case gives; each topic has its own, named as its standard names them. */
type Figure =
  | 'H'
  | 'F'
  | 'i'
  | 'inset'
  | 'overhang'
  | 'capMPa'
  | 'sd'
  | 'a'
  | 'alpha'
  | 'arm'
  | 'b'
  | 'base'
  | 'C'
  | 'D'
  | 'd'
  | 'depth'
  | 'dn'
  | 'E'
  | 'Fax'
  | 'fhead'
  | 'fk'
  | 'fu'
  | 'Fv'
  | 'fv'
  | 'fvd'
  | 'fw'
  | 'Fyb'
  | 'G'
  | 'Gm'
  | 'Gmod'
  | 'grain'
  | 'Gs'
  | 'h'
  | 'head'
  | 'hef'
  | 'holes'
  | 'K'
  | 'k'
  | 'k1'
  | 'kj'
  | 'kn'
  | 'knot'
  | 'L'
  | 'lef'
  | 'lm'
  | 'ls'
  | 'mass'
  | 'mean'
  | 'meanMillionPsi'
  | 'meanPsi'
  | 'n'
  | 'p'
  | 'Q'
  | 'ratio'
  | 'rho'
  | 'root'
  | 'share'
  | 'span'
  | 't'
  | 't1'
  | 't2'
  | 'tau'
  | 'working'
  | 'x';
type In = Readonly<Record<Figure, number>> & {
  readonly class: string;
  readonly duration: Duration;
  readonly group: WoodGroup;
  readonly leg: readonly [number, number];
  readonly looked: boolean;
  readonly mode: YieldMode;
  readonly predrilled: boolean;
  readonly rail: readonly [number, number];
  readonly season: Seasoning;
  readonly serviceClass: ServiceClass;
  readonly law: string;
  readonly species: string;
  readonly where: string;
  readonly which: string;
};
interface Case {
  readonly topic: string;
  readonly inputs: In;
  readonly expected: number | string | boolean;
  readonly unit: string;
  readonly tolerance: string;
  readonly source: string;
  readonly read: string;
  readonly note: string;
}
const cases = JSON.parse(readFileSync(new URL('cases.json', import.meta.url), 'utf8')) as Case[];

const psi = 6894.757293168;
const MPa = 1e6;
const mm = 1e-3;
const size = (i: In) => ({ width: i.b * mm, depth: i.h * mm });
const load = (i: Pick<In, 'G' | 'Q' | 'duration'> & Partial<In>): LoadCase => ({
  mix: { permanent: i.G, imposed: i.Q },
  duration: i.duration,
  serviceClass: i.serviceClass ?? 1,
});
/** A printed class with the figure of the case in place of its own. */
const grade = (name: string, figures: Partial<Grade>): Grade => ({ ...findGrade(name), ...figures });
const hall: LoadCase = { mix: { permanent: 0.167608, imposed: 1.5 }, duration: 'medium', serviceClass: 1 };
const ungraded = (
  i: Partial<In>,
  means: { bending?: number; shear?: number; modulus?: number },
  cap: boolean,
) =>
  ungradedStress(
    { group: i.group ?? 'softwood', bending: undefined, shear: undefined, modulus: undefined, ...means },
    factor(i.looked ? 'ratio.examined' : 'ratio.ungraded'),
    { width: 0.045, depth: (i.depth ?? 95) * mm },
    hall,
    { cap },
  );
const joint = (i: In) => ({
  mainGravity: i.Gm,
  sideGravity: i.Gs,
  diameter: i.D * mm,
  mainLength: i.lm * mm,
  sideLength: i.ls * mm,
  bendingYield: i.Fyb * psi,
});
const side = (i: Pick<In, 'mass' | 'arm'> & Partial<In>) => ({
  mass: i.mass,
  arm: i.arm * mm,
  overhang: (i.overhang ?? 0) * mm,
});
const force = (i: Partial<In>) => ({
  label: '',
  down: i.F ?? 0,
  inset: (i.inset ?? 0) * mm,
  outward: i.H ?? 0,
  height: (i.h ?? 1) * mm,
});
const notch = (i: Pick<In, 'h' | 'hef' | 'x'> & Partial<In>) => ({
  depth: i.h * mm,
  left: i.hef * mm,
  toCorner: i.x * mm,
  taper: i.i ?? 0,
});
const wood = (i: Pick<In, 'mean'> & Partial<In>) => ({
  mean: i.mean * psi,
  ...(i.sd === undefined ? {} : { deviation: i.sd * psi }),
});
const graded = (i: In) => ({
  group: i.group,
  ratio: i.ratio,
  seasoning: i.season,
});
const area = (i: In) => 0.25 * Math.PI * (i.root * mm) ** 2;
/** Sag of a simply supported beam under an even load, with shear: the textbook formula, for the creep cases. */
const sag = (q: number, i: In) =>
  (5 * q * i.span ** 4) / (384 * i.E * ((i.b * i.h ** 3) / 12)) +
  (q * i.span ** 2) / (8 * i.Gmod * (5 / 6) * i.b * i.h);

const ours: Record<string, (i: In) => number | string> = {
  'clearwood.fivePercent': (i) => fifthPercentile(wood(i), i.sd === 105 ? 'shear' : 'bending') / psi,
  'clearwood.basicBending': (i) =>
    gradedBending(wood(i), { group: i.group, ratio: 1, seasoning: 'green' }, 0.0508) / psi,
  'clearwood.sizeFactor': (i) => sizeFactor.evaluate({ d: i.depth * mm }),
  'clearwood.reproducesNo2': (i) => gradedBending(wood(i), graded(i), i.depth * mm) / psi,
  'clearwood.shear': (i) => gradedShear(wood(i), graded(i)) / psi,
  'clearwood.perp': (i) => gradedAcross(i.mean * psi, i.season) / psi,
  'clearwood.modulus': (i) => gradedModulusOf(i.mean * 1e6 * psi, i.ratio, i.season) / psi / 1e6,
  'default.bending': (i) =>
    (ungraded(i, { bending: i.meanPsi * psi }, 'capMPa' in i).bending as number) / MPa,
  'default.shear': (i) => (ungraded(i, { shear: i.meanPsi * psi }, false).shear as number) / MPa,
  'default.modulus': (i) =>
    (ungraded(i, { modulus: i.meanMillionPsi * 1e6 * psi }, true).modulus as number) / MPa,
  'piece.knot': (i) => (i.where === 'edge' ? edgeKnot : centreKnot).evaluate({ k: i.k * mm, h: i.h * mm }),
  'piece.grain': (i) => grainRatio(i.n),
  'piece.ratio': (i) =>
    pieceRatio.evaluate({ R_0: i.base, R_k: i.knot, R_g: i.grain, s: i.holes * mm, h: i.h * mm }),
  'piece.proof': (i) =>
    proofStress.evaluate({ f: i.working * MPa, n: factor(`divisor.bending.${i.group}`) }) / MPa,
  'ec5.kmod': (i) => durationFactor('ec5', i.duration, i.serviceClass).value,
  'ec5.kh': (i) => eurocodeDepthFactor.evaluate({ h: i.h * mm }),
  'beam.ec5Working': (i) => {
    expect(findGrade(i.class).bending).toBe(i.fk * MPa);
    return (classStress(findGrade(i.class), size(i), load(i)).bending as number) / MPa;
  },
  'beam.ec5Util': (i) => {
    const f = classStress(grade('C24', { bending: i.fk * MPa }), size(i), load(i)).bending as number;
    return (((i.G + i.Q) * i.span ** 2) / 8 / ((i.b * i.h ** 2) / 6) / f) * MPa;
  },
  'beam.ec5ShearUtil': (i) => {
    const f = classStress(grade('C24', { shear: i.fk * MPa }), size(i), load(i)).shear as number;
    return ((0.75 * (i.G + i.Q) * i.span) / (i.b * i.h) / f) * MPa;
  },
  'beam.asWorking': (i) => {
    expect(durationFactor('as', 'medium', 1).value).toBe(i.k1);
    return (
      (classStress(findGrade(i.class), size(i), { ...load(i), duration: 'medium' }).bending as number) / MPa
    );
  },
  'beam.ndsWorking': () =>
    (classStress(findGrade('Hem-Fir No.2 2x-4x'), { width: 0.045, depth: 0.095 }, hall).bending as number) /
    MPa,
  'gamma.ec5': (i) => eurocodeLoadFactor.evaluate({ G: i.G, Q: i.Q }),
  'gamma.as': (i) => australianLoadFactor.evaluate({ G: i.G, Q: i.Q }),
  'beam.sagFinal': (i) => sag(i.G + i.Q, i) * longTermFactor.evaluate({ G: i.G, Q: i.Q, k: i.K, s: i.share }),
  'creep.K': (i) => longTermFactor.evaluate({ G: i.G, Q: i.Q, k: i.K, s: i.share }),
  'screw.withdrawalAllowed': (i) => threadAllowed.evaluate({ G: i.G, D: i.D * mm, L: i.L * mm }),
  'screw.withdrawalUltimate': (i) => threadBreaks.evaluate({ G: i.G, D: i.D * mm, L: i.L * mm }),
  'screw.steelUltimate': (i) => steelBreaks.evaluate({ f_u: i.fu * MPa, d_r: i.root * mm }),
  'screw.steelAllowed': (i) =>
    steelAllowed.evaluate({ F_u: steelBreaks.evaluate({ f_u: i.fu * MPa, d_r: i.root * mm }) }),
  'screw.rootArea': (i) => steelBreaks.evaluate({ f_u: 1, d_r: i.root * mm }) * MPa,
  'screw.steelGovernsFrom': (i) => {
    const breaks = i.fu * MPa * area(i);
    const [steel, thread] =
      i.which === 'allowed'
        ? [steelAllowed.evaluate({ F_u: breaks }), threadAllowed]
        : [breaks, threadBreaks];
    return (steel / thread.evaluate({ G: i.G, D: i.D * mm, L: 1 })) * 1000;
  },
  'screw.pullNds': (i) => headAllowed.evaluate({ G: i.G, D_H: i.head * mm, t: i.t * mm }),
  'screw.pullEc5': (i) =>
    headCharacteristic.evaluate({ f_head: i.fhead * MPa, d_h: i.head * mm, rho: i.rho }),
  'screw.faxEc5': (i) => withdrawalParameter.evaluate({ d: i.d * mm, l_ef: i.lef * mm, rho: i.rho }) / MPa,
  'screw.FaxEc5': (i) =>
    withdrawalCharacteristic.evaluate({
      f_ax: withdrawalParameter.evaluate({ d: i.d * mm, l_ef: i.lef * mm, rho: i.rho }),
      d: i.d * mm,
      l_ef: i.lef * mm,
      a: (i.alpha * Math.PI) / 180,
    }),
  'screw.FaxHardwood': (i) => withdrawalHardwood.evaluate({ d: i.d * mm, l_ef: i.lef * mm, rho: i.rho }),
  'screw.ndsMode': (i) => yieldModes(joint(i))[i.mode],
  'screw.ndsLateral': (i) => weakestMode(joint(i)).value,
  'screw.cD2': (i) => olderSideways.evaluate({ C: i.C, D: i.D * mm }),
  'screw.penetration': (i) => penetrationFactor(i.p, i.D),
  'screw.fh': (i) => embedment(i.d * mm, i.rho, i.predrilled) / MPa,
  'screw.My': (i) => yieldMoment(i.fu * MPa, i.root * mm) * 1000,
  'screw.ec5Lateral': (i) => {
    const f = embedment(i.d * mm, i.rho, i.predrilled);
    return Math.min(
      ...Object.values(
        johansenModes({
          diameter: i.d * mm,
          thickness1: i.t1 * mm,
          thickness2: i.t2 * mm,
          embedment1: f,
          embedment2: f,
          yieldMoment: yieldMoment(i.fu * MPa, i.root * mm),
          withdrawal: i.Fax,
        }),
      ),
    );
  },
  'notch.nds': (i) => tensionNotch.evaluate({ F_v: i.Fv * MPa, b: i.b * mm, d: i.d * mm, d_n: i.dn * mm }),
  'notch.kv': (i) => notchFactor(notch(i), i.kn),
  'notch.ec5Force': (i) => eurocodeNotchForce(notch(i), i.b * mm, i.fvd * MPa),
  'lap.netModulus': (i) => netMoment.evaluate({ f: 1, b: i.b * mm, d_n: i.dn * mm }) * 1e9,
  'lap.netMoment': (i) => netMoment.evaluate({ f: i.fw * MPa, b: i.b * mm, d_n: i.dn * mm }),
  'rolling.share': (i) => rollingShear.evaluate({ f_v: i.fv * MPa }) / MPa,
  'lap.polar': (i) => crossingPolar.evaluate({ a: i.a * mm, b: i.b * mm }) * 1e12,
  'lap.torque': (i) => {
    const [a, b] = [i.a * mm, i.b * mm];
    return crossingTorque.evaluate({ tau: i.tau * MPa, I_p: crossingPolar.evaluate({ a, b }), a, b });
  },
  'lap.stiffness': (i) =>
    crossingStiffness.evaluate({
      k_s: i.k,
      I_p: crossingPolar.evaluate({ a: i.a * mm, b: i.b * mm }),
    }) / 1000,
  'frame.sway': (i) =>
    frameSway.evaluate({
      H: i.H,
      h: i.h * mm,
      L: i.span * mm,
      E: i.E * MPa,
      I_leg: (i.leg[0] * i.leg[1] ** 3 * 1e-12) / 12,
      I_rail: (i.rail[0] * i.rail[1] ** 3 * 1e-12) / 12,
      k: i.kj / 1000,
    }) * 1000,
  'stand.hold': (i) => moments(side(i), force(i)).holding,
  'stand.tipVertical': (i) => loadThatTips(side(i), i.inset * mm) as number,
  'stand.tipPush': (i) => pushThatTips(side(i), force(i)),
  'stand.factor': (i) => stabilityFactor(side(i), force(i)) as number,
  'stand.noLoad': () => verdictOf([]),
  law: (i) => String(caseLaws[i.law]?.()),
};

/** Facts behind the factors that no function of the library works out by itself. */
const background = new Set([
  'clearwood.divisor', // 1.62 x 1.3 = 2.106, printed in round figures as 2.1
  'clearwood.grade', // an example of a strength ratio, 0.4 x 7000
  'clearwood.southernPineCut', // 1500 less 30 %, why the cap is there
  'as.k1', // between the printed durations
  'rolling.fromBeech', // softwood against beech
  'beam.stress', // statics, checked with the beam recipe
  'beam.shear',
  'beam.sagFirst',
  'today.bending', // faults that are mended: see below
]);

describe('working stresses, screws, notches, laps and stability against worked cases', () => {
  it('leaves no topic out in silence', () => {
    expect(cases.length).toBe(148);
    expect(cases.map((c) => c.topic).filter((t) => !ours[t] && !background.has(t))).toEqual([]);
    expect(cases.every((c) => c.source && ['text', 'memory', 'derived', 'choice'].includes(c.read))).toBe(
      true,
    );
  });
  it.each(cases.filter((c) => !background.has(c.topic)).map((c, i) => [`${i + 1} ${c.topic}`, c] as const))(
    '%s',
    (_, c) => {
      const got = (ours[c.topic] as (i: In) => number | string)(c.inputs);
      const percent = /([\d.]+) %/.exec(c.tolerance)?.[1];
      if (percent === undefined) expect(String(got)).toBe(String(c.expected));
      else {
        const room = (Number(percent) / 100) * Math.abs(c.expected as number) + 1e-9;
        expect(
          Math.abs((got as number) - (c.expected as number)),
          `got ${got}, wanted ${c.expected}`,
        ).toBeLessThanOrEqual(room);
      }
    },
  );
  it.each(cases.filter((c) => c.topic === 'today.bending'))(
    'gives $inputs.species less than it once did',
    (c) => {
      const { bendingStress } = railSpan({
        timber: c.inputs.species,
        section: '45 x 95 mm',
        load: '1.5 kN/m',
      });
      // Started from dry wood it gave more than the graded timber of the same kind.
      expect(bendingStress.in('MPa')).toBeLessThan(0.6 * (c.expected as number));
    },
  );
});
