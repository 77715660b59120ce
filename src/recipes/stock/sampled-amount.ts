import { formatQuantity } from '../../units/format-quantity.js';
import { Quantity } from '../../units/quantity.js';
import { InputError, inspectValue } from '../../units/input-error.js';
import { tryParse } from '../../units/try-parse.js';
import { field, makeField } from '../../engine/field.js';
import type { Output } from '../../engine/output.js';

/** What is counted up: usable length, area, volume, or plain pieces. Sample and need must be of one kind. */
const measures = ['length', 'area', 'volume', 'ratio'] as const;
export type Measure = (typeof measures)[number];
export interface Amount {
  readonly kind: Measure;
  readonly value: number;
}
export interface Amounts {
  readonly kind: Measure;
  readonly values: readonly number[];
}

const lists = measures.map((kind) => ({
  kind,
  list: field.list(field.quantity(kind, { label: 'usable in a piece', min: 0 }), {
    label: '',
    least: 2,
    most: 10_000,
  }),
}));

/** A list of amounts of one kind. */
export const sampleField = makeField<string | readonly (string | number)[], Amounts, { label: string }>(
  {
    kind: 'sample',
    expects: "two or more amounts of one kind, such as '1.6 m, 1.4 m, 1.7 m' or ['0.8 m2', '0.9 m2']",
    accepts: (v) => Array.isArray(v) || typeof v === 'string',
    format: (a) => a.values.map((value) => formatQuantity({ kind: a.kind, value })).join(', '),
    read: (v) => {
      const refusals: InputError[] = [];
      for (const { kind, list } of lists) {
        const values = tryParse(() => list.read(v));
        if (!(values instanceof InputError)) return { kind, values };
        refusals.push(values);
      }
      // The kind with the fewest complaints is the one that was meant.
      throw refusals.reduce((a, b) => (b.issues.length < a.issues.length ? b : a));
    },
  },
  { label: 'sample' },
);

const singles = measures.map((kind) => ({
  kind,
  one: field.quantity(kind, { label: 'still needed', above: 0 }),
}));
const takesNeed = "an amount of the sample's kind and more than nothing, such as '14 m' or '6 m2'";

/** One amount, more than nothing. */
export const neededField = makeField<string | number | Quantity, Amount, { label: string }>(
  {
    kind: 'amount',
    expects: takesNeed,
    accepts: (v) => typeof v === 'string' || typeof v === 'number' || v instanceof Quantity,
    format: formatQuantity,
    read: (v) => {
      for (const { kind, one } of singles) {
        const value = tryParse(() => one.read(v));
        if (!(value instanceof InputError)) return { kind, value };
      }
      throw new InputError(`got ${inspectValue(v)}, takes ${takesNeed}`);
    },
  },
  { label: 'still needed' },
);

/** An amount as an answer: a quantity, or a plain number where plain pieces were counted. */
export const amountOutput = (label: string): Output<Amount, Quantity | number, false> => ({
  kind: 'amount',
  label: label,
  optional: false,
  wrap: (a) => (a.kind === 'ratio' ? a.value : new Quantity(a.kind, a.value)),
  format: (a) => {
    const metric = formatQuantity(a);
    const inch = formatQuantity(a, { system: 'inch' });
    return { metric, inch: inch === metric ? '' : inch };
  },
});
