import type { Totals } from './bounds.js';
import type { TimeLimit } from './time-limit.js';
import type { Master } from './master.js';
import type { CuttingProblem, Pattern } from './problem.js';
import type { Incumbent } from './incumbent.js';

/** What the parts of a search share: the problem, how it stands, the time left and the patterns known. */
export interface SearchContext {
  readonly problem: CuttingProblem;
  readonly totals: Totals;
  readonly incumbent: Incumbent;
  readonly clock: TimeLimit;
  readonly master: Master;
}

/** Some boards settled, and what is then still wanted and still there. */
export interface Node {
  readonly demand: Int32Array;
  readonly available: readonly number[];
  readonly spent: number;
  readonly fixed: readonly { readonly pattern: Pattern; readonly times: number }[];
}

/** Nothing settled yet. */
export const rootOf = (problem: CuttingProblem): Node => ({
  demand: Int32Array.from(problem.demand),
  available: problem.stock.map((k) => k.count),
  spent: 0,
  fixed: [],
});

/** Whether there is no use in going on: the plan is proved, or time is up. */
export const shouldStop = ({ incumbent, clock }: SearchContext): boolean => incumbent.done || clock.late();
