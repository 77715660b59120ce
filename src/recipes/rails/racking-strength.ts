// What gives first when a frame is pushed along its top: the members at their laps, the glued face, the screws, the brace.
import { note } from '../../engine/caution.js';
import { cite } from '../../engine/source.js';
import type { Trace } from '../../engine/trace.js';
import { bendingYieldOf, penetrationFactor, weakestMode } from '../../materials/fasteners/screw-lateral.js';
import { durationFactor, factor } from '../../materials/working-stress/factors.js';
import {
  crossingPolar,
  crossingTorque,
  crossingUse,
  rollingShear,
  workingTorsion,
} from '../../materials/working-stress/lap.js';
import { netMoment } from '../../materials/working-stress/notch.js';
import type { Material } from './design-values.js';
import { braceBuckling, braceForce, cornerForce, cornerMoment, screwForce } from './racking-formulas.js';

type Rectangle = { readonly width: number; readonly depth: number };

/** A frame as its strength sees it: metres, newtons on one frame. */
export interface RackingFrame {
  readonly push: number;
  readonly height: number;
  readonly width: number;
  readonly leg: Rectangle;
  readonly rail: Rectangle;
  readonly joint: string;
  readonly screws: number;
  readonly screwDiameter: number;
  readonly brace: Rectangle;
  readonly density: number;
}

/** A part that may give, and the share of its strength that the push uses; not a number where it is not known. */
export interface PartUse {
  readonly part: string;
  readonly use: number | undefined;
}

/** The shares of strength used by a push: the members, and the corners or the brace. */
export function partUses(f: RackingFrame, material: Material, trace: Trace): readonly PartUse[] {
  const lapped = f.joint.endsWith('half lap');
  if (f.joint === 'braced') return bracedUses(f, material, trace);
  const M = trace.evaluate(cornerMoment, { F: f.push, h: f.height });
  return [
    memberUse('the legs', f.leg, M, lapped, material, trace),
    memberUse('the rail', f.rail, M, lapped, material, trace),
    ...(lapped
      ? [f.joint === 'glued half lap' ? gluedUse(f, M, material, trace) : screwedUse(f, M, trace)]
      : []),
  ];
}

/** Bending of a member at the corner, where a half lap leaves half of its thickness. */
function memberUse(
  part: string,
  size: Rectangle,
  M: number,
  lapped: boolean,
  material: Material,
  trace: Trace,
): PartUse {
  const where = `${part}${lapped ? ', half their thickness left at the lap' : ''}`.replace(
    'the rail, half their',
    'the rail, half its',
  );
  if (material.bending === undefined) return { part: where, use: undefined };
  const b = lapped ? size.width / 2 : size.width;
  const carried = trace.evaluate(
    netMoment,
    { f: material.bending, b, d_n: size.depth },
    `moment that ${part} carries at the corner`,
  );
  return { part: where, use: M / carried };
}

function gluedUse(f: RackingFrame, M: number, material: Material, trace: Trace): PartUse {
  const part = 'the glued laps, by rolling shear and twist';
  if (material.shear === undefined) return { part, use: undefined };
  const [a, b] = [f.leg.depth, f.rail.depth];
  const tau = trace.evaluate(workingTorsion, {
    n: factor('joint.shop-glued'),
    k_mod: durationFactor('ec5', 'short', 1).value,
    f_tor: factor('joint.torsion') * 1e6,
    gamma_M: factor('ec5.gamma-m'),
    gamma: factor('ec5.gamma-q'),
  });
  const I_p = trace.evaluate(crossingPolar, { a, b });
  const T = trace.evaluate(crossingTorque, { tau, I_p, a, b });
  const f_R = trace.evaluate(rollingShear, { f_v: material.shear });
  const R = trace.evaluate(cornerForce, { F: f.push, h: f.height, L: f.width });
  return { part, use: trace.evaluate(crossingUse, { M, T, R, a, b, f_R }) };
}

