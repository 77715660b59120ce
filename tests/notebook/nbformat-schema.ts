import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';

/**
 * Faults of a notebook's JSON by Jupyter's own schema for format 4.5 (nbformat-4.5.schema.json beside this file, BSD-3-Clause);
 * an empty list when it is valid.
 */
export function schemaFaults(value: unknown): string[] {
  validate(value);
  return (validate.errors ?? []).map((e) => `${e.instancePath} ${e.message ?? ''}`);
}

const schema = JSON.parse(
  readFileSync(new URL('./nbformat-4.5.schema.json', import.meta.url), 'utf8'),
) as Record<string, unknown>;
// The schema is written in draft 4, from which draft 7 differs in nothing it uses; its id pattern needs the old way with "-".
delete schema['$schema'];
const validate = new Ajv({ strict: false, unicodeRegExp: false, allErrors: false }).compile(schema);
