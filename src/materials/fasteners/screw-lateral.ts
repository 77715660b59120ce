import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';
import { tableRows } from '../data-tables.js';

const inch = 0.0254;
const lbf = 4.4482216152605;
const psi = 6894.757293168;

/** Two pieces of wood and the screw between them: metres, pascals; `Side` is under the head. */
export interface LateralJoint {
  /** Diameter that yields: the root of the thread. */
  readonly diameter: number;
  readonly mainGravity: number;
  readonly sideGravity: number;
  /** Length of the screw in the piece that holds the thread, and in the piece under the head. */
  readonly mainLength: number;
  readonly sideLength: number;
  /** Bending yield strength of the screw. */
  readonly bendingYield: number;
}

export type YieldMode = 'Im' | 'Is' | 'II' | 'IIIm' | 'IIIs' | 'IV';

/**
 * Reference lateral values of the six yield modes of the NDS, newtons: crushing of one piece (Im, Is), turning (II), one
 * hinge (IIIm, IIIs), two hinges (IV), each over its reduction term. The least is the screw's. Dowel bearing strength
 * F_e = 16600 G^1.84 psi. Source: NDS 2018, 12.3 (recalled).
 */
export function yieldModes(joint: LateralJoint): Readonly<Record<YieldMode, number>> {
  const bearing = (gravity: number): number => 16600 * gravity ** 1.84;
  const [main, side] = [bearing(joint.mainGravity), bearing(joint.sideGravity)];
  const [D, m, s] = [joint.diameter / inch, joint.mainLength / inch, joint.sideLength / inch];
  const yieldPsi = joint.bendingYield / psi;
  const reduction = D <= 0.17 ? 2.2 : 10 * D + 0.5;
  const e = main / side;
  const t = m / s;
  const k1 = (Math.sqrt(e + 2 * e * e * (1 + t + t * t) + t * t * e ** 3) - e * (1 + t)) / (1 + e);
  const k2 = Math.sqrt(2 * (1 + e) + (2 * yieldPsi * (1 + 2 * e) * D * D) / (3 * main * m * m)) - 1;
  const k3 = Math.sqrt((2 * (1 + e)) / e + (2 * yieldPsi * (2 + e) * D * D) / (3 * main * s * s)) - 1;
  const newtons = (pounds: number): number => (pounds / reduction) * lbf;
  return {
    Im: newtons(D * m * main),
    Is: newtons(D * s * side),
    II: newtons(k1 * D * s * side),
    IIIm: newtons((k2 * D * m * main) / (1 + 2 * e)),
    IIIs: newtons((k3 * D * s * main) / (2 + e)),
    IV: newtons(D * D * Math.sqrt((2 * main * yieldPsi) / (3 * (1 + e)))),
  };
}

/** The weakest yield mode and its value in newtons. */
export function weakestMode(joint: LateralJoint): { readonly mode: YieldMode; readonly value: number } {
  return (Object.entries(yieldModes(joint)) as [YieldMode, number][])
    .map(([mode, value]) => ({ mode, value }))
    .reduce((a, b) => (b.value < a.value ? b : a));
}

/** Bending yield strength of a wood screw by gauge, pascals. Source: NDS 2018 (recalled). */
export function bendingYieldOf(gauge: number): number {
  const rows = tableRows('screw-bending-yield.nds-2018');
  const row = rows.find((r) => gauge <= (r.number('most_gauge') as number)) ?? rows[rows.length - 1];
  return (row?.number('yield_psi') as number) * psi;
}

/** The older rule for wood screws loaded sideways; the smaller of it and the yield modes is taken. */
export const olderSideways = formula({
  symbol: 'p_s',
  result: variable('force', 'load allowed on one screw sideways by the older rule', {
    unit: 'lbf',
  }),
  expression: 'C D^2',
  empirical: true,
  variables: {
    C: variable('ratio', 'constant of the timber’s group'),
    D: variable('length', 'diameter of the shank', { unit: 'in' }),
  },
  source: cite('structural-handbook-screws', 'Eq. 6.38, p. 170'),
});

/**
 * Share of the lateral value that a penetration allows: none under 6 diameters, in proportion to 10, then full.
 * Lengths in one unit. Source: American Wood Council on the penetration depth factor.
 */
export const penetrationFactor = (penetration: number, diameter: number): number =>
  // A small allowance, so that six diameters converted from inches stay six.
  penetration < 6 * diameter * (1 - 1e-9) ? 0 : Math.min(1, penetration / (10 * diameter));

/** Embedment strength of Eurocode 5, pascals; diameter in metres, density in kg/m³. Source: EN 1995-1-1 Eq. 8.15, 8.16 (recalled). */
export function embedment(diameter: number, density: number, drilled: boolean): number {
  const d = diameter * 1000;
  return 0.082 * density * (drilled ? 1 - 0.01 * d : d ** -0.3) * 1e6;
}

/** Yield moment of a screw, N·m: 0.3 f_u d_ef^2.6 in N and mm with d_ef = 1.1 times the root. Source: EN 1995-1-1 Eq. 8.14. */
export const yieldMoment = (tensile: number, root: number): number =>
  (0.3 * (tensile / 1e6) * (1.1 * root * 1000) ** 2.6) / 1000;

/** A single-shear joint by Eurocode 5: metres, pascals, N·m, newtons. */
export interface ShearPlane {
  readonly diameter: number;
  readonly thickness1: number;
  readonly thickness2: number;
  readonly embedment1: number;
  readonly embedment2: number;
  readonly yieldMoment: number;
  /** Characteristic withdrawal, for the rope effect; counts as at most the part without it. */
  readonly withdrawal: number;
}

/** Characteristic lateral values of the six modes of Eurocode 5, newtons. Source: EN 1995-1-1 Eq. 8.6 (recalled). */
export function johansenModes(p: ShearPlane): Readonly<Record<'a' | 'b' | 'c' | 'd' | 'e' | 'f', number>> {
  const { diameter: d, thickness1: t1, thickness2: t2, embedment1: f1, yieldMoment: M } = p;
  const b = p.embedment2 / f1;
  const r = t2 / t1;
  const rope = (x: number): number => x + Math.min(x, p.withdrawal / 4);
  /** One hinge: `k` is 2 + b or 1 + 2 b, and `c` is b or its square. */
  const hinge = (t: number, k: number, c: number): number =>
    ((1.05 * f1 * t * d) / k) * (Math.sqrt(2 * c * (1 + b) + (4 * b * k * M) / (f1 * d * t * t)) - b);
  return {
    a: f1 * t1 * d,
    b: p.embedment2 * t2 * d,
    c: rope(
      ((f1 * t1 * d) / (1 + b)) * (Math.sqrt(b + 2 * b * b * (1 + r + r * r) + b ** 3 * r * r) - b * (1 + r)),
    ),
    d: rope(hinge(t1, 2 + b, b)),
    e: rope(hinge(t2, 1 + 2 * b, b * b)),
    f: rope(1.15 * Math.sqrt((2 * b) / (1 + b)) * Math.sqrt(2 * M * f1 * d)),
  };
}

/** Load allowed at an angle between pull and side load, newtons. Source: NDS, combined withdrawal and lateral load (recalled). */
export function combinedLoad(withdrawal: number, lateral: number, angle: number): number {
  const [c, s] = [Math.cos(angle) ** 2, Math.sin(angle) ** 2];
  return withdrawal * lateral === 0 && withdrawal * c + lateral * s === 0
    ? 0
    : (withdrawal * lateral) / (withdrawal * c + lateral * s);
}
