import { describe, expect, it } from 'vitest';
import { Quantity } from '../../../src/units/quantity.js';
import { boardMeasure } from '../../../src/recipes/stock/board-measure.js';
import { partsCost } from '../../../src/recipes/stock/parts-cost.js';
import { barsOf, barTitle, linesOf, marksOf, pointsOf, titleOf, titlesOf } from '../chart-data.js';
import { fieldsOf, refusalOf } from '../refused.js';

const field = boardMeasure.inputs.price;

describe('a price as it is written', () => {
  it.each([
    ['6.50/bf', 'volume', 6.5 / 0.002359737216], // a board foot is 144 cubic inches
    ['950/m3', 'volume', 950],
    ['38/m2', 'area', 38],
    ['4.20/m', 'length', 4.2],
    ['12', 'piece', 12],
    ['12 each', 'piece', 12],
    ['12 / board', 'piece', 12],
    ['12 per piece', 'piece', 12],
    ['12 a board', 'piece', 12],
    [' 12 pcs ', 'piece', 12],
    [12, 'piece', 12],
    [0, 'piece', 0],
  ] as const)('%j is by %s', (written, by, amount) => {
    const price = field.read(written);
    expect(price?.by).toBe(by);
    expect(price?.amount).toBeCloseTo(amount, 6);
  });

  it('is shown as it was written, or in full', () => {
    expect(field.format(field.read(' £12 each '))).toBe('£12 each');
    expect(field.format(field.read(12))).toMatch(/^12(\.00)? each$/);
    expect(field.format(field.read(new Quantity('pricePerLength', 4.2, '£')))).toMatch(/^£4\.20? ?\/m$/);
    expect(field.format(undefined)).toBe('not given');
  });

  it('may be text, a number or a quantity, and nothing else', () => {
    for (const v of ['x', 5, new Quantity('money', 3), { value: 3, unit: 'money/m' }])
      expect(field.accepts(v)).toBe(true);
    for (const v of [null, undefined, true, {}, [], () => 1]) expect(field.accepts(v)).toBe(false);
  });

  it('is in one currency', () => {
    const two = [{ name: 'a', length: '1 m', price: '$9/m' }, { name: 'b', length: '1 m', price: '€9/m' }]; // prettier-ignore
    expect(refusalOf(() => partsCost({ parts: two })).message).toMatch(/parts\[2\]\.price: got prices in "\$" and "€", takes one currency/); // prettier-ignore
  });

  it('of a piece is never read as by the metre', () => {
    expect(
      fieldsOf(() => boardMeasure({ length: '1 m', width: '1 m', thickness: '1 m', price: '4/m each' })),
    ).toEqual(['price']);
    expect(
      refusalOf(() => boardMeasure({ length: '1 m', width: '1 m', thickness: '1 m', price: '-4/m' })).message,
    ).toMatch(/got "-4\/m", takes a price of 0 or more/);
  });
});

