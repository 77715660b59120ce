// Wood lags behind the air. Each mode of one-dimensional diffusion is a first-order lag, exact for air that runs straight from
// one month's middle to the next; slab-lag.ts adds the modes up.
import { formula, variable } from '../../engine/formula.js';

export const lagRule = formula({
  symbol: 'tau',
  result: variable('time', 'time constant of the lag', { unit: 'day' }),
  basis: 'estimate',
  expression: 's t^2 / (pi^2 d)',
  empirical: true,
  variables: {
    s: variable('ratio', 'slowing by the finish at this thickness'),
    t: variable('length', 'thickness, open on both faces', { unit: 'mm' }),
    d: variable('ratio', 'diffusion across the grain, mm² a day'),
  },
});

/**
 * Slowing by finish and by which faces are open: estimates from common experience, as a factor on the time constant of a
 * board of 25 mm. A finish slows a thicker slab by less, since there the wood itself is the slower part.
 */
export const sealings = {
  bare: 1,
  oiled: 2,
  'one face': 4,
  varnished: 6,
} as const;
export type Sealing = keyof typeof sealings;

/** Diffusion of moisture across the grain near 10 % moisture and 20 °C, mm² a day (1e-10 m²/s): an order of magnitude, species differ threefold. */
export const diffusion = 8.64;

export const year = 365.25 * 86400;

/**
 * Moisture of one mode at the middle of each month, in the year that repeats. `air` holds what it would come to, `tau` is in
 * seconds; 0 gives `air` itself, and the longer it is the nearer every month comes to the mean.
 */
export function lagged(air: readonly number[], tau: number): number[] {
  const n = air.length;
  const step = year / n;
  if (tau === 0) return [...air];
  const x = step / tau;
  const gone = -Math.expm1(-x);
  const kept = 1 - gone;
  // The weight of the month's end: (x - 1 + e^-x)/x.
  const weight = (x - gone) / x;
  const forward = (m: number, a: number, b: number): number => m * kept + a * gone + (b - a) * weight;
  // One turn of the year is a straight line in where it starts, so the year that repeats follows at once.
  let turned = 0;
  for (let i = 0; i < n; i++) turned = forward(turned, air[i] as number, air[(i + 1) % n] as number);
  let m = turned / -Math.expm1(-x * n);
  const out: number[] = [];
  for (let i = 0; i < n; i++) {
    out.push(m);
    m = forward(m, air[i] as number, air[(i + 1) % n] as number);
  }
  return out;
}
