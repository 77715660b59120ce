import { afterEach, describe, expect, it, vi } from 'vitest';
import { formula, variable } from '../../src/engine/formula.js';
import { GraphNode, ExpressionGraph, type Operand } from '../../src/engine/expression-graph.js';

const product = formula({
  symbol: 'z',
  result: variable('ratio', 'product and a square'),
  expression: 'x y + x^2',
  variables: { x: variable('ratio', 'first'), y: variable('ratio', 'second') },
  basis: 'definition',
});

/** All that a graph can compute, one expression a name. */
const all = (graph: ExpressionGraph, x: Operand, y: Operand) => ({
  formula: graph.evaluate(product, { x, y }),
  difference: graph.subtract(x, y),
  product: graph.multiply(x, y),
});
// By hand, for x and y: x y + x², x - y, x y.
const byHand = [
  { x: 3, y: -2, gives: [3, 5, -6] },
  { x: 2, y: 2, gives: [8, 0, 4] },
  { x: -1, y: 4, gives: [-3, -5, -4] },
];
const names = ['formula', 'difference', 'product'] as const;

describe('a graph', () => {
  it.each(byHand)('computes at once what is known: $x and $y', ({ x, y, gives }) => {
    expect(Object.values(all(new ExpressionGraph(), x, y))).toEqual(gives);
  });

  it.each([
    [
      'both vary',
      (graph: ExpressionGraph): [Operand, Operand] => [graph.input('x'), graph.input('y')],
      byHand,
    ],
    [
      'the first is fixed',
      (graph: ExpressionGraph): [Operand, Operand] => [3, graph.input('y')],
      byHand.slice(0, 1),
    ],
    [
      'the second is fixed',
      (graph: ExpressionGraph): [Operand, Operand] => [graph.input('x'), -2],
      byHand.slice(0, 1),
    ],
  ])('runs over columns where %s', (_, terms, rows) => {
    const graph = new ExpressionGraph();
    const outs = Object.fromEntries(names.map((n) => [n, new Float64Array(rows.length)]));
    const loop = graph.compile(all(graph, ...terms(graph)));
    loop?.(
      0,
      rows.length,
      { x: Float64Array.from(rows, (r) => r.x), y: Float64Array.from(rows, (r) => r.y) },
      outs,
    );
    rows.forEach((r, i) => expect(names.map((n) => outs[n]?.[i])).toEqual(r.gives));
  });

  it('computes an expression that occurs twice once', () => {
    const graph = new ExpressionGraph();
    const x = graph.input('x');
    expect(graph.input('x')).toBe(x);
    const square = graph.multiply(x, x);
    expect(graph.multiply(x, x)).toBe(square);
    expect(square).toBeInstanceOf(GraphNode);
  });

  it('asks for no column that the outputs do not need', () => {
    const row = new ExpressionGraph();
    const [x, y] = [row.input('x'), row.input('y')];
    row.multiply(x, y);
    const twice = new Float64Array(2);
    row.compile({ twice: row.multiply(x, 2), seven: 7 })?.(
      0,
      2,
      { x: Float64Array.of(4, 5) },
      { twice, seven: new Float64Array(2) },
    );
    expect([...twice]).toEqual([8, 10]);
  });

  it('calculates some points of all, from columns that hold these alone', () => {
    const row = new ExpressionGraph();
    const out = new Float64Array(5).fill(-1);
    row.compile({ out: row.multiply(row.input('x'), 2) })?.(2, 4, { x: Float64Array.of(10, 11) }, { out });
    expect([...out]).toEqual([-1, -1, 20, 22, -1]);
  });

  it('goes in even steps from one end to the other, which is met', () => {
    const row = new ExpressionGraph();
    const steps = row.linspace(0.1, 0.5, 6);
    expect(row.linspace(0.1, 0.5, 6)).toBe(steps);
    const out = new Float64Array(7);
    const loop = row.compile({ out: steps });
    loop?.(0, 3, {}, { out });
    loop?.(3, 7, {}, { out });
    [0.1, 1 / 6, 7 / 30, 0.3, 11 / 30, 13 / 30].forEach((x, i) => expect(out[i]).toBeCloseTo(x, 15));
    // The sum is a bit more.
    expect(out[6]).toBe(0.5);
    expect(0.1 + ((0.5 - 0.1) * 6) / 6).not.toBe(0.5);
  });

  it('keeps the peak of an answer from part to part, whatever its sign; what is no number counts for nothing', () => {
    const row = new ExpressionGraph();
    const x = row.input('x');
    const loop = row.compile({ x, twice: row.multiply(x, 2), five: 5 }, ['twice', 'five']);
    const peaks = new Float64Array(2);
    const outs = { x: new Float64Array(4), twice: new Float64Array(4), five: new Float64Array(4) };
    loop?.(0, 2, { x: Float64Array.of(1, -4) }, outs, peaks);
    expect([...peaks]).toEqual([8, 5]);
    loop?.(2, 4, { x: Float64Array.of(NaN, 3) }, outs, peaks);
    expect([...peaks]).toEqual([8, 5]);
    loop?.(2, 4, { x: Float64Array.of(9, NaN) }, outs, peaks);
    expect([...peaks]).toEqual([18, 5]);
  });

  it('a long chain does not run out of stack', () => {
    const row = new ExpressionGraph();
    const x = row.input('x');
    let sum: Operand = 0;
    // One after the other, each of its own: -(1 + 2 + ... + 20 000) times x.
    for (let k = 1; k <= 20_000; k++) sum = row.subtract(sum, row.multiply(x, k));
    const total = new Float64Array(1);
    row.compile({ total: sum })?.(0, 1, { x: Float64Array.of(2) }, { total });
    expect(total[0]).toBe(-20_000 * 20_001);
  });
});

describe('where code may not be made at run time', () => {
  afterEach(() => void vi.unstubAllGlobals());

  const refusing = (error: Error) =>
    vi.stubGlobal('Function', function forbidden(): never {
      throw error;
    });

  it('there is no loop, so that points are calculated one by one', () => {
    const row = new ExpressionGraph();
    const sum = row.subtract(row.input('x'), 1);
    refusing(new EvalError('no code from text'));
    expect(row.compile({ sum })).toBeUndefined();
  });

  it('any other fault is not hidden', () => {
    const row = new ExpressionGraph();
    const sum = row.subtract(row.input('x'), 1);
    refusing(new SyntaxError('odd'));
    expect(() => row.compile({ sum })).toThrow('odd');
  });
});
