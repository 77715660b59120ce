import { fullestFirst, longestFirst } from './constructive-heuristics.js';
import { shouldStop, type SearchContext, type Node } from './search-context.js';
import { packingOf, type Pattern, type Stock } from './problem.js';
import { relax } from './relaxation.js';

const how = 'rounding the linear programme';

/** Fixes what the linear programme is sure of, then its likeliest pattern, and so on down; up to `spare` second choices are tried. */
export async function dive(
  context: SearchContext,
  node: Node,
  barred: ReadonlySet<number>,
  depth: number,
  spare: number,
): Promise<void> {
  const { problem, incumbent, master } = context;
  if (shouldStop(context)) return;
  if (node.demand.every((n) => n === 0)) {
    incumbent.take(packingOf(problem, node.fixed), how);
    return;
  }
  if (depth > 0) await finish(context, node);
  const r = await relax(context, node, barred, 'below');
  if (!r) return;
  const likely = Array.from(r.x, (part, j) => ({ j, part, pattern: master.pool[j] as Pattern }))
    .filter(({ part }) => part >= 1e-6)
    .sort((a, b) => b.part - a.part);
  const sure = likely.map((l) => ({ ...l, times: Math.floor(l.part + 1e-6) })).filter((l) => l.times > 0);
  if (sure.length > 0) return dive(context, settle(context, node, sure), barred, depth + 1, spare);
  const own = new Set(barred);
  for (const [choice, pick] of likely.slice(0, spare + 1).entries()) {
    const others = choice === 0 ? likely.filter((l) => l !== pick && l.part > 0.8) : [];
    const next = [pick, ...others].map(({ pattern }) => ({ pattern, times: 1 }));
    await dive(context, settle(context, node, next), new Set(own), depth + 1, spare - choice);
    if (shouldStop(context) || depth > 6) return;
    own.add(pick.j);
  }
}

/** Takes boards as settled, each pattern as often as what is wanted and there still allows. */
export function settle(
  { problem }: Pick<SearchContext, 'problem'>,
  node: Node,
  chosen: readonly { readonly pattern: Pattern; readonly times: number }[],
): Node {
  const demand = Int32Array.from(node.demand);
  const available = [...node.available];
  const fixed = [...node.fixed];
  let spent = node.spent;
  for (const { pattern, times } of chosen) {
    // Two sure patterns may share a size; the second is then cut as often as still fits, perhaps never.
    const can = Math.min(
      times,
      available[pattern.stock] as number,
      ...pattern.items.map(([i, n]) => Math.floor((demand[i] as number) / n)),
    );
    for (const [i, n] of pattern.items) demand[i] = (demand[i] as number) - n * can;
    available[pattern.stock] = (available[pattern.stock] as number) - can;
    spent += can * (problem.stock[pattern.stock] as Stock).cost;
    fixed.push({ pattern, times: can });
  }
  return { demand, available, spent, fixed };
}

/** What is left at this point, cut in the plain ways: a whole plan at every step down. */
async function finish({ problem, incumbent, clock }: SearchContext, node: Node): Promise<void> {
  for (const rest of [
    await longestFirst(problem, node, clock),
    await fullestFirst(problem, node, 400, clock),
  ])
    if (rest) incumbent.take(packingOf(problem, [...node.fixed, ...rest.boards]), how);
}
