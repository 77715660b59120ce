// What keeps a piece from tipping: its feet farther out, or weight low between them.
import type { Adjustment } from '../../engine/mending.js';
import type { tippingFields } from './tipping-fields.js';

type Tipping = Adjustment<typeof tippingFields>;
const feet = { step: 0.005, most: 0.6, kind: 'length' } as const;

/** Positions are counted from the front feet. */
const frontFeet: Tipping = {
  ...feet,
  say: 'move the front feet {value} forward',
  adjust: (given, by) => ({
    ...given,
    base: given.base + by,
    overhang: given.overhang - by,
    parts: given.parts.map((p) => ({ ...p, position: p.position + by })),
  }),
};
const backFeet: Tipping = {
  ...feet,
  say: 'move the back feet {value} backward',
  adjust: (given, by) => ({ ...given, base: given.base + by, backOverhang: given.backOverhang - by }),
};
const ballast: Tipping = {
  step: 1,
  most: 200,
  kind: 'mass',
  say: 'fix {value} of ballast low in the middle of the base',
  adjust: (given, by) => ({
    ...given,
    parts: [...given.parts, { name: 'ballast', mass: by, position: given.base / 2, height: 0.1 }],
  }),
};

export const tippingRemedies: readonly Tipping[] = [frontFeet, backFeet, ballast];
