import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';
import { bowUnderClamps, bucklingForce, liftingForce } from './slab-buckling.js';

const spreadRule = cite('fww-2010-clamp-position', 'spread of pressure');
const jointLength = variable('length', 'length of the joint', { unit: 'mm' });
const need = variable('force', 'force on the joint', { unit: 'N' });
const covered = variable('length', 'length of joint that one clamp presses', { unit: 'mm' });

export const total = formula({
  symbol: 'F',
  result: need,
  expression: 'p L h',
  variables: {
    p: variable('pressure', 'clamping pressure', { unit: 'MPa' }),
    L: jointLength,
    h: variable('length', 'height of the joint', { unit: 'mm' }),
  },
  basis: 'definition',
});

// A billionth comes off before rounding up, so that an exact fit is not one clamp too many.
export const byForce = formula({
  symbol: 'n_F',
  result: variable('count', 'clamps by force'),
  expression: 'ceil(F / q - 10^(-9))',
  variables: { F: need, q: variable('force', 'force of one clamp', { unit: 'N' }) },
  basis: 'definition',
});

export const cover = formula({
  symbol: 'c',
  result: covered,
  // Pressure widens at 45 degrees from the head through the pad, no wider than the pad is long, then through the board.
  expression: 'min(a, k + 2 t) + 2 w',
  variables: {
    a: variable('length', 'length of the pad along the joint', { unit: 'mm' }),
    k: variable('length', 'width of the clamp head along the joint', { unit: 'mm' }),
    w: variable('length', 'width of the outermost board', { unit: 'mm' }),
    t: variable('length', 'thickness of the pad', { unit: 'mm' }),
  },
  source: spreadRule,
  basis: 'common practice',
});

export const bySpacing = formula({
  symbol: 'n_c',
  result: variable('count', 'clamps by spacing'),
  expression: 'ceil(L / c - 10^(-9))',
  variables: { L: jointLength, c: covered },
  basis: 'geometry',
});

export const pitch = formula({
  symbol: 's',
  result: variable('length', 'distance from clamp to clamp', { unit: 'mm' }),
  expression: 'L / n',
  variables: { L: jointLength, n: variable('count', 'clamps') },
  basis: 'geometry',
});

export const clampFormulas = [
  total,
  byForce,
  cover,
  bySpacing,
  pitch,
  bucklingForce,
  bowUnderClamps,
  liftingForce,
] as const;
