import { Refusal, shown } from '../quantities/refusal.js';
import type { RecipeEntry } from '../recipe/entry.js';
import type { Fields, Given } from '../recipe/field.js';
import type { Output, Outputs } from '../recipe/output.js';
import type { LongRecipe, Recipe } from '../recipe/recipe.js';
import { followed } from '../recipe/watcher.js';
import { axesOf } from './axes.js';
import { numberOutputs } from './columns.js';
import { runLooped, runOneByOne } from './sweep-run.js';
import { makeSweep, type Sweep } from './swept.js';
import { SweptInput } from './swept-input.js';
import type { Watch } from './watch.js';

export interface SweepOptions extends Watch {
  /** Values a range is cut into when it does not say; default 61 for one range, 25 each for several. */
  readonly steps?: number;
  /** The output drawn; default the first that is a number. */
  readonly output?: string;
}

const most = 5_000_000;

/**
 * Reckons a recipe over ranges of one or several inputs: `sweep(cutterMarks, { feed: range('4 m/min', '12 m/min'), knives:
 * each([2, 3, 4]), spindleSpeed: '6000 rpm' })`. Inputs not given take their defaults.
 * @throws Refusal on wrong inputs, or on more than 5 000 000 combinations
 */
export async function sweep<F extends Fields, O extends Outputs>(
  recipe: Recipe<F, O> | LongRecipe<F, O> | RecipeEntry,
  inputs: Given<F> | Readonly<Record<string, unknown>>,
  options: SweepOptions = {},
): Promise<Sweep> {
  const r = recipe as unknown as RecipeEntry;
  const { axes, base } = axesOf(r, inputs as Readonly<Record<string, unknown>>, options.steps);
  const names = numberOutputs(r.outputs);
  const wanted = options.output ?? names[0];
  if (wanted === undefined || !names.includes(wanted))
    throw new Refusal(
      { field: 'output', says: `got ${shown(options.output)}, takes one of ${names.join(', ')}` },
      r.name,
    );
  const n = axes.reduce((a, x) => a * x.count, 1);
  if (n > most) throw new Refusal(`sweep: ${n} combinations, takes at most ${most}; use fewer steps`);
  const course = {
    recipe: r,
    base,
    inputs: axes.map(
      (axis, k) =>
        new SweptInput(
          axis,
          axes.slice(k + 1).reduce((a, x) => a * x.count, 1),
          n,
        ),
    ),
    outputs: names.map((name) => [name, r.outputs[name] as Output] as const),
    points: n,
  };
  const columns = await followed(
    options,
    r.title,
    async (watch) => (await runLooped(course, watch)) ?? (await runOneByOne(course, watch)),
  );
  return makeSweep(r, axes, columns, n, wanted);
}

export type { Sweep };
