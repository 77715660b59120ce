// A piece as everything that is made from it sees it.
import type { Answer } from './answers.js';
import type { Contradiction } from './contradictions/contradiction.js';
import type { Assumed, Description, PieceInput } from './description.js';
import type { KeptPlans } from './kept-plan.js';
import type { PieceGraph } from './piece-graph.js';
import type { SearchNews } from './piece-search.js';

/** Changes by path: `{ 'top.thickness': '45 mm' }`. */
export type PieceChanges = Readonly<Record<string, unknown>>;

/** What alternatives, remedies, sweeps, pictures, texts and notes read of a piece. */
export interface PieceView {
  readonly name: string;
  /** The description in base units, defaults filled in. */
  readonly description: Description;
  /** The description as it was written. */
  readonly written: PieceInput;
  /** Every question that applies, worst first; failing safety questions lead. */
  readonly questions: readonly Answer[];
  /** Failing safety questions. */
  readonly dangers: readonly Answer[];
  /** Questions that cannot be answered yet. */
  readonly open: readonly Answer[];
  /** Defaults in use. */
  readonly assumed: readonly Assumed[];
  /** What cannot be true together. */
  readonly contradictions: readonly Contradiction[];
  /** Plans that searches found. */
  readonly plans: Partial<KeptPlans>;
  /** What the last search said of each plan. */
  readonly news: readonly SearchNews[];
  /** @internal */
  readonly graph: PieceGraph;
  with(changes: PieceChanges): PieceView;
  /** @internal Another variant whose description was read before. */
  withRead(description: Description): PieceView;
}
