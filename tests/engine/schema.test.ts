import { unit } from 'mathjs';
import * as z from 'zod';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, expectTypeOf, it } from 'vitest';
import { writeInterfaces } from '../../src/launch/recipe-interfaces.mjs';
import { catalogue } from '../../src/recipes/catalogue.js';
import {
  boardMeasure,
  length,
  movementAcross,
  pressure,
  railSpan,
  temperature,
  type BoardMeasureInput,
  type MovementAcrossInput,
  type MovementAcrossOutput,
  type RailSpanInput,
} from '../../src/index.js';

describe('the zod schema of a recipe', () => {
  it.each(catalogue.map((r) => [r.name, r] as const))('%s reads its example as the recipe does', (_, r) => {
    expect(r.schema.parse(r.example)).toEqual(r.read(r.example));
    expect(r.schema.safeParse({ ...r.example, nonsense: 1 }).success).toBe(false);
  });

  it('goes into a larger schema, and refuses in the field’s own words', () => {
    const order = z.object({ customer: z.string(), top: movementAcross.schema as unknown as z.ZodType });
    const top = { width: '900 mm', timber: 'red oak', from: '8 %', to: '12 %' };
    expect(order.parse({ customer: 'hall', top })).toMatchObject({ top: { width: 0.9 } });
    const refused = order.safeParse({ customer: 'hall', top: { ...top, width: 900 } });
    expect(refused.error?.issues).toMatchObject([
      {
        path: ['top', 'width'],
        message: expect.stringMatching(/^got 900 with no unit.*write "900 mm"$/) as string,
      },
    ]);
  });
});

describe('the interfaces of a recipe', () => {
  it('are those of its fields', () => {
    expectTypeOf<MovementAcrossInput>().toExtend<Parameters<typeof movementAcross>[0]>();
    expectTypeOf<Parameters<typeof movementAcross>[0]>().toExtend<MovementAcrossInput>();
    expectTypeOf<ReturnType<typeof movementAcross>>().toExtend<MovementAcrossOutput>();
    expectTypeOf<BoardMeasureInput>().toExtend<Parameters<typeof boardMeasure>[0]>();
    expectTypeOf<RailSpanInput>().toExtend<Parameters<typeof railSpan>[0]>();
    const given: MovementAcrossInput = {
      width: '900 mm',
      timber: 'red oak',
      from: '8 %',
      to: '12 %',
      rule: 'timber',
    };
    expect(movementAcross(given).change.in('mm')).toBeGreaterThan(0);
    // @ts-expect-error -- a closed list takes its own words alone
    const wrong: MovementAcrossInput['rule'] = 'timbre';
    expect(() => movementAcross({ ...given, rule: wrong })).toThrow(/did you mean "timber"/);
  });

  it('stand in the file as the fields are now', async () => {
    const root = fileURLToPath(new URL('../..', import.meta.url));
    const file = new URL('../../src/recipes/interfaces.ts', import.meta.url);
    const before = readFileSync(file, 'utf8');
    await writeInterfaces(root);
    expect(readFileSync(file, 'utf8')).toBe(before);
    expect(before).toContain('Takes a length such as "900 mm", more than 0 mm and at most 100 m.');
  }, 120_000);
});

describe('a quantity for mathjs', () => {
  it('is number and unit', () => {
    expect(unit(...length('35 7/16 in').toUnit()).toNumber('mm')).toBeCloseTo(900.1125, 9);
    expect(unit(...pressure('100 psi').toUnit()).toNumber('kPa')).toBeCloseTo(689.4757293, 6);
    expect(unit(...temperature('70 degF').toUnit()).toNumber('degF')).toBeCloseTo(70, 9);
    expect(length('1 m').toUnit('mm')).toEqual([1000, 'mm']);
  });
});
