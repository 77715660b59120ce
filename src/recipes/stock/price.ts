import { formatQuantity } from '../../quantities/format.js';
import type { Kind } from '../../quantities/kind.js';
import { Refusal, shown } from '../../quantities/refusal.js';
import type { Quantity } from '../../quantities/quantity.js';
import { field, makeField, type Field } from '../../recipe/field.js';

/** A price and what it is for; `amount` in money per piece, per m, per m2 or per m3. */
export interface Price {
  readonly by: 'piece' | 'length' | 'area' | 'volume';
  readonly amount: number;
  /** As it was written, for showing. */
  readonly written?: string;
}

/** A price as it may be written: `12.50` or `12.50 each`, `4.20/m`, `38/m2`, `950/m3`, `6.50/bf`, with or without a currency. */
export type PriceWritten =
  | string
  | number
  | Quantity<'money'>
  | Quantity<'pricePerLength'>
  | Quantity<'pricePerArea'>
  | Quantity<'pricePerVolume'>;

const forms: readonly { readonly by: Price['by']; readonly kind: Kind }[] = [
  { by: 'volume', kind: 'pricePerVolume' },
  { by: 'area', kind: 'pricePerArea' },
  { by: 'length', kind: 'pricePerLength' },
  { by: 'piece', kind: 'money' },
];
const ofPiece = /\s*(?:\/|\bper\s+|\ba\s+|\s)\s*(?:pieces?|boards?|pcs?|each)$|\s+each$/i;

interface Options {
  readonly says: string;
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
  const readers = forms.map((f) => ({ ...f, field: field.quantity(f.kind, { says: options.says, min: 0 }) }));
  const read = (value: unknown): Price => {
    const written = typeof value === 'string' ? value.trim().replace(ofPiece, '') : value;
    // "12 each" must not be read as anything but money a piece.
    const open =
      written === (typeof value === 'string' ? value.trim() : value)
        ? readers
        : readers.filter((r) => r.by === 'piece');
    for (const r of open) {
      try {
        return {
          by: r.by,
          amount: r.field.read(written),
          ...(typeof value === 'string' ? { written: value.trim() } : {}),
        };
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        if (error.message.includes('one currency')) throw error;
      }
    }
    throw new Refusal(`got ${shown(value)}, takes ${takes}`);
  };
  const show = (p: Price): string => {
    if (p.written !== undefined) return p.written;
    const kind = forms.find((f) => f.by === p.by)?.kind as Kind;
    return formatQuantity({ kind, value: p.amount }) + (p.by === 'piece' ? ' each' : '');
  };
  return makeField<PriceWritten, Price, O>(
    {
      kind: 'price',
      takes,
      read,
      show,
      fits: (v) =>
        typeof v === 'string' ||
        typeof v === 'number' ||
        (typeof v === 'object' && v !== null && 'value' in v),
    },
    options,
  ) as unknown as Field<
    PriceWritten,
    O extends { optional: true } ? Price | undefined : Price,
    O extends { optional: true } ? true : false
  >;
}
