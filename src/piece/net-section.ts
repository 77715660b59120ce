// Rails where joints are cut: what the net section carries of the moment and the shear at that place.
import { notchFactor } from '../materials/working-stress/notch.js';
import type { JointPlace } from './joint-places.js';
import { sameMember, sizeAlong, type Member } from './member.js';
import type { CarriedRail } from './supports.js';

/** The use of a net section, 1 where it carries just what is allowed. */
export interface NetSection {
  readonly part: string;
  readonly joint: string;
  /** Place along the rail. */
  readonly at: number;
  readonly cut: number;
  readonly use: number;
  readonly by: 'bending' | 'shear';
}

interface Spanned {
  readonly rail: CarriedRail;
  readonly asked: {
    readonly out: { readonly spanByBending?: number | undefined; readonly spanByShear?: number | undefined };
  };
}

/**
 * Uses of every cut in every rail. The longest span by bending gives the moment the whole section carries, q L² / 8, that by
 * shear its shear force, q L / 2; the net section carries (d_n / d)² of the one and k_v d_n / d of the other.
 */
export function netSections(spans: readonly Spanned[], joints: readonly JointPlace[]): NetSection[] {
  return spans.flatMap((s) =>
    joints.flatMap((j) => {
      const cut = cutIn(j, s.rail.member);
      return cut ? [useOf(s, j, cut)] : [];
    }),
  );
}

interface Cut {
  /** Share of the depth that is left in the direction of the load. */
  readonly left: number;
  /** Share of the width that is left across it. */
  readonly beside: number;
  readonly depth: number;
}

/** What a joint takes from a rail; undefined where it takes nothing of it. */
function cutIn(j: JointPlace, rail: Member): Cut | undefined {
  if ((!sameMember(j.a, rail) && !sameMember(j.b, rail)) || j.depth <= 0) return undefined;
  if (j.tenoned && sameMember(j.tenoned, rail)) {
    const depth = sizeAlong(rail, 'z');
    const tenon = Math.min(depth, j.joint.width ?? 0.7 * depth);
    // A tenon is a third of the thickness (common practice).
    return { left: tenon / depth, beside: 1 / 3, depth: depth - tenon };
  }
  // A mortise of a third of the thickness leaves two thirds beside it.
  if (j.tenoned) return { left: 1, beside: 2 / 3, depth: j.depth };
  const size = sizeAlong(rail, j.normal);
  const left = Math.max(0, 1 - j.depth / size);
  return j.normal === 'z' ? { left, beside: 1, depth: j.depth } : { left: 1, beside: left, depth: j.depth };
}

function useOf({ rail, asked }: Spanned, j: JointPlace, cut: Cut): NetSection {
  const along = rail.member.runs === 'y' ? 'y' : 'x';
  const at = j.at[along];
  const depth = sizeAlong(rail.member, 'z');
  const { moment, shear } = forcesAt(rail, at);
  const { spanByBending, spanByShear } = asked.out;
  // By unit load: moments in L² / 8, shear in L / 2.
  const bending =
    spanByBending === undefined ? 0 : moment / ((spanByBending ** 2 / 8) * cut.left ** 2 * cut.beside);
  const toCorner = sameMember(j.a, rail.member) ? j.widthInA / 2 : j.widthInB / 2;
  const kv = notchFactor({ depth, left: cut.left * depth, toCorner, taper: 0 });
  const sheared = spanByShear === undefined ? 0 : shear / ((spanByShear / 2) * cut.left * cut.beside * kv);
  const by = bending >= sheared ? 'bending' : 'shear';
  return {
    part: rail.member.part,
    joint: j.name,
    at,
    cut: cut.depth,
    use: Number.isFinite(bending + sheared) ? Math.max(bending, sheared) : 10,
    by,
  };
}

/** Moment and shear at a place for a load of 1 N/m, each bay by itself and each overhang as a bracket. */
function forcesAt(rail: CarriedRail, at: number): { readonly moment: number; readonly shear: number } {
  const along = rail.member.runs === 'y' ? 'y' : 'x';
  const [start, end] = rail.member[along];
  const first = rail.supports[0] ?? start;
  const last = rail.supports.at(-1) ?? end;
  if (at < first) return { moment: (at - start) ** 2 / 2, shear: at - start };
  if (at > last) return { moment: (end - at) ** 2 / 2, shear: end - at };
  // At a support both the bays beside it and the overhang past it count.
  const atSupport = rail.supports.some((x) => Math.abs(x - at) < 1e-3);
  const bays = rail.supports
    .slice(1)
    .map((to, i) => ({ from: rail.supports[i] as number, to }))
    .filter((b) => at >= b.from - 1e-3 && at <= b.to + 1e-3);
  const over = atSupport ? Math.max(0, rail.overhang) : 0;
  // A rail that runs on over a support hogs there as much as a bay of its own sags: L² / 8.
  const inner = atSupport && bays.length > 1;
  const moments = bays.map((b) =>
    inner ? (b.to - b.from) ** 2 / 8 : (Math.max(0, at - b.from) * Math.max(0, b.to - at)) / 2,
  );
  const shears = bays.map((b) => Math.abs((b.from + b.to) / 2 - at));
  return { moment: Math.max(over ** 2 / 2, ...moments, 0), shear: Math.max(over, ...shears, 0) };
}
