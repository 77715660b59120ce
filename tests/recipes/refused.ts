// What a recipe refuses: the fields, and the words.
import { expect } from 'vitest';
import { Refusal } from '../../src/quantities/refusal.js';

export function refusalOf(run: () => unknown): Refusal {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(Refusal);
    return error as Refusal;
  }
  throw new Error('was not refused');
}
export const fieldsOf = (run: () => unknown): string[] => refusalOf(run).troubles.map((t) => t.field);
