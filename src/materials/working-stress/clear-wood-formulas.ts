import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';

const stress = (label: string) => variable('stress', label, { unit: 'MPa' });
const modulus = (label: string) => variable('modulus', label, { unit: 'MPa' });
const ratio = (label: string) => variable('ratio', label);

/** Lower 5 % limit of clear wood from its mean: one piece in twenty is weaker. */
export const lowerLimit = formula({
  symbol: 'f_5',
  result: stress('lower 5 % limit of green clear wood'),
  expression: 'f_m * (1 - z V)',
  variables: {
    f_m: stress('mean strength of green clear wood'),
    z: ratio('standard deviations to the lower 5 % limit'),
    V: ratio('coefficient of variation'),
  },
  source: cite('fpl-gtr-190', 'ch. 7, pp. 7-4 and 7-5'),
});

/** Depth factor of clear wood: the power of the NDS's size factor, counted from the test piece, which is 2 in deep. */
export const sizeFactor = formula({
  symbol: 'C_d',
  result: ratio('size factor'),
  expression: 'min(1, (50.8 / d)^(1/9))',
  empirical: true,
  variables: { d: variable('length', 'depth of the piece', { unit: 'mm' }) },
  source: cite('nds-2018', 'size factor of timbers, (12/d)^(1/9), here from 2 in', {
    also: cite('wikiengineer-size-factor', 'for members deeper than 12 in'),
  }),
});

/** Working stress of a piece of clear wood with a strength ratio. */
export const clearWoodStress = formula({
  symbol: 'F',
  result: stress('working stress'),
  expression: 'f_5 / n * R * C_d * C_s * C_D',
  variables: {
    f_5: stress('lower 5 % limit of green clear wood'),
    n: ratio('divisor for duration of load and safety'),
    R: ratio('strength ratio of the piece'),
    C_d: ratio('size factor'),
    C_s: ratio('seasoning factor'),
    C_D: ratio('duration-of-load factor'),
  },
  source: cite('astm-d245', 'method with the clear wood strengths of ASTM D2555', {
    also: cite('fpl-gtr-190', 'ch. 7, p. 7-6', { also: cite('nds-supplement-1986', 'introduction') }),
  }),
});

/** Working stress in compression across the grain: from a mean, without duration of load. */
export const compressionAcross = formula({
  symbol: 'F_cp',
  result: stress('working stress across the grain'),
  expression: 'f_m / n * C_s',
  variables: {
    f_m: stress('mean strength of green clear wood across the grain'),
    n: ratio('divisor'),
    C_s: ratio('seasoning factor'),
  },
  source: cite('astm-d245', 'Table 8', { read: 'memory' }),
});

/** Modulus of elasticity of a visual grade. */
export const gradedModulus = formula({
  symbol: 'E',
  result: modulus('modulus of elasticity of the grade'),
  expression: 'E_m / 0.94 * C_s * Q',
  variables: {
    E_m: modulus('mean modulus of green clear wood'),
    C_s: ratio('seasoning factor'),
    Q: ratio('quality factor of the grade'),
  },
  source: cite('astm-d245', 'Tables 8, 10 and the quality factors', { read: 'memory' }),
});

/** Modulus of an ungraded piece: as measured in bending, of the lowest quality; the weakest printed class caps it. */
export const ungradedModulus = formula({
  symbol: 'E',
  result: modulus('modulus of elasticity of an ungraded piece'),
  expression: 'Q E_m',
  variables: {
    Q: ratio('quality factor'),
    E_m: modulus('mean modulus of green clear wood, from bending tests'),
  },
  source: cite(
    'library-choices',
    'quality factor 0.8 of an ungraded piece, never above the weakest printed class',
  ),
});
