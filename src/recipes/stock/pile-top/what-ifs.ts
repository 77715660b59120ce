// What small changes to the pile or the rules would free, and the curves over thickness and stagger: each is a search of its
// own that begins with the lay-up found, so that it never does worse.
import { thicknessSteps } from './pile-sticks.js';
import { copyKey } from './lay-up-plan.js';
import { topAt } from './top-at.js';
import {
  longestStretch,
  share,
  usableSticks,
  type SearchControl,
  type TopAt,
  type TopJob,
} from './top-job.js';

/** A changed job and what the change is, in words. */
export interface Change {
  readonly words: string;
  readonly job: TopJob;
  readonly thickness: number;
}

export interface WhatIf {
  readonly change: string;
  readonly top: TopAt;
  readonly frees: string;
}

/** Share of the rounds that one question gets. */
const part = 0.15;
const mm = (um: number): string => `${Number((um / 1000).toFixed(1))} mm`;

/** One more of the kinds of board that give most: those that are used, and the largest of the others. */
function moreBoards(job: TopJob, best: TopAt): Change[] {
  const gives = new Map<number, number>();
  for (const s of usableSticks(job, job.boards, best.thickness, best.lay))
    if (s.copy === 0) gives.set(s.board, (gives.get(s.board) ?? 0) + s.length * s.across);
  return [...gives]
    .sort((a, b) => b[1] - a[1] || a[0] - b[0])
    .slice(0, 3)
    .map(([board]) => ({
      words: `one more board like ${job.boards[board]?.name ?? ''}`,
      job: { ...job, boards: job.boards.map((b, i) => (i === board ? { ...b, count: b.count + 1 } : b)) },
      thickness: best.thickness,
    }));
}

/** The next thinner tops at which more of the pile counts. */
function thinner(job: TopJob, best: TopAt): Change[] {
  return thicknessSteps(job.boards, best.lay, job.shop)
    .filter((t) => t < best.thickness && t >= best.thickness - 10_000)
    .slice(0, 2)
    .map((t) => ({
      words: `${mm(t * job.layers)} thick instead of ${mm(best.thickness * job.layers)}`,
      job,
      thickness: t,
    }));
}

function looserRules(job: TopJob, best: TopAt): Change[] {
  const { rules } = job;
  const at = best.thickness;
  const changes: Change[] = [];
  if (rules.stagger > 0) {
    const less = Math.round((rules.stagger * 2) / 3 / 10_000) * 10_000;
    changes.push({
      words: `stagger ${mm(less)} instead of ${mm(rules.stagger)}`,
      job: { ...job, rules: { ...rules, stagger: less } },
      thickness: at,
    });
  }
  changes.push({
    words: `${rules.maxJoints + 1} joint${rules.maxJoints === 0 ? '' : 's'} in a row instead of ${rules.maxJoints}`,
    job: { ...job, rules: { ...rules, maxJoints: rules.maxJoints + 1 } },
    thickness: at,
  });
  if (rules.leastInner > 150_000) {
    const less = Math.round((rules.leastInner * 4) / 5 / 10_000) * 10_000;
    const shorter = rules.leastInner - less;
    changes.push({
      words: `pieces from ${mm(less)} instead of ${mm(rules.leastInner)}`,
      job: {
        ...job,
        shop: { ...job.shop, leastInner: less },
        rules: { ...rules, leastInner: less, leastEnd: rules.leastEnd - shorter },
      },
      thickness: at,
    });
  }
  if (best.lay === 'flat' && !job.rip)
    changes.push({ words: 'boards ripped into several strips', job: { ...job, rip: true }, thickness: at });
  return changes;
}

const boardsCut = (top: TopAt): number =>
  new Set(
    top.rows.flatMap((r) => r.pieces.map((p) => copyKey(top.sticks[p.stick] ?? { board: -1, copy: 0 }))),
  ).size;

