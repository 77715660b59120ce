import type { AnyRecipe } from '../engine/any-recipe.js';
import { uncheckedSolve, compileSweep } from '../engine/recipe-registry.js';
import type { SamplePlan } from './sample-plan.js';
import type { Sequence } from './samples.js';
import type { InputDistribution } from './distributions.js';
import { inChunks, maxChunk, type ProgressOptions } from './chunked-work.js';

/** Computes one output for `n` samples of a sequence; `dimension` tells which of its dimensions stands for one of the plan. */
export type Sampler = (
  n: number,
  samples: Sequence,
  dimension: (planned: number) => number,
) => Promise<Float64Array>;

/**
 * Computes a recipe's output for many samples round a middle that was read and checked: as one compiled loop where the
 * recipe is a chain of formulas, else point by point. A distribution never leaves its field's limits, so a sample needs no
 * check of its own. Progress is reported as a share of `all` samples of the runs there will be.
 */
export function makeSampler(
  r: AnyRecipe,
  base: Readonly<Record<string, unknown>>,
  spreads: readonly InputDistribution[],
  plan: SamplePlan,
  output: string,
  watch: ProgressOptions,
  all: number,
): Sampler {
  const evaluate = compiledBatch(r, base, spreads, output) ?? pointByPoint(r, base, spreads, output);
  const buffers = (count: number): Float64Array[] =>
    Array.from({ length: count }, () => new Float64Array(maxChunk));
  const [columns, shares] = [buffers(plan.dimensions), buffers(spreads.length)];
  let before = 0;
  const ofAll = (n: number): ProgressOptions => ({
    signal: watch.signal,
    onProgress: ({ done, message }) =>
      watch.onProgress?.({ done: (before + (done as number) * n) / all, message }),
  });
  return async (n, samples, dimension) => {
    const values = new Float64Array(n);
    await inChunks(ofAll(n), n, 'sampling', (start, end) => {
      const drawn = columns.map((column, d) => {
        const part = column.subarray(0, end - start);
        samples(dimension(d), start, part);
        return part;
      });
      const u = shares.map((column) => column.subarray(0, end - start));
      plan.shares(drawn, u);
      evaluate(u, values, start, end);
    });
    before += n;
    return values;
  };
}

/** Takes a column of shares from 0 to 1 for each input, which it may overwrite, and fills the answers of points `start` to before `end`. */
type BatchEvaluator = (
  shares: readonly Float64Array[],
  answers: Float64Array,
  start: number,
  end: number,
) => void;

function compiledBatch(
  r: AnyRecipe,
  base: Readonly<Record<string, unknown>>,
  spreads: readonly InputDistribution[],
  output: string,
): BatchEvaluator | undefined {
  if (!spreads.every((s) => s.numeric)) return undefined;
  const names = spreads.map((s) => s.name);
  const loop = compileSweep(
    r,
    base,
    (graph) => Object.fromEntries(names.map((name) => [name, graph.input(name)])),
    (_, answer) => ({ [output]: answer[output] ?? NaN }),
  );
  if (!loop) return undefined;
  return (shares, answers, start, end) => {
    const columns: Record<string, Float64Array> = {};
    shares.forEach((column, k) => {
      const quantile = (spreads[k] as InputDistribution).quantile as (u: number) => number;
      for (let i = 0; i < column.length; i++) column[i] = quantile(column[i] as number);
      columns[names[k] as string] = column;
    });
    loop(start, end, columns, { [output]: answers });
  };
}

function pointByPoint(
  r: AnyRecipe,
  base: Readonly<Record<string, unknown>>,
  spreads: readonly InputDistribution[],
  output: string,
): BatchEvaluator {
  const solve = uncheckedSolve(r);
  const point: Record<string, unknown> = { ...base };
  return (shares, answers, start, end) => {
    for (let i = start; i < end; i++) {
      for (let k = 0; k < spreads.length; k++) {
        const s = spreads[k] as InputDistribution;
        point[s.name] = s.quantile((shares[k] as Float64Array)[i - start] as number);
      }
      answers[i] = (solve(point)[output] as number | undefined) ?? NaN;
    }
  };
}
