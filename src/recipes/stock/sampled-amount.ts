import { formatQuantity } from '../../quantities/format.js';
import { Quantity } from '../../quantities/quantity.js';
import { Refusal, shown } from '../../quantities/refusal.js';
import { attempt } from '../../quantities/attempt.js';
import { field, makeField } from '../../recipe/field.js';
import type { Output } from '../../recipe/output.js';

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
  list: field.list(field.quantity(kind, { says: 'usable in a piece', min: 0 }), {
    says: '',
    least: 2,
    most: 10_000,
  }),
}));

/** A list of amounts of one kind. */
export const sampleField = makeField<string | readonly (string | number)[], Amounts, { says: string }>(
  {
    kind: 'sample',
    takes: "two or more amounts of one kind, such as '1.6 m, 1.4 m, 1.7 m' or ['0.8 m2', '0.9 m2']",
    fits: (v) => Array.isArray(v) || typeof v === 'string',
    show: (a) => a.values.map((value) => formatQuantity({ kind: a.kind, value })).join(', '),
    read: (v) => {
      const refusals: Refusal[] = [];
      for (const { kind, list } of lists) {
        const values = attempt(() => list.read(v));
        if (!(values instanceof Refusal)) return { kind, values };
        refusals.push(values);
      }
      // The kind with the fewest complaints is the one that was meant.
      throw refusals.reduce((a, b) => (b.troubles.length < a.troubles.length ? b : a));
    },
  },
  { says: 'usable yield of each piece taken apart so far' },
);

const singles = measures.map((kind) => ({
  kind,
  one: field.quantity(kind, { says: 'still needed', above: 0 }),
}));
const takesNeed = "an amount of the sample's kind and more than nothing, such as '14 m' or '6 m2'";

/** One amount, more than nothing. */
export const neededField = makeField<string | number | Quantity, Amount, { says: string }>(
  {
    kind: 'amount',
    takes: takesNeed,
    fits: (v) => typeof v === 'string' || typeof v === 'number' || v instanceof Quantity,
    show: formatQuantity,
    read: (v) => {
      for (const { kind, one } of singles) {
        const value = attempt(() => one.read(v));
        if (!(value instanceof Refusal)) return { kind, value };
      }
      throw new Refusal(`got ${shown(v)}, takes ${takesNeed}`);
    },
  },
  { says: 'usable yield still needed, beyond what the sample gave' },
);

/** An amount as an answer: a quantity, or a plain number where plain pieces were counted. */
export const amountOutput = (says: string): Output<Amount, Quantity | number, false> => ({
  kind: 'amount',
  says,
  optional: false,
  wrap: (a) => (a.kind === 'ratio' ? a.value : new Quantity(a.kind, a.value)),
  show: (a) => {
    const metric = formatQuantity(a);
    const inch = formatQuantity(a, { system: 'inch' });
    return { metric, inch: inch === metric ? '' : inch };
  },
});
