import { describe, expect, it } from 'vitest';
import type { Kind } from '../../src/units/kind.js';
import { parseQuantity, toQuantity } from '../../src/units/parse-quantity.js';
import { Quantity } from '../../src/units/quantity.js';
import { InputError } from '../../src/units/input-error.js';

/** Exact definitions: international yard and pound (1959), standard gravity (3rd CGPM 1901), US gallon of 231 in3. */
const right: readonly [text: string, kind: Kind, base: number][] = [
  ['900 mm', 'length', 0.9],
  ['0.9 m', 'length', 0.9],
  ['0.9m', 'length', 0.9],
  ['35 7/16 in', 'length', 35.4375 * 0.0254],
  ['35-7/16"', 'length', 35.4375 * 0.0254],
  [`5' 10 1/2"`, 'length', 70.5 * 0.0254],
  [`5'10½"`, 'length', 70.5 * 0.0254],
  ['5 ft 10 1/2 in', 'length', 70.5 * 0.0254],
  [`-5' 3"`, 'length', -63 * 0.0254],
  ['3/4"', 'length', 0.75 * 0.0254],
  ['¾ in', 'length', 0.75 * 0.0254],
  ['1½″', 'length', 1.5 * 0.0254],
  ['12 ft', 'length', 12 * 0.3048],
  [`12'`, 'length', 12 * 0.3048],
  ['8 %', 'moisture', 0.08],
  ['8%', 'humidity', 0.08],
  ['21 degC', 'temperature', 21],
  ['21 °C', 'temperature', 21],
  ['70 degF', 'temperature', (70 - 32) / 1.8],
  ['294.15 K', 'temperature', 21],
  ['40 kPa', 'pressure', 40_000],
  ['6 psi', 'pressure', (6 * 0.45359237 * 9.80665) / 0.0254 ** 2],
  ['2 L', 'liquid', 0.002],
  // 231 cubic inches, and 4.54609 L (Weights and Measures Act 1985).
  ['1 US gal', 'liquid', 231 * 0.0254 ** 3],
  ['2 imperial pints', 'liquid', 2 * (4.54609e-3 / 8)],
  ['8/4', 'length', 2 * 0.0254],
  ['3 ft 6', 'length', 3.5 * 0.3048],
  ['1 h 30 min', 'time', 5400],
  ['1h30', 'time', 5400],
  ['2 lb 4 oz', 'mass', 2.25 * 0.45359237],
  ['1 bf', 'volume', 144 * 0.0254 ** 3],
  ['12 board ft', 'boardFeet', 12 * 144 * 0.0254 ** 3],
  ['35 lb/1000ft2', 'applicationRate', (35 * 0.45359237) / (1000 * 0.3048 ** 2)],
  ['12 m2/L', 'coverage', 12_000],
  ['1.55 kN/m', 'lineLoad', 1550],
  ['9.5 GPa', 'modulus', 9.5e9],
  ['40 psf', 'areaLoad', (40 * 0.45359237 * 9.80665) / 0.3048 ** 2],
  ['6000 rpm', 'rotation', 100],
  ['60 ft/min', 'speed', 0.3048],
  ['45°', 'angle', Math.PI / 4],
  ['15 min', 'time', 900],
  ['$12.50', 'money', 12.5],
  ['4.20/m', 'pricePerLength', 4.2],
  ['1e3 mm', 'length', 1],
  ['.5 in', 'length', 0.0127],
  ['10 kg/m^3', 'density', 10],
  ['12\u202f345 mm', 'length', 12.345], // thousands as our own output sets them apart
  ['1\u00a0234\u00a0567 mm', 'length', 1234.567],
  ['1\u00a0234/1000 in', 'length', 1.234 * 0.0254],
  ['5 1/min', 'rotation', 5 / 60],
  ['2 m^2', 'area', 2],
  ['1 hectare', 'area', 10_000], // from mathjs, not from the table
];

