// Every joint where it lies: which two parts meet, which faces are cut, and what each part loses.
import type { Joint } from './part-fields.js';
import { cutFaces } from './part-fields.js';
import { membersNode, sizeAlong, type Axis, type Member, type Span } from './member.js';
import type { PieceNode } from './piece-graph.js';
import { meet } from './supports.js';

/** One crossing of two parts that a joint of the description makes. */
export interface JointPlace {
  readonly name: string;
  readonly joint: Joint;
  readonly a: Member;
  readonly b: Member;
  /** The direction of the cut: square to both parts. */
  readonly normal: Axis;
  /** Where the parts cross, in metres. */
  readonly at: Readonly<Record<Axis, number>>;
  /** Depth of the cut in each part; of a tenon its length. */
  readonly depth: number;
  /** The part that carries the tenon, of a mortise and tenon. */
  readonly tenoned: Member | undefined;
  /** Width of the cut in each part, along its own axis. */
  readonly widthInA: number;
  readonly widthInB: number;
}

const axes: readonly Axis[] = ['x', 'y', 'z'];
const cutOf: Readonly<Record<Axis, (typeof cutFaces)[number]>> = {
  z: 'top and bottom',
  y: 'front and back',
  x: 'ends',
};

/** The faces that a joint is cut from when its parts lie as they do. */
export const facesOf = (place: Pick<JointPlace, 'normal'>): (typeof cutFaces)[number] => cutOf[place.normal];

/** Direction square to two parts; undefined where they run the same way. */
export function normalOf(a: Member, b: Member): Axis | undefined {
  return a.runs === b.runs ? undefined : axes.find((axis) => axis !== a.runs && axis !== b.runs);
}

/** Depth that a joint takes where none is given: half of the thinner part; a tenon goes six tenths into the other part. */
function depthOf(joint: Joint, a: Member, b: Member, normal: Axis): number {
  if (joint.depth !== undefined) return joint.depth;
  if (joint.kind === 'screwed butt') return 0;
  const thin = thicknessAt({ joint, a, b, normal });
  return joint.kind === 'mortise and tenon' ? 0.6 * thin : thin / 2;
}

/** What a cut must leave something of: the thinner part, or the part that a tenon goes into. */
export function thicknessAt(place: Pick<JointPlace, 'joint' | 'a' | 'b' | 'normal'>): number {
  const { joint, a, b, normal } = place;
  const tenoned = tenonedOf(joint, a, b);
  if (tenoned) return sizeAlong(tenoned === a ? b : a, tenoned.runs);
  return Math.min(sizeAlong(a, normal), sizeAlong(b, normal));
}

/** The part that ends inside the other, of a mortise and tenon. */
function tenonedOf(joint: Joint, a: Member, b: Member): Member | undefined {
  if (joint.kind !== 'mortise and tenon') return undefined;
  const ends = (own: Member, other: Member): boolean => {
    const [from, to] = own[own.runs];
    const [low, high] = other[own.runs];
    return (from > low - 1e-3 && from < high + 1e-3) || (to > low - 1e-3 && to < high + 1e-3);
  };
  return ends(a, b) || !ends(b, a) ? a : b;
}

const overlapMiddle = (a: Span, b: Span): number => (Math.max(a[0], b[0]) + Math.min(a[1], b[1])) / 2;

/** Pairs of parts that a joint names. */
export function pairsOf(joint: Joint, members: readonly Member[]): [Member, Member][] {
  const [first, second] = joint.between;
  const as = members.filter((x) => x.part === first);
  const bs = members.filter((x) => x.part === second);
  return as.flatMap((a) => bs.filter((b) => a !== b && meet(a, b)).map((b): [Member, Member] => [a, b]));
}

/** Every joint in place; joints whose parts do not meet are missing here and reported as contradictions. */
export const jointsInPlaceNode: PieceNode<readonly JointPlace[]> = {
  name: 'joints in place',
  compute: (m) => {
    const members = m.of(membersNode);
    return Object.entries(m.all('joints') ?? {}).flatMap(([name, joint]) =>
      pairsOf(joint, members).flatMap(([a, b]): JointPlace[] => {
        const normal = normalOf(a, b);
        if (!normal) return [];
        return [
          {
            name,
            joint,
            a,
            b,
            normal,
            at: {
              x: overlapMiddle(a.x, b.x),
              y: overlapMiddle(a.y, b.y),
              z: overlapMiddle(a.z, b.z),
            },
            depth: depthOf(joint, a, b, normal),
            tenoned: tenonedOf(joint, a, b),
            widthInA: joint.width ?? sizeAlong(b, a.runs),
            widthInB: joint.width ?? sizeAlong(a, b.runs),
          },
        ];
      }),
    );
  },
};
