// How the piece stands: its feet on the floor, what pulls at its fixings, and the frames that keep it from swaying.
import { g0 } from '../recipes/rails/loads-and-creep.js';
import { moments, situationsOf, tiltedArm, type StabilityPiece } from '../recipes/rails/stability.js';
import { jointsInPlaceNode, type JointPlace } from './joint-places.js';
import type { Masses } from './masses.js';
import { membersNode, middleOf, sizeAlong, type Member } from './member.js';
import { OpenQuestion } from './open-question.js';
import type { Model, PieceNode } from './piece-graph.js';
import { distinct } from './top-fixings.js';

/** The rectangle that the feet stand on: y from the front edge of the top, x from its left end. */
export interface Feet {
  readonly front: number;
  readonly back: number;
  readonly left: number;
  readonly right: number;
  readonly contacts: readonly Member[];
}

export const feetNode: PieceNode<Feet> = {
  name: 'feet',
  compute: (m) => {
    const contacts = m
      .of(membersNode)
      .filter((x) => x.z[0] < 1e-3 && (x.role === 'leg' || x.role === 'foot'));
    if (contacts.length === 0)
      throw new OpenQuestion('parts', 'Give legs or feet that reach the floor: nothing does.');
    return {
      front: Math.min(...contacts.map((c) => c.y[0])),
      back: Math.max(...contacts.map((c) => c.y[1])),
      left: Math.min(...contacts.map((c) => c.x[0])),
      right: Math.max(...contacts.map((c) => c.x[1])),
      contacts,
    };
  },
};

/** Factor of the holding moment over the tipping one for forces of people (common practice). */
const wanted = 1.5;
/** A floor out of level by a degree, as the stability check takes it. */
const tilt = Math.PI / 180;

/** The pull on the fixings of the far feet that keeps the piece down in every situation, newtons. */
export function anchorPull(
  masses: Masses,
  feet: Feet,
  of: {
    readonly kind: StabilityPiece;
    readonly height: number;
    readonly width: number;
    readonly leaning: number;
  },
): number {
  const all = [masses.top, ...masses.parts];
  const mean = (pick: (p: (typeof all)[number]) => number): number =>
    all.reduce((s, p) => s + p.least * pick(p), 0) / masses.least;
  const [y, z] = [mean((p) => p.y), mean((p) => p.z)];
  const base = feet.back - feet.front;
  const sides = [
    { arm: y - feet.front, overhang: feet.front },
    { arm: feet.back - y, overhang: of.width - feet.back },
  ].map((s) => ({ mass: masses.least, arm: tiltedArm(s.arm, z, tilt), overhang: s.overhang }));
  const pulls = sides.flatMap((side) => [
    ...situationsOf(of.kind, of.height).map((s) => {
      const { holding, tipping } = moments(side, s);
      return (wanted * tipping - holding) / base;
    }),
    (wanted * of.leaning * Math.max(0, side.overhang) - side.mass * g0 * side.arm) / base,
  ]);
  return Math.max(0, ...pulls);
}

/** Frames that resist a push in one direction. */
export interface SwayFrame {
  readonly direction: 'along the piece' | 'across the piece';
  readonly height: number;
  readonly width: number;
  readonly legWidth: number;
  readonly legDepth: number;
  readonly frames: number;
  readonly joint: 'glued half lap' | 'screwed half lap' | 'braced';
  readonly screws: number;
  readonly brace: { readonly shape: 'solid'; readonly width: number; readonly depth: number } | undefined;
  readonly timber: string;
}

export const swayFramesNode: PieceNode<readonly SwayFrame[]> = {
  name: 'frames against sway',
  compute: (m) => {
    const legs = m.of(membersNode).filter((x) => x.role === 'leg');
    const first = legs[0];
    if (!first) throw new OpenQuestion('parts', 'Give legs: nothing carries the piece.');
    return (['x', 'y'] as const).map((axis) => frameAlong(m, legs, first, axis));
  },
};

function frameAlong(m: Model, legs: readonly Member[], leg: Member, axis: 'x' | 'y'): SwayFrame {
  const other = axis === 'x' ? 'y' : 'x';
  const joints = m.of(jointsInPlaceNode).filter((j) => joinsLeg(j, axis));
  const rows = distinct(joints.map((j) => Math.round(j.at[other] * 1e4) / 1e4));
  const lines = distinct(legs.map((l) => middleOf(l)[axis]));
  const bays = lines.slice(1).map((x, i) => x - (lines[i] as number));
  const brace = m
    .of(membersNode)
    .find((x) => x.role === 'brace' && x.runs === axis && x.rise > 0.2 * leg.length);
  const screws = Math.max(0, ...joints.map((j) => j.joint.screws));
  return {
    direction: axis === 'x' ? 'along the piece' : 'across the piece',
    height: leg.length,
    width: Math.max(0.05, ...bays),
    legWidth: sizeAlong(leg, other),
    legDepth: sizeAlong(leg, axis),
    frames: bays.length === 0 ? 0 : rows.length,
    joint: brace
      ? 'braced'
      : joints.some((j) => j.joint.kind === 'screwed butt')
        ? 'screwed half lap'
        : 'glued half lap',
    screws,
    brace: brace && {
      shape: 'solid',
      width: Math.min(sizeAlong(brace, other), brace.z[1] - brace.z[0] - brace.rise),
      depth: Math.max(sizeAlong(brace, other), brace.z[1] - brace.z[0] - brace.rise),
    },
    timber: leg.timber,
  };
}

/** Joints of a leg with a rail that runs along the direction, at any height. */
const joinsLeg = (j: JointPlace, axis: 'x' | 'y'): boolean =>
  (j.a.role === 'leg' && j.b.runs === axis) || (j.b.role === 'leg' && j.a.runs === axis);
