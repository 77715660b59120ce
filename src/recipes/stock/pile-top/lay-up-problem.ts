// The lay-up of a top from the sticks of a pile, in whole micrometres: what a row takes, and what a plan is.

/** A clear length of one board that may be cut into pieces. All lengths in micrometres. */
export interface Stick {
  /** Index of the board, and which copy of it. */
  readonly board: number;
  readonly copy: number;
  /** Where it begins, from the left end of the board as found. */
  readonly from: number;
  readonly length: number;
  /** Its size across the top before its edges are jointed. */
  readonly across: number;
  /** The strip of the board it comes from, across the board. */
  readonly strip: readonly [from: number, to: number];
}

/** What a row must keep to. Micrometres. */
export interface RowRules {
  /** Length of every row: the top and the spare that squaring its ends takes off. */
  readonly rowLength: number;
  /** Least length of a piece between two joints. */
  readonly leastInner: number;
  /** Least length of a piece at an end of the row, with its half of the spare. */
  readonly leastEnd: number;
  readonly kerf: number;
  /** Least distance of a joint from the joints of the neighbouring rows. */
  readonly stagger: number;
  readonly maxJoints: number;
}

/** A piece of a row: which stick it comes from and how long it is. */
export interface Piece {
  readonly stick: number;
  readonly length: number;
}

/** A row, its pieces from left to right. */
export type Row = readonly Piece[];

/** The row is as wide as its narrowest piece. */
export const acrossOf = (row: Row, sticks: readonly Stick[]): number =>
  Math.min(...row.map((p) => (sticks[p.stick] as Stick).across));

/** Where the joints of a row lie, from its left end. */
export function jointsOf(row: Row): number[] {
  const joints: number[] = [];
  let at = 0;
  for (const piece of row.slice(0, -1)) joints.push((at += piece.length));
  return joints;
}

/** Whether the joints of two neighbouring rows keep their stagger. */
export const staggered = (a: readonly number[], b: readonly number[], stagger: number): boolean =>
  a.every((x) => b.every((y) => Math.abs(x - y) >= stagger));
