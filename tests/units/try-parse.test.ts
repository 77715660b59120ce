import { expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { tryParse } from '../../src/units/try-parse.js';

it('gives the value or the refusal, and hides no other fault', () => {
  const refusal = new InputError('got 3, takes 2');
  expect(tryParse(() => 7)).toBe(7);
  expect(
    tryParse(() => {
      throw refusal;
    }),
  ).toBe(refusal);
  expect(() =>
    tryParse(() => {
      throw new TypeError('a fault of the program');
    }),
  ).toThrow(TypeError);
});
