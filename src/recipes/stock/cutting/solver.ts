import type { Highs } from 'highs';
import type { Trace } from '../../../engine/trace.js';
import type { CuttingProblem } from './problem.js';
import { search, type Outcome } from './search.js';

let solver: Promise<Highs> | undefined;

/** The integer programming solver, loaded once and only when plain plans do not settle the matter. */
export function loadSolver(): Promise<Highs> {
  return (solver ??= import('highs').then((m) => m.default()));
}

/** Stretches of the integer programme, in s: short where somebody may interrupt, which is heard only between them. */
const [heard, unheard] = [0.3, 2];

/**
 * Searches for the cheapest plan until it is proved, time is up or the user interrupts; then the best so far.
 * `seconds` is the time it may take, `says` names the section in the progress.
 */
export async function solve(
  problem: CuttingProblem,
  seconds: number,
  trace: Trace,
  label: string,
  unit: number,
): Promise<Outcome> {
  const start = performance.now();
  const shown = (cost: number): number => Number((cost * unit).toPrecision(8));
  return search(problem, {
    until: start + seconds * 1000,
    stopped: () => trace.signal?.aborted === true,
    changed: (best, bound, how) =>
      trace.progress({
        message: `${label}${how}`,
        best: shown(best),
        bound: shown(bound),
        done: Math.min(1, (performance.now() - start) / (seconds * 1000)),
      }),
    patience: trace.signal ? heard : unheard,
    loadSolver,
  });
}
