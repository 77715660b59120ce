import { Refusal, shown } from '../quantities/refusal.js';
import type { RecipeEntry } from '../recipe/entry.js';
import type { Field, Fields } from '../recipe/field.js';
import type { Outputs } from '../recipe/output.js';
import type { Recipe } from '../recipe/recipe.js';
import { followed } from '../recipe/watcher.js';
import { numberOutputs, quantityPart, textOf } from './columns.js';
import { makeDistribution, type Distribution } from './distribution.js';
import { sequence } from './draws.js';
import { influenceOf, runsFor } from './influence.js';
import { runner } from './runner.js';
import { spreadOf, type Spread } from './spread.js';
import { targetOf } from './target.js';
import type { Watch } from './watch.js';

export interface UncertainOptions extends Watch {
  /** Draws of the distribution, 100 to 5 000 000; default 65 536. */
  readonly draws?: number;
  /** Same seed, same draws. Default 1. */
  readonly seed?: number;
  /** The output looked at; default the first that is a number. */
  readonly output?: string;
  /** Limits: the chance that the output is at most or at least this. */
  readonly atMost?: unknown;
  readonly atLeast?: unknown;
  /** False leaves out which input matters most, which takes as many draws again for each input (at most 16 384). */
  readonly influence?: boolean;
}

/**
 * What uncertain inputs do to an answer: `uncertain(movementAcross, { width: '640 mm +- 2 mm', from: '8 % .. 11 %', ... })`.
 * At least one input must spread; see {@link spreadOf} for how one is written. Draws are seeded and fill the space evenly.
 * @throws Refusal on wrong inputs, or when an input's spread leaves its limits
 */
export async function uncertain<F extends Fields, O extends Outputs>(
  recipe: Recipe<F, O> | RecipeEntry,
  inputs: Readonly<Record<string, unknown>>,
  options: UncertainOptions = {},
): Promise<Distribution> {
  const r = recipe as unknown as RecipeEntry;
  if (r.long) throw new Refusal('uncertain takes a recipe that answers at once', r.name);
  const draws = options.draws ?? 65_536;
  if (!(Number.isInteger(draws) && draws >= 100 && draws <= 5_000_000))
    throw new Refusal(
      { field: 'draws', says: `got ${shown(options.draws)}, takes a whole number from 100 to 5 000 000` },
      r.name,
    );
  if (options.seed !== undefined && !Number.isInteger(options.seed))
    throw new Refusal({ field: 'seed', says: `got ${shown(options.seed)}, takes a whole number` }, r.name);
  const names = numberOutputs(r.outputs);
  const output = options.output ?? (names[0] as string);
  if (!names.includes(output))
    throw new Refusal(
      { field: 'output', says: `got ${shown(options.output)}, takes one of ${names.join(', ')}` },
      r.name,
    );
  const spreads: Spread[] = [];
  const middle: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(inputs)) {
    const field = r.inputs[name] as Field | undefined;
    const spread = field ? spreadOf(name, field, value) : undefined;
    if (spread) spreads.push(spread);
    else middle[name] = value;
  }
  if (spreads.length === 0)
    throw new Refusal(
      "uncertain: no input spreads; takes one such as '900 mm +- 2 mm', '880 mm .. 920 mm' or normal(...)",
      r.name,
    );
  const base = baseOf(r, middle, spreads);
  const seed = options.seed ?? 1;
  const weighed = options.influence === false || spreads.length < 2 ? 0 : Math.min(draws, 16_384);
  const limits = {
    most: options.atMost === undefined ? undefined : targetOf(r, output, options.atMost),
    least: options.atLeast === undefined ? undefined : targetOf(r, output, options.atLeast),
  };
  return followed(options, r.title, async (watch) => {
    const all = draws + weighed * runsFor(spreads.length);
    const run = runner(r, base, spreads, output, watch, all);
    const values = (await run(draws, sequence(spreads.length, seed), (k) => k)).sort();
    if (!Number.isFinite(values[0]) || !Number.isFinite(values[draws - 1]))
      throw new Refusal('uncertain: some draws give no finite answer; make the spreads narrower', r.name);
    const influence = weighed === 0 ? [] : await influenceOf(run, spreads, weighed, seed);
    return makeDistribution(r, output, values, influence, limits);
  });
}

/** Reads the fixed inputs with the middle of each spread in its place, so that all is checked once. */
function baseOf(
  r: RecipeEntry,
  middle: Readonly<Record<string, unknown>>,
  spreads: readonly Spread[],
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
export type { Influence } from './influence.js';
