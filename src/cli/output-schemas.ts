// JSON Schema (2020-12) of what commands print with --json. A field is added in a minor version and taken away in none.
import type { JsonSchema } from '../engine/json-schema-type.js';

const text: JsonSchema = { type: 'string' };
const number: JsonSchema = { type: 'number' };
const quantity: JsonSchema = object({ value: number, unit: text });

function object(
  required: Readonly<Record<string, JsonSchema>>,
  optional: Readonly<Record<string, JsonSchema>> = {},
): JsonSchema {
  return { type: 'object', properties: { ...required, ...optional }, required: Object.keys(required) };
}
const list = (items: JsonSchema): JsonSchema => ({ type: 'array', items });
const document = (title: string, schema: JsonSchema): JsonSchema => ({
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  title,
  ...schema,
});

export const outputSchemas: Readonly<Record<string, JsonSchema>> = {
  shop: document('reckoner shop --json', object({ path: text, values: { type: 'object' } })),
  list: document('reckoner list --json', list(object({ name: text, topic: text, title: text, about: text }))),
  work: document(
    'reckoner work --json',
    object({
      recipe: text,
      title: text,
      outputs: {
        type: 'object',
        description: 'by name; "reckoner show RECIPE --json" has the schema of each',
      },
      cautions: list(
        object({ level: { enum: ['danger', 'range', 'estimate', 'data', 'note'] }, text }, { source: text }),
      ),
      workings: list(text),
      sources: list(text),
    }),
  ),
  sweep: document(
    'reckoner sweep --json',
    object({
      recipe: text,
      columns: {
        type: 'object',
        additionalProperties: object({ values: list({ type: ['number', 'string'] }) }, { unit: text }),
      },
    }),
  ),
  uncertain: document(
    'reckoner uncertain --json',
    object(
      {
        recipe: text,
        output: text,
        samples: { type: 'integer' },
        unit: text,
        mean: number,
        percentiles: object({ '5': number, '10': number, '50': number, '90': number, '95': number }),
        sensitivity: list(object({ input: text, first: number, total: number })),
      },
      { chance: { type: 'number', minimum: 0, maximum: 1 } },
    ),
  ),
  solve: document(
    'reckoner solve --json',
    object(
      {
        recipe: text,
        input: text,
        output: text,
        roots: list(quantity),
        intervals: list(object({ from: quantity, to: quantity })),
      },
      { nearest: object({ input: quantity, output: quantity }) },
    ),
  ),
  notes: document(
    'reckoner notes redo --json',
    object({ file: text, title: text, versions: {}, results: {}, changes: { type: 'array' } }),
  ),
};
