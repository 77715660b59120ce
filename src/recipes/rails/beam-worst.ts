import type { Solved } from './beam-solver.js';

/** A greatest value and where it stands, metres from the left end. */
export interface Worst {
  readonly at: number;
  readonly value: number;
}

/** Of greatest size, each with its sign. */
export interface Worsts {
  readonly V: Worst;
  readonly M: Worst;
  readonly sag: Worst;
  readonly slope: Worst;
}

/**
 * The greatest shear, moment and sag. Between two breaks all three are smooth: a moment turns where the shear is
 * zero, a sag where its slope is, and each such place is found by halving.
 */
export function worstOf(solved: Solved): Worsts {
  const places = stretchesOf(solved).flatMap(([a, b]) => {
    const loads = solved.beam.loads.flatMap((l) =>
      l.kind === 'spread' && l.from <= a && l.to >= b ? [l] : [],
    );
    const load: Curve = (x) =>
      loads.reduce((q, l) => q + l.q1 + ((l.q2 - l.q1) * (x - l.from)) / (l.to - l.from), 0);
    const turns = [shearOf(solved), fallOf(solved), momentOf(solved), load].flatMap((f) => zeros(f, a, b));
    return [{ x: a, side: 'right' as const }, ...[b, ...turns].map((x) => ({ x, side: 'left' as const }))];
  });
  const most = (take: 'V' | 'M' | 'sag' | 'slope'): Worst => {
    let best: Worst = { at: 0, value: 0 };
    for (const p of places) {
      const value = solved.at(p.x, p.side)[take];
      // The first of equals, so that a symmetric beam is marked at the left or in the middle and not by the last digit.
      if (Math.abs(value) > Math.abs(best.value) * (1 + 1e-12)) best = { at: p.x, value };
    }
    return best;
  };
  return { V: most('V'), M: most('M'), sag: most('sag'), slope: most('slope') };
}

/** The size of the greatest moment alone: a third of the work. */
export function greatestMoment(solved: Solved): number {
  const sizes = stretchesOf(solved).flatMap(([a, b]) => [
    solved.at(a).M,
    ...[b, ...zeros(shearOf(solved), a, b)].map((x) => solved.at(x, 'left').M),
  ]);
  return Math.max(...sizes.map(Math.abs));
}

/** The greatest sag downward on a stretch that ends at supports or ends of the beam; zero where it only rises. */
export function greatestSag(solved: Solved, from: number, to: number): number {
  const sags = stretchesOf(solved)
    .filter(([a, b]) => a >= from && b <= to)
    .flatMap(([a, b]) => [a, b, ...zeros(fallOf(solved), a, b)].map((x) => solved.at(x).sag));
  return Math.max(0, ...sags);
}

/** The stretches from break to break, on which all four curves are smooth. */
const stretchesOf = ({ breaks }: Solved): (readonly [number, number])[] =>
  breaks.slice(1).map((b, i) => [breaks[i] as number, b] as const);

type Curve = (x: number, side: 'left' | 'right') => number;

const shearOf =
  (solved: Solved): Curve =>
  (x, side) =>
    solved.at(x, side).V;

const momentOf =
  (solved: Solved): Curve =>
  (x, side) =>
    solved.at(x, side).M;

/** How fast the sag grows along the beam: the turn of the section and the shear's share. */
const fallOf =
  (solved: Solved): Curve =>
  (x, side) => {
    const s = solved.at(x, side);
    return s.slope + s.V / solved.beam.GA;
  };

// A power of two, so that the last sample falls on the end to its last digit.
const steps = 16;

/** Places where a curve that is smooth from a to b is zero. */
function zeros(f: Curve, a: number, b: number): number[] {
  const found: number[] = [];
  let [x0, y0] = [a, f(a, 'right')];
  for (let i = 1; i <= steps; i++) {
    const x1 = (a * (steps - i) + b * i) / steps;
    const y1 = f(x1, 'left');
    // Where the curve is zero all along, it has no place of its own.
    if (y0 * y1 <= 0 && y0 !== y1) found.push(halve(f, x0, x1, y0));
    [x0, y0] = [x1, y1];
  }
  return found;
}

function halve(f: Curve, low: number, high: number, atLow: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 55; i++) {
    const m = (a + b) / 2;
    if (f(m, 'left') * atLow > 0) a = m;
    else b = m;
  }
  return (a + b) / 2;
}
