import * as z from 'zod/mini';
import { Quantity } from '../units/quantity.js';
import { InputError, nearest, inspectValue, type Issue } from '../units/input-error.js';
import { tryParse } from '../units/try-parse.js';
import type { Fields, Parsed } from './field-shape.js';

/** A path below a name: `slots[2]`, `top.width`. */
const under = (name: string, below: string): string =>
  below === '' || below.startsWith('[') ? name + below : `${name}.${below}`;

/** Gathers the issues of several parts, each under its own name, and throws them together. */
export function collectIssues<T>(parts: Iterable<readonly [string, () => T]>): T[] {
  const issues: Issue[] = [];
  const out: T[] = [];
  for (const [name, read] of parts) {
    const got = tryParse(read);
    if (got instanceof InputError)
      issues.push(...got.issues.map((t) => ({ field: under(name, t.field), message: t.message })));
    else out.push(got);
  }
  if (issues.length > 0) throw new InputError(issues);
  return out;
}

export const isPlainObject = (v: unknown): v is Record<string, unknown> =>
  typeof v === 'object' &&
  v !== null &&
  !Array.isArray(v) &&
  !(v instanceof Quantity) &&
  [Object.prototype, null].includes(Object.getPrototypeOf(v) as object | null);

/** A zod schema over a set of fields: unknown names are refused with the nearest right one. Built once, at definition. */
export function makeParser<F extends Fields>(fields: F): (value: unknown) => Parsed<F> {
  const shape = Object.fromEntries(
    Object.entries(fields).map(([name, field]) => [
      name,
      z.pipe(
        z.unknown(),
        z.transform((value, ctx) => {
          const read = tryParse(() => field.read(value));
          if (!(read instanceof InputError)) return read;
          for (const t of read.issues)
            ctx.issues.push({ code: 'custom', message: t.message, input: value, params: { below: t.field } });
          return z.NEVER;
        }),
      ),
    ]),
  );
  const schema = z.strictObject(shape);
  const names = Object.keys(fields);
  return (value) => {
    // Missing keys are put in as undefined so that each field itself says what it takes.
    const whole = isPlainObject(value)
      ? { ...Object.fromEntries(names.map((n) => [n, undefined])), ...value }
      : value;
    const result = schema.safeParse(whole);
    if (result.success) return result.data as Parsed<F>;
    const issues: Issue[] = result.error.issues.flatMap((issue): Issue[] => {
      if (issue.code === 'unrecognized_keys') {
        return issue.keys.map((key) => {
          const near = nearest(key, names);
          return {
            field: key.slice(0, 60),
            message: `no such input${near ? `; did you mean ${inspectValue(near)}?` : `; takes ${names.join(', ')}`}`,
          };
        });
      }
      if (issue.code !== 'custom')
        return [
          { field: '', message: `got ${inspectValue(value)}, takes an object with ${names.join(', ')}` },
        ];
      const { below } = issue.params as { readonly below: string };
      return [{ field: under(issue.path.join('.'), below), message: issue.message }];
    });
    throw new InputError(issues);
  };
}
