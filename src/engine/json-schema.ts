// JSON Schema (2020-12) of recipes and of what results print, made from the same fields and outputs as everything else.
import { InputError } from '../units/input-error.js';
import { kinds, type Kind } from '../units/kind.js';
import { tryParse } from '../units/try-parse.js';
import type { Field, Fields } from './field.js';
import type { JsonSchema } from './json-schema-type.js';
import type { Output, Outputs } from './output.js';

const dialect = 'https://json-schema.org/draft/2020-12/schema';

/** A quantity as JSON: a number and the unit it is in. */
const quantityObject = (kind: Kind): JsonSchema => ({
  type: 'object',
  description: `${kinds[kind].called}, a number and its unit`,
  properties: { value: { type: 'number' }, unit: { type: 'string', examples: [...kinds[kind].metric] } },
  required: ['value', 'unit'],
});

/** What one field takes, as JSON. */
export function fieldSchema(f: Field): JsonSchema {
  const about = {
    title: f.label,
    description: f.expects,
    ...(f.default === undefined ? {} : { default: f.default }),
  };
  return { ...about, ...shapeOf(f) };
}

function shapeOf(f: Field): JsonSchema {
  if (Object.hasOwn(kinds, f.kind)) return quantitySchema(f, f.kind as Kind);
  const item = f.items?.[0];
  switch (f.kind) {
    case 'choice':
      return { enum: f.choices ?? [] };
    case 'flag':
      return { enum: [true, false, 'yes', 'no'] };
    case 'text':
      return { type: 'string', minLength: 1, maxLength: 200 };
    case 'list':
      return item ? { anyOf: [{ type: 'array', items: fieldSchema(item) }, { type: 'string' }] } : {};
    case 'record':
      return item
        ? { anyOf: [{ type: 'object', additionalProperties: fieldSchema(item) }, { type: 'string' }] }
        : {};
    case 'group':
      return objectSchema(f.fields ?? {});
    case 'table':
      return { anyOf: [{ type: 'array', items: objectSchema(f.fields ?? {}) }, { type: 'string' }] };
    default:
      return openSchema(f);
  }
}

/** A field of a recipe's own sort: its alternatives where it has any, else anything, with examples. */
function openSchema(f: Field): JsonSchema {
  if (f.items) return { anyOf: f.items.map(fieldSchema) };
  return f.choices ? { examples: f.choices } : {};
}

/** Text with a unit; a plain number for counts, ratios and money. Limits are in the base unit. */
function quantitySchema(f: Field, kind: Kind): JsonSchema {
  const info = kinds[kind];
  const bounds = {
    ...(f.min === undefined ? {} : { minimum: f.min }),
    ...(f.max === undefined ? {} : { maximum: f.max }),
  };
  if (info.plain)
    return { anyOf: [{ type: kind === 'count' ? 'integer' : 'number', ...bounds }, { type: 'string' }] };
  return {
    anyOf: [
      { type: 'string', examples: [info.example] },
      quantityObject(kind),
      ...(takesNumber(f) ? [{ type: 'number' }] : []),
    ],
    'x-kind': kind,
    'x-base-unit': info.base,
    ...(f.min === undefined ? {} : { 'x-minimum': f.min }),
    ...(f.max === undefined ? {} : { 'x-maximum': f.max }),
  };
}

/** Whether a field of a kind with units takes a bare number too, as that of a cut of shellac does. */
const takesNumber = (f: Field): boolean => !(tryParse(() => f.read(1)) instanceof InputError);

function objectSchema(fields: Fields): JsonSchema {
  const all = Object.entries(fields);
  return {
    type: 'object',
    properties: Object.fromEntries(all.map(([name, f]) => [name, fieldSchema(f)])),
    required: all.flatMap(([name, f]) => (f.optional ? [] : [name])),
    additionalProperties: false,
  };
}

/** What one output is in the JSON of a result. */
export function outputSchema(o: Output): JsonSchema {
  const about = { title: o.label };
  if (o.columns)
    return {
      ...about,
      type: 'array',
      items: {
        type: 'object',
        properties: Object.fromEntries(Object.entries(o.columns).map(([n, c]) => [n, outputSchema(c)])),
        required: Object.entries(o.columns).flatMap(([n, c]) => (c.optional ? [] : [n])),
      },
    };
  if (o.kind === 'list') return { ...about, type: 'array' };
  if (o.kind === 'record') return { ...about, type: 'object' };
  return {
    ...about,
    type: 'object',
    properties: {
      value: { type: o.kind === 'flag' ? 'boolean' : Object.hasOwn(kinds, o.kind) ? 'number' : 'string' },
      unit: { type: 'string', ...(o.unit === undefined ? {} : { const: o.unit }) },
    },
    required: ['value', 'unit'],
  };
}

/** What a schema of a recipe needs of it. */
interface Described {
  readonly name: string;
  readonly topic: string;
  readonly title: string;
  readonly about: string;
  readonly inputs: Fields;
  readonly outputs: Outputs;
  readonly example: object;
}

/** The schema of what a recipe takes. */
export function inputsJsonSchema(r: Described): JsonSchema {
  return {
    $schema: dialect,
    title: r.title,
    description: r.about,
    ...objectSchema(r.inputs),
    examples: [r.example],
  };
}

/** What a recipe takes and gives: the schema of its inputs, and of the outputs in the JSON of a result. */
export function recipeJsonSchema(r: Described): JsonSchema {
  return {
    name: r.name,
    topic: r.topic,
    title: r.title,
    about: r.about,
    inputs: inputsJsonSchema(r),
    outputs: { $schema: dialect, ...outputsSchema(r.outputs) },
    example: r.example,
  };
}

export function outputsSchema(outputs: Outputs): JsonSchema {
  return {
    type: 'object',
    properties: Object.fromEntries(Object.entries(outputs).map(([n, o]) => [n, outputSchema(o)])),
    required: Object.entries(outputs).flatMap(([n, o]) => (o.optional ? [] : [n])),
  };
}
