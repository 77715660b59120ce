/**
 * What a plus-or-minus means in every recipe: two standard deviations, so that about one piece in twenty lies outside it
 * (common practice). The worst case takes the plus-or-minus itself as the most a piece is off.
 */
export const toleranceSigmas = 2;

/** The meaning in words, for the help of a field. */
export const toleranceWords =
  'How many a plus-or-minus stands for: 2 where one piece in twenty lies outside it, 3 where one in 370 does.';
