// The lines of a bill: the columns of its table, and what each line costs and weighs.
import { pretty } from '../../quantities/format.js';
import { Refusal } from '../../quantities/refusal.js';
import { field, together, type Read } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { tableField } from '../../recipe/table.js';
import type { Work } from '../../recipe/work.js';
import {
  bought,
  linePriceField,
  quantityField,
  withUnit,
  type LinePrice,
  type Measured,
} from './measured.js';

/** Sorts of line, in the order they are summed up. */
export const kinds = ['timber', 'glue', 'finish', 'fixings', 'time', 'other'] as const;
export type LineKind = (typeof kinds)[number];

const units = letter('ratio', 'how many of the unit it is priced by');
export const cost = formula({
  symbol: 'C',
  gives: letter('money', 'cost'),
  text: 'q p',
  where: { q: units, p: letter('money', 'price of one') },
  basis: 'definition',
});
export const weight = formula({
  symbol: 'm',
  gives: letter('mass', 'mass', { in: 'kg' }),
  text: 'rho V',
  where: { rho: letter('density', 'density', { in: 'kg/m3' }), V: letter('volume', 'volume', { in: 'm3' }) },
  basis: 'definition',
});

const columns = {
  item: field.text({ says: 'what it is' }),
  kind: field.choice(kinds, { says: 'what sort of thing', default: 'other' }),
  quantity: quantityField({ says: 'how much' }),
  unit: field.text({ says: 'unit of the quantity, where it is a plain number', optional: true }),
  price: linePriceField({ says: 'price', optional: true }),
  mass: field.mass({ says: 'mass of the whole line', min: '0 g', max: '1000 t', optional: true }),
  massEach: field.mass({ says: 'mass of one', min: '0 g', max: '1000 t', optional: true }),
  density: field.density({
    says: 'density, where the quantity is a volume',
    min: '10 kg/m3',
    max: '20000 kg/m3',
    optional: true,
  }),
};

/** The table of lines. */
export const linesField = tableField(columns, {
  says: 'what goes into the piece, a line each',
  most: 10_000,
});

/** To the hundredth, halves up: what a bill can print. */
export const cents = (n: number): number => Math.round(n * 100 * (1 + 1e-15)) / 100;

/** A line reckoned: money to the hundredth, kilograms, seconds of work. */
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

/** Reckons every line. @throws Refusal with every line whose price, unit or density does not go with its quantity */
export function readLines(
  lines: readonly Read<typeof columns>[],
  hourly: LinePrice | undefined,
  work: Work,
): Line[] {
  return together(
    lines.map((line, i) => [`lines[${String(i + 1)}]`, () => readLine(line, hourly, work)] as const),
  );
}

function readLine(line: Read<typeof columns>, hourly: LinePrice | undefined, work: Work): Line {
  const ofTime = line.kind === 'time';
  const [m] = together([['unit', () => withUnit(line.quantity, line.unit)]]) as [Measured];
  const p: LinePrice | undefined = line.price ?? (ofTime ? hourly : undefined);
  // An hourly price given once is for hours, whatever unit a line of time is written in.
  const perHour = p === hourly && p?.bare === true;
  const [paid = 0, reckoned] = together<number | undefined>([
    [
      'price',
      () => {
        if (!p) return undefined;
        const { units, price } = bought(
          m,
          perHour ? { ...p, by: 'time', amount: p.amount / 3600, bare: false } : p,
        );
        return cents(work.apply(cost, { q: units, p: price }, line.item));
      },
    ],
    [
      'density',
      () => {
        if (line.density === undefined) return undefined;
        if (m.by !== 'liquid')
          throw new Refusal(
            'got a density with a quantity that is no volume; takes one with a quantity such as "0.04 m3"',
          );
        if (line.mass !== undefined || line.massEach !== undefined) return undefined;
        return work.apply(weight, { rho: line.density, V: m.value }, `${line.item}: mass`);
      },
    ],
    [
      'quantity',
      () => {
        if (ofTime && m.by !== 'time')
          throw new Refusal(`got ${m.written}, takes a time such as "6 h" in a line of time`);
        return undefined;
      },
    ],
  ]);
  const mass =
    line.mass ??
    (line.massEach === undefined ? undefined : (line.massEach * m.value) / m.per) ??
    (m.by === 'mass' ? m.value : reckoned);
  return {
    item: line.item,
    kind: line.kind as LineKind,
    quantity: pretty(m.written),
    ...(p ? { price: perHour ? `${p.text}/h` : p.text } : {}),
    cost: paid,
    mass,
    hours: ofTime ? m.value : 0,
    priced: p !== undefined,
  };
}
