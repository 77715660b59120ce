import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frame } from '../../../src/explore/frame.js';
import { Quantity } from '../../../src/units/quantity.js';
import { InputError } from '../../../src/units/input-error.js';
import type { Fields } from '../../../src/engine/field.js';
import { bill } from '../../../src/recipes/bill/bill.js';
import { pieceWeight } from '../../../src/recipes/moisture/piece-weight.js';
import { partsCost } from '../../../src/recipes/stock/parts-cost.js';
import { finishQuantity } from '../../../src/recipes/finish/finish-quantity.js';

const one = (line: object, more: object = {}) => bill({ lines: [{ item: 'x', ...line }], ...more } as never);

describe('a line costs its quantity times its price', () => {
  // Each worked out by hand, by definition of the units.
  it.each([
    ['pieces', { quantity: 12, price: 0.25 }, 3],
    ['pieces in words', { quantity: '12 pieces', price: '0.25 each' }, 3],
    ['tins in a column of their own', { quantity: 2, unit: 'tins', price: '16.50' }, 33],
    ['a number as text, its unit in a column', { quantity: '2', unit: 'm', price: '4/m' }, 8],
    ['litres by the litre', { quantity: '2.5 L', price: 18 }, 45],
    ['millilitres by the litre', { quantity: '750 mL', price: '14/L' }, 10.5],
    ['millimetres by the metre', { quantity: '1950 mm', price: '4/m' }, 7.8],
    ['board feet by the cubic metre', { quantity: '100 bf', price: '1000/m3' }, 235.97], // 100 bf are 0.235 973 7 m3
    ['square metres by the square foot', { quantity: '1 m2', price: '1/ft2' }, 10.76], // 10.7639 ft2
    ['grams by the kilogram', { quantity: '250 g', price: '9/kg' }, 2.25],
    ['minutes by the hour', { kind: 'time', quantity: '90 min', price: '40/h' }, 60],
    ['an hour and a half by the hour', { kind: 'time', quantity: 1.5, unit: 'h', price: 40 }, 60],
    ['nothing for salvage', { quantity: '0.06 m3', price: 0 }, 0],
    ['feet and inches by the foot', { quantity: `5' 6"`, price: '2/ft' }, 11],
    ['feet and inches at a price for one', { quantity: '5 ft 6 in', price: 2 }, 11],
    ['half of a metre at a price for one', { quantity: '½ m', price: 3 }, 1.5],
    ['a thousand millimetres at a price for one', { quantity: '1e3 mm', price: 0.01 }, 10],
    ['three quarters of a box', { quantity: '3/4 box', price: 8 }, 6],
    ['two and a half packs', { quantity: '2½ packs', price: 4 }, 10],
    ['a fraction of an inch', { quantity: '5 1/2 ft', price: '2/ft' }, 11],
  ])('%s', (_what, line, cost) => {
    expect(one(line).total.value).toBeCloseTo(cost, 9);
  });
  it('an hourly price serves every line of time that has none, whatever its unit', () => {
    const r = bill({
      lines: [
        { item: 'a', kind: 'time', quantity: '90 min' },
        { item: 'b', kind: 'time', quantity: '2 h', price: '50/h' },
      ],
      hourly: 40,
    });
    expect(r.total.value).toBeCloseTo(160, 9);
    expect(r.time?.in('h')).toBeCloseTo(3.5, 12);
  });
  it('says what a price was for', () => {
    const price = (p: string | number, quantity: string | number = 2) =>
      one({ quantity, price: p }).lines[0]?.price;
    expect(price('4 each')).toBe('4.00 each');
    expect(price('4')).toBe('4.00');
    expect(price('4/m', '2 m')).toBe('4/m');
    const hours = bill({
      lines: [
        { item: 'a', kind: 'time', quantity: '90 min' },
        { item: 'b', kind: 'time', quantity: '2 h', price: 50 },
      ],
      hourly: 40,
    });
    expect(hours.lines.map((l) => l.price)).toEqual(['40.00/h', '50.00']);
  });
  it('keeps the currency that was written, and refuses a second', () => {
    expect(one({ quantity: 1, price: '€12.50' }).total.toString()).toContain('€');
    expect(() =>
      bill({
        lines: [
          { item: 'a', quantity: 1, price: '€1' },
          { item: 'b', quantity: 1, price: '$1' },
        ],
      }),
    ).toThrow(/one currency/);
  });
});

