import { describe, expect, it } from 'vitest';
import { parseTree, scaleByAlgebra } from '../../src/units/algebra.js';
import { tryParse } from '../../src/units/try-parse.js';
import { formatQuantity, number } from '../../src/units/format-quantity.js';
import { length, money } from '../../src/units/constructors.js';
import { anyQuantity } from '../../src/units/parse-quantity.js';
import { both, Quantity } from '../../src/units/quantity.js';
import { nearest, InputError, inspectValue } from '../../src/units/input-error.js';

describe('a quantity', () => {
  it('is of a kind that there is', () => {
    expect(() => new Quantity('colour' as never, 1)).toThrow(
      /^no kind of quantity "colour"; there are length, /,
    );
    // A name that every object has is no kind either.
    expect(() => new Quantity('toString' as never, 1)).toThrow(/no kind of quantity "toString"/);
  });

  it('is added, taken off, multiplied and divided', () => {
    const [a, b] = [length('900 mm'), length('1 ft')];
    expect(a.plus(b).in('mm')).toBeCloseTo(1204.8, 10);
    expect(a.minus(b).in('mm')).toBeCloseTo(595.2, 10);
    expect(a.times(3).in('m')).toBeCloseTo(2.7, 12);
    expect(a.dividedBy(4).in('mm')).toBe(225);
    expect(a.dividedBy(-2).in('mm')).toBe(-450);
    expect(() => a.dividedBy(0)).toThrow('divisor: got 0, takes any other number');
  });

  it('keeps the sign of its currency, or takes the other one', () => {
    expect(money('$5').minus(money('2')).toString()).toBe('$3.00');
    expect(money('5').minus(money('$2')).toString()).toBe('$3.00');
    expect(money('5').plus(money('$2')).toString()).toBe('$7.00');
    expect(money('$5').dividedBy(2).toString()).toBe('$2.50');
    expect(money('5').minus(money('2')).currency).toBeUndefined();
  });

  it('takes no bare number and no other kind', () => {
    expect(() => length('1 m').minus(3 as never)).toThrow('got 3, takes a length');
    expect(() => length('1 m').plus(money('$2') as never)).toThrow('got "$2.00", takes a length');
  });
});

describe('text of any kind', () => {
  it('is read by the first kind whose unit fits, else as a ratio', () => {
    expect(anyQuantity('3 kg').kind).toBe('mass');
    expect(anyQuantity('3 ft').kind).toBe('length');
    expect(anyQuantity('0.5')).toMatchObject({ kind: 'ratio', value: 0.5 });
    expect(() => anyQuantity('wood')).toThrow(InputError);
  });
});

describe('a number', () => {
  it('of one digit far from one has no point', () => {
    expect(number(2e15, 1)).toBe('2e15');
    expect(number(-3e-8, 1)).toBe('-3e-8');
    expect(number(2.5e15, 2)).toBe('2.5e15');
    expect(number(1e12, 4)).toBe('1e12');
  });
  it('is never minus 0', () => {
    expect(formatQuantity({ kind: 'length', value: -0.0004 }, { digits: 0 })).toBe('0 mm');
    expect(formatQuantity({ kind: 'length', value: 0.0004 }, { digits: 0 })).toBe('0 mm');
  });
  it('is shown in both measures where they differ', () => {
    expect(both(new Quantity('length', 0.254))).toBe('254 mm (10 in)');
    expect(both(new Quantity('share', 0.25))).toBe('25 %');
  });
});

describe('a unit by algebra', () => {
  it('has a finite scale, or is none', () => {
    expect(scaleByAlgebra('km', 'm')).toBe(1000);
    // A yottametre is 1e24 m: to the twentieth power it is past all numbers.
    expect(scaleByAlgebra('Ym^20/m^19', 'm')).toBeUndefined();
    expect(scaleByAlgebra('ym^20/m^19', 'm')).toBeUndefined();
    expect(() => length('3 Ym^20/m^19')).toThrow(InputError);
  });
});

describe('a formula', () => {
  it('calls only functions that it may, by name', () => {
    expect(parseTree('sqrt(a) + max(a, b)').symbols).toEqual(['a', 'b']);
    expect(() => parseTree('import(a)')).toThrow('no function import');
    expect(() => parseTree('a.b(2)')).toThrow(/no function/);
  });
});

describe('a value in an error', () => {
  it.each([
    [undefined, 'nothing'],
    [null, 'null'],
    ['a', '"a"'],
    [2n, '2n'],
    [[1, 2], 'a list of 2'],
    [() => 1, 'a function'],
    [Symbol('x'), 'a symbol'],
    [{ a: 1 }, '{"a":1}'],
    [{ toJSON: () => undefined }, 'an object'],
    [
      {
        toJSON: () => {
          throw new Error('no');
        },
      },
      'an object',
    ],
    ['x'.repeat(58), `"${'x'.repeat(58)}"`],
    ['x'.repeat(59), `"${'x'.repeat(56)}...`],
    ['a\nb\u2028c', '"a\\nb c"'],
  ])('is shown short, on one line: %s', (value, text) => {
    expect(inspectValue(value)).toBe(text);
  });
});

describe('the nearest of some names', () => {
  const names = ['width', 'depth', 'span', 'overhang'];
  // One slip in three letters is forgiven: 5 letters may have one, 8 may have two.
  it.each([
    ['widht', 'width'],
    ['iwdth', 'width'],
    ['witdh', 'width'],
    ['widt', 'width'],
    ['widthh', 'width'],
    ['WIDTH', 'width'],
    ['wodth', 'width'],
    ['wodht', undefined],
    ['psna', undefined],
    ['sapn', 'span'],
    ['voerhagn', 'overhang'],
    ['voerhaag', 'overhang'],
    ['voerhagm', undefined],
    ['', undefined],
    ['thickness', undefined],
  ])('%j is meant as %j', (written, meant) => {
    expect(nearest(written, names)).toBe(meant);
  });
  it('is the nearer of two', () => {
    expect(nearest('ash', ['sash', 'ashy', 'ahs', 'oak'])).toBe('sash');
    expect(nearest('aash', ['ash', 'aas', 'sash'])).toBe('ash');
  });
});

describe('an attempt', () => {
  it('gives back what was read or refused, and nothing else', () => {
    expect(tryParse(() => length('1 m'))).toMatchObject({ value: 1 });
    expect(tryParse(() => length('1 kg'))).toBeInstanceOf(InputError);
    expect(() => tryParse(() => (null as unknown as Quantity).value)).toThrow(TypeError);
  });
});
