import type { Kind } from '../units/kind.js';
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
export { isPlainObject, makeParser, collectIssues } from './field-set.js';
export { watchCurrency, type Written } from './quantity-field.js';

const of =
  <K extends Kind>(kind: K) =>
  <const O extends QuantityOptions>(options: O): Field<Written<K>, MaybeOut<O, number>, IsOptional<O>> =>
    quantityField(kind, options);

/** Makers of fields. Each takes `says` (one line of meaning) and what limits it; see architecture in DEVELOPERS.md. */
export const field = {
  quantity: quantityField,
  length: of('length'),
  thickness: of('thickness'),
  area: of('area'),
  volume: of('volume'),
  liquid: of('liquid'),
  mass: of('mass'),
  force: of('force'),
  pressure: of('pressure'),
  stress: of('stress'),
  modulus: of('modulus'),
  areaLoad: of('areaLoad'),
  lineLoad: of('lineLoad'),
  springRate: of('springRate'),
  moment: of('moment'),
  density: of('density'),
  concentration: of('concentration'),
  applicationRate: of('applicationRate'),
  coverage: of('coverage'),
  moisture: of('moisture'),
  humidity: of('humidity'),
  share: of('share'),
  temperature: of('temperature'),
  time: of('time'),
  speed: of('speed'),
  rotation: of('rotation'),
  angle: of('angle'),
  money: of('money'),
  ratio: of('ratio'),
  count: of('count'),
  choice: choiceField,
  flag: flagField,
  text: textField,
  list: listField,
  group: groupField,
  record: recordField,
  either: unionField,
} as const;
