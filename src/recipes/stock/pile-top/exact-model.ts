// A mixed integer programme written down row by row, and handed to the solver column by column.
import type { Highs } from 'highs';

/** What no solution goes below; 0 where the solver does not say, since no cost is negative where it is asked for. */
const dualBound = (value: unknown): number =>
  typeof value === 'number' && Number.isFinite(value) ? Math.max(0, value) : 0;

type Term = readonly [column: number, factor: number];

export class ExactModel {
  readonly #lower: number[] = [];
  readonly #upper: number[] = [];
  readonly #cost: number[] = [];
  readonly #whole: (0 | 1)[] = [];
  readonly #columns: Term[][] = [];
  readonly #rowLower: number[] = [];
  readonly #rowUpper: number[] = [];

  /** A column between two ends; `cost` counts in what is made least. @returns its number */
  column(lower: number, upper: number, cost = 0, whole = false): number {
    this.#lower.push(lower);
    this.#upper.push(upper);
    this.#cost.push(cost);
    this.#whole.push(whole ? 1 : 0);
    return this.#columns.push([]) - 1;
  }

  /** 0 or 1. */
  choice(cost = 0): number {
    return this.column(0, 1, cost, true);
  }

  /** The sum of factors times columns lies between two ends. */
  row(lower: number, terms: readonly Term[], upper: number): void {
    const row = this.#rowLower.push(lower) - 1;
    this.#rowUpper.push(upper);
    const sums = new Map<number, number>();
    for (const [column, factor] of terms) sums.set(column, (sums.get(column) ?? 0) + factor);
    for (const [column, factor] of sums) (this.#columns[column] as Term[]).push([row, factor]);
  }

  /** What is made least may not exceed this. */
  atMost(value: number): void {
    this.row(
      -Infinity,
      this.#cost.map((c, column): Term => [column, c]).filter(([, c]) => c !== 0),
      value,
    );
  }

  /**
   * The least of the costs. 'none': no solution exists; 'open': the limit came first.
   * @param seconds and @param nodes: limits of the search
   */
  solve(
    highs: Highs,
    seconds: number,
    nodes: number,
  ): { state: 'best'; values: Float64Array } | { state: 'none' | 'open' } {
    const model = highs.createModel();
    try {
      model.options.set({
        output_flag: false,
        time_limit: seconds,
        mip_max_nodes: nodes,
        mip_rel_gap: 0,
        mip_abs_gap: 1e-6,
      });
      model.passModel(this.#written(highs.infinity));
      model.run();
      const status = model.getModelStatus() as unknown as number;
      const s = highs.constants.modelStatus as unknown as Record<string, number>;
      if (status === s['infeasible']) return { state: 'none' };
      if (status !== s['optimal']) return { state: 'open' };
      return { state: 'best', values: (model.getSolution() as { colValue: Float64Array }).colValue };
    } finally {
      model.dispose();
    }
  }

  /** The best solution found in so many seconds, and what no solution goes below. The programme has a solution. */
  best(highs: Highs, seconds: number): { values: Float64Array; bound: number; proved: boolean } {
    const model = highs.createModel();
    try {
      model.options.set({ output_flag: false, time_limit: seconds, mip_rel_gap: 0, mip_abs_gap: 1e-4 });
      model.passModel(this.#written(highs.infinity));
      model.run();
      const status = model.getModelStatus() as unknown as number;
      const s = highs.constants.modelStatus as unknown as Record<string, number>;
      const proved = status === s['optimal'];
      const values = (model.getSolution() as { colValue: Float64Array }).colValue;
      return {
        values,
        proved,
        bound: proved ? model.getObjectiveValue() : dualBound(model.info.get('mip_dual_bound')),
      };
    } finally {
      model.dispose();
    }
  }

  #written(infinity: number) {
    const finite = (x: number): number => (x === Infinity ? infinity : x === -Infinity ? -infinity : x);
    const starts = [0];
    const indices: number[] = [];
    const values: number[] = [];
    for (const column of this.#columns) {
      for (const [row, factor] of column) {
        indices.push(row);
        values.push(factor);
      }
      starts.push(indices.length);
    }
    return {
      numCols: this.#columns.length,
      numRows: this.#rowLower.length,
      colCost: this.#cost,
      colLower: this.#lower.map(finite),
      colUpper: this.#upper.map(finite),
      rowLower: this.#rowLower.map(finite),
      rowUpper: this.#rowUpper.map(finite),
      matrix: {
        format: 'csc' as const,
        numRows: this.#rowLower.length,
        numCols: this.#columns.length,
        starts,
        indices,
        values,
      },
      integrality: this.#whole,
    };
  }
}
