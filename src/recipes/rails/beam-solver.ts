import { partOn, stateBy, type Load, type State, type Support } from './beam-loads.js';

/** A beam of one stiffness along its length; SI units. GA is infinite where shear deflection is left out. */
export interface BeamCase {
  readonly length: number;
  readonly EI: number;
  readonly GA: number;
  readonly supports: readonly Support[];
  readonly loads: readonly Load[];
}

export interface Reaction {
  readonly position: number;
  /** Up on the beam, N. */
  readonly force: number;
  /** Clockwise on the beam, N·m. */
  readonly moment: number;
}

export interface Solved {
  readonly reactions: readonly Reaction[];
  /** Shear, moment, slope and sag at a place; just left of it where `side` is 'left' (default right). */
  at(x: number, side?: 'left' | 'right'): State;
  /** Places where something begins, ends or acts, from 0 to the length. */
  readonly breaks: readonly number[];
  readonly beam: BeamCase;
}

interface Member {
  readonly a: number;
  readonly b: number;
  readonly loads: readonly Load[];
  /** Sag and slope at its left end, and the shear and moment just inside it. */
  w: number;
  turn: number;
  V: number;
  M: number;
}

/** Whether supports hold a beam: two of them, or one that also stops it from turning. */
export function holds(supports: readonly Support[]): boolean {
  return supports.length >= 2 || supports.some((s) => s.turn > 0);
}

/**
 * A support that misses an end by less than a millionth of the length stands on it. Sizes written in inches and in
 * millimetres differ in their last digit, and a member as short as that would spoil the answer.
 */
export const settled = (x: number, length: number): number =>
  x < 1e-6 * length ? 0 : Math.abs(x - length) < 1e-6 * length ? length : x;

function tidied(beam: BeamCase): BeamCase {
  const on = (x: number): number => Math.min(x, beam.length);
  return {
    ...beam,
    supports: beam.supports.map((s) => ({ ...s, position: settled(s.position, beam.length) })),
    loads: beam.loads.map((l) => (l.kind === 'spread' ? { ...l, to: on(l.to) } : { ...l, at: on(l.at) })),
  };
}

/**
 * Solves a beam by the stiffness method with shear deflection (Timoshenko's beam). Its members run from support to
 * support, and loads inside them act through their exact fixed-end forces, so the answer is exact however many loads
 * there are and wherever they stand.
 */
export function solveBeam(given: BeamCase): Solved {
  const beam = tidied(given);
  const { length, EI, GA } = beam;
  const nodes = [...new Set([0, length, ...beam.supports.map((s) => s.position)])].sort((p, q) => p - q);
  const n = nodes.length;
  // Turns are counted in units of 1/length, so that the matrix is of one size all over.
  const K = Array.from({ length: 2 * n }, () => new Float64Array(2 * n));
  const F = new Float64Array(2 * n);
  const members: Member[] = [];
  const ends: { k: number[][]; p: readonly number[] }[] = [];
  for (let i = 0; i + 1 < n; i++) {
    const [a, b] = [nodes[i] as number, nodes[i + 1] as number];
    const loads = beam.loads.flatMap((l) => partOn(l, a, b, i + 2 === n) ?? []);
    const k = memberStiffness(b - a, EI, GA, length);
    const p = nodeLoads(loads, b - a, EI, GA, length);
    members.push({ a, b, loads, w: 0, turn: 0, V: 0, M: 0 });
    ends.push({ k, p });
    p.forEach((force, r) => addTo(F, 2 * i + r, force));
    k.forEach((row, r) => row.forEach((v, c) => addTo(K[2 * i + r] as Float64Array, 2 * i + c, v)));
  }
  const held = addSupports(beam, nodes, K);
  const u = solveLinear(K, F, held);
  const force = new Float64Array(2 * n);
  members.forEach((m, i) => {
    const { k, p } = ends[i] as { k: number[][]; p: readonly number[] };
    const f = k.map(
      (row, r) => row.reduce((sum, v, c) => sum + v * (u[2 * i + c] as number), 0) - (p[r] as number),
    );
    f.forEach((v, r) => addTo(force, 2 * i + r, v));
    m.w = u[2 * i] as number;
    m.turn = (u[2 * i + 1] as number) / length;
    m.V = -(f[0] as number);
    m.M = (f[1] as number) * length;
  });
  const reactions = [...beam.supports]
    .sort((p, q) => p.position - q.position)
    .map((s): Reaction => {
      const i = nodes.indexOf(s.position);
      return {
        position: s.position,
        force: -(force[2 * i] as number),
        moment: s.turn > 0 ? (force[2 * i + 1] as number) * length : 0,
      };
    });
  const places = beam.loads.flatMap((l) => (l.kind === 'spread' ? [l.from, l.to] : [l.at]));
  const breaks = [...new Set([...nodes, ...places])].sort((p, q) => p - q);
  return {
    reactions,
    breaks,
    beam,
    at: (x, side = 'right') => stateIn(memberAt(members, x, side), x, side, beam),
  };
}

