// Parts of a mix by volume or by mass: their formulas, the way from one measure to the other, and the names of the parts.
import { formatQuantity } from '../../quantities/format.js';
import { kinds } from '../../quantities/kind.js';
import { Refusal, nearest, shown } from '../../quantities/refusal.js';
import { formula, letter } from '../../recipe/formula.js';
import type { Work } from '../../recipe/work.js';
import type { Amount, Measure } from './amount.js';

const ratio = letter('ratio', 'parts of this one');
const allParts = letter('ratio', 'parts in all');

export const shareOfMix = formula({
  symbol: 's',
  gives: letter('share', 'share of the mix', { in: '%' }),
  text: '100 r / R',
  where: { r: ratio, R: allParts },
  basis: 'definition',
});
export const poured = formula({
  symbol: 'v',
  gives: letter('liquid', 'to pour', { in: 'mL' }),
  text: 'V r / R',
  where: { V: letter('liquid', 'batch', { in: 'mL' }), r: ratio, R: allParts },
  basis: 'definition',
});
export const weighed = formula({
  symbol: 'm',
  gives: letter('mass', 'to weigh', { in: 'g' }),
  text: 'M r / R',
  where: { M: letter('mass', 'batch', { in: 'g' }), r: ratio, R: allParts },
  basis: 'definition',
});
export const partPoured = formula({
  symbol: 'u',
  gives: letter('liquid', 'what one part could be', { in: 'mL' }),
  text: 'h / r',
  where: { h: letter('liquid', 'what is there', { in: 'mL' }), r: ratio },
  basis: 'definition',
});
export const partWeighed = formula({
  symbol: 'u',
  gives: letter('mass', 'what one part could be', { in: 'g' }),
  text: 'h / r',
  where: { h: letter('mass', 'what is there', { in: 'g' }), r: ratio },
  basis: 'definition',
});
export const toMass = formula({
  symbol: 'm',
  gives: letter('mass', 'mass', { in: 'g' }),
  text: 'rho v',
  where: { rho: letter('density', 'density', { in: 'g/mL' }), v: letter('liquid', 'volume', { in: 'mL' }) },
  basis: 'definition',
});
export const toVolume = formula({
  symbol: 'v',
  gives: letter('liquid', 'volume', { in: 'mL' }),
  text: 'm / rho',
  where: { m: letter('mass', 'mass', { in: 'g' }), rho: letter('density', 'density', { in: 'g/mL' }) },
  basis: 'definition',
});
// The slip that this recipe is asked to explain: what is added, against what the mix then holds.
export const added = formula({
  symbol: 't',
  gives: letter('share', 'thinner added, against what it is added to', { in: '%' }),
  text: '100 r / (R - r)',
  where: { r: letter('ratio', 'parts of thinner'), R: allParts },
  basis: 'definition',
});
export const ofMix = formula({
  symbol: 's',
  gives: letter('share', 'the same thinner as a share of the mix', { in: '%' }),
  text: '100 t / (100 + t)',
  where: { t: letter('share', 'thinner added, against what it is added to', { in: '%' }) },
  basis: 'definition',
});

type Densities = Readonly<Record<string, number>> | undefined;

export const firstOf = (have: Readonly<Record<string, Amount>> | undefined): Amount | undefined =>
  have ? Object.values(have)[0] : undefined;

export function part(measure: Measure, h: number, r: number, work: Work, says: string): number {
  return measure === 'mass'
    ? work.apply(partWeighed, { h, r }, says)
    : work.apply(partPoured, { h, r }, says);
}

export function checkNames(
  where: string,
  record: Readonly<Record<string, unknown>> | undefined,
  names: readonly string[],
): void {
  for (const n of Object.keys(record ?? {})) {
    if (names.includes(n)) continue;
    const near = nearest(n, names);
    throw new Refusal({
      field: `${where}.${n.slice(0, 60)}`,
      says: `got ${shown(n)}, which is not among the parts; takes ${names
        .map((p) => shown(p))
        .join(', ')
        .slice(0, 300)}${near ? `; did you mean ${shown(near)}?` : ''}`,
    });
  }
}

export function thinnerOf(names: readonly string[], wanted: string | undefined): string {
  if (wanted !== undefined) {
    checkNames('thinner', { [wanted]: 1 }, names);
    return wanted;
  }
  return (
    names.find((n) => /thinner|spirit|turp|solvent|alcohol|meths|naphtha|acetone|water/i.test(n)) ??
    (names[names.length - 1] as string)
  );
}

function densityOf(name: string, densities: Densities, where: string, got: Measure): number {
  const d = densities?.[name];
  if (d !== undefined) return d;
  throw new Refusal({
    field: `densities.${name.slice(0, 60)}`,
    says: `missing; ${where} is ${kinds[got].called} while the parts are by ${got === 'mass' ? 'volume' : 'mass'}: takes the density of ${shown(name)} such as "0.8 kg/L", or set by to ${shown(got === 'mass' ? 'mass' : 'volume')}`,
  });
}

export function converted(
  name: string,
  a: Amount,
  to: Measure,
  densities: Densities,
  where: string,
  work: Work,
): number {
  if (a.kind === to) return a.value;
  const rho = densityOf(name, densities, where, a.kind);
  return to === 'mass'
    ? work.apply(toMass, { rho, v: a.value }, `${name}: mass`)
    : work.apply(toVolume, { m: a.value, rho }, `${name}: volume`);
}

/** A batch asked for in kilograms of parts by volume, or in litres of parts by mass: through the density of the mix. */
export function batchIn(
  measure: Measure,
  batch: Amount,
  parts: Readonly<Record<string, number>>,
  R: number,
  densities: Densities,
  work: Work,
): number {
  const each = Object.entries(parts).map(([n, r]) => ({
    r,
    rho: densityOf(n, densities, 'batch', batch.kind),
  }));
  const rho =
    measure === 'liquid'
      ? each.reduce((sum, p) => sum + p.r * p.rho, 0) / R
      : R / each.reduce((sum, p) => sum + p.r / p.rho, 0);
  if (!work.silent)
    work.say(`Density of the mix, from its parts: ${formatQuantity({ kind: 'density', value: rho })}.`);
  return measure === 'liquid'
    ? work.apply(toVolume, { m: batch.value, rho }, 'the batch as volume')
    : work.apply(toMass, { rho, v: batch.value }, 'the batch as mass');
}
