// How far a frame sways: its members, and what its corners or its brace give.
import { note } from '../../engine/caution.js';
import type { Trace } from '../../engine/trace.js';
import { factor } from '../../materials/working-stress/factors.js';
import { crossingPolar, crossingStiffness, frameSway } from '../../materials/working-stress/lap.js';
import type { Material } from './design-values.js';
import { bracedSway, rigidSway, screwedStiffness, slipOfScrew } from './racking-formulas.js';
import type { RackingFrame } from './racking-strength.js';
import type { Section } from './section.js';

type Solid = Extract<Section, { shape: 'solid' }>;
interface Given {
  readonly push: number;
  readonly frames: number;
  readonly height: number;
  readonly width: number;
  readonly section: Solid;
  readonly rail?: Solid | undefined;
  readonly joint: string;
  readonly jointStiffness: number | undefined;
  readonly screws: number;
  readonly screwDiameter: number;
  readonly brace: Solid;
}

/** One frame and its share of the push. */
export function frameOf(given: Given, density: number | undefined, trace: Trace): RackingFrame {
  if (density === undefined && (given.joint === 'screwed half lap' || given.joint === 'braced'))
    trace.warn(note('the density is not known: 450 kg/m³ was taken for the screws'));
  return {
    ...given,
    push: given.push / given.frames,
    leg: given.section,
    rail: given.rail ?? given.section,
    joint: given.jointStiffness === undefined || given.joint === 'braced' ? given.joint : 'stiff',
    density: density ?? 450,
  };
}

/** The sway, the stiffness of one corner and its share, by the kind of corner. */
export function swayOf(f: RackingFrame, own: number | undefined, material: Material, trace: Trace) {
  const { push: F, height: h, width: L } = f;
  const screw = (): number => trace.evaluate(slipOfScrew, { rho: f.density, d: f.screwDiameter });
  if (f.joint === 'braced') {
    const A = f.brace.width * f.brace.depth;
    const moved = trace.evaluate(bracedSway, { F, h, L, E: material.E, A, n: f.screws, s: screw() });
    return { moved, corner: undefined, shareOfJoints: undefined };
  }
  const I_leg = (f.leg.width * f.leg.depth ** 3) / 12;
  const I_rail = (f.rail.width * f.rail.depth ** 3) / 12;
  const free = trace.evaluate(rigidSway, { F, h, L, E: material.E, I_leg, I_rail });
  const corner = own ?? cornerStiffness(f, screw, trace);
  const moved =
    corner === undefined
      ? free
      : trace.evaluate(frameSway, { H: F, h, L, E: material.E, I_leg, I_rail, k: corner });
  return { moved, corner, shareOfJoints: 1 - free / moved };
}

/** What one lapped corner turns by; undefined for a stiff one. */
function cornerStiffness(f: RackingFrame, screw: () => number, trace: Trace): number | undefined {
  const [a, b] = [f.leg.depth, f.rail.depth];
  if (f.joint === 'glued half lap') {
    const I_p = trace.evaluate(crossingPolar, { a, b });
    return trace.evaluate(crossingStiffness, { k_s: factor('joint.slip'), I_p });
  }
  return f.joint === 'screwed half lap'
    ? trace.evaluate(screwedStiffness, { n: f.screws, s: screw(), r: Math.min(a, b) / 4 })
    : undefined;
}
