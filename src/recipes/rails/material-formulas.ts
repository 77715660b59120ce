import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';
import { stressFormulas } from '../../materials/working-stress/stress-formulas.js';

const E = (label: string) => variable('modulus', label, { unit: 'MPa' });

export const sixteenth = formula({
  symbol: 'G',
  result: E('shear modulus'),
  expression: 'E / 16',
  variables: { E: E('modulus of elasticity') },
  source: cite('apa-tt-082', 'p. 1: solid lumber, 1/16'),
});
/** Formulas that a recipe of this topic may use of its timber. */
export const materialFormulas = [...stressFormulas, sixteenth];
