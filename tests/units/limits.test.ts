import { describe, expect, it } from 'vitest';
import type { Kind } from '../../src/units/kind.js';
import { anyQuantity, parseQuantity, toQuantity } from '../../src/units/parse-quantity.js';
import { Quantity } from '../../src/units/quantity.js';
import { nearest, InputError, inspectValue } from '../../src/units/input-error.js';

describe('a text for a quantity', () => {
  it('of 120 characters is read and one of 121 is not', () => {
    expect(parseQuantity(`9${' '.repeat(117)}mm`, 'length').value).toBe(0.009);
    expect(() => parseQuantity(`9${' '.repeat(118)}mm`, 'length')).toThrow(/a text of 121 characters/);
  });

  // 700 x 0.001 is 0.7000000000000001 in binary numbers; the length is 7/10 of a metre.
  it.each<[string, Kind, number]>([
    ['700 mm', 'length', 0.7],
    ['3 um', 'thickness', 3 / 1e6],
    ['7 %', 'moisture', 0.07],
    ['3 km', 'length', 3000],
    ['90 rpm', 'rotation', 1.5],
    ['-300 m', 'length', -300],
    ['1e200 m', 'length', 1e200],
    ['-273.15 degC', 'temperature', -273.15],
    [`0' 1/4"`, 'thickness', 0.00635],
    [`-5' 3"`, 'length', -1.6002],
  ])('%s is read to the last digit', (text, kind, value) => {
    expect(parseQuantity(text, kind).value).toBe(value);
  });

  it.each<[string, Kind, string]>([
    ['$5', 'length', 'got "$5", takes a length such as "900 mm"'],
    ['1e308 m', 'length', 'got "1e308 m", takes a length that is a finite number, at most 1e200'],
    [
      '-273.16 degC',
      'temperature',
      'got "-273.16 degC", takes a temperature above absolute zero, -273.15 °C',
    ],
    [
      `5' in`,
      'length',
      `got "5' in", takes a length such as "900 mm"; feet and inches are written 5' 10 1/2"`,
    ],
    ['5 abc', 'money', 'got "5 abc", takes an amount of money such as "12.50"'],
    ['3.5 1/2 in', 'length', 'got the unit "1/2 in", takes a length such as "900 mm"'],
    ['5 N/(m)', 'lineLoad', 'got the unit "N/(m)", takes a load by length such as "450 N/m"'],
  ])('%s as %s is refused in words', (text, kind, message) => {
    expect(() => parseQuantity(text, kind)).toThrow(message);
  });

  // The coldest there is, but for the last digits that a change of unit leaves.
  it('of absolute zero may be a billionth of a degree below it', () => {
    expect(parseQuantity(`${-273.15 - 1e-9} degC`, 'temperature').value).toBe(-273.15 - 1e-9);
    expect(() => parseQuantity(`${-273.15 - 1.1e-9} degC`, 'temperature')).toThrow(/absolute zero/);
    expect(parseQuantity('-459.67 degF', 'temperature').value).toBeCloseTo(-273.15, 9);
  });

  it('without a unit is a ratio, not a sum of money', () => {
    expect(anyQuantity('5').kind).toBe('ratio');
  });
});

