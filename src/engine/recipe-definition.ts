import type { ChartSpec } from '../charts/chart-spec.js';
import type { Issue } from '../units/input-error.js';
import type { Caution } from './caution.js';
import type { Fields, FieldsSchema, Input, Parsed } from './field.js';
import type { Formula } from './formula.js';
import type { JsonSchema } from './json-schema-type.js';
import type { Mending } from './mending.js';
import type { Outputs, RawOutput } from './output.js';
import type { Citation } from './source.js';
import type { Progress, Trace } from './trace.js';

/** A range its source covers: `when` tells that an answer lies outside it, `message` says so in a caution. */
export interface Limit<F extends Fields, O extends Outputs> {
  readonly when: (given: Parsed<F>, out: RawOutput<O>) => boolean;
  readonly message: string | ((given: Parsed<F>, out: RawOutput<O>) => string);
  readonly source?: Citation;
}

/** What every recipe declares. */
export interface BaseDefinition<F extends Fields, O extends Outputs> {
  /** The export's own name, such as 'movementAcross'. */
  readonly name: string;
  readonly title: string;
  /** The name of the folder the recipe stands in. */
  readonly topic: string;
  /** What it answers, for whom, and when not to use it: one to three sentences. */
  readonly about: string;
  readonly sources: readonly Citation[];
  readonly inputs: F;
  readonly outputs: O;
  /** What is wrong with inputs that are right one by one but not together; undefined where nothing is. */
  readonly refuse?: (given: Parsed<F>) => Issue | readonly Issue[] | undefined;
  readonly limits?: readonly Limit<F, O>[];
  /** Always shown, or decided by the answer. */
  readonly cautions?: readonly Caution[] | ((given: Parsed<F>, out: RawOutput<O>) => readonly Caution[]);
  /** A Vega-Lite specification; undefined where there is nothing to draw. Called only when somebody looks. */
  readonly chart?: (given: Parsed<F>, out: RawOutput<O>) => ChartSpec | undefined;
  /**
   * The answer as it is said aloud: the decision, its margin, what to do. `{name}` stands for the output of that name. Not
   * needed where an output called `sentence` says it.
   */
  readonly sentence?: string | ((given: Parsed<F>, out: RawOutput<O>) => string);
  /** How its answer fails and what mends it, for the second sentence of a failing answer. */
  readonly mending?: Mending<NoInfer<F>, NoInfer<O>>;
  readonly example: Input<F>;
}

/** A recipe that is a chain of formulas: letters are inputs' and earlier formulas' symbols; each output names its symbol. */
export interface StepsDefinition<F extends Fields, O extends Outputs> extends BaseDefinition<F, O> {
  readonly steps: readonly Formula[];
}
/** A recipe that chooses, looks up or searches. `formulas` are those it may use, for `reckoner show`. */
export interface SolveDefinition<F extends Fields, O extends Outputs> extends BaseDefinition<F, O> {
  readonly solve: (given: Parsed<F>, trace: Trace) => RawOutput<O>;
  readonly formulas?: readonly Formula[];
}
/** A recipe whose search takes long: answers by a promise, reports progress, stops on interrupt. */
export interface AsyncDefinition<F extends Fields, O extends Outputs> extends BaseDefinition<F, O> {
  readonly search: (given: Parsed<F>, trace: Trace) => Promise<RawOutput<O>>;
  readonly formulas?: readonly Formula[];
}

/** How a run of a long recipe is watched and stopped. */
export interface RunOptions {
  readonly signal?: AbortSignal;
  readonly onProgress?: (progress: Progress) => void;
}

/** What every recipe tells of itself. */
export interface RecipeMetadata<F extends Fields, O extends Outputs> {
  readonly name: string;
  readonly title: string;
  readonly topic: string;
  readonly about: string;
  readonly sources: readonly Citation[];
  readonly inputs: F;
  readonly outputs: O;
  readonly example: Input<F>;
  readonly formulas: readonly Formula[];
  readonly isAsync: boolean;
  readonly mending?: Mending<NoInfer<F>, NoInfer<O>>;
  /** Zod schema of what it takes: gives numbers in base units, defaults filled in, or the fields' own sentences. */
  readonly schema: FieldsSchema<F>;
  /** JSON Schema of what it takes. */
  readonly jsonSchema: JsonSchema;
  /** Checks what the user wrote: numbers in base units, defaults filled in. @throws InputError with every wrong field */
  read(given: Input<F>): Parsed<F>;
  /** The chart of an evaluated answer, for pages that redraw. */
  chartOf(given: Parsed<F>, out: RawOutput<O>): ChartSpec | undefined;
  /** The sentence of an evaluated answer, its `{name}` still to be filled in. */
  sentenceOf(given: Parsed<F>, out: RawOutput<O>): string | undefined;
  /** Cautions of an evaluated answer. */
  cautionsOf(given: Parsed<F>, out: RawOutput<O>): readonly Caution[];
  /** What is said outside each range that its sources cover; a text made of the answer only where that lies outside. */
  limitsOf(given: Parsed<F>, out: RawOutput<O>): readonly string[];
}
