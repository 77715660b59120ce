import type { Highs } from 'highs';
import { boardsBound, lengthBound, Totals } from './bounds.js';
import { TimeLimit } from './time-limit.js';
import { solveFinalMip } from './final-mip.js';
import { dive } from './diving-heuristic.js';
import { bestFit, fullestFirst, longestFirst } from './constructive-heuristics.js';
import { shouldStop, rootOf, type SearchContext } from './search-context.js';
import { Master } from './master.js';
import type { CuttingProblem, Packing, Pattern, Stock } from './problem.js';
import { relax } from './relaxation.js';
import { Incumbent, type Changed } from './incumbent.js';

export interface SearchOptions {
  /** When to stop, on the clock of performance.now(). */
  readonly until: number;
  readonly stopped: () => boolean;
  readonly changed: Changed;
  /** Longest the integer programme may run at a stretch, in s: an interrupt is heard only between. */
  readonly patience: number;
  readonly loadSolver: () => Promise<Highs>;
}

export interface Outcome {
  readonly packing: Packing;
  readonly bound: number;
  readonly proven: boolean;
  /** What was done, in words. */
  readonly steps: readonly string[];
}

/** Pieces up to which each is tried in every open board. */
const fewPieces = 3000;

/** Searches for the cheapest plan. There must be boards without end that are long enough for every size. */
export async function search(problem: CuttingProblem, options: SearchOptions): Promise<Outcome> {
  const { sizes, demand, stock } = problem;
  const clock = new TimeLimit(options.until, options.stopped);
  const totals = new Totals(problem);
  const root = rootOf(problem);
  const first = await longestFirst(problem, root, clock);
  const incumbent = new Incumbent({ packing: first, how: 'longest first' }, options.changed);
  incumbent.raise(totals.roundUp(lengthBound(problem)), 'the lengths alone');
  const only = stock[0] as Stock;
  if (stock.length === 1)
    incumbent.raise(boardsBound(sizes, demand, only.capacity) * only.cost, 'the long parts');
  if (!incumbent.done && demand.reduce((a, b) => a + b) <= fewPieces)
    incumbent.take(bestFit(problem), 'best fit');
  const fuller = incumbent.done ? undefined : await fullestFirst(problem, root, 3000, clock);
  if (fuller) incumbent.take(fuller, 'fullest board first');
  if (!incumbent.done && !clock.late()) {
    const highs = await options.loadSolver();
    const master = new Master(highs, problem);
    try {
      await byPatterns({ problem, totals, incumbent, clock, master }, highs, options.patience);
    } finally {
      master.dispose();
    }
  }
  const { best, bound, done, steps } = incumbent;
  return { packing: best, bound: Math.min(bound, best.cost), proven: done, steps };
}

async function byPatterns(context: SearchContext, highs: Highs, patience: number): Promise<void> {
  const { problem, incumbent, master } = context;
  master.add([...incumbent.best.boards.map((b) => b.pattern), ...alone(problem)]);
  const root = rootOf(problem);
  if (!(await relax(context, root, new Set(), 'root'))) return;
  incumbent.note(`linear programme over ${master.pool.length} patterns`);
  // Straight down first; then with a few second choices; between them the integer programme has a turn.
  await dive(context, root, new Set(), 0, 0);
  for (let round = 1; !shouldStop(context); round++) {
    await solveFinalMip(
      context,
      highs,
      Math.min(patience, 0.25 * 2 ** round),
      3000 * 4 ** Math.min(round, 4),
    );
    await dive(context, root, new Set(), 0, Math.min(3, round));
  }
}

/** A board of each stock for each size alone, as many as fit: every size then has some pattern. */
export const alone = ({ sizes, demand, stock }: CuttingProblem): Pattern[] =>
  sizes.flatMap((l, i) =>
    stock.flatMap(({ capacity }, k): Pattern[] => {
      const n = Math.min(demand[i] as number, Math.floor(capacity / l));
      return n > 0 ? [{ stock: k, items: [[i, n]] }] : [];
    }),
  );
