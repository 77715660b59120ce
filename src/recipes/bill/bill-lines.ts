// The lines of a bill: the columns of its table, and what each line costs and weighs.
import { pretty } from '../../units/format-quantity.js';
import { InputError } from '../../units/input-error.js';
import { field, collectIssues, type Parsed } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { tableField } from '../../engine/table-field.js';
import type { Trace } from '../../engine/trace.js';
import {
  bought,
  linePriceField,
  quantityField,
  withUnit,
  type LinePrice,
  type Measured,
} from './line-quantity.js';

/** Sorts of line, in the order they are summed up. */
export const kinds = ['timber', 'glue', 'finish', 'fixings', 'time', 'other'] as const;
export type LineKind = (typeof kinds)[number];

const units = variable('ratio', 'how many of the unit it is priced by');
export const cost = formula({
  symbol: 'C',
  result: variable('money', 'cost'),
  expression: 'q p',
  variables: { q: units, p: variable('money', 'price of one') },
  basis: 'definition',
});
export const weight = formula({
  symbol: 'm',
  result: variable('mass', 'mass', { unit: 'kg' }),
  expression: 'rho V',
  variables: {
    rho: variable('density', 'density', { unit: 'kg/m3' }),
    V: variable('volume', 'volume', { unit: 'm3' }),
  },
  basis: 'definition',
});

const columns = {
  item: field.text({ label: 'what it is' }),
  kind: field.choice(kinds, { label: 'what sort of thing', default: 'other' }),
  quantity: quantityField({ label: 'how much' }),
  unit: field.text({
    label: 'unit',
    help: 'Unit of the quantity where it is a plain number.',
    optional: true,
  }),
  price: linePriceField({ label: 'price', optional: true }),
  mass: field.mass({
    label: 'mass of the line',
    help: 'Mass of everything in the line.',
    min: '0 g',
    max: '1000 t',
    optional: true,
  }),
  massEach: field.mass({ label: 'mass of one', min: '0 g', max: '1000 t', optional: true }),
  density: field.density({
    label: 'density',
    help: 'Needed only where the quantity is a volume.',
    min: '10 kg/m3',
    max: '20000 kg/m3',
    optional: true,
  }),
};

/** The table of lines. */
export const linesField = tableField(columns, {
  label: 'lines of the bill',
  help: 'One row for each thing that goes into the piece.',
  most: 10_000,
});

/** To the hundredth, halves up: what a bill can print. */
export const cents = (n: number): number => Math.round(n * 100 * (1 + 1e-15)) / 100;

/** A line calculated: money to the hundredth, kilograms, seconds of work. */
export interface Line {
  readonly item: string;
  readonly kind: LineKind;
  readonly quantity: string;
  readonly price?: string;
  readonly cost: number;
  readonly mass: number | undefined;
  readonly hours: number;
  readonly priced: boolean;
}

/** Calculates every line. @throws InputError with every line whose price, unit or density does not go with its quantity */
export function readLines(
  lines: readonly Parsed<typeof columns>[],
  hourly: LinePrice | undefined,
  trace: Trace,
): Line[] {
  return collectIssues(
    lines.map((line, i) => [`lines[${String(i + 1)}]`, () => readLine(line, hourly, trace)] as const),
  );
}

function readLine(line: Parsed<typeof columns>, hourly: LinePrice | undefined, trace: Trace): Line {
  const ofTime = line.kind === 'time';
  const [m] = collectIssues([['unit', () => withUnit(line.quantity, line.unit)]]) as [Measured];
  const p: LinePrice | undefined = line.price ?? (ofTime ? hourly : undefined);
  // An hourly price given once is for hours, whatever unit a line of time is written in.
  const perHour = p === hourly && p?.bare === true;
  const [paid = 0, calculated] = collectIssues<number | undefined>([
    [
      'price',
      () => {
        if (!p) return undefined;
        const { units, price } = bought(
          m,
          perHour ? { ...p, by: 'time', amount: p.amount / 3600, bare: false } : p,
        );
        return cents(trace.evaluate(cost, { q: units, p: price }, line.item));
      },
    ],
    [
      'density',
      () => {
        if (line.density === undefined) return undefined;
        if (m.by !== 'liquid')
          throw new InputError(
            'got a density with a quantity that is no volume; takes one with a quantity such as "0.04 m3"',
          );
        if (line.mass !== undefined || line.massEach !== undefined) return undefined;
        return trace.evaluate(weight, { rho: line.density, V: m.value }, `${line.item}: mass`);
      },
    ],
    [
      'quantity',
      () => {
        if (ofTime && m.by !== 'time')
          throw new InputError(`got ${m.written}, takes a time such as "6 h" in a line of time`);
        return undefined;
      },
    ],
  ]);
  const mass =
    line.mass ??
    (line.massEach === undefined ? undefined : (line.massEach * m.value) / m.per) ??
    (m.by === 'mass' ? m.value : calculated);
  return {
    item: line.item,
    kind: line.kind,
    quantity: pretty(m.written),
    ...(p ? { price: perHour ? `${p.text}/h` : p.text } : {}),
    cost: paid,
    mass,
    hours: ofTime ? m.value : 0,
    priced: p !== undefined,
  };
}
