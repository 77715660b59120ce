import type { Highs, Model } from 'highs';
import { patternKey, type CuttingProblem, type Pattern, type Stock } from './problem.js';

/** Answer of the linear programme over the patterns known so far. */
export interface Relaxed {
  readonly value: number;
  /** Boards cut by each pattern of the pool, a fraction allowed. */
  readonly x: Float64Array;
  /** What one more piece of each size would cost, and what one board of each stock would save (0 or less). */
  readonly prices: Float64Array;
  readonly stockPrices: Float64Array;
  /** Whether it was proved that no pattern beats these prices. */
  readonly exact?: boolean;
}

/**
 * The linear programme that chooses among patterns: enough of every piece, no more boards than there are. Kept in the
 * solver between solves, so that a new pattern or a changed demand costs a few pivots.
 */
export class Master {
  readonly pool: Pattern[] = [];
  readonly #known = new Set<string>();
  readonly #model: Model;
  readonly #n: number;
  readonly #limited: number[];
  #upper: number[] = [];

  constructor(
    highs: Highs,
    readonly problem: CuttingProblem,
  ) {
    this.#n = problem.sizes.length;
    this.#limited = problem.stock.flatMap((k, i) => (Number.isFinite(k.count) ? [i] : []));
    this.#model = highs.createModel();
    this.#model.options.set({ output_flag: false, presolve: 'off', solver: 'simplex' });
    const rows = this.#n + this.#limited.length;
    const dear = problem.stock.reduce((a, k) => Math.max(a, k.cost), 0) * 2;
    const inf = highs.infinity;
    this.#model.passModel({
      // One column a size that makes up a shortage at twice the dearest board: the programme always has an answer.
      numCols: this.#n,
      numRows: rows,
      colCost: new Array<number>(this.#n).fill(dear),
      colLower: new Array<number>(this.#n).fill(0),
      colUpper: new Array<number>(this.#n).fill(inf),
      rowLower: [...problem.demand, ...this.#limited.map(() => -inf)],
      rowUpper: [
        ...problem.demand.map(() => inf),
        ...this.#limited.map((k) => (problem.stock[k] as Stock).count),
      ],
      matrix: {
        format: 'csc',
        numRows: rows,
        numCols: this.#n,
        starts: Array.from({ length: this.#n + 1 }, (_, i) => i),
        indices: Array.from({ length: this.#n }, (_, i) => i),
        values: new Array<number>(this.#n).fill(1),
      },
    });
  }

  /** Adds patterns not known yet; tells how many were new. */
  add(patterns: readonly Pattern[], infinity = 1e30): number {
    const fresh = patterns.filter((p) => {
      const key = patternKey(p);
      if (this.#known.has(key)) return false;
      this.#known.add(key);
      return true;
    });
    if (fresh.length === 0) return 0;
    const starts = [0];
    const indices: number[] = [];
    const values: number[] = [];
    for (const p of fresh) {
      for (const [i, n] of p.items) {
        indices.push(i);
        values.push(n);
      }
      const row = this.#limited.indexOf(p.stock);
      if (row >= 0) {
        indices.push(this.#n + row);
        values.push(1);
      }
      starts.push(indices.length);
      this.pool.push(p);
      this.#upper.push(infinity);
    }
    this.#model.addCols({
      cost: Float64Array.from(fresh, (p) => (this.problem.stock[p.stock] as Stock).cost),
      lower: new Float64Array(fresh.length),
      upper: new Float64Array(fresh.length).fill(infinity),
      matrix: {
        format: 'csc',
        numRows: this.#n + this.#limited.length,
        numCols: fresh.length,
        starts: Int32Array.from(starts),
        indices: Int32Array.from(indices),
        values: Float64Array.from(values),
      },
    });
    return fresh.length;
  }

  /** What is still wanted and still there. Patterns that would cut more than is wanted are laid aside, and so are `barred`. */
  narrow(
    demand: ArrayLike<number>,
    available: readonly number[],
    barred: ReadonlySet<number> = new Set(),
    infinity = 1e30,
  ): void {
    const inf = 1e30;
    this.#model.changeRowsBounds(
      { kind: 'range', from: 0, to: this.#n + this.#limited.length - 1 },
      Float64Array.from([...Array.from(demand as ArrayLike<number>), ...this.#limited.map(() => -inf)]),
      Float64Array.from([
        ...new Array<number>(this.#n).fill(inf),
        ...this.#limited.map((k) => available[k] as number),
      ]),
    );
    const change: number[] = [];
    this.pool.forEach((p, j) => {
      const fits = !barred.has(j) && p.items.every(([i, n]) => n <= (demand[i] as number));
      const upper = fits ? infinity : 0;
      if (this.#upper[j] !== upper) {
        this.#upper[j] = upper;
        change.push(j);
      }
    });
    if (change.length > 0) {
      this.#model.changeColsBounds(
        { kind: 'set', indices: change.map((j) => j + this.#n) },
        new Float64Array(change.length),
        Float64Array.from(change, (j) => this.#upper[j] as number),
      );
    }
  }

  solve(): Relaxed | undefined {
    this.#model.run();
    const { colValue, rowDual } = this.#model.getSolution() as {
      colValue: Float64Array;
      rowDual: Float64Array;
    };
    const value = this.#model.getObjectiveValue();
    if (!Number.isFinite(value) || colValue.length === 0) return undefined;
    const stockPrices = new Float64Array(this.problem.stock.length);
    this.#limited.forEach((k, r) => (stockPrices[k] = Math.min(0, rowDual[this.#n + r] as number)));
    return {
      value,
      x: colValue.slice(this.#n),
      prices: Float64Array.from(rowDual.slice(0, this.#n), (v) => Math.max(0, v)),
      stockPrices,
    };
  }

  dispose(): void {
    this.#model.dispose();
  }
}
