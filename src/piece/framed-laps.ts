// Half laps of the frame with the push that they carry: the same moment and force on a corner as for the sway.
import { halfLap } from '../recipes/joinery/half-lap.js';
import { cornerForce, cornerMoment } from '../recipes/rails/racking-formulas.js';
import { swayFramesNode, type SwayFrame } from './footing.js';
import { grouped } from './grouped.js';
import { jointsInPlaceNode, thicknessAt, type JointPlace } from './joint-places.js';
import { sizeAlong, type Member } from './member.js';
import type { Model, PieceNode } from './piece-graph.js';
import { ask, type Asked } from './recipe-ask.js';

const halvings: Readonly<Record<string, 'crossing' | 'end' | 'corner'>> = {
  'half lap': 'crossing',
  'tee halving': 'end',
  'corner halving': 'corner',
};

/** One joint of each kind that the description names, with what its recipe says. */
export interface FramedJoint {
  readonly place: JointPlace;
  readonly count: number;
  readonly lap: Asked<typeof halfLap.outputs> | undefined;
}

export const jointsNode: PieceNode<readonly FramedJoint[]> = {
  name: 'joints',
  compute: (m) => {
    const byName = grouped(m.of(jointsInPlaceNode), (p) => p.name);
    return [...byName.values()].flatMap((all) =>
      all.slice(0, 1).map((place) => ({ place, count: all.length, lap: lapOf(m, place) })),
    );
  },
};

/** Share of a lap's strength that the push uses; `unknown` is the path of a timber whose strength nobody published. */
export function lapUse({ place, lap }: FramedJoint): { readonly use?: number; readonly unknown?: string } {
  if (!lap || lap.ask.given['moment'] === undefined) return {};
  const { use } = lap.out;
  if (use === undefined)
    return {
      unknown: `parts.${(lap.ask.given['timber'] === place.a.timber ? place.a : place.b).part}.timber`,
    };
  // The recipe halves both parts; a deeper cut leaves less.
  const least = thicknessAt(place);
  const left = Math.min(0.5, Math.max(0, 1 - place.depth / least));
  return { use: left > 0 ? (use * 0.5) / left : 10 };
}

/** The lap in the timber of either part, the one that uses more of its strength or has none that is known. */
function lapOf(m: Model, place: JointPlace): Asked<typeof halfLap.outputs> | undefined {
  const at = halvings[place.joint.kind];
  if (at === undefined) return undefined;
  const asked = [...new Set([place.a.timber, place.b.timber])].map((timber) => lapIn(m, place, timber, at));
  const use = (x: Asked<typeof halfLap.outputs>): number => x.out.use ?? Infinity;
  return asked.reduce((worse, next) => (use(next) > use(worse) ? next : worse));
}

function lapIn(
  m: Model,
  place: JointPlace,
  timber: string,
  at: (typeof halvings)[string],
): Asked<typeof halfLap.outputs> {
  const { a, b, normal } = place;
  const parts = m.all('parts');
  const pushed = pushOn(m, place);
  return ask(
    m,
    halfLap,
    {
      widthA: () => sizeAlong(a, b.runs),
      widthB: () => sizeAlong(b, a.runs),
      thickness: () => Math.min(sizeAlong(a, normal), sizeAlong(b, normal)),
      timber: () => timber,
      examined: () => [a, b].every((x) => parts[x.part]?.examined === true),
      category: () => m.get('use', 'category'),
      place: () => m.get('use', 'place'),
      at: () => at,
      moment: () => pushed && (pushed.braced ? 0 : cornerMoment.evaluate({ F: pushed.F, h: pushed.h })),
      force: () => pushed && cornerForce.evaluate({ F: pushed.F, h: pushed.h, L: pushed.L }),
    },
    place.name,
  );
}

/** The push on one frame that a lap of a leg with a rail or foot holds up; a brace takes the moment from it. */
function pushOn(
  m: Model,
  place: JointPlace,
): { readonly F: number; readonly h: number; readonly L: number; readonly braced: boolean } | undefined {
  const frame = frameOf(m.of(swayFramesNode), place.a, place.b);
  if (!frame) return undefined;
  const F = Math.max(1, m.get('use', 'push')) / frame.frames;
  return { F, h: frame.height, L: frame.width, braced: frame.joint === 'braced' };
}

function frameOf(frames: readonly SwayFrame[], a: Member, b: Member): SwayFrame | undefined {
  const level = a.role === 'leg' ? b : b.role === 'leg' ? a : undefined;
  if (!level || level.runs === 'z') return undefined;
  const direction = level.runs === 'x' ? 'along the piece' : 'across the piece';
  return frames.find((f) => f.direction === direction && f.frames > 0);
}
