import type { ChartSpec } from '../charts/chart-spec.js';
import { InputError } from '../units/input-error.js';
import type { Caution } from './caution.js';
import type { NumberOps } from './number-ops.js';
import { compileSteps, makeBoundsCheck } from './compile-steps.js';
import { assertFinite } from './assert-finite.js';
import { makeParser, watchCurrency, type Fields, type Input, type Parsed } from './field.js';
import type { Formula } from './formula.js';
import { makeResult, type Result } from './result.js';
import type { Outputs, RawOutput } from './output.js';
import { ExpressionGraph, type CompiledLoop, type Operand } from './expression-graph.js';
import type { Citation } from './source.js';
import { withProgress } from './progress.js';
import { nullTrace, TraceRecorder, type Progress, type Trace } from './trace.js';

/** Outside what its source covers: `when` decides, `says` tells the range; shown as a caution. */
export interface Limit<F extends Fields, O extends Outputs> {
  readonly when: (given: Parsed<F>, out: RawOutput<O>) => boolean;
  readonly message: string | ((given: Parsed<F>, out: RawOutput<O>) => string);
  readonly source?: Citation;
}

interface BaseDefinition<F extends Fields, O extends Outputs> {
  /** The export's own name, such as 'movementAcross'. */
  readonly name: string;
  readonly title: string;
  readonly topic: string;
  /** What it answers, for whom, and when not to use it: one to three sentences. */
  readonly about: string;
  readonly sources: readonly Citation[];
  readonly inputs: F;
  readonly outputs: O;
  readonly limits?: readonly Limit<F, O>[];
  /** Always shown, or decided by the answer. */
  readonly cautions?: readonly Caution[] | ((given: Parsed<F>, out: RawOutput<O>) => readonly Caution[]);
  /** A Vega-Lite specification; undefined where there is nothing to draw. Called only when somebody looks. */
  readonly chart?: (given: Parsed<F>, out: RawOutput<O>) => ChartSpec | undefined;
  readonly example: Input<F>;
}

/** A recipe of formulas in a row: letters are inputs' and earlier formulas' symbols; each output names its symbol. */
export interface StepsDefinition<F extends Fields, O extends Outputs> extends BaseDefinition<F, O> {
  readonly steps: readonly Formula[];
}
/** A recipe that chooses, looks up or searches. `formulas` are those it may use, for `reckoner show`. */
export interface SolveDefinition<F extends Fields, O extends Outputs> extends BaseDefinition<F, O> {
  readonly solve: (given: Parsed<F>, trace: Trace) => RawOutput<O>;
  /**
   * The numbers of `solve` over an {@link NumberOps}, so that sweeps and draws run as one compiled loop: what the
   * choices settle is settled once, and inputs that vary come as points. Undefined where these inputs are for `solve`
   * itself, point by point. An output left out has no number.
   */
  readonly vectorized?: (
    on: NumberOps<Operand>,
    given: Vectorized<Parsed<F>>,
  ) => { readonly [K in keyof O]?: Operand } | undefined;
  readonly formulas?: readonly Formula[];
}
/** What was read, where any number may differ from point to point. */
export type Vectorized<T> = { readonly [K in keyof T]: VectorizedValue<T[K]> };
type VectorizedValue<V> = V extends number ? Operand : V;
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
  /** Checks what a person wrote: numbers in base units, defaults filled in. @throws InputError with every wrong field */
  read(given: Input<F>): Parsed<F>;
  /** The chart of an evaluated answer, for pages that redraw. */
  chartOf(given: Parsed<F>, out: RawOutput<O>): ChartSpec | undefined;
  /** Cautions of an evaluated answer. */
  cautionsOf(given: Parsed<F>, out: RawOutput<O>): readonly Caution[];
}

export interface Recipe<F extends Fields = Fields, O extends Outputs = Outputs> extends RecipeMetadata<F, O> {
  /** Reckons what was written, with workings, cautions and chart. @throws InputError with every wrong field */
  (given: Input<F>): Result<O>;
  /**
   * Reckons numbers in base units (m, kg, Pa, °C; per cent as a fraction), no parsing and no display: for sweeps.
   * Fields left out take their defaults. @throws InputError outside the fields' limits
   */
  evaluate(numbers: Partial<Parsed<F>>): RawOutput<O>;
}

export interface AsyncRecipe<F extends Fields = Fields, O extends Outputs = Outputs> extends RecipeMetadata<
  F,
  O
> {
  (given: Input<F>, options?: RunOptions): Promise<Result<O>>;
  evaluate(numbers: Partial<Parsed<F>>, options?: RunOptions): Promise<RawOutput<O>>;
}

