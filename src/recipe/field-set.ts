import * as z from 'zod';
import { Quantity } from '../quantities/quantity.js';
import { Refusal, nearest, shown, type Trouble } from '../quantities/refusal.js';
import { attempt } from '../quantities/attempt.js';
import type { Fields, Read } from './field-shape.js';

/** A path below a name: `slots[2]`, `top.width`. */
const under = (name: string, below: string): string =>
  below === '' || below.startsWith('[') ? name + below : `${name}.${below}`;

/** Gathers the troubles of several parts, each under its own name, and throws them together. */
export function together<T>(parts: Iterable<readonly [string, () => T]>): T[] {
  const troubles: Trouble[] = [];
  const out: T[] = [];
  for (const [name, read] of parts) {
    const got = attempt(read);
    if (got instanceof Refusal)
      troubles.push(...got.troubles.map((t) => ({ field: under(name, t.field), says: t.says })));
    else out.push(got);
  }
  if (troubles.length > 0) throw new Refusal(troubles);
  return out;
}

export const isPlainObject = (v: unknown): v is Record<string, unknown> =>
  typeof v === 'object' &&
  v !== null &&
  !Array.isArray(v) &&
  !(v instanceof Quantity) &&
  [Object.prototype, null].includes(Object.getPrototypeOf(v) as object | null);

/** A zod schema over a set of fields: unknown names are refused with the nearest right one. Built once, at definition. */
export function schemaOf<F extends Fields>(fields: F): (value: unknown) => Read<F> {
  const shape = Object.fromEntries(
    Object.entries(fields).map(([name, field]) => [
      name,
      z.unknown().transform((value, ctx) => {
        const read = attempt(() => field.read(value));
        if (!(read instanceof Refusal)) return read;
        for (const t of read.troubles)
          ctx.addIssue({ code: 'custom', message: t.says, params: { below: t.field } });
        return z.NEVER;
      }),
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
    if (result.success) return result.data as Read<F>;
    const troubles: Trouble[] = result.error.issues.flatMap((issue): Trouble[] => {
      if (issue.code === 'unrecognized_keys') {
        return issue.keys.map((key) => {
          const near = nearest(key, names);
          return {
            field: key.slice(0, 60),
            says: `no such input${near ? `; did you mean ${shown(near)}?` : `; takes ${names.join(', ')}`}`,
          };
        });
      }
      if (issue.code !== 'custom')
        return [{ field: '', says: `got ${shown(value)}, takes an object with ${names.join(', ')}` }];
      const { below } = issue.params as { readonly below: string };
      return [{ field: under(issue.path.join('.'), below), says: issue.message }];
    });
    throw new Refusal(troubles);
  };
}
