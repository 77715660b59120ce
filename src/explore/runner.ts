import type { RecipeEntry } from '../recipe/entry.js';
import { bareOf, loopOf } from '../recipe/recipe.js';
import type { Sequence } from './draws.js';
import type { Spread } from './spread.js';
import { inParts, mostInPart, type Watch } from './watch.js';

/** Reckons one output for `n` draws of a sequence; `dimension` tells which of its dimensions an input takes. */
export type Run = (n: number, draws: Sequence, dimension: (input: number) => number) => Promise<Float64Array>;

/**
 * What reckons a recipe's output for many draws round a middle that was read and checked: as one compiled loop where
 * the recipe has one, else point by point. A spread never leaves its field's limits, so a draw needs no check of its own.
 * Progress is told as a share of `all` draws of the runs there will be.
 */
export function runner(
  r: RecipeEntry,
  base: Readonly<Record<string, unknown>>,
  spreads: readonly Spread[],
  output: string,
  watch: Watch,
  all: number,
): Run {
  const reckon = looped(r, base, spreads, output) ?? oneByOne(r, base, spreads, output);
  const shares = spreads.map(() => new Float64Array(mostInPart));
  let before = 0;
  const ofAll = (n: number): Watch => ({
    signal: watch.signal,
    onProgress: ({ done, says }) => watch.onProgress?.({ done: (before + (done as number) * n) / all, says }),
  });
  return async (n, draws, dimension) => {
    const values = new Float64Array(n);
    await inParts(ofAll(n), n, 'drawing', (start, end) => {
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
type Reckon = (shares: readonly Float64Array[], answers: Float64Array, start: number, end: number) => void;

function looped(
  r: RecipeEntry,
  base: Readonly<Record<string, unknown>>,
  spreads: readonly Spread[],
  output: string,
): Reckon | undefined {
  if (!spreads.every((s) => s.numeric)) return undefined;
  const names = spreads.map((s) => s.name);
  const loop = loopOf(r, base, names, (_, answer) => ({ [output]: answer[output] ?? NaN }));
  if (!loop) return undefined;
  return (shares, answers, start, end) => {
    const columns: Record<string, Float64Array> = {};
    shares.forEach((column, k) => {
      const quantile = (spreads[k] as Spread).quantile as (u: number) => number;
      for (let i = 0; i < column.length; i++) column[i] = quantile(column[i] as number);
      columns[names[k] as string] = column;
    });
    loop(start, end, columns, { [output]: answers });
  };
}

function oneByOne(
  r: RecipeEntry,
  base: Readonly<Record<string, unknown>>,
  spreads: readonly Spread[],
  output: string,
): Reckon {
  const reckon = bareOf(r);
  const point: Record<string, unknown> = { ...base };
  return (shares, answers, start, end) => {
    for (let i = start; i < end; i++) {
      for (let k = 0; k < spreads.length; k++) {
        const s = spreads[k] as Spread;
        point[s.name] = s.quantile((shares[k] as Float64Array)[i - start] as number);
      }
      answers[i] = (reckon(point)[output] as number | undefined) ?? NaN;
    }
  };
}