describe('a value for a quantity', () => {
  it('may be a quantity, a text, its JSON, or a number where there is no unit', () => {
    const twelve = new Quantity('mass', 12);
    expect(toQuantity(twelve, 'mass')).toBe(twelve);
    expect(toQuantity('900 mm', 'length').value).toBe(0.9);
    expect(toQuantity({ value: 4, unit: '' }, 'count').value).toBe(4);
    expect(toQuantity(4, 'count').value).toBe(4);
  });

  it.each<[unknown, Kind, string]>([
    [null, 'length', 'got null, takes a length such as "900 mm"'],
    [undefined, 'length', 'got nothing, takes a length such as "900 mm"'],
    [true, 'length', 'got true, takes a length such as "900 mm"'],
    [{ value: '9', unit: 'mm' }, 'length', 'got {"value":"9","unit":"mm"}, takes a length'],
    [{ value: 9, unit: 3 }, 'length', 'got {"value":9,"unit":3}, takes a length'],
    [{ value: 9 }, 'length', 'got {"value":9}, takes a length'],
    [NaN, 'count', 'got NaN, takes a whole number such as 4'],
    [5, 'length', 'got 5 with no unit, takes a length'],
    [new Quantity('length', 1), 'volume', 'got "1000 mm" (a length), takes a volume such as "0.02 m3"'],
  ])('%s as %s is refused in words', (value, kind, text) => {
    expect(() => toQuantity(value, kind)).toThrow(text);
    expect(() => toQuantity(value, kind)).toThrow(InputError);
  });
});

describe('a quantity', () => {
  it('holds any number up to 1e200 and nothing else', () => {
    expect(new Quantity('length', -1e200).value).toBe(-1e200);
    expect(() => new Quantity('length', 1.0001e200)).toThrow('takes a finite number in m, at most 1e200');
    expect(() => new Quantity('ratio', NaN)).toThrow('got NaN, takes a finite number in plain units');
    expect(() => new Quantity('length', '5' as never)).toThrow('got "5", takes a finite number in m');
  });

  it('carries a currency only where one was given, into its JSON too', () => {
    expect(new Quantity('length', 1).currency).toBeUndefined();
    expect(new Quantity('money', 12.5, '€').toJSON()).toEqual({ value: 12.5, unit: '€' });
    expect(new Quantity('money', 12.5).toJSON()).toEqual({ value: 12.5, unit: 'money' });
    expect(new Quantity('money', 5, '$').plus(new Quantity('money', 1)).currency).toBe('$');
    expect(new Quantity('money', 5).plus(new Quantity('money', 1, '$')).currency).toBe('$');
  });
});

describe('a refusal', () => {
  it('tells one field a piece', () => {
    const two = new InputError([
      { field: 'width', message: 'missing' },
      { field: '', message: 'too much' },
    ]);
    expect(two.message).toBe('width: missing; too much');
    expect(new InputError({ field: 'width', message: 'missing' }, 'beam').message).toBe(
      'beam: width: missing',
    );
  });

  it('shows what it got as a person wrote it, in at most 60 characters', () => {
    expect(inspectValue(NaN)).toBe('NaN');
    expect(inspectValue(false)).toBe('false');
    expect(inspectValue(5)).toBe('5');
    expect(inspectValue('x'.repeat(58))).toHaveLength(60);
    expect(inspectValue('x'.repeat(59))).toBe(`"${'x'.repeat(56)}...`);
  });
});

describe('the nearest name', () => {
  // Letters put in, left out, taken for another or swapped: at most a third of the word, and at least one.
  it.each<[string, readonly string[], string | undefined]>([
    ['oka', ['oak', 'ash'], 'oak'], // two letters swapped are one slip
    ['kao', ['oak', 'ash'], undefined], // two apart, of three
    ['oa', ['ash', 'oak'], 'oak'], // one put in
    ['oaks', ['ash', 'oak'], 'oak'], // one left out
    ['oat', ['ash', 'oak'], 'oak'], // one taken for another, the last
    ['eak', ['ash', 'oak'], 'oak'], // the first
    ['OAT', ['oak'], 'oak'],
    ['maples', ['staple', 'maple'], 'maple'], // one apart, not three
    ['waxxut', ['walnut'], 'walnut'], // two apart, of six
    ['wxxxut', ['walnut'], undefined], // three
    ['bat', ['bad', 'bag'], 'bad'], // of two as near the first
    ['bat', ['dad', 'bag'], 'bag'],
    ['', ['oak'], undefined],
    ['', ['m'], 'm'],
  ])('to %j among %j is %s', (text, names, name) => {
    expect(nearest(text, names)).toBe(name);
  });
});
