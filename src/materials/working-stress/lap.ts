import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';

const mm = (label: string) => variable('length', label, { unit: 'mm' });

/** Rolling shear across a glued crossing: the wood of one face rolls. */
export const rollingShear = formula({
  symbol: 'f_R',
  result: variable('stress', 'working rolling shear', { unit: 'MPa' }),
  expression: 'f_v / 3',
  variables: { f_v: variable('stress', 'working shear stress along the grain', { unit: 'MPa' }) },
  source: cite('fpl-report-1522', 'shear across the grain a third of shear along it'),
});
/** Polar second moment of a glued crossing. */
export const crossingPolar = formula({
  symbol: 'I_p',
  result: variable('secondMoment', 'polar second moment of the glued face', { unit: 'mm4' }),
  expression: 'a * b * (a^2 + b^2) / 12',
  variables: { a: mm('one side of the glued face'), b: mm('other side of the glued face') },
  basis: 'geometry',
});
/** Twist that a glued crossing carries. */
export const crossingTorque = formula({
  symbol: 'T',
  result: variable('moment', 'twist that the crossing carries', { unit: 'N mm' }),
  expression: '2 tau I_p / max(a, b)',
  variables: {
    tau: variable('stress', 'working torsional shear of a glued crossing', { unit: 'MPa' }),
    I_p: variable('secondMoment', 'polar second moment of the glued face', { unit: 'mm4' }),
    a: mm('one side of the glued face'),
    b: mm('other side of the glued face'),
  },
  basis: 'estimate',
});
/** Stiffness of a glued crossing against turning; a radian is a pure number. */
export const crossingStiffness = formula({
  symbol: 'k',
  result: variable('moment', 'stiffness of the crossing: moment for each radian', {
    unit: 'N mm',
  }),
  expression: 'k_s I_p',
  empirical: true,
  variables: {
    k_s: variable('ratio', 'stiffness of the face by area, N/mm³: stress for each millimetre of slip'),
    I_p: variable('secondMoment', 'polar second moment of the glued face', {
      unit: 'mm4',
    }),
  },
  basis: 'estimate',
});
/** Sway of a frame with hinged feet and corners that give. */
export const frameSway = formula({
  symbol: 'delta',
  result: mm('sway at the top'),
  expression: 'H h^2 / 2 * (h / (3 E I_leg) + L / (6 E I_rail) + 1 / k)',
  variables: {
    H: variable('force', 'force along the top'),
    h: mm('height to the middle of the rail'),
    L: mm('width between the legs, middle to middle'),
    E: variable('modulus', 'modulus of elasticity', { unit: 'MPa' }),
    I_leg: variable('secondMoment', 'second moment of a leg', { unit: 'mm4' }),
    I_rail: variable('secondMoment', 'second moment of the rail', { unit: 'mm4' }),
    k: variable('moment', 'stiffness of one corner: moment for each radian', { unit: 'N mm' }),
  },
  basis: 'estimate',
});

/** Twist of a glued crossing at the loads as they are, with the share kept for glue-ups of the shop. */
export const workingTorsion = formula({
  symbol: 'tau',
  result: variable('stress', 'working torsional shear of a glued crossing', { unit: 'MPa' }),
  expression: 'n k_mod f_tor / (gamma_M gamma)',
  variables: {
    n: variable('ratio', 'share kept for a joint glued in the shop'),
    k_mod: variable('ratio', 'duration of load and service class'),
    f_tor: variable('stress', 'characteristic torsional shear of a factory-glued crossing', { unit: 'MPa' }),
    gamma_M: variable('ratio', 'partial factor'),
    gamma: variable('ratio', 'factored load over the load as it is'),
  },
  basis: 'estimate',
});
/** Both at once: twist and rolling shear add up, on the safe side. */
export const crossingUse = formula({
  symbol: 'u',
  result: variable('ratio', 'share of the glued face’s strength that is used'),
  expression: 'M / T + R / (a b f_R)',
  variables: {
    M: variable('moment', 'moment in the plane of the glued face', { unit: 'N mm' }),
    T: variable('moment', 'twist that the crossing carries', { unit: 'N mm' }),
    R: variable('force', 'force across the glued face'),
    a: mm('one side of the glued face'),
    b: mm('other side of the glued face'),
    f_R: variable('stress', 'working rolling shear', { unit: 'MPa' }),
  },
  basis: 'estimate',
});
