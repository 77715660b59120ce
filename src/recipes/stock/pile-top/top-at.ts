// The widest top at one thickness, or the one of least timber where the width is reached.
import { nextTurn } from '../../../engine/next-turn.js';
import { mulberry32 } from '../../../engine/random.js';
import { carryOver } from './carry-over.js';
import { searchLayUp, type LayUp } from './lay-up-search.js';
import { widthOf, type Piece, type Row, type Stick, type Strip } from './lay-up-problem.js';
import { copyKey, slabsOf } from './lay-up-plan.js';
import type { Lay, PileBoard } from './pile-sticks.js';
import { fewerSlabs } from './slab-order.js';
import { costs, timberOf } from './timber-used.js';
import { joinTones } from './tone-groups.js';
import {
  boundAt,
  poolOf,
  rowsBound,
  share,
  toneGroups,
  usableSticks,
  type SearchControl,
  type TopAt,
  type TopJob,
} from './top-job.js';

/** How one search is to run: a share of the rounds, a lay-up to begin with, and whether timber is saved at the end. */
export interface SearchPlan {
  readonly share: number;
  readonly from?: TopAt | undefined;
  readonly saveTimber: boolean;
}

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

/** Width of the glued top: the rows once jointed, less the jointing of each slab. */
export function topWidth(job: TopJob, rows: readonly Row[]): number {
  const slabs = slabsOf(rows, job.rules.jointing, job.widestSlab);
  return Math.max(0, widthOf(rows, job.rules.jointing) - slabs.length * job.slabJointing);
}

interface Side {
  readonly job: TopJob;
  readonly lay: Lay;
  readonly thickness: number;
  readonly control: SearchControl;
  readonly bound: number;
  readonly random: () => number;
}

const stopOf = (control: SearchControl) => (): boolean =>
  control.aborted() || performance.now() >= control.until;

/** A lay-up of some sticks; `others` are rows that stand beside it and count towards the width. */
function layUp(
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
    pause: breather(),
    tell: (width) =>
      control.report(
        `${lay}, ${thickness / 1000} mm thick: ${Math.round((width + beside) / 1000)} mm wide`,
        width + beside,
        bound,
      ),
  });
}

/** The widest top at one thickness; where the width is reached and asked for, the one of least timber found. */
export async function topAt(
  job: TopJob,
  thickness: number,
  lay: Lay,
  control: SearchControl,
  plan: SearchPlan,
): Promise<TopAt> {
  const bound = boundAt(job, thickness, lay);
  const side: Side = { job, lay, thickness, control, bound, random: mulberry32(control.seed) };
  const sticks = usableSticks(job, job.boards, thickness, lay);
  const rounds = Math.ceil(job.rounds * plan.share);
  const start = plan.from ? carryOver(plan.from, sticks, job, lay) : [];
  const widest = job.tonesApart
    ? await layTones(side, sticks, rounds, start)
    : await layUp(side, sticks, rounds, start);
  const found = topOf(side, sticks, widest);
  if (!plan.saveTimber || job.tonesApart || found.width < job.wanted) return found;
  return leastTimber(side, found, rounds);
}

function topOf(side: Side, sticks: readonly Stick[], found: LayUp): TopAt {
  const { job, lay, thickness } = side;
  const rows = job.tonesApart ? found.rows : fewerSlabs(found.rows, job.rules, job.widestSlab, side.random);
  const width = topWidth(job, rows);
  return {
    lay,
    thickness,
    sticks,
    rows,
    slabs: slabsOf(rows, job.rules.jointing, job.widestSlab),
    width,
    bound: Math.max(side.bound, width),
    proof: 'length and pieces',
    timber: timberOf(rows, sticks, job.boards, job.shop.kerf, job.leastOffcut),
    finished: found.finished,
  };
}

/** Each tone laid up by itself, then side by side. */
async function layTones(
  side: Side,
  sticks: readonly Stick[],
  rounds: number,
  start: readonly Row[],
): Promise<LayUp> {
  const groups = toneGroups(side.job);
  const done: (readonly Row[])[] = [];
  let finished = true;
  for (const boards of groups) {
    const indices = [...sticks.keys()].filter((i) => ownsBoard(boards, sticks[i] as Stick));
    const own = indices.map((i) => sticks[i] as Stick);
    const toOwn = new Map(indices.map((i, k) => [i, k]));
    const mine = start.filter((row) => row.pieces.every((p) => toOwn.has(p.stick)));
    const found = await layUp(side, own, Math.ceil(rounds / groups.length), reindexed(mine, toOwn, true), {
      others: done.flat(),
    });
    finished &&= found.finished;
    const back = new Map(indices.map((i, k) => [k, i]));
    done.push(reindexed(found.rows, back, false));
  }
  return { rows: joinTones(done, side.job.rules), finished };
}

const ownsBoard = (boards: readonly PileBoard[], stick: Stick): boolean =>
  (boards[stick.board] as PileBoard).count > 0;

/** Rows whose pieces name sticks by other indices. Strips come along, empty where the rows are still to be taken from a pool. */
function reindexed(rows: readonly Row[], to: ReadonlyMap<number, number>, empty: boolean): Row[] {
  const strips = new Map<Strip, Strip>();
  const moved = (p: Piece): Piece => {
    const stick = to.get(p.stick) as number;
    if (!p.strip) return { ...p, stick };
    const strip = strips.get(p.strip) ?? { stick, pieces: [] };
    strips.set(p.strip, strip);
    const piece = { ...p, stick, strip };
    if (!empty) strip.pieces.push(piece);
    return piece;
  };
  return rows.map((row) => ({ ...row, pieces: row.pieces.map(moved) }));
}

/** The fewest of the cheapest boards that still give the width, then fewer cuts into them. */
async function leastTimber(side: Side, found: TopAt, rounds: number): Promise<TopAt> {
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
