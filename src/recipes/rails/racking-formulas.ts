import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';
import { crossingUse, workingTorsion } from '../../materials/working-stress/lap.js';

const E = variable('modulus', 'modulus of elasticity', { unit: 'MPa' });
const F = variable('force', 'force along the top of one frame');
const mm = (label: string) => variable('length', label, { unit: 'mm' });
const second = (label: string) => variable('secondMoment', label, { unit: 'mm4' });
// A radian is a pure number in these formulas.
const k = variable('moment', 'stiffness of one corner: moment for each radian', { unit: 'N mm' });
const frame = {
  h: mm('height to the middle of the rail'),
  L: mm('width between the legs, middle to middle'),
};

export const slipOfScrew = formula({
  symbol: 's',
  result: variable('springRate', 'stiffness of one screw in shear', { unit: 'N/mm' }),
  expression: 'rho^1.5 d / 23',
  empirical: true,
  variables: {
    rho: variable('density', 'density of the timber', { unit: 'kg/m3' }),
    d: variable('length', 'diameter of the screw', { unit: 'mm' }),
  },
  source: cite('en-1995-1-1', 'Table 7.1, slip modulus', { read: 'memory' }),
});
export const screwedStiffness = formula({
  symbol: 'k',
  result: k,
  expression: 'n s r^2',
  variables: {
    n: variable('count', 'screws in the corner'),
    s: variable('springRate', 'stiffness of one screw in shear', { unit: 'N/mm' }),
    r: mm('from the middle of the corner to a screw'),
  },
  basis: 'estimate',
});
export const rigidSway = formula({
  symbol: 'delta_0',
  result: mm('sway at the top if the corners did not give'),
  expression: 'F h^2 / 2 * (h / (3 E I_leg) + L / (6 E I_rail))',
  variables: {
    F,
    ...frame,
    E,
    I_leg: second('second moment of a leg'),
    I_rail: second('second moment of the rail'),
  },
  basis: 'estimate',
});
export const bracedSway = formula({
  symbol: 'delta',
  result: mm('sway at the top'),
  expression: 'F * (h^2 + L^2) / L^2 * (sqrt(h^2 + L^2) / (E A) + 2 / (n s))',
  variables: {
    F,
    h: mm('height'),
    L: mm('width'),
    E,
    A: variable('area', 'area of the brace', { unit: 'mm2' }),
    n: variable('count', 'screws at each end of the brace'),
    s: variable('springRate', 'stiffness of one screw in shear', { unit: 'N/mm' }),
  },
  basis: 'estimate',
});
export const testForce = formula({
  symbol: 'F_A',
  result: variable('force', 'push on a leg', { unit: 'N' }),
  expression: 'min(0.5 * 9.8 m + c, 445)',
  empirical: true,
  variables: {
    m: variable('mass', 'mass of the table', { unit: 'kg' }),
    c: variable('force', '222 N for large tops, 44 N for others', { unit: 'N' }),
  },
  source: cite('bifma-x5-5', 'clause in a test report, p. 6'),
});

/** With hinged feet each leg carries half of the push, so each corner half of its moment. */
export const cornerMoment = formula({
  symbol: 'M',
  result: variable('moment', 'moment on one corner', { unit: 'N mm' }),
  expression: 'F h / 2',
  variables: { F, h: frame.h },
  basis: 'geometry',
});
/** Half of the push across the corner, and the upright couple of the legs along it. */
export const cornerForce = formula({
  symbol: 'R',
  result: variable('force', 'force across one corner'),
  expression: 'F * sqrt(1 / 4 + (h / L)^2)',
  variables: { F, ...frame },
  basis: 'geometry',
});
export const braceForce = formula({
  symbol: 'N',
  result: variable('force', 'force along the brace'),
  expression: 'F sqrt(h^2 + L^2) / L',
  variables: { F, ...frame },
  basis: 'geometry',
});
/** Euler's column, hinged ends, over the load factor and the partial factor of the lower stiffness. */
export const braceBuckling = formula({
  symbol: 'N_b',
  result: variable('force', 'push at which the brace is still far from buckling'),
  expression: 'pi^2 c E I / (n * (h^2 + L^2))',
  variables: {
    c: variable('ratio', 'modulus at the lower 5 % limit over the mean'),
    E,
    I: second('least second moment of the brace'),
    n: variable('ratio', 'load factor times partial factor'),
    ...frame,
  },
  source: cite('gere-mechanics', 'Euler’s column, hinged ends', { read: 'memory' }),
});
/** The screw loaded most: turning and side load added up. */
export const screwForce = formula({
  symbol: 'P',
  result: variable('force', 'force on the screw loaded most'),
  expression: 'M / (n r) + R / n',
  variables: {
    M: variable('moment', 'moment on one corner', { unit: 'N mm' }),
    R: variable('force', 'force across one corner'),
    n: variable('count', 'screws in the corner'),
    r: mm('from the middle of the corner to a screw'),
  },
  basis: 'estimate',
});

export const rackingFormulas = [
  slipOfScrew,
  screwedStiffness,
  rigidSway,
  bracedSway,
  testForce,
  cornerMoment,
  cornerForce,
  braceForce,
  braceBuckling,
  workingTorsion,
  crossingUse,
  screwForce,
] as const;
