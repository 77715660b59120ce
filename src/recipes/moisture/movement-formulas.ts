// The two published equations of movement across the grain, and what a ring angle makes of their figures.
import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';

export const coefficientSource = cite('fpl-gtr-190', 'Eq. 13-2, p. 13-15');
export const greenSource = cite('fpl-gtr-190', 'Eq. 13-3, p. 13-17, by Tables 4-3 and 13-5');

const D = variable('length', 'size across the grain at the first moisture', { unit: 'mm' });
const first = variable('moisture', 'starting moisture content', { unit: '%' });
const last = variable('moisture', 'final moisture content', { unit: '%' });
const change = variable('length', 'change of size across the grain', { unit: 'mm' });
const theta = variable('angle', 'angle of the rings to the face', { unit: 'deg' });

export const coefficientRule = formula({
  symbol: 'Delta_D',
  result: change,
  source: coefficientSource,
  expression: 'D * C * (M_F - M_I)',
  empirical: true,
  variables: {
    D,
    C: variable('ratio', 'change of size for each per cent of moisture'),
    M_F: last,
    M_I: first,
  },
});
export const greenRule = formula({
  symbol: 'Delta_D',
  result: change,
  source: greenSource,
  expression: 'D * (M_F - M_I) / (f / S - f + M_I)',
  variables: {
    D,
    M_F: last,
    M_I: first,
    f: variable('moisture', 'moisture at fibre saturation', { unit: '%' }),
    S: variable('share', 'shrinkage from green to oven-dry', { unit: '%' }),
  },
});
export const ringRule = formula({
  symbol: 'C',
  result: variable('ratio', 'coefficient for rings at an angle to the face'),
  basis: 'estimate',
  expression: 'C_T * cos(theta)^2 + C_R * sin(theta)^2',
  variables: { C_T: variable('ratio', 'along the rings'), C_R: variable('ratio', 'across the rings'), theta },
});
export const ringShrinkage = formula({
  symbol: 'S',
  result: variable('share', 'shrinkage for rings at an angle to the face', { unit: '%' }),
  basis: 'estimate',
  expression: 'S_T * cos(theta)^2 + S_R * sin(theta)^2',
  variables: {
    S_T: variable('share', 'along the rings', { unit: '%' }),
    S_R: variable('share', 'across the rings', { unit: '%' }),
    theta,
  },
});
export const movementFormulas = [coefficientRule, greenRule, ringRule, ringShrinkage] as const;

/** Moisture range for which coefficients are published. */
export const coefficientRange = { low: 0.06, high: 0.14 } as const;
