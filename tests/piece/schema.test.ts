import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { pieceJsonSchema } from '../../src/piece/description.js';
import { demo, raw } from './samples.js';

describe('data/piece.schema.json', () => {
  it('is the schema of the reader: `reckoner schema piece` writes it anew', () => {
    expect(JSON.parse(raw(join(demo, '../piece.schema.json')))).toEqual(
      JSON.parse(JSON.stringify(pieceJsonSchema())),
    );
  });
});
