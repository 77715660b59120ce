import { tryParse } from '../units/try-parse.js';
import { InputError } from '../units/input-error.js';
import { collectIssues } from '../engine/field.js';

/** Reads one value; what is wrong with it is reported under its name and that of the recipe. @throws InputError */
export function withFieldPath<T>(recipe: string, name: string, read: () => T): T {
  const got = tryParse(() => collectIssues([[name, read]])[0] as T);
  if (got instanceof InputError) throw new InputError(got.issues, recipe);
  return got;
}
