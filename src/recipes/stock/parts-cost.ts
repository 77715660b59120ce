import { barChart } from '../../charts/bar-chart.js';
import { formatQuantity } from '../../units/format-quantity.js';
import { InputError, type Issue } from '../../units/input-error.js';
import { note } from '../../engine/caution.js';
import { field } from '../../engine/field.js';
import { formula, variable } from '../../engine/formula.js';
import { out } from '../../engine/output.js';
import { recipe } from '../../engine/recipe.js';
import { tableField } from '../../engine/table-field.js';
import { tableRows } from '../../materials/data-tables.js';
import { priceField, type Price } from './stock-price.js';

/** Usual additions for waste, by how the timber comes: the higher of the two printed figures is the one to buy by. */
const customary = [
  'softwood scantlings',
  'square-edge hardwood',
  'waney-edge boards',
  'very wasteful logs',
  'plywood',
  'veneers',
] as const;

const net = variable('ratio', 'quantity in the finished parts, in the price’s own unit');
const gross = formula({
  symbol: 'Q',
  result: variable('ratio', 'quantity to buy, in the price’s own unit'),
  expression: 'N * (1 + w)',
  variables: { N: net, w: variable('share', 'added for waste') },
  basis: 'definition',
});
const cost = formula({
  symbol: 'C',
  result: variable('money', 'cost of a part'),
  expression: 'Q p',
  variables: {
    Q: variable('ratio', 'quantity to buy, in the price’s own unit'),
    p: variable('money', 'price of one'),
  },
  basis: 'definition',
});

interface Part {
  readonly name: string;
  readonly count: number;
  readonly length: number;
  readonly width?: number | undefined;
  readonly thickness?: number | undefined;
  readonly material?: string | undefined;
  readonly price?: Price | undefined;
}

/** Each part with its price and the net quantity that is priced. @throws InputError naming every price and size that is missing */
function pricedParts(given: {
  readonly parts: readonly Part[];
  readonly prices: Readonly<Record<string, Price>> | undefined;
  readonly price: Price | undefined;
}) {
  const issues: Issue[] = [];
  const lines = given.parts.flatMap((part, i) => {
    const price = part.price ?? given.prices?.[part.material ?? ''] ?? given.price;
    if (price) {
      issues.push(...missingSizes(part, price, `parts[${i + 1}]`));
      return [{ part, price, quantity: netQuantity(part, price) }];
    }
    issues.push({
      field: part.material === undefined ? 'price' : `prices.${part.material}`,
      message: `missing; parts[${i + 1}] (${part.name}) needs a price: takes price, a price column, or prices by material`,
    });
    return [];
  });
  // One price may be missing for many rows: it is asked for once.
  if (issues.length > 0) throw new InputError([...new Map(issues.map((t) => [t.field, t])).values()]);
  return lines;
}

function missingSizes({ width, thickness }: Part, { by }: Price, at: string): Issue[] {
  const issues: Issue[] = [];
  if ((by === 'area' || by === 'volume') && width === undefined)
    issues.push({ field: `${at}.width`, message: `missing; takes a width, since the price is by ${by}` });
  if (by === 'volume' && thickness === undefined)
    issues.push({
      field: `${at}.thickness`,
      message: 'missing; takes a thickness, since the price is by volume',
    });
  return issues;
}

function netQuantity({ count, length, width = 0, thickness = 0 }: Part, { by }: Price): number {
  const area = count * length * width;
  return { piece: count, length: count * length, area, volume: area * thickness }[by];
}

/**
 * What the timber of a list of parts costs, from one price or one a material, with waste added to the net quantity (20 %
 * waste buys 1.2 times the parts). Glue, finish and time are not in it.
 */
