/** The middle of the numbers, of an even count the upper one; undefined of none. */
export const median = (numbers) => [...numbers].sort((a, b) => a - b)[numbers.length >> 1];
