import { stripCount } from '../../../src/recipes/lamination/strip-count.js';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../../src/recipes/catalogue.js';
import { argumentOf, type Argument, type Scope } from '../../../src/page/forms/model/argument.js';
import { calculate } from '../../../src/page/forms/worker/calculate.js';
import { repairOf } from '../../../src/page/forms/worker/repair.js';
import { Resolver } from '../../../src/page/forms/worker/resolve.js';
import { tryValues } from '../../../src/page/forms/worker/try-values.js';

const recipes = new Map(catalogue.map((recipe) => [recipe.name, recipe]));
const given = (inputs: Readonly<Record<string, unknown>>): Record<string, Argument> =>
  Object.fromEntries(Object.entries(inputs).map(([name, value]) => [name, argumentOf(value)]));
const work = (recipe: string, args: Readonly<Record<string, Argument>>, scope: Scope = {}, shop?: unknown) =>
  calculate(recipes.get(recipe)!, { recipe, given: args }, new Resolver(recipes, scope, shop), true);
const strips: Scope = {
  strips: { call: { recipe: 'stripCount', given: given({ topWidth: '640 mm', stripWidth: '48 mm' }) } },
  a: { value: { type: 'reference', name: 'b', path: [] } },
  b: { value: { type: 'reference', name: 'a', path: [] } },
};

describe('a form worked out', () => {
  it('answers the example of every recipe with a sentence of one line', { timeout: 120_000 }, async () => {
    for (const recipe of catalogue) {
      const outcome = await work(recipe.name, given(recipe.example));
      expect(outcome.state, recipe.name).toBe('answer');
      if (outcome.state !== 'answer') continue;
      expect(outcome.answer.sentence.length, recipe.name).toBeGreaterThan(3);
      expect(outcome.answer.sentence, recipe.name).not.toMatch(/NaN|undefined|[{}]|\n/);
    }
  });

  it('waits for what is missing and names what is wrong, with a repair that passes', async () => {
    expect(await work('stripCount', given({ topWidth: '640 mm' }))).toMatchObject({
      state: 'waiting',
      missing: ['stripWidth'],
    });
    const wrong = await work('stripCount', given({ topWidth: '640 m' }));
    expect(wrong).toMatchObject({ state: 'wrong', issues: [{ field: 'topWidth', repair: '640 mm' }] });
  });

  it('offers only repairs that the field takes', () => {
    for (const recipe of catalogue)
      for (const [name, field] of Object.entries(recipe.inputs))
        for (const text of ['640 m', '3 furlong', '14', '1,5', 'softwod', 'x']) {
          const repair = repairOf(field, text);
          if (repair !== undefined) expect(() => field.read(repair), `${recipe.name}.${name}`).not.toThrow();
        }
  });

  it('follows results of other cells and the shop, and leaves circles and code to the kernel', async () => {
    const clamps = {
      ...given({ length: '1950 mm', jointHeight: '40 mm', timberKind: 'softwood', clampForce: '2 kN' }),
      outerWidth: { type: 'reference', name: 'strips', path: ['stripFinished'] },
    } as const;
    const outcome = await work('clampPlan', clamps, strips);
    expect(outcome).toMatchObject({ state: 'answer', read: { outerWidth: { metric: '45 mm' } } });
    const shop = { type: 'reference', name: 'shop()', path: ['thicknesserWidth'] } as const;
    const top = { ...given({ topWidth: '640 mm', stripWidth: '48 mm' }), machineWidth: shop };
    expect((await work('stripCount', top, {}, { thicknesserWidth: '330 mm' })).state).toBe('answer');
    expect(await work('stripCount', top)).toMatchObject({ state: 'code', fields: ['machineWidth'] });
    const circle = { ...clamps, outerWidth: { type: 'reference', name: 'a', path: [] } } as const;
    expect(await work('clampPlan', circle, strips)).toMatchObject({ state: 'code', fields: ['outerWidth'] });
  });
});

describe('values tried', () => {
  const call = { recipe: 'stripCount', given: given({ topWidth: '640 mm', stripWidth: '48 mm' }) };
  const ask = {
    field: 'stripWidth',
    output: 'strips',
    from: undefined,
    to: undefined,
    target: undefined,
    plusMinus: undefined,
  };
  const tried = (more: Partial<typeof ask> | Record<string, string>) =>
    tryValues(
      recipes.get('stripCount')!,
      { ...ask, ...more, call, scope: {} },
      new Resolver(recipes, {}, undefined),
    );

  it('run from half to double with the present value among them', async () => {
    const { places, now, chart } = await tried({});
    expect(places[now]?.text).toBe('48 mm');
    expect(places[now]?.figure).toBe('15');
    expect(places.length).toBeGreaterThan(40);
    expect(chart).toBeDefined();
  });

  it('have a line for each of a few values of a second field, as the recipe answers there', async () => {
    const { others, chart } = await tried({ second: 'topWidth' });
    expect(others).toHaveLength(4);
    const rows = JSON.stringify(chart)
      .match(/\{"x":48,"y":[^}]*\}/g)
      ?.map((row) => JSON.parse(row) as object);
    for (const topWidth of others)
      expect(rows).toContainEqual({
        x: 48,
        y: stripCount({ topWidth, stripWidth: '48 mm' }).strips,
        series: topWidth,
      });
    expect(rows).toContainEqual({ x: 48, y: 15, series: 'as it is now' });
  });

  it('tell what reaches a target and how sure the figure is', async () => {
    const { reached, remarks } = await tried({ target: '12', plusMinus: '2 mm' });
    expect(reached.length).toBeGreaterThan(0);
    expect(remarks.join(' ')).toMatch(/eight in ten/);
  });

  it('say what is wrong with the ends in words', async () => {
    expect((await tried({ from: 'x' })).problem).toMatch(/x/);
  });
});
