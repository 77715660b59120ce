import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { length, mass, moisture, money, temperature } from '../../src/units/constructors.js';
import { kindNames, kinds } from '../../src/units/kind.js';
import { InputError } from '../../src/units/input-error.js';
import { Quantity } from '../../src/units/quantity.js';

describe('comparing quantities', () => {
  it('goes by size and not by text', () => {
    expect(length('11.1 mm') > length('9 mm')).toBe(true);
    expect(moisture('12 %') < moisture('8 %')).toBe(false);
    const sorted = ['10 mm', '9 mm', '100 mm'].map((t) => length(t)).sort((a, b) => a.compare(b));
    expect(sorted.map(String)).toEqual(['9 mm', '10 mm', '100 mm']);
    // Two units of one size.
    expect(length('1 in').equals('25.4 mm')).toBe(true);
    expect(length('900 mm').equals(length('0.9 m'))).toBe(true);
    expect(length('5 mm').atMost('5 mm')).toBe(true);
    expect(length('5 mm').atLeast('5.1 mm')).toBe(false);
  });

  it('leaves text where text is wanted', () => {
    const q = length('9 mm');
    // eslint-disable-next-line @typescript-eslint/restrict-template-expressions -- the template is what is tested
    expect(`${q}`).toBe('9 mm');
    expect(String(q)).toBe('9 mm');
    expect('wide: '.concat(q as unknown as string)).toBe('wide: 9 mm');
    expect(Number(q)).toBe(0.009);
  });

  it('never mixes kinds or currencies', () => {
    const other = mass('1 kg') as never;
    for (const run of [
      () => length('1 m').compare(other),
      () => length('1 m').min(other),
      () => length('1 m').clamp('0 m', other),
      () => length('1 m').isNear('1 m', other),
      () => length('1 m').round(other),
      () => length('1 m').atMost('1 kg'),
      () => money('$5').atMost(money('€5')),
      () => money('$5').plus(money('€5')),
    ])
      expect(run).toThrow(InputError);
    // @ts-expect-error two kinds do not compile
    expect(() => length('1 m').equals(mass('1 kg'))).toThrow(/takes a length/);
  });

  it('rounds to a step, in either direction, and clamps', () => {
    expect(length('903 mm').round('5 mm').in('mm')).toBe(905);
    expect(length('903 mm').round('5 mm', 'down').in('mm')).toBe(900);
    expect(length('901 mm').round('5 mm', 'up').in('mm')).toBe(905);
    expect(length('0.3 m').round('0.1 m', 'down').in('m')).toBe(0.3);
    expect(length('35.5 in').round('1/16 in').in('in')).toBeCloseTo(35.5, 12);
    // A step of 5 degrees Fahrenheit is 25/9 degrees Celsius.
    expect(temperature('20 degC').round('5 degF').value).toBeCloseTo((7 * 25) / 9, 9);
    expect(() => length('1 m').round('0 mm')).toThrow(/step: got "0 mm", takes one above 0/);
    expect(length('12 mm').clamp('5 mm', '9 mm').in('mm')).toBe(9);
    expect(length('2 mm').clamp('5 mm', '9 mm').in('mm')).toBe(5);
    expect(() => length('2 mm').clamp('9 mm', '5 mm')).toThrow(/takes the lower limit first/);
    expect(length('-3 mm').abs().in('mm')).toBe(3);
    expect(length('900 mm').isNear('900.4 mm', '0.5 mm')).toBe(true);
    expect(length('900 mm').isNear('900.6 mm', '0.5 mm')).toBe(false);
  });

  it.each(kindNames)('%s: compares as its values do', (kind) => {
    const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(number, number, number, (x, y, z) => {
        const [a, b, c] = [x, y, z].map((v) => new Quantity(kind, v)) as [Quantity, Quantity, Quantity];
        expect(a.compare(b)).toBe(Math.sign(Number(x > y) - Number(x < y)));
        expect(a.equals(b)).toBe(x === y);
        expect([a < b, a > b, a.atMost(b), a.atLeast(b)]).toEqual([x < y, x > y, x <= y, x >= y]);
        expect(a.min(b, c).value).toBe(Math.min(x, y, z) + 0);
        expect(a.max(b, c).value).toBe(Math.max(x, y, z) + 0);
        expect(a.abs().value).toBe(Math.abs(x));
        const [low, high] = y <= z ? [b, c] : [c, b];
        expect(a.clamp(low, high).value).toBe(Math.min(Math.max(x, low.value), high.value));
        expect(a.isNear(b, b.minus(a).abs())).toBe(true);
      }),
      { numRuns: 100 },
    );
    expect(kinds[kind].called.length).toBeGreaterThan(3);
  });
});
