import { dataCaution } from '../../recipe/caution.js';
import type { Read } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { cite } from '../../recipe/source.js';
import type { Work } from '../../recipe/work.js';
import type { stuffFields } from './stuff-fields.js';
import type { Stuff } from './stuff.js';

const E = letter('modulus', 'modulus of elasticity along the grain', { in: 'MPa' });
const acrossModulus = formula({
  symbol: 'E_x',
  gives: letter('modulus', 'modulus of elasticity across the grain', { in: 'MPa' }),
  text: 'e E',
  where: { e: letter('ratio', 'modulus across as a share of that along'), E },
  source: cite('fpl-gtr-190', 'Table 5-1, elastic ratios', { read: 'memory' }),
});
const rollingModulus = formula({
  symbol: 'G_x',
  gives: letter('modulus', 'shear modulus across the grain (rolling shear)', { in: 'MPa' }),
  text: 'E_x / 6',
  where: { E_x: letter('modulus', 'modulus of elasticity across the grain', { in: 'MPa' }) },
  basis: 'estimate',
});
const acrossStress = formula({
  symbol: 'f',
  gives: letter('stress', 'tension across the grain to stay under', { in: 'MPa' }),
  text: 'f_t / 3',
  where: { f_t: letter('stress', 'mean strength in tension across the grain', { in: 'MPa' }) },
  basis: 'estimate',
});

export const acrossFormulas = [acrossModulus, rollingModulus, acrossStress];

// Ratios of Table 5-1 run from 0.04 to 0.10 in the tangential direction, that of a flat-sawn board; tension across
// the grain of its species from 1.5 MPa up.
const lowRatio = 0.04;
const lowTension = 1.5e6;

/** The same timber bent across its grain: stiffness from the elastic ratios, strength from tension across the grain. */
export function acrossOf(given: Read<typeof stuffFields>, along: Stuff, work: Work): Stuff {
  const chosen = given.grade ?? given.timber;
  const timber = chosen?.is === 'species' ? chosen.timber : undefined;
  const ratios = timber && !timber.isGroup ? timber.elasticRatios() : undefined;
  const tension = timber && !timber.isGroup ? timber.mechanical()?.tensionAcross : undefined;
  if (!ratios)
    work.caution(
      dataCaution(
        'no elastic ratios are held for this timber: 4 % of the stiffness along the grain was taken, the low end of the published ratios',
        cite('fpl-gtr-190', 'Table 5-1', { read: 'memory' }),
      ),
    );
  if (!tension && given.allowableBending === undefined)
    work.caution(
      dataCaution(
        'no strength across the grain is held for this timber: 1.5 MPa was taken, the low end of the published means',
        cite('fpl-gtr-190', 'Table 5-3', { read: 'memory' }),
      ),
    );
  const E_x = work.apply(acrossModulus, { e: ratios?.tangential.middle ?? lowRatio, E: along.E });
  return {
    ...along,
    E: E_x,
    G: along.G === undefined ? undefined : work.apply(rollingModulus, { E_x }),
    bending: given.allowableBending ?? work.apply(acrossStress, { f_t: tension?.middle ?? lowTension }),
    shear: undefined,
    basis: `${along.basis}; bent across the grain`,
  };
}
