import { describe, expect, it, vi } from 'vitest';
import type { Kind } from '../../src/units/kind.js';
import { parseQuantity } from '../../src/units/parse-quantity.js';
import { unitOf, unitsOf } from '../../src/units/unit.js';

// Factors to SI units as printed in NIST Special Publication 811, Appendix B (recalled, not seen in print here), to the
// digits printed; those marked = are exact by definition: the inch is 25.4 mm, the pound 0.45359237 kg, gravity
// 9.80665 m/s2, the US gallon 231 cubic inches, the imperial gallon 4.54609 L.
const printed: readonly [Kind, string, string][] = [
  ['length', 'mil', '=0.0000254'],
  ['length', 'thou', '=0.0000254'],
  ['length', 'yd', '=0.9144'],
  ['area', 'in2', '=0.00064516'],
  ['area', 'ft2', '=0.09290304'],
  ['volume', 'in3', '=0.000016387064'],
  ['volume', 'ft3', '2.831685e-2'],
  ['volume', 'bf', '2.359737e-3'],
  ['liquid', 'gal', '=0.003785411784'],
  ['liquid', 'qt', '9.463529e-4'],
  ['liquid', 'pt', '4.731765e-4'],
  ['liquid', 'floz', '2.957353e-5'],
  ['mass', 'oz', '2.834952e-2'],
  ['density', 'lb/ft3', '1.601846e1'],
  ['density', 'lb/gal', '1.198264e2'],
  ['density', 'lb/imp gal', '9.977637e1'],
  ['pressure', 'psi', '6.894757e3'],
  ['pressure', 'ksi', '6.894757e6'],
  ['pressure', 'psf', '4.788026e1'],
  ['pressure', 'lbf/ft2', '4.788026e1'],
  ['pressure', 'lb/ft2', '4.788026e1'],
  ['pressure', 'kgf/m2', '=9.80665'],
  ['pressure', 'kgf/cm2', '=98066.5'],
  ['lineLoad', 'lbf/ft', '1.459390e1'],
  ['lineLoad', 'lb/ft', '1.459390e1'],
  ['lineLoad', 'plf', '1.459390e1'],
  ['lineLoad', 'kgf/m', '=9.80665'],
  ['springRate', 'lbf/in', '1.751268e2'],
  ['springRate', 'lb/in', '1.751268e2'],
  ['secondMoment', 'in4', '4.162314e-7'],
  ['applicationRate', 'lb/ft2', '4.882428'],
  ['applicationRate', 'lb/1000ft2', '4.882428e-3'],
  ['force', 'lbf', '4.448222'],
  ['force', 'kip', '4.448222e3'],
  ['moment', 'lbf in', '1.129848e-1'],
  ['moment', 'lbf ft', '1.355818'],
  ['rotationalStiffness', 'lbf in/rad', '1.129848e-1'],
  ['temperature', 'degF', '5.555556e-1'],
  ['speed', 'ft/min', '=0.00508'],
  ['speed', 'ft/s', '=0.3048'],
  ['speed', 'm/min', '1.666667e-2'],
  ['speed', 'mm/min', '1.666667e-5'],
  ['rotation', 'rpm', '1.666667e-2'],
  ['rotation', '1/min', '1.666667e-2'],
  ['angle', 'deg', '1.745329e-2'],
  ['slope', 'in/ft', '8.333333e-2'], // 1/12
  // Turned round: how many there are in a metre, a square metre and so on.
  ['coverage', 'ft2/gal', '2.454239e1'], // 0.09290304 / 0.003785411784
  ['coverage', 'ft2/imp gal', '2.043581e1'], // 0.09290304 / 0.00454609
  ['marks', '1/in', '3.937008e1'],
  ['pricePerLength', 'money/ft', '3.280840'],
  ['pricePerArea', 'money/ft2', '1.076391e1'],
  ['pricePerVolume', 'money/bf', '4.237760e2'],
  ['pricePerVolume', 'money/super ft', '4.237760e2'],
  ['pricePerVolume', 'money/ft3', '3.531467e1'],
  ['pricePerVolume', 'money/gal', '2.641721e2'],
  ['pricePerMass', 'money/lb', '2.204623'],
  ['pricePerTime', 'money/h', '2.777778e-4'],
  ['pricePerTime', 'money/min', '1.666667e-2'],
  ['pricePerTime', 'money/day', '1.157407e-5'],
];

