import { attempt } from '../quantities/attempt.js';
import { Refusal } from '../quantities/refusal.js';
import { together } from '../recipe/field.js';

/** Reads one value; what is wrong with it is told under its name and that of the recipe. @throws Refusal */
export function readUnder<T>(recipe: string, name: string, read: () => T): T {
  const got = attempt(() => together([[name, read]])[0] as T);
  if (got instanceof Refusal) throw new Refusal(got.troubles, recipe);
  return got;
}
