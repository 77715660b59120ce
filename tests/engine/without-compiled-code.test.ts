// A page whose policy forbids code made at run time answers as any other: formulas then run as closures.
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import * as z from 'zod';
import { closureOf, javascriptOf, parseTree } from '../../src/units/algebra.js';
import type { AnyRecipe } from '../../src/engine/any-recipe.js';
import { catalogue } from '../../src/recipes/catalogue.js';

describe('a formula as a closure', () => {
  const v = { a: 3, b: 4, x: 0.5 };
  // Worked by hand.
  it.each([
    ['a + b', 7],
    ['a - b', -1],
    ['-a', -3],
    ['+a', 3],
    ['a * b / 2', 6],
    ['a^2 + b^3', 73],
    ['a^x * a^x', 3],
    ['(a + b)^2', 49],
    ['sqrt(a^2 + b^2)', 5],
    ['2 * pi', 2 * Math.PI],
    ['a < b ? 10 : 20', 10],
    ['a > b ? 10 : 20', 20],
    ['a <= 3 ? 1 : 2', 1],
    ['a >= 3.5 ? 1 : 2', 2],
    ['b <= a ? 1 : 2', 2],
    ['b >= 4 ? 1 : 2', 1],
    ['a > 3 ? 1 : 2', 2],
    ['a < 3 ? 1 : 2', 2],
    ['max(a, b, x) - min(a, b, x)', 3.5],
    ['ceil(x) + floor(x)', 1],
    ['atan2(a, a) * 4', Math.PI],
    ['log10(100) + log(exp(1))', 3],
    ['cbrt(27) + abs(-1)', 4],
    ['b^4', 256],
    ['2^a', 8],
  ])('%s is %d', (text, expected) => {
    const tree = parseTree(text);
    expect(closureOf(tree)(v)).toBeCloseTo(expected, 12);
    // eslint-disable-next-line @typescript-eslint/no-implied-eval -- the code is what is tested
    const made = new Function('v', `return ${javascriptOf(tree, (s) => `v.${s}`)};`) as (
      g: typeof v,
    ) => number;
    expect(made(v)).toBeCloseTo(expected, 12);
  });
  it.each(['a; b', '[a, b]', 'f(x) = x', 'a = 3', '"text"', 'random()', 'a and b', 'a % b'])(
    '%s is refused when the recipe is written',
    (text) => {
      expect(() => closureOf(parseTree(text))({ a: 1, b: 2, x: 3 })).toThrow();
    },
  );
});

describe('every recipe without code made at run time', () => {
  beforeEach(() => {
    vi.resetModules();
    // zod tries once whether it may make code, and did so before this test began.
    z.config({ jitless: true });
    vi.stubGlobal('Function', function forbidden(): never {
      throw new EvalError('unsafe-eval is not an allowed source of script');
    });
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.resetModules();
    z.config({ jitless: false });
  });
  it('answers its example as with it, and refuses the same', { timeout: 60_000 }, async () => {
    const made = (await import('../../src/recipes/catalogue.js')).catalogue;
    let formulas = 0;
    for (const recipe of made) {
      if (recipe.isAsync) continue;
      const other = catalogue.find((r) => r.name === recipe.name) as AnyRecipe;
      const closed = await recipe(recipe.example);
      formulas += closed.workings.filter((w) => w.kind === 'formula').length;
      vi.unstubAllGlobals();
      const usual = await other(other.example);
      expect(JSON.parse(JSON.stringify(closed.toJSON().outputs)), recipe.name).toEqual(
        JSON.parse(JSON.stringify(usual.toJSON().outputs)),
      );
      vi.stubGlobal('Function', function forbidden(): never {
        throw new EvalError('unsafe-eval is not an allowed source of script');
      });
      const numbers = recipe.read(recipe.example);
      const bare = await recipe.evaluate(numbers);
      vi.unstubAllGlobals();
      expect(bare, recipe.name).toEqual(await other.evaluate(other.read(other.example)));
      vi.stubGlobal('Function', function forbidden(): never {
        throw new EvalError('unsafe-eval is not an allowed source of script');
      });
    }
    expect(formulas).toBeGreaterThan(100);
  });
});
