// What is wrong with a recipe's definition is said in one line when it is defined, or when it first answers.
import { describe, expect, it, vi } from 'vitest';
import { field } from '../../src/engine/field.js';
import { formula, variable } from '../../src/engine/formula.js';
import { out } from '../../src/engine/output.js';
import { formerName, recipe } from '../../src/engine/recipe.js';
import { chipVolume, InputError, restraintStress, sweep } from '../../src/index.js';
import { crampedStress, sheetAndDust } from '../../src/recipes/former-names.js';

const length = variable('length', 'a length');
const twice = formula({ symbol: 'D', result: length, expression: '2 L', variables: { L: length } });
const unused = formula({ symbol: 'E', result: length, expression: '3 L', variables: { L: length } });
const common = { name: 'r', title: 'Twice', topic: 'test', about: 'For tests.', sources: [] } as const;
const inputs = { length: field.length({ symbol: 'L', label: 'length' }) };
const outputs = { double: out.length({ symbol: 'D', label: 'double' }) };
const example = { length: '1 m' };

describe('the definition of a recipe', () => {
  it('has no formula that no output needs', () => {
    expect(() => recipe({ ...common, inputs, outputs, steps: [twice, unused], example })).toThrow(
      'r: no output needs the formula E = 3 L',
    );
  });

  it('has no output that no formula gives', () => {
    const more = { ...outputs, other: out.length({ symbol: 'X', label: 'other' }) };
    expect(() => recipe({ ...common, inputs, outputs: more, steps: [twice], example })).toThrow(
      'r: the output other takes the symbol of an input or of a formula',
    );
  });

  it('has outputs and letters of the dimension of their values', () => {
    const mass = { double: out.mass({ symbol: 'D', label: 'double' }) };
    expect(() => recipe({ ...common, inputs, outputs: mass, steps: [twice], example })).toThrow(
      'r: the output double is a mass, its value is a length',
    );
    const heavy = { length: field.mass({ symbol: 'L', label: 'mass' }) };
    expect(() =>
      recipe({ ...common, inputs: heavy, outputs, steps: [twice], example: { length: '1 kg' } }),
    ).toThrow('r: the letter L of D = 2 L is a length, its value is a mass');
  });

  it('gives no output that it does not declare', () => {
    const r = recipe({
      ...common,
      inputs,
      outputs,
      solve: ({ length: l }) => ({ double: 2 * l, duoble: l }),
      example,
    });
    expect(() => r(example)).toThrow(
      'r: the answer has "duoble", which is not among its outputs; did you mean "double"?',
    );
  });

  it('has limits of the kind of the field', () => {
    // @ts-expect-error -- a limit of another kind does not compile
    expect(() => field.length({ label: 'length', above: '0 kg' })).toThrow(
      /got the unit "kg" of a mass, takes a length/,
    );
    // @ts-expect-error -- nor does one without a unit
    expect(() => field.mass({ label: 'mass', max: '5' })).toThrow(/takes a mass/);
    // @ts-expect-error -- nor a default of another kind
    expect(() => field.moisture({ label: 'moisture', default: '8 degC' }).read(undefined)).toThrow(/degC/);
    expect(field.length({ label: 'length', above: '0 mm', max: '5 m', default: '3.5 in' }).max).toBe(5);
  });

  it('has units of the kind of a variable, a field and an output', () => {
    // @ts-expect-error -- an unknown unit does not compile
    const unknown = variable('length', 'width', { unit: 'mmm' });
    // @ts-expect-error -- nor does a unit of another kind
    const mass = variable('length', 'width', { unit: 'kg' });
    // @ts-expect-error -- nor one of an output
    expect(out.length({ label: 'width', unit: 'mmm' }).unit).toBe('mmm');
    // @ts-expect-error -- nor one of a field
    expect(field.length({ label: 'width', unit: 'mmm' }).unit).toBe('mmm');
    for (const wrong of [unknown, mass])
      expect(() =>
        formula({ symbol: 'D', result: length, expression: '2 w', variables: { w: wrong } }).evaluate({
          w: 1,
        }),
      ).toThrow(/takes a length such as "900 mm"/);
  });
});

describe('a chain of formulas', () => {
  const r = recipe({
    ...common,
    inputs,
    outputs,
    refuse: (given) =>
      given.length > 5
        ? { field: 'length', message: 'got more than 5 m, takes what one person can carry' }
        : undefined,
    steps: [twice],
    example,
  });

  it('refuses input by a rule of its own, in every way of asking', async () => {
    const message = 'r: length: got more than 5 m, takes what one person can carry';
    expect(r({ length: '2 m' }).double.in('m')).toBe(4);
    expect(() => r({ length: '6 m' })).toThrow(message);
    expect(() => r.evaluate({ length: 6 })).toThrow(InputError);
    await expect(sweep(r, { length: '4 m .. 6 m' })).rejects.toThrow(message);
  });
});

describe('a former name', () => {
  it('answers the same and tells the new name once', () => {
    const told: string[] = [];
    const former = formerName(restraintStress, 'crampedStress', (line) => told.push(line));
    const [now, then] = [restraintStress(restraintStress.example), former(restraintStress.example)];
    former(restraintStress.example);
    expect(then.toJSON()).toEqual(now.toJSON());
    expect(told).toEqual([
      'crampedStress is called restraintStress since version 0.2; the former name goes in version 0.3',
    ]);
  });

  it('of both recipes that have another name now', () => {
    const warn = vi.spyOn(console, 'warn').mockImplementation(() => undefined);
    /* eslint-disable @typescript-eslint/no-deprecated -- the former names are what is tested */
    expect(crampedStress(restraintStress.example).recipe).toBe('restraintStress');
    expect(sheetAndDust(chipVolume.example).recipe).toBe('chipVolume');
    /* eslint-enable @typescript-eslint/no-deprecated */
    expect(warn).toHaveBeenCalledTimes(2);
    warn.mockRestore();
  });
});
