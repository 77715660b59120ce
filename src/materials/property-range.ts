import type { DataRow } from './data-tables.js';

/** A figure: for one species the three agree (or are the range its source prints); for a group they are the 10th percentile, the median and the 90th over its species. */
export interface PropertyRange {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/** Figures with the rows they come from. */
export interface Sourced {
  readonly rows: readonly DataRow[];
  /** How many published species stand behind a group's range; 1 for a species. */
  readonly count: number;
}

/** One value, or undefined. */
export function exactly(value: number | undefined, scale = 1): PropertyRange | undefined {
  return value === undefined ? undefined : { low: value * scale, middle: value * scale, high: value * scale };
}

/** A printed range; its middle is halfway. */
export function between(
  low: number | undefined,
  high: number | undefined,
  scale = 1,
): PropertyRange | undefined {
  if (low === undefined || high === undefined) return exactly(low ?? high, scale);
  return { low: low * scale, middle: ((low + high) / 2) * scale, high: high * scale };
}

/** The share `p` of a sorted list, between neighbours in proportion. */
export function percentile(sorted: readonly number[], p: number): number {
  const at = (sorted.length - 1) * p;
  const below = Math.floor(at);
  const a = sorted[below] as number;
  const b = sorted[Math.min(below + 1, sorted.length - 1)] as number;
  return a + (b - a) * (at - below);
}

/** A group's range needs at least this many published species. */
export const fewest = 3;

/** 10th percentile, median and 90th percentile of the middles; undefined under {@link fewest} species. */
export function spreadOver(spreads: readonly (PropertyRange | undefined)[]): PropertyRange | undefined {
  const sorted = spreads.flatMap((s) => (s ? [s.middle] : [])).sort((a, b) => a - b);
  if (sorted.length < fewest) return undefined;
  return { low: percentile(sorted, 0.1), middle: percentile(sorted, 0.5), high: percentile(sorted, 0.9) };
}

/** Rows of several timbers together, and how many timbers they are. */
export const over = (all: readonly Sourced[]): { rows: Sourced['rows']; count: number } => ({
  rows: all.flatMap((a) => a.rows),
  count: all.length,
});
