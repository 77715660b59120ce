// How yards count boards: the surface measure of hardwood, the board feet of softwood. Inches and feet in, whole feet out.

/** A measured board: inches, inches, feet. */
export interface TallyBoard {
  readonly thickness: number;
  readonly width: number;
  readonly length: number;
}

/** Keeps the last binary digit of a converted length from deciding. */
const slack = 1e-6;

/** Whole feet of length: a fraction is dropped. Source: American Hardwood Export Council, measurement. */
export const tallyLength = (feet: number): number => Math.floor(feet + slack);

/** Where an exact half goes next; the tally passes it on from board to board, up first. */
export interface HalfTurn {
  up: boolean;
}

/** Rounds to the nearest whole number; an exact half goes up and down alternately. Source: Wengert, rounding board feet. */
export function roundAlternately(value: number, turn: HalfTurn): number {
  const down = Math.floor(value + slack);
  const part = value - down;
  if (Math.abs(part - 0.5) > slack) return part > 0.5 ? down + 1 : down;
  const rounded = turn.up ? down + 1 : down;
  turn.up = !turn.up;
  return rounded;
}

/** Surface measure of a hardwood board, square feet: width times whole feet of length, over 12, to the nearest foot. */
export const surfaceMeasure = (board: Pick<TallyBoard, 'width' | 'length'>, turn: HalfTurn): number =>
  roundAlternately((board.width * tallyLength(board.length)) / 12, turn);

/** Board feet of a hardwood board: surface measure times its thickness, under 1 in counted as 1 in; as a number. */
export const hardwoodFeet = (surface: number, thickness: number): number =>
  surface * Math.max(1, quarters(thickness));

/** Rough hardwood is named by quarters of an inch: 4/4, 5/4, 6/4; a fraction of a quarter is dropped. */
export const quarters = (thickness: number): number => Math.floor(thickness * 4 + slack) / 4;

/** Board feet of a softwood board by its nominal size, under 1 in thick counted as 1 in; nothing is rounded. */
export const softwoodFeet = (board: TallyBoard): number =>
  (Math.max(1, board.thickness) * board.width * board.length) / 12;
