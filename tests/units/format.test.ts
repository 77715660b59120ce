import { describe, expect, it } from 'vitest';
import { formatQuantity, inches, number } from '../../src/units/format-quantity.js';
import type { Kind } from '../../src/units/kind.js';
import { both, Quantity } from '../../src/units/quantity.js';

describe('formatQuantity', () => {
  it.each<[Kind, number, string, string]>([
    ['length', 0.9, '900 mm', '35 7/16 in'],
    ['length', 0.0254, '25.4 mm', '1 in'],
    ['length', 0, '0 mm', '0 in'],
    ['length', 0.0079375, '7.94 mm', '5/16 in'],
    ['length', 25, '25 m', '82 ft 1/4 in'],
    ['moisture', 0.085, '8.5 %', '8.5 %'],
    ['temperature', 21, '21 °C', '69.8 °F'],
    ['modulus', 9.5e9, '9.5 GPa', '1 377 859 psi'.replace(/ (?=\d)/g, '\u202f')],
    ['angle', Math.PI / 4, '45°', '45°'],
    ['mass', 0.25, '250 g', '8.818 oz'],
    ['liquid', 0.00075, '750 mL', '25.36 US fl oz'],
    ['area', 1.2, '1.2 m²', '12.92 ft²'],
  ])('shows %s %d', (kind, value, metric, inch) => {
    expect(formatQuantity({ kind, value })).toBe(metric);
    expect(formatQuantity({ kind, value }, { system: 'inch' })).toBe(inch);
  });

  it('rounds inches to the fraction asked for and carries', () => {
    expect(inches(11.99, 16)).toBe('12 in');
    expect(inches(0.49, 2)).toBe('1/2 in');
    expect(inches(-1.5)).toBe('-1 1/2 in');
    expect(inches(35.4375, 64)).toBe('35 7/16 in');
    expect(() => inches(1, 3)).toThrow(/fraction: got 3, takes 1, 2, 4/);
  });

  it('never prints a long tail, exponent or minus 0 in the range of a workshop', () => {
    expect(number(1 / 3)).toBe('0.3333');
    expect(number(-0.00000049, 3)).toBe('-4.9e-7');
    expect(number(123456.7)).toBe('123\u202f457');
    expect(number(-0.0000001 * 0)).toBe('0');
    expect(() => number(NaN)).toThrow(/finite/);
  });

  it('prints both systems, and JSON with full precision', () => {
    const q = new Quantity('length', 0.9);
    expect(both(q)).toBe('900 mm (35 7/16 in)');
    expect(JSON.parse(JSON.stringify(q))).toEqual({ value: 900, unit: 'mm' });
    expect(JSON.parse(JSON.stringify(new Quantity('moisture', 0.0812345678)))).toEqual({
      value: 8.12345678,
      unit: '%',
    });
  });

  it('adds only its own kind', () => {
    const a = new Quantity('length', 1);
    expect(a.plus(new Quantity('length', 2)).value).toBe(3);
    expect(() => a.plus(new Quantity('mass', 2) as never)).toThrow(/takes a length/);
    expect(() => new Quantity('length', NaN)).toThrow(/finite/);
    expect(() => a.dividedBy(0)).toThrow(/divisor/);
  });
});
