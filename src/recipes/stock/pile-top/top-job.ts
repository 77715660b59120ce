// What is asked of a top, what a lay-up at one thickness gives, and the width that none can exceed. Whole micrometres.
import { rippedBounds, rippedWidth, slabbedWidth, widthBounds } from './lay-up-bound.js';
import type { Pool, Row, RowRules, Stick } from './lay-up-problem.js';
import { clearStretches, sticksOf, type Lay, type PileBoard, type Workshop } from './pile-sticks.js';
import { RipPool } from './rip-pool.js';
import { StickPool } from './stick-pool.js';

export interface TopJob {
  readonly boards: readonly PileBoard[];
  readonly lays: readonly Lay[];
  readonly shop: Workshop;
  readonly rules: RowRules;
  readonly slabJointing: number;
  /** The widest slab that machine and clamps take. */
  readonly widestSlab: number;
  /** Layers glued face to face; thicknesses below are of one layer, widths of all of them together. */
  readonly layers: number;
  readonly wanted: number;
  readonly thickness: number | undefined;
  /** Whether boards laid flat may be ripped lengthwise. */
  readonly rip: boolean;
  /** Whether all pieces of a row are of one tone, and rows of a tone lie together. */
  readonly tonesApart: boolean;
  /** Rounds of one search. */
  readonly rounds: number;
  /** Least offcut worth keeping. */
  readonly leastOffcut: number;
}

export interface SearchControl {
  /** On the clock of performance.now(): a last stop, for machines too slow to do all rounds. */
  readonly until: number;
  /** Whether the time ends the search, rather than the rounds. */
  readonly timed: boolean;
  readonly aborted: () => boolean;
  readonly seed: number;
  readonly report: (message: string, best: number, bound: number) => void;
}

/** Time for one of several searches that are still to do: it matters only where a machine is too slow for all rounds. */
export const share = (control: SearchControl, left: number): SearchControl => ({
  ...control,
  until: performance.now() + Math.max(20, (control.until - performance.now()) / Math.max(1, left)),
});

/** A lay-up at one thickness with the width it gives and the width none can exceed. */
export interface TopAt {
  readonly lay: Lay;
  readonly thickness: number;
  readonly sticks: readonly Stick[];
  readonly rows: readonly Row[];
  /** Behind the last row of each layer. */
  readonly layerEnds: readonly number[];
  readonly slabs: readonly (readonly number[])[];
  readonly width: number;
  readonly bound: number;
  /** How the bound was found. */
  readonly proof: 'length and pieces' | 'integer programme';
  /** Rough volume of the boards that are cut less the offcuts that stay, in mm³. */
  readonly timber: number;
  /** Whether the search did all its rounds. */
  readonly finished: boolean;
}

/** Whether flat boards are ripped in this lay; strips on edge always are. */
export const ripsIn = (job: TopJob, lay: Lay): boolean => job.rip && lay === 'flat';

/** The boards of each tone, where tones are kept apart; else all of them. Boards of other tones are empty, so that indices stay. */
export function toneGroups(job: TopJob): (readonly PileBoard[])[] {
  if (!job.tonesApart) return [job.boards];
  const tones = [...new Set(job.boards.map((b) => b.tone))].sort();
  return tones.map((tone) => job.boards.map((b) => (b.tone === tone ? b : { ...b, count: 0 })));
}

/** The sticks of a job that can lie in a row. */
export const usableSticks = (
  job: TopJob,
  boards: readonly PileBoard[],
  thickness: number,
  lay: Lay,
): Stick[] => sticksOf(boards, thickness, lay, job.shop).filter((s) => s.across >= job.rules.leastAcross);

export const poolOf = (job: TopJob, lay: Lay, sticks: readonly Stick[]): Pool =>
  ripsIn(job, lay) ? new RipPool(sticks, job.rules) : new StickPool(sticks, job.rules);

/** The most rows that sticks can give, and the width their rows cannot exceed once jointed. Proved in lay-up-bound.ts. */
export function rowsBound(job: TopJob, lay: Lay, sticks: readonly Stick[]): { rows: number; width: number } {
  if (ripsIn(job, lay)) {
    const bounds = rippedBounds(sticks, job.rules);
    return { rows: bounds.length, width: rippedWidth(bounds, sticks, job.rules) };
  }
  const bounds = widthBounds(sticks, job.rules);
  return {
    rows: bounds.length,
    width: bounds.reduce((s, w) => s + Math.max(0, w - job.rules.jointing), 0),
  };
}

/** The width of a glued top that no lay-up at this thickness exceeds. Faults of edges are left out, so it stays a bound. */
export function boundAt(job: TopJob, thickness: number, lay: Lay): number {
  let width = 0;
  for (const boards of toneGroups(job)) {
    const clean = boards.map((b) => (b.edgeFaults.length > 0 ? { ...b, edgeFaults: [] } : b));
    width += rowsBound(job, lay, usableSticks(job, clean, thickness, lay)).width;
  }
  return slabbedWidth(width, job.widestSlab, job.slabJointing);
}

/** Boards none of whose clear stretches reaches the least piece give nothing. */
export const longestStretch = (board: PileBoard): number =>
  Math.max(0, ...clearStretches(board).map(([from, to]) => to - from));
