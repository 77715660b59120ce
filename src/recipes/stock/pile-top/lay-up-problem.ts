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
  /** Taken off each row in jointing, both edges together. */
  readonly jointing: number;
  /** Least and greatest size of a row across the top before its edges are jointed. */
  readonly leastAcross: number;
  readonly mostAcross: number;
}

/** A strip ripped off a stick, with the pieces cut from it; it is as wide as the widest of their rows. */
export interface Strip {
  readonly stick: number;
  readonly pieces: Piece[];
}

/** A piece of a row: which stick it comes from, how long it is, and its strip where sticks are ripped. */
export interface Piece {
  readonly stick: number;
  readonly length: number;
  /** The row's size across the top. */
  readonly across: number;
  readonly strip?: Strip;
}

/** A row, its pieces from left to right. */
export interface Row {
  readonly pieces: readonly Piece[];
  /** Its size across the top before its edges are jointed: no more than any of its pieces has. */
  readonly across: number;
  /** Where its joints lie, from its left end. */
  readonly joints: readonly number[];
}

/** Where the joints between pieces lie, from the left end of the first. */
export function jointsOf(pieces: readonly Piece[]): number[] {
  const joints: number[] = [];
  let at = 0;
  for (let i = 0; i + 1 < pieces.length; i++) joints.push((at += (pieces[i] as Piece).length));
  return joints;
}

/** Whether the joints of two neighbouring rows keep their stagger. */
export function staggered(a: readonly number[], b: readonly number[], stagger: number): boolean {
  for (const x of a) for (const y of b) if (Math.abs(x - y) < stagger) return false;
  return true;
}

/** Sum of the widths of rows once jointed. */
export const widthOf = (rows: readonly Row[], jointing: number): number =>
  rows.reduce((sum, row) => sum + row.across - jointing, 0);

/** What a search takes pieces from: builds rows, one after another, and takes them back. */
export interface Pool {
  readonly sticks: readonly Stick[];
  readonly rules: RowRules;
  /** A row from what is left; `jitter`, 0 to 1, is how far it departs from the plain order. Undefined where none is found. */
  build(jitter: number, random: () => number, like?: Row): Row | undefined;
  /** Cuts the pieces of a row that was built from the pool as it is, or given back since. */
  take(row: Row): void;
  giveBack(row: Row): void;
  /** Wood that a row takes beyond its width and length: breaks ties between lay-ups of one width. */
  excess(row: Row): number;
}
