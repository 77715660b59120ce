import { compileSteps, makeBoundsCheck } from './compile-steps.js';
import { assertFinite } from './assert-finite.js';
import { watchCurrency, type Fields, type Input, type Parsed } from './field.js';
import { finishedOr } from './finished-searches.js';
import { checkChain, evaluateChain, type Chain } from './formula-chain.js';
import { mendedWays, mendedWords } from './mending.js';
import type { Outputs, RawOutput } from './output.js';
import { withProgress } from './progress.js';
import type {
  AsyncDefinition,
  RecipeMetadata,
  RunOptions,
  SolveDefinition,
  StepsDefinition,
} from './recipe-definition.js';
import { accepted, assertDeclared, callable, named, recipeMetadata, withName } from './recipe-metadata.js';
import { registerAlias, registerRecipe } from './recipe-registry.js';
import { makeResult, type Result } from './result.js';
import { nullTrace, TraceRecorder, type Trace } from './trace.js';

export type {
  AsyncDefinition,
  Limit,
  RecipeMetadata,
  RunOptions,
  SolveDefinition,
  StepsDefinition,
} from './recipe-definition.js';

export interface Recipe<F extends Fields = Fields, O extends Outputs = Outputs> extends RecipeMetadata<F, O> {
  /** Evaluates what the user wrote, with workings, cautions and chart. @throws InputError with every wrong field */
  (given: Input<F>): Result<O>;
  /**
   * Evaluates numbers in base units (m, kg, Pa, °C; per cent as a fraction), without parsing or display: for sweeps.
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

/**
 * Defines a recipe. The order of the parts in the file is the order of {@link StepsDefinition}, read like a handbook page.
 * @throws Error where the definition itself is wrong, such as a formula that no output needs
 */
export function recipe<const F extends Fields, const O extends Outputs>(
  def: StepsDefinition<F, O> | SolveDefinition<F, O>,
): Recipe<F, O> {
  const chain: Chain | undefined = 'steps' in def ? def : undefined;
  if (chain) checkChain(chain);
  const formulas = 'steps' in def ? def.steps : (def.formulas ?? []);
  const own = recipeMetadata(def, formulas, false);
  const solve = 'steps' in def ? solveSteps<F, O>(def) : def.solve;
  const call = (given: Input<F>): Result<O> => {
    const read = watchCurrency(() => own.read(given));
    const trace = new TraceRecorder();
    const raw = named(def.name, () => solve(read.value, trace));
    assertDeclared(def.name, def.outputs, raw);
    assertFinite(def.name, raw);
    const run = (changed: Parsed<F>): RawOutput<O> => solve(accepted(def, changed), nullTrace);
    const mend = (): string =>
      mendedWords(mendedWays(def, read.value, raw, run), def.mending, def.outputs, read.currency);
    return makeResult(own, read.value, raw, trace, read.currency, given, mend);
  };
  let fast: ((numbers: Partial<Parsed<F>>) => RawOutput<O>) | undefined;
  const evaluate = (numbers: Partial<Parsed<F>>): RawOutput<O> =>
    (fast ??= makeEvaluate(def, solve))(numbers);
  const made = callable(call, Object.assign(own, { evaluate })) as unknown as Recipe<F, O>;
  registerRecipe(made, {
    chain: def.refuse ? undefined : chain,
    solve: (given) => named(def.name, () => solve(accepted(def, given as Parsed<F>), nullTrace)),
  });
  return made;
}

function solveSteps<F extends Fields, O extends Outputs>(
  def: StepsDefinition<F, O>,
): (given: Parsed<F>, trace: Trace) => RawOutput<O> {
  return (given, trace) =>
    evaluateChain<number>(def, given, (f, args) => trace.evaluate(f, args)) as RawOutput<O>;
}

/** The quick way to an answer: a chain of formulas is compiled, anything else is solved on checked numbers. */
function makeEvaluate<F extends Fields, O extends Outputs>(
  def: StepsDefinition<F, O> | SolveDefinition<F, O>,
  solve: (given: Parsed<F>, trace: Trace) => RawOutput<O>,
): (numbers: Partial<Parsed<F>>) => RawOutput<O> {
  if ('steps' in def && !def.refuse) return compileSteps(def.name, def.inputs, def.steps, def.outputs);
  const check = makeBoundsCheck(def.name, def.inputs);
  return (numbers) => named(def.name, () => solve(accepted(def, check(numbers)), nullTrace));
}

/** Defines a recipe whose search is long. */
export function asyncRecipe<const F extends Fields, const O extends Outputs>(
  def: AsyncDefinition<F, O>,
): AsyncRecipe<F, O> {
  const own = recipeMetadata(def, def.formulas ?? [], true);
  const call = async (given: Input<F>, options: RunOptions = {}): Promise<Result<O>> => {
    const read = watchCurrency(() => own.read(given));
    const search = (): Promise<{ raw: RawOutput<O>; trace: TraceRecorder }> =>
      withProgress(options, def.title, async (progress) => {
        const trace = new TraceRecorder(progress);
        try {
          return { raw: await def.search(read.value, trace), trace };
        } catch (error) {
          throw withName(def.name, error);
        }
      });
    const { raw, trace } = await finishedOr(def.name, read.value, search);
    assertDeclared(def.name, def.outputs, raw);
    assertFinite(def.name, raw);
    return makeResult(own, read.value, raw, trace, read.currency, given, () => '');
  };
  const check = makeBoundsCheck(def.name, def.inputs);
  const evaluate = (numbers: Partial<Parsed<F>>, options: RunOptions = {}): Promise<RawOutput<O>> =>
    def.search(accepted(def, check(numbers)), new TraceRecorder(options));
  return callable(call, Object.assign(own, { evaluate })) as unknown as AsyncRecipe<F, O>;
}

/** A recipe under its former name, for one version: it answers the same and tells once that it has another name now. */
export function formerName<F extends Fields, O extends Outputs>(
  recipe: Recipe<F, O>,
  former: string,
  tell: (line: string) => void = (line) => console.warn(line),
): Recipe<F, O> {
  let told = false;
  const call = (given: Input<F>): Result<O> => {
    if (!told) tell(formerNameLine(former, recipe.name));
    told = true;
    return recipe(given);
  };
  const made = callable(call, recipe);
  registerAlias(made, recipe);
  return made;
}

/** The line that tells of a name that has changed. */
export const formerNameLine = (former: string, now: string): string =>
  `${former} is called ${now} since version 0.2; the former name goes in version 0.3`;
