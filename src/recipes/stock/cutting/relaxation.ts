import { shouldStop, type SearchContext, type Node } from './search-context.js';
import type { Relaxed } from './master.js';
import { dearest, quickly } from './pricing.js';
import { patternOf, type Pattern, type Stock } from './problem.js';

type Prices = Pick<Relaxed, 'prices' | 'stockPrices'>;

/** The answer of the linear programme, and whether it was proved that no pattern beats its prices. */
export interface Priced extends Relaxed {
  readonly exact: boolean;
}

/**
 * The linear programme of what is left, patterns made as they are wanted. Undefined when time is up, or when what is left
 * cannot lead below the best plan. `root` raises the bound and ends when rounding cannot lift it further, `below` ends as
 * soon as the bound could be met, `whole` goes on until no pattern is worth adding, even where that proves nothing new.
 */
export async function relax(
  context: SearchContext,
  node: Node,
  barred: ReadonlySet<number>,
  at: 'root' | 'whole' | 'below',
): Promise<Priced | undefined> {
  const { master, incumbent, totals } = context;
  const { stock, sizes } = context.problem;
  master.narrow(node.demand, node.available, barred);
  // Prices are drawn toward those of the best bound so far (at first: worth by length), or they swing about.
  const cheapest = Math.min(...stock.map((k) => k.cost / k.capacity));
  let best: Proved = {
    bound: 0,
    prices: Float64Array.from(sizes, (l) => l * cheapest),
    stockPrices: new Float64Array(stock.length),
  };
  const pulls = at === 'below' ? [0] : [0.8, 0.5, 0.2, 0];
  for (;;) {
    const r = master.solve();
    if (shouldStop(context)) return undefined;
    // On the way down patterns need not be made while those at hand could still meet the bound.
    if (at === 'below' && node.spent + r.value <= incumbent.bound + 1e-7) return { ...r, exact: false };
    const found = await priceStabilised(context, node, r, best, pulls);
    best = found.best;
    const total = totals.roundUp(node.spent + best.bound);
    if (at === 'root') incumbent.raise(total, 'the linear programme');
    if (shouldStop(context)) return undefined;
    if (at === 'below' && total >= incumbent.best.cost - 1e-9) return undefined;
    if (master.add(found.fresh) === 0) return { ...r, exact: found.exact };
    // Once rounding cannot lift the bound further, the rest of the pricing would only polish.
    const close = at === 'root' && r.value - best.bound < 0.02;
    if (close && totals.roundUp(node.spent + r.value) <= total + 1e-9)
      return { ...master.solve(), exact: false };
  }
}

/** Prices, and the bound that they prove. */
type Proved = Prices & { readonly bound: number };

/**
 * Prices patterns at prices that are drawn less and less toward those of the best bound, until some are worth adding at
 * the programme's own prices.
 */
async function priceStabilised(
  context: SearchContext,
  node: Node,
  r: Relaxed,
  before: Proved,
  pulls: readonly number[],
): Promise<{ readonly fresh: Pattern[]; readonly exact: boolean; readonly best: Proved }> {
  let best = before;
  let fresh: Pattern[] = [];
  let exact = true;
  for (const pull of pulls) {
    const asked = mixed(r, best, pull);
    const priced = await price(context, asked, node);
    exact = priced.exact;
    if (priced.bound > best.bound) best = { ...asked, bound: priced.bound };
    fresh = priced.fresh.filter((p) => worthOf(p, r.prices) > owedBy(context, r, p.stock) + 1e-7);
    if (fresh.length > 0) break;
  }
  return { fresh, exact, best };
}

/** Prices part of the way from those of the programme to calmer ones. */
function mixed(r: Prices, calm: Prices, pull: number): Prices {
  const mix = (a: Float64Array, b: Float64Array): Float64Array =>
    a.map((v, i) => pull * (b[i] as number) + (1 - pull) * v);
  return { prices: mix(r.prices, calm.prices), stockPrices: mix(r.stockPrices, calm.stockPrices) };
}

/** What a board must be worth before it is worth cutting. */
const owedBy = ({ problem }: SearchContext, asked: Prices, k: number): number =>
  (problem.stock[k] as Stock).cost - (asked.stockPrices[k] as number);

const worthOf = (p: Pattern, prices: Float64Array): number =>
  p.items.reduce((s, [i, n]) => s + n * (prices[i] as number), 0);

/**
 * The dearest board of each stock at these prices, and some beside it; with them the bound that the prices prove once
 * scaled so that no board is worth more than it costs, whatever the solver's rounding.
 */
async function price(
  context: SearchContext,
  asked: Prices,
  node: Node,
): Promise<{ fresh: Pattern[]; bound: number; exact: boolean }> {
  const { sizes, stock } = context.problem;
  const fresh: Pattern[] = [];
  let scale = 1;
  let exact = true;
  for (const [k, { capacity }] of stock.entries()) {
    if (node.available[k] === 0) continue;
    await context.clock.yieldToEventLoop();
    const owed = owedBy(context, asked, k);
    const got = dearest(sizes, { prices: asked.prices, limits: node.demand }, capacity, owed * 0.9);
    exact &&= got.exact;
    if (!got.counts) continue;
    scale = Math.min(scale, owed / got.worth);
    fresh.push(patternOf(k, got.counts), ...more(context, asked.prices, node, k, owed, got.counts));
  }
  const worth = asked.prices.reduce((s, v, i) => s + v * (node.demand[i] as number), 0);
  // Boards that are short save at most what they are priced at.
  const saved = asked.stockPrices.reduce(
    (s, v, k) => (v === 0 ? s : s + v * (node.available[k] as number)),
    0,
  );
  return { fresh, bound: exact ? worth * scale * (1 - 1e-10) + saved : 0, exact };
}

/** Further boards from what the dearest one leaves: their patterns differ, and one solve then learns from all of them. */
function more(
  context: SearchContext,
  prices: Float64Array,
  node: Node,
  k: number,
  owed: number,
  first: Int32Array,
): Pattern[] {
  const limits = Int32Array.from(node.demand);
  const { capacity } = context.problem.stock[k] as Stock;
  const found: Pattern[] = [];
  for (let counts: Int32Array | undefined = first; counts && found.length < 12;) {
    counts.forEach((n, i) => {
      if (n > 0) limits[i] = 0;
    });
    counts = quickly(context.problem.sizes, { prices, limits }, capacity, owed * 0.98).counts;
    if (counts) found.push(patternOf(k, counts));
  }
  return found;
}
