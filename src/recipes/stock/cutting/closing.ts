import type { Highs } from 'highs';
import type { CuttingProblem, Pattern, Stock } from './problem.js';

/**
 * Every pattern that a plan better than the best one known could use: at the prices of the linear programme a pattern
 * that wastes more than the gap cannot be in it. Undefined when there are more than `most`.
 */
export function patternsWithin(
  problem: CuttingProblem,
  prices: Float64Array,
  stockPrices: Float64Array,
  gap: number,
  most: number,
  stop: () => boolean,
): Pattern[] | undefined {
  const { sizes, demand } = problem;
  const found: Pattern[] = [];
  // Worth for length decides the bound; a size worth nothing comes last and fills what is left.
  const order = sizes
    .map((_, i) => i)
    .sort(
      (a, b) =>
        (prices[b] as number) / (sizes[b] as number) - (prices[a] as number) / (sizes[a] as number) || a - b,
    );
  const least = new Array<number>(order.length + 1).fill(Infinity);
  for (let j = order.length - 1; j >= 0; j--)
    least[j] = Math.min(least[j + 1] as number, sizes[order[j] as number] as number);
  const trial: [number, number][] = [];
  let nodes = 0;
  for (let k = 0; k < problem.stock.length; k++) {
    const { capacity, cost } = problem.stock[k] as Stock;
    const needed = cost - (stockPrices[k] as number) - gap - 1e-7;
    let skipped: number[] = [];
    const walk = (from: number, room: number, worth: number): boolean => {
      if (++nodes % 4096 === 0 && (stop() || nodes > most * 400)) return false;
      let j = from;
      for (; j < order.length; j++) {
        const i = order[j] as number;
        const l = sizes[i] as number;
        const rate = (prices[i] as number) / l;
        if (worth + room * rate < needed) return true;
        if (room < (least[j] as number)) break;
        if (l > room) continue;
        const max = Math.min(demand[i] as number, Math.floor(room / l));
        for (let n = max; n > 0; n--) {
          trial.push([i, n]);
          // A size of which one more would fit must not be left out for nothing: such a pattern is part of a fuller one.
          if (n < max) skipped.push(l);
          const going = walk(j + 1, room - n * l, worth + n * (prices[i] as number));
          if (n < max) skipped.pop();
          trial.pop();
          if (!going) return false;
        }
        skipped.push(l);
        const going = walk(j + 1, room, worth);
        skipped.pop();
        return going;
      }
      if (worth >= needed && trial.length > 0 && !skipped.some((l) => l <= room)) {
        found.push({ stock: k, items: [...trial].sort((a, b) => a[0] - b[0]) });
        if (found.length > most) return false;
      }
      return true;
    };
    skipped = [];
    if (!walk(0, capacity, 0)) return undefined;
  }
  return found;
}

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
  stopped: () => boolean,
): Closed {
  const n = problem.sizes.length;
  const limited = problem.stock.flatMap((k, i) => (Number.isFinite(k.count) ? [i] : []));
  const rows = n + limited.length + 1;
  const inf = highs.infinity;
  const starts = [0];
  const indices: number[] = [];
  const values: number[] = [];
  for (const p of patterns) {
    for (const [i, c] of p.items) {
      indices.push(i);
      values.push(c);
    }
    const row = limited.indexOf(p.stock);
    if (row >= 0) {
      indices.push(n + row);
      values.push(1);
    }
    indices.push(rows - 1);
    values.push((problem.stock[p.stock] as Stock).cost);
    starts.push(indices.length);
  }
  const model = highs.createModel();
  try {
    model.options.set({
      output_flag: false,
      time_limit: seconds,
      objective_target: target + 1e-6,
      mip_rel_gap: 0,
      mip_abs_gap: 1e-6,
    });
    model.passModel({
      numCols: patterns.length,
      numRows: rows,
      colCost: patterns.map((p) => (problem.stock[p.stock] as Stock).cost),
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
      matrix: { format: 'csc', numRows: rows, numCols: patterns.length, starts, indices, values },
      integrality: new Array<0 | 1>(patterns.length).fill(1) as never,
    });
    model.run({
      // Heard only where the solver has a thread of its own: elsewhere nothing can have changed since it began.
      [highs.constants.callbackType.mipInterrupt]: (event) => {
        if (stopped()) event.interrupt();
      },
    });
    const status = model.getModelStatus() as unknown as number;
    const s = highs.constants.modelStatus as unknown as Record<string, number>;
    if (status === s['infeasible']) return { state: 'none', chosen: [] };
    const { colValue } = model.getSolution() as { colValue: Float64Array };
    const chosen = patterns.flatMap((pattern, j) => {
      const times = Math.round(colValue[j] ?? 0);
      return times > 0 ? [{ pattern, times }] : [];
    });
    const covered = new Array<number>(n).fill(0);
    for (const { pattern, times } of chosen)
      for (const [i, c] of pattern.items) covered[i] = (covered[i] as number) + c * times;
    const whole =
      covered.every((c, i) => c >= (problem.demand[i] as number)) &&
      limited.every(
        (k) =>
          chosen.reduce((t, c) => t + (c.pattern.stock === k ? c.times : 0), 0) <=
          (problem.stock[k] as Stock).count,
      );
    return whole ? { state: 'found', chosen } : { state: 'open', chosen: [] };
  } finally {
    model.dispose();
  }
}
