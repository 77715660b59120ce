import type { Highs } from 'highs';
import { columnsOf } from './columns.js';
import type { CuttingProblem, Pattern, Stock } from './problem.js';

export interface Closed {
  /** 'none' proves that these patterns give no plan within the target. */
  readonly state: 'found' | 'none' | 'open';
  readonly chosen: readonly { pattern: Pattern; times: number }[];
}

/** The integer programme over a set of patterns: a plan that costs no more than `target`, or proof that there is none. */
export function chooseWhole(
  highs: Highs,
  problem: CuttingProblem,
  patterns: readonly Pattern[],
  target: number,
  seconds: number,
): Closed {
  // Where no pattern can be in a better plan there is no better plan; the solver takes no programme without columns.
  if (patterns.length === 0) return { state: 'none', chosen: [] };
  const model = highs.createModel();
  try {
    model.options.set({
      output_flag: false,
      time_limit: seconds,
      objective_target: target + 1e-6,
      mip_rel_gap: 0,
      mip_abs_gap: 1e-6,
    });
    model.passModel(modelOf(problem, patterns, target, highs.infinity));
    model.run();
    const status = model.getModelStatus() as unknown as number;
    const s = highs.constants.modelStatus as unknown as Record<string, number>;
    if (status === s['infeasible']) return { state: 'none', chosen: [] };
    const { colValue } = model.getSolution() as { colValue: Float64Array };
    const chosen = patterns.flatMap((pattern, j) => {
      const times = Math.round(colValue[j] as number);
      return times > 0 ? [{ pattern, times }] : [];
    });
    const covered = (i: number): number =>
      chosen.reduce(
        (t, { pattern, times }) => t + times * (pattern.items.find(([j]) => j === i)?.[1] ?? 0),
        0,
      );
    return problem.demand.every((d, i) => covered(i) >= d)
      ? { state: 'found', chosen }
      : { state: 'open', chosen: [] };
  } finally {
    model.dispose();
  }
}

/** A row for each size, one for each stock of which there are only so many, and one for what the plan may cost. */
function modelOf(problem: CuttingProblem, patterns: readonly Pattern[], target: number, inf: number) {
  const n = problem.sizes.length;
  const limited = problem.stock.flatMap((k, i) => (Number.isFinite(k.count) ? [i] : []));
  const costs = patterns.map((p) => (problem.stock[p.stock] as Stock).cost);
  return {
    numCols: patterns.length,
    numRows: n + limited.length + 1,
    colCost: costs,
    colLower: new Array<number>(patterns.length).fill(0),
    colUpper: patterns.map((p) =>
      Math.min(
        (problem.stock[p.stock] as Stock).count,
        ...p.items.map(([i, c]) => Math.ceil((problem.demand[i] as number) / c)),
      ),
    ),
    rowLower: [...problem.demand, ...limited.map(() => -inf), -inf],
    rowUpper: [
      ...problem.demand.map(() => inf),
      ...limited.map((k) => (problem.stock[k] as Stock).count),
      target + 1e-6,
    ],
    matrix: columnsOf(patterns, n, limited, costs),
    integrality: new Array<0 | 1>(patterns.length).fill(1),
  };
}
