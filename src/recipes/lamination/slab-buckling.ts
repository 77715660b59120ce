import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';

// A row of strips under clamps is a strut across its grain: pressed hard enough it bows up, and while the glue is wet the
// joints carry no pull, so that it opens on one face as soon as the force leaves the middle third of the thickness.
const force = (label: string) => variable('force', label);
const mm = (label: string) => variable('length', label, { unit: 'mm' });

/** Force at which a straight slab bows sideways under clamps at its two edges, ends free to turn. */
export const bucklingForce = formula({
  symbol: 'F_cr',
  result: force('force at which a straight slab buckles'),
  expression: 'pi^2 E_x L t^3 / (12 W^2)',
  variables: {
    E_x: variable('modulus', 'modulus of elasticity across the grain', { unit: 'MPa' }),
    L: mm('length of the joint'),
    t: mm('thickness of the slab'),
    W: mm('width of the slab from clamp head to clamp head'),
  },
  source: cite('gere-mechanics', 'Euler’s column, hinged ends', { read: 'memory' }),
});

/** Sideways bow at the middle of a slab pressed out of its middle plane: the secant formula of columns. */
export const bowUnderClamps = formula({
  symbol: 'y',
  result: mm('bow at the middle'),
  expression: 'e * (1 / cos(pi / 2 * sqrt(F / F_cr)) - 1)',
  variables: {
    e: mm('offset of the clamping force from the middle of the thickness'),
    F: force('clamping force'),
    F_cr: force('force at which a straight slab buckles'),
  },
  source: cite('gere-mechanics', 'secant formula', { read: 'memory' }),
});

/**
 * Force at which the joints open on one face: where offset and bow together reach a sixth of the thickness, the edge of
 * the middle third. From e / cos(pi/2 sqrt(F/F_cr)) = t/6 turned round.
 */
export const liftingForce = formula({
  symbol: 'F_o',
  result: force('force at which the joints open on one face'),
  expression: 'F_cr * (2 / pi * acos(min(1, 6 e / t)))^2',
  variables: {
    F_cr: force('force at which a straight slab buckles'),
    e: mm('offset of the clamping force from the middle of the thickness'),
    t: mm('thickness of the slab'),
  },
  basis: 'estimate',
});
