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
  context: SearchContext,
  highs: Highs,
  seconds: number,
  most: number,
): Promise<void> {
  const { problem, incumbent, clock, master } = context;
  const below = incumbent.best.cost - problem.step;
  const r = await relax(context, rootOf(problem), new Set(), 'whole');
  if (!r) return;
  // Each board of a plan may fall short of its price by the tolerance of pricing: that much is left in the gap.
  const boards = incumbent.best.boards.reduce((s, b) => s + b.times, 0);
  const gap = below - r.value + 3e-7 * (boards + 10);
  const all = r.exact ? await patternsWithin(problem, r, gap, most, clock) : undefined;
  const used = all ?? master.pool;
  incumbent.report(
    `integer programme over ${all ? 'all ' : ''}${used.length} patterns${all ? ' of a better plan' : ''}`,
  );
  await clock.yieldToEventLoop();
  if (shouldStop(context)) return;
  const left = (clock.until - performance.now()) / 1000;
  const got = chooseWhole(highs, problem, used, below, Math.max(0.05, Math.min(seconds, left)));
  if (got.state === 'found') incumbent.take(packingOf(problem, got.chosen), 'integer programming');
  if (all && got.state === 'none')
    incumbent.raise(incumbent.best.cost, 'the integer programme over every pattern of a better plan');
}
