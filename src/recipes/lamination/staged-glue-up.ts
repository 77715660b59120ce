// A glue-up in stages, where too few of the clamps reach over the whole: narrower slabs first, then the joints between.
import type { Trace } from '../../engine/trace.js';
import { mm } from './salvage-caution.js';

/** Clamps alike: newtons of each, metres of reach; no reach is one that reaches anything. */
export interface ClampRow {
  readonly each: number;
  readonly count: number;
  readonly reach?: number | undefined;
}

/** One glue-up of several, in order. */
export interface Stage {
  readonly work: string;
  /** Width of the slab that comes out, without pads. */
  readonly width: number;
  readonly reach: number;
  /** Clamps on one slab, a pair joined head to head counting as one. */
  readonly clamps: number;
  readonly pairs: number;
  readonly pressure: number;
  readonly glueUps: number;
  readonly enough: boolean;
}

/** What a glue-up in stages takes: lengths in metres, force in newtons. */
export interface StagedNeed {
  /** Slab with both pads. */
  readonly whole: number;
  /** Both pads together. */
  readonly pads: number;
  /** Narrowest slab that still has a joint in it: two strips. */
  readonly narrowest: number;
  readonly force: number;
  readonly count: number;
  readonly jointArea: number;
}

const slack = 1e-9;
const reachOf = (row: ClampRow): number => row.reach ?? Infinity;
interface Reaching {
  readonly clamps: number;
  readonly pairs: number;
  readonly force: number;
}

/** The clamps that reach by themselves. */
export function reaching(rows: readonly ClampRow[], reach: number): Reaching {
  const long = rows.filter((row) => reachOf(row) >= reach - slack);
  return {
    clamps: long.reduce((n, row) => n + row.count, 0),
    pairs: 0,
    force: long.reduce((sum, row) => sum + row.count * row.each, 0),
  };
}

/**
 * The clamps that reach with the short ones joined two by two, head to head: a pair reaches as far as both together and
 * presses with the weaker. The longest takes the shortest that will do, so that no way of pairing gives more pairs.
 */
export function reachingInPairs(rows: readonly ClampRow[], reach: number): Reaching {
  const short = rows
    .filter((row) => reachOf(row) < reach - slack)
    .flatMap((row) => Array.from({ length: row.count }, () => ({ reach: reachOf(row), each: row.each })))
    .sort((a, b) => a.reach - b.reach);
  const alone = reaching(rows, reach);
  let [low, high, pairs, force] = [0, short.length - 1, 0, alone.force];
  while (low < high) {
    const [a, b] = [short[low], short[high]] as [(typeof short)[0], (typeof short)[0]];
    low++;
    if (a.reach + b.reach < reach - slack) continue;
    pairs++;
    force += Math.min(a.each, b.each);
    high--;
  }
  return { clamps: alone.clamps + pairs, pairs, force };
}

const does = (r: Reaching, need: StagedNeed): boolean =>
  r.force >= need.force * (1 - slack) && r.clamps >= need.count;

/**
 * The fewest equal slabs that the clamps can press one by one, then all of them joined at once with short clamps in
 * pairs; undefined where the clamps do at once, or no narrower slab helps.
 */
export function stagesOf(
  rows: readonly ClampRow[],
  need: StagedNeed,
  trace: Trace,
): readonly Stage[] | undefined {
  if (does(reaching(rows, need.whole), need)) return undefined;
  const width = need.whole - need.pads;
  const most = Math.floor(width / need.narrowest + slack);
  for (let parts = 2; parts <= most; parts++) {
    const reach = width / parts + need.pads;
    const found = reaching(rows, reach);
    if (!does(found, need)) continue;
    const atOnce = Math.min(
      Math.floor(found.clamps / need.count),
      Math.floor(found.force / need.force + slack),
    );
    const last = reachingInPairs(rows, need.whole);
    trace.note(
      `In stages: ${parts} slabs of ${mm(width / parts)} each want clamps that reach ${mm(reach)}; there are ${found.clamps}, for ${atOnce} slab${atOnce === 1 ? '' : 's'} at once. The joints between them want ${mm(need.whole)}: ${last.clamps} reach, ${last.pairs} of them two joined head to head.`,
    );
    const used = Math.max(1, Math.min(parts, atOnce));
    return [
      {
        work: `${parts} slabs, ${used} at once`,
        width: width / parts,
        reach,
        clamps: Math.floor(found.clamps / used),
        pairs: 0,
        pressure: found.force / used / need.jointArea,
        glueUps: Math.ceil(parts / used - slack),
        enough: true,
      },
      {
        work: `join ${parts} slabs`,
        width,
        reach: need.whole,
        clamps: last.clamps,
        pairs: last.pairs,
        pressure: last.force / need.jointArea,
        glueUps: 1,
        enough: does(last, need),
      },
    ];
  }
  return undefined;
}

/** The stages in a sentence. */
export function stagesInWords(stages: readonly Stage[]): string {
  const [first, last] = stages as readonly [Stage, Stage];
  const end = last.enough
    ? `then join them with ${last.clamps} clamps over ${mm(last.reach)}${last.pairs > 0 ? `, ${last.pairs} of them two joined head to head` : ''}`
    : `but the joints between them still lack clamps over ${mm(last.reach)}: ${last.clamps} reach, with ${Math.round(last.pressure / 1000)} kPa`;
  return ` In stages: glue ${first.work}, each ${mm(first.width)} wide, ${end}.`;
}
