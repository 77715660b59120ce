import { describe, expect, it } from 'vitest';
import {
  closureOf,
  javascriptOf,
  latexOf,
  parseTree,
  plainOf,
  evaluateWithUnits,
  scaleByAlgebra,
} from '../../src/units/algebra.js';

const asIs = (s: string): string => s;
const of = (value: number, unit: string) => ({ value, unit });

describe('a formula as JavaScript', () => {
  it.each([
    ['x^2', '(x * x)'],
    ['x^4', '(x * x * x * x)'],
    ['x^5', 'Math.pow(x, 5)'],
    ['x^n', 'Math.pow(x, n)'],
    ['(x + 1)^2', 'Math.pow(((x + 1)), 2)'], // what is not a mere letter would be calculated twice
    ['pi x', '(Math.PI * x)'],
    ['x > 1 ? -x : 2', '((x > 1) ? (-x) : 2)'],
  ])('%s is %s', (text, source) => {
    expect(javascriptOf(parseTree(text), asIs)).toBe(source);
  });

  it('holds no lists', () => {
    expect(() => javascriptOf(parseTree('[a, 2]'), asIs)).toThrow('a formula may not hold a ArrayNode');
    expect(() => closureOf(parseTree('[a, 2]'))).toThrow('a formula may not hold a ArrayNode');
  });

  it('answers alike without generated code, on both sides of each relation and at it', () => {
    const at = (text: string, a: number): number => closureOf(parseTree(text))({ a });
    expect([1, 2, 3].map((a) => at('a > 2', a))).toEqual([0, 0, 1]);
    expect([1, 2, 3].map((a) => at('a < 2', a))).toEqual([1, 0, 0]);
    expect([1, 2, 3].map((a) => at('a >= 2', a))).toEqual([0, 1, 1]);
    expect([1, 2, 3].map((a) => at('a <= 2', a))).toEqual([1, 1, 0]);
    expect(at('a > 2 ? 10 a : -a', 3)).toBe(30);
    expect(at('a > 2 ? 10 a : -a', 1)).toBe(-1);
    expect(at('+a - 2^a / 4 + pi * 0', 3)).toBe(1);
  });
});

describe('a formula as people write it', () => {
  it('hides the sign between letters, and shows it between numbers', () => {
    const tree = parseTree('2 a * b');
    expect(latexOf(tree, asIs)).toBe('2\\,a \\cdot b');
    expect(latexOf(tree, asIs, 'shown')).toBe('2 \\times a \\times b');
    expect(plainOf(tree, asIs)).toBe('2 × a × b');
  });

  it('tells where a letter is raised to a power', () => {
    const marked = (s: string, power: boolean): string => (power ? `[${s}]` : s);
    expect(plainOf(parseTree('a^2 + pi^2 * b'), marked)).toBe('[a]^2 + π^2 × b');
    expect(plainOf(parseTree('(a + b)^2'), marked)).toBe('(a + b)^2');
    expect(latexOf(parseTree('sqrt(a)'), asIs)).toBe('\\sqrt{a}');
  });
});

describe('a formula with units', () => {
  it('gives a plain number where none is left, and takes one where none enters', () => {
    expect(evaluateWithUnits(parseTree('a / b'), { a: of(1, 'm'), b: of(1, 'mm') }, '')).toBeCloseTo(1000, 9);
    expect(evaluateWithUnits(parseTree('exp(a)'), { a: of(1, '') }, '')).toBeCloseTo(Math.E, 15);
    expect(evaluateWithUnits(parseTree('2 a'), { a: of(3, 'm') }, 'm')).toBe(6);
  });

  it('says when the declared side has a dimension and the other has not', () => {
    expect(() => evaluateWithUnits(parseTree('2 a'), { a: of(1, '') }, 'm')).toThrow(
      'gives a plain number, m was declared',
    );
    expect(() => evaluateWithUnits(parseTree('2 a'), { a: of(1, 'm') }, '')).toThrow(
      'gives 2 m, a plain number was declared',
    );
  });
});

describe('a unit by algebra', () => {
  it('is of the dimension asked for, above 0 and finite', () => {
    expect(scaleByAlgebra('kN/mm', 'N / m')).toBeCloseTo(1e6, 6);
    expect(scaleByAlgebra('kg', 'm')).toBeUndefined();
    expect(scaleByAlgebra('', 'm')).toBeUndefined();
    expect(scaleByAlgebra('N/(m)', 'N / m')).toBeUndefined();
    // 1e-24 to the fourteenth is below the least number, 1e24 to the thirteenth past the greatest.
    expect(scaleByAlgebra('ym^14/m^13', 'm')).toBeUndefined();
    expect(scaleByAlgebra('Ym^13/m^12', 'm')).toBeUndefined();
  });
});