export const partsCost = recipe({
  name: 'partsCost',
  title: 'Cost of the parts',
  topic: 'stock',
  about:
    'What the timber of a list of parts costs, from one price or a price for each material, with waste added. Glue, finish and time are not in it.',
  sources: [],
  inputs: {
    parts: tableField(
      {
        name: field.text({ label: 'name of the part' }),
        count: field.count({ label: 'parts of this kind', min: 1, max: 100_000, default: 1 }),
        length: field.length({ label: 'finished length', above: '0 mm', max: '30 m' }),
        width: field.length({ label: 'finished width', above: '0 mm', max: '5 m', optional: true }),
        thickness: field.length({ label: 'finished thickness', above: '0 mm', max: '1 m', optional: true }),
        material: field.text({
          label: 'material',
          help: 'A name that stands in the prices.',
          optional: true,
        }),
        price: priceField({ label: 'price', help: 'Price of this part’s timber.', optional: true }),
      },
      { label: 'parts', help: 'One row for each part.' },
    ),
    price: priceField({ label: 'price', help: 'For parts that name no other.', optional: true }),
    prices: field.record(priceField({ label: 'price of a material' }), {
      label: 'price of each material',
      optional: true,
    }),
    waste: field.either(
      [
        field.share({ label: 'added for waste', min: '0 %', max: '1000 %' }),
        field.choice(customary, { label: 'how the timber comes' }),
      ],
      { label: 'waste', help: 'Share added to the net quantity, or how the timber is sold.', default: '0 %' },
    ),
  },
  outputs: {
    total: out.money({ label: 'cost of all parts' }),
    low: out.money({ label: 'cost, low waste', help: 'Cost at the lower usual waste.', optional: true }),
    netCost: out.money({ label: 'net cost', help: 'Cost of the parts without waste.' }),
    waste: out.share({ label: 'added for waste' }),
    volume: out.volume({ label: 'net volume', help: 'Volume of the parts whose section is given.' }),
    volumeToBuy: out.volume({ label: 'volume to buy', help: 'Net volume with waste added.' }),
    byPart: out.table(
      {
        name: out.text({ label: 'part' }),
        count: out.count({ label: 'count' }),
        quantity: out.text({ label: 'net quantity priced' }),
        each: out.money({ label: 'cost of one' }),
        cost: out.money({ label: 'cost of all' }),
        share: out.share({ label: 'share of the total' }),
      },
      { label: 'By part, waste included' },
    ),
  },
  formulas: [gross, cost],
  solve: (given, trace) => {
    const row = tableRows('waste-allowances.furnituremaking-calculations').find(
      (r) => r.text('material') === given.waste,
    );
    if (row) {
      trace.source(row.citation);
      trace.note(
        `${row.text('material')}: ${row.number('add_low_pct')} to ${row.number('add_high_pct')} % is added; the higher is taken.`,
        row.citation,
      );
    }
    const high = row ? (row.number('add_high_pct') as number) / 100 : (given.waste as number);
    const low = row ? (row.number('add_low_pct') as number) / 100 : high;
    const priced = pricedParts(given).map((line) => {
      const Q = trace.evaluate(gross, { N: line.quantity, w: high }, `${line.part.name}, quantity to buy`);
      const paid = trace.evaluate(cost, { Q, p: line.price.amount }, `${line.part.name}, cost`);
      return { ...line, cost: paid };
    });
    const total = priced.reduce((s, l) => s + l.cost, 0);
    const netCost = total / (1 + high);
    const unit = { piece: '', length: ' m', area: ' m²', volume: ' m³' };
    const volume = given.parts.reduce(
      (s, p) =>
        s +
        (p.width === undefined || p.thickness === undefined ? 0 : p.count * p.length * p.width * p.thickness),
      0,
    );
    return {
      total,
      ...(row ? { low: netCost * (1 + low) } : {}),
      netCost,
      waste: high,
      volume,
      volumeToBuy: volume * (1 + high),
      byPart: priced.map((l) => ({
        name: l.part.name,
        count: l.part.count,
        quantity: `${Number(l.quantity.toPrecision(4))}${unit[l.price.by]}`,
        each: l.cost / l.part.count,
        cost: l.cost,
        share: total === 0 ? 0 : l.cost / total,
      })),
    };
  },
  cautions: (given) => [
    ...(given.waste === 0
      ? [note('no waste was added: salvaged or rough timber takes more than the parts hold')]
      : []),
    note('waste is added to the net quantity; a yield is another thing: 20 % added is a yield of 83 %'),
  ],
  chart: (given, answer) => {
    const prices = [given.price, ...given.parts.map((p) => p.price), ...Object.values(given.prices ?? {})];
    const currency = prices.find((p) => p?.currency)?.currency;
    const money = (value: number): string =>
      formatQuantity({ kind: 'money', value, ...(currency ? { currency } : {}) });
    const most = [...answer.byPart].sort((a, b) => b.cost - a.cost).slice(0, 25);
    return barChart({
      title: 'Cost by part',
      of: '',
      value: { title: 'Cost', zero: true, ...(currency ? { unit: currency } : {}) },
      bars: most.map((p) => ({
        name: p.count > 1 ? `${p.name} (${p.count})` : p.name,
        value: p.cost,
        label: money(p.cost),
      })),
    });
  },
  sentence: 'The timber costs {total}, with {waste} added for waste.',
  example: {
    parts: [
      { name: 'rail', count: 2, length: '1.8 m', width: '70 mm', thickness: '34 mm' },
      { name: 'leg', count: 4, length: '860 mm', width: '70 mm', thickness: '34 mm' },
      { name: 'brace', count: 2, length: '720 mm', width: '45 mm', thickness: '20 mm' },
    ],
    price: '€680/m3',
    waste: 'square-edge hardwood',
  },
});
