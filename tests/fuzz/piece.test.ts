import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/input-error.js';
import { pieceFields } from '../../src/piece/description.js';
import type { Fields } from '../../src/engine/field.js';
import { pieceOf, teaCounterInput } from '../piece/samples.js';
import { hostileValue } from './bad-inputs.js';
import { SeededRandom } from './seeded-random.js';

const counter = pieceOf(teaCounterInput());

/** Paths of values in the demo that may be spoilt, with the field that reads each. */
function paths(): string[] {
  const own = (fields: Fields, at: string): string[] =>
    Object.entries(fields).flatMap(([name, f]) =>
      f.fields ? own(f.fields, `${at}${name}.`) : [`${at}${name}`],
    );
  const sections = ['top', 'use', 'pile', 'shop', 'gluing', 'costs'] as const;
  return [
    ...sections.flatMap((s) => own(pieceFields[s].fields ?? {}, `${s}.`)),
    ...['leg', 'long rail', 'cross rail', 'foot', 'brace'].flatMap((p) =>
      Object.keys(pieceFields.parts.items?.[0]?.fields ?? {}).map((n) => `parts.${p}.${n}`),
    ),
    ...Object.keys(pieceFields.joints.items?.[0]?.fields ?? {}).map((n) => `joints.long rail lap.${n}`),
    ...Object.keys(pieceFields.fixings.items?.[0]?.fields ?? {}).map((n) => `fixings.front screws.${n}`),
  ];
}

describe('a hostile value at any path', () => {
  const all = paths();

  it('is refused by its path or gives whole answers', async () => {
    const { fieldAt } = await import('../../src/piece/description-path.js');
    const random = new SeededRandom(25);
    let refused = 0;
    for (let i = 0; i < 400; i++) {
      const path = random.pick(all);
      const value = hostileValue(random, fieldAt(path), 0.5);
      try {
        const spoilt = counter.with({ [path]: value });
        for (const a of spoilt.questions) {
          expect(a.answer, `${path}: ${a.name}`).not.toMatch(/NaN|undefined|Infinity|\[object/);
          if (a.margin !== undefined) expect(Number.isFinite(a.margin), `${path}: ${a.name}`).toBe(true);
        }
      } catch (error) {
        expect(error, path).toBeInstanceOf(InputError);
        for (const issue of (error as InputError).issues)
          expect(issue.field, path).toMatch(/^(top|use|pile|shop|gluing|costs|parts|joints|fixings)/);
        refused++;
      }
    }
    expect(refused).toBeGreaterThan(50);
    // The piece itself is as it was.
    expect(counter.description.top.thickness).toBeCloseTo(0.04, 12);
  });
});