describe('the cost of parts by hand', () => {
  // 2 x 1.8 x 0.07 x 0.034 = 0.008568 m3, 4 x 0.86 x 0.07 x 0.034 = 0.0081872 m3, 2 x 0.72 x 0.045 x 0.02 = 0.001296 m3;
  // 20 % on top at 680 a cubic metre: 6.991488, 6.6807552 and 1.057536.
  it('is 680 a cubic metre with a fifth on top, in all and part by part', () => {
    const r = partsCost(partsCost.example);
    expect(r.byPart.map((p) => p.cost.value)).toEqual(
      [6.991488, 6.6807552, 1.057536].map((v) => expect.closeTo(v, 9) as number),
    );
    expect(r.byPart.map((p) => p.each.value)).toEqual(
      [3.495744, 1.6701888, 0.528768].map((v) => expect.closeTo(v, 9) as number),
    );
    expect(r.byPart.map((p) => p.quantity)).toEqual(['0.008568 m³', '0.008187 m³', '0.001296 m³']);
    expect(r.total.value).toBeCloseTo(14.7297792, 9);
    expect(r.netCost.value).toBeCloseTo(12.274816, 9);
    expect(r.low?.value).toBeCloseTo(12.274816 * 1.15, 9);
    expect(r.waste.value).toBeCloseTo(0.2, 12);
    expect(r.volume.in('m3')).toBeCloseTo(0.0180512, 9);
    expect(r.volumeToBuy.in('m3')).toBeCloseTo(0.02166144, 9);
    expect(r.byPart[2]?.share.value).toBeCloseTo(1.057536 / 14.7297792, 9);
    expect(r.workings.some((w) => w.text.includes('15 to 20 % is added'))).toBe(true);
  });

  it('is drawn dearest first, with its currency on the axis and at the bars', () => {
    const r = partsCost(partsCost.example);
    expect(barTitle(r.chart)).toBe('Cost (€)');
    expect(barsOf(r.chart).map((b) => [b.name, b.label])).toEqual([['rail (2)', '€6.99'], ['leg (4)', '€6.68'], ['brace (2)', '€1.06']]); // prettier-ignore
    const plain = partsCost({ parts: [{ name: 'a', length: '1 m' }, { name: 'b', length: '3 m', count: 2 }], price: '2/m' }); // prettier-ignore
    expect(barTitle(plain.chart)).toBe('Cost');
    expect(barsOf(plain.chart).map((b) => [b.name, b.value])).toEqual([['b (2)', 12], ['a', 2]]); // prettier-ignore
    // The currency may stand in the row or at the material.
    expect(barTitle(partsCost({ parts: [{ name: 'a', length: '1 m', price: '£2/m' }] }).chart)).toBe(
      'Cost (£)',
    );
    expect(barTitle(partsCost({ parts: [{ name: 'a', length: '1 m', material: 'oak' }], prices: { oak: '$2/m' } }).chart)).toBe('Cost ($)'); // prettier-ignore
    const many = Array.from({ length: 30 }, (_, i) => ({ name: `p${i}`, length: `${i + 1} m` }));
    expect(barsOf(partsCost({ parts: many, price: '1/m' }).chart).map((b) => b.value)).toEqual(Array.from({ length: 25 }, (_, i) => 30 - i)); // prettier-ignore
  });

  it('asks once for a price that many rows lack, and for the sides a price needs', () => {
    const a = { name: 'a', length: '1 m' };
    expect(fieldsOf(() => partsCost({ parts: [a, a] }))).toEqual(['price']);
    expect(fieldsOf(() => partsCost({ parts: [{ ...a, material: 'oak' }, { ...a, material: 'ash' }] }))).toEqual(['prices.oak', 'prices.ash']); // prettier-ignore
    expect(fieldsOf(() => partsCost({ parts: [a], price: '9/m2' }))).toEqual(['parts[1].width']);
    expect(fieldsOf(() => partsCost({ parts: [a], price: '9/m3' }))).toEqual(['parts[1].width', 'parts[1].thickness']); // prettier-ignore
    expect(fieldsOf(() => partsCost({ parts: [{ ...a, width: '9 mm' }], price: '9/m3' }))).toEqual(['parts[1].thickness']); // prettier-ignore
    // By the metre or the piece no section is wanted, and a material without a price of its own has the common one.
    expect(partsCost({ parts: [{ ...a, material: 'oak' }], prices: { ash: '9/m' }, price: '5/m' }).total.value).toBeCloseTo(5, 12); // prettier-ignore
    // A part of no named material takes the common price, whatever the materials cost.
    expect(partsCost({ parts: [a], prices: { ash: '9/m' }, price: '5/m' }).total.value).toBeCloseTo(5, 12);
    expect(partsCost({ parts: [{ ...a, count: 3 }], price: '5 each' }).byPart[0]?.quantity).toBe('3');
    expect(partsCost({ parts: [{ ...a, length: '2 m', count: 3 }], price: '5/m' }).byPart[0]?.quantity).toBe(
      '6 m',
    );
    expect(
      partsCost({ parts: [{ ...a, length: '2 m', width: '200 mm' }], price: '5/m2' }).byPart[0]?.quantity,
    ).toBe('0.4 m²');
  });

  it('counts volume only where both sides are given, and shares of nothing as none', () => {
    const r = partsCost({ parts: [{ name: 'a', length: '1 m', width: '100 mm' }, { name: 'b', length: '1 m', thickness: '10 mm' }], price: '0 each' }); // prettier-ignore
    expect(r.volume.value).toBe(0);
    expect(r.byPart.map((p) => p.share.value)).toEqual([0, 0]);
    expect(r.low).toBeUndefined();
  });

  it('reminds of waste only when none is added', () => {
    const at = (waste: string) =>
      partsCost({ parts: [{ name: 'a', length: '1 m' }], price: '1/m', waste }).cautions.some((c) => c.text.startsWith('no waste')); // prettier-ignore
    expect([at('0 %'), at('1 %')]).toEqual([true, false]);
  });
});

