import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';
import { longTermFactor } from '../../materials/working-stress/use-category.js';
import { glueLineAllowed } from './glue-lines.js';
import { ownWeightOf } from './loads-and-creep.js';
import { materialFormulas } from './material-formulas.js';
import { notchFormulas, spanByNotchFormulas } from './notched-rail.js';

const handbook = (what: string) => cite('fpl-gtr-190', `Eq. 9-2 and Table 9-1, p. 9-2${what}`);
const q = variable('lineLoad', 'load by length', { unit: 'N/mm' });
const E = variable('modulus', 'modulus of elasticity', { unit: 'MPa' });
const I = variable('secondMoment', 'second moment of area', { unit: 'mm4' });
const K = variable('ratio', 'sag in the long run over the first sag');
const span = (label: string) => variable('length', label, { unit: 'mm' });

export const secondMoment = formula({
  symbol: 'I',
  result: I,
  expression: 'b h^3 / 12',
  variables: {
    b: variable('length', 'width of the rail', { unit: 'mm' }),
    h: variable('length', 'depth of the rail', { unit: 'mm' }),
  },
  source: cite('fpl-gtr-190', 'Eq. 9-3, p. 9-2'),
});
export const spanByShare = formula({
  symbol: 'L_d',
  result: span('span at which the sag is the share of it allowed'),
  expression: 'cbrt(384 E I / (5 n K q))',
  variables: { E, I, n: variable('ratio', 'span over allowed sag'), K, q },
  source: handbook(', turned round'),
});
export const spanByLength = formula({
  symbol: 'L_d',
  result: span('span at which the sag is the length allowed'),
  expression: '(384 E I d / (5 K q))^(1/4)',
  variables: { E, I, d: variable('length', 'allowed sag', { unit: 'mm' }), K, q },
  source: handbook(', turned round'),
});
export const sagBent = formula({
  symbol: 'delta',
  result: variable('length', 'sag at midspan', { unit: 'mm' }),
  expression: '5 K q L^4 / (384 E I)',
  variables: { K, q, L: span('span'), E, I },
  source: handbook(', bending alone'),
});
export const sagWhole = formula({
  symbol: 'delta',
  result: variable('length', 'sag at midspan', { unit: 'mm' }),
  expression: 'K * (5 q L^4 / (384 E I) + q L^2 / (8 G A_s))',
  variables: {
    K,
    q,
    L: span('span'),
    E,
    I,
    G: variable('modulus', 'shear modulus', { unit: 'MPa' }),
    A_s: variable('area', 'area that works in shear, 5/6 of a rectangle', { unit: 'mm2' }),
  },
  source: handbook(', bending and shear'),
});
export const spanByBending = formula({
  symbol: 'L_b',
  result: span('span at which the bending stress is the one allowed'),
  expression: 'sqrt(8 f_b W / q)',
  variables: {
    f_b: variable('stress', 'bending stress to stay under', { unit: 'MPa' }),
    W: variable('sectionModulus', 'section modulus', { unit: 'mm3' }),
    q,
  },
  basis: 'definition', // statics: M = q L²/8, stress M/W
});
export const spanByShear = formula({
  symbol: 'L_v',
  result: span('span at which the shear stress is the one allowed'),
  expression: '2 f_v A_v / q',
  variables: {
    f_v: variable('stress', 'shear stress to stay under', { unit: 'MPa' }),
    A_v: variable('area', 'shear force over greatest shear stress, 2/3 of a rectangle', { unit: 'mm2' }),
    q,
  },
  basis: 'definition', // statics: V = q L/2, stress V/A_v
});

export const spanFormulas = [
  secondMoment,
  longTermFactor,
  ownWeightOf,
  spanByShare,
  spanByLength,
  spanByBending,
  spanByShear,
  sagBent,
  sagWhole,
  glueLineAllowed,
  ...notchFormulas,
  ...spanByNotchFormulas,
  ...materialFormulas,
];
