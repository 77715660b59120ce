import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';
import { factor } from './factors.js';

const mm = (label: string) => variable('length', label, { unit: 'mm' });
const shearStress = variable('stress', 'working shear stress', { unit: 'MPa' });
const force = variable('force', 'shear force that the notched end carries');

/** Shear force at an end notched on the tension side: the net section, and the square of what is left. */
export const tensionNotch = formula({
  symbol: 'V_n',
  result: force,
  expression: '2 / 3 * F_v b d_n * (d_n / d)^2',
  variables: { F_v: shearStress, b: mm('width'), d_n: mm('depth left at the notch'), d: mm('whole depth') },
  source: cite('nds-2018', '3.4.3, notch on the tension side', {
    read: 'memory',
    also: cite('awc-faq-notches', 'the ratio is squared'),
  }),
});

/** Shear force at an end notched on the compression side; `e` runs from the support to the notch, at most `d_n`. */
export const compressionNotch = formula({
  symbol: 'V_n',
  result: force,
  expression: '2 / 3 * F_v b * (d - (d - d_n) / d_n * min(x, d_n))',
  variables: {
    F_v: shearStress,
    b: mm('width'),
    d_n: mm('depth left at the notch'),
    d: mm('whole depth'),
    x: mm('from the inner edge of the support to the notch'),
  },
  source: cite('nds-2018', '3.4.3, notch on the compression side', { read: 'memory' }),
});

/** Moment that a section carries with a part cut from its compression side. */
export const netMoment = formula({
  symbol: 'M_n',
  result: variable('moment', 'moment that the net section carries', { unit: 'N mm' }),
  expression: 'f b d_n^2 / 6',
  variables: {
    f: variable('stress', 'working bending stress', { unit: 'MPa' }),
    b: mm('width'),
    d_n: mm('depth left at the notch'),
  },
  basis: 'definition',
});

/** A notch at an end, on the tension side: metres; `taper` is run over rise, 0 for a square one. */
export interface EndNotch {
  readonly depth: number;
  readonly left: number;
  /** From the line of the support's force to the corner of the notch. */
  readonly toCorner: number;
  readonly taper: number;
}

/** Factor of EN 1995-1-1 for solid wood in shear at a notch; k_n of laminated veneer lumber is 4.5. */
export const solidWoodNotch = 5;

/**
 * k_v of EN 1995-1-1 Eq. 6.62: what a notch on the tension side leaves of the shear strength of its net section, 0 to 1.
 * No notch gives 1.
 */
export function notchFactor(notch: EndNotch, kn = solidWoodNotch): number {
  const h = notch.depth * 1000;
  const a = notch.left / notch.depth;
  if (a >= 1) return 1;
  const x = notch.toCorner * 1000;
  const bracket = Math.sqrt(a * (1 - a)) + 0.8 * (x / h) * Math.sqrt(1 / a - a * a);
  return Math.min(1, (kn * (1 + (1.1 * notch.taper ** 1.5) / Math.sqrt(h))) / (Math.sqrt(h) * bracket));
}

/** Shear force of a notched end by EN 1995-1-1 Eq. 6.60, newtons, from a shear stress of the whole width, pascals. */
export const eurocodeNotchForce = (notch: EndNotch, width: number, shear: number): number =>
  (notchFactor(notch) * shear * factor('ec5.k-cr') * width * notch.left) / 1.5;

/** Where a notch is outside the limits of the NDS, in words; none where it is inside. */
export function notchOutside(place: {
  readonly depth: number;
  readonly cut: number;
  readonly length: number;
  /** From the nearer support to the middle of the notch, as a share of the span; 0 at the end. */
  readonly along: number;
}): string | undefined {
  const { depth, cut, length, along } = place;
  const slack = 1 + 1e-9;
  if (along <= 0)
    return cut > (depth / 4) * slack ? 'an end notch may be at most a quarter of the depth' : undefined;
  if (along > 1 / 3 && along < 2 / 3) return 'no notch is allowed in the middle third of the span';
  if (cut > (depth / 6) * slack) return 'a notch within the span may be at most a sixth of the depth';
  return length > (depth / 3) * slack
    ? 'a notch within the span may be at most a third of the depth long'
    : undefined;
}
