// What a recipe refuses: the fields, and the words.
import { expect } from 'vitest';
import { InputError } from '../../src/units/input-error.js';

export function refusalOf(run: () => unknown): InputError {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(InputError);
    return error as InputError;
  }
  throw new Error('was not refused');
}
export const fieldsOf = (run: () => unknown): string[] => refusalOf(run).issues.map((t) => t.field);
