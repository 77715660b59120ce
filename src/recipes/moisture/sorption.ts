// The sorption equation of the Wood Handbook, written once for every recipe that turns air into moisture.
import { formula, variable } from '../../engine/formula.js';
import { cite } from '../../engine/source.js';
import type { Trace } from '../../engine/trace.js';

/** Table 4-2 is calculated from Eq. 4-5; the constants below give all of its 342 cells that were read, within 0.07 %. */
export const sorptionSource = cite('fpl-gtr-190', 'Eq. 4-5, p. 4-3, by Table 4-2, p. 4-4', {
  also: cite('fpl-gtr-282', 'Eq. 4-5'),
});

const T = variable('temperature', 'temperature of the air', { unit: 'degC' });
const h = variable('humidity', 'relative humidity as a fraction', { unit: 'fraction' });
const ratio = (label: string) => variable('ratio', label);

export const molar = formula({
  symbol: 'W',
  result: ratio('W, a constant of the sorption equation'),
  source: sorptionSource,
  expression: '349 + 1.29 T + 0.0135 T^2',
  empirical: true,
  variables: { T },
});
export const monolayer = formula({
  symbol: 'K',
  result: ratio('K, a constant of the sorption equation'),
  source: sorptionSource,
  expression: '0.805 + 0.000736 T - 0.00000273 T^2',
  empirical: true,
  variables: { T },
});
export const firstSite = formula({
  symbol: 'K1',
  result: ratio('K1, a constant of the sorption equation'),
  source: sorptionSource,
  expression: '6.27 - 0.00938 T - 0.000303 T^2',
  empirical: true,
  variables: { T },
});
export const secondSite = formula({
  symbol: 'K2',
  result: ratio('K2, a constant of the sorption equation'),
  source: sorptionSource,
  expression: '1.91 + 0.0407 T - 0.000293 T^2',
  empirical: true,
  variables: { T },
});
export const sorbed = formula({
  symbol: 'M',
  result: variable('moisture', 'moisture that wood comes to in this air', { unit: '%' }),
  source: sorptionSource,
  expression: '1800 / W * (K h / (1 - K h) + (K1 K h + 2 K1 K2 K^2 h^2) / (1 + K1 K h + K1 K2 K^2 h^2))',
  empirical: true,
  variables: { W: ratio('W'), K: ratio('K'), K1: ratio('K1'), K2: ratio('K2'), h },
});

export const sorptionSteps = [molar, monolayer, firstSite, secondSite, sorbed] as const;

/** The air the recipes take: colder or hotter the equation has no sense for wood in use. */
export const airLimits = { coldest: '-40 degC', hottest: '120 degC' } as const;

/** Table 4-2, against which the equation is checked, spans this air: -1.1 to 98.9 °C, 5 to 95 %, with a little to spare. */
export const inTable = (temperature: number, humidity: number): boolean => {
  // In hundredths of a per cent.
  const h = Math.round(humidity * 10_000);
  return temperature >= -1.2 && temperature <= 99 && h <= 9501 && (h >= 499 || humidity === 0);
};
export const outsideTable =
  'the sorption equation is checked against Table 4-2 from -1.1 to 98.9 °C and 5 to 95 % relative humidity; this air lies outside it';

/** Equilibrium moisture as a fraction, from °C and a fraction of humidity. */
export function equilibrium(temperature: number, humidity: number): number {
  return sorbed.evaluate({
    W: molar.evaluate({ T: temperature }),
    K: monolayer.evaluate({ T: temperature }),
    K1: firstSite.evaluate({ T: temperature }),
    K2: secondSite.evaluate({ T: temperature }),
    h: humidity,
  });
}

/** The same with its lines in the workings. */
export function workEquilibrium(trace: Trace, temperature: number, humidity: number, label?: string): number {
  const W = trace.evaluate(molar, { T: temperature });
  const K = trace.evaluate(monolayer, { T: temperature });
  const K1 = trace.evaluate(firstSite, { T: temperature });
  const K2 = trace.evaluate(secondSite, { T: temperature });
  return trace.evaluate(sorbed, { W, K, K1, K2, h: humidity }, label);
}
