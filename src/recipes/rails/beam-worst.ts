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
 * nought, a sag where its slope is, and each such place is found by halving.
 */
export function worstOf(solved: Solved): Worsts {
  const { breaks } = solved;
  const places: { x: number; side: 'left' | 'right' }[] = [];
  for (let i = 0; i + 1 < breaks.length; i++) {
    const [a, b] = [breaks[i] as number, breaks[i + 1] as number];
    places.push({ x: a, side: 'right' }, { x: b, side: 'left' });
    for (const f of [
      (x: number) => solved.at(x).V,
      (x: number) => fall(solved, x),
      (x: number) => solved.at(x).M,
      (x: number) => loadAt(solved, x),
    ]) {
      for (const x of zeros(f, a, b)) places.push({ x, side: 'right' });
    }
  }
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
  const { breaks } = solved;
  let most = 0;
  for (let i = 0; i + 1 < breaks.length; i++) {
    const [a, b] = [breaks[i] as number, breaks[i + 1] as number];
    for (const x of zeros((y) => solved.at(y).V, a, b)) most = Math.max(most, Math.abs(solved.at(x).M));
    most = Math.max(most, Math.abs(solved.at(a).M), Math.abs(solved.at(b, 'left').M));
  }
  return most;
}

/** The greatest sag downward on a stretch that ends at supports or ends of the beam; nought where it only rises. */
export function greatestSag(solved: Solved, from: number, to: number): number {
  let most = 0;
  const stops = solved.breaks.filter((x) => x >= from && x <= to);
  for (let i = 0; i + 1 < stops.length; i++) {
    const [a, b] = [stops[i] as number, stops[i + 1] as number];
    for (const x of [a, b, ...zeros((y) => fall(solved, y), a, b)]) most = Math.max(most, solved.at(x).sag);
  }
  return most;
}

/** How fast the sag grows along the beam: the turn of the section and the shear's share. */
function fall(solved: Solved, x: number): number {
  const s = solved.at(x);
  return s.slope + s.V / solved.beam.GA;
}

/** Load by length at a place, where the shear turns. */
function loadAt(solved: Solved, x: number): number {
  let q = 0;
  for (const l of solved.beam.loads)
    if (l.kind === 'spread' && x > l.from && x < l.to)
      q += l.q1 + ((l.q2 - l.q1) * (x - l.from)) / (l.to - l.from);
  return q;
}

const steps = 12;

function zeros(f: (x: number) => number, a: number, b: number): number[] {
  const found: number[] = [];
  // Kept a hair inside, where the right-hand and the left-hand value agree.
  const inset = (b - a) * 1e-12;
  let x0 = a + inset;
  let y0 = f(x0);
  for (let i = 1; i <= steps; i++) {
    const x1 = i === steps ? b - inset : a + ((b - a) * i) / steps;
    const y1 = f(x1);
    if (y0 * y1 < 0) found.push(halve(f, x0, x1, y0));
    else if (y1 === 0 && i < steps) found.push(x1);
    [x0, y0] = [x1, y1];
  }
  return found;
}

function halve(f: (x: number) => number, low: number, high: number, atLow: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 60 && b - a > 1e-15 * Math.abs(b); i++) {
    const m = (a + b) / 2;
    if (f(m) * atLow > 0) a = m;
    else b = m;
  }
  return (a + b) / 2;
}
