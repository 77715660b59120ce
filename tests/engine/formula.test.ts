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

  it('computes in base units, so that letters may mix millimetres and metres', () => {
    const mixed = formula({
      symbol: 'A',
      result: variable('area', 'area'),
      expression: 'a b',
      variables: { a: variable('length', 'a', { unit: 'mm' }), b: variable('length', 'b') },
    });
    expect(mixed.evaluate({ a: 1, b: 2 })).toBe(2);
    expect(mixed.withUnits({ a: 1, b: 2 })).toBe(2);
    expect(mixed.plainWith({ a: 1, b: 2 })).toBe('A = 1000 mm × 2 m = 2 m²');
  });

  it('takes a result whose unit is forgotten for the same number', () => {
    const of = (more: { unit?: 'mm2' }) =>
      formula({
        symbol: 'A',
        result: variable('area', 'area', more),
        expression: 'a b',
        variables: { a: variable('length', 'a', { unit: 'mm' }), b: variable('length', 'b', { unit: 'mm' }) },
      });
    expect(of({}).evaluate({ a: 0.9, b: 0.04 })).toBe(of({ unit: 'mm2' }).evaluate({ a: 0.9, b: 0.04 }));
  });

  it('with constants that carry units is declared empirical, and then enters numbers in the stated units', () => {
    // The pull of a screw by the older American rule, in pounds from inches: 2850 G² D L.
    const inch = (label: string) => variable('length', label, { unit: 'in' });
    const spec = {
      symbol: 'p',
      result: variable('force', 'pull', { unit: 'lbf' }),
      expression: '2850 G^2 D L',
      variables: { G: variable('ratio', 'specific gravity'), D: inch('diameter'), L: inch('thread') },
    } as const;
    expect(() => formula(spec).assertBalanced()).toThrow(
      'formula "2850 G^2 D L" gives length^2, p is a force, length mass / time^2; a formula whose constants carry units is declared empirical',
    );
    const pull = formula({ ...spec, empirical: true });
    expect(() => pull.assertBalanced()).not.toThrow();
    // 2850 x 0.25 x 0.2 in x 1 in = 142.5 lbf; a pound force is 4.4482216152605 N.
    expect(pull.evaluate({ G: 0.5, D: 0.00508, L: 0.0254 })).toBeCloseTo(142.5 * 4.4482216152605, 9);
    const bare = { ...spec.variables, L: variable('length', 'thread') };
    expect(() => formula({ ...spec, variables: bare, empirical: true })).toThrow(
      `formula "2850 G^2 D L" is empirical, so L takes a unit, such as { unit: 'mm' }`,
    );
  });

  it('is checked in every branch, whatever an example reaches', () => {
    const branched = (otherwise: string) =>
      formula({
        symbol: 'x',
        result: variable('length', 'x'),
        expression: `a > b ? a : ${otherwise}`,
        variables: { a: variable('length', 'a'), b: variable('length', 'b') },
      });
    expect(() => branched('2 b').assertBalanced()).not.toThrow();
    expect(() => branched('a b').assertBalanced()).toThrow(
      'the two branches: length and length^2; a formula whose constants carry units is declared empirical',
    );
  });

  it('writes an angle in degrees', () => {
    const bevel = formula({
      symbol: 'B',
      result: variable('angle', 'bevel', { unit: 'deg' }),
      expression: '90 deg - a / 2',
      variables: { a: variable('angle', 'angle between the boards', { unit: 'deg' }) },
      basis: 'geometry',
    });
    const right = { a: Math.PI / 2 };
    expect(bevel.evaluate(right)).toBeCloseTo(Math.PI / 4, 14);
    expect(bevel.withUnits(right)).toBeCloseTo(Math.PI / 4, 14);
    expect(bevel.plain).toBe('B = 90° − a / 2');
    expect(bevel.plainWith(right)).toBe('B = 90° − 90° / 2 = 45°');
    expect(bevel.latex.replace(/ /g, '')).toBe('B=90^{\\circ}-\\frac{a}{2}');
    expect(bevel.toJavaScript((s) => s)).toBe('((90 * (Math.PI / 180)) - (a / 2))');
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
      empirical: true,
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
