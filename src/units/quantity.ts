import { kinds, type Kind } from './kind.js';
import { unitOf } from './unit.js';
import { formatQuantity, showIn, type FormatOptions } from './format-quantity.js';
import { InputError, inspectValue } from './input-error.js';

/**
 * A number with a kind. `value` is in the kind's base unit: metres, square metres, kilograms, newtons, pascals,
 * seconds, radians, degrees Celsius; per cent as a fraction (8 % is 0.08). Quantities of different kinds are
 * different types: mixing them does not compile.
 */
export class Quantity<K extends Kind = Kind> {
  readonly kind: K;
  readonly value: number;
  /** Sign of the currency as written, for money and prices; a label only, nothing is exchanged. */
  readonly currency?: string;

  constructor(kind: K, value: number, currency?: string) {
    if (!Object.hasOwn(kinds, kind))
      throw new InputError(
        `no kind of quantity ${inspectValue(kind)}; there are ${Object.keys(kinds).join(', ')}`,
      );
    // Far beyond any use, and far enough from the end of the numbers that every unit of the kind can still show it.
    if (typeof value !== 'number' || !(Math.abs(value) <= 1e200)) {
      throw new InputError(
        `got ${inspectValue(value)}, takes a finite number in ${kinds[kind].base || 'plain units'}, at most 1e200`,
      );
    }
    this.kind = kind;
    this.value = value;
    this.currency = currency;
    Object.freeze(this);
  }

  /** The number in another unit of the kind: `length('1 m').in('mm')` is 1000. */
  in(unit: string): number {
    const u = unitOf(this.kind, unit);
    return tidy((this.value - u.offset) / u.scale);
  }

  plus(other: Quantity<K>): Quantity<K> {
    return new Quantity(this.kind, this.value + this.#same(other).value, this.currency ?? other.currency);
  }

  minus(other: Quantity<K>): Quantity<K> {
    return new Quantity(this.kind, this.value - this.#same(other).value, this.currency ?? other.currency);
  }

  times(factor: number): Quantity<K> {
    return new Quantity(this.kind, this.value * factor, this.currency);
  }

  dividedBy(divisor: number): Quantity<K> {
    if (divisor === 0) throw new InputError('divisor: got 0, takes any other number');
    return new Quantity(this.kind, this.value / divisor, this.currency);
  }

  /** As text; metric unless told otherwise: `{ system: 'inch', fraction: 32 }`. */
  format(options?: FormatOptions): string {
    return formatQuantity(this, options);
  }

  toString(): string {
    return formatQuantity(this);
  }

  /** `{ value, unit }` with full precision, in the unit it is shown in. */
  toJSON(): { value: number; unit: string } {
    const unit = showIn(this.kind, this.value);
    return { value: this.in(unit), unit: unit.replace('money', this.currency ?? 'money') };
  }

  [Symbol.for('Jupyter.display')](): Record<string, unknown> {
    return { 'text/plain': both(this) };
  }

  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return both(this);
  }

  #same(other: Quantity<K>): Quantity<K> {
    if (!(other instanceof Quantity) || other.kind !== this.kind) {
      throw new InputError(
        `got ${inspectValue(other instanceof Quantity ? other.toString() : other)}, takes ${kinds[this.kind].called}`,
      );
    }
    return other;
  }
}

/** Metric and, where the trade has it, inches: "900 mm (35 7/16 in)". */
export function both(q: Quantity): string {
  const metric = formatQuantity(q);
  const inch = formatQuantity(q, { system: 'inch' });
  return inch === metric ? metric : `${metric} (${inch})`;
}

/** Drops the last binary digit or two that a change of unit leaves, so that 0.9 m in mm is 900 and not 900.0000000000001. */
export function tidy(x: number): number {
  const rounded = Number(x.toPrecision(15));
  return Math.abs(rounded - x) <= Math.abs(x) * 4e-16 ? rounded : x;
}
