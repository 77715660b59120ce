import {
  clearWoodStress,
  compressionAcross,
  gradedModulus,
  lowerLimit,
  sizeFactor,
} from './clear-wood-formulas.js';
import { durationFactor, factor } from './factors.js';
import type { Duration } from './load-case.js';

export type WoodGroup = 'softwood' | 'hardwood';

/** How dry a graded piece is: `green`, at most 19 %, at most 15 % (pieces up to 4 in thick). */
export type Seasoning = 'green' | '19%' | '15%';

const seasoningFactor = (dry: Seasoning, of: 'bending' | 'modulus' | 'shear' | 'across'): number =>
  factor(`seasoning.${dry}.${of}`);

/** A property of green clear wood: mean in pascals, and its standard deviation where a table prints one. */
export interface ClearWood {
  readonly mean: number;
  readonly deviation?: number;
}

/** Lower 5 % limit in pascals, by the printed deviation or else the usual coefficient of variation. */
export function fifthPercentile(wood: ClearWood, property: 'bending' | 'shear'): number {
  const V = wood.deviation === undefined ? factor(`spread.${property}`) : wood.deviation / wood.mean;
  return lowerLimit.evaluate({ f_m: wood.mean, z: factor('exclusion'), V });
}

/** A visual grade of clear wood. */
export interface GradedPiece {
  readonly group: WoodGroup;
  /** Strength ratio, 0 to 1. */
  readonly ratio: number;
  readonly seasoning: Seasoning;
  readonly duration?: Duration;
}

/** Bending stress of a visual grade by ASTM D245, pascals; depth in metres. */
export function gradedBending(wood: ClearWood, piece: GradedPiece, depth: number): number {
  return clearWoodStress.evaluate({
    f_5: fifthPercentile(wood, 'bending'),
    n: factor(`divisor.bending.${piece.group}`),
    R: piece.ratio,
    C_d: sizeFactor.evaluate({ d: depth }),
    C_s: seasoningFactor(piece.seasoning, 'bending'),
    C_D: durationFactor('nds', piece.duration ?? 'medium', 1).value,
  });
}

/** Shear stress along the grain of a visual grade by ASTM D245, pascals; its ratio is that of shear. */
export function gradedShear(wood: ClearWood, piece: GradedPiece): number {
  return clearWoodStress.evaluate({
    f_5: fifthPercentile(wood, 'shear'),
    n: factor(`divisor.shear.${piece.group}`),
    R: piece.ratio,
    C_d: 1,
    C_s: seasoningFactor(piece.seasoning, 'shear'),
    C_D: durationFactor('nds', piece.duration ?? 'medium', 1).value,
  });
}

/** Compression across the grain by ASTM D245, pascals: a mean, with no 5 % limit and no duration of load. */
export function gradedAcross(mean: number, dry: Seasoning): number {
  return compressionAcross.evaluate({
    f_m: mean,
    n: factor('divisor.across'),
    C_s: seasoningFactor(dry, 'across'),
  });
}

/** Quality factor of ASTM D245: what a grade of a strength ratio leaves of the stiffness. */
export const qualityFactor = (ratio: number): number => (ratio >= 0.55 ? 1 : ratio >= 0.45 ? 0.9 : 0.8);

/** Mean modulus of elasticity of a visual grade by ASTM D245, pascals, from the green mean of bending tests. */
export function gradedModulusOf(mean: number, ratio: number, dry: Seasoning): number {
  return gradedModulus.evaluate({ E_m: mean, C_s: seasoningFactor(dry, 'modulus'), Q: qualityFactor(ratio) });
}
