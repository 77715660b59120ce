import { expect, it } from 'vitest';
import { kinds, type Kind } from '../../src/units/kind.js';
import { toQuantity } from '../../src/units/parse-quantity.js';
import { toSerializable } from '../../src/engine/to-serializable.js';
import { findSpecies } from '../../src/materials/species.js';

const written = Object.entries(kinds).map(([kind, facts]) => [kind as Kind, facts.example] as const);

it.each([
  ...written,
  ['money', '€12.50'],
  ['pricePerLength', '£4.20/m'],
  ['length', '35 7/16 in'],
  ['temperature', '70 degF'],
  ['mass', '0.1 lb'],
] as const)('a %s given as %s is read again as the same number', (kind, text) => {
  const q = toQuantity(text, kind);
  const again = toQuantity(JSON.parse(JSON.stringify(toSerializable(q))) as string, kind);
  expect(again.currency).toBe(q.currency);
  expect(Math.abs(again.value - q.value)).toBeLessThanOrEqual(Math.abs(q.value) * 1e-14);
});

it('keeps lists, parts, plain values and frames; a timber by the name that finds it again', () => {
  expect(
    toSerializable({ parts: [{ length: toQuantity('1 m', 'length'), n: 2 }], note: 'x', flag: true }),
  ).toEqual({ parts: [{ length: '1000 mm', n: 2 }], note: 'x', flag: true });
  expect(toSerializable({ columns: ['a'], values: [[1], [toQuantity('5 mm', 'length')]], other: 1 })).toEqual(
    {
      columns: ['a'],
      values: [[1], ['5 mm']],
    },
  );
  // A trade name of several species is kept, since its strength is the lowest of them.
  expect(toSerializable(findSpecies('white oak'))).toBe('white oak');
});
