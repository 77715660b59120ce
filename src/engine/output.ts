import { makersByKind, type Kind, type PlainKind } from '../units/kind.js';
import { Quantity } from '../units/quantity.js';
import { withoutResidue, withoutTail } from '../units/clean-number.js';
import { formatQuantity } from '../units/format-quantity.js';
import { formatTime } from '../units/format-time.js';
import type { UnitName } from '../units/unit-scales.js';

/** What a recipe gives back under one name. `Raw` is what `solve` returns (numbers in base units), `Shown` what the person gets. */
export interface Output<Raw = unknown, Shown = unknown, Optional extends boolean = boolean> {
  readonly '~types'?: { readonly raw: Raw; readonly shown: Shown };
  readonly kind: string;
  readonly label: string;
  /** One sentence for the reference. */
  readonly help?: string;
  readonly symbol?: string;
  readonly unit?: string;
  readonly optional: Optional;
  readonly columns?: Outputs;
  /** Makes the raw value what the person gets. */
  wrap(raw: Raw, currency?: string): Shown;
  /** Text in metric and, where the trade has it, inches. */
  format(raw: Raw, currency?: string): { metric: string; inch: string };
}
export type Outputs = { readonly [name: string]: Output };

export type RawOf<T> = T extends { readonly '~types'?: { readonly raw: infer R } } ? R : never;
export type ShownOf<T> = T extends { readonly '~types'?: { readonly shown: infer S } } ? S : never;
type OptionalNames<O extends Outputs> = {
  [K in keyof O]: O[K]['optional'] extends true ? K : never;
}[keyof O];

/** What `solve` returns: numbers in base units, rows, words. */
export type RawOutput<O extends Outputs> = {
  readonly [K in Exclude<keyof O, OptionalNames<O>>]: RawOf<O[K]>;
} & {
  readonly [K in OptionalNames<O>]?: RawOf<O[K]> | undefined;
};
/** What the person gets: quantities, plain numbers for counts and ratios, rows, words. */
export type OutputValues<O extends Outputs> = {
  readonly [K in Exclude<keyof O, OptionalNames<O>>]: ShownOf<O[K]>;
} & { readonly [K in OptionalNames<O>]?: ShownOf<O[K]> | undefined };

interface Options {
  readonly label: string;
  readonly help?: string;
  readonly optional?: true;
}
interface QuantityOptions<K extends Kind = Kind> extends Options {
  readonly symbol?: string;
  /** Unit it is shown in, whatever its size; one of another kind does not compile. */
  readonly unit?: UnitName<K>;
}
type Opt<O> = O extends { optional: true } ? true : false;
type WrappedKind<K extends Kind> = K extends PlainKind ? number : Quantity<K>;

const named = (options: Options): Pick<Output, 'label' | 'help'> => ({
  label: options.label,
  ...(options.help === undefined ? {} : { help: options.help }),
});

function quantityOutput<K extends Kind, const O extends QuantityOptions<K>>(
  kind: K,
  options: O,
): Output<number, WrappedKind<K>, Opt<O>> {
  const plain = kind === 'ratio' || kind === 'count';
  return {
    kind,
    ...named(options),
    optional: (options.optional === true) as Opt<O>,
    ...(options.symbol ? { symbol: options.symbol } : {}),
    ...(options.unit ? { unit: options.unit } : {}),
    wrap: (raw, currency) => {
      const value = withoutResidue(kind, withoutTail(raw));
      return (plain ? value : new Quantity(kind, value, currency)) as WrappedKind<K>;
    },
    format: (raw, currency) => {
      if (kind === 'time' && options.unit === undefined)
        return { metric: formatTime(withoutResidue(kind, raw)), inch: '' };
      const q = new Quantity(kind, withoutResidue(kind, raw), currency);
      const metric = trueMinus(formatQuantity(q, options.unit ? { unit: options.unit } : {}));
      const inch = trueMinus(formatQuantity(q, { system: 'inch' }));
      return { metric, inch: inch === metric ? '' : inch };
    },
  };
}