describe('mass', () => {
  it.each([
    ['of the whole line', { quantity: 3, mass: '2 kg' }, 2],
    ['of each', { quantity: 48, massEach: '6 g' }, 0.288],
    ['of each of the unit written', { quantity: '200 mm', massEach: '1 g' }, 0.2],
    ['of a quantity that is one', { quantity: '1.2 kg' }, 1.2],
    ['weighed, though a density is given', { quantity: '0.05 m3', density: '520 kg/m3', mass: '20 kg' }, 20],
    ['by density', { quantity: '0.05 m3', density: '520 kg/m3' }, 26],
  ])('%s', (_what, line, kg) => {
    expect(one(line).mass?.in('kg')).toBeCloseTo(kg, 9);
  });
  it('is not calculated, nor shown, where it is given', () => {
    const worked = (more: object) => one({ quantity: '0.05 m3', density: '520 kg/m3', ...more }).toText();
    expect(worked({})).toMatch(/x: mass/);
    expect(worked({ mass: '20 kg' })).not.toMatch(/x: mass/);
    expect(worked({ massEach: '400 kg' })).not.toMatch(/x: mass/);
  });
  it('is summed by sort, and left out where no line has one', () => {
    const r = bill({
      lines: [
        { item: 'a', kind: 'timber', quantity: 1, mass: '2 kg' },
        { item: 'b', kind: 'glue', quantity: 1 },
        { item: 'c', kind: 'timber', quantity: 1, mass: '3 kg' },
        { item: 'd', kind: 'timber', quantity: 1 },
      ],
    });
    expect(r.byKind.map((k) => [k.kind, k.lines, k.mass?.in('kg')])).toEqual([
      ['timber', 3, 5],
      ['glue', 1, undefined],
    ]);
    expect(r.mass?.in('kg')).toBe(5);
    expect(r.lines.map((l) => l.mass?.in('kg'))).toEqual([2, undefined, 3, undefined]);
    expect(one({ quantity: 1 }).mass).toBeUndefined();
  });
  it('says which lines have none', () => {
    const r = bill({
      lines: [
        { item: 'top', quantity: 1, price: 1, mass: '9 kg' },
        { item: 'feet', quantity: 4, price: 1 },
      ],
    });
    expect(r.cautions.map((c) => c.text).join()).toMatch(/no mass.*feet/);
    expect(
      one({ quantity: 1 })
        .cautions.map((c) => c.text)
        .join(),
    ).toMatch(/no price/);
  });
});

describe('the picture of a bill', () => {
  const drawn = (r: { chart: unknown }): string => JSON.stringify(r.chart);
  it('is not drawn where everything is free', () => {
    expect(one({ quantity: 3, price: 0 }).chart).toBeUndefined();
    expect(one({ quantity: 3, price: 0.01 }).chart).toBeDefined();
  });
  it('carries the currency of the prices, or of the hour, and the mass', () => {
    const euros = drawn(one({ quantity: 2, price: '€12.50', mass: '3 kg' }));
    expect(euros).toContain('€25.00 in all, 3 kg');
    expect(euros).toContain('"Cost (€)"');
    const hours = drawn(one({ kind: 'time', quantity: '2 h' }, { hourly: '£30/h' }));
    expect(hours).toContain('£60.00 in all');
    expect(hours).not.toContain('kg');
    const plain = drawn(one({ quantity: 2, price: 12.5 }));
    expect(plain).toContain('25.00 in all');
    expect(plain).toContain('"Cost"');
  });
  it('gives each sort its cost and share, and marks the dearest', () => {
    const r = bill({
      lines: [
        { item: 'a', kind: 'timber', quantity: 3, price: 20 },
        { item: 'b', kind: 'glue', quantity: 1, price: 20 },
      ],
    });
    expect(drawn(r)).toMatch(/"timber","value":60,"label":"60.00, 75 %","chosen":true/);
    expect(drawn(r)).toMatch(/"glue","value":20,"label":"20.00, 25 %","chosen":false/);
  });
});

