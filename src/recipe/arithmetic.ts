import type { Formula, Letter } from './formula.js';

/**
 * Reckoning on numbers of any sort: plain numbers ({@link plainly}), or the letters of a loop over many points
 * ({@link Row}). What a recipe writes over it stands once and serves both, so that the two cannot drift apart.
 */
export interface Arithmetic<N> {
  apply<L extends Readonly<Record<string, Letter>>>(
    f: Formula<L>,
    args: { readonly [S in keyof L]: N | number },
  ): N;
  plus(a: N | number, b: N | number): N;
  minus(a: N | number, b: N | number): N;
  times(a: N | number, b: N | number): N;
  over(a: N | number, b: N | number): N;
  least(a: N | number, b: N | number): N;
  most(a: N | number, b: N | number): N;
  /** 1 where `a` is at most `b`, else 0. */
  atMost(a: N | number, b: N | number): N;
  /** `yes` where the test is not 0, else `no`; over many points both are reckoned and one is taken. */
  where<R extends { readonly [name: string]: N }>(test: N, yes: () => R, no: () => R): R;
}

/** On plain numbers, at once. */
export const plainly: Arithmetic<number> = {
  apply: (f, args) => f.of(args),
  plus: (a, b) => a + b,
  minus: (a, b) => a - b,
  times: (a, b) => a * b,
  over: (a, b) => a / b,
  least: (a, b) => Math.min(a, b),
  most: (a, b) => Math.max(a, b),
  atMost: (a, b) => (a <= b ? 1 : 0),
  where: (test, yes, no) => (test ? yes() : no()),
};
