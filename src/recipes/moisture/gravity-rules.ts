// Density and specific gravity at any moisture: the handbook's relations, shared by the recipes of density and weight.
import { formula, letter } from '../../recipe/formula.js';
import { estimate, outOfRange } from '../../recipe/caution.js';
import { cite } from '../../recipe/source.js';
import type { Work } from '../../recipe/work.js';
import { citeTimber } from '../../timber/field.js';
import { usualVolumetric, type Density } from '../../timber/gravity.js';
import type { Timber } from '../../timber/timber.js';

export const densitySource = cite('fpl-gtr-190', 'ch. 4, p. 4-9 to 4-11');
const gravitySource = cite('fpl-gtr-190', 'ch. 4, specific gravity and volumetric shrinkage', {
  read: 'memory',
});
const ndsSource = cite('engineering-toolbox-wood-density', 'NDS form of density');

const M = letter('moisture', 'moisture content', { in: '%' });
const density = letter('density', 'density, with its water');

export const densityRule = formula({
  symbol: 'rho',
  gives: density,
  source: densitySource,
  text: 'rho_w G * (1 + M / 100)',
  where: {
    rho_w: letter('density', 'density of water'),
    G: letter('ratio', 'specific gravity on the volume at this moisture'),
    M,
  },
});
export const shrunkRule = formula({
  symbol: 'S_M',
  gives: letter('share', 'shrinkage of volume from green to this moisture', { in: '%' }),
  source: gravitySource,
  text: 'S_v * (f - M) / f',
  where: {
    S_v: letter('share', 'shrinkage of volume from green to ovendry', { in: '%' }),
    f: letter('moisture', 'moisture at fibre saturation', { in: '%' }),
    M,
  },
});
export const gravityRule = formula({
  symbol: 'G',
  gives: letter('ratio', 'specific gravity on the volume at this moisture'),
  source: gravitySource,
  text: 'G_b / (1 - S_M / 100)',
  where: {
    G_b: letter('ratio', 'specific gravity on the green volume'),
    S_M: letter('share', 'shrinkage of volume to this moisture', { in: '%' }),
  },
});
export const usualShrinkRule = formula({
  symbol: 'S_v',
  gives: letter('share', 'shrinkage of volume from green to ovendry, where it is not known', { in: '%' }),
  source: gravitySource,
  text: '26.5 G_b',
  where: { G_b: letter('ratio', 'specific gravity on the green volume') },
});
export const ndsRule = formula({
  symbol: 'rho',
  gives: letter('density', 'density, with its water', { in: 'lb/ft3', bare: true }),
  source: ndsSource,
  text: '62.4 G_0 / (1 + 0.009 G_0 M) * (1 + M / 100)',
  where: { G_0: letter('ratio', 'specific gravity on the ovendry volume'), M },
});
export const gravityFormulas = [densityRule, shrunkRule, gravityRule, usualShrinkRule, ndsRule] as const;

export const saturation = 0.3;
export const waterDensity = 1000;

/** Specific gravity on the volume at `moisture`, from that on the green volume. */
export function gravityAt(
  work: Work,
  basic: number,
  moisture: number,
  volumetric: number | undefined,
): number {
  const S_v = volumetric ?? work.apply(usualShrinkRule, { G_b: basic });
  if (moisture >= saturation) {
    work.say('At or above fibre saturation (30 %) the volume is the green volume.', gravitySource);
    return work.apply(gravityRule, { G_b: basic, S_M: 0 });
  }
  const S_M = work.apply(shrunkRule, { S_v, f: saturation, M: moisture });
  return work.apply(gravityRule, { G_b: basic, S_M });
}

export interface BasicGravity {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  readonly volumetric: number | undefined;
}

/** Specific gravity of a timber on its green volume: published, or traced back from its density at 12 %. */
export function basicGravityOf(work: Work, timber: Timber): BasicGravity {
  const published = timber.specificGravity('green');
  const shrinkage = timber.shrinkage();
  const volumetric = shrinkage?.volumetric?.middle;
  const density = timber.density();
  if (published && density?.derived !== false) {
    citeTimber(work, timber, published);
    citeTimber(work, timber, shrinkage);
    return { ...published.gravity, volumetric };
  }
  // A printed density at 12 % was measured on the timber itself, so it goes before one reckoned from specific gravity.
  const printed = density as Density;
  citeTimber(work, timber, printed);
  // G12 = Gb / (1 - 0.6 Sv) turned round, with Sv = 26.5 Gb where it is not published.
  const back = (rho: number): number => {
    const g12 = rho / (waterDensity * 1.12);
    return volumetric === undefined ? g12 / (1 + 0.6 * usualVolumetric * g12) : g12 * (1 - 0.6 * volumetric);
  };
  work.say(
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
