/** A support: metres; N/m and N·m/rad, infinite where it does not give; `turn` is zero where it lets the beam turn. */
export interface Support {
  readonly position: number;
  readonly lift: number;
  readonly turn: number;
}

/** A load: forces in newtons downward, moments in N·m clockwise, metres. A spread load runs straight from `q1` to `q2`. */
export type Load =
  | { readonly kind: 'point'; readonly at: number; readonly force: number }
  | { readonly kind: 'moment'; readonly at: number; readonly moment: number }
  | {
      readonly kind: 'spread';
      readonly from: number;
      readonly to: number;
      readonly q1: number;
      readonly q2: number;
    };

/** Shear force (up on the left is positive), moment (sagging positive), slope of the section and sag (down positive). */
export interface State {
  readonly V: number;
  readonly M: number;
  readonly slope: number;
  readonly sag: number;
}

/**
 * What one load alone adds at a distance x from the left of a member: the state of a member held by nothing, by
 * Macaulay's brackets. Bending w'' = -M/EI, shear w' = V/GA.
 */
export function stateBy(load: Load, x: number, EI: number, GA: number): State {
  if (load.kind === 'point') {
    const u = x - load.at;
    if (u < 0) return nothing;
    const P = load.force;
    return { V: -P, M: -P * u, slope: (P * u * u) / (2 * EI), sag: (P * u ** 3) / (6 * EI) - (P * u) / GA };
  }
  if (load.kind === 'moment') {
    const u = x - load.at;
    if (u < 0) return nothing;
    const m = load.moment;
    return { V: 0, M: m, slope: (-m * u) / EI, sag: (-m * u * u) / (2 * EI) };
  }
  const k = (load.q2 - load.q1) / (load.to - load.from);
  const start = ramp(load.q1, k, x - load.from, EI, GA);
  const end = ramp(load.q2, k, x - load.to, EI, GA);
  return { V: start.V - end.V, M: start.M - end.M, slope: start.slope - end.slope, sag: start.sag - end.sag };
}

const nothing: State = { V: 0, M: 0, slope: 0, sag: 0 };

/** A spread load that begins at u = 0 with q and grows by k. */
function ramp(q: number, k: number, u: number, EI: number, GA: number): State {
  if (u <= 0) return nothing;
  const M = (q * u ** 2) / 2 + (k * u ** 3) / 6;
  return {
    V: -(q * u + (k * u * u) / 2),
    M: -M,
    slope: ((q * u ** 3) / 6 + (k * u ** 4) / 24) / EI,
    sag: ((q * u ** 4) / 24 + (k * u ** 5) / 120) / EI - M / GA,
  };
}

/** The part of a load on the stretch a..b, places counted from a; undefined when none. A load on the edge belongs to the right, but for the last stretch. */
export function partOn(load: Load, a: number, b: number, last: boolean): Load | undefined {
  if (load.kind !== 'spread')
    return load.at >= a && (load.at < b || (last && load.at <= b)) ? { ...load, at: load.at - a } : undefined;
  const from = Math.max(a, load.from);
  const to = Math.min(b, load.to);
  if (to <= from) return undefined;
  const q = (x: number): number => load.q1 + ((load.q2 - load.q1) * (x - load.from)) / (load.to - load.from);
  return { kind: 'spread', from: from - a, to: to - a, q1: q(from), q2: q(to) };
}

/** The whole force of a load, down. */
export function forceOf(load: Load): number {
  return load.kind === 'point'
    ? load.force
    : load.kind === 'moment'
      ? 0
      : ((load.q1 + load.q2) / 2) * (load.to - load.from);
}

/** Moment of a load about x = 0, clockwise. */
export function momentAbout0(load: Load): number {
  if (load.kind === 'point') return load.force * load.at;
  if (load.kind === 'moment') return load.moment;
  const l = load.to - load.from;
  return (l / 6) * (load.q1 * (2 * load.from + load.to) + load.q2 * (load.from + 2 * load.to));
}

/** A load times a factor. */
export function scaleLoad(load: Load, factor: number): Load {
  switch (load.kind) {
    case 'point':
      return { ...load, force: load.force * factor };
    case 'moment':
      return { ...load, moment: load.moment * factor };
    case 'spread':
      return { ...load, q1: load.q1 * factor, q2: load.q2 * factor };
  }
}
