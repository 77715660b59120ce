import type { Highs } from 'highs';
import { boardsBound, lengthBound, meets, roundUp } from './bounds.js';
import { chooseWhole, patternsWithin } from './closing.js';
import { bestFit, construct } from './fill.js';
import { Master, type Relaxed } from './master.js';
import { Pricer } from './pricing.js';
import {
  packingOf,
  patternOf,
  type CuttingProblem,
  type Packing,
  type Pattern,
  type Stock,
} from './problem.js';

export interface SearchOptions {
  /** When to stop, on the clock of performance.now(). */
  readonly until: number;
  readonly stopped: () => boolean;
  readonly changed: (best: number, bound: number, says: string) => void;
  /** Longest the integer programme may run at a stretch, in s: short where an interrupt is heard only between. */
  readonly patience: number;
  readonly loadSolver: () => Promise<Highs>;
}

export interface Outcome {
  readonly packing: Packing;
  readonly bound: number;
  readonly proven: boolean;
  /** What was done, in words. */
  readonly told: readonly string[];
}

interface Node {
  readonly demand: Int32Array;
  readonly available: number[];
  readonly spent: number;
  readonly fixed: readonly { pattern: Pattern; times: number }[];
}

/** Searches for the cheapest plan. Undefined when even a plain plan fails, which is so only when stock runs out. */
export async function search(problem: CuttingProblem, options: SearchOptions): Promise<Outcome | undefined> {
  const hunt = new Hunt(problem, options);
  return hunt.run();
}

class Hunt {
  readonly #p: CuttingProblem;
  readonly #o: SearchOptions;
  readonly #told: string[] = [];
  #best: Packing | undefined;
  #bound = 0;
  #lastBreath = performance.now();
  #master!: Master;
  #pricer!: Pricer;

  constructor(problem: CuttingProblem, options: SearchOptions) {
    this.#p = problem;
    this.#o = options;
  }

