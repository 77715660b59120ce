import * as z from 'zod/mini';
import { Quantity } from '../units/quantity.js';
import { InputError, nearest, inspectValue, type Issue } from '../units/input-error.js';
import { tryParse } from '../units/try-parse.js';
import type { Fields, Input, Parsed } from './field-shape.js';

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

/** The zod schema of a set of fields: what a person writes comes out checked, as numbers in base units, defaults filled in. */
export type FieldsSchema<F extends Fields> = z.ZodMiniType<Parsed<F>, Input<F>>;

/** The zod schema of a set of fields. Its issues have the fields' own sentences; names that it does not know are refused. `begin` runs before each reading. */
export function fieldsSchema<F extends Fields>(fields: F, begin?: () => void): FieldsSchema<F> {
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
  // Missing keys are put in as undefined so that each field itself says what it takes.
  return z.pipe(
    z.pipe(
      z.unknown(),
      z.transform((value) => {
        begin?.();
        return withAllKeys(fields, value);
      }),
    ),
    z.strictObject(shape),
  ) as unknown as FieldsSchema<F>;
}

const withAllKeys = (fields: Fields, value: unknown): unknown =>
  isPlainObject(value)
    ? { ...Object.fromEntries(Object.keys(fields).map((n) => [n, undefined])), ...value }
    : value;

/** Reads a set of fields: unknown names are refused with the nearest right one. Built once, at definition. */
export function makeParser<F extends Fields>(fields: F): (value: unknown) => Parsed<F> {
  const schema = fieldsSchema(fields);
  const names = Object.keys(fields);
  return (value) => {
    const result = schema.safeParse(value);
    if (result.success) return result.data;
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
