import type { Formula, Variable } from './formula.js';

/**
 * Reckoning on numbers of any sort: plain numbers ({@link scalarOps}), or the letters of a loop over many points
 * ({@link Row}). What a recipe writes over it stands once and serves both, so that the two cannot drift apart.
 */
export interface NumberOps<N> {
  evaluate<L extends Readonly<Record<string, Variable>>>(
    f: Formula<L>,
    args: { readonly [S in keyof L]: N | number },
  ): N;
  add(a: N | number, b: N | number): N;
  subtract(a: N | number, b: N | number): N;
  multiply(a: N | number, b: N | number): N;
  divide(a: N | number, b: N | number): N;
  min(a: N | number, b: N | number): N;
  max(a: N | number, b: N | number): N;
  /** 1 where `a` is at most `b`, else 0. */
  lessOrEqual(a: N | number, b: N | number): N;
  /** `yes` where the test is not 0, else `no`; over many points both are reckoned and one is taken. */
  select<R extends { readonly [name: string]: N }>(test: N, yes: () => R, no: () => R): R;
}

/** On plain numbers, at once. */
export const scalarOps: NumberOps<number> = {
  evaluate: (f, args) => f.evaluate(args),
  add: (a, b) => a + b,
  subtract: (a, b) => a - b,
  multiply: (a, b) => a * b,
  divide: (a, b) => a / b,
  min: (a, b) => Math.min(a, b),
  max: (a, b) => Math.max(a, b),
  lessOrEqual: (a, b) => (a <= b ? 1 : 0),
  select: (test, yes, no) => (test ? yes() : no()),
};
