import type { Quantity } from '../units/quantity.js';
import { withUnitOf, type Written } from './range.js';

/** A distribution as written with {@link normal}, {@link uniform}, {@link triangular} or {@link empirical}. */
export class DistributionSpec {
  // Private, so that no other type passes for a distribution.
  readonly #isDistribution = true;
  constructor(
    readonly shape: 'normal' | 'uniform' | 'triangular' | 'measured' | 'tolerance',
    readonly values: readonly (string | number | Quantity)[],
  ) {}
  static is(value: unknown): value is DistributionSpec {
    return typeof value === 'object' && value !== null && #isDistribution in value;
  }
}

/** Normal: mean and standard deviation. Stands in the place of an input of `uncertain`. */
export const normal = (mean: Written, deviation: Written): DistributionSpec =>
  new DistributionSpec('normal', [mean, deviation]);
/** Anything from low to high, all equally likely. */
export const uniform = (low: Written, high: Written): DistributionSpec =>
  new DistributionSpec('uniform', [low, high]);
/** Low, most likely, high. */
export const triangular = (low: Written, mode: Written, high: Written): DistributionSpec =>
  new DistributionSpec('triangular', [low, mode, high]);
/** A list of measurements: values between them are drawn as often as the list has them. */
export const empirical = (values: readonly Written[]): DistributionSpec =>
  new DistributionSpec('measured', values);

/**
 * `'900 mm +- 2 mm'`: normal, 95 % within the two bounds (coverage factor 2 of the Guide to the Expression of Uncertainty in
 * Measurement); `'880 mm .. 920 mm'`: uniform. Undefined for other text.
 */
export function distributionFromText(text: string): DistributionSpec | undefined {
  const [mean, tolerance, more] = text.split(/\s*(?:\+-|\+\/-|±)\s*/);
  if (mean !== undefined && tolerance !== undefined && more === undefined)
    return new DistributionSpec('tolerance', [withUnitOf(mean, tolerance), tolerance]);
  const ends = text.split(/\s*\.\.\.?\s*/);
  return ends.length === 2 && ends.every((end) => end !== '')
    ? new DistributionSpec('uniform', ends)
    : undefined;
}
