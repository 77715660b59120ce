import { pieceJsonSchema } from '../piece/description.js';
import { outputSchemas } from './output-schemas.js';
import { UsageError, type Words } from './usage.js';

/** `reckoner schema COMMAND`: the JSON Schema of what it prints with --json; `piece` is that of a *.piece.json file. */
export function schema({ plain }: Words): number {
  const [name, more] = plain;
  if (name === 'piece' && more === undefined) {
    process.stdout.write(`${JSON.stringify(pieceJsonSchema(), null, 2)}\n`);
    return 0;
  }
  const found = name !== undefined && Object.hasOwn(outputSchemas, name) ? outputSchemas[name] : undefined;
  if (!found || more !== undefined)
    throw new UsageError(
      `schema: got ${JSON.stringify(plain.join(' ').slice(0, 60))}, takes one of ${[...Object.keys(outputSchemas), 'piece'].join(', ')}`,
    );
  process.stdout.write(`${JSON.stringify(found, null, 2)}\n`);
  return 0;
}
