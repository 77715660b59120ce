// One piece: described once, asked everything.
import type { ChartSpec } from '../charts/chart-spec.js';
import type { Result } from '../engine/result.js';
import { InputError } from '../units/input-error.js';
import { answerCalled, answersInOrder, asksOf, worstFirst, type Answer } from './answers.js';
import { compareAlternatives, type Alternatives } from './alternatives.js';
import type { Contradiction } from './contradictions/contradiction.js';
import { contradictionsNode } from './contradictions/contradictions-node.js';
import {
  assumedValues,
  readDescription,
  type Assumed,
  type Description,
  type PieceInput,
} from './description.js';
import { inputsWithPlaces, type PlacedInput } from './input-places.js';
import type { KeptPlans } from './kept-plan.js';
import { withChanges } from './changed-description.js';
import type { PieceChanges, PieceView } from './piece-view.js';
import type { BenchCardOptions, BenchCards } from '../notes/bench-cards.js';
import { cutList, type CutList } from '../notes/cut-list.js';
import type { BuildNotes, NoteOptions } from '../notes/note.js';
import type { TemplateOptions, TemplateSheets } from '../notes/template-sheets.js';
import { pieceBill, type PieceBill } from './outputs/piece-bill.js';
import { pieceCards } from './outputs/piece-cards.js';
import { pieceHandout, type PieceHandout } from './outputs/piece-handout.js';
import { pieceNote } from './outputs/piece-note.js';
import { pieceTemplates } from './outputs/piece-templates.js';
import { PieceGraph, PieceMemory } from './piece-graph.js';
import { pieceText, pieceMarkdown, pieceHtml } from './piece-text.js';
import { searchPlans, type SearchNews, type SearchOptions } from './piece-search.js';
import { piecePictures, type PictureName } from './pictures/piece-pictures.js';
import { remediesFor, type Remedy } from './remedies.js';
import { resultOf } from './recipe-ask.js';
import { sweepPiece, type PieceSweep, type PieceSweepOptions } from './piece-sweep.js';
import type { Range, ValueList } from '../explore/range.js';
import { writtenDescription } from './written-description.js';

/** What a piece is made of when it is made from another one. */
interface Kept {
  readonly written: object;
  readonly description: Description;
  readonly plans: Partial<KeptPlans>;
  readonly memory: PieceMemory;
  readonly news: readonly SearchNews[];
}

/** A described piece. It never changes: {@link Piece.with} gives another one that recalculates only what differs. */
export class Piece implements PieceView {
  readonly #kept: Kept;
  readonly #graph: PieceGraph;
  #answers: readonly Answer[] | undefined;

  /** @internal Made by {@link piece}. */
  constructor(kept: Kept) {
    this.#kept = kept;
    this.#graph = new PieceGraph(kept.description, kept.plans, kept.memory);
  }