const reserved = new Set([
  'workings',
  'sources',
  'cautions',
  'chart',
  'inputs',
  'recipe',
  'title',
  'toText',
  'toMarkdown',
  'toHtml',
  'toJSON',
  'raw',
]);

function recipeMetadata<F extends Fields, O extends Outputs>(
  def: BaseDefinition<F, O>,
  formulas: readonly Formula[],
  long: boolean,
): RecipeMetadata<F, O> & { readonly def: BaseDefinition<F, O> } {
  for (const name of Object.keys(def.outputs))
    if (reserved.has(name)) throw new Error(`${def.name}: an output may not be called ${name}`);
  const check = makeParser(def.inputs);
  return {
    def,
    name: def.name,
    title: def.title,
    topic: def.topic,
    about: def.about,
    sources: def.sources,
    inputs: def.inputs,
    outputs: def.outputs,
    example: def.example,
    formulas,
    isAsync: long,
    read: (given) => named(def.name, () => check(given)),
    chartOf: (given, out) => def.chart?.(given, out),
    cautionsOf: (given, out) => [
      ...(typeof def.cautions === 'function' ? def.cautions(given, out) : (def.cautions ?? [])),
      ...(def.limits ?? [])
        .filter((l) => l.when(given, out))
        .map((l): Caution => ({
          level: 'range',
          text: typeof l.message === 'function' ? l.message(given, out) : l.message,
          ...(l.source ? { source: l.source } : {}),
        })),
    ],
  };
}

/** Bad input that only the reckoning finds is given the recipe's name. */
function named<T>(name: string, run: () => T): T {
  try {
    return run();
  } catch (error) {
    throw withName(name, error);
  }
}

/** A refusal that another recipe raised keeps that one's name. */
const withName = (name: string, error: unknown): unknown =>
  error instanceof InputError && error.context === '' ? new InputError(error.issues, name) : error;

/** Makes a callable out of a face: the name and the members of a recipe on a function. */
function callable<T extends object>(call: (...args: never[]) => unknown, members: T): T {
  Object.defineProperty(call, 'name', { value: (members as { name?: string }).name, configurable: true });
  for (const [key, d] of Object.entries(Object.getOwnPropertyDescriptors(members))) {
    if (key !== 'name' && key !== 'def') Object.defineProperty(call, key, d);
  }
  return call as unknown as T;
}

/** Defines a recipe. The order of the parts in the file is the order of {@link StepsDefinition}, read like a handbook page. */
export function recipe<const F extends Fields, const O extends Outputs>(
  def: StepsDefinition<F, O> | SolveDefinition<F, O>,
): Recipe<F, O> {
  const steps = 'steps' in def ? def.steps : undefined;
  const own = recipeMetadata(def, steps ?? (def as SolveDefinition<F, O>).formulas ?? [], false);
  const solve: (given: Parsed<F>, trace: Trace) => RawOutput<O> = steps
    ? (given, trace) => runSteps(def, steps, given, trace)
    : (def as SolveDefinition<F, O>).solve;
  const call = (given: Input<F>): Result<O> => {
    const read = watchCurrency(() => own.read(given));
    const trace = new TraceRecorder();
    const raw = named(def.name, () => solve(read.value, trace));
    assertFinite(def.name, raw);
    return makeResult(own, read.value, raw, trace, read.currency, given);
  };
  let fast: ((numbers: Partial<Parsed<F>>) => RawOutput<O>) | undefined;
  const evaluate = (numbers: Partial<Parsed<F>>): RawOutput<O> => {
    if (!fast) {
      if (steps) fast = compileSteps(def.name, def.inputs, steps, def.outputs);
      else {
        const guard = makeBoundsCheck(def.name, def.inputs);
        fast = (n) => named(def.name, () => solve(guard(n), nullTrace));
      }
    }
    return fast(numbers);
  };
  const made = callable(call, { ...own, evaluate }) as unknown as Recipe<F, O>;
  if (steps) formulaChains.add(made);
  vectorizedSolves.set(
    made,
    (steps
      ? (row: ExpressionGraph, given: Readonly<Record<string, unknown>>) =>
          vectorizeSteps(row, def, steps, given)
      : (def as SolveDefinition<F, O>).vectorized) as VectorizedSolve | undefined,
  );
  uncheckedSolves.set(made, (given) => named(def.name, () => solve(given as Parsed<F>, nullTrace)));
  return made;
}

type UncheckedSolve = (given: object) => Readonly<Record<string, unknown>>;
const uncheckedSolves = new WeakMap<object, UncheckedSolve>();

/** The reckoning alone, of a recipe that answers at once, on inputs that were read and checked: for many draws round a checked middle. */
export const uncheckedSolve = (recipe: object): UncheckedSolve =>
  uncheckedSolves.get(recipe) as UncheckedSolve;

