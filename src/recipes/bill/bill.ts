import { barChart } from '../../charts/bar-chart.js';
import { formatQuantity } from '../../units/format-quantity.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { cents, cost, kinds, linesField, readLines, weight, type Line } from './bill-lines.js';
import { linePriceField } from './line-quantity.js';

const share = formula({
  symbol: 'E',
  result: variable('money', 'extra'),
  expression: 'S a',
  variables: { S: variable('money', 'sum'), a: variable('share', 'share added', { unit: '%' }) },
  basis: 'definition',
});
/**
 * What a piece costs, weighs and takes in hours: one table of timber, glue, finish, fixings and time, from the results
 * of other recipes or from a CSV file. A `quantity` is a number of pieces or has a unit; a plain `price` is for one of
 * that unit, a price with a unit is converted. `mass` is that of the whole line, `massEach` of one; a quantity in
 * kilograms is its own mass, a volume with `density` is calculated. Each line is rounded to a hundredth, so that the lines
 * add up to the sum as printed. No exchange of currencies.
 * @throws InputError naming row and column, where price and quantity do not go together
 */
export const bill = recipe({
  name: 'bill',
  title: 'Bill of a piece',
  topic: 'bill',
  about:
    'What a piece costs, weighs and takes in hours: timber, glue, finish, fixings and time in one table. An estimate for the maker, not an invoice.',
  sources: [],
  inputs: {
    lines: linesField,
    hourly: linePriceField({
      label: 'price of an hour',
      help: 'Used for lines of time that have no price of their own.',
      optional: true,
    }),
    forgotten: field.share({
      symbol: 'a',
      label: 'contingency',
      help: 'A share added to the sum for what was forgotten.',
      min: '0 %',
      max: '200 %',
      default: '0 %',
    }),
    tax: field.share({
      label: 'sales tax',
      help: 'Share of the sum.',
      min: '0 %',
      max: '100 %',
      default: '0 %',
    }),
  },
  outputs: {
    total: out.money({ label: 'cost in all' }),
    subtotal: out.money({ label: 'the lines together' }),
    forgotten: out.money({
      label: 'contingency',
      help: 'A share added to the sum for what was forgotten.',
      optional: true,
    }),
    tax: out.money({ label: 'sales tax', optional: true }),
    mass: out.mass({ label: 'mass', help: 'Mass of the lines that have one.', optional: true }),
    time: out.time({ label: 'hours of work', optional: true, unit: 'h' }),
    byKind: out.table(
      {
        kind: out.text({ label: 'sort' }),
        lines: out.count({ label: 'lines' }),
        cost: out.money({ label: 'cost' }),
        share: out.share({ label: 'share of the sum', help: 'Share of all lines together.' }),
        mass: out.mass({ label: 'mass', optional: true }),
      },
      { label: 'By sort' },
    ),
    lines: out.table(
      {
        item: out.text({ label: 'what' }),
        kind: out.text({ label: 'sort' }),
        quantity: out.text({ label: 'how much' }),
        price: out.text({ label: 'price', optional: true }),
        cost: out.money({ label: 'cost' }),
        mass: out.mass({ label: 'mass', optional: true }),
      },
      { label: 'Line by line' },
    ),
  },
  formulas: [cost, share, weight],
  solve: (given, trace) => {
    const rows = readLines(given.lines, given.hourly, trace);
    const subtotal = cents(rows.reduce((s, r) => s + r.cost, 0));
    const added = (a: number, S: number, label: string): number | undefined =>
      a === 0 ? undefined : cents(trace.evaluate(share, { S, a }, label));
    const forgotten = added(given.forgotten, subtotal, 'added for what was forgotten');
    const before = subtotal + (forgotten ?? 0);
    const tax = added(given.tax, before, 'sales tax');
    const mass = massOf(rows);
    const hours = rows.reduce((s, r) => s + r.hours, 0);
    const unpriced = rows.filter((r) => !r.priced).map((r) => r.item);
    if (unpriced.length > 0) trace.warn(note(`no price, counted as nothing: ${listed(unpriced)}`));
    const weightless = rows.filter((r) => r.mass === undefined && r.kind !== 'time').map((r) => r.item);
    if (mass !== undefined && weightless.length > 0)
      trace.warn(note(`no mass, so the piece weighs more than is said: ${listed(weightless)}`));
    const byKind = kinds.flatMap((kind) => {
      const own = rows.filter((r) => r.kind === kind);
      if (own.length === 0) return [];
      const sum = cents(own.reduce((s, r) => s + r.cost, 0));
      return [
        {
          kind,
          lines: own.length,
          cost: sum,
          share: subtotal === 0 ? 0 : sum / subtotal,
          mass: massOf(own),
        },
      ];
    });
    return {
      total: cents(before + (tax ?? 0)),
      subtotal,
      byKind,
      lines: rows.map(({ hours: _h, priced: _p, ...r }) => r),
      forgotten,
      tax,
      mass,
      time: hours === 0 ? undefined : hours,
    };
  },
  cautions: (_given, answer) =>
    (answer.mass ?? 0) > 25
      ? [
          note(
            'over 25 kg: lift it with two or more, or in parts (common practice; the guidance where you work goes first)',
          ),
        ]
      : [],
  chart: (given, answer) => {
    if (answer.subtotal === 0) return undefined;
    const currency = given.lines.find((l) => l.price?.currency)?.price?.currency ?? given.hourly?.currency;
    const money = (value: number): string =>
      formatQuantity({ kind: 'money', value, ...(currency ? { currency } : {}) });
    const most = Math.max(...answer.byKind.map((k) => k.cost));
    return barChart({
      title: `${money(answer.total)} in all${answer.mass === undefined ? '' : `, ${formatQuantity({ kind: 'mass', value: answer.mass }, { digits: 3 })}`}`,
      of: '',
      value: currency ? { title: 'Cost', unit: currency } : { title: 'Cost' },
      bars: answer.byKind.map((k) => ({
        name: k.kind,
        value: k.cost,
        label: `${money(k.cost)}, ${formatQuantity({ kind: 'share', value: k.share })}`,
        chosen: k.cost === most,
      })),
    });
  },
  sentence: 'It comes to {total}.',
  example: {
    lines: [
      {
        item: 'rafters, salvaged',
        kind: 'timber',
        quantity: '0.062 m3',
        price: '180/m3',
        density: '500 kg/m3',
      },
      { item: 'battens for the frame', kind: 'timber', quantity: '11.4 m', price: '1.20/m', mass: '8.2 kg' },
      { item: 'wood glue', kind: 'glue', quantity: '750 mL', price: '14/L', mass: '0.8 kg' },
      { item: 'oil varnish', kind: 'finish', quantity: 2, unit: 'tins', price: 16.5, massEach: '0.45 kg' },
      { item: 'screws 5 x 60', kind: 'fixings', quantity: 48, price: 0.11, massEach: '6 g' },
      { item: 'bench work', kind: 'time', quantity: '14.5 h' },
    ],
    hourly: 24,
    forgotten: '10 %',
  },
});

/** Mass of the lines that have one; undefined where none has. */
function massOf(lines: readonly Line[]): number | undefined {
  const masses = lines.flatMap((l) => l.mass ?? []);
  return masses.length === 0 ? undefined : masses.reduce((a, b) => a + b);
}

const listed = (names: readonly string[]): string =>
  names.length > 6
    ? `${names.slice(0, 6).join(', ')} and ${String(names.length - 6)} more`
    : names.join(', ');
