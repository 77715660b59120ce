import { danger, note, type Caution } from '../../engine/caution.js';
import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';

export const g0 = 9.80665; // m/s², standard gravity

/** Sag in the long run over the first: only the part of the load that stays makes the timber creep. */
export const longFactor = formula({
  symbol: 'K',
  result: variable('ratio', 'sag in the long run over the first sag'),
  expression: '1 + (k - 1) s',
  variables: {
    k: variable('ratio', 'creep factor of a load that stays'),
    s: variable('ratio', 'share of the load that stays'),
  },
  source: cite('awc-faq-creep', 'NDS 3.5.2: total = K_cr long-term part + short-term part'),
});

export const ownWeightOf = formula({
  symbol: 'w',
  result: variable('lineLoad', 'own weight by length', { unit: 'N/m', dimensionless: true }),
  expression: 'rho A g',
  variables: {
    rho: variable('density', 'density with its moisture', { dimensionless: true }),
    A: variable('area', 'area of the section', { dimensionless: true }),
    g: variable('ratio', 'gravity, 9.80665 m/s²'),
  },
  basis: 'definition',
});

/** Cautions that every result of this topic carries. */
export const loadBearingCautions: readonly Caution[] = [
  danger(
    'where it carries people, or a fall could hurt someone, local codes and licensed practice decide, not this page',
  ),
];

export const uniformOnly = note(
  'calculated for a rail that rests freely at both ends with its load spread evenly; bearing on the supports, notches and sideways buckling are not checked',
);
