// Parts of a mix by volume or by mass: their formulas, the way from one measure to the other, and the names of the parts.
import { formatQuantity } from '../../units/format-quantity.js';
import { kinds } from '../../units/kind.js';
import { InputError, nearest, inspectValue } from '../../units/input-error.js';
import { formula, variable } from '../../engine/formula.js';
import type { Trace } from '../../engine/trace.js';
import type { Amount, Measure } from './finish-amount.js';

const ratio = variable('ratio', 'parts of this one');
const allParts = variable('ratio', 'parts in all');

export const shareOfMix = formula({
  symbol: 's',
  result: variable('share', 'share of the mix', { unit: '%' }),
  expression: 'r / R',
  variables: { r: ratio, R: allParts },
  basis: 'definition',
});
export const poured = formula({
  symbol: 'v',
  result: variable('liquid', 'to pour', { unit: 'mL' }),
  expression: 'V r / R',
  variables: { V: variable('liquid', 'batch', { unit: 'mL' }), r: ratio, R: allParts },
  basis: 'definition',
});
export const weighed = formula({
  symbol: 'm',
  result: variable('mass', 'to weigh', { unit: 'g' }),
  expression: 'M r / R',
  variables: { M: variable('mass', 'batch', { unit: 'g' }), r: ratio, R: allParts },
  basis: 'definition',
});
export const partPoured = formula({
  symbol: 'u',
  result: variable('liquid', 'what one part could be', { unit: 'mL' }),
  expression: 'h / r',
  variables: { h: variable('liquid', 'what is there', { unit: 'mL' }), r: ratio },
  basis: 'definition',
});
export const partWeighed = formula({
  symbol: 'u',
  result: variable('mass', 'what one part could be', { unit: 'g' }),
  expression: 'h / r',
  variables: { h: variable('mass', 'what is there', { unit: 'g' }), r: ratio },
  basis: 'definition',
});
export const toMass = formula({
  symbol: 'm',
  result: variable('mass', 'mass', { unit: 'g' }),
  expression: 'rho v',
  variables: {
    rho: variable('density', 'density', { unit: 'g/mL' }),
    v: variable('liquid', 'volume', { unit: 'mL' }),
  },
  basis: 'definition',
});
export const toVolume = formula({
  symbol: 'v',
  result: variable('liquid', 'volume', { unit: 'mL' }),
  expression: 'm / rho',
  variables: {
    m: variable('mass', 'mass', { unit: 'g' }),
    rho: variable('density', 'density', { unit: 'g/mL' }),
  },
  basis: 'definition',
});
// The slip that this recipe is asked to explain: what is added, against what the mix then holds.
export const added = formula({
  symbol: 't',
  result: variable('share', 'thinner added, against what it is added to', { unit: '%' }),
  expression: 'r / (R - r)',
  variables: { r: variable('ratio', 'parts of thinner'), R: allParts },
  basis: 'definition',
});
export const ofMix = formula({
  symbol: 's',
  result: variable('share', 'the same thinner as a share of the mix', { unit: '%' }),
  expression: 't / (1 + t)',
  variables: { t: variable('share', 'thinner added, against what it is added to', { unit: '%' }) },
  basis: 'definition',
});

type Densities = Readonly<Record<string, number>> | undefined;

export const firstOf = (have: Readonly<Record<string, Amount>> | undefined): Amount | undefined =>
  have ? Object.values(have)[0] : undefined;

export function part(measure: Measure, h: number, r: number, trace: Trace, label: string): number {
  return measure === 'mass'
    ? trace.evaluate(partWeighed, { h, r }, label)
    : trace.evaluate(partPoured, { h, r }, label);
}

export function checkNames(
  where: string,
  record: Readonly<Record<string, unknown>> | undefined,
  names: readonly string[],
): void {
  for (const n of Object.keys(record ?? {})) {
    if (names.includes(n)) continue;
    const near = nearest(n, names);
    throw new InputError({
      field: `${where}.${n.slice(0, 60)}`,
      message: `got ${inspectValue(n)}, which is not among the parts; takes ${names
        .map((p) => inspectValue(p))
        .join(', ')
        .slice(0, 300)}${near ? `; did you mean ${inspectValue(near)}?` : ''}`,
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
  throw new InputError({
    field: `densities.${name.slice(0, 60)}`,
    message: `missing; ${where} is ${kinds[got].called} while the parts are by ${got === 'mass' ? 'volume' : 'mass'}: takes the density of ${inspectValue(name)} such as "0.8 kg/L", or set by to ${inspectValue(got === 'mass' ? 'mass' : 'volume')}`,
  });
}

export function converted(
  name: string,
  a: Amount,
  to: Measure,
  densities: Densities,
  where: string,
  trace: Trace,
): number {
  if (a.kind === to) return a.value;
  const rho = densityOf(name, densities, where, a.kind);
  return to === 'mass'
    ? trace.evaluate(toMass, { rho, v: a.value }, `${name}: mass`)
    : trace.evaluate(toVolume, { m: a.value, rho }, `${name}: volume`);
}

/** A batch asked for in kilograms of parts by volume, or in litres of parts by mass: through the density of the mix. */
export function batchIn(
  measure: Measure,
  batch: Amount,
  parts: Readonly<Record<string, number>>,
  R: number,
  densities: Densities,
  trace: Trace,
): number {
  const each = Object.entries(parts).map(([n, r]) => ({
    r,
    rho: densityOf(n, densities, 'batch', batch.kind),
  }));
  const rho =
    measure === 'liquid'
      ? each.reduce((sum, p) => sum + p.r * p.rho, 0) / R
      : R / each.reduce((sum, p) => sum + p.r / p.rho, 0);
  if (!trace.silent)
    trace.note(`Density of the mix, from its parts: ${formatQuantity({ kind: 'density', value: rho })}.`);
  return measure === 'liquid'
    ? trace.evaluate(toVolume, { m: batch.value, rho }, 'the batch as volume')
    : trace.evaluate(toMass, { rho, v: batch.value }, 'the batch as mass');
}
