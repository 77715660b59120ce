import { describe, expect, it } from 'vitest';
import { parseTree } from '../../src/units/algebra.js';
import { dimensionOf, dimensionOfTree, dimensionText } from '../../src/units/dimensions.js';
import { kindNames } from '../../src/units/kind.js';

const letters = {
  l: dimensionOf('length'),
  A: dimensionOf('area'),
  m: dimensionOf('mass'),
  F: dimensionOf('force'),
  r: dimensionOf('ratio'),
  T: dimensionOf('temperature'),
  p: dimensionOf('pricePerMass'),
};
const of = (expression: string): string => dimensionText(dimensionOfTree(parseTree(expression), letters));

describe('the dimension of a kind', () => {
  it.each([
    ['length', 'length'],
    ['sectionModulus', 'length^3'],
    ['density', 'mass / length^3'],
    ['force', 'length mass / time^2'],
    ['stress', 'mass / length time^2'],
    ['moment', 'length^2 mass / time^2'],
    ['rotationalStiffness', 'length^2 mass / time^2'],
    ['speed', 'length / time'],
    ['rotation', '1 / time'],
    ['acceleration', 'length / time^2'],
    ['moisture', 'a number'],
    ['angle', 'a number'],
    ['money', 'money'],
    ['pricePerVolume', 'money / length^3'],
  ] as const)('%s is %s', (kind, text) => {
    expect(dimensionText(dimensionOf(kind))).toBe(text);
  });

  it('is known of every kind', () => {
    for (const kind of kindNames) expect(dimensionOf(kind).every(Number.isFinite), kind).toBe(true);
  });
});

describe('the dimension of an expression', () => {
  it.each([
    ['2 l * A', 'length^3'],
    ['F / A', 'mass / length time^2'],
    ['sqrt(A) + l', 'length'],
    ['cbrt(l A)', 'length'],
    ['(l^2)^(1/2)', 'length'],
    ['A^-0.5', '1 / length'],
    ['max(0, l - 2 l)', 'length'],
    ['abs(-l)', 'length'],
    ['atan2(l, 3 l) + exp(l / l)', 'a number'],
    ['l > sqrt(A) ? A : l^2', 'length^2'],
    ['r^(r + 1)', 'a number'],
    ['pi * 30 deg', 'a number'],
    ['m p', 'money'],
  ])('%s is %s', (expression, text) => {
    expect(of(expression)).toBe(text);
  });

  it.each([
    ['l + A', 'a sum: length and length^2'],
    ['l - 1', 'a difference: length and a number'],
    ['min(l, m)', 'min: length and mass'],
    ['sin(l)', 'sin takes a number, got length'],
    ['log(m)', 'log takes a number, got mass'],
    ['r^l', 'an exponent takes a number, got length'],
    ['l^r', 'a power whose exponent is no constant takes a number, got length'],
    ['l > m ? 1 : 2', 'a comparison: length and mass'],
    ['l > 0 ? l : m', 'the two branches: length and mass'],
    ['20 - T', 'a difference: a number and temperature'],
    ['ceil(l)', 'ceil takes a number, got length'],
  ])('%s has none: %s', (expression, message) => {
    expect(() => of(expression)).toThrow(message);
  });
});
