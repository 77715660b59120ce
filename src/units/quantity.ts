import { clean, tidy } from './clean-number.js';
import { kinds, type Kind } from './kind.js';
import { unitOf } from './unit.js';
import { formatQuantity, showIn, type FormatOptions } from './format-quantity.js';
import { InputError, inspectValue } from './input-error.js';

/** Another quantity of the kind, or text with a unit. */
export type Comparable<K extends Kind> = Quantity<K> | string;

/**
 * A number with a kind. `value` is in the kind's base unit: metres, square metres, kilograms, newtons, pascals,
 * seconds, radians, degrees Celsius; per cent as a fraction (8 % is 0.08). Quantities of different kinds are
 * different types: mixing them does not compile, and is an error where types do not know. `<` and `>` compare the
 * values, templates print the text; a list is sorted by `list.sort((a, b) => a.compare(b))`.
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

  plus(other: Comparable<K>): Quantity<K> {
    const o = this.#same(other);
    return new Quantity(this.kind, this.value + o.value, this.currency ?? o.currency);
  }

  minus(other: Comparable<K>): Quantity<K> {
    const o = this.#same(other);
    return new Quantity(this.kind, this.value - o.value, this.currency ?? o.currency);
  }

  times(factor: number): Quantity<K> {
    return new Quantity(this.kind, this.value * factor, this.currency);
  }

  dividedBy(divisor: number): Quantity<K> {
    if (divisor === 0) throw new InputError('divisor: got 0, takes any other number');
    return new Quantity(this.kind, this.value / divisor, this.currency);
  }

  /** -1, 0 or 1 as this is less than, equal to or more than the other: for `sort`. @throws InputError for another kind or currency */
  compare(other: Comparable<K>): -1 | 0 | 1 {
    const { value } = this.#same(other);
    return this.value < value ? -1 : this.value > value ? 1 : 0;
  }

  /** Whether both are the same size exactly; {@link isNear} allows for rounding. */
  equals(other: Comparable<K>): boolean {
    return this.compare(other) === 0;
  }

  /** Whether it is no more than the limit: `movement.atMost('9 mm')`. */
  atMost(limit: Comparable<K>): boolean {
    return this.compare(limit) <= 0;
  }

  /** Whether it is no less than the limit. */
  atLeast(limit: Comparable<K>): boolean {
    return this.compare(limit) >= 0;
  }

  /** Whether the two differ by at most `within`, given as a difference (`'0.5 mm'`); without it, by a billionth of the larger. */
  isNear(other: Comparable<K>, within?: Comparable<K>): boolean {
    const { value } = this.#same(other);
    const slack =
      within === undefined
        ? 1e-9 * Math.max(Math.abs(this.value), Math.abs(value))
        : Math.abs(this.#difference(within));
    return Math.abs(this.value - value) <= slack;
  }

  /** The least of this and the others. */
  min(...others: readonly Comparable<K>[]): Quantity<K> {
    return this.#pick(others, -1);
  }

  /** The greatest of this and the others. */
  max(...others: readonly Comparable<K>[]): Quantity<K> {
    return this.#pick(others, 1);
  }

  /** Within two limits: the limit it lies beyond, or itself. @throws InputError where the first limit is above the second */
  clamp(low: Comparable<K>, high: Comparable<K>): Quantity<K> {
    const [a, b] = [this.#same(low), this.#same(high)];
    if (a.value > b.value)
      throw new InputError(`got ${a.toString()} to ${b.toString()}, takes the lower limit first`);
    return this.max(a).min(b);
  }

  /** Without its sign. */
  abs(): Quantity<K> {
    return new Quantity(this.kind, Math.abs(this.value), this.currency);
  }

  /**
   * To a multiple of a step: `length('903 mm').round('5 mm')` is 905 mm; `'up'` and `'down'` go to the next one above or
   * below. @throws InputError where the step is not above 0
   */
  round(step: Comparable<K>, way: 'nearest' | 'up' | 'down' = 'nearest'): Quantity<K> {
    const size = this.#difference(step);
    if (!(size > 0)) throw new InputError(`step: got ${inspectValue(String(step))}, takes one above 0`);
    // A quotient that misses a whole number by the last bits is that number: 0.3 m in steps of 0.1 m is 3, not 2.9999.
    const steps = clean(this.value / size);
    const whole = way === 'up' ? Math.ceil(steps) : way === 'down' ? Math.floor(steps) : Math.round(steps);
    return new Quantity(this.kind, clean(whole * size), this.currency);
  }

  /**
   * Number and unit as mathjs takes them, in the kind's base unit or in one that mathjs knows: `math.unit(...q.toUnit())`.
   * Money and pure numbers have an empty unit.
   */
  toUnit(unit?: string): [value: number, unit: string] {
    return unit === undefined ? [this.value, kinds[this.kind].base] : [this.in(unit), unit];
  }

  /** As text; metric unless told otherwise: `{ system: 'inch', fraction: 32 }`. */
  format(options?: FormatOptions): string {
    return formatQuantity(this, options);
  }

  toString(): string {
    return formatQuantity(this);
  }

  /** The number in the base unit, by which `<` and `>` compare. Quantities of other kinds are not compared by it: use {@link compare}. */
  valueOf(): number {
    return this.value;
  }

  /** Text where text is wanted, as in a template; the number in the base unit for `<`, `>` and arithmetic. */
  [Symbol.toPrimitive](hint: 'string' | 'number' | 'default'): string | number {
    return hint === 'number' ? this.value : this.toString();
  }

  /** `{ value, unit }` in the unit it is shown in, without the last binary digits that a change of unit leaves. */
  toJSON(): { value: number; unit: string } {
    const unit = showIn(this.kind, this.value);
    return { value: clean(this.in(unit)), unit: unit.replace('money', this.currency ?? 'money') };
  }

  [Symbol.for('Jupyter.display')](): Record<string, unknown> {
    return { 'text/plain': both(this) };
  }

  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return both(this);
  }

  #pick(others: readonly Comparable<K>[], side: -1 | 1): Quantity<K> {
    return others
      .map((other) => this.#same(other))
      .reduce<Quantity<K>>((best, o) => (Math.sign(o.value - best.value) === side ? o : best), this);
  }

  /** @throws InputError for another kind, or money of another currency */
  #same(other: Comparable<K>): Quantity<K> {
    const o = typeof other === 'string' ? read(other, this.kind) : other;
    if (!(o instanceof Quantity) || o.kind !== this.kind)
      throw new InputError(
        `got ${inspectValue(o instanceof Quantity ? o.toString() : o)}, takes ${kinds[this.kind].called}`,
      );
    if (this.currency !== undefined && o.currency !== undefined && o.currency !== this.currency)
      throw new InputError(
        `got ${inspectValue(o.toString())}, takes ${kinds[this.kind].called} in ${inspectValue(this.currency)}; nothing is exchanged here`,
      );
    return o;
  }

  /** A size or a difference in the base unit: 5 degF is 2.8 degrees of Celsius, not -15. */
  #difference(size: Comparable<K>): number {
    const { value } = this.#same(size);
    if (this.kind !== 'temperature' || typeof size !== 'string') return value;
    return (
      value - unitOf('temperature', (/[A-Za-z°].*$/.exec(size)?.[0] ?? 'degC').replace('°', 'deg')).offset
    );
  }
}

type ReadQuantity = <K extends Kind>(text: string, kind: K) => Quantity<K>;
let read: ReadQuantity = () => {
  throw new Error('no reader of quantities yet');
};
/** Set by the parser, which makes quantities and so cannot be imported from here. @internal */
export function setQuantityReader(reader: ReadQuantity): void {
  read = reader;
}

/** Metric and, where the trade has it, inches: "900 mm (35 7/16 in)". */
export function both(q: Quantity): string {
  const metric = formatQuantity(q);
  const inch = formatQuantity(q, { system: 'inch' });
  return inch === metric ? metric : `${metric} (${inch})`;
}

export { tidy } from './clean-number.js';