  async run(): Promise<Outcome | undefined> {
    const { sizes, demand, stock } = this.#p;
    this.#raise(roundUp(this.#p, lengthBound(this.#p)), 'the lengths alone');
    const only = stock[0] as Stock;
    if (stock.length === 1)
      this.#raise(boardsBound(sizes, demand, only.capacity) * only.cost, 'the long parts');
    const pieces = demand.reduce((a, b) => a + b, 0);
    const there = stock.map((k) => k.count);
    this.#take(construct(this.#p, demand, there, 0, this.#late), 'longest first');
    if (!this.#done && pieces <= 3000) this.#take(bestFit(this.#p), 'best fit');
    if (!this.#done) this.#take(construct(this.#p, demand, there, 3000, this.#late), 'fullest board first');
    if (!this.#best) return undefined;
    if (!this.#done && !this.#late()) {
      const highs = await this.#o.loadSolver();
      await this.#byPatterns(highs);
    }
    return {
      packing: this.#best,
      bound: Math.min(this.#bound, this.#best.cost),
      proven: this.#done,
      told: this.#told,
    };
  }

  get #done(): boolean {
    return this.#best !== undefined && meets(this.#best.cost, this.#bound);
  }
  readonly #late = (): boolean => this.#o.stopped() || performance.now() >= this.#o.until;

  #raise(bound: number, how: string): void {
    if (bound <= this.#bound + 1e-9) return;
    this.#bound = bound;
    this.#told.push(`bound from ${how}`);
    if (this.#best) this.#o.changed(this.#best.cost, bound, `bound from ${how}`);
  }

  #take(packing: Packing | undefined, how: string): void {
    if (!packing || (this.#best && packing.cost >= this.#best.cost - 1e-9)) return;
    this.#best = packing;
    this.#told.push(`plan by ${how}`);
    this.#o.changed(packing.cost, this.#bound, `plan by ${how}`);
  }

  /** Lets the rest of the program have its turn, so that an interrupt is heard. */
  async #breathe(): Promise<void> {
    if (performance.now() - this.#lastBreath < 25) return;
    await new Promise<void>((done) => setImmediate(done));
    this.#lastBreath = performance.now();
  }

  async #byPatterns(highs: Highs): Promise<void> {
    this.#master = new Master(highs, this.#p);
    this.#pricer = new Pricer(this.#p.sizes);
    try {
      this.#master.add((this.#best as Packing).boards.map((b) => b.pattern));
      this.#master.add(this.#alone());
      const root: Node = {
        demand: Int32Array.from(this.#p.demand),
        available: this.#p.stock.map((k) => k.count),
        spent: 0,
        fixed: [],
      };
      const relaxed = await this.#relax(root, new Set(), 'root');
      if (!relaxed || this.#done) return;
      this.#told.push(`linear programme over ${this.#master.pool.length} patterns`);
      // Straight down first; then with a few second choices; between them the integer programme has a turn.
      await this.#dive(root, new Set(), 0, 0);
      let seconds = 0.5;
      for (let round = 1; !this.#done && !this.#late(); round++) {
        if (await this.#close(highs, seconds, round)) return;
        if (this.#done || this.#late()) return;
        await this.#dive(root, new Set(), 0, Math.min(3, round));
        seconds = Math.min(this.#o.patience, seconds * 2);
      }
    } finally {
      this.#master.dispose();
    }
  }

  /** A board of each stock for each size alone, as many as fit: every size then has some pattern. */
  #alone(): Pattern[] {
    return this.#p.sizes.flatMap((l, i) =>
      this.#p.stock.flatMap((k, s) =>
        l <= k.capacity
          ? [
              {
                stock: s,
                items: [[i, Math.min(this.#p.demand[i] as number, Math.floor(k.capacity / l))]],
              } as Pattern,
            ]
          : [],
      ),
    );
  }

  /**
   * The linear programme of what is left, patterns made as they are wanted. Undefined when stopped, or when what is left
   * cannot lead below the best plan. `whole` goes on until no pattern is worth adding, even where that proves nothing new.
   */
  async #relax(
    node: Node,
    barred: ReadonlySet<number>,
    at: 'root' | 'whole' | 'below',
  ): Promise<Relaxed | undefined> {
    const { stock, sizes, step } = this.#p;
    this.#master.narrow(node.demand, node.available, barred);
    let proved = 0;
    // Prices are drawn toward those of the best bound so far (at first: worth by length), or they swing about.
    const cheapest = stock.reduce((a, k) => Math.min(a, k.cost / k.capacity), Infinity);
    let calm: Pick<Relaxed, 'prices' | 'stockPrices'> = {
      prices: Float64Array.from(sizes, (l) => l * cheapest),
      stockPrices: new Float64Array(stock.length),
    };
    let pull = at === 'below' ? 0 : 0.8;
    for (;;) {
      const r = this.#master.solve();
      await this.#breathe();
      if (!r || this.#late()) return undefined;
      // On the way down patterns need not be made while those at hand could still meet the bound.
      if (at === 'below' && step > 0 && node.spent + r.value <= this.#bound + 1e-7) return r;
      let fresh: Pattern[] = [];
      let exact = true;
      for (let alpha = pull; ; alpha = alpha > 0.3 ? alpha - 0.3 : 0) {
        const mixed = (a: Float64Array, b: Float64Array): Float64Array =>
          alpha === 0 ? a : a.map((v, i) => alpha * (b[i] as number) + (1 - alpha) * v);
        const asked = {
          prices: mixed(r.prices, calm.prices),
          stockPrices: mixed(r.stockPrices, calm.stockPrices),
        };
        const priced = this.#price(asked, node);
        exact = priced.exact;
        if (priced.bound > proved) {
          proved = priced.bound;
          calm = asked;
        }
        fresh = priced.fresh.filter(
          (p) =>
            worthOf(p, r.prices) > (stock[p.stock] as Stock).cost - (r.stockPrices[p.stock] as number) + 1e-7,
        );
        if (fresh.length > 0 || alpha === 0) break;
      }
      const total = roundUp(this.#p, node.spent + proved);
      if (at === 'root') this.#raise(total, 'the linear programme');
      if (this.#done) return undefined;
      if (at === 'below' && this.#best && total >= this.#best.cost - 1e-9) return undefined;
      const added = this.#master.add(fresh);
      if (added === 0) return { ...r, exact };
      // Once rounding cannot lift the bound further, the rest of the pricing would only polish.
      if (
        at === 'root' &&
        step > 0 &&
        total >= roundUp(this.#p, node.spent + r.value) - 1e-9 &&
        r.value - proved < 0.02
      )
        return this.#master.solve();
    }
  }

  /**
   * The dearest board of each stock at these prices, and some beside it; with them the bound that the prices prove once
   * scaled so that no board is worth more than it costs, whatever the solver's rounding.
   */
  #price(
    asked: Pick<Relaxed, 'prices' | 'stockPrices'>,
    node: Node,
  ): { fresh: Pattern[]; bound: number; exact: boolean } {
    const fresh: Pattern[] = [];
    let scale = 1;
    let exact = true;
    this.#p.stock.forEach(({ capacity, cost }, k) => {
      if ((node.available[k] as number) <= 0) return;
      const owed = cost - (asked.stockPrices[k] as number);
      const got = this.#pricer.best(asked.prices, node.demand, capacity, owed * 0.9);
      exact &&= got.exact;
      if (got.worth > owed) scale = Math.min(scale, owed / got.worth);
      if (got.worth <= owed * 0.9) return;
      fresh.push(patternOf(k, this.#pricer.counts));
      this.#more(asked.prices, node, k, owed, fresh);
    });
    if (!exact) return { fresh, bound: 0, exact };
    let bound = 0;
    for (let i = 0; i < asked.prices.length; i++)
      bound += (asked.prices[i] as number) * (node.demand[i] as number);
    bound *= scale * (1 - 1e-10);
    this.#p.stock.forEach((_, k) => {
      if (Number.isFinite(node.available[k] as number))
        bound += (node.available[k] as number) * (asked.stockPrices[k] as number);
    });
    return { fresh, bound, exact };
  }

  /** Further boards from what the dearest one leaves: their patterns differ, and one solve then learns from all of them. */
  #more(prices: Float64Array, node: Node, k: number, owed: number, fresh: Pattern[]): void {
    const left = Int32Array.from(node.demand);
    const { capacity } = this.#p.stock[k] as Stock;
    for (let round = 0; round < 12; round++) {
      for (let i = 0; i < left.length; i++) if ((this.#pricer.counts[i] as number) > 0) left[i] = 0;
      const got = this.#pricer.quick(prices, left, capacity, owed * 0.98, 1500);
      if (got.worth <= owed * 0.98) return;
      fresh.push(patternOf(k, this.#pricer.counts));
    }
  }

  /** Fixes what the linear programme is sure of, then its likeliest pattern, and so on down; `spare` second choices are tried. */
  async #dive(node: Node, barred: Set<number>, depth: number, spare: number): Promise<void> {
    if (this.#done || this.#late()) return;
    if (node.demand.every((n) => n === 0)) {
      this.#take(packingOf(this.#p, node.fixed), 'rounding the linear programme');
      return;
    }
    if (depth > 0) this.#finish(node);
    if (this.#done) return;
    const r = await this.#relax(node, barred, 'below');
    if (!r || this.#done) return;
    const sure: { pattern: Pattern; times: number }[] = [];
    let likely: { j: number; part: number }[] = [];
    for (let j = 0; j < r.x.length; j++) {
      const x = r.x[j] as number;
      if (x < 1e-6) continue;
      const times = Math.floor(x + 1e-6);
      if (times > 0) sure.push({ pattern: this.#master.pool[j] as Pattern, times });
      else likely.push({ j, part: x });
    }
    if (sure.length > 0) {
      await this.#dive(this.#fix(node, sure), new Set(barred), depth + 1, spare);
      return;
    }
    likely = likely.sort((a, b) => b.part - a.part);
    const first = likely[0];
    if (!first) return;
    const own = new Set(barred);
    for (let choice = 0; choice <= spare && choice < likely.length; choice++) {
      const pick = likely[choice] as { j: number };
      const others = choice === 0 ? likely.filter((l) => l.j !== pick.j && l.part > 0.8) : [];
      const next = [pick, ...others].map((l) => ({ pattern: this.#master.pool[l.j] as Pattern, times: 1 }));
      await this.#dive(this.#fix(node, next), new Set(own), depth + 1, spare - choice);
      if (this.#done || this.#late() || depth > 6) return;
      own.add(pick.j);
    }
  }

  #fix(node: Node, chosen: readonly { pattern: Pattern; times: number }[]): Node {
    const demand = Int32Array.from(node.demand);
    const available = [...node.available];
    const fixed = [...node.fixed];
    let spent = node.spent;
    for (const { pattern, times } of chosen) {
      // Two sure patterns may share a size; the second is then cut as often as still fits.
      const can = Math.min(
        times,
        available[pattern.stock] as number,
        ...pattern.items.map(([i, n]) => Math.floor((demand[i] as number) / n)),
      );
      if (can <= 0) continue;
      for (const [i, n] of pattern.items) demand[i] = (demand[i] as number) - n * can;
      available[pattern.stock] = (available[pattern.stock] as number) - can;
      spent += can * (this.#p.stock[pattern.stock] as Stock).cost;
      fixed.push({ pattern, times: can });
    }
    return { demand, available, spent, fixed };
  }

  /** What is left at this point, cut in the plain ways: a whole plan at every step down. */
  #finish(node: Node): void {
    for (const nodes of [0, 400]) {
      const rest = construct(this.#p, node.demand, node.available, nodes, this.#late);
      if (rest && node.spent + rest.cost < (this.#best as Packing).cost - 1e-9)
        this.#take(packingOf(this.#p, [...node.fixed, ...rest.boards]), 'rounding the linear programme');
      if (this.#done) return;
    }
  }

  /** The integer programme over all patterns that could be in a better plan; true when that settles the matter. */
  async #close(highs: Highs, seconds: number, round: number): Promise<boolean> {
    const best = (this.#best as Packing).cost;
    const below = this.#p.step > 0 ? best - this.#p.step : best - 1e-5;
    const root: Node = {
      demand: Int32Array.from(this.#p.demand),
      available: this.#p.stock.map((k) => k.count),
      spent: 0,
      fixed: [],
    };
    const r = await this.#relax(root, new Set(), 'whole');
    if (!r || this.#done || this.#late()) return this.#done;
    // Each board of a plan may fall short of its price by the tolerance of pricing: that much is left in the gap.
    const boards = (this.#best as Packing).boards.reduce((s, b) => s + b.times, 0);
    const gap = below - r.value + 3e-7 * (boards + 10);
    const all =
      r.exact === true
        ? patternsWithin(this.#p, r.prices, r.stockPrices, gap, 3000 * 4 ** Math.min(round, 4), this.#late)
        : undefined;
    const used = all ?? this.#master.pool;
    this.#o.changed(
      best,
      this.#bound,
      `integer programme over ${all ? 'all ' : ''}${used.length} patterns${all ? ' of a better plan' : ''}`,
    );
    await new Promise<void>((done) => setImmediate(done));
    if (this.#late()) return false;
    const got = chooseWhole(
      highs,
      this.#p,
      used,
      below,
      Math.max(0.05, Math.min(seconds, (this.#o.until - performance.now()) / 1000)),
      this.#late,
    );
    if (got.state === 'found') this.#take(packingOf(this.#p, got.chosen), 'integer programming');
    if (all && got.state === 'none')
      this.#raise(best, 'the integer programme over every pattern of a better plan');
    return this.#done;
  }
}

const worthOf = (p: Pattern, prices: Float64Array): number =>
  p.items.reduce((s, [i, n]) => s + n * (prices[i] as number), 0);
