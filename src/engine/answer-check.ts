// What is said of an answer. The known answers (the right one and those that usual mistakes give) are looked up by value, in clear
// or sealed; a sentence about a mistake is said only where the answer is the one which that mistake gives.

/** How far an answer may be off: a share of the answer, or an amount in its unit. */
export type Tolerance = { readonly relative: number } | { readonly absolute: number };

/** A known answer: 0 is the place of the right one, the mistakes follow from 1. */
export interface KnownAnswer {
  readonly place: number;
  readonly says: string;
}

/** What an answer shows: the right one, one or several known mistakes, a slip beside the right one, or nothing that is known. */
export interface Judgement {
  readonly outcome: 'right' | 'mistake' | 'sign' | 'unit' | 'rounding' | 'unknown';
  readonly says: string;
  /** Place of the mistake where it is one; 0 otherwise. */
  readonly place: number;
}

const unknown =
  'This way of working is not recognised: write down your first step and compare it with the worked example.';

/** Half the width of the band round a known answer within which another counts as the same. */
export function bandOf(tolerance: Tolerance, value: number): number {
  const wide = 'absolute' in tolerance ? tolerance.absolute : Math.abs(value) * tolerance.relative;
  return Math.max(wide, 1e-9) * (1 + 1e-9);
}

/** Whether two known answers can never be taken for each other. */
export const areApart = (tolerance: Tolerance, a: number, b: number): boolean =>
  Math.abs(a - b) > bandOf(tolerance, a) + bandOf(tolerance, b);

/** What the known answers at the very value say; undefined where there are none. */
export function judgeExact(found: readonly KnownAnswer[]): Judgement | undefined {
  const right = found.find(({ place }) => place === 0);
  if (right !== undefined) return { outcome: 'right', says: right.says, place: 0 };
  const [first, ...others] = found;
  if (first === undefined) return undefined;
  if (others.length === 0) return { outcome: 'mistake', says: first.says, place: first.place };
  const says = `More than one way leads to this answer. ${found.map((x, i) => `${i + 1}. ${x.says}`).join(' ')}`;
  return { outcome: 'mistake', says, place: 0 };
}

/** A value beside the answer that was given, and what it means when the right answer stands there. */
export interface Neighbour {
  readonly value: number;
  readonly outcome: 'sign' | 'unit' | 'rounding';
  readonly says: string;
}

/** Values at which the right answer is looked for when nothing stands at `given` itself. */
export function neighboursOf(given: number, tolerance: Tolerance, signed = true): Neighbour[] {
  if (given === 0) return [];
  const step = 'absolute' in tolerance ? tolerance.absolute : Math.abs(given) * tolerance.relative;
  const near = [given - step, given + step].map((value) => ({
    value,
    outcome: 'rounding' as const,
    says: 'It is only a little off: keep a digit more on the way.',
  }));
  const units = [10, 100, 1000, 1 / 10, 1 / 100, 1 / 1000, 25.4, 1 / 25.4].map((factor) => ({
    value: given / factor,
    outcome: 'unit' as const,
    says:
      factor === 25.4 || factor === 1 / 25.4
        ? 'Your working fits, the unit does not: are inches and millimetres mixed?'
        : 'Your working fits, the unit does not: look at the unit that is asked for and at the decimal point.',
  }));
  const sign = { value: -given, outcome: 'sign' as const, says: 'The size is right, the sign is not.' };
  return [...near, ...(signed ? [sign] : []), ...units];
}

/** What the known answers at the neighbours say: only the right answer, alone at its place, tells of a slip. */
export function judgeNeighbours(
  neighbours: readonly (readonly [Neighbour, readonly KnownAnswer[]])[],
): Judgement {
  for (const [{ outcome, says }, found] of neighbours)
    if (found.length === 1 && found[0]?.place === 0) return { outcome, says, place: 0 };
  return { outcome: 'unknown', says: unknown, place: 0 };
}