  get name(): string {
    return this.#kept.description.name;
  }
  /** The description in base units, defaults filled in. */
  get description(): Description {
    return this.#kept.description;
  }
  /** The description as it was written. */
  get written(): PieceInput {
    return this.#kept.written as PieceInput;
  }
  /** Every question that applies, worst first; failing safety questions lead. */
  get questions(): readonly Answer[] {
    return (this.#answers ??= worstFirst(answersInOrder(this.#graph)));
  }
  /** Failing safety questions: they stand at the head of everything that is made from the piece. */
  get dangers(): readonly Answer[] {
    return this.questions.filter((a) => a.safety && a.verdict === 'fails');
  }
  /** Questions that cannot be answered yet. */
  get open(): readonly Answer[] {
    return this.questions.filter((a) => a.verdict === 'open');
  }
  /** Defaults in use. */
  get assumed(): readonly Assumed[] {
    return assumedValues(this.#kept.written);
  }
  /** What cannot be true together. */
  get contradictions(): readonly Contradiction[] {
    return this.#graph.of(contradictionsNode);
  }
  /** Plans that searches found. */
  get plans(): Partial<KeptPlans> {
    return this.#kept.plans;
  }
  /** What the last search said of each plan. */
  get news(): readonly SearchNews[] {
    return this.#kept.news;
  }
  /** Names of what was worked out anew for this variant. */
  get recalculated(): readonly string[] {
    return this.#graph.recalculated;
  }
  /** @internal */
  get graph(): PieceGraph {
    return this.#graph;
  }

  /** The answer to one question. @throws InputError for a name that no question has, or one that does not apply */
  question(name: string): Answer {
    return answerCalled(this.#graph, name);
  }

  /** The recipe's result behind an answer, with workings and cautions; `about` names a part, a surface or a stage. */
  ask(name: string, about?: string): Result {
    const [first] = asksOf(this.question(name), about);
    const result = resultOf(first);
    if (result instanceof Promise) throw new InputError(`${name}: is searched for, see plans`);
    return result;
  }

  /** The year in the top. */
  movement(): Result {
    return this.ask('movement');
  }
  /** The sag of the top, or of a rail by the name of its part. */
  sag(part?: string): Result {
    return part === undefined || part === 'top' ? this.ask('sagTop') : this.ask('sagRails', part);
  }
  /** What a part weighs; the top without a name. */
  weight(part = 'top'): Result {
    return this.ask('weight', part);
  }
  /** Whether it tips. */
  tipping(): Result {
    return this.ask('tipping');
  }

  /** Where each input of a question came from. */
  inputs(name: string, about?: string): readonly PlacedInput[] {
    return asksOf(this.question(name), about).flatMap((asked) => inputsWithPlaces(asked, this.#kept.written));
  }

  /** The same piece with some values changed, by path. @throws InputError naming every wrong path */
  with(changes: PieceChanges): Piece {
    const { written, description } = withChanges(this.#kept, changes);
    return new Piece({ ...this.#kept, written, description });
  }

  /** @internal Another variant whose changes were read before; nothing is checked. */
  withRead(description: Description): Piece {
    return new Piece({ ...this.#kept, description });
  }

  /** Runs the searches that are missing or no longer fit; plans that fit are kept. */
  async search(options: SearchOptions = {}): Promise<Piece> {
    const seconds = this.#kept.description.pile.timeLimit;
    const { plans, news } = await searchPlans(this.#graph, this.#kept.plans, seconds, options);
    return new Piece({ ...this.#kept, plans, news });
  }

  /** The same piece with one thing changed, side by side over all questions. */
  alternatives(changes: Readonly<Record<string, PieceChanges>>): Alternatives {
    return compareAlternatives(this, changes);
  }

  /** What would make a failing question pass, the smallest change first; of every failing one without a name. */
  remedies(name?: string): readonly Remedy[] {
    return remediesFor(this, name);
  }

  /** All questions over ranges of values, by path. */
  sweep(
    ranges: Readonly<Record<string, Range | ValueList>>,
    options: PieceSweepOptions = {},
  ): Promise<PieceSweep> {
    return sweepPiece(this, ranges, options);
  }

  /** A picture to scale: plan, front, end, section or a joint by its name. */
  picture(which: PictureName, joint?: string): ChartSpec {
    return piecePictures(this.#graph, which, joint);
  }

  /** The build note; failing safety questions stand first. */
  note(options?: NoteOptions): BuildNotes {
    return pieceNote(this, options);
  }
  /** Bench cards, one operation each; failing safety questions head every card. */
  cards(options?: BenchCardOptions): BenchCards {
    return pieceCards(this, options);
  }
  /** The cut list of the frame. @throws InputError until the frame has been planned */
  cutList(): CutList {
    const plan = this.#kept.plans.frame;
    if (!plan) throw new InputError('cutList: no cutting plan is kept; run search() first');
    return cutList(plan.result);
  }
  /** The bill, from the same lines as the cost. */
  bill(): PieceBill {
    return pieceBill(this);
  }
  /** Its joints at full size, on sheets with their scale locked. */
  templates(options: TemplateOptions = {}): TemplateSheets {
    return pieceTemplates(this, options);
  }
  /** A page about the piece. */
  handout(): PieceHandout {
    return pieceHandout(this);
  }

  /** The description as it goes into a `*.piece.json` file. */
  toJSON(): object {
    return writtenDescription(this.#kept.written);
  }
  toText(): string {
    return pieceText(this);
  }
  toString(): string {
    return pieceText(this);
  }
  toMarkdown(): string {
    return pieceMarkdown(this);
  }
  toHtml(): string {
    return pieceHtml(this);
  }
  [Symbol.for('Jupyter.display')](): Readonly<Record<string, string>> {
    return { 'text/plain': this.toText(), 'text/markdown': this.toMarkdown(), 'text/html': this.toHtml() };
  }
  [Symbol.for('nodejs.util.inspect.custom')](): string {
    return pieceText(this);
  }
}

/**
 * Describes a piece: its top, frame, joints, fixings, use, pile and shop, once. `top` may be the result of `topFromPile`.
 * @throws InputError with every wrong value by its path
 */
export function piece(written: PieceInput): Piece {
  const plain = written as object;
  return new Piece({
    written: plain,
    description: readDescription(plain),
    plans: {},
    memory: new PieceMemory(),
    news: [],
  });
}
