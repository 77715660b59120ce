import { cumulativeNormal, densityNormal } from 'vega-statistics';

/** Clearances that fit, and how they vary: metres. */
export interface FitSpread {
  readonly tightest: number;
  readonly loosest: number;
  /** Clearance on average. */
  readonly mean: number;
  /** Standard deviation that each joint has by itself. */
  readonly own: number;
  /** Standard deviation of a setting that all joints share, such as a fence or a cutter. */
  readonly common: number;
}

const inside = (s: FitSpread, shift: number): number => {
  const at = s.mean + shift;
  if (s.own <= 0) return at >= s.tightest && at <= s.loosest ? 1 : 0;
  return Math.max(0, cumulativeNormal(s.loosest, at, s.own) - cumulativeNormal(s.tightest, at, s.own));
};

/**
 * Chance that all of `joints` fit. Each joint's own error is independent; the error of the setting is one for all, so its
 * chance is weighed over the setting: the integral of density(setting) P(one fits | setting)^n, by Simpson's rule over
 * eight standard deviations to each side. Without a common error it is P^n; without an own one, P.
 */
export function chanceAllFit(s: FitSpread, joints: number): number {
  if (s.common <= 0) return inside(s, 0) ** joints;
  if (s.own <= 0)
    return Math.max(
      0,
      cumulativeNormal(s.loosest, s.mean, s.common) - cumulativeNormal(s.tightest, s.mean, s.common),
    );
  const steps = 2000;
  const width = (16 * s.common) / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const shift = -8 * s.common + i * width;
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * densityNormal(shift, 0, s.common) * inside(s, shift) ** joints;
  }
  return Math.min(1, (sum * width) / 3);
}