function memberAt(members: readonly Member[], x: number, side: 'left' | 'right'): Member {
  const found = members.find((m) => (side === 'right' ? x < m.b : x <= m.b));
  return found ?? (members[members.length - 1] as Member);
}

function stateIn(m: Member, x: number, side: 'left' | 'right', { EI, GA }: BeamCase): State {
  const u = x - m.a;
  const out = {
    V: m.V,
    M: m.M + m.V * u,
    slope: m.turn - (m.M * u) / EI - (m.V * u * u) / (2 * EI),
    sag: m.w + m.turn * u - (m.M * u * u) / (2 * EI) - (m.V * u ** 3) / (6 * EI) + (m.V * u) / GA,
  };
  for (const load of m.loads) {
    if (side === 'left' && load.kind !== 'spread' && load.at >= u) continue;
    const s = stateBy(load, u, EI, GA);
    out.V += s.V;
    out.M += s.M;
    out.slope += s.slope;
    out.sag += s.sag;
  }
  return out;
}

/** Stiffness of a member over sag, turn, sag, turn; turns in units of 1/whole. */
function memberStiffness(l: number, EI: number, GA: number, whole: number): number[][] {
  const soft = (12 * EI) / (GA * l * l);
  const e = EI / (l ** 3 * (1 + soft));
  const t = l / whole;
  return [
    [12 * e, 6 * e * t, -12 * e, 6 * e * t],
    [6 * e * t, (4 + soft) * e * t * t, -6 * e * t, (2 - soft) * e * t * t],
    [-12 * e, -6 * e * t, 12 * e, -6 * e * t],
    [6 * e * t, (2 - soft) * e * t * t, -6 * e * t, (4 + soft) * e * t * t],
  ];
}

/**
 * What the loads of a member put on its two ends when both are held: the free end of the member as a bracket is
 * brought back to where it was by a force and a moment.
 */
function nodeLoads(
  loads: readonly Load[],
  l: number,
  EI: number,
  GA: number,
  whole: number,
): readonly number[] {
  let [V, M, slope, sag] = [0, 0, 0, 0];
  for (const load of loads) {
    const s = stateBy(load, l, EI, GA);
    V += s.V;
    M += s.M;
    slope += s.slope;
    sag += s.sag;
  }
  // Left end held, with shear v0 and moment m0 just inside it: both slope and sag of the right end must be zero.
  //   slope - m0 l/EI - v0 l²/2EI = 0      sag - m0 l²/2EI - v0 l³/6EI + v0 l/GA = 0
  const v0 = (sag - (slope * l) / 2) / (-(l ** 3) / (12 * EI) - l / GA);
  const m0 = (slope * EI) / l - (v0 * l) / 2;
  const right = { V: v0 + V, M: m0 + v0 * l + M };
  return [v0, -m0 / whole, -right.V, right.M / whole];
}

function addTo(list: Float64Array, index: number, value: number): void {
  list[index] = (list[index] as number) + value;
}

/** Adds the springs of the supports to the stiffness matrix; gives the unknowns that supports hold at zero. */
function addSupports(
  { supports, length }: BeamCase,
  nodes: readonly number[],
  K: readonly Float64Array[],
): ReadonlySet<number> {
  const held = new Set<number>();
  for (const s of supports) {
    const i = nodes.indexOf(s.position);
    for (const [unknown, stiffness] of [
      [2 * i, s.lift],
      [2 * i + 1, s.turn / length ** 2],
    ] as const) {
      if (stiffness === Infinity) held.add(unknown);
      else addTo(K[unknown] as Float64Array, unknown, stiffness);
    }
  }
  return held;
}

/** Gaussian elimination without pivoting: the matrix of a supported beam is symmetric and positive definite. Held unknowns are 0. */
function solveLinear(K: readonly Float64Array[], F: Float64Array, held: ReadonlySet<number>): Float64Array {
  const free = [...F.keys()].filter((i) => !held.has(i));
  const size = free.length;
  const A = free.map((r) =>
    Float64Array.from([...free.map((c) => (K[r] as Float64Array)[c] as number), F[r] as number]),
  );
  A.forEach((pivot, c) => {
    for (const row of A.slice(c + 1)) {
      const f = (row[c] as number) / (pivot[c] as number);
      for (let k = c; k <= size; k++) addTo(row, k, -f * (pivot[k] as number));
    }
  });
  const u = new Float64Array(F.length);
  for (const [r, row] of [...A.entries()].reverse()) {
    const known = free
      .slice(r + 1)
      .reduce((sum, at, i) => sum + (row[r + 1 + i] as number) * (u[at] as number), 0);
    u[free[r] as number] = ((row[size] as number) - known) / (row[r] as number);
  }
  return u;
}