/** Whether a recipe is a row of formulas and nothing else. */
export function isFormulaChain(recipe: object): boolean {
  return formulaChains.has(recipe);
}
const formulaChains = new WeakSet<object>();

type VectorizedSolve = (
  row: ExpressionGraph,
  given: Readonly<Record<string, unknown>>,
) => Readonly<Record<string, Operand | undefined>> | undefined;
const vectorizedSolves = new WeakMap<object, VectorizedSolve | undefined>();

/**
 * The loop that reckons what `wanted` makes of a recipe's answers, over columns of the inputs that vary, the others being
 * as in `base`, which was read and checked; undefined for a recipe, or for inputs, that must be reckoned point by point.
 * Limits are not looked at: whoever fills the columns keeps within them, which is what lets the loop run like one written
 * by hand.
 */
export function compileSweep(
  recipe: { readonly name: string },
  base: Readonly<Record<string, unknown>>,
  varying: readonly string[] | ((row: ExpressionGraph) => Readonly<Record<string, Operand>>),
  wanted: (
    row: ExpressionGraph,
    answer: Readonly<Record<string, Operand | undefined>>,
  ) => Readonly<Record<string, Operand>>,
  peaks: readonly string[] = [],
): CompiledLoop | undefined {
  const row = new ExpressionGraph();
  const points =
    typeof varying === 'function'
      ? varying(row)
      : Object.fromEntries(varying.map((name) => [name, row.input(name)]));
  const given = { ...base, ...points };
  const answer = named(recipe.name, () => vectorizedSolves.get(recipe)?.(row, given));
  return answer && row.compile(wanted(row, answer), peaks);
}

/** Defines a recipe whose search is long. */
export function asyncRecipe<const F extends Fields, const O extends Outputs>(
  def: AsyncDefinition<F, O>,
): AsyncRecipe<F, O> {
  const own = recipeMetadata(def, def.formulas ?? [], true);
  const call = async (given: Input<F>, options: RunOptions = {}): Promise<Result<O>> => {
    const read = watchCurrency(() => own.read(given));
    const { raw, work: trace } = await withProgress(options, def.title, async (watch) => {
      const trace = new TraceRecorder(watch);
      try {
        return { raw: await def.search(read.value, trace), work: trace };
      } catch (error) {
        throw withName(def.name, error);
      }
    });
    assertFinite(def.name, raw);
    return makeResult(own, read.value, raw, trace, read.currency, given);
  };
  const guard = makeBoundsCheck(def.name, def.inputs);
  const evaluate = (numbers: Partial<Parsed<F>>, options: RunOptions = {}): Promise<RawOutput<O>> =>
    def.search(guard(numbers), new TraceRecorder(options));
  return callable(call, { ...own, evaluate }) as unknown as AsyncRecipe<F, O>;
}

function runSteps<F extends Fields, O extends Outputs>(
  def: BaseDefinition<F, O>,
  steps: readonly Formula[],
  given: Parsed<F>,
  trace: Trace,
): RawOutput<O> {
  return evaluateChain(
    def,
    steps,
    given as Readonly<Record<string, unknown>>,
    (f, args: Readonly<Record<string, number>>) => trace.evaluate(f, args),
  ) as RawOutput<O>;
}

/** The row of formulas on terms of a loop. */
function vectorizeSteps<F extends Fields, O extends Outputs>(
  row: ExpressionGraph,
  def: BaseDefinition<F, O>,
  steps: readonly Formula[],
  given: Readonly<Record<string, unknown>>,
): Readonly<Record<string, Operand | undefined>> {
  return evaluateChain<Operand>(def, steps, given, (f, args) => row.evaluate(f, args));
}

/** Goes along the formulas: each takes inputs' and earlier formulas' letters, and each output is one of them. */
function evaluateChain<N>(
  def: Pick<BaseDefinition<Fields, Outputs>, 'inputs' | 'outputs'>,
  steps: readonly Formula[],
  given: Readonly<Record<string, unknown>>,
  apply: (f: Formula, args: Readonly<Record<string, N>>) => N,
): Readonly<Record<string, N | undefined>> {
  const values: Record<string, N> = {};
  for (const [name, f] of Object.entries(def.inputs)) if (f.symbol) values[f.symbol] = given[name] as N;
  for (const f of steps)
    values[f.symbol] = apply(f, Object.fromEntries(Object.keys(f.variables).map((s) => [s, values[s] as N])));
  return Object.fromEntries(
    Object.entries(def.outputs).map(([name, o]) => [name, values[o.symbol as string]]),
  );
}
