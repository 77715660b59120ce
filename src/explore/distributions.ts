import { quantileNormal } from 'vega-statistics';
import type { Kind } from '../units/kind.js';
import { toQuantity } from '../units/parse-quantity.js';
import { InputError, inspectValue } from '../units/input-error.js';
import { unitOf } from '../units/unit.js';
import type { Field } from '../engine/field.js';
import { DistributionSpec, distributionFromText } from './distribution-spec.js';
import { isNumberField, quantityPart } from './frame-columns.js';
import { ValueList } from './range.js';
import { withFieldPath } from './field-path.js';

/** How one input is distributed: a share from 0 to 1 becomes a value. */
export interface InputDistribution {
  readonly name: string;
  readonly label: string;
  /** The value below which a share `u` of cases lies; a base-unit number, or a thing named. */
  readonly quantile: (u: number) => unknown;
  readonly numeric: boolean;
}

/**
 * Reads what was written for an input: a distribution, `'900 mm +- 2 mm'` (normal, 95 % within the two bounds),
 * `'880 mm .. 920 mm'` (uniform), a list of named things (each as likely), or undefined for a fixed value.
 * @throws InputError
 */
export function inputDistribution(name: string, whole: Field, value: unknown): InputDistribution | undefined {
  const field = quantityPart(whole);
  const spec = specOf(field, value);
  if (spec) {
    if (!isNumberField(field))
      throw new InputError({
        field: name,
        message: `got a distribution, takes ${field.expects}; use each([...])`,
      });
    return { name, numeric: true, ...quantileOf(name, field, spec) };
  }
  const list = listOf(field, value);
  if (!list) return undefined;
  if (list.length === 0)
    throw new InputError({ field: name, message: 'got an empty list, takes at least one value' });
  const values = list.map((v) => withFieldPath('', name, () => whole.read(v)));
  return {
    name,
    label: `one of ${values.length} values`,
    numeric: false,
    quantile: (u) => values[Math.min(values.length - 1, Math.floor(u * values.length))],
  };
}

function specOf(field: Field, value: unknown): DistributionSpec | undefined {
  if (DistributionSpec.is(value)) return value;
  return typeof value === 'string' && isNumberField(field) ? distributionFromText(value) : undefined;
}

function listOf(field: Field, value: unknown): readonly unknown[] | undefined {
  if (ValueList.is(value)) return value.values;
  return Array.isArray(value) && field.kind !== 'list' && field.kind !== 'table' ? value : undefined;
}

type Quantile = Pick<InputDistribution, 'label' | 'quantile'>;

function quantileOf(name: string, field: Field, spec: DistributionSpec): Quantile {
  const read = (v: unknown): number => withFieldPath('', name, () => field.read(v)) as number;
  switch (spec.shape) {
    case 'tolerance':
    case 'normal':
      return normalQuantile(name, field, spec, read(spec.values[0]));
    case 'uniform':
      return uniformQuantile(name, spec.values.map(read));
    case 'triangular':
      return triangularQuantile(name, spec.values.map(read));
    case 'measured':
      return measuredQuantile(name, spec.values.map(read));
  }
}

function normalQuantile(name: string, field: Field, spec: DistributionSpec, mean: number): Quantile {
  // The width must not fall under the field's own limits, so it is read as a difference.
  const width = differenceOf(name, field, spec.values[1]);
  const sd = width / (spec.shape === 'tolerance' ? 2 : 1);
  if (!(sd >= 0))
    throw new InputError({
      field: name,
      message: `got a width of ${inspectValue(spec.values[1])}, takes 0 or more`,
    });
  const inside = (u: number): number => Math.min(1 - 1e-12, Math.max(1e-12, u));
  const keep = (x: number): number => Math.min(field.max ?? Infinity, Math.max(field.min ?? -Infinity, x));
  return {
    label: spec.shape === 'tolerance' ? 'normal, 95 % within the ± given' : 'normal',
    quantile: (u) => (sd === 0 ? mean : keep(quantileNormal(inside(u), mean, sd))),
  };
}

function uniformQuantile(name: string, values: readonly number[]): Quantile {
  const [low, high] = values as readonly [number, number];
  if (!(low <= high))
    throw new InputError({ field: name, message: 'got a low end above the high one, takes low, then high' });
  return { label: 'uniform', quantile: (u) => low + (high - low) * u };
}

function triangularQuantile(name: string, values: readonly number[]): Quantile {
  const [low, mode, high] = values as readonly [number, number, number];
  if (!(low <= mode && mode <= high && low < high))
    throw new InputError({ field: name, message: 'takes low, most likely, high in that order' });
  const cut = (mode - low) / (high - low);
  return {
    label: 'triangular',
    quantile: (u) =>
      u < cut
        ? low + Math.sqrt(u * (high - low) * (mode - low))
        : high - Math.sqrt((1 - u) * (high - low) * (high - mode)),
  };
}

function measuredQuantile(name: string, values: readonly number[]): Quantile {
  const sorted = values.toSorted((a, b) => a - b);
  if (sorted.length < 2)
    throw new InputError({ field: name, message: `got ${sorted.length} measurements, takes at least 2` });
  return { label: `${sorted.length} measurements`, quantile: (u) => between(sorted, u) };
}

/** The value below which a share `u` of a sorted list of two or more lies, interpolated between neighbours. */
export function between(sorted: ArrayLike<number>, u: number): number {
  const at = Math.min(1, Math.max(0, u)) * (sorted.length - 1);
  const i = Math.min(sorted.length - 2, Math.floor(at));
  const a = sorted[i] as number;
  return a + ((sorted[i + 1] as number) - a) * (at - i);
}

/** A width of a distribution as a number of the base unit. @throws InputError */
function differenceOf(name: string, field: Field, value: unknown): number {
  const n = withFieldPath('', name, () => toQuantity(value, field.kind as Kind).value);
  if (field.kind !== 'temperature') return n;
  // A difference of temperatures has no offset: 2 degF is 1.1 degC. A temperature that could be read names its unit.
  const unit = (/[A-Za-z°].*$/.exec(String(value)) as RegExpExecArray)[0];
  return n - unitOf('temperature', unit.replace('°', 'deg')).offset;
}
