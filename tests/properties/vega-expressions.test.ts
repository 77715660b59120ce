// Laws of formulas written for a chart: Vega calculates the number that the recipe does.
import fc from 'fast-check';
import * as vega from 'vega';
import { describe, expect, it } from 'vitest';
import { formula, variable, type Formula } from '../../src/engine/formula.js';
import { vegaExpressions } from '../../src/explore/vega-expressions.js';
import { catalogue } from '../../src/recipes/catalogue.js';

type Numbers = Readonly<Record<string, number>>;

/** The formula as Vega calculates it. */
function inVega(f: Formula): (args: Numbers) => number {
  const code = f.toJavaScript((s) => `datum.v_${s}`, vegaExpressions);
  const generate = vega.codegenExpression({ allowed: ['datum'], globalvar: 'globals', forbidden: [] });
  const body = generate(vega.parseExpression(code)).code;
  // eslint-disable-next-line @typescript-eslint/no-implied-eval -- what Vega itself does with an expression
  const run = new Function('datum', `return ${body};`) as (datum: Numbers) => number;
  return (args) => run(Object.fromEntries(Object.entries(args).map(([s, v]) => [`v_${s}`, v])));
}

const ratio = (label: string) => variable('ratio', label);
const made = (expression: string): Formula =>
  formula({
    symbol: 'y',
    result: ratio('answer'),
    expression,
    variables:
      expression.includes('b') && /\bb\b/.test(expression)
        ? { a: ratio('a'), b: ratio('b') }
        : { a: ratio('a') },
  });

describe('a formula in Vega', () => {
  it.each([
    'cbrt(a)',
    'cbrt(a - b)',
    'cbrt(cbrt(a) + cbrt(b))',
    'log10(abs(a) + 1)',
    'log10(max(log10(abs(a) + 10), abs(b) + 1))',
    'log10((abs(a) + 1) * (abs(b) + 1)) / log(abs(a) + 2)',
    'a < b ? cbrt(a) ^ 2 : -log10(b ^ 2 + 1)',
    'sin(a deg) + cos(b) * pi - atan2(a, b)',
    'ceil(a) + floor(b) + min(a, b) ^ 3 + max(a, b)^2.0',
    'exp(-abs(a)) + sqrt(b ^ 2 + 1) + pow(abs(a), 0.4)',
  ])('gives what the formula gives: %s', (expression) => {
    const f = made(expression);
    const drawn = inVega(f);
    const number = fc.double({ min: -1000, max: 1000, noNaN: true });
    fc.assert(
      fc.property(number, number, (a, b) => {
        const args: Numbers = f.variables['b'] ? { a, b } : { a };
        const expected = f.evaluate(args);
        expect(drawn(args)).toBeCloseTo(expected, 9 - Math.ceil(Math.log10(Math.abs(expected) + 1)));
      }),
    );
  });

  it('gives what the formula gives, for every formula of every recipe', () => {
    const formulas = catalogue.flatMap((r) => r.formulas.map((f) => [r.name, f, inVega(f)] as const));
    expect(formulas.length).toBeGreaterThan(100);
    for (const [name, f, drawn] of formulas)
      fc.assert(
        fc.property(
          fc.record(
            Object.fromEntries(
              Object.keys(f.variables).map((s) => [s, fc.double({ min: 0.01, max: 10, noNaN: true })]),
            ),
          ),
          (args) => {
            const [a, b] = [f.evaluate(args), drawn(args)];
            if (Number.isFinite(a))
              expect(Math.abs(a - b), `${name}: ${f.plain}`).toBeLessThanOrEqual(1e-9 * Math.abs(a));
            else expect(Number.isFinite(b), `${name}: ${f.plain}`).toBe(false);
          },
        ),
        { numRuns: 20 },
      );
  });
});