/** What a change frees: the width that was missing, else timber and boards. */
function freed(job: TopJob, before: TopAt, after: TopAt): string {
  if (before.width < job.wanted) {
    const more = after.width - before.width;
    if (after.width >= job.wanted) return `the top: ${mm(job.wanted / job.layers)} wide`;
    return more > 0 ? `${mm(more / job.layers)} of width` : 'no width found';
  }
  const litres = (before.timber - after.timber) / 1e6;
  const boards = boardsCut(before) - boardsCut(after);
  if (litres < 0.05) return 'no timber found';
  return `${litres.toFixed(1)} litres of timber${boards > 0 ? `, ${boards} board${boards === 1 ? '' : 's'} left whole` : ''}`;
}

/** Each change tried, from the lay-up found. */
export async function tryChanges(job: TopJob, best: TopAt, control: SearchControl): Promise<WhatIf[]> {
  if (best.rows.length === 0 && job.boards.every((b) => longestStretch(b) === 0)) return [];
  const changes = [...moreBoards(job, best), ...thinner(job, best), ...looserRules(job, best)];
  const out: WhatIf[] = [];
  for (const [i, { words, job: changed, thickness }] of changes.entries()) {
    if (control.aborted()) break;
    const found = await topAt(changed, thickness, best.lay, share(control, changes.length - i), {
      share: part,
      from: best,
      saveTimber: best.width >= job.wanted,
    });
    out.push({ change: words, top: found, frees: freed(job, best, found) });
  }
  return out;
}

/** Most thicknesses of the curve. */
const mostPoints = 8;

/** Widths from thick to thin, each from the lay-up before, so that the curve never rises with thickness. */
export async function thicknessCurve(
  job: TopJob,
  best: TopAt,
  tried: readonly TopAt[],
  control: SearchControl,
): Promise<TopAt[]> {
  const steps = thicknessSteps(job.boards, best.lay, job.shop);
  const every = Math.max(1, Math.ceil(steps.length / mostPoints));
  const known = tried.filter((t) => t.lay === best.lay);
  const points = [
    ...new Set([...steps.filter((_, i) => i % every === 0), ...known.map((t) => t.thickness)]),
  ].sort((a, b) => b - a);
  // As wide as the pile allows, not only as wide as is asked.
  const widest: TopJob = { ...job, wanted: Infinity };
  const curve: TopAt[] = [];
  let from: TopAt | undefined;
  for (const [i, t] of points.entries()) {
    if (control.aborted()) break;
    for (const k of known) if (k.thickness >= t && (!from || k.width > from.width)) from = k;
    const top = await topAt(widest, t, best.lay, share(control, points.length - i), {
      share: part,
      from,
      saveTimber: false,
    });
    if (!from || top.width >= from.width) from = top;
    curve.push({ ...top, width: Math.max(top.width, from.width) });
  }
  return curve;
}

/** Lay-ups from the widest stagger to none, each from the one before. */
export async function staggerCurve(
  job: TopJob,
  best: TopAt,
  control: SearchControl,
): Promise<{ stagger: number; top: TopAt }[]> {
  const given = job.rules.stagger;
  const most = job.rules.rowLength / 2;
  const staggers = [...new Set([2 * given, 1.5 * given, given, given / 2, 0].map((s) => Math.round(s)))]
    .filter((s) => s <= most)
    .sort((a, b) => b - a);
  const out: { stagger: number; top: TopAt }[] = [];
  let from: TopAt | undefined;
  for (const [i, stagger] of staggers.entries()) {
    if (control.aborted()) break;
    if (stagger <= given && (!from || best.width > from.width)) from = best;
    const changed: TopJob = { ...job, wanted: Infinity, rules: { ...job.rules, stagger } };
    const top = await topAt(changed, best.thickness, best.lay, share(control, staggers.length - i), {
      share: part,
      from,
      saveTimber: false,
    });
    if (!from || top.width >= from.width) from = top;
    out.push({ stagger, top: from });
  }
  return out;
}
