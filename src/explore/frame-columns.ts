import { formatQuantity, pretty, showIn } from '../units/format-quantity.js';
import { kinds, type Kind } from '../units/kind.js';
import { unitOf } from '../units/unit.js';
import type { Field } from '../engine/field.js';
import type { Output } from '../engine/output.js';

/** A column of numbers in the unit named, or of names. */
export interface Column {
  readonly name: string;
  readonly label: string;
  /** Unit of the numbers; '' for counts and ratios; undefined for names. */
  readonly unit: string | undefined;
  readonly values: Float64Array | readonly string[];
}

/** The unit in which a whole column of a kind is shown: that of its largest value. */
export function columnUnit(kind: string, values: ArrayLike<number>, fixed?: string): string {
  if (fixed !== undefined) return fixed;
  let most = 0;
  for (let i = 0; i < values.length; i++)
    if (Math.abs(values[i] as number) > Math.abs(most)) most = values[i] as number;
  return showIn(kind as Kind, most);
}

/** Base-unit numbers in a unit; the same column when the unit is the base. */
export function inUnit(kind: string, values: Float64Array, unit: string): Float64Array {
  const { factor, offset } = lensOf(kind, unit);
  return factor === 1 && offset === 0 ? values : values.map((v) => (v - offset) * factor);
}

/** How base-unit numbers become those of a unit: less the offset, times the factor. */
export function lensOf(kind: string, unit: string): { factor: number; offset: number } {
  const { scale, offset } = unitOf(kind as Kind, unit);
  const many = 1 / scale;
  return {
    factor: scale < 1 && Math.abs(many - Math.round(many)) < 1e-9 * many ? Math.round(many) : many,
    offset,
  };
}

/** A base-unit number as short text of its kind. */
export function textOf(kind: string, value: number, unit?: string): string {
  return formatQuantity({ kind: kind as Kind, value }, unit === undefined ? {} : { unit });
}

export const isNumberField = (f: Pick<Field | Output, 'kind'>): boolean => Object.hasOwn(kinds, f.kind);

/** The field itself, or where several kinds of value are taken the one that is a quantity: `from` is a moisture or air. */
export function quantityPart(field: Field): Field {
  return isNumberField(field) || field.kind !== 'either'
    ? field
    : (field.items?.find(isNumberField) ?? field);
}

export const axisUnit = (unit: string | undefined): string => pretty(unit === 'money' ? '' : (unit ?? ''));

/** Names of the outputs that are single numbers. */
export function numberOutputs(outputs: Readonly<Record<string, Output>>): string[] {
  return Object.entries(outputs).flatMap(([n, o]) => (isNumberField(o) ? [n] : []));
}
