import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';

// A screw pulled along its axis holds by the least of three: the thread in the wood, the steel at the root of the
// thread, and the head in the piece it draws up.
const G = variable('ratio', 'specific gravity, oven-dry');
const D = variable('length', 'diameter of the shank', { unit: 'in' });
const L = variable('length', 'thread in the piece that holds', { unit: 'in' });
const lbf = (label: string) => variable('force', label, { unit: 'lbf' });
const newtons = (label: string) => variable('force', label, { unit: 'N' });
const mm = (label: string) => variable('length', label, { unit: 'mm' });
const density = variable('density', 'characteristic density', { unit: 'kg/m3' });

/** Mean pull that draws a wood screw out of side grain. */
export const threadBreaks = formula({
  symbol: 'p',
  result: lbf('pull that draws one thread out'),
  expression: '15700 G^2 D L',
  empirical: true,
  variables: { G, D, L },
  source: cite('fpl-gtr-190', 'ch. 8, wood screws, withdrawal', { read: 'memory' }),
});
/** Pull allowed on a wood screw's thread in side grain. */
export const threadAllowed = formula({
  symbol: 'p_a',
  result: lbf('pull allowed on one thread'),
  expression: '2850 G^2 D L',
  empirical: true,
  variables: { G, D, L },
  source: cite('structural-handbook-screws', 'Eq. 6.37, p. 170', {
    also: cite('engineering-toolbox-screws', 'Eq. 1'),
  }),
});
/** Pull that breaks the steel at the root of the thread. */
export const steelBreaks = formula({
  symbol: 'F_u',
  result: variable('force', 'pull that breaks the steel of one screw'),
  expression: 'f_u pi d_r^2 / 4',
  variables: {
    f_u: variable('stress', 'tensile strength of the steel', { unit: 'MPa' }),
    d_r: variable('length', 'diameter at the root of the thread', { unit: 'mm' }),
  },
  source: cite('nds-commentary-xi', 'tension at the root of the thread'),
});
/** Pull allowed on the steel: 0.9 f_u A / 1.25 as a design value, and the load factor 1.5. */
export const steelAllowed = formula({
  symbol: 'F_a',
  result: variable('force', 'pull allowed on the steel of one screw'),
  expression: '0.9 F_u / (1.25 * 1.5)',
  variables: { F_u: variable('force', 'pull that breaks the steel of one screw') },
  source: cite('en-1993-1-8', 'Table 3.4, tension resistance, with the partial factor of Table 2.1'),
});
/** Pull allowed before the head goes through the piece it draws up. */
export const headAllowed = formula({
  symbol: 'p_h',
  result: lbf('pull allowed on one head'),
  expression: 'pi D_H G^2 * min(690 t, 1725 D_H)',
  empirical: true,
  variables: {
    D_H: variable('length', 'diameter of the head', { unit: 'in' }),
    G: variable('ratio', 'specific gravity of the piece under the head'),
    t: variable('length', 'thickness of the piece under the head', { unit: 'in' }),
  },
  source: cite('nds-2018', '12.2.5, head pull-through', { read: 'memory' }),
});
/** Characteristic pull-through of a head by Eurocode 5, from a declared parameter. */
export const headCharacteristic = formula({
  symbol: 'F_head',
  result: newtons('characteristic pull-through of one head'),
  expression: 'f_head d_h^2 * (rho / 350)^0.8',
  empirical: true,
  variables: {
    f_head: variable('stress', 'declared pull-through parameter', { unit: 'MPa' }),
    d_h: mm('diameter of the head'),
    rho: density,
  },
  source: cite('en-1995-1-1', '8.7.2', { read: 'memory' }),
});
/** Characteristic withdrawal parameter by Eurocode 5, for screws of 6 to 12 mm. */
export const withdrawalParameter = formula({
  symbol: 'f_ax',
  result: variable('stress', 'characteristic withdrawal parameter', { unit: 'MPa' }),
  expression: '0.52 d^(-0.5) l_ef^(-0.1) rho^0.8',
  empirical: true,
  variables: {
    d: mm('outer diameter of the thread'),
    l_ef: mm('length of the thread in the wood'),
    rho: density,
  },
  source: cite('en-1995-1-1', 'Eq. 8.39', { read: 'memory' }),
});
/** Characteristic withdrawal by Eurocode 5 at an angle to the grain; 6 to 12 mm, thread of at least 6 d. */
export const withdrawalCharacteristic = formula({
  symbol: 'F_ax',
  result: newtons('characteristic withdrawal of one screw'),
  expression: 'f_ax d l_ef * min(d / 8, 1) / (1.2 cos(a)^2 + sin(a)^2)',
  empirical: true,
  variables: {
    f_ax: variable('stress', 'characteristic withdrawal parameter', { unit: 'MPa' }),
    d: mm('outer diameter of the thread'),
    l_ef: mm('length of the thread in the wood'),
    a: variable('angle', 'angle between screw and grain', { unit: 'rad' }),
  },
  source: cite('en-1995-1-1', 'Eq. 8.38', { read: 'memory' }),
});
/** Characteristic withdrawal of self-tapping screws in hardwood, across the grain; 30 % less along it. */
export const withdrawalHardwood = formula({
  symbol: 'F_ax',
  result: newtons('characteristic withdrawal of one screw in hardwood'),
  expression: 'pi d l_ef * 0.0007 * rho^1.6 d^(-0.34)',
  empirical: true,
  variables: {
    d: mm('outer diameter of the thread'),
    l_ef: mm('length of the thread in the wood'),
    rho: density,
  },
  source: cite('cib-w18-46-7-4', 'withdrawal of self-tapping screws in hardwood'),
});

/**
 * Share of the breaking pull that end grain leaves (common practice); none of it is allowed to carry a load. Source of
 * the second: structural handbook, p. 170.
 */
export const endGrainShare = 0.6;
