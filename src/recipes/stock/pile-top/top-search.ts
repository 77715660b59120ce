// Looks for a top in a pile: at a thickness, or as thick as the pile allows, flat or on edge, with what is proved.
import type { RowRules, Stick } from './lay-up-problem.js';
import { widthBounds } from './lay-up-bound.js';
import { slabsOf } from './lay-up-plan.js';
import { searchLayUp, type LayUp } from './lay-up-search.js';
import { sticksOf, thicknessSteps, type Lay, type PileBoard, type Workshop } from './pile-sticks.js';

/** What is asked, in whole micrometres. */
export interface TopJob {
  readonly boards: readonly PileBoard[];
  readonly lays: readonly Lay[];
  readonly shop: Workshop;
  readonly rules: RowRules;
  readonly jointing: number;
  readonly slabJointing: number;
  /** Least width of a row once jointed. */
  readonly leastRow: number;
  /** The widest slab that machine and clamps take. */
  readonly widestSlab: number;
  readonly wanted: number;
  readonly thickness: number | undefined;
}

export interface SearchControl {
  /** On the clock of performance.now(). */
  readonly until: number;
  readonly aborted: () => boolean;
  readonly random: () => number;
  readonly report: (message: string, best: number, bound: number) => void;
}

/** A lay-up at one thickness with the width it gives and the width none can exceed. */
export interface TopAt {
  readonly lay: Lay;
  readonly thickness: number;
  readonly sticks: readonly Stick[];
  readonly found: LayUp;
  readonly slabs: readonly (readonly number[])[];
  readonly width: number;
  readonly bound: number;
}

const pauseEvery = 25;

/** Width of the glued top: the rows once jointed, less the jointing of each slab. */
function topWidth(job: TopJob, found: LayUp, sticks: readonly Stick[]): { width: number; slabs: number[][] } {
  const slabs = slabsOf(found.rows, sticks, job.jointing, job.widestSlab);
  return { slabs, width: Math.max(0, found.width - slabs.length * job.slabJointing) };
}

/** The width that no lay-up at this thickness exceeds; sticks wider than the widest slab cannot be used. */
export function boundAt(
  job: TopJob,
  thickness: number,
  lay: Lay,
): { sticks: Stick[]; rows: number; bound: number } {
  const sticks = sticksOf(job.boards, thickness, lay, job.shop).filter(
    (s) => s.across - job.jointing >= job.leastRow && s.across - job.jointing <= job.widestSlab,
  );
  const widths = widthBounds(sticks, job.rules);
  const sum = widths.reduce((s, w) => s + w - job.jointing, 0);
  return {
    sticks,
    rows: widths.length,
    bound: Math.max(0, sum - (widths.length > 0 ? job.slabJointing : 0)),
  };
}

/** The widest top at one thickness, looked for until `until`. */
export async function topAt(
  job: TopJob,
  thickness: number,
  lay: Lay,
  control: SearchControl,
): Promise<TopAt> {
  const { sticks, rows, bound } = boundAt(job, thickness, lay);
  let last = performance.now();
  // Enough once the asked width is there after the jointing of as many slabs as there may be rows' worth of.
  const enough = job.wanted + job.slabJointing * Math.max(1, Math.ceil((2 * job.wanted) / job.widestSlab));
  const found = await searchLayUp(sticks, job.rules, {
    stop: () => control.aborted() || performance.now() >= control.until,
    random: control.random,
    jointing: job.jointing,
    enough,
    maxRows: rows,
    pause: async () => {
      if (performance.now() - last < pauseEvery) return;
      await new Promise<void>((resume) => setImmediate(resume));
      last = performance.now();
    },
    tell: (width) =>
      control.report(
        `${lay}, ${thickness / 1000} mm thick: ${Math.round(width / 1000)} mm wide`,
        width,
        bound,
      ),
  });
  return { lay, thickness, sticks, found, bound, ...topWidth(job, found, sticks) };
}

/** Time for one of several searches that are still to do. */
const share = (control: SearchControl, left: number): SearchControl => ({
  ...control,
  until: performance.now() + Math.max(20, (control.until - performance.now()) / left),
});

const better = (a: TopAt | undefined, b: TopAt, wanted: number): TopAt => {
  if (!a) return b;
  const [enoughA, enoughB] = [a.width >= wanted, b.width >= wanted];
  if (enoughA && enoughB) return b.thickness > a.thickness ? b : a;
  return enoughB || (!enoughA && b.width > a.width) ? b : a;
};

/** The top asked for: at the thickness given, or the greatest thickness that gives the width. */
export async function searchTop(
  job: TopJob,
  control: SearchControl,
): Promise<{ best: TopAt; tried: TopAt[] }> {
  const tried: TopAt[] = [];
  let best: TopAt | undefined;
  for (const [i, lay] of job.lays.entries()) {
    const mine = share(control, job.lays.length - i);
    const found =
      job.thickness === undefined
        ? await thickest(job, lay, mine)
        : [await topAt(job, job.thickness, lay, mine)];
    tried.push(...found);
    for (const top of found) best = better(best, top, job.wanted);
  }
  return { best: best as TopAt, tried };
}

/** The thickest top that is wide enough: steps that the bound rules out are passed over, then halving over the rest. */
async function thickest(job: TopJob, lay: Lay, control: SearchControl): Promise<TopAt[]> {
  const steps = thicknessSteps(job.boards, lay, job.shop);
  const open = steps.filter((t) => boundAt(job, t, lay).bound >= job.wanted);
  const tried: TopAt[] = [];
  // Thinnest last: width never falls from thick to thin, so the first that is enough is looked for by halving.
  let [low, high] = [0, open.length - 1];
  while (low < high && !control.aborted()) {
    const middle = Math.floor((low + high) / 2);
    const left = Math.ceil(Math.log2(high - low + 1)) + 1;
    const top = await topAt(job, open[middle] as number, lay, share(control, left));
    tried.push(top);
    if (top.width >= job.wanted) high = middle;
    else low = middle + 1;
  }
  const at = open[high] ?? steps.at(-1) ?? 5000;
  if (!tried.some((t) => t.thickness === at && t.width >= job.wanted))
    tried.push(await topAt(job, at, lay, control));
  return tried;
}