describe('cautions of a bill', () => {
  const texts = (r: { cautions: readonly { text: string }[] }): string =>
    r.cautions.map((c) => c.text).join('|');
  it('lift with two: over 25 kg, and not at it', () => {
    expect(texts(one({ quantity: 1, price: 1, mass: '25 kg' }))).not.toMatch(/two or more/);
    expect(texts(one({ quantity: 1, price: 1, mass: '25.001 kg' }))).toMatch(/over 25 kg: lift it with two/);
    expect(texts(one({ quantity: 1, price: 1 }))).not.toMatch(/two or more/);
  });
  it('names six unpriced lines, and counts the rest', () => {
    const lines = (n: number) =>
      bill({ lines: Array.from({ length: n }, (_, i) => ({ item: `part ${String(i + 1)}`, quantity: 1 })) });
    expect(texts(lines(6))).toContain('part 5, part 6');
    expect(texts(lines(6))).not.toContain('more');
    expect(texts(lines(7))).toContain('part 5, part 6 and 1 more');
    expect(texts(lines(7))).not.toContain('part 7');
    expect(texts(lines(9))).toContain('and 3 more');
  });
  it('time weighs nothing and is not missed', () => {
    const r = bill({
      lines: [
        { item: 'top', quantity: 1, price: 1, mass: '9 kg' },
        { item: 'bench work', kind: 'time', quantity: '2 h', price: '30/h' },
      ],
    });
    expect(texts(r)).not.toMatch(/no mass/);
    expect(texts(one({ quantity: 1, price: 1 }))).not.toMatch(/no mass|no price/);
  });
});

describe('sums', () => {
  const line = fc.record({
    item: fc.constant('x'),
    kind: fc.constantFrom('timber', 'glue', 'finish', 'fixings', 'other'),
    quantity: fc.double({ min: 0, max: 1000, noNaN: true }),
    price: fc.double({ min: 0, max: 1000, noNaN: true }),
  });
  it('the lines, and the sorts, add up to the cent', () => {
    fc.assert(
      fc.property(
        fc.array(line, { minLength: 1, maxLength: 12 }),
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (lines, forgotten) => {
          const r = bill({ lines: lines, forgotten: `${String(forgotten * 100)} %` });
          const in_ = (x: number): number => Math.round(x * 100);
          expect(r.lines.reduce((s, l) => s + in_(l.cost.value), 0)).toBe(in_(r.subtotal.value));
          expect(r.byKind.reduce((s, l) => s + in_(l.cost.value), 0)).toBe(in_(r.subtotal.value));
          expect(in_(r.subtotal.value) + in_(r.forgotten?.value ?? 0)).toBe(in_(r.total.value));
          expect(r.byKind.reduce((s, k) => s + k.lines, 0)).toBe(lines.length);
        },
      ),
    );
  });
  it('do not care for the order of the lines', () => {
    fc.assert(
      fc.property(fc.array(line, { minLength: 2, maxLength: 8 }), (lines) => {
        expect(bill({ lines: [...lines].reverse() }).total.value).toBeCloseTo(
          bill({ lines: lines }).total.value,
          6,
        );
      }),
    );
  });
  it('rounds halves of a hundredth up', () => {
    // 1.005 is a hair less in binary digits.
    for (const [price, cost] of [
      [1.005, 1.01],
      [1.0049, 1],
      [2.675, 2.68],
    ] as const)
      expect(one({ quantity: 1, price }).total.value).toBe(cost);
  });
  it('names only what there is: nothing forgotten, no tax, no hours', () => {
    const r = one({ quantity: '2 tins', price: 3 });
    expect([r.forgotten, r.tax, r.time, r.mass]).toEqual([undefined, undefined, undefined, undefined]);
    const all = one({ quantity: 2, unit: 'tins', price: 3 }, { forgotten: '50 %', tax: '10 %' });
    // 6, half again 3, and a tenth of 9.
    expect([all.subtotal.value, all.forgotten?.value, all.tax?.value, all.total.value]).toEqual([
      6, 3, 0.9, 9.9,
    ]);
    expect(all.lines[0]?.quantity).toBe('2 tins');
    expect(all.byKind).toHaveLength(1);
    expect(all.byKind[0]?.share.in('%')).toBe(100);
    expect(one({ quantity: 1, price: 0 }).byKind[0]?.share.value).toBe(0);
  });
  it('tax comes on the sum and what was forgotten', () => {
    expect(one({ quantity: 1, price: 100 }, { forgotten: '10 %', tax: '20 %' }).total.value).toBeCloseTo(
      132,
      9,
    );
  });
});

