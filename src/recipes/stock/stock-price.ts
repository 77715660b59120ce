import { formatQuantity } from '../../units/format-quantity.js';
import type { Kind } from '../../units/kind.js';
import { toQuantity } from '../../units/parse-quantity.js';
import type { Quantity } from '../../units/quantity.js';
import { InputError, inspectValue } from '../../units/input-error.js';
import { tryParse } from '../../units/try-parse.js';
import { field, makeField, type Field } from '../../engine/field.js';

/** A price and what it is for; `amount` in money per piece, per m, per m2 or per m3. */
export interface Price {
  readonly by: 'piece' | 'length' | 'area' | 'volume';
  readonly amount: number;
  /** As it was written, for showing. */
  readonly written?: string | undefined;
  /** The sign it was written with, such as €. */
  readonly currency?: string;
}

/** A price as it may be written: `12.50` or `12.50 each`, `4.20/m`, `38/m2`, `950/m3`, `6.50/bf`, with or without a currency. */
export type PriceWritten =
  | string
  | number
  | Quantity<'money'>
  | Quantity<'pricePerLength'>
  | Quantity<'pricePerArea'>
  | Quantity<'pricePerVolume'>;

const kindOf = {
  volume: 'pricePerVolume',
  area: 'pricePerArea',
  length: 'pricePerLength',
  piece: 'money',
} as const satisfies Record<Price['by'], Kind>;
const ofPiece = /\s*(?:\/|\bper\s|\ba\s|\s)\s*(?:pieces?|boards?|pcs?|each)$/i;

interface Options {
  readonly label: string;
  readonly optional?: true;
}

/** A field that takes a price in whichever of the trade's ways it was quoted. */
export function priceField<const O extends Options>(
  options: O,
): Field<
  PriceWritten,
  O extends { optional: true } ? Price | undefined : Price,
  O extends { optional: true } ? true : false
> {
  const takes =
    "a price of 0 or more with what it is for, such as '6.50/bf', '950/m3', '38/m2', '4.20/m' or '12 each'";
  const readers = (Object.keys(kindOf) as Price['by'][]).map((by) => ({
    by,
    field: field.quantity(kindOf[by], { label: options.label, min: 0 }),
  }));
  const read = (value: unknown): Price => {
    const text = typeof value === 'string' ? value.trim() : undefined;
    const bare = text?.replace(ofPiece, '') ?? value;
    // "12 each" must not be read as anything but money a piece.
    const open = text === undefined || bare === text ? readers : readers.filter((r) => r.by === 'piece');
    for (const { by, field: reader } of open) {
      const amount = tryParse(() => reader.read(bare));
      if (!(amount instanceof InputError)) {
        const { currency } = toQuantity(bare, kindOf[by]);
        return {
          by,
          amount,
          written: text,
          ...(currency ? { currency } : {}),
        };
      }
      // A second currency is wrong whatever the price is for.
      if (amount.message.includes('one currency')) throw amount;
    }
    throw new InputError(`got ${inspectValue(value)}, takes ${takes}`);
  };
  const show = (p: Price): string =>
    p.written ??
    formatQuantity({
      kind: kindOf[p.by],
      value: p.amount,
      ...(p.currency ? { currency: p.currency } : {}),
    }) + (p.by === 'piece' ? ' each' : '');
  return makeField<PriceWritten, Price, O>(
    {
      kind: 'price',
      expects: takes,
      read,
      format: show,
      accepts: (v) =>
        typeof v === 'string' ||
        typeof v === 'number' ||
        (typeof v === 'object' && v !== null && 'value' in v),
    },
    options,
  );
}
