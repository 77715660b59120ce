import { quantileNormal } from 'vega-statistics';
import type { Kind } from '../units/kind.js';
import { toQuantity } from '../units/parse-quantity.js';
import { InputError, inspectValue } from '../units/input-error.js';
import { unitOf } from '../units/unit.js';
import type { Field } from '../engine/field.js';
import { isNumberField, quantityPart } from './frame-columns.js';
import { ValueList } from './range.js';
import { withFieldPath } from './field-path.js';

/** How one input spreads: a draw of 0 to 1 becomes a value. */
export interface InputDistribution {
  readonly name: string;
  readonly label: string;
  /** The value below which a share `u` of cases lies; a base-unit number, or a thing named. */
  readonly quantile: (u: number) => unknown;
  readonly numeric: boolean;
}

/** A spread as a person writes it with {@link normal}, {@link uniform}, {@link triangular} or {@link empirical}. */
export class DistributionSpec {
  constructor(
    readonly shape: 'normal' | 'uniform' | 'triangular' | 'measured' | 'tolerance',
    readonly values: readonly unknown[],
  ) {}
}

/** Normal: mean and standard deviation. Stands in the place of an input of `uncertain`. */
export const normal = (mean: unknown, deviation: unknown): never =>
  new DistributionSpec('normal', [mean, deviation]) as never;
/** Anything from low to high, all alike. */
export const uniform = (low: unknown, high: unknown): never =>
  new DistributionSpec('uniform', [low, high]) as never;
/** Low, most likely, high. */
export const triangular = (low: unknown, mode: unknown, high: unknown): never =>
  new DistributionSpec('triangular', [low, mode, high]) as never;
/** A list of measurements: values between them are drawn as often as the list has them. */
export const empirical = (values: readonly unknown[]): never =>
  new DistributionSpec('measured', values) as never;

/**
 * Reads what was written for an input: a spread, `'900 mm +- 2 mm'` (normal, 95 % within the two bounds, the coverage
 * factor 2 of the Guide to the Expression of Uncertainty in Measurement), `'880 mm .. 920 mm'` (uniform), a list of
 * named things (each as likely), or undefined for a fixed value. @throws InputError
 */
export function inputDistribution(name: string, whole: Field, value: unknown): InputDistribution | undefined {
  const field = quantityPart(whole);
  const written =
    value instanceof DistributionSpec
      ? value
      : typeof value === 'string' && isNumberField(field)
        ? fromText(value)
        : undefined;
  const each =
    value instanceof ValueList
      ? value.values
      : Array.isArray(value) && field.kind !== 'list' && field.kind !== 'table'
        ? value
        : undefined;
  const read = (v: unknown): unknown => withFieldPath('', name, () => field.read(v));
  if (each && !written) {
    if (each.length === 0)
      throw new InputError({ field: name, message: 'got an empty list, takes at least one value' });
    const values = each.map((v) => withFieldPath('', name, () => whole.read(v)));
    return {
      name,
      label: `one of ${values.length} values`,
      numeric: false,
      quantile: (u) => values[Math.min(values.length - 1, Math.floor(u * values.length))],
    };
  }
  if (!written) return undefined;
  if (!isNumberField(field))
    throw new InputError({ field: name, message: `got a spread, takes ${field.expects}; use each([...])` });
  // A width of spread must not fall under the field's own limits, so it is read as a difference.
  const size = (v: unknown): number => differenceOf(name, field, v);
  const numbers = (list: readonly unknown[]): number[] => list.map((v) => read(v) as number);
  const inside = (u: number): number => Math.min(1 - 1e-12, Math.max(1e-12, u));
  const keep = (x: number): number => Math.min(field.max ?? Infinity, Math.max(field.min ?? -Infinity, x));
  switch (written.shape) {
    case 'tolerance':
    case 'normal': {
      const mean = read(written.values[0]) as number;
      const sd = size(written.values[1]) / (written.shape === 'tolerance' ? 2 : 1);
      if (!(sd >= 0))
        throw new InputError({
          field: name,
          message: `got a spread of ${inspectValue(written.values[1])}, takes one of nought or more`,
        });
      return {
        name,
        label: 'normal',
        numeric: true,
        quantile: (u) => (sd === 0 ? mean : keep(quantileNormal(inside(u), mean, sd))),
      };
    }
    case 'uniform': {
      const [low, high] = numbers(written.values) as [number, number];
      if (!(low <= high))
        throw new InputError({
          field: name,
          message: 'got a low end above the high one, takes low, then high',
        });
      return { name, label: 'uniform', numeric: true, quantile: (u) => low + (high - low) * u };
    }
    case 'triangular': {
      const [low, mode, high] = numbers(written.values) as [number, number, number];
      if (!(low <= mode && mode <= high && low < high))
        throw new InputError({ field: name, message: 'takes low, most likely, high in that order' });
      const cut = (mode - low) / (high - low);
      return {
        name,
        label: 'triangular',
        numeric: true,
        quantile: (u) =>
          u < cut
            ? low + Math.sqrt(u * (high - low) * (mode - low))
            : high - Math.sqrt((1 - u) * (high - low) * (high - mode)),
      };
    }
    case 'measured': {
      const sorted = numbers(written.values).sort((a, b) => a - b);
      if (sorted.length < 2)
        throw new InputError({ field: name, message: `got ${sorted.length} measurements, takes at least 2` });
      return {
        name,
        label: `${sorted.length} measurements`,
        numeric: true,
        quantile: (u) => between(sorted, u),
      };
    }
  }
}

/** The value below which a share `u` of a sorted list of two or more lies, drawn straight between neighbours. */
export function between(sorted: ArrayLike<number>, u: number): number {
  const at = Math.min(1, Math.max(0, u)) * (sorted.length - 1);
  const i = Math.min(sorted.length - 2, Math.floor(at));
  const a = sorted[i] as number;
  return a + ((sorted[i + 1] as number) - a) * (at - i);
}

function fromText(text: string): DistributionSpec | undefined {
  const tolerance = text.split(/\s*(?:\+-|\+\/-|±)\s*/);
  if (tolerance.length === 2) {
    const unit = /[^\d\s.+-].*$/.exec(tolerance[1] as string)?.[0];
    const mean =
      /^[+-]?[\d.]+$/.test(tolerance[0] as string) && unit ? `${tolerance[0]} ${unit}` : tolerance[0];
    return new DistributionSpec('tolerance', [mean, tolerance[1]]);
  }
  const ends = text.split(/\s*\.\.\.?\s*/);
  if (ends.length === 2 && ends[0] !== '' && ends[1] !== '') return new DistributionSpec('uniform', ends);
  return undefined;
}

/** A width of spread as a number of the base unit. @throws InputError */
function differenceOf(name: string, field: Field, value: unknown): number {
  const n = withFieldPath('', name, () => toQuantity(value, field.kind as Kind).value);
  if (field.kind !== 'temperature') return n;
  // A difference of temperatures has no offset: 2 degF is 1.1 degC. A temperature that could be read names its unit.
  const unit = (/[A-Za-z°].*$/.exec(String(value)) as RegExpExecArray)[0];
  return n - unitOf('temperature', unit.replace('°', 'deg')).offset;
}
