import { describe, expect, it } from 'vitest';
import { formula, variable } from '../../src/engine/formula.js';

const sag = formula({
  symbol: 'delta',
  result: variable('length', 'sag', { unit: 'mm' }),
  expression: '5 w L^4 / (384 E I)',
  variables: {
    w: variable('lineLoad', 'load', { unit: 'N/mm' }),
    L: variable('length', 'span', { unit: 'mm' }),
    E: variable('modulus', 'modulus', { unit: 'N/mm2' }),
    I: variable('secondMoment', 'second moment', { unit: 'mm4' }),
  },
  basis: 'published',
});

describe('formula', () => {
  // Five, three hundred and eighty-fourths: 1 N/mm over 1000 mm, E 10000 N/mm2, I 1e6 mm4 gives 5e12 / 3.84e12 mm.
  const args = { w: 1000, L: 1, E: 1e10, I: 1e-6 };

  it('gives the number in base units', () => {
    expect(sag.evaluate(args)).toBeCloseTo((5e12 / 3.84e12) * 1e-3, 15);
  });

  it('gives the same with units on every letter', () => {
    expect(sag.withUnits(args)).toBeCloseTo(sag.evaluate(args), 15);
  });

  it('writes itself in LaTeX and plain text, with and without numbers', () => {
    expect(sag.latex).toBe('\\delta = \\frac{5\\,w\\,{L}^{4}}{384\\,E\\,I}'.replace('{L}^{4}', 'L^{4}'));
    expect(sag.plain).toBe('δ = 5 × w × L^4 / (384 × E × I)');
    expect(sag.plainWith(args)).toBe(
      'δ = 5 × 1 N/mm × (1000 mm)^4 / (384 × 10\u202f000 N/mm² × 1\u202f000\u202f000 mm⁴) = 1.3021 mm',
    );
    expect(sag.latexWith(args)).toContain('1.3021\\,\\mathrm{mm}');
  });

  it('finds a formula whose dimensions do not balance', () => {
    const wrong = formula({
      symbol: 'x',
      result: variable('length', 'a length'),
      expression: 'a b',
      variables: { a: variable('length', 'a'), b: variable('length', 'b') },
    });
    expect(() => wrong.withUnits({ a: 1, b: 2 })).toThrow();
  });

  it('finds letters that mix millimetres and metres', () => {
    const mixed = formula({
      symbol: 'A',
      result: variable('area', 'area'),
      expression: 'a b',
      variables: { a: variable('length', 'a', { unit: 'mm' }), b: variable('length', 'b') },
    });
    expect(mixed.evaluate({ a: 1, b: 2 })).not.toBeCloseTo(mixed.withUnits({ a: 1, b: 2 }), 6);
  });

  it('refuses letters that are not described or not used', () => {
    expect(
      () =>
        formula({
          symbol: 'x',
          result: variable('ratio', 'x'),
          expression: 'a b',
          variables: { a: variable('ratio', 'a') },
        }).plain,
    ).toThrow(/b is not described/);
    expect(
      () =>
        formula({
          symbol: 'x',
          result: variable('ratio', 'x'),
          expression: 'a',
          variables: { a: variable('ratio', 'a'), c: variable('ratio', 'c') },
        }).plain,
    ).toThrow(/c is described but not used/);
    expect(
      () =>
        formula({
          symbol: 'x',
          result: variable('ratio', 'x'),
          expression: 'eval(a)',
          variables: { a: variable('ratio', 'a') },
        }).plain,
    ).toThrow(/no function eval/);
  });

  it('says what is wrong with a formula when it is first calculated, too', () => {
    const open = formula({
      symbol: 'x',
      result: variable('ratio', 'x'),
      expression: 'a b',
      variables: { a: variable('ratio', 'a') },
    });
    expect(() => (open.evaluate as (a: object) => number)({ a: 1, b: 2 })).toThrow(/b is not described/);
    const list = formula({
      symbol: 'x',
      result: variable('ratio', 'x'),
      expression: '[a, 2]',
      variables: { a: variable('ratio', 'a') },
    });
    expect(() => list.evaluate({ a: 1 })).toThrow('a formula may not hold a ArrayNode');
  });

  it('takes and gives temperatures on either scale, whose zeros differ', () => {
    // A room at 68 °F warmed by 18 °F comes to 86 °F, which is 30 °C; 68 °F is 20 °C.
    const warmed = formula({
      symbol: 'T_end',
      result: variable('temperature', 'end', { unit: 'degF' }),
      expression: 'T_F + d',
      variables: {
        T_F: variable('temperature', 'start', { unit: 'degF' }),
        d: variable('ratio', 'degrees Fahrenheit more'),
      },
      basis: 'definition',
    });
    expect(warmed.evaluate({ T_F: 20, d: 18 })).toBeCloseTo(30, 10);
    expect(warmed.withUnits({ T_F: 20, d: 18 })).toBeCloseTo(30, 10);
    expect(warmed.plainWith({ T_F: 20, d: 18 })).toBe('T_end = 68 °F + 18 = 86 °F');
    expect(warmed.latexWith({ T_F: 20, d: 18 })).toContain('{86\\,^{\\circ}\\mathrm{F}}');
    expect(warmed.latex).toBe('T_{\\mathrm{end}} = T_{F}+d');
  });

  it('writes letters of its own, Greek ones, words and numbered ones each in their way', () => {
    const mixed = formula({
      symbol: 'Delta_D',
      result: variable('ratio', 'change'),
      expression: 'MC + rho_k + a1 + x + pi',
      variables: {
        MC: variable('ratio', 'moisture'),
        rho_k: variable('ratio', 'density'),
        a1: variable('ratio', 'first'),
        x: variable('ratio', 'own', { tex: '\\hat{x}' }),
      },
    });
    expect(mixed.latex.replace(/ /g, '')).toBe('\\DeltaD=\\mathrm{MC}+\\rho_{k}+a_{1}+\\hat{x}+\\pi');
    expect(mixed.plain).toBe('ΔD = MC + ρ_k + a1 + x + π');
  });

  it('gives a plain number only where one is declared, and a declared unit only where there is one', () => {
    const a = variable('length', 'a');
    const b = variable('length', 'b');
    const of = (gives: Parameters<typeof variable>[0], text: string) =>
      formula({ symbol: 'x', result: variable(gives, 'x'), expression: text, variables: { a, b } });
    expect(of('ratio', 'a / b').withUnits({ a: 3, b: 2 })).toBe(1.5);
    expect(of('ratio', '(a + b) / (a - b)').withUnits({ a: 3, b: 2 })).toBe(5);
    expect(of('ratio', 'a^0.5 * b^0.5 / b').withUnits({ a: 4, b: 1 })).toBeCloseTo(2, 12);
    expect(() => of('length', 'a / b').withUnits({ a: 3, b: 2 })).toThrow(
      'gives a plain number, m was declared',
    );
    expect(() => of('ratio', 'a + b').withUnits({ a: 3, b: 2 })).toThrow(
      /gives 5 m, a plain number was declared/,
    );
  });

  it('brackets a number below 0 and one raised to a power', () => {
    const f = formula({
      symbol: 'y',
      result: variable('length', 'y', { unit: 'mm' }),
      expression: 'a - b',
      variables: { a: variable('length', 'a', { unit: 'mm' }), b: variable('length', 'b', { unit: 'mm' }) },
    });
    expect(f.plainWith({ a: 0.001, b: -0.002 })).toBe('y = 1 mm − (-2 mm) = 3 mm');
  });
});