/** A minus as it is printed, for a hyphen before a figure. */
const trueMinus = (text: string): string => text.replace(/^-(?=[\d£$€¥A-Z])/, '−');

type QuantityMakers = {
  readonly [K in Kind]: <const O extends QuantityOptions<K>>(
    options: O,
  ) => Output<number, WrappedKind<K>, Opt<O>>;
};

function plainOutput<T>(kind: string, text: (value: T) => string) {
  return <const O extends Options>(options: O): Output<T, T, Opt<O>> => ({
    kind,
    ...named(options),
    optional: (options.optional === true) as Opt<O>,
    wrap: (raw) => raw,
    format: (raw) => ({ metric: text(raw), inch: '' }),
  });
}

/** Rows, each an object of outputs: `out.table({ position: out.length({ label }) }, { label })`. */
function tableOutput<const C extends Outputs, const O extends Options>(
  columns: C,
  options: O,
): Output<readonly RawOutput<C>[], readonly OutputValues<C>[], Opt<O>> {
  return {
    kind: 'table',
    ...named(options),
    optional: (options.optional === true) as Opt<O>,
    columns,
    wrap: (rows, currency) => rows.map((row) => wrapAll(columns, row, currency)),
    format: (rows) => ({ metric: `${rows.length} row${rows.length === 1 ? '' : 's'}`, inch: '' }),
  };
}

/** A list of one kind. */
function listOutput<R, S, const O extends Options>(
  item: Output<R, S>,
  options: O,
): Output<readonly R[], readonly S[], Opt<O>> {
  return {
    kind: 'list',
    ...named(options),
    optional: (options.optional === true) as Opt<O>,
    wrap: (list, currency) => list.map((x) => item.wrap(x, currency)),
    format: (list) => {
      const texts = list.map((x) => item.format(x));
      // A kind is shown in inches always or never.
      return {
        metric: texts.map((t) => t.metric).join(', '),
        inch: texts.flatMap((t) => (t.inch === '' ? [] : [t.inch])).join(', '),
      };
    },
  };
}

/** Values under names the person chose, such as amounts by part. */
function recordOutput<R, S, const O extends Options>(
  item: Output<R, S>,
  options: O,
): Output<Readonly<Record<string, R>>, Readonly<Record<string, S>>, Opt<O>> {
  return {
    kind: 'record',
    ...named(options),
    optional: (options.optional === true) as Opt<O>,
    wrap: (record, currency) =>
      Object.fromEntries(Object.entries(record).map(([k, v]) => [k, item.wrap(v, currency)])),
    format: (record) => {
      const texts = Object.entries(record).map(([k, v]) => [k, item.format(v)] as const);
      return {
        metric: texts.map(([k, t]) => `${k} ${t.metric}`).join(', '),
        inch: texts.flatMap(([k, t]) => (t.inch === '' ? [] : [`${k} ${t.inch}`])).join(', '),
      };
    },
  };
}

/** Makes a whole set of raw outputs what the person gets. */
export function wrapAll<O extends Outputs>(
  outputs: O,
  raw: RawOutput<O>,
  currency?: string,
): OutputValues<O> {
  const shown: Record<string, unknown> = {};
  for (const [name, output] of Object.entries(outputs)) {
    const value = (raw as Record<string, unknown>)[name];
    if (value === undefined) continue;
    shown[name] = output.wrap(value, currency);
  }
  return shown as OutputValues<O>;
}

/** Makers of outputs, as `field` has makers of inputs. */
export const out = {
  quantity: quantityOutput,
  ...(makersByKind(
    (kind) => (options: QuantityOptions) => quantityOutput(kind, options as never),
  ) as QuantityMakers),
  text: plainOutput<string>('text', (v) => v),
  flag: plainOutput<boolean>('flag', (v) => (v ? 'yes' : 'no')),
  table: tableOutput,
  list: listOutput,
  record: recordOutput,
} as const;
