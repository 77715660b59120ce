import { describe, expect, it } from 'vitest';
import { parseQuantity } from '../../src/units/parse-quantity.js';

describe('a decimal comma', () => {
  it.each([
    ['12,5 mm', 0.0125],
    ['0,95 m', 0.95],
    ['0,950 m', 0.95],
    ['-12,5 mm', -0.0125],
    ['1250,250 mm', 1.25025],
    ['2,4000 m', 2.4],
    ["5,5'", 1.6764],
  ] as const)('%s', (text, metres) => {
    expect(parseQuantity(text, 'length').value).toBeCloseTo(metres, 12);
  });

  it('is read in money and per cent too', () => {
    expect(parseQuantity('€12,50', 'money').value).toBe(12.5);
    expect(parseQuantity('8,5 %', 'moisture').value).toBeCloseTo(0.085, 12);
  });

  it('before three digits is asked about, with both readings', () => {
    expect(() => parseQuantity('1,250 mm', 'length')).toThrow(
      'got "1,250 mm", which has two readings; write "1.25 mm" or "1250 mm"',
    );
  });

  it.each(['1,250.5 mm', '1.250,5 mm', '1,2,3 mm', '12,mm', ',5,5 mm'])('%s stays refused', (text) => {
    expect(() => parseQuantity(text, 'length')).toThrow(/got /);
  });
});
