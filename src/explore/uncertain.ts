import { InputError, inspectValue } from '../units/input-error.js';
import type { AnyRecipe } from '../engine/any-recipe.js';
import type { Field, Fields } from '../engine/field.js';
import type { Outputs } from '../engine/output.js';
import type { Recipe } from '../engine/recipe.js';
import { withProgress } from '../engine/progress.js';
import { numberOutputs, quantityPart, textOf } from './frame-columns.js';
import { makeDistribution, type Distribution } from './distribution-result.js';
import { quasiRandom } from './samples.js';
import { sensitivityOf, runsFor } from './sensitivity.js';
import { makeSampler } from './sampler.js';
import { inputDistribution, type InputDistribution } from './distributions.js';
import { targetOf } from './target.js';
import type { ProgressOptions } from './chunked-work.js';

export interface UncertainOptions extends ProgressOptions {
  /** Draws of the distribution, 100 to 5 000 000; default 65 536. */
  readonly samples?: number;
  /** Same seed, same draws. Default 1. */
  readonly seed?: number;
  /** The output looked at; default the first that is a number. */
  readonly output?: string;
  /** Limits: the chance that the output is at most or at least this. */
  readonly atMost?: unknown;
  readonly atLeast?: unknown;
  /** False leaves out which input matters most, which takes as many draws again for each input (at most 16 384). */
  readonly sensitivity?: boolean;
}

/**
 * What uncertain inputs do to an answer: `uncertain(movementAcross, { width: '640 mm +- 2 mm', from: '8 % .. 11 %', ... })`.
 * At least one input must spread; see {@link inputDistribution} for how one is written. Draws are seeded and fill the space evenly.
 * @throws InputError on wrong inputs, or when an input's spread leaves its limits
 */
export async function uncertain<F extends Fields, O extends Outputs>(
  recipe: Recipe<F, O> | AnyRecipe,
  inputs: Readonly<Record<string, unknown>>,
  options: UncertainOptions = {},
): Promise<Distribution> {
  const r = recipe as unknown as AnyRecipe;
  if (r.isAsync) throw new InputError('uncertain takes a recipe that answers at once', r.name);
  const draws = options.samples ?? 65_536;
  if (!(Number.isInteger(draws) && draws >= 100 && draws <= 5_000_000))
    throw new InputError(
      {
        field: 'draws',
        message: `got ${inspectValue(options.samples)}, takes a whole number from 100 to 5 000 000`,
      },
      r.name,
    );
  if (options.seed !== undefined && !Number.isInteger(options.seed))
    throw new InputError(
      { field: 'seed', message: `got ${inspectValue(options.seed)}, takes a whole number` },
      r.name,
    );
  const names = numberOutputs(r.outputs);
  const output = options.output ?? names[0] ?? '';
  if (!names.includes(output))
    throw new InputError(
      { field: 'output', message: `got ${inspectValue(options.output)}, takes one of ${names.join(', ')}` },
      r.name,
    );
  const spreads: InputDistribution[] = [];
  const middle: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(inputs)) {
    const field = r.inputs[name];
    const spread = field ? inputDistribution(name, field, value) : undefined;
    if (spread) spreads.push(spread);
    else middle[name] = value;
  }
  if (spreads.length === 0)
    throw new InputError(
      "uncertain: no input spreads; takes one such as '900 mm +- 2 mm', '880 mm .. 920 mm' or normal(...)",
      r.name,
    );
  const base = baseOf(r, middle, spreads);
  const seed = options.seed ?? 1;
  const weighed = options.sensitivity === false || spreads.length < 2 ? 0 : Math.min(draws, 16_384);
  const limits = {
    most: options.atMost === undefined ? undefined : targetOf(r, output, options.atMost),
    least: options.atLeast === undefined ? undefined : targetOf(r, output, options.atLeast),
  };
  return withProgress(options, r.title, async (watch) => {
    const all = draws + weighed * runsFor(spreads.length);
    const run = makeSampler(r, base, spreads, output, watch, all);
    const values = (await run(draws, quasiRandom(spreads.length, seed), (k) => k)).sort();
    if (!Number.isFinite(values[0]) || !Number.isFinite(values[draws - 1]))
      throw new InputError('uncertain: some draws give no finite answer; make the spreads narrower', r.name);
    const sensitivity = weighed === 0 ? [] : await sensitivityOf(run, spreads, weighed, seed);
    return makeDistribution(r, output, values, sensitivity, limits);
  });
}

/** Reads the fixed inputs with the middle of each spread in its place, so that all is checked once. */
function baseOf(
  r: AnyRecipe,
  middle: Readonly<Record<string, unknown>>,
  spreads: readonly InputDistribution[],
): Record<string, unknown> {
  const mids: Record<string, unknown> = {};
  const fixed: Record<string, unknown> = { ...middle };
  for (const s of spreads) {
    mids[s.name] = s.quantile(0.5);
    // The example's value stands in for reading; the number itself replaces it below.
    fixed[s.name] = (r.example as Record<string, unknown>)[s.name] ?? (r.inputs[s.name] as Field).default;
    if (fixed[s.name] === undefined && s.numeric) {
      const f = quantityPart(r.inputs[s.name] as Field);
      fixed[s.name] = textOf(f.kind, mids[s.name] as number).replace(/\u202f/g, '');
    }
  }
  return { ...r.read(fixed), ...mids };
}

export type { Distribution };
export type { Sensitivity } from './sensitivity.js';
