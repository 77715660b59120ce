// The widest top at one thickness, or the one of least timber where the width is reached.
import { mulberry32 } from '../../../engine/random.js';
import { carryOver } from './carry-over.js';
import { isSmall, proved } from './exact-step.js';
import { layUp, topOf, type Side } from './lay-up-run.js';
import type { LayUp } from './lay-up-search.js';
import type { Piece, Row, Stick, Strip } from './lay-up-problem.js';
import { leastTimber } from './least-timber.js';
import type { Lay, PileBoard } from './pile-sticks.js';
import { joinTones } from './tone-groups.js';
import {
  boundAt,
  ripsIn,
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
  const small = isSmall(side, sticks);
  // The integer programme settles a small pile; the search only gives it something to beat.
  const rounds = Math.min(small ? 2000 : Infinity, Math.ceil(job.rounds * plan.share));
  const from = plan.from ?? (ripsIn(job, lay) ? await unripped(side, sticks, rounds) : undefined);
  const start = from ? carryOver(from, sticks, job, lay) : [];
  const widest = job.tonesApart
    ? await layTones(side, sticks, rounds, start)
    : await layUp(side, sticks, rounds, start);
  const top = topOf(side, sticks, widest);
  const found = small && plan.share === 1 ? await proved(side, top) : top;
  if (!plan.saveTimber || job.tonesApart || found.width < job.wanted) return found;
  return leastTimber(side, found, rounds);
}

/** A lay-up without ripping, which is found faster, to begin with. */
async function unripped(side: Side, sticks: readonly Stick[], rounds: number): Promise<TopAt> {
  const plain: Side = { ...side, job: { ...side.job, rip: false }, control: share(side.control, 4) };
  const few = Math.min(rounds, 3000 + 100 * sticks.length);
  const found = plain.job.tonesApart
    ? await layTones(plain, sticks, few, [])
    : await layUp(plain, sticks, few, []);
  return topOf(plain, sticks, found);
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
