// The sorption equation of the Wood Handbook, written once for every recipe that turns air into moisture.
import { formula, letter } from '../../recipe/formula.js';
import { cite } from '../../recipe/source.js';
import type { Work } from '../../recipe/work.js';

export const sorptionSource = cite('fpl-gtr-282', 'Eq. 4-5', {
  read: 'memory',
  also: cite('fpl-gtr-190', 'Eq. 4-5 and Table 4-2', { read: 'memory' }),
});

const T = letter('temperature', 'temperature of the air');
const h = letter('humidity', 'relative humidity as a fraction');
const ratio = (says: string) => letter('ratio', says);

export const molar = formula({
  symbol: 'W',
  gives: ratio('W, a constant of the sorption equation'),
  source: sorptionSource,
  text: '349 + 1.29 T + 0.0135 T^2',
  where: { T },
});
export const monolayer = formula({
  symbol: 'K',
  gives: ratio('K, a constant of the sorption equation'),
  source: sorptionSource,
  text: '0.805 + 0.000736 T - 0.00000273 T^2',
  where: { T },
});
export const firstSite = formula({
  symbol: 'K1',
  gives: ratio('K1, a constant of the sorption equation'),
  source: sorptionSource,
  text: '6.27 - 0.00938 T - 0.000303 T^2',
  where: { T },
});
export const secondSite = formula({
  symbol: 'K2',
  gives: ratio('K2, a constant of the sorption equation'),
  source: sorptionSource,
  text: '1.91 + 0.0407 T - 0.000293 T^2',
  where: { T },
});
export const sorbed = formula({
  symbol: 'M',
  gives: letter('moisture', 'moisture that wood comes to in this air', { in: '%' }),
  source: sorptionSource,
  text: '1800 / W * (K h / (1 - K h) + (K1 K h + 2 K1 K2 K^2 h^2) / (1 + K1 K h + K1 K2 K^2 h^2))',
  where: { W: ratio('W'), K: ratio('K'), K1: ratio('K1'), K2: ratio('K2'), h },
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
  return sorbed.of({
    W: molar.of({ T: temperature }),
    K: monolayer.of({ T: temperature }),
    K1: firstSite.of({ T: temperature }),
    K2: secondSite.of({ T: temperature }),
    h: humidity,
  });
}

/** The same with its lines in the workings. */
export function workEquilibrium(work: Work, temperature: number, humidity: number, says?: string): number {
  const W = work.apply(molar, { T: temperature });
  const K = work.apply(monolayer, { T: temperature });
  const K1 = work.apply(firstSite, { T: temperature });
  const K2 = work.apply(secondSite, { T: temperature });
  return work.apply(sorbed, { W, K, K1, K2, h: humidity }, says);
}
