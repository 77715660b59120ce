// Where the top is held to its frame: every screw's place, and the part beneath it.
import type { Fixing } from './part-fields.js';
import { membersNode, middleOf, sizeAlong, type Member } from './member.js';
import type { PieceNode } from './piece-graph.js';

/** One place where the top is held. */
export interface FixingPlace {
  /** Name of the fixing in the description. */
  readonly name: string;
  readonly kind: Fixing['kind'];
  readonly part: string;
  readonly x: number;
  readonly y: number;
  /** The part under the place; none where the screw finds nothing. */
  readonly on: Member | undefined;
  readonly screw: number;
  readonly count: number;
}

/** Usual distance of the outer screws from a rail's ends, and the widest gap between screws (common practice). */
const endDistance = 0.08;
const widestGap = 0.4;

/** Places along a part where none are given: near both ends and evenly between. */
export function usualPlaces(from: number, to: number): number[] {
  const inset = Math.min(endDistance, (to - from) / 4);
  const run = to - from - 2 * inset;
  const gaps = Math.max(1, Math.ceil(run / widestGap - 1e-9));
  return Array.from({ length: gaps + 1 }, (_, i) => from + inset + (run * i) / gaps);
}

/** Every place where the top is held down. */
export const topFixingsNode: PieceNode<readonly FixingPlace[]> = {
  name: 'fixings of the top',
  compute: (m) => {
    const under = m.all('height') - m.get('top', 'thickness');
    const members = m.of(membersNode);
    return Object.entries(m.all('fixings') ?? {})
      .filter(([, f]) => f.holds === 'top')
      .flatMap(([name, f]) =>
        members.filter((x) => x.part === f.to).flatMap((member) => placesOn(name, f, member, under)),
      );
  },
};

function placesOn(name: string, f: Fixing, member: Member, under: number): FixingPlace[] {
  const axis = member.runs === 'y' ? 'y' : 'x';
  const other = axis === 'x' ? 'y' : 'x';
  const [from, to] = member[axis];
  const beneath = Math.abs(member.z[1] - under) < 1e-3;
  return (f.at ?? usualPlaces(from, to)).map((at) => ({
    name,
    kind: f.kind,
    part: member.part,
    x: axis === 'x' ? at : middleOf(member)[other],
    y: axis === 'y' ? at : middleOf(member)[other],
    on: beneath && at >= from - 1e-6 && at <= to + 1e-6 ? member : undefined,
    screw: f.screw,
    count: f.count,
  }));
}

/** Distinct places along a direction, from the least. */
export const distinct = (list: readonly number[]): number[] =>
  [...new Set(list.map((x) => Math.round(x * 1e6) / 1e6))].sort((a, b) => a - b);

/** Room for a slot at a place: along the grain of movement, less a screw's width of wood at each end. */
export const slotRoom = (place: FixingPlace, axis: 'x' | 'y'): number =>
  place.on ? sizeAlong(place.on, axis) - 2 * place.screw : 0;
