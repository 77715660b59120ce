import { tableRows } from '../data-tables.js';
import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';

const ratio = (label: string) => variable('ratio', label);
const mm = (label: string) => variable('length', label, { unit: 'mm' });

/** What a knot at the edge, or across the narrow face, leaves of the bending strength. */
export const edgeKnot = formula({
  symbol: 'R_k',
  result: ratio('strength ratio of a knot at the edge'),
  expression: 'max(0, 1 - k / h)^2',
  variables: { k: mm('size of the knots within 150 mm of length'), h: mm('height of the face') },
  source: cite('astm-d245', 'form of the edge-knot ratios', { read: 'memory' }),
});

/** What a knot in the middle of the wide face leaves of the bending strength. */
export const centreKnot = formula({
  symbol: 'R_k',
  result: ratio('strength ratio of a knot in the middle of the face'),
  expression: 'max(0, 1 - k / h)',
  variables: { k: mm('size of the knots within 150 mm of length'), h: mm('height of the face') },
  source: cite('astm-d245', 'form of the centre-knot ratios', { read: 'memory' }),
});

/** Ratio of the whole piece: the least of base, knots and grain, and the holes as lost depth. */
export const pieceRatio = formula({
  symbol: 'R',
  result: ratio('strength ratio of the piece'),
  expression: 'min(R_0, R_k, R_g) * max(0, 1 - s / h)^2',
  variables: {
    R_0: ratio('base ratio of an ungraded piece'),
    R_k: ratio('ratio of the worst knot'),
    R_g: ratio('ratio of the slope of grain'),
    s: mm('sum of the hole diameters in any 150 mm of length'),
    h: mm('height of the face'),
  },
  basis: 'estimate',
});

/** The stress that a piece holds for five minutes without a crack, to be worked at `f`. */
export const proofStress = formula({
  symbol: 'f_p',
  result: variable('stress', 'stress of the proof test', { unit: 'MPa' }),
  expression: 'f n',
  variables: {
    f: variable('stress', 'working stress', { unit: 'MPa' }),
    n: ratio('divisor for duration of load and safety'),
  },
  basis: 'estimate',
});

/**
 * Strength ratio in bending of a slope of grain of 1 in `run`: 1 from 1 in 20, 0 below 1 in 6 (not for a rail), straight
 * between the printed slopes. Source: ASTM D245 (recalled).
 */
export function grainRatio(run: number): number {
  const rows = tableRows('grain-slopes.astm-d245').map(
    (r) => [r.number('run') as number, r.number('ratio') as number] as const,
  );
  const at = rows.findIndex(([n]) => run < n);
  if (at === 0) return 0;
  if (at < 0) return (rows[rows.length - 1] as readonly [number, number])[1];
  const [a, p] = rows[at - 1] as readonly [number, number];
  const [b, q] = rows[at] as readonly [number, number];
  return p + ((q - p) * (run - a)) / (b - a);
}
