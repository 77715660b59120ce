import { barChart } from '../../charts/barChart.js';
import { formatQuantity } from '../../quantities/format.js';
import { Refusal, type Trouble } from '../../quantities/refusal.js';
import { note } from '../../recipe/caution.js';
import { field } from '../../recipe/field.js';
import { formula, letter } from '../../recipe/formula.js';
import { out } from '../../recipe/output.js';
import { recipe } from '../../recipe/recipe.js';
import { tableField } from '../../recipe/table.js';
import { tableRows } from '../../timber/tables.js';
import { priceField, type Price } from './price.js';

/** Usual additions for waste, by how the timber comes: the higher of the two printed figures is the one to buy by. */
const customary = [
  'softwood scantlings',
  'square-edge hardwood',
  'waney-edge boards',
  'very wasteful logs',
  'plywood',
  'veneers',
] as const;

const net = letter('ratio', 'quantity in the finished parts, in the price’s own unit');
const gross = formula({
  symbol: 'Q',
  gives: letter('ratio', 'quantity to buy, in the price’s own unit'),
  text: 'N * (1 + w)',
  where: { N: net, w: letter('share', 'added for waste') },
  basis: 'definition',
});
const cost = formula({
  symbol: 'C',
  gives: letter('money', 'cost of a part'),
  text: 'Q p',
  where: {
    Q: letter('ratio', 'quantity to buy, in the price’s own unit'),
    p: letter('money', 'price of one'),
  },
  basis: 'definition',
});

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
        name: field.text({ says: 'name of the part' }),
        count: field.count({ says: 'parts of this kind', min: 1, max: 100_000, default: 1 }),
        length: field.length({ says: 'finished length', above: '0 mm', max: '30 m' }),
        width: field.length({ says: 'finished width', above: '0 mm', max: '5 m', optional: true }),
        thickness: field.length({ says: 'finished thickness', above: '0 mm', max: '1 m', optional: true }),
        material: field.text({ says: 'material, a name in prices', optional: true }),
        price: priceField({ says: 'price of this part’s timber', optional: true }),
      },
      { says: 'parts, a row each' },
    ),
    price: priceField({ says: 'price for parts that name no other', optional: true }),
    prices: field.record(priceField({ says: 'price of a material' }), {
      says: 'price of each material',
      optional: true,
    }),
    waste: field.either(
      [
        field.share({ says: 'added for waste', min: '0 %', max: '1000 %' }),
        field.choice(customary, { says: 'how the timber comes' }),
      ],
      { says: 'added to the net quantity for waste, or how the timber comes', default: '0 %' },
    ),
  },
  outputs: {
    total: out.money({ says: 'cost of all parts' }),
    low: out.money({ says: 'cost at the lower usual waste', optional: true }),
    netCost: out.money({ says: 'cost of the parts alone, without waste' }),
    waste: out.share({ says: 'added for waste' }),
    volume: out.volume({ says: 'volume of the parts whose section is given' }),
    volumeToBuy: out.volume({ says: 'that volume with waste added' }),
    byPart: out.table(
      {
        name: out.text({ says: 'part' }),
        count: out.count({ says: 'count' }),
        quantity: out.text({ says: 'net quantity priced' }),
        each: out.money({ says: 'cost of one' }),
        cost: out.money({ says: 'cost of all' }),
        share: out.share({ says: 'share of the total' }),
      },
      { says: 'By part, waste included' },
    ),
  },
  formulas: [gross, cost],
  solve: (given, work) => {
    const row = tableRows('waste-allowances.furnituremaking-calculations').find(
      (r) => r.text('material') === given.waste,
    );
    if (row) {
      work.source(row.citation);
      work.say(
        `${row.text('material')}: ${row.number('add_low_pct')} to ${row.number('add_high_pct')} % is added; the higher is taken.`,
        row.citation,
      );
    }
    const high = row ? (row.number('add_high_pct') as number) / 100 : (given.waste as number);
    const low = row ? (row.number('add_low_pct') as number) / 100 : high;
    const troubles: Trouble[] = [];
    const lines = given.parts.map((part, i) => {
      const at = `parts[${i + 1}]`;
      const price = part.price ?? given.prices?.[part.material ?? ''] ?? given.price;
      if (!price) {
        troubles.push({
          field: part.material === undefined ? 'price' : `prices.${part.material}`,
          says: `missing; ${at} (${part.name}) needs a price: takes price, a price column, or prices by material`,
        });
        return { part, price: { by: 'piece', amount: 0 } as Price, quantity: 0 };
      }
      const { count: n, length: l, width: w, thickness: t } = part;
      if ((price.by === 'area' || price.by === 'volume') && w === undefined)
        troubles.push({
          field: `${at}.width`,
          says: `missing; takes a width, since the price is by ${price.by}`,
        });
      if (price.by === 'volume' && t === undefined)
        troubles.push({
          field: `${at}.thickness`,
          says: 'missing; takes a thickness, since the price is by volume',
        });
      return {
        part,
        price,
        quantity: { piece: n, length: n * l, area: n * l * (w ?? 0), volume: n * l * (w ?? 0) * (t ?? 0) }[
          price.by
        ],
      };
    });
    // One price may be missing for many rows: it is asked for once.
    if (troubles.length > 0) throw new Refusal([...new Map(troubles.map((t) => [t.field, t])).values()]);
    const priced = lines.map(({ part, price, quantity }) => {
      const Q = work.apply(gross, { N: quantity, w: high }, `${part.name}, quantity to buy`);
      return { part, price, quantity, cost: work.apply(cost, { Q, p: price.amount }, `${part.name}, cost`) };
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
