import type { Timber } from '../../materials/timber.js';
import { coefficientRange } from './movement-formulas.js';
import type { Cut } from './wood-state.js';

/** A board, or a strip of a top, that moves across its grain. */
export interface Piece {
  /** Row of the table of strips, counted from 1. */
  readonly row?: number;
  readonly width: number;
  readonly timber: Timber;
  readonly cut: Cut;
}
/** `both`: the coefficient from 6 to 14 %, the shrinkage from green below and above. */
export type Rule = 'coefficient' | 'green shrinkage' | 'both' | 'coefficient beyond its range';
/** Whether both moistures lie within the range of the coefficients. */
export function inRange(from: number, to: number): boolean {
  return (
    coefficientRange.low - 1e-9 <= Math.min(from, to) && Math.max(from, to) <= coefficientRange.high + 1e-9
  );
}
