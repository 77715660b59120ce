import { expect, it } from 'vitest';
import { Refusal } from '../../src/quantities/refusal.js';
import { attempt } from '../../src/quantities/attempt.js';

it('gives the value or the refusal, and hides no other fault', () => {
  const refusal = new Refusal('got 3, takes 2');
  expect(attempt(() => 7)).toBe(7);
  expect(
    attempt(() => {
      throw refusal;
    }),
  ).toBe(refusal);
  expect(() =>
    attempt(() => {
      throw new TypeError('a fault of the program');
    }),
  ).toThrow(TypeError);
});