describe('board measure by hand', () => {
  it('prices a stack by piece, length, face and volume', () => {
    // Seven boards of 2 m x 0.2 m x 0.05 m: 14 m, 2.8 m2, 0.14 m3.
    const at = (price: string) =>
      boardMeasure({ length: '2 m', width: '200 mm', thickness: '50 mm', count: 7, price });
    expect(at('3 each').price?.value).toBeCloseTo(21, 9);
    expect(at('3/m').price?.value).toBeCloseTo(42, 9);
    expect(at('3/m2').price?.value).toBeCloseTo(8.4, 9);
    const r = at('£1000/m3');
    expect(r.price?.value).toBeCloseTo(140, 9);
    expect(r.pricePerMetre?.in('money/m')).toBeCloseTo(10, 9);
    expect(r.pricePerPiece?.value).toBeCloseTo(20, 9);
    expect(r.pricePerCubicMetre?.in('money/m3')).toBeCloseTo(1000, 9);
    expect(boardMeasure({ length: '2 m', width: '200 mm', thickness: '50 mm' }).price).toBeUndefined();
  });

  it('warns of the custom of the trade below an inch, and not at it', () => {
    const warns = (thickness: string) =>
      boardMeasure({ length: '2 m', width: '200 mm', thickness }).cautions.some((c) => c.text.includes('thinner than 1 in')); // prettier-ignore
    expect([warns('1 in'), warns('25.4 mm'), warns('25.3 mm')]).toEqual([false, false, true]);
  });

  it('draws board feet against length for three widths', () => {
    // n t w l / 12 with t = 2 in, w = 3, 6 and 9 in, l = 16 ft, twelve of them: 96, 192 and 288.
    const { chart } = boardMeasure(boardMeasure.example);
    expect(titleOf(chart)).toBe('Board feet of 12 pieces 50.8 mm thick');
    expect(titlesOf(chart)).toEqual(['Length of a piece (m)', 'Board measure (bf)']);
    expect(linesOf(chart)).toEqual(['76 mm wide', '152 mm wide', '229 mm wide']);
    [96, 192, 288].forEach((bf, i) => {
      const [from, to] = pointsOf(chart, linesOf(chart)[i]);
      expect(from).toEqual([0, 0]);
      expect(to).toEqual([expect.closeTo(16 * 0.3048, 9), expect.closeTo(bf, 6)]);
    });
    expect(marksOf(chart)[0]).toEqual({ x: expect.closeTo(8 * 0.3048, 9) as number, y: expect.closeTo(96, 6) as number, label: 'these' }); // prettier-ignore
    expect(titleOf(boardMeasure({ length: '2 m', width: '9 mm', thickness: '50 mm' }).chart)).toContain('of a piece 50 mm'); // prettier-ignore
  });
});
