import { InputError, inspectValue } from '../units/input-error.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import type { Field, Fields } from '../engine/field.js';
import type { Outputs } from '../engine/output.js';
import type { Recipe } from '../engine/recipe.js';
import { withProgress } from '../engine/progress.js';
import { quantityPart, textOf } from './frame-columns.js';
import { makeDistribution, type Distribution } from './distribution-result.js';
import type { NumberOutput, UncertainInputs } from './explore-types.js';
import { outputNamed } from './option-names.js';
import { quasiRandom } from './samples.js';
import { samplePlan, type Correlation } from './sample-plan.js';
import { sensitivityOf, runsFor } from './sensitivity.js';
import { makeSampler } from './sampler.js';
import { inputDistribution, type InputDistribution } from './distributions.js';
import { targetOf } from './target.js';
import type { ProgressOptions } from './chunked-work.js';

export interface UncertainOptions<
  Out extends string = string,
  In extends string = string,
> extends ProgressOptions {
  /** Samples of the distribution, 100 to 5 000 000; default 65 536. */
  readonly samples?: number;
  /** Same seed, same samples. Default 1. */
  readonly seed?: number;
  /** The output looked at; default the first that is a number. */
  readonly output?: Out;
  /** Limits: the chance that the output is at most or at least this. */
  readonly atMost?: unknown;
  readonly atLeast?: unknown;
  /** Inputs with a common cause: a setting error in two cuts, one board's moisture in all its strips. Others are independent. */
  readonly correlated?: readonly Correlation<In>[];
  /** False leaves out which input matters most, which takes as many samples again for each input (at most 16 384). */
  readonly sensitivity?: boolean;
}

/**
 * What uncertain inputs do to an answer: `uncertain(movementAcross, { width: '640 mm +- 2 mm', from: '8 % .. 11 %', ... })`.
 * At least one input must vary. `+-` (or `±`) means normal with 95 % of the values within the two bounds, everywhere.
 * Samples are seeded and fill the space evenly.
 * @throws InputError on wrong inputs, or when an input's distribution leaves its limits
 */
export async function uncertain<F extends Fields, O extends Outputs>(
  recipe: Recipe<F, O>,
  inputs: UncertainInputs<F>,
  options?: UncertainOptions<NumberOutput<O>, keyof F & string>,
): Promise<Distribution>;
export async function uncertain(
  recipe: AnyRecipe,
  inputs: Readonly<Record<string, unknown>>,
  options?: UncertainOptions,
): Promise<Distribution>;
export async function uncertain(
  recipe: unknown,
  inputs: Readonly<Record<string, unknown>>,
  options: UncertainOptions = {},
): Promise<Distribution> {
  const r = recipe as AnyRecipe;
  if (r.isAsync) throw new InputError('uncertain takes a recipe that answers at once', r.name);
  const { samples, seed } = checkedCounts(r, options);
  const output = outputNamed(r, options.output);
  const { spreads, fixed } = splitInputs(r, inputs);
  const plan = samplePlan(spreads, options.correlated ?? [], r.name);
  const base = baseOf(r, fixed, spreads);
  const weighed = options.sensitivity === false || plan.factors.length < 2 ? 0 : Math.min(samples, 16_384);
  const limits = {
    most: options.atMost === undefined ? undefined : targetOf(r, output, options.atMost),
    least: options.atLeast === undefined ? undefined : targetOf(r, output, options.atLeast),
  };
  return withProgress(options, r.title, async (watch) => {
    const all = samples + weighed * runsFor(plan.factors.length);
    const run = makeSampler(r, base, spreads, plan, output, watch, all);
    const values = (await run(samples, quasiRandom(plan.dimensions, seed), (k) => k)).sort();
    if (!Number.isFinite(values[0]) || !Number.isFinite(values[samples - 1]))
      throw new InputError(
        'uncertain: some samples give no finite answer; make the distributions narrower',
        r.name,
      );
    const sensitivity = weighed === 0 ? [] : await sensitivityOf(run, plan, weighed, seed);
    return makeDistribution({ recipe: r, output, values, sensitivity, limits, spreads });
  });
}

function checkedCounts(r: AnyRecipe, options: UncertainOptions): { samples: number; seed: number } {
  const { samples = 65_536, seed = 1 } = options;
  const refuse = (field: string, got: unknown, takes: string): never => {
    throw new InputError({ field, message: `got ${inspectValue(got)}, takes ${takes}` }, r.name);
  };
  if (!(Number.isInteger(samples) && samples >= 100 && samples <= 5_000_000))
    refuse('samples', samples, 'a whole number from 100 to 5 000 000');
  if (!Number.isInteger(seed)) refuse('seed', seed, 'a whole number');
  return { samples, seed };
}

/** The inputs that vary, and the others as written. @throws InputError where none varies */
function splitInputs(
  r: AnyRecipe,
  inputs: Readonly<Record<string, unknown>>,
): { spreads: InputDistribution[]; fixed: Record<string, unknown> } {
  const spreads: InputDistribution[] = [];
  const fixed: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(inputs)) {
    const field = r.inputs[name];
    const spread = field ? inputDistribution(name, field, value) : undefined;
    if (spread) spreads.push(spread);
    else fixed[name] = value;
  }
  if (spreads.length === 0)
    throw new InputError(
      "uncertain: no input varies; takes one such as '900 mm +- 2 mm', '880 mm .. 920 mm' or normal(...)",
      r.name,
    );
  return { spreads, fixed };
}

/** Reads the fixed inputs with the middle of each distribution in its place, so that all is checked once. */
function baseOf(
  r: AnyRecipe,
  fixedInputs: Readonly<Record<string, unknown>>,
  spreads: readonly InputDistribution[],
): Record<string, unknown> {
  const mids: Record<string, unknown> = {};
  const fixed: Record<string, unknown> = { ...fixedInputs };
  for (const s of spreads) {
    mids[s.name] = s.quantile(0.5);
    // The example's value stands in for reading; the number itself replaces it below.
    fixed[s.name] = r.example[s.name] ?? (r.inputs[s.name] as Field).default;
    if (fixed[s.name] === undefined && s.numeric) {
      const f = quantityPart(r.inputs[s.name] as Field);
      fixed[s.name] = textOf(f.kind, mids[s.name] as number).replace(/\u202f/g, '');
    }
  }
  return { ...r.read(fixed), ...mids };
}

export type { Distribution };
export type { Correlation } from './sample-plan.js';
export type { Sensitivity } from './sensitivity.js';
