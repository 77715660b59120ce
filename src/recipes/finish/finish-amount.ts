// An amount of finish is poured or weighed: a field that takes either and remembers which, and an output that gives back
// the one that was asked for.
import { formatQuantity } from '../../units/format-quantity.js';
import { toQuantity } from '../../units/parse-quantity.js';
import { both, Quantity } from '../../units/quantity.js';
import { InputError, inspectValue } from '../../units/input-error.js';
import { tryParse } from '../../units/try-parse.js';
import { makeField, type Field } from '../../engine/field.js';
import type { Output } from '../../engine/output.js';

/** What is measured: the kind of quantity an amount has. */
export type Measure = 'liquid' | 'mass';

/** An amount: cubic metres of liquid or kilograms. */
export interface Amount {
  readonly kind: Measure;
  readonly value: number;
}

type Written = string | Quantity<'liquid'> | Quantity<'volume'> | Quantity<'mass'>;

interface FieldOptions {
  readonly label: string;
  readonly optional?: true;
  /** Whether nothing at all may be given, as of an empty tin. */
  readonly orNone?: true;
}
type Out<O> = O extends { optional: true } ? Amount | undefined : Amount;
type Optional<O> = O extends { optional: true } ? true : false;

/** Beyond a thousand cubic metres or tonnes it is no longer a workshop's mix. */
const most = 1e6;

export function amountField<const O extends FieldOptions>(options: O): Field<Written, Out<O>, Optional<O>> {
  const takes = `an amount of liquid such as "2 L" or a mass such as "500 g", ${options.orNone ? 'at least nothing' : 'more than nothing'} and at most 1000 m3 or 1000 t`;
  const read = (value: unknown): Amount => {
    for (const kind of ['liquid', 'mass'] as const) {
      const q = tryParse(() => toQuantity(value, kind));
      if (q instanceof InputError) continue;
      const size = kind === 'liquid' ? q.value * 1000 : q.value;
      if ((options.orNone ? size >= 0 : size > 0) && size <= most) return { kind, value: q.value };
      break;
    }
    throw new InputError(
      `got ${inspectValue(value instanceof Quantity ? value.toString() : value)}, takes ${takes}`,
    );
  };
  return makeField<Written, Amount, O>(
    {
      kind: 'amount',
      expects: takes,
      accepts: (v) =>
        typeof v === 'string' ||
        v instanceof Quantity ||
        (typeof v === 'object' && v !== null && 'value' in v && 'unit' in v),
      format: (a) => both(new Quantity(a.kind, a.value)),
      read,
    },
    options,
  );
}

/** An output that is shown as it was measured: litres of what is poured, grams of what is weighed. */
export function amountOutput(options: {
  readonly label: string;
}): Output<Amount, Quantity<'liquid'> | Quantity<'mass'>, false> {
  return {
    kind: 'amount',
    label: options.label,
    optional: false,
    wrap: (raw) =>
      raw.kind === 'liquid' ? new Quantity('liquid', raw.value) : new Quantity('mass', raw.value),
    format: (raw) => {
      const q = { kind: raw.kind, value: raw.value };
      return { metric: formatQuantity(q), inch: formatQuantity(q, { system: 'inch' }) };
    },
  };
}
