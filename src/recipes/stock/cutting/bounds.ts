import type { CuttingProblem } from './problem.js';

/** Slack for bounds that come from floating arithmetic, on a scale where a board costs about 1. */
const slack = 1e-6;

/**
 * Lower bound on the boards of one length (Martello and Toth's second bound): for each limit on "small", big pieces need
 * boards of their own and small ones fill what the middling leave.
 */
export function boardsBound(sizes: readonly number[], demand: readonly number[], capacity: number): number {
  const limits = [0, ...sizes.filter((l) => l * 2 <= capacity)];
  return limits.reduce((best, alpha) => {
    let alone = 0;
    let half = 0;
    let spare = 0;
    let small = 0;
    sizes.forEach((l, i) => {
      const n = demand[i] as number;
      if (l > capacity - alpha) alone += n;
      else if (l * 2 > capacity) {
        half += n;
        spare += n * (capacity - l);
      } else if (l >= alpha) small += n * l;
    });
    return Math.max(best, alone + half + Math.max(0, Math.ceil((small - spare) / capacity - 1e-9)));
  }, 0);
}

/** Cost below which no plan can be, from lengths alone: each millimetre at the cheapest rate. */
export function lengthBound(problem: CuttingProblem): number {
  // Cheapest rates first, as far as their boards go: a fractional knapsack.
  const rates = problem.stock
    .map((k) => ({ room: k.count * k.capacity, rate: k.cost / k.capacity }))
    .sort((a, b) => a.rate - b.rate);
  let left = problem.sizes.reduce((s, l, i) => s + l * (problem.demand[i] as number), 0);
  let cost = 0;
  for (const { room, rate } of rates) {
    const take = Math.min(left, room);
    cost += take * rate;
    left -= take;
  }
  return cost;
}

/** Most sums of costs that are looked at. */
const most = 2e7;

/** The totals that boards can add up to, found once, since a bound is rounded up to them again and again. */
export class Totals {
  readonly #step: number;
  readonly #costs: readonly number[];
  #reach = new Uint8Array(0);

  constructor(problem: CuttingProblem) {
    this.#step = problem.step;
    this.#costs = [...new Set(problem.stock.map((k) => Math.round(k.cost / problem.step)))];
  }

  /** Rounds a bound up to the least total cost that boards can add up to. */
  roundUp(bound: number): number {
    const from = Math.max(0, Math.ceil((bound - slack) / this.#step));
    const dearest = Math.max(...this.#costs);
    // Where there are too many sums to try, the common measure of the costs must do.
    if ((from + dearest) * this.#costs.length > most) return from * this.#step;
    if (this.#reach.length < from + dearest) this.#reach = this.#reachable(from + dearest);
    return this.#reach.indexOf(1, from) * this.#step;
  }

  /** Which sums up to `top`, or a good way beyond it, some boards have. The dearest board's multiples are among them. */
  #reachable(top: number): Uint8Array<ArrayBuffer> {
    const reach = new Uint8Array(top * 2);
    reach[0] = 1;
    for (const c of this.#costs) for (let v = c; v < reach.length; v++) if (reach[v - c] === 1) reach[v] = 1;
    return reach;
  }
}

/** Whether a plan of this cost is as cheap as the bound allows. */
export const meets = (cost: number, bound: number): boolean => cost <= bound + slack * Math.max(1, bound);
