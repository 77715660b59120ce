/** A length in whole nanometres, for comparing: the last binary digit of a calculated length decides nothing. */
export const nanometres = (length: number): number => Math.round(length * 1e9);
