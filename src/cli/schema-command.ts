import { outputSchemas } from './output-schemas.js';
import { UsageError, type Words } from './usage.js';

/** `reckoner schema COMMAND`: the JSON Schema of what it prints with --json. */
export function schema({ plain }: Words): number {
  const [name, more] = plain;
  const found = name !== undefined && Object.hasOwn(outputSchemas, name) ? outputSchemas[name] : undefined;
  if (!found || more !== undefined)
    throw new UsageError(
      `schema: got ${JSON.stringify(plain.join(' ').slice(0, 60))}, takes one of ${Object.keys(outputSchemas).join(', ')}`,
    );
  process.stdout.write(`${JSON.stringify(found, null, 2)}\n`);
  return 0;
}
