import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';

const stress = (label: string) => variable('stress', label, { unit: 'MPa' });
const ratio = (label: string) => variable('ratio', label);
const shares = {
  G: ratio('permanent load as a share of the whole'),
  Q: ratio('imposed load as a share of the whole'),
};

export const eurocodeLoadFactor = formula({
  symbol: 'gamma',
  result: ratio('factored load over the load as it is'),
  expression: '(1.35 G + 1.5 Q) / (G + Q)',
  variables: shares,
  source: cite('en-1990', 'Table A1.2(B)', { read: 'memory' }),
});
export const australianLoadFactor = formula({
  symbol: 'gamma',
  result: ratio('factored load over the load as it is'),
  expression: 'max(1.2 G + 1.5 Q, 1.35 G) / (G + Q)',
  variables: shares,
  source: cite('as-nzs-1170-0', '4.2.2', { read: 'memory' }),
});
export const eurocodeDepthFactor = formula({
  symbol: 'k_h',
  result: ratio('depth factor'),
  expression: 'min(1.3, max(1, (150 / h)^0.2))',
  empirical: true,
  variables: { h: variable('length', 'depth of the piece', { unit: 'mm' }) },
  source: cite('en-1995-1-1', '3.2(3)', { read: 'memory' }),
});
/** Working stress at the load as it is: the design strength over the mean load factor of this very load. */
export const eurocodeStress = formula({
  symbol: 'f',
  result: stress('working stress at the loads as they are'),
  expression: 'k_mod k_h k_cr f_k / (gamma_M gamma)',
  variables: {
    k_mod: ratio('duration of load and service class'),
    k_h: ratio('depth factor, in bending'),
    k_cr: ratio('share of the width free of cracks, in shear'),
    f_k: stress('characteristic strength'),
    gamma_M: ratio('partial factor of solid timber'),
    gamma: ratio('factored load over the load as it is'),
  },
  source: cite('en-1995-1-1', '2.4.1 and Table 3.1'),
});
export const australianStress = formula({
  symbol: 'f',
  result: stress('working stress at the loads as they are'),
  expression: 'phi k_1 k_4 f_k / gamma',
  variables: {
    phi: ratio('capacity factor'),
    k_1: ratio('duration of load'),
    k_4: ratio('partial seasoning'),
    f_k: stress('characteristic strength'),
    gamma: ratio('factored load over the load as it is'),
  },
  source: cite('as-1720-1-2010', 'Tables 2.1 and 2.3', { read: 'memory' }),
});
export const americanStress = formula({
  symbol: 'F',
  result: stress('working stress at the loads as they are'),
  expression: 'F_ref C_D C_F C_M',
  variables: {
    F_ref: stress('reference design value'),
    C_D: ratio('duration of load'),
    C_F: ratio('size factor'),
    C_M: ratio('wet service factor'),
  },
  source: cite('nds-supplement', 'adjustment factors of Table 4A', { read: 'memory' }),
});
