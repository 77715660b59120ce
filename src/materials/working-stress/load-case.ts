/** How long the full load lasts in all, by the load-duration classes of EN 1995-1-1. */
export const durations = ['permanent', 'long', 'medium', 'short', 'instantaneous'] as const;
export type Duration = (typeof durations)[number];

/** Service class of EN 1995-1-1: 1 heated room, 2 under cover, 3 in the weather. */
export type ServiceClass = 1 | 2 | 3;

/** Permanent and imposed load in one unit of any kind; only their ratio counts. Neither is negative and one is above zero. */
export interface LoadMix {
  readonly permanent: number;
  readonly imposed: number;
}

/** What a working stress depends on besides the wood. */
export interface LoadCase {
  readonly mix: LoadMix;
  /** Duration of the imposed load; the permanent load is always permanent. */
  readonly duration: Duration;
  readonly serviceClass: ServiceClass;
}

/** The section a stress is wanted for, metres; depth in the direction of the load. */
export interface SectionSize {
  readonly width: number;
  readonly depth: number;
}

/** Share of the permanent load in the whole, 0 to 1. */
export const permanentShare = ({ permanent, imposed }: LoadMix): number => permanent / (permanent + imposed);

/** One combination of loads to check: shares of the whole, and the duration that decides. */
export interface Combination {
  readonly permanent: number;
  readonly imposed: number;
  readonly duration: Duration;
}

/** The combinations of a load case: everything together for the imposed load's duration, and the permanent load alone. */
export function combinations({ mix, duration }: LoadCase): readonly Combination[] {
  const permanent = permanentShare(mix);
  const imposed = 1 - permanent;
  if (imposed <= 0) return [{ permanent: 1, imposed: 0, duration: 'permanent' }];
  const together = { permanent, imposed, duration };
  return permanent > 0 ? [together, { permanent, imposed: 0, duration: 'permanent' }] : [together];
}

/**
 * The least working stress over the combinations, on the whole load: a combination that holds only a part of the load
 * may be stressed by that part alone, so its stress counts for the whole load divided by the part.
 */
export function governing(
  load: LoadCase,
  stress: (c: Combination) => number,
): { readonly stress: number; readonly combination: Combination } {
  return combinations(load)
    .map((combination) => ({
      combination,
      stress: stress(combination) / (combination.permanent + combination.imposed),
    }))
    .reduce((a, b) => (b.stress < a.stress ? b : a));
}
