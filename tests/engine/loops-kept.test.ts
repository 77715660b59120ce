import { expect, it } from 'vitest';
import { ExpressionGraph } from '../../src/engine/expression-graph.js';

it('answers alike however many loops were made before', () => {
  // Each has a column of another name, so each is other code; the first ones are asked again at the end.
  const twice = (name: string): number => {
    const row = new ExpressionGraph();
    const out = new Float64Array(1);
    row.compile({ y: row.multiply(row.input(name), 2) })?.(0, 1, { [name]: Float64Array.of(21) }, { y: out });
    return out[0] as number;
  };
  for (let i = 0; i < 450; i++) expect(twice(`x${i}`)).toBe(42);
  for (let i = 0; i < 10; i++) expect(twice(`x${i}`)).toBe(42);
});
