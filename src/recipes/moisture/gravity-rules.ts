// Density and specific gravity at any moisture: the handbook's relations, shared by the recipes of density and weight.
import { formula, variable } from '../../engine/formula.js';
import { estimate, outOfRange } from '../../engine/caution.js';
import { cite } from '../../engine/source.js';
import type { Trace } from '../../engine/trace.js';
import { citeTimber } from '../../materials/timber-field.js';
import { usualVolumetric, type Density } from '../../materials/specific-gravity.js';
import type { Timber } from '../../materials/timber.js';

export const densitySource = cite('fpl-gtr-190', 'ch. 4, p. 4-9 to 4-11');
const basesSource = cite('fpl-gtr-190', 'Table 4-5, oven-dry mass over the volume at a moisture');
const linearSource = cite(
  'fpl-gtr-190',
  'Eq. 13-3, shrinkage in proportion to the moisture lost below fibre saturation',
);
const usualSource = cite('fpl-gtr-190', 'ch. 4, usual volumetric shrinkage', { read: 'memory' });
const ndsSource = cite('engineering-toolbox-wood-density', 'NDS form of density');

const M = variable('moisture', 'moisture content', { unit: '%' });
const density = variable('density', 'density, with its water');

export const densityRule = formula({
  symbol: 'rho',
  result: density,
  source: densitySource,
  expression: 'rho_w G * (1 + M)',
  variables: {
    rho_w: variable('density', 'density of water'),
    G: variable('ratio', 'specific gravity on the volume at this moisture'),
    M,
  },
});
export const shrunkRule = formula({
  symbol: 'S_M',
  result: variable('share', 'shrinkage of volume from green to this moisture', { unit: '%' }),
  source: linearSource,
  expression: 'S_v * (f - M) / f',
  variables: {
    S_v: variable('share', 'shrinkage of volume from green to oven-dry', { unit: '%' }),
    f: variable('moisture', 'moisture at fibre saturation', { unit: '%' }),
    M,
  },
});
export const gravityRule = formula({
  symbol: 'G',
  result: variable('ratio', 'specific gravity on the volume at this moisture'),
  source: basesSource,
  expression: 'G_b / (1 - S_M)',
  variables: {
    G_b: variable('ratio', 'specific gravity on the green volume'),
    S_M: variable('share', 'shrinkage of volume to this moisture', { unit: '%' }),
  },
});
export const usualShrinkRule = formula({
  symbol: 'S_v',
  result: variable('share', 'shrinkage of volume from green to oven-dry, where it is not known', {
    unit: '%',
  }),
  source: usualSource,
  expression: '26.5 G_b',
  empirical: true,
  variables: { G_b: variable('ratio', 'specific gravity on the green volume') },
});
export const ndsRule = formula({
  symbol: 'rho',
  result: variable('density', 'density, with its water', { unit: 'lb/ft3' }),
  source: ndsSource,
  expression: '62.4 G_0 / (1 + 0.009 G_0 M) * (1 + M / 100)',
  empirical: true,
  variables: { G_0: variable('ratio', 'specific gravity on the oven-dry volume'), M },
});
export const gravityFormulas = [densityRule, shrunkRule, gravityRule, usualShrinkRule] as const;

export const saturation = 0.3;
export const waterDensity = 1000;

/** Specific gravity on the volume at `moisture`, from that on the green volume. */
export function gravityAt(
  trace: Trace,
  basic: number,
  moisture: number,
  volumetric: number | undefined,
): number {
  const S_v = volumetric ?? trace.evaluate(usualShrinkRule, { G_b: basic });
  if (moisture >= saturation) {
    trace.note('At or above fibre saturation (30 %) the volume is the green volume.', basesSource);
    return trace.evaluate(gravityRule, { G_b: basic, S_M: 0 });
  }
  const S_M = trace.evaluate(shrunkRule, { S_v, f: saturation, M: moisture });
  return trace.evaluate(gravityRule, { G_b: basic, S_M });
}

export interface BasicGravity {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  readonly volumetric: number | undefined;
}

/** Specific gravity of a timber on its green volume: published, or traced back from its density at 12 %. */
export function basicGravityOf(trace: Trace, timber: Timber): BasicGravity {
  const published = timber.specificGravity('green');
  const shrinkage = timber.shrinkage();
  const volumetric = shrinkage?.volumetric?.middle;
  const density = timber.density();
  if (published && density?.derived !== false) {
    citeTimber(trace, timber, published);
    citeTimber(trace, timber, shrinkage);
    return { ...published.gravity, volumetric };
  }
  // A printed density at 12 % was measured on the timber itself, so it goes before one calculated from specific gravity.
  const printed = density as Density;
  citeTimber(trace, timber, printed);
  // G12 = Gb / (1 - 0.6 Sv) turned round, with Sv = 26.5 Gb where it is not published.
  const back = (rho: number): number => {
    const g12 = rho / (waterDensity * 1.12);
    return volumetric === undefined ? g12 / (1 + 0.6 * usualVolumetric * g12) : g12 * (1 - 0.6 * volumetric);
  };
  trace.note(
    `${timber.name}: ${Math.round(printed.density.middle)} kg/m³ at 12 % moisture is printed; specific gravity on the green volume follows from it.`,
  );
  const { low, middle, high } = printed.density;
  return { low: back(low), middle: back(middle), high: back(high), volumetric };
}

/** Cautions that hold of every density. */
export const densityCautions = (moisture: number) => [
  estimate(
    'boards of one species differ: about one in three lies more than a tenth away from the mean density (common experience)',
  ),
  ...(moisture > 2 ? [outOfRange('over 200 % is more water than most wood can hold')] : []),
];
