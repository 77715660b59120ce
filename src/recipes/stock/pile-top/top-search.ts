// Looks for a top in a pile: at a thickness, or as thick as the pile allows, flat or on edge, with what is proved.
import { thicknessSteps, thinnest, type Lay } from './pile-sticks.js';
import { topAt } from './top-at.js';
import { boundAt, share, type SearchControl, type TopAt, type TopJob } from './top-job.js';

const better = (a: TopAt | undefined, b: TopAt, wanted: number): TopAt => {
  if (!a) return b;
  const [enoughA, enoughB] = [a.width >= wanted, b.width >= wanted];
  if (enoughA && enoughB) {
    if (a.thickness !== b.thickness) return b.thickness > a.thickness ? b : a;
    return b.timber < a.timber ? b : a;
  }
  return enoughB || (!enoughA && b.width > a.width) ? b : a;
};

/** What was found: the best top, all that were tried, and the thickness that no top of the asked width exceeds. */
export interface TopSearch {
  readonly best: TopAt;
  readonly tried: readonly TopAt[];
  /** 0 where no top of the asked width can exist at any thickness. */
  readonly thickestPossible: number;
}

/** The top asked for: at the thickness given, or the greatest thickness that gives the width. */
export async function searchTop(job: TopJob, control: SearchControl): Promise<TopSearch> {
  const tried: TopAt[] = [];
  let best: TopAt | undefined;
  let thickestPossible = 0;
  for (const [i, lay] of job.lays.entries()) {
    const mine = share(control, job.lays.length - i);
    const steps = thicknessSteps(job.boards, lay, job.shop);
    const open = steps.filter((t) => boundAt(job, t, lay) >= job.wanted);
    thickestPossible = Math.max(thickestPossible, open[0] ?? 0);
    const found =
      job.thickness === undefined
        ? await thickest(job, lay, mine, open, steps.at(-1) ?? thinnest)
        : [await topAt(job, job.thickness, lay, mine, { share: 1, saveTimber: true })];
    tried.push(...found);
    for (const top of found) best = better(best, top, job.wanted);
  }
  return { best: best as TopAt, tried, thickestPossible };
}

/**
 * The thickest top that is wide enough. Steps that the bound rules out are passed over; the thickest of the rest is tried
 * first, since the bound is seldom far off, then the others by halving: width never falls from thick to thin.
 */
async function thickest(
  job: TopJob,
  lay: Lay,
  control: SearchControl,
  open: readonly number[],
  fallback: number,
): Promise<TopAt[]> {
  const tried: TopAt[] = [];
  const tryAt = async (at: number, left: number, from?: TopAt): Promise<TopAt> => {
    const top = await topAt(job, at, lay, share(control, left), { share: 1, from, saveTimber: false });
    tried.push(top);
    return top;
  };
  if (open.length === 0) {
    await tryAt(fallback, 1);
    return tried;
  }
  let [low, high] = [0, open.length];
  let from: TopAt | undefined;
  let middle = 0;
  while (low < high && !control.aborted()) {
    const top = await tryAt(open[middle] as number, Math.ceil(Math.log2(high - low + 1)) + 2, from);
    if (top.width >= job.wanted) high = middle;
    else {
      low = middle + 1;
      from = top;
    }
    middle = low === 1 && high - low > 2 ? low : (low + high) >> 1;
  }
  const reached = tried.findLast((t) => t.width >= job.wanted);
  if (reached)
    tried.push(
      await topAt(job, reached.thickness, lay, control, { share: 1, from: reached, saveTimber: true }),
    );
  return tried;
}
