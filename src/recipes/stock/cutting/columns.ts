import type { Pattern } from './problem.js';

/**
 * Patterns as the columns of a programme: a row for each of `sizes` sizes, then one for each stock of which there are only
 * so many; with `costs` a last row of what each pattern costs.
 */
export function columnsOf(
  patterns: readonly Pattern[],
  sizes: number,
  limited: readonly number[],
  costs?: readonly number[],
) {
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  const put = (row: number, value: number): void => {
    indices.push(row);
    values.push(value);
  };
  patterns.forEach((p, j) => {
    for (const [i, n] of p.items) put(i, n);
    const row = limited.indexOf(p.stock);
    if (row >= 0) put(sizes + row, 1);
    if (costs) put(sizes + limited.length, costs[j] as number);
    starts.push(indices.length);
  });
  return {
    format: 'csc' as const,
    numRows: sizes + limited.length + (costs ? 1 : 0),
    numCols: patterns.length,
    starts: Int32Array.from(starts),
    indices: Int32Array.from(indices),
    values: Float64Array.from(values),
  };
}