describe('units against their printed factors', () => {
  it.each(printed)('of %s, %s', (kind, name, factor) => {
    const exact = factor.startsWith('=');
    const right = Number(factor.replace('=', ''));
    // Half a unit of the seventh digit, or the last binary digits.
    const within = exact ? Math.abs(right) * 1e-15 : 10 ** (Math.floor(Math.log10(right)) - 6) * 0.5001;
    expect(Math.abs(unitOf(kind, name).scale - right)).toBeLessThanOrEqual(within);
  });

  it('of temperature, which begin elsewhere', () => {
    expect(parseQuantity('32 degF', 'temperature').value).toBeCloseTo(0, 12);
    expect(parseQuantity('212 degF', 'temperature').value).toBeCloseTo(100, 12);
    expect(parseQuantity('0 K', 'temperature').value).toBe(-273.15);
    expect(parseQuantity('20 degC', 'temperature').value).toBe(20);
  });
});

describe('the name of a unit', () => {
  it('is read in other spellings and by algebra, each time alike', () => {
    expect(unitOf('length', 'inches')).toEqual({ name: 'in', scale: 0.0254, offset: 0 });
    expect(unitOf('length', 'inches')).toBe(unitOf('length', 'inches'));
    expect(unitOf('lineLoad', 'kN/cm').scale).toBeCloseTo(1e5, 8);
    expect(unitsOf('temperature')).toEqual(['degC', 'degF', 'K']);
  });

  it('is kept for the next time, five hundred of them and no more', async () => {
    vi.resetModules();
    const fresh = await import('../../src/units/unit.js');
    // m^3/m^2 is a metre, and so on without end.
    const nth = (n: number) => fresh.unitOf('length', `m^${n + 1}/m^${n}`);
    const first = nth(1);
    for (let n = 2; n < 500; n++) nth(n);
    const [last, past] = [nth(500), nth(501)];
    expect(nth(1)).toBe(first);
    expect(nth(500)).toBe(last);
    expect(nth(501)).not.toBe(past);
    expect(nth(501)).toMatchObject({ scale: 1, offset: 0 });
  });

  it.each<[Kind, string, string]>([
    ['temperature', 'kK', 'got the unit "kK", takes a temperature such as "21 degC"; did you mean "K"?'],
    ['length', '', 'got no unit, takes a length such as "900 mm"'],
    ['length', 'kg', 'got the unit "kg" of a mass, takes a length such as "900 mm"'],
    ['length', 'kilogram', 'got the unit "kilogram" of a mass, takes a length'],
    [
      'length',
      'milimetre',
      'got the unit "milimetre", takes a length such as "900 mm"; did you mean "millimetre"?',
    ],
    ['moisture', 'deg', 'got the unit "deg" of an angle, takes a moisture content such as "8 %"'],
    [
      'temperature',
      'degR',
      'got the unit "degR", takes a temperature such as "21 degC"; did you mean "degC"?',
    ],
    [
      'pricePerLength',
      'money/mile',
      'got the unit "money/mile", takes a price by length such as "4.20/m"; did you mean "money/m"?',
    ],
    ['count', 'm', 'got the unit "m" of a length, takes a whole number such as "4"'],
    ['length', 'qqqqqqqq', 'got the unit "qqqqqqqq", takes a length such as "900 mm"'],
  ])('as %s, %j, is refused in words', (kind, name, text) => {
    let got = '';
    try {
      unitOf(kind, name);
    } catch (error) {
      got = (error as Error).message;
    }
    expect(got).toContain(text);
    expect(got.includes('did you mean')).toBe(text.includes('did you mean'));
  });
});
