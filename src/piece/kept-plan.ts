// Searches of a piece and the plans they found, kept until they no longer fit.
import type { ResultMethods } from '../engine/result.js';

export type PlanName = 'top' | 'frame';

/** A row of the top as the search laid it. */
export interface TopRow {
  readonly row: number;
  readonly width: number;
  readonly pieces: string;
  readonly joints: string;
  readonly slab: number;
}

/** A top laid from the pile: what the search found, and what it was asked. */
export interface TopPlan {
  readonly asked: TopAsked;
  readonly verdict: string;
  readonly sentence: string;
  readonly thickness: number;
  readonly foundWidth: number;
  readonly widthBound: number;
  readonly lay: string;
  readonly boardsCut: number;
  readonly timber: number;
  readonly worstStagger: number | undefined;
  readonly rows: readonly TopRow[];
  readonly result: ResultMethods;
}
export interface TopAsked {
  readonly boards: unknown;
  readonly topLength: number;
  readonly width: number;
  readonly thickness: number;
  readonly lay: string;
  readonly spare: number;
  readonly plane: number;
  readonly jointing: number;
  readonly kerf: number;
  readonly widestSlab: number;
  readonly leastPiece: number;
  readonly stagger: number;
}

export interface CutPart {
  readonly name: string;
  readonly length: number;
  readonly count: number;
  readonly width: number;
  readonly thickness: number;
}
export interface CutStock {
  readonly name?: string | undefined;
  readonly length: number;
  readonly count?: number | undefined;
  readonly cost?: number | undefined;
  readonly width?: number | undefined;
  readonly thickness?: number | undefined;
}
export interface PlannedBoard {
  readonly board: number;
  readonly stock: string;
  readonly stockLength: number;
  readonly pieces: readonly { readonly name: string; readonly length: number; readonly from: number }[];
  readonly offcut: number;
}

/** The frame cut from the battens. */
export interface FramePlan {
  readonly asked: FrameAsked;
  readonly boardsUsed: number;
  readonly stockLength: number;
  readonly partsLength: number;
  readonly waste: number;
  readonly optimal: boolean;
  readonly plan: readonly PlannedBoard[];
  readonly missing:
    readonly { readonly name: string; readonly length: number; readonly count: number }[] | undefined;
  readonly result: ResultMethods;
}
export interface FrameAsked {
  readonly parts: readonly CutPart[];
  readonly stock: readonly CutStock[];
  readonly kerf: number;
  readonly trimEachEnd: number;
}

export interface KeptPlans {
  readonly top: TopPlan | undefined;
  readonly frame: FramePlan | undefined;
}
