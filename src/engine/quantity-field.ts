import { formatTime } from '../units/format-time.js';
import { formatQuantity } from '../units/format-quantity.js';
import { kinds, type Kind, type PlainKind } from '../units/kind.js';
import { toQuantity } from '../units/parse-quantity.js';
import { both, Quantity } from '../units/quantity.js';
import type { Amount, UnitName } from '../units/unit-scales.js';
import { InputError, inspectValue } from '../units/input-error.js';
import {
  makeField,
  assertAccepted,
  type BaseFieldOptions,
  type Field,
  type IsOptional,
  type MaybeOut,
} from './field-shape.js';

/** Options of a quantity: a unit or a limit of another kind does not compile. */
export interface QuantityOptions<K extends Kind = Kind> extends BaseFieldOptions {
  readonly symbol?: string;
  /** Unit it is shown in, whatever its size. */
  readonly unit?: UnitName<K>;
  /** Least and greatest allowed, as text with unit. */
  readonly min?: Amount<K>;
  readonly max?: Amount<K>;
  /** Must be more than this. */
  readonly above?: Amount<K>;
  readonly default?: Amount<K>;
}

/** What may be written for a kind: text with a unit, a quantity, or for plain kinds a number. */
export type Written<K extends Kind> = string | Quantity<K> | (K extends PlainKind | 'money' ? number : never);

function bound(kind: Kind, limit: string | number | undefined): number | undefined {
  if (limit === undefined) return undefined;
  return typeof limit === 'number' ? limit : toQuantity(limit, kind).value;
}

/** A field that takes a quantity of a kind, within limits. */
export function quantityField<K extends Kind, const O extends QuantityOptions<K>>(
  kind: K,
  options: O,
): Field<Written<K>, MaybeOut<O, number>, IsOptional<O>> {
  const min = bound(kind, options.min);
  const max = bound(kind, options.max);
  const above = bound(kind, options.above);
  const text = (n: number): string => formatQuantity({ kind, value: n });
  const facts = kinds[kind];
  const limits = [
    above !== undefined ? `more than ${text(above)}` : min !== undefined ? `at least ${text(min)}` : '',
    max !== undefined ? `at most ${text(max)}` : '',
  ]
    .filter(Boolean)
    .join(' and ');
  const example = options.default !== undefined ? String(options.default) : facts.example;
  const takes = `${facts.called} such as ${facts.plain ? example : inspectValue(example)}${limits ? `, ${limits}` : ''}`;
  return makeField<Written<K>, number, O>(
    {
      kind,
      expects: takes,
      accepts: (v) =>
        typeof v === 'string' ||
        typeof v === 'number' ||
        v instanceof Quantity ||
        (typeof v === 'object' && v !== null && 'value' in v && 'unit' in v),
      format: (n) => {
        const q = new Quantity(kind, assertAccepted(typeof n === 'number', n));
        if (options.unit) return q.format({ unit: options.unit });
        return kind === 'time' ? formatTime(q.value) : both(q);
      },
      read: (v) => {
        const q = toQuantity(v, kind);
        const n = q.value;
        if (q.currency) currencySeen(q.currency);
        if (kind === 'count' && !Number.isInteger(n))
          throw new InputError(`got ${inspectValue(v)}, takes ${takes}`);
        // A millionth of slack: 0.9 m written as 35.4330708 in must not fall off its limit.
        if (
          (min !== undefined && n < min - Math.abs(min) * 1e-12) ||
          (max !== undefined && n > max + Math.abs(max) * 1e-12) ||
          (above !== undefined && n <= above)
        ) {
          throw new InputError(
            `got ${inspectValue(v instanceof Quantity ? v.toString() : v)}, takes ${takes}`,
          );
        }
        return n;
      },
    },
    options,
    {
      ...(options.symbol ? { symbol: options.symbol } : {}),
      ...(options.unit ? { unit: options.unit } : {}),
      ...(above !== undefined ? { min: above } : min !== undefined ? { min } : {}),
      ...(max !== undefined ? { max } : {}),
    },
  );
}

let currency: string | undefined;
function currencySeen(sign: string): void {
  if (currency !== undefined && currency !== sign)
    throw new InputError(
      `got prices in ${inspectValue(currency)} and ${inspectValue(sign)}, takes one currency; nothing is exchanged here`,
    );
  currency = sign;
}
/** The next reading may have prices in another currency. */
export function forgetCurrency(): void {
  currency = undefined;
}
/** Runs `read` and tells which currency sign the money in it carried. */
export function watchCurrency<T>(read: () => T): { value: T; currency: string | undefined } {
  currency = undefined;
  try {
    const value = read();
    return { value, currency };
  } finally {
    currency = undefined;
  }
}
