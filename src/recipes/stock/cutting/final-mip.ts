import type { Highs } from 'highs';
import { shouldStop, rootOf, type SearchContext } from './search-context.js';
import { chooseWhole } from './integer.js';
import { patternsWithin } from './patterns.js';
import { packingOf } from './problem.js';
import { relax } from './relaxation.js';

/**
 * The integer programme over all patterns that could be in a better plan, or over those known where that is too many.
 * `seconds` is how long it may run at a stretch, `most` how many patterns it may have.
 */
export async function solveFinalMip(
  hunt: SearchContext,
  highs: Highs,
  seconds: number,
  most: number,
): Promise<void> {
  const { problem, incumbent: standing, clock, master } = hunt;
  const below = standing.best.cost - problem.step;
  const r = await relax(hunt, rootOf(problem), new Set(), 'whole');
  if (!r) return;
  // Each board of a plan may fall short of its price by the tolerance of pricing: that much is left in the gap.
  const boards = standing.best.boards.reduce((s, b) => s + b.times, 0);
  const gap = below - r.value + 3e-7 * (boards + 10);
  const all = r.exact ? await patternsWithin(problem, r, gap, most, clock) : undefined;
  const used = all ?? master.pool;
  standing.tell(
    `integer programme over ${all ? 'all ' : ''}${used.length} patterns${all ? ' of a better plan' : ''}`,
  );
  await clock.breathe();
  if (shouldStop(hunt)) return;
  const left = (clock.until - performance.now()) / 1000;
  const got = chooseWhole(highs, problem, used, below, Math.max(0.05, Math.min(seconds, left)));
  if (got.state === 'found') standing.take(packingOf(problem, got.chosen), 'integer programming');
  if (all && got.state === 'none')
    standing.raise(standing.best.cost, 'the integer programme over every pattern of a better plan');
}
