import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';

const E = (label: string) => variable('modulus', label, { unit: 'MPa' });
const stress = (label: string) => variable('stress', label, { unit: 'MPa' });

export const shearFree = formula({
  symbol: 'E',
  result: E('modulus of elasticity without the shear of the bending test'),
  expression: '1.1 q E_b',
  variables: {
    q: variable('ratio', 'what the grade of the piece leaves of the stiffness'),
    E_b: E('modulus of elasticity from bending tests, as printed'),
  },
  source: cite('fpl-gtr-190', 'ch. 5, on Table 5-1: 10 % added to bending moduli', { read: 'memory' }),
});
export const sixteenth = formula({
  symbol: 'G',
  result: E('shear modulus'),
  expression: 'E / 16',
  variables: { E: E('modulus of elasticity') },
  source: cite('apa-tt-082', 'p. 1: solid lumber, 1/16'),
});
export const fromRatio = formula({
  symbol: 'G',
  result: E('shear modulus'),
  expression: 'g E',
  variables: {
    g: variable('ratio', 'shear modulus as a share of the modulus along the grain'),
    E: E('modulus of elasticity'),
  },
  source: cite('fpl-gtr-190', 'Table 5-1, elastic ratios', { read: 'memory' }),
});
export const fromCharacteristic = formula({
  symbol: 'f',
  result: stress('stress to stay under at the loads as they are'),
  expression: 'k f_k / (gamma_M gamma_Q)',
  variables: {
    k: variable('ratio', 'duration of load: long term indoors'),
    f_k: stress('characteristic strength'),
    gamma_M: variable('ratio', 'partial factor of solid timber'),
    gamma_Q: variable('ratio', 'partial factor of the load, put on the strength instead'),
  },
  source: cite('en-1995-1-1', '2.4.1 and Table 3.1 (0.7 long term, 1.3), EN 1990 (1.5)', { read: 'memory' }),
});
export const fromAustralian = formula({
  symbol: 'f',
  result: stress('stress to stay under at the loads as they are'),
  expression: 'phi k_1 f_k / gamma_Q',
  variables: {
    phi: variable('ratio', 'capacity factor'),
    k_1: variable('ratio', 'duration of load: long term'),
    f_k: stress('characteristic strength'),
    gamma_Q: variable('ratio', 'load factor, put on the strength instead'),
  },
  source: cite('as-1720-1-2010', 'Tables 2.1 and 2.3 (0.7, 0.57), AS/NZS 1170.0 (1.5)', { read: 'memory' }),
});
export const fromMean = formula({
  symbol: 'f',
  result: stress('stress to stay under at the loads as they are'),
  expression: 'f_m * (1 - 1.645 V) * R / n',
  variables: {
    f_m: stress('mean strength of clear wood'),
    V: variable('ratio', 'spread of clear wood: standard deviation over mean'),
    R: variable('ratio', 'strength ratio: what knots, holes and sloping grain leave'),
    n: variable('ratio', 'for duration of load and safety: 2.1 softwoods, 2.3 hardwoods'),
  },
  source: cite('astm-d245', 'Tables 8 and 10; spread from ASTM D2555', { read: 'memory' }),
});

/** Formulas that a recipe of this topic may use of its timber. */
export const materialFormulas = [
  shearFree,
  sixteenth,
  fromRatio,
  fromCharacteristic,
  fromAustralian,
  fromMean,
];
