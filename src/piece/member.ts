// The parts of a frame placed in the piece: boxes along x (from the left end of the top), y (from its front edge), z (up).
import type { Description } from './description.js';
import type { Part, Role } from './part-fields.js';
import { need } from './open-question.js';
import type { PieceNode } from './piece-graph.js';

export type Axis = 'x' | 'y' | 'z';
export type Span = readonly [number, number];

/** One part where it stands, in metres. */
export interface Member {
  /** The name of its group in the description. */
  readonly part: string;
  readonly role: Role;
  readonly runs: Axis;
  readonly x: Span;
  readonly y: Span;
  readonly z: Span;
  /** Length along its axis; of a part that rises, along its slope. */
  readonly length: number;
  /** How far its axis rises from one end to the other. */
  readonly rise: number;
  /** Mass as weighed, where it was. */
  readonly mass: number | undefined;
  readonly timber: string;
}

const middle = (s: Span): number => (s[0] + s[1]) / 2;
export const middleOf = (m: Member): { x: number; y: number; z: number } => ({
  x: middle(m.x),
  y: middle(m.y),
  z: middle(m.z),
});
/** The same part in the same place, whichever variant it was placed for. */
export const sameMember = (a: Member, b: Member): boolean =>
  a === b || (a.part === b.part && a.x[0] === b.x[0] && a.y[0] === b.y[0] && a.z[0] === b.z[0]);

/** Size of a part along an axis; across it this is a side of its section. */
export const sizeAlong = (m: Pick<Member, Axis>, axis: Axis): number => m[axis][1] - m[axis][0];

/** Sides of the section: upright and level of a part that lies, along x and along y of one that stands. */
export function sidesOf(part: Part): { readonly upright: number; readonly level: number } {
  const { width, depth } = part.section;
  const [small, large] = [Math.min(width, depth), Math.max(width, depth)];
  const turned =
    part.role === 'leg' ? part.orientation === 'wide face to the end' : part.orientation === 'flat';
  return turned ? { upright: small, level: large } : { upright: large, level: small };
}

const around = (at: number, size: number): Span => [at - size / 2, at + size / 2];
const outer = (list: readonly Member[], axis: Axis): Span | undefined =>
  list.length === 0
    ? undefined
    : [Math.min(...list.map((m) => m[axis][0])), Math.max(...list.map((m) => m[axis][1]))];

/** Every part placed. Legs come first, since rails run from leg to leg where nothing else is given. */
export const membersNode: PieceNode<readonly Member[]> = {
  name: 'parts in place',
  compute: (m) => placed(m.all('parts'), m.all('height') - m.get('top', 'thickness')),
};

type Named = readonly [string, Part];

function placed(parts: Description['parts'], under: number): readonly Member[] {
  const of = (role: Role): Named[] => Object.entries(parts).filter(([, p]) => p.role === role);
  const footHeight = Math.max(0, ...of('foot').map(([, p]) => sidesOf(p).upright));
  const beneathTop = [...of('rail'), ...of('cross rail')].filter(([, p]) => p.level === undefined);
  const underRails = under - Math.max(0, ...beneathTop.map(([, p]) => sidesOf(p).upright));
  const legs = of('leg').flatMap((named) =>
    legsOf(named, footHeight, named[1].reaches === 'rails' ? underRails : under),
  );
  const feet = of('foot').flatMap((named) => across(named, legs, legs, [0, footHeight]));
  const rails = of('rail').flatMap((named) => along(named, legs, under));
  const crossRails = of('cross rail').flatMap((named) =>
    across(named, legs, rails.length > 0 ? rails : legs, beneath(named[1], under)),
  );
  const others = [...of('foot rail'), ...of('brace')].flatMap((named) =>
    named[1].across === undefined && named[1].along !== undefined
      ? across(named, legs, legs, levelSpan(named))
      : along(named, legs, under),
  );
  return [...legs, ...feet, ...rails, ...crossRails, ...others];
}

const beneath = (part: Part, under: number): Span =>
  part.level === undefined
    ? [under - sidesOf(part).upright, under]
    : around(part.level, sidesOf(part).upright);

const levelSpan = ([name, part]: Named): Span =>
  around(need(part.level, `parts.${name}.level`), sidesOf(part).upright);

const base = ([name, part]: Named) => ({
  part: name,
  role: part.role,
  rise: part.rise,
  mass: part.mass,
  timber: part.timber,
});

function legsOf(named: Named, footHeight: number, under: number): Member[] {
  const [name, part] = named;
  const xs = need(part.along, `parts.${name}.along`);
  const ys = need(part.across, `parts.${name}.across`);
  const z: Span = [part.from ?? footHeight, part.to ?? under];
  const { upright, level } = sidesOf(part);
  return xs.flatMap((x) =>
    ys.map((y): Member => ({
      ...base(named),
      runs: 'z',
      x: around(x, upright),
      y: around(y, level),
      z,
      length: z[1] - z[0],
    })),
  );
}

/** Axes of the legs along one direction, each once. */
const axesOf = (legs: readonly Member[], axis: 'x' | 'y'): number[] =>
  [...new Set(legs.map((l) => Math.round(middleOf(l)[axis] * 1e9) / 1e9))].sort((a, b) => a - b);

/** Parts that run along the piece; a foot rail or a brace stands between the legs, a rail passes over them. */
function along(named: Named, legs: readonly Member[], under: number): Member[] {
  const [name, part] = named;
  const ys = part.across ?? need(legs.length > 0 ? axesOf(legs, 'y') : undefined, `parts.${name}.across`);
  const [left, right] = outer(legs, 'x') ?? [undefined, undefined];
  const x: Span = [need(part.from ?? left, `parts.${name}.from`), need(part.to ?? right, `parts.${name}.to`)];
  const z = part.role === 'rail' ? beneath(part, under) : levelSpan(named);
  return ys.map((y): Member => ({
    ...base(named),
    runs: 'x',
    x,
    y: around(y, sidesOf(part).level),
    z: [z[0], z[1] + part.rise],
    length: Math.hypot(x[1] - x[0], part.rise),
  }));
}

/** Parts that run across the piece, from the outer face of what carries them to the other. */
function across(named: Named, legs: readonly Member[], carriers: readonly Member[], z: Span): Member[] {
  const [name, part] = named;
  const xs = part.along ?? need(legs.length > 0 ? axesOf(legs, 'x') : undefined, `parts.${name}.along`);
  const [front, back] = outer(carriers, 'y') ?? [undefined, undefined];
  const y: Span = [need(part.from ?? front, `parts.${name}.from`), need(part.to ?? back, `parts.${name}.to`)];
  return xs.map((x): Member => ({
    ...base(named),
    runs: 'y',
    x: around(x, sidesOf(part).level),
    y,
    z: [z[0], z[1] + part.rise],
    length: Math.hypot(y[1] - y[0], part.rise),
  }));
}
