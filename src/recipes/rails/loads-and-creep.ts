import { danger, note, type Caution } from '../../recipe/caution.js';
import { formula, letter } from '../../recipe/formula.js';
import { cite } from '../../recipe/source.js';

export const g0 = 9.80665; // m/s², standard gravity

/** Sag in the long run over the first: only the part of the load that stays makes the timber creep. */
export const longFactor = formula({
  symbol: 'K',
  gives: letter('ratio', 'sag in the long run over the first sag'),
  text: '1 + (k - 1) s',
  where: {
    k: letter('ratio', 'creep factor of a load that stays'),
    s: letter('ratio', 'share of the load that stays'),
  },
  source: cite('awc-faq-creep', 'NDS 3.5.2: total = K_cr long-term part + short-term part'),
});

export const ownWeightOf = formula({
  symbol: 'w',
  gives: letter('lineLoad', 'own weight by length', { in: 'N/m', bare: true }),
  text: 'rho A g',
  where: {
    rho: letter('density', 'density with its moisture', { bare: true }),
    A: letter('area', 'area of the section', { bare: true }),
    g: letter('ratio', 'gravity, 9.80665 m/s²'),
  },
  basis: 'definition',
});

/** Said with every answer of this topic. */
export const bears: readonly Caution[] = [
  danger(
    'where it bears people, or a fall could hurt someone, local codes and licensed practice decide, not this page',
  ),
];

export const uniformOnly = note(
  'reckoned for a rail that rests freely at both ends with its load spread evenly; bearing on the supports, notches and sideways buckling are not checked',
);
