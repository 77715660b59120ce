// Places in a description by their path, such as `top.thickness` or `parts.leg.along[2]`.
import type { Field, Fields } from '../engine/field.js';
import { isPlainObject } from '../engine/field.js';
import { InputError, inspectValue, nearest } from '../units/input-error.js';
import { pieceFields } from './description.js';

/** `parts.leg.along[2]` as its steps; places in a list count from one. */
export function stepsOf(path: string): (string | number)[] {
  return path.split('.').flatMap((step): (string | number)[] => {
    const [, name = '', places = ''] = /^([^[\]]*)((?:\[\d+\])*)$/.exec(step) ?? [];
    return [
      ...(name === '' ? [] : [name]),
      ...[...places.matchAll(/\[(\d+)\]/g)].map((m) => Number(m[1]) - 1),
    ];
  });
}

/** The value at a path; undefined where there is none. */
export function valueAt(tree: unknown, path: string): unknown {
  let at = tree;
  for (const step of stepsOf(path)) {
    if (typeof at !== 'object' || at === null) return undefined;
    at = (at as Record<string | number, unknown>)[step];
  }
  return at;
}

/** A copy of the tree with another value at a path; what is not on the way is shared. */
export function withValueAt(tree: unknown, path: string, value: unknown): unknown {
  const put = (at: unknown, steps: readonly (string | number)[]): unknown => {
    const [step, ...rest] = steps;
    if (step === undefined) return value;
    if (typeof step === 'number') {
      const list = Array.isArray(at) ? [...(at as unknown[])] : [];
      list[step] = put(list[step], rest);
      return list;
    }
    const whole: Record<string, unknown> = isPlainObject(at) ? at : {};
    return { ...whole, [step]: put(whole[step], rest) };
  };
  return put(tree, stepsOf(path));
}

/** The field that reads the value at a path. @throws InputError naming the nearest right path */
export function fieldAt(path: string): Field {
  let fields: Fields | undefined = pieceFields;
  let found: Field | undefined;
  for (const step of stepsOf(path)) {
    const below: Field | undefined =
      typeof step === 'number' || found?.kind === 'record'
        ? found?.items?.[0]
        : fields && Object.hasOwn(fields, step)
          ? fields[step]
          : undefined;
    if (!below) {
      const near = typeof step === 'string' && fields ? nearest(step, Object.keys(fields)) : undefined;
      throw new InputError({
        field: path,
        message: `no such value in a description${near ? `; did you mean ${inspectValue(near)}?` : ''}`,
      });
    }
    found = below;
    fields = below.fields;
  }
  if (!found) throw new InputError({ field: path, message: 'takes a path such as "top.thickness"' });
  return found;
}
