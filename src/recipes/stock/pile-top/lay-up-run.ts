// One search for a lay-up at one thickness, and the top that it makes.
import { nextTurn } from '../../../engine/next-turn.js';
import { searchLayUp, type LayUp } from './lay-up-search.js';
import { widthOf, type Row, type Stick } from './lay-up-problem.js';
import { laidOut, topWidth } from './layers.js';
import type { Lay } from './pile-sticks.js';
import { fewerSlabs } from './slab-order.js';
import { timberOf } from './timber-used.js';
import { poolOf, rowsBound, type SearchControl, type TopAt, type TopJob } from './top-job.js';

const pauseEvery = 25;

/** Lets other work run now and then. */
export function breather(): () => Promise<void> {
  let last = performance.now();
  return async () => {
    if (performance.now() - last < pauseEvery) return;
    await nextTurn();
    last = performance.now();
  };
}

/** One search at one thickness. */
export interface Side {
  readonly job: TopJob;
  readonly lay: Lay;
  readonly thickness: number;
  readonly control: SearchControl;
  readonly bound: number;
  readonly random: () => number;
}

export const stopOf = (control: SearchControl) => (): boolean =>
  control.aborted() || performance.now() >= control.until;

/** The share of the time that is gone, but only where it is likely to run out: else rounds alone count, so that plans repeat. */
function elapsedOf({ until, timed }: SearchControl): () => number {
  const from = performance.now();
  return () => (timed ? Math.min(1, (performance.now() - from) / Math.max(1, until - from)) : 0);
}

/** A lay-up of some sticks; `others` are rows that stand beside it and count towards the width. */
export function layUp(
  side: Side,
  sticks: readonly Stick[],
  rounds: number,
  start: readonly Row[],
  more: { readonly others?: readonly Row[]; readonly timber?: (rows: readonly Row[]) => number } = {},
): Promise<LayUp> {
  const { job, lay, control, thickness, bound } = side;
  const others = more.others ?? [];
  const beside = widthOf(others, job.rules.jointing);
  return searchLayUp(poolOf(job, lay, sticks), {
    stop: stopOf(control),
    random: side.random,
    enough: (rows) => {
      const width = topWidth(job, [...others, ...rows]);
      return width >= job.wanted || width >= bound;
    },
    maxRows: rowsBound(job, lay, sticks).rows,
    rounds,
    start,
    ...(more.timber ? { timber: more.timber } : {}),
    elapsed: elapsedOf(control),
    pause: breather(),
    tell: (width) =>
      control.report(
        `${lay}, ${thickness / 1000} mm thick: ${Math.round((width + beside) / 1000)} mm wide`,
        width + beside,
        bound,
      ),
  });
}

/** The top that a lay-up makes, its rows in an order that takes few slabs. */
export function topOf(side: Side, sticks: readonly Stick[], found: LayUp): TopAt {
  const { job, lay, thickness } = side;
  const order =
    job.tonesApart || job.layers > 1
      ? found.rows
      : fewerSlabs(found.rows, job.rules, job.widestSlab, side.random);
  const laid = laidOut(job, order);
  return {
    lay,
    thickness,
    sticks,
    ...laid,
    bound: Math.max(side.bound, laid.width),
    proof: 'length and pieces',
    timber: timberOf(laid.rows, sticks, job.boards, job.shop.kerf, job.leastOffcut),
    finished: found.finished,
  };
}
