import { danger, note, type Caution } from '../../engine/caution.js';
import { formula, variable } from '../../engine/formula.js';

export const g0 = 9.80665; // m/s², standard gravity

export const ownWeightOf = formula({
  symbol: 'w',
  result: variable('lineLoad', 'own weight by length', { unit: 'N/m' }),
  expression: 'rho A g',
  variables: {
    rho: variable('density', 'density with its moisture'),
    A: variable('area', 'area of the section'),
    g: variable('acceleration', 'standard gravity'),
  },
  basis: 'definition',
});

/** Cautions that every result of this topic carries. */
export const loadBearingCautions: readonly Caution[] = [
  danger(
    'follow local codes and licensed practice where it carries people or a fall could hurt someone: they decide, not this page',
  ),
];

export const uniformOnly = note(
  'calculated for a rail that rests freely at both ends with its load spread evenly; pressure on the supports and sideways buckling are not checked',
);
