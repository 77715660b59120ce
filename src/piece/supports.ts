// What rests on what: rails on legs, the top on rails, and the load each rail carries.
import { g0 } from '../recipes/rails/loads-and-creep.js';
import { massesNode } from './masses.js';
import { membersNode, middleOf, type Member } from './member.js';
import { OpenQuestion } from './open-question.js';
import type { PieceNode } from './piece-graph.js';

/** A rail under the top with the legs that carry it and the load it takes. */
export interface CarriedRail {
  readonly member: Member;
  /** Places of its supports along its own axis. */
  readonly supports: readonly number[];
  /** The longest stretch that counts as a span: a bay, or an overhang as the bay that is as hard on it. */
  readonly span: number;
  readonly overhang: number;
  /** Load by length, N/m: what is always there, and what comes on. */
  readonly permanent: number;
  readonly imposed: number;
}

/** Lines that carry the top, as places across the span of the top. */
export interface TopSupports {
  /** Whether the top spans across the piece (over long rails) or along it (over cross rails). */
  readonly spans: 'across' | 'along';
  readonly at: readonly number[];
  readonly rails: readonly Member[];
}

const touching = 1e-3;
const overlaps = (a: readonly [number, number], b: readonly [number, number], slack = touching): boolean =>
  a[0] <= b[1] + slack && b[0] <= a[1] + slack;

/** Whether two parts touch or pass through each other. */
export const meet = (a: Member, b: Member, slack = touching): boolean =>
  overlaps(a.x, b.x, slack) && overlaps(a.y, b.y, slack) && overlaps(a.z, b.z, slack);

/** Rails directly under the top. */
export const topSupportsNode: PieceNode<TopSupports> = {
  name: 'what carries the top',
  compute: (m) => {
    const under = m.all('height') - m.get('top', 'thickness');
    const beneath = m.of(membersNode).filter((x) => Math.abs(x.z[1] - under) < touching);
    const long = beneath.filter((x) => x.role === 'rail');
    const cross = beneath.filter((x) => x.role === 'cross rail');
    const [rails, axis] =
      long.length >= 2 || cross.length === 0 ? [long, 'y' as const] : [cross, 'x' as const];
    if (rails.length === 0) throw new OpenQuestion('parts', 'Give a rail under the top: nothing carries it.');
    const at = [...new Set(rails.map((r) => Math.round(middleOf(r)[axis] * 1e6) / 1e6))].sort(
      (a, b) => a - b,
    );
    return { spans: axis === 'y' ? 'across' : 'along', at, rails };
  },
};

/** Share of a load spread over `width` that each of the supports takes: by levers for two, by areas with a quarter more for others. */
export function loadShares(at: readonly number[], width: number): number[] {
  const [a, b] = at;
  if (a === undefined) return [];
  if (b === undefined) return [1];
  if (at.length === 2) {
    const second = (width / 2 - a) / (b - a);
    return [1 - second, second].map((s) => Math.max(0, s));
  }
  return at.map((y, i) => {
    const left = i === 0 ? 0 : ((at[i - 1] as number) + y) / 2;
    const right = i === at.length - 1 ? width : ((at[i + 1] as number) + y) / 2;
    // An inner support of a continuous top takes up to 1.25 times its area (three equal supports).
    return (1.25 * (right - left)) / width;
  });
}

/** Every rail under the top. */
export const carriedRailsNode: PieceNode<readonly CarriedRail[]> = {
  name: 'rails under the top',
  compute: (m) => {
    const supports = m.of(topSupportsNode);
    const members = m.of(membersNode);
    const masses = m.of(massesNode);
    const [along, across] = supports.spans === 'across' ? (['x', 'y'] as const) : (['y', 'x'] as const);
    const size = { x: m.get('top', 'length'), y: m.get('top', 'width') };
    const shares = loadShares(supports.at, size[across]);
    const top = masses.top.most * g0;
    const area = size.x * size.y;
    return supports.rails.map((rail): CarriedRail => {
      const i = supports.at.findIndex((y) => Math.abs(y - middleOf(rail)[across]) < touching);
      const share = shares[i] ?? 1;
      const places = [
        ...new Set(
          members
            .filter((x) => x !== rail && carries(x, rail) && meet(x, rail))
            .map((x) => Math.round(middleOf(x)[along] * 1e6) / 1e6),
        ),
      ].sort((a, b) => a - b);
      const { overhang, span } = spanOf(places, rail[along]);
      const own = (masses.parts.find((p) => p.name === rail.part)?.most ?? 0) * g0;
      return {
        member: rail,
        supports: places,
        span,
        overhang,
        permanent: (top * share) / size[along] + own / rail.length,
        imposed: (m.get('use', 'goods') * area * share) / size[along],
      };
    });
  },
};

/** Legs carry rails; rails that run the other way carry cross rails. */
const carries = (carrier: Member, rail: Member): boolean =>
  carrier.role === 'leg' || (rail.role === 'cross rail' && carrier.role === 'rail');

/** The longest bay; an overhang counts as 2.2 times its length, which a spread load bends and sags as much. */
function spanOf(
  places: readonly number[],
  ends: readonly [number, number],
): { readonly overhang: number; readonly span: number } {
  const first = places[0];
  const last = places.at(-1);
  if (first === undefined || last === undefined) return { overhang: 0, span: Infinity };
  const overhang = Math.max(0, first - ends[0], ends[1] - last);
  const bays = places.slice(1).map((x, i) => x - (places[i] as number));
  return { overhang, span: Math.max(2.2 * overhang, ...bays) };
}