describe('parseQuantity', () => {
  it.each(right)('reads %s as %s', (text, kind, base) => {
    expect(Math.abs(parseQuantity(text, kind).value - base)).toBeLessThanOrEqual(Math.abs(base) * 1e-14);
  });

  it('keeps the sign of the currency and shows it', () => {
    expect(parseQuantity('€ 12.5', 'money').toString()).toBe('€12.50');
    expect(parseQuantity('AUD 4.20/m', 'pricePerLength').toString()).toBe('AUD 4.20/m');
    expect(parseQuantity('-$12.50', 'money').toString()).toBe('-$12.50');
    expect(parseQuantity('-AUD 3', 'money').value).toBe(-3);
    expect(parseQuantity('1000000000000000000000', 'money').toString()).toBe('1e21');
    expect(() => parseQuantity('-', 'money')).toThrow(InputError);
  });

  it.each([
    ['', 'length', /empty/],
    ['900', 'length', /no unit.*length.*"900 mm"/],
    ['900 kg', 'length', /unit "kg" of a mass, takes a length/],
    ['abc', 'length', /got "abc"/],
    ['1,250.5 m', 'length', /write a point/],
    ['2 milimetre', 'length', /did you mean "millimetre"/],
    ['1/0 in', 'length', /not 0/],
    ['1e400 mm', 'length', /finite/],
    ['1e308 m', 'length', /at most 1e200/], // could not be shown in millimetres
    // A second number was once taken for part of the unit and dropped.
    ['1 200 mm', 'length', /one number, with no space inside it/],
    ['3 0.5 m', 'length', /one number/],
    ['3 .5 m', 'length', /got the unit/],
    ['5 2/min', 'rotation', /one number/],
    ['3 m 2m', 'area', /got the unit/],
    ['-300 degC', 'temperature', /absolute zero/],
    [`5' 3 mm`, 'length', /5' 10 1\/2"/],
    ['0.2', 'share', /no unit/],
    ['__proto__', 'length', /got/],
    ['1 constructor', 'length', /got the unit/],
    ['1 toString', 'mass', /got the unit/],
    ['x'.repeat(100_000), 'length', /100000 characters/],
  ] as const)('refuses %j as %s', (text, kind, message) => {
    expect(() => parseQuantity(text, kind)).toThrow(InputError);
    expect(() => parseQuantity(text, kind)).toThrow(message);
  });

  it('takes quantities of its own kind and of the same measure, and no other', () => {
    expect(toQuantity(new Quantity('length', 1), 'length').value).toBe(1);
    expect(toQuantity(new Quantity('stress', 5), 'pressure').value).toBe(5);
    expect(() => toQuantity(new Quantity('moisture', 0.1), 'humidity')).toThrow(
      /moisture content.*relative humidity/,
    );
    expect(() => toQuantity(8, 'moisture')).toThrow(/no unit/);
    expect(toQuantity(4, 'count').value).toBe(4);
    expect(toQuantity({ value: 900, unit: 'mm' }, 'length').value).toBeCloseTo(0.9, 15);
  });
});

describe('text that does not say enough', () => {
  it.each([
    [
      '2 pints',
      'liquid',
      /^got "2 pints", which may be US or imperial; write "2 US pints" or "2 imp pints"$/,
    ],
    ['1 gal', 'volume', /write "1 US gal" or "1 imp gal"/],
    ['40x70', 'length', /^got "40x70" with no unit, .* two sides are written "40 x 70 mm"/],
    ['1 h 90 min', 'time', /the second part is less than one of the first/],
    ['3 ft 14', 'length', /feet and inches are written/],
    ['3/4', 'length', /^got "3\/4" with no unit, takes a length such as "900 mm"; write "3\/4 mm"$/],
    ['900', 'length', /; write "900 mm"$/],
    ['12', 'moisture', /; write "12 %"$/],
  ] as const)('%s as %s is asked back', (text, kind, message) => {
    expect(() => parseQuantity(text, kind)).toThrow(message);
  });
});
