import type { AnyRecipe } from '../engine/any-recipe.js';
import { uncheckedSolve, compileSweep } from '../engine/recipe.js';
import type { Sequence } from './samples.js';
import type { InputDistribution } from './distributions.js';
import { inChunks, maxChunk, type ProgressOptions } from './chunked-work.js';

/** Reckons one output for `n` draws of a sequence; `dimension` tells which of its dimensions an input takes. */
export type Sampler = (
  n: number,
  draws: Sequence,
  dimension: (input: number) => number,
) => Promise<Float64Array>;

/**
 * What reckons a recipe's output for many draws round a middle that was read and checked: as one compiled loop where
 * the recipe has one, else point by point. A spread never leaves its field's limits, so a draw needs no check of its own.
 * Progress is told as a share of `all` draws of the runs there will be.
 */
export function makeSampler(
  r: AnyRecipe,
  base: Readonly<Record<string, unknown>>,
  spreads: readonly InputDistribution[],
  output: string,
  watch: ProgressOptions,
  all: number,
): Sampler {
  const reckon = compiledBatch(r, base, spreads, output) ?? pointByPoint(r, base, spreads, output);
  const shares = spreads.map(() => new Float64Array(maxChunk));
  let before = 0;
  const ofAll = (n: number): ProgressOptions => ({
    signal: watch.signal,
    onProgress: ({ done, message: message }) =>
      watch.onProgress?.({ done: (before + (done as number) * n) / all, message: message }),
  });
  return async (n, draws, dimension) => {
    const values = new Float64Array(n);
    await inChunks(ofAll(n), n, 'drawing', (start, end) => {
      const u = shares.map((column, k) => {
        const part = column.subarray(0, end - start);
        draws(dimension(k), start, part);
        return part;
      });
      reckon(u, values, start, end);
    });
    before += n;
    return values;
  };
}

/** Takes a column of shares from 0 to 1 for each spread, which it may overwrite, and fills the answers of points `start` to before `end`. */
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
  const loop = compileSweep(r, base, names, (_, answer) => ({ [output]: answer[output] ?? NaN }));
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
  const reckon = uncheckedSolve(r);
  const point: Record<string, unknown> = { ...base };
  return (shares, answers, start, end) => {
    for (let i = start; i < end; i++) {
      for (let k = 0; k < spreads.length; k++) {
        const s = spreads[k] as InputDistribution;
        point[s.name] = s.quantile((shares[k] as Float64Array)[i - start] as number);
      }
      answers[i] = (reckon(point)[output] as number | undefined) ?? NaN;
    }
  };
}
