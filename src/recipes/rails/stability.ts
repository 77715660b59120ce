import { tableRows, type DataRow } from '../../materials/data-tables.js';
import type { Citation } from '../../engine/source.js';

/** Standard gravity, m/s². */
const gravity = 9.80665;

/** Kinds of furniture that data/stability-situations.csv holds situations for; a test keeps the two alike. */
export const stabilityPieces = ['table', 'bench', 'low cabinet', 'tall cabinet', 'drawers'] as const;
export type StabilityPiece = (typeof stabilityPieces)[number];

/** A person or a load on one side of a piece: newtons and metres. */
export interface Situation {
  readonly label: string;
  /** Load down, and how far inside the edge it stands. */
  readonly down: number;
  readonly inset: number;
  /** Level force outward, and its height over the floor. */
  readonly outward: number;
  readonly height: number;
  readonly citation?: Citation;
  /** The standard whose kind of test it follows. */
  readonly like?: string;
}

/** One side of a piece, seen from its centre of gravity. */
export interface Side {
  readonly mass: number;
  /** From the feet on this side to the centre of gravity, on the level. */
  readonly arm: number;
  /** How far the edge stands out over those feet; negative when it stands inside. */
  readonly overhang: number;
}

/** Moments about the feet of one side, N·m: what holds the piece down and what tips it. */
export function moments(side: Side, s: Situation): { readonly holding: number; readonly tipping: number } {
  const x = s.down * (side.overhang - s.inset);
  return {
    // A load inside the feet holds the piece down.
    holding: side.mass * gravity * side.arm + Math.max(0, -x),
    tipping: Math.max(0, x) + s.outward * s.height,
  };
}

/** Holding moment over tipping moment; undefined where next to nothing tips it. */
export function stabilityFactor(side: Side, s: Situation): number | undefined {
  const { holding, tipping } = moments(side, s);
  return tipping > 1e-9 * holding ? holding / tipping : undefined;
}

/** Load down at an inset that tips the piece while `push` turns it over with that moment, newtons; undefined where none does. */
export function loadThatTips(side: Side, inset: number, push = 0): number | undefined {
  const out = side.overhang - inset;
  // Under a nanometre of overhang no load tips it.
  return out > 1e-9 ? Math.max(0, side.mass * gravity * side.arm - push) / out : undefined;
}

/** Level push at a height that tips the piece with a load down in place, newtons; 0 where the load alone does. */
export function pushThatTips(side: Side, s: Pick<Situation, 'down' | 'inset' | 'height'>): number {
  return Math.max(0, (side.mass * gravity * side.arm - s.down * (side.overhang - s.inset)) / s.height);
}

/** The arm of a piece on a floor out of true, or on a carpet: its centre of gravity leans over by `tilt` radians. */
export const tiltedArm = (arm: number, centreHeight: number, tilt: number): number =>
  arm - centreHeight * Math.tan(tilt);

/** The situations of a kind of piece, their forces at the top taken at its height in metres. */
export function situationsOf(piece: StabilityPiece, top: number): readonly Situation[] {
  return tableRows('stability-situations')
    .filter((r) => r.text('piece') === piece)
    .map((r: DataRow) => ({
      label: r.text('label'),
      down: r.number('down_n') as number,
      inset: (r.number('inset_mm') as number) / 1000,
      outward: r.number('outward_n') as number,
      height: top,
      citation: r.citation,
      like: r.text('like'),
    }));
}

/** What a check of stability found: `not checked` where no force was looked at, never safe by default. */
export type StabilityVerdict = 'stands' | 'tips' | 'not checked';

/** The verdict over all factors, each against the factor wanted. */
export function verdictOf(
  checks: readonly { readonly factor: number | undefined; readonly wanted: number }[],
): StabilityVerdict {
  if (checks.length === 0) return 'not checked';
  return checks.every((c) => c.factor === undefined || c.factor >= c.wanted * (1 - 1e-12))
    ? 'stands'
    : 'tips';
}
