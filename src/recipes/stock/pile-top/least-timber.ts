// The top of least timber once the width is reached.
import { carryOver } from './carry-over.js';
import { topWidth } from './layers.js';
import { layUp, stopOf, topOf, type Side } from './lay-up-run.js';
import type { Row, Stick } from './lay-up-problem.js';
import { copyKey } from './lay-up-plan.js';
import { costs, timberOf } from './timber-used.js';
import { rowsBound, share, type TopAt } from './top-job.js';

/** The fewest of the cheapest boards that still give the width, then fewer cuts into them. */
export async function leastTimber(side: Side, found: TopAt, rounds: number): Promise<TopAt> {
  const { job, lay, control } = side;
  const price = costs(found.sticks, job.boards, job.rules.jointing);
  const order = [...found.sticks.keys()].sort((a, b) => (price[a] as number) - (price[b] as number) || a - b);
  const boards = [...new Set(order.map((i) => copyKey(found.sticks[i] as Stick)))];
  const among = (count: number): Stick[] => {
    const own = new Set(boards.slice(0, count));
    return found.sticks.filter((s) => own.has(copyKey(s)));
  };
  let best = found;
  let [low, high] = [1, boards.length];
  const steps: Side = { ...side, control: share(control, 2) };
  // Enough to tell for most; it saves the rounds for the search for less timber.
  const each = Math.min(Math.ceil(rounds / 6), 2000 + 40 * found.sticks.length);
  while (low < high && !stopOf(steps.control)()) {
    const middle = (low + high) >> 1;
    const sticks = among(middle);
    const possible = rowsBound(job, lay, sticks).width >= job.wanted;
    const tried = possible ? topOf(side, sticks, await layUp(steps, sticks, each, [])) : undefined;
    if (tried && tried.width >= job.wanted) {
      high = middle;
      if (tried.timber <= best.timber) best = tried;
    } else low = middle + 1;
  }
  // A few boards more to choose from.
  const wider = among(Math.min(boards.length, high + Math.ceil(high / 8)));
  const start = carryOver(best, wider, job, lay);
  if (topWidth(job, start) < job.wanted) return best;
  const timber = (rows: readonly Row[]): number =>
    timberOf(rows, wider, job.boards, job.shop.kerf, job.leastOffcut);
  const saved = topOf(side, wider, await layUp(side, wider, rounds, start, { timber }));
  return saved.width >= job.wanted && saved.timber <= best.timber ? saved : best;
}
