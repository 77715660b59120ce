// One-dimensional diffusion through a slab with a finish on both faces, as a sum of first-order lags.
import { diffusion, lagged, sealings, type Sealing } from './emc-lag.js';

/** One mode of the slab: its share of the mean moisture and its time constant, seconds. */
export interface LagMode {
  readonly weight: number;
  readonly tau: number;
}

/** Thickness at which the slowing of a finish is stated, metres. */
const stated = 0.025;
const modes = 40;
const day = 86400;

/** The n-th root of b tan b = Bi, in the n-th half turn. */
function root(n: number, biot: number): number {
  if (biot === Infinity) return (n - 0.5) * Math.PI;
  let [low, high] = [(n - 1) * Math.PI, (n - 0.5) * Math.PI];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    // Between a zero of the sine and the next of the cosine the tangent is positive and rises.
    if (middle * Math.tan(middle) < biot) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Resistance of the wood over that of the finish, for half a thickness in metres. */
function biotOf(sealing: Sealing, thickness: number): number {
  const slowing = sealings[sealing];
  if (sealing === 'one face' || slowing === 1) return Infinity;
  const first = Math.PI / (2 * Math.sqrt(slowing));
  return (first * Math.tan(first) * thickness) / stated;
}

/**
 * The modes of a slab open on both faces, or on one, which is half of a slab twice as thick. Thickness in metres. What
 * the modes left out weigh follows the air at once. Source: the series for a slab with a surface resistance, Crank, The
 * Mathematics of Diffusion, 4.3.6 (recalled).
 */
export function slabModes(thickness: number, sealing: Sealing): readonly LagMode[] {
  const whole = sealing === 'one face' ? 2 * thickness : thickness;
  const biot = biotOf(sealing, whole);
  const scale = ((whole * 1000) / 2) ** 2 / diffusion;
  return Array.from({ length: modes }, (_, i) => {
    const beta = root(i + 1, biot);
    const weight =
      biot === Infinity ? 2 / beta ** 2 : (2 * biot ** 2) / (beta ** 2 * (beta ** 2 + biot ** 2 + biot));
    return { weight, tau: (scale / beta ** 2) * day };
  });
}

/** Slowing of the first mode against a bare slab of this thickness. */
export const slowingOf = (thickness: number, sealing: Sealing): number => {
  const [first] = slabModes(thickness, sealing) as [LagMode];
  const [bare] = slabModes(thickness, 'bare') as [LagMode];
  return first.tau / bare.tau;
};

/** Mean moisture of the slab at the middle of each month, in the year that repeats. */
export function slabMoisture(air: readonly number[], slab: readonly LagMode[]): number[] {
  const rest = 1 - slab.reduce((sum, mode) => sum + mode.weight, 0);
  const wood = air.map((m) => m * rest);
  for (const { weight, tau } of slab)
    lagged(air, tau).forEach((m, i) => (wood[i] = (wood[i] as number) + weight * m));
  return wood;
}
