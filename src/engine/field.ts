import { makersByKind, type Kind } from '../units/kind.js';
import { groupField, listField, recordField } from './compound-fields.js';
import { unionField } from './union-field.js';
import type { Field, IsOptional, MaybeOut } from './field-shape.js';
import { quantityField, type QuantityOptions, type Written } from './quantity-field.js';
import { choiceField, flagField, textField } from './word-fields.js';

export {
  makeField,
  type Field,
  type Fields,
  type Input,
  type InputOf,
  type Parsed,
  type ParsedOf,
} from './field-shape.js';
export { fieldsSchema, isPlainObject, makeParser, collectIssues, type FieldsSchema } from './field-set.js';
export { watchCurrency, type Written } from './quantity-field.js';

type QuantityMakers = {
  readonly [K in Kind]: <const O extends QuantityOptions<K>>(
    options: O,
  ) => Field<Written<K>, MaybeOut<O, number>, IsOptional<O>>;
};

/** Makers of fields, one for each kind of quantity and those below. Each takes a `label` and its limits; see DEVELOPERS.md. */
export const field = {
  quantity: quantityField,
  ...(makersByKind(
    (kind) => (options: QuantityOptions) => quantityField(kind, options as never),
  ) as QuantityMakers),
  choice: choiceField,
  flag: flagField,
  text: textField,
  list: listField,
  group: groupField,
  record: recordField,
  either: unionField,
} as const;
