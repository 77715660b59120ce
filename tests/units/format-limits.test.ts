import { describe, expect, it } from 'vitest';
import { formatQuantity, inches, number, showIn } from '../../src/units/format-quantity.js';
import type { Kind } from '../../src/units/kind.js';
import { both, Quantity, tidy } from '../../src/units/quantity.js';

const thin = (text: string): string => text.replace(/(?<=\d) (?=\d{3})/g, '\u202f');

describe('the unit that a quantity is shown in', () => {
  // The largest unit that leaves the number at least 1, a tenth for areas; a whole unit is met in spite of the last digit.
  it.each<[Kind, number, string]>([
    ['length', 19.999, 'mm'],
    ['length', 20, 'm'],
    ['mass', 1, 'kg'],
    ['mass', 1 - 1e-12, 'kg'],
    ['mass', 0.999, 'g'],
    ['area', 0.1, 'm2'],
    ['area', 0.0999, 'mm2'],
    ['modulus', 1e9, 'GPa'],
    ['modulus', 0.9999e9, 'MPa'],
    ['moment', 999, 'N m'],
    ['moment', -1000, 'kN m'],
    ['time', 59, 's'],
    ['time', 60, 'min'],
    ['time', 86400, 'day'],
  ])('for %s %d is %s', (kind, value, unit) => {
    expect(showIn(kind, value)).toBe(unit);
  });
});

describe('the digits of a quantity', () => {
  it.each<[Kind, number, string]>([
    ['length', 0.09994, '99.9 mm'], // to a tenth
    ['length', 0.12346, '123.5 mm'],
    ['length', 0.99996, '1000 mm'],
    ['length', 1.23456, '1234.6 mm'],
    ['length', 0.0012346, '1.23 mm'],
    ['length', 25.1234, '25.12 m'],
    ['moisture', 0.081234, '8.12 %'],
    ['humidity', 0.55555, '55.6 %'],
    ['share', 1.23456, '123.5 %'],
    ['temperature', 100.26, '100.3 °C'],
    ['temperature', 21.26, '21.3 °C'],
    ['temperature', -21.26, '-21.3 °C'],
    ['secondMoment', 1.23456e-6, thin('1 234 560 mm⁴')],
    ['mass', 1.23456, '1.235 kg'],
    ['ratio', 1.5, '1.5'],
    ['money', 0, '0.00'],
    ['money', -0.5, '-0.50'],
    ['money', 1234.5, '1234.50'],
    ['money', 12345.5, thin('12 345.50')],
    ['money', 1e12, '1e12'],
    ['money', 999_999_999_999, thin('999 999 999 999.00')],
  ])('for %s %d are %s', (kind, value, text) => {
    expect(formatQuantity({ kind, value })).toBe(text);
  });

  it('are those of the unit asked for', () => {
    expect(formatQuantity({ kind: 'thickness', value: 0.0381 }, { unit: 'in' })).toBe('1.5 in');
    expect(formatQuantity({ kind: 'length', value: 0.0381 }, { unit: 'in' })).toBe('1 1/2 in');
    expect(formatQuantity({ kind: 'length', value: 0.0381 }, { unit: 'in', digits: 3 })).toBe('1.5 in');
    expect(formatQuantity({ kind: 'thickness', value: 0.0012346 }, { unit: 'mm' })).toBe('1.235 mm');
  });
});

describe('a number', () => {
  it.each([
    [1e12, '1e12'],
    [999_999_999_999, thin('999 999 999 999')],
    [1e-6, '0.000001'],
    [9.99e-7, '9.99e-7'],
    [1234, '1234'],
    [-1234, '-1234'],
    [12345, thin('12 345')],
    [-12345, thin('-12 345')],
    [1234.5, '1235'],
  ])('%d is written %s', (n, text) => {
    expect(number(n)).toBe(text);
  });

  it('that rounds to 0 is no minus 0', () => {
    expect(number(-0.4, 0)).toBe('0');
  });
});

describe('inches', () => {
  it.each<[number, number | undefined, string]>([
    [0, undefined, '0 in'],
    [-0, undefined, '0 in'],
    [31 / 32, undefined, '31/32 in'], // thirty-seconds below an inch
    [1 + 1 / 32, undefined, '1 1/16 in'], // sixteenths from there, half a one rounded up
    [1 + 1 / 32, 32, '1 1/32 in'],
    [-3.25, undefined, '-3 1/4 in'],
    [-0.001, undefined, '-0.001 in'], // less than half of a thirty-second
    [0.001, 16, '0.001 in'],
    [239.9375, undefined, '239 15/16 in'],
    [240, undefined, '20 ft'],
    [-240.5, undefined, '-20 ft 1/2 in'],
    [251.99, undefined, '21 ft'],
    [999_999_999, undefined, thin('83 333 333 ft 3 in')],
    [1e9, undefined, thin('1 000 000 000 in')],
  ])('%d to the fraction 1/%s are %s', (n, fraction, text) => {
    expect(inches(n, fraction)).toBe(text);
  });
});

describe('both measures', () => {
  it('are one where they read alike', () => {
    expect(both(new Quantity('ratio', 1.5))).toBe('1.5');
    expect(both(new Quantity('mass', 1))).toBe('1 kg (2.205 lb)');
  });
});

describe('a number freed of its last binary digit', () => {
  it('is the decimal one where the two are neighbours, and stays otherwise', () => {
    expect(tidy(0.1 + 0.2)).toBe(0.3);
    expect(tidy(-0.1 - 0.2)).toBe(-0.3);
    expect(tidy(1 / 3)).toBe(1 / 3);
    expect(tidy(2 / 3)).toBe(2 / 3);
    expect(Object.is(tidy(-0), 0)).toBe(true);
  });
});
