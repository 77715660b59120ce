// Small piles whose bound is not reached are settled by an integer programme.
import { loadSolver } from '../cutting/solver.js';
import { exactLayUp, smallPile } from './exact-lay-up.js';
import { slabbedWidth } from './lay-up-bound.js';
import { laidOut } from './layers.js';
import type { Side } from './lay-up-run.js';
import { widthOf, type Stick } from './lay-up-problem.js';
import { fewerSlabs } from './slab-order.js';
import { timberOf } from './timber-used.js';
import { ripsIn, rowsBound, type TopAt } from './top-job.js';

/** The programme is given up after so long; the bound then stays as it was. */
const mostSeconds = 15;

/** Whether a pile is so small that an integer programme settles it in seconds. */
export function isSmall({ job, lay }: Side, sticks: readonly Stick[]): boolean {
  if (job.tonesApart || job.layers > 1 || ripsIn(job, lay)) return false;
  if (sticks.length > smallPile.sticks || job.rules.maxJoints > smallPile.joints) return false;
  return rowsBound(job, lay, sticks).rows <= smallPile.rows;
}

/** A small pile whose bound is not reached is settled by an integer programme: a wider top, or proof that there is none. */
export async function proved(side: Side, top: TopAt): Promise<TopAt> {
  const { job, lay, control, random } = side;
  const { rules } = job;
  const rows = rowsBound(job, lay, top.sticks).rows;
  const seconds = Math.min(mostSeconds, (control.until - performance.now()) / 1000);
  if (top.width >= job.wanted || top.width >= top.bound || rows === 0) return top;
  if (seconds <= 0.02 || control.aborted()) return top;
  const highs = await loadSolver();
  const below = widthOf(top.rows, rules.jointing);
  const exact = exactLayUp(highs, top.sticks, rules, rows, below + 500, seconds);
  if (exact.state === 'open') return top;
  const better = exact.state === 'better' ? fewerSlabs(exact.rows, rules, job.widestSlab, random) : top.rows;
  const laid = laidOut(job, better);
  if (laid.width < top.width) return top;
  // The most that rows as wide as these can leave once they are glued in slabs.
  const most = slabbedWidth(widthOf(better, rules.jointing) + 500, job.widestSlab, job.slabJointing);
  return {
    ...top,
    ...laid,
    bound: Math.max(laid.width, Math.min(top.bound, most)),
    proof: 'integer programme',
    timber: timberOf(better, top.sticks, job.boards, job.shop.kerf, job.leastOffcut),
  };
}