describe('a bill joins other results and other forms', () => {
  it('takes a quantity from a result', () => {
    const f = finishQuantity({ surfaces: ['2.4 m2'], coats: 2, coverage: '12 m2/L' });
    expect(one({ kind: 'finish', quantity: f.volume, price: '20/L' }).total.value).toBeCloseTo(8, 9);
  });
  it('takes every measure as a quantity of its own', () => {
    const from = (quantity: unknown, price: string): number =>
      one({ quantity: quantity as string, price }).total.value;
    expect(from(new Quantity('volume', 0.02), '600/m3')).toBeCloseTo(12, 9);
    // 1 board foot is 144 cubic inches: 0.002 359 737 m3. A super foot is as much.
    expect(from(new Quantity('boardFeet', 0.23597372), '1000/m3')).toBeCloseTo(235.97, 9);
    expect(from(new Quantity('superFeet', 0.5), '10/m3')).toBeCloseTo(5, 9);
    expect(from(new Quantity('length', 2.5), '4/m')).toBeCloseTo(10, 9);
    expect(from(new Quantity('mass', 0.25), '8/kg')).toBeCloseTo(2, 9);
    expect(() => from(new Quantity('moisture', 0.1), '4/m')).toThrow(
      /lines\[1\]\.quantity: got .*10 %.*takes how much/,
    );
  });
  it('says which values could be meant for a quantity and for a price', () => {
    const { quantity, price } = bill.inputs.lines.fields as Fields;
    for (const f of [quantity, price, bill.inputs.hourly]) {
      for (const v of ['4.2 m', 12, new Quantity('length', 1)]) expect(f?.accepts(v)).toBe(true);
      for (const v of [true, null, { value: 3 }, [4]]) expect(f?.accepts(v)).toBe(false);
    }
  });
  it('takes the cost of the parts and the weight of the top as they come', () => {
    const cost = partsCost({ parts: [{ name: 'rail', count: 2, length: '1 m', price: '5/m' }] });
    const weight = pieceWeight({
      dimensions: { length: '1.95 m', width: '640 mm', thickness: '42 mm' },
      timber: 'white oak',
      moisture: '10 %',
    });
    const r = bill({
      lines: [{ item: 'timber', kind: 'timber', quantity: 1, price: cost.total, mass: weight.mass }],
    });
    expect(r.total.value).toBeCloseTo(cost.total.value, 2);
    expect(r.mass?.in('kg')).toBeCloseTo(weight.mass.in('kg'), 9);
  });
  it('reads a CSV file, and names the line of a fault', () => {
    const folder = mkdtempSync(join(tmpdir(), 'bill-'));
    try {
      const file = join(folder, 'bill.csv');
      writeFileSync(
        file,
        'item,kind,quantity,unit,price,mass_kg\nrafters,timber,0.06 m3,,180/m3,30\nscrews,fixings,48,,0.11,0.3\n',
      );
      const r = bill({ lines: file });
      expect(r.total.value).toBeCloseTo(10.8 + 5.28, 9);
      expect(r.mass?.in('kg')).toBeCloseTo(30.3, 9);
      writeFileSync(file, 'item,quantity,price\nrafters,1,5\nscrews,many,0.11\n');
      expect(() => bill({ lines: file })).toThrow(/line 3.*quantity.*many/);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
  it('is a data frame, with its units in the names of the columns', async () => {
    const f = await frame(
      bill({
        lines: [
          { item: 'a', quantity: 2, price: 3, massEach: '1 kg' },
          { item: 'b', quantity: '1 L', price: '4/L', mass: '500 g' },
        ],
      }).lines,
    );
    expect(f.shape[0]).toBe(2);
    expect(f.columns).toEqual(expect.arrayContaining(['item', 'kind', 'quantity']));
    expect(f.columns.some((c) => c.startsWith('mass ('))).toBe(true);
  });
});

describe('bill refuses', () => {
  it('a second currency in a price by measure, and in the price of an hour', () => {
    const second = (price: string, hourly?: string) => () =>
      bill({
        lines: [
          { item: 'a', quantity: 1, price: '€1' },
          { item: 'b', quantity: '2 m', price },
        ],
        ...(hourly ? { hourly } : {}),
      });
    expect(second('$4/m')).toThrow(/got prices in "€" and "\$", takes one currency/);
    expect(second('€4/m', '$40')).toThrow(/one currency/);
    expect(second('€4/m', '€40')().lines[1]?.price).toBe('€4/m');
  });
  it('a million million millions, and takes a milliard', () => {
    expect(one({ quantity: 1e9, price: 0 }).lines[0]?.quantity).toBe('1000000000');
    expect(() => one({ quantity: 1.000001e9, price: 0 })).toThrow(/from 0 to a billion/);
    // Counted in the unit written: a milliard of millimetres is no more than a milliard.
    expect(one({ quantity: '1000000000 mm', price: '0/m' }).total.value).toBe(0);
    expect(() => one({ quantity: '1000000001 mm', price: '0/m' })).toThrow(/from 0 to a billion/);
  });
  it('only the unit of a line whose unit is wrong, not what would follow from it', () => {
    expect(() => one({ quantity: 2, unit: 'furlong', price: '4/m' })).toThrow(
      /^bill: lines\[1\]\.unit: [^;]*$/,
    );
  });
  it('price and density of one line together', () => {
    expect(() => one({ quantity: '2 m', price: '4/L', density: '500 kg/m3' })).toThrow(
      /lines\[1\]\.price: .*a length.*; lines\[1\]\.density: .*no volume/,
    );
  });
  it.each([
    ['no lines', { lines: [] }, 'lines', /1 to/],
    [
      'a length by the litre',
      { lines: [{ item: 'a', quantity: '2 m', price: '4/L' }] },
      'lines[1].price',
      /a length/,
    ],
    [
      'pieces by the metre',
      { lines: [{ item: 'a', quantity: 2, price: '4/m' }] },
      'lines[1].price',
      /pieces/,
    ],
    [
      'a unit twice',
      { lines: [{ item: 'a', quantity: '2 m', unit: 'm', price: 4 }] },
      'lines[1].unit',
      /twice/,
    ],
    [
      'a unit nobody knows',
      { lines: [{ item: 'a', quantity: 2, unit: 'furlong', price: 4 }] },
      'lines[1].unit',
      /number of pieces/,
    ],
    [
      'a quantity below nothing',
      { lines: [{ item: 'a', quantity: -2, price: 4 }] },
      'lines[1].quantity',
      /from 0/,
    ],
    [
      'a unit beside counted pieces',
      { lines: [{ item: 'a', quantity: '2 pieces', unit: 'm', price: 4 }] },
      'lines[1].unit',
      /twice, in "2 pieces" and as "m"/,
    ],
    [
      'a length at a price each',
      { lines: [{ item: 'a', quantity: '2 m', price: '4 each' }] },
      'lines[1].price',
      /got a price for pieces with a quantity that is a length/,
    ],
    ['no quantity', { lines: [{ item: 'a', quantity: '', price: 4 }] }, 'lines[1].quantity', /got ""/],
    ['a list of quantities', { lines: [{ item: 'a', quantity: [1, 2] }] }, 'lines[1].quantity', /how much/],
    [
      'a quantity with two points',
      { lines: [{ item: 'a', quantity: '3..4', price: 4 }] },
      'lines[1].quantity',
      /got "3..4"/,
    ],
    [
      'a quantity as long as a letter',
      { lines: [{ item: 'a', quantity: `${'1'.repeat(121)} m`, price: 4 }] },
      'lines[1].quantity',
      /how much/,
    ],
    [
      'a price below nothing',
      { lines: [{ item: 'a', quantity: 2, price: -4 }] },
      'lines[1].price',
      /0 or more/,
    ],
    [
      'time by the piece',
      { lines: [{ item: 'a', kind: 'time', quantity: 3, price: 4 }] },
      'lines[1].quantity',
      /6 h/,
    ],
    [
      'a density of pieces',
      { lines: [{ item: 'a', quantity: 3, density: '500 kg/m3' }] },
      'lines[1].density',
      /no volume/,
    ],
    ['a sort nobody knows', { lines: [{ item: 'a', kind: 'wood', quantity: 3 }] }, 'lines[1].kind', /timber/],
    ['a line with no name', { lines: [{ quantity: 3 }] }, 'lines[1].item', /missing/],
    ['not a number', { lines: [{ item: 'a', quantity: NaN, price: 4 }] }, 'lines[1].quantity', /NaN/],
    ['what no purse holds', { lines: [{ item: 'a', quantity: 1, price: 1e12 }] }, 'lines[1].price', /got/],
  ])('%s', (_what, given, field, message) => {
    let caught: unknown;
    try {
      bill(given as never);
    } catch (error) {
      caught = error;
    }
    expect(caught).toBeInstanceOf(InputError);
    expect(
      (caught as InputError).issues.map((t) => t.field),
      (caught as InputError).message,
    ).toContain(field);
    expect((caught as InputError).message).toMatch(message);
  });
});
