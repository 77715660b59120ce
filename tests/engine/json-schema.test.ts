import Ajv from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { recipeJsonSchema } from '../../src/engine/json-schema.js';
import { outputSchemas } from '../../src/cli/output-schemas.js';
import { boardMeasure, catalogue, solveFor, sweep, uncertain } from '../../src/index.js';

// Strict about what schemas themselves say; the x- keywords carry kinds and limits in base units.
const ajv = new Ajv({ strict: false, allErrors: true });
const validate = (schema: object, value: unknown): string => {
  const check = ajv.compile(schema);
  return check(JSON.parse(JSON.stringify(value))) ? '' : ajv.errorsText(check.errors);
};

describe.each(catalogue.map((r) => [r.name, r] as const))('the JSON Schema of %s', (_, r) => {
  const schema = recipeJsonSchema(r) as { inputs: object; outputs: object };

  it('is one, takes its example and refuses other names', () => {
    expect(ajv.validateSchema(schema.inputs), ajv.errorsText()).toBe(true);
    expect(ajv.validateSchema(schema.outputs), ajv.errorsText()).toBe(true);
    expect(validate(schema.inputs, r.example)).toBe('');
    expect(validate(schema.inputs, { ...r.example, nonsense: 1 })).not.toBe('');
    expect(r.jsonSchema).toEqual(schema.inputs);
  });
});

describe('what commands print', () => {
  const board = { thickness: '1 in', length: '12 ft' };

  it('fits the schema of each, of which there is one for every command with --json', async () => {
    const work = boardMeasure({ ...board, width: '11 in' });
    expect(validate(outputSchemas['work'] ?? {}, work.toJSON())).toBe('');
    const outputs = (recipeJsonSchema(boardMeasure) as { outputs: object }).outputs;
    expect(validate(outputs, work.toJSON().outputs)).toBe('');
    const swept = await sweep(boardMeasure, { ...board, width: '4 .. 12 in' }, { steps: 3 });
    expect(validate(outputSchemas['sweep'] ?? {}, swept.toJSON())).toBe('');
    const spread = await uncertain(boardMeasure, { ...board, width: '10 in +- 1 in' }, { samples: 200 });
    expect(validate(outputSchemas['uncertain'] ?? {}, spread.toJSON())).toBe('');
    const solved = solveFor(boardMeasure, 'width', { boardFeet: '10 bf' }, board, { to: '1 m' });
    expect(validate(outputSchemas['solve'] ?? {}, solved.toJSON())).toBe('');
    expect(validate(outputSchemas['solve'] ?? {}, { recipe: 1 })).not.toBe('');
  });
});
