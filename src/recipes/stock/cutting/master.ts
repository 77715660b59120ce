import type { Highs, Model } from 'highs';
import { columnsOf } from './columns.js';
import { patternKey, type CuttingProblem, type Pattern, type Stock } from './problem.js';

/** Answer of the linear programme over the patterns known so far. */
export interface Relaxed {
  readonly value: number;
  /** Boards cut by each pattern of the pool, a fraction allowed. */
  readonly x: Float64Array;
  /** What one more piece of each size would cost, and what one board of each stock would save (0 or less). */
  readonly prices: Float64Array;
  readonly stockPrices: Float64Array;
}

/** What the solver takes for no limit. */
const inf = 1e30;

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

  constructor(
    highs: Highs,
    readonly problem: CuttingProblem,
  ) {
    this.#n = problem.sizes.length;
    this.#limited = problem.stock.flatMap((k, i) => (Number.isFinite(k.count) ? [i] : []));
    this.#model = highs.createModel();
    this.#model.options.set({ output_flag: false, presolve: 'off', solver: 'simplex' });
    const rows = this.#n + this.#limited.length;
    const shortages = problem.sizes.map((_, i): Pattern => ({ stock: -1, items: [[i, 1]] }));
    const dear = Math.max(...problem.stock.map((k) => k.cost)) * 2;
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
      matrix: columnsOf(shortages, this.#n, this.#limited),
    });
  }

  /** Adds patterns not known yet; tells how many were new. */
  add(patterns: readonly Pattern[]): number {
    const fresh = patterns.filter((p) => {
      const key = patternKey(p);
      if (this.#known.has(key)) return false;
      this.#known.add(key);
      return true;
    });
    this.pool.push(...fresh);
    this.#model.addCols({
      cost: Float64Array.from(fresh, (p) => (this.problem.stock[p.stock] as Stock).cost),
      lower: new Float64Array(fresh.length),
      upper: new Float64Array(fresh.length).fill(inf),
      matrix: columnsOf(fresh, this.#n, this.#limited),
    });
    return fresh.length;
  }

  /** What is still wanted and still there. Patterns that would cut more than is wanted are laid aside, and so are `barred`. */
  narrow(demand: ArrayLike<number>, available: readonly number[], barred: ReadonlySet<number>): void {
    this.#model.changeRowsBounds(
      { kind: 'range', from: 0, to: this.#n + this.#limited.length - 1 },
      Float64Array.from([...Array.from(demand), ...this.#limited.map(() => -inf)]),
      Float64Array.from([
        ...new Array<number>(this.#n).fill(inf),
        ...this.#limited.map((k) => available[k] as number),
      ]),
    );
    const fits = (p: Pattern, j: number): boolean =>
      !barred.has(j) && p.items.every(([i, n]) => n <= (demand[i] as number));
    this.#model.changeColsBounds(
      { kind: 'range', from: this.#n, to: this.#n + this.pool.length - 1 },
      new Float64Array(this.pool.length),
      Float64Array.from(this.pool, (p, j) => (fits(p, j) ? inf : 0)),
    );
  }

  /** Always has an answer, since a shortage can be made up. */
  solve(): Relaxed {
    this.#model.run();
    const { colValue, rowDual } = this.#model.getSolution() as {
      colValue: Float64Array;
      rowDual: Float64Array;
    };
    const stockPrices = new Float64Array(this.problem.stock.length);
    this.#limited.forEach((k, r) => (stockPrices[k] = Math.min(0, rowDual[this.#n + r] as number)));
    return {
      value: this.#model.getObjectiveValue(),
      x: colValue.slice(this.#n),
      prices: Float64Array.from(rowDual.slice(0, this.#n), (v) => Math.max(0, v)),
      stockPrices,
    };
  }

  dispose(): void {
    this.#model.dispose();
  }
}
