import { InputError } from '../units/input-error.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import type { Fields } from '../engine/field.js';
import type { Output, Outputs } from '../engine/output.js';
import type { AsyncRecipe, Recipe } from '../engine/recipe.js';
import { withProgress } from '../engine/progress.js';
import type { NumberOutput, SweepInputs } from './explore-types.js';
import { outputNamed } from './option-names.js';
import { axesOf } from './sweep-axes.js';
import { numberOutputs } from './frame-columns.js';
import { runLooped, runOneByOne } from './sweep-run.js';
import { makeSweep, type Sweep } from './sweep-result.js';
import { SweepInput } from './sweep-input.js';
import type { ProgressOptions } from './chunked-work.js';

export interface SweepOptions<Out extends string = string> extends ProgressOptions {
  /** Values a range is cut into when it does not say; default 61 for one range, 25 each for several. */
  readonly steps?: number;
  /** The output drawn; default the first that is a number. */
  readonly output?: Out;
}

const most = 5_000_000;

/**
 * Computes a recipe over ranges of one or several inputs: `sweep(cutterMarks, { feed: range('4 m/min', '12 m/min'), knives:
 * each([2, 3, 4]), spindleSpeed: '6000 rpm' })`. Inputs not given take their defaults.
 * @throws InputError on wrong inputs, or on more than 5 000 000 combinations
 */
export async function sweep<F extends Fields, O extends Outputs>(
  recipe: Recipe<F, O> | AsyncRecipe<F, O>,
  inputs: SweepInputs<F>,
  options?: SweepOptions<NumberOutput<O>>,
): Promise<Sweep>;
export async function sweep(
  recipe: AnyRecipe,
  inputs: Readonly<Record<string, unknown>>,
  options?: SweepOptions,
): Promise<Sweep>;
export async function sweep(
  recipe: unknown,
  inputs: Readonly<Record<string, unknown>>,
  options: SweepOptions = {},
): Promise<Sweep> {
  const r = recipe as AnyRecipe;
  const { axes, base } = axesOf(r, inputs, options.steps);
  const wanted = outputNamed(r, options.output);
  const names = numberOutputs(r.outputs);
  const n = axes.reduce((a, x) => a * x.count, 1);
  if (n > most) throw new InputError(`sweep: ${n} combinations, takes at most ${most}; use fewer steps`);
  const plan = {
    recipe: r,
    base,
    inputs: axes.map(
      (axis, k) =>
        new SweepInput(
          axis,
          axes.slice(k + 1).reduce((a, x) => a * x.count, 1),
          n,
        ),
    ),
    outputs: names.map((name) => [name, r.outputs[name] as Output] as const),
    points: n,
  };
  const columns = await withProgress(
    options,
    r.title,
    async (watch) => (await runLooped(plan, watch)) ?? (await runOneByOne(plan, watch)),
  );
  return makeSweep(r, axes, columns, n, wanted);
}

export type { Sweep };
