import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';

const E = variable('modulus', 'modulus of elasticity', { unit: 'MPa' });
const G = variable('modulus', 'shear modulus', { unit: 'MPa' });
const I = variable('secondMoment', 'second moment of area', { unit: 'mm4' });
const F = variable('force', 'force along the top');
const mm = (label: string) => variable('length', label, { unit: 'mm' });
// A radian is a pure number in these formulas.
const k = variable('moment', 'stiffness of one corner: moment for each radian', { unit: 'N mm' });

export const halfLapStiffness = formula({
  symbol: 'k',
  result: k,
  expression: 'G * b^4 / (3 t)',
  variables: {
    G,
    b: mm('side of the glued square: depth of the pieces in the plane of the frame'),
    t: mm('thickness of the frame'),
  },
  basis: 'estimate',
});
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
export const sway = formula({
  symbol: 'delta',
  result: mm('sway at the top'),
  expression: 'F h^2 / 2 * (L / (6 E I) + 1 / k) + F h^3 / (6 E I)',
  variables: {
    F,
    h: mm('height to the middle of the rail'),
    L: mm('width between the legs, middle to middle'),
    E,
    I,
    k,
  },
  basis: 'estimate',
});
export const rigidSway = formula({
  symbol: 'delta_0',
  result: mm('sway at the top if the corners did not give'),
  expression: 'F h^2 L / (12 E I) + F h^3 / (6 E I)',
  variables: {
    F,
    h: mm('height to the middle of the rail'),
    L: mm('width between the legs, middle to middle'),
    E,
    I,
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
