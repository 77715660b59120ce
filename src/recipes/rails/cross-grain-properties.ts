import { dataCaution } from '../../engine/caution.js';
import type { Parsed } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';
import type { Trace } from '../../engine/trace.js';
import type { Timber } from '../../materials/timber.js';
import type { materialFields } from './material-fields.js';
import type { Material } from './design-values.js';

const ratiosSource = cite('fpl-gtr-190', 'Table 5-1, elastic ratios');
const E = variable('modulus', 'modulus of elasticity along the grain', { unit: 'MPa' });
const acrossModulus = formula({
  symbol: 'E_x',
  result: variable('modulus', 'modulus of elasticity across the grain', { unit: 'MPa' }),
  expression: 'e E',
  variables: { e: variable('ratio', 'modulus across as a share of that along'), E },
  source: ratiosSource,
});
const rollingModulus = formula({
  symbol: 'G_x',
  result: variable('modulus', 'shear modulus across the grain (rolling shear)', { unit: 'MPa' }),
  expression: 'E_x / 6',
  variables: { E_x: variable('modulus', 'modulus of elasticity across the grain', { unit: 'MPa' }) },
  basis: 'estimate',
});
const acrossStress = formula({
  symbol: 'f',
  result: variable('stress', 'tension across the grain to stay under', { unit: 'MPa' }),
  expression: 'f_t / 3',
  variables: { f_t: variable('stress', 'mean strength in tension across the grain', { unit: 'MPa' }) },
  basis: 'estimate',
});

export const acrossFormulas = [acrossModulus, rollingModulus, acrossStress];

// Ratios of Table 5-1 that were read run from 0.050 to 0.083 in the tangential direction, that of a flat-sawn board; tension across
// the grain of all but one of 105 woods from 1.5 MPa up.
const lowRatio = 0.04;
const lowTension = 1.5e6;

/** The same timber bent across its grain: stiffness from the elastic ratios, strength from tension across the grain. */
export function acrossOf(given: Parsed<typeof materialFields>, along: Material, trace: Trace): Material {
  const timber = speciesOf(given);
  const ratios = timber?.elasticRatios();
  const tension = timber?.mechanical()?.tensionAcross;
  for (const row of ratios?.rows ?? []) trace.source(row.citation);
  warnOfAssumed(ratios !== undefined, tension !== undefined || given.allowableBending !== undefined, trace);
  const E_x = trace.evaluate(acrossModulus, { e: ratios?.tangential.middle ?? lowRatio, E: along.E });
  return {
    ...along,
    E: E_x,
    G: along.G === undefined ? undefined : trace.evaluate(rollingModulus, { E_x }),
    bending: given.allowableBending ?? trace.evaluate(acrossStress, { f_t: tension?.middle ?? lowTension }),
    shear: undefined,
    basis: `${along.basis}; bent across the grain`,
  };
}

/** The species whose own properties across the grain may be used: not a grade's, not a group's. */
function speciesOf(given: Parsed<typeof materialFields>): Timber | undefined {
  const chosen = given.grade ?? given.timber;
  return chosen?.is === 'species' && !chosen.timber.isGroup ? chosen.timber : undefined;
}

function warnOfAssumed(hasRatios: boolean, hasStrength: boolean, trace: Trace): void {
  if (!hasRatios)
    trace.warn(
      dataCaution(
        'no elastic ratios are held for this timber: 4 % of the stiffness along the grain was taken, less than the 5 to 8 % printed for other woods',
        ratiosSource,
      ),
    );
  if (!hasStrength)
    trace.warn(
      dataCaution(
        'no strength across the grain is held for this timber: 1.5 MPa was taken, the low end of the published means',
        cite('fpl-gtr-282', 'Table 5-3b, tension perpendicular to the grain'),
      ),
    );
}