/** What one screw carries sideways between two pieces, newtons: none where it enters less than six diameters. */
function screwValue(f: RackingFrame, side: number, main: number, trace: Trace): number {
  const gravity = f.density / 1000 / 1.12;
  const root = 0.67 * f.screwDiameter;
  const gauge = (f.screwDiameter / 0.0254 - 0.06) / 0.013;
  const { mode, value } = weakestMode({
    diameter: root,
    mainGravity: gravity,
    sideGravity: gravity,
    mainLength: main,
    sideLength: side,
    bendingYield: bendingYieldOf(gauge),
  });
  const share = penetrationFactor(main, f.screwDiameter);
  trace.note(
    `One screw carries ${Math.round(value * share)} N sideways: yield mode ${mode}, root 0.67 of the diameter (common practice), ${Math.round(share * 100)} % for ${(main / f.screwDiameter).toFixed(1)} diameters of penetration.`,
    cite('nds-2018', '12.3, wood screws by the root diameter', { read: 'memory' }),
  );
  if (share === 0)
    trace.warn(
      note(
        'the screws enter the second piece by less than six diameters, and then the rules count nothing for them: thinner screws, thicker pieces, or glue',
        cite('awc-faq-penetration', 'penetration depth factor'),
      ),
    );
  return value * share;
}

function screwedUse(f: RackingFrame, M: number, trace: Trace): PartUse {
  const half = f.leg.width / 2;
  const R = trace.evaluate(cornerForce, { F: f.push, h: f.height, L: f.width });
  const r = Math.min(f.leg.depth, f.rail.depth) / 4;
  const P = trace.evaluate(screwForce, { M, R, n: f.screws, r });
  // A single screw is a hinge.
  const value = f.screws > 1 ? screwValue(f, half, half, trace) : 0;
  return { part: 'the screws of the laps', use: P / value };
}

function bracedUses(f: RackingFrame, material: Material, trace: Trace): readonly PartUse[] {
  const [h, L] = [f.height, f.width];
  const N = trace.evaluate(braceForce, { F: f.push, h, L });
  const [thin, wide] = [Math.min(f.brace.width, f.brace.depth), Math.max(f.brace.width, f.brace.depth)];
  const buckles = trace.evaluate(braceBuckling, {
    c: factor('stiffness.low'),
    E: material.E,
    I: (wide * thin ** 3) / 12,
    n: factor('ec5.gamma-q') * factor('ec5.gamma-m'),
    h,
    L,
  });
  const value = screwValue(f, thin, f.leg.width, trace);
  return [
    { part: 'the brace, by buckling when it is pushed', use: N / buckles },
    { part: 'the screws of the brace', use: N / f.screws / value },
  ];
}

/** The part that gives first, the push on all frames that it still carries, and the answer in words. */
export function weakestPart(uses: readonly PartUse[], push: number) {
  const known = uses.filter((u): u is PartUse & { readonly use: number } => u.use !== undefined);
  const unknown = uses.filter((u) => u.use === undefined).map((u) => u.part);
  const first = known.reduce<(PartUse & { readonly use: number }) | undefined>(
    (a, b) => (a === undefined || b.use > a.use ? b : a),
    undefined,
  );
  const rest = unknown.length > 0 ? ` Not checked: ${unknown.join('; ')}.` : '';
  if (!first) return { pushAllowed: undefined, use: undefined, verdict: `Strength not checked.${rest}` };
  const allowed = push / first.use;
  return {
    pushAllowed: allowed,
    use: Number.isFinite(first.use) ? first.use : undefined,
    verdict:
      `${first.use <= 1 ? 'Holds' : 'Too weak'}: ${Math.floor(allowed + 1e-9)} N along the top at most; ${first.part} give first.${rest}`.replace(
        /(the rail[^;.]*|the brace, [^;.]*) give first/,
        '$1 gives first',
      ),
  };
}
