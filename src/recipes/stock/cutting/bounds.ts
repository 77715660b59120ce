import type { CuttingProblem } from './problem.js';

/** Slack for bounds that come from floating arithmetic, on a scale where a board costs about 1. */
const slack = 1e-6;

/**
 * Lower bound on the boards of one length (Martello and Toth's second bound): for each limit on "small", big pieces need
 * boards of their own and small ones fill what the middling leave.
 */
export function boardsBound(sizes: readonly number[], demand: readonly number[], capacity: number): number {
  let best = 0;
  const total = sizes.reduce((s, l, i) => s + l * (demand[i] as number), 0);
  best = Math.ceil(total / capacity - 1e-9);
  const limits = [0, ...sizes.filter((l) => l * 2 <= capacity)];
  for (const alpha of limits) {
    let alone = 0;
    let half = 0;
    let halfLength = 0;
    let small = 0;
    sizes.forEach((l, i) => {
      const n = demand[i] as number;
      if (l > capacity - alpha) alone += n;
      else if (l * 2 > capacity) {
        half += n;
        halfLength += n * l;
      } else if (l >= alpha) small += n * l;
    });
    const spare = half * capacity - halfLength;
    best = Math.max(best, alone + half + Math.max(0, Math.ceil((small - spare) / capacity - 1e-9)));
  }
  return best;
}

/** Cost below which no plan can be, from lengths alone: each millimetre at the cheapest rate. */
export function lengthBound(problem: CuttingProblem): number {
  const total = problem.sizes.reduce((s, l, i) => s + l * (problem.demand[i] as number), 0);
  // Cheapest rates first, as far as their boards go: a fractional knapsack.
  const rates = problem.stock
    .map((k) => ({ ...k, rate: k.cost / k.capacity }))
    .sort((a, b) => a.rate - b.rate);
  let left = total;
  let cost = 0;
  for (const k of rates) {
    const take = Math.min(left, k.count * k.capacity);
    cost += take * k.rate;
    left -= take;
    if (left <= 0) break;
  }
  return cost;
}

/** Rounds a bound up to the least total cost that boards can add up to. */
export function roundUp(problem: CuttingProblem, bound: number): number {
  if (problem.step <= 0) return bound;
  const from = Math.max(0, Math.ceil(bound / problem.step - slack / problem.step));
  const costs = [...new Set(problem.stock.map((k) => Math.round(k.cost / problem.step)))];
  if (costs.length === 1)
    return Math.ceil(from / (costs[0] as number) - 1e-9) * (costs[0] as number) * problem.step;
  const most = from + Math.max(...costs);
  if (most > 3e6) return from * problem.step;
  const reach = new Uint8Array(most + 1);
  reach[0] = 1;
  for (const c of costs) for (let v = c; v <= most; v++) if (reach[v - c] === 1) reach[v] = 1;
  for (let v = from; v <= most; v++) if (reach[v] === 1) return v * problem.step;
  return from * problem.step;
}

/** Whether a plan of this cost is as cheap as the bound allows. */
export const meets = (cost: number, bound: number): boolean => cost <= bound + slack * Math.max(1, bound);
