import type { Field } from '../engine/field.js';

/** The same field, with nothing where nothing is written. */
export const optionalField = <In, Out>(f: Field<In, Out>): Field<In, Out | undefined, true> => ({
  ...(f as Field<In, Out | undefined>),
  optional: true,
  read: (value) => (value === undefined ? undefined : f.read(value)),
  format: (value) => (value === undefined ? 'not given' : f.format(value)),
});
