import { expect, it } from 'vitest';
import { kinds, type Kind } from '../../src/quantities/kind.js';
import { toQuantity } from '../../src/quantities/parse.js';
import { keepable } from '../../src/recipe/keepable.js';
import { findSpecies } from '../../src/timber/species.js';

const written = Object.entries(kinds).map(([kind, facts]) => [kind as Kind, String(facts.example)] as const);

it.each([
  ...written,
  ['money', '€12.50'],
  ['pricePerLength', '£4.20/m'],
  ['length', '35 7/16 in'],
  ['temperature', '70 degF'],
  ['mass', '0.1 lb'],
] as const)('a %s given as %s is read again as the same number', (kind, text) => {
  const q = toQuantity(text, kind);
  const again = toQuantity(JSON.parse(JSON.stringify(keepable(q))) as string, kind);
  expect(again.currency).toBe(q.currency);
  expect(Math.abs(again.value - q.value)).toBeLessThanOrEqual(Math.abs(q.value) * 1e-14);
});

it('keeps lists, parts, plain values and frames; a timber by its id', () => {
  expect(keepable({ parts: [{ length: toQuantity('1 m', 'length'), n: 2 }], note: 'x', flag: true })).toEqual(
    { parts: [{ length: '1000 mm', n: 2 }], note: 'x', flag: true },
  );
  expect(keepable({ columns: ['a'], values: [[1], [toQuantity('5 mm', 'length')]], other: 1 })).toEqual({
    columns: ['a'],
    values: [[1], ['5 mm']],
  });
  expect(keepable(findSpecies('white oak'))).toBe(findSpecies('white oak').id);
});
