// The searches of a piece: the top from the pile, and the frame from the battens.
import { cuttingPlan } from '../recipes/stock/cutting-plan.js';
import { topFromPile } from '../recipes/stock/top-from-pile.js';
import { resultInternals } from '../engine/result.js';
import type { RunOptions } from '../engine/recipe.js';
import { Quantity } from '../units/quantity.js';
import type { FrameAsked, FramePlan, KeptPlans, PlanName, TopAsked, TopPlan } from './kept-plan.js';
import { frameAskedNode, framePlanFits, topAskedNode, topPlanFits, type PlanFit } from './plan-fit.js';
import type { PieceGraph, PieceNode } from './piece-graph.js';
import { OpenQuestion } from './open-question.js';

/** What a search came to beside the plan that was kept. */
export interface SearchNews {
  readonly plan: PlanName;
  readonly state: PlanFit['state'];
  readonly message: string;
}

export interface SearchOptions extends RunOptions {
  /** Puts a better plan in place of one that still fits; otherwise it is only said that there is one. */
  readonly replace?: boolean;
  /** Searches again though the kept plan still fits, to see whether a better one exists. */
  readonly again?: boolean;
}

const metres = (n: number) => new Quantity('length', n);

async function searchTop(asked: TopAsked, seconds: number, options: RunOptions): Promise<TopPlan> {
  const { boards, topLength, width, thickness, lay, ...rest } = asked;
  const result = await topFromPile(
    {
      boards: boardsAsWritten(boards),
      topLength: metres(topLength),
      width: metres(width),
      thickness: metres(thickness),
      lay: lay as 'flat',
      ...(Object.fromEntries(Object.entries(rest).map(([n, v]) => [n, metres(v)])) as Record<
        keyof typeof rest,
        Quantity<'length'>
      >),
      timeLimit: new Quantity('time', seconds),
    },
    options,
  );
  return topPlanOf(result, asked);
}

/** A plan from the result of `topFromPile`. */
export function topPlanOf(result: Awaited<ReturnType<typeof topFromPile>>, asked: TopAsked): TopPlan {
  const raw = resultInternals(result)?.raw as unknown as Omit<TopPlan, 'asked' | 'result'>;
  const { verdict, sentence, thickness, foundWidth, widthBound, lay, boardsCut, timber, worstStagger, rows } =
    raw;
  return {
    asked,
    verdict,
    sentence,
    thickness,
    foundWidth,
    widthBound,
    lay,
    boardsCut,
    timber,
    worstStagger,
    rows,
    result,
  };
}

/** Rows of a survey as a person could have written them. */
function boardsAsWritten(boards: unknown) {
  return (boards as readonly Readonly<Record<string, unknown>>[]).map((row) =>
    Object.fromEntries(
      Object.entries(row).flatMap(([name, value]): [string, unknown][] => {
        if (value === undefined) return [];
        const counted = name === 'count' || name === 'faults';
        return [[name, typeof value === 'number' && !counted ? metres(value) : value]];
      }),
    ),
  ) as never;
}

async function searchFrame(asked: FrameAsked, seconds: number, options: RunOptions): Promise<FramePlan> {
  const result = await cuttingPlan(
    {
      parts: asked.parts.map((p) => ({
        name: p.name,
        length: metres(p.length),
        count: p.count,
        ...(asked.stock.some((s) => s.width !== undefined)
          ? { width: metres(p.width), thickness: metres(p.thickness) }
          : {}),
      })),
      stock: asked.stock.map((s) => ({
        ...(s.name === undefined ? {} : { name: s.name }),
        length: metres(s.length),
        ...(s.count === undefined ? {} : { count: s.count }),
        ...(s.cost === undefined ? {} : { cost: s.cost }),
        ...(s.width === undefined ? {} : { width: metres(s.width) }),
        ...(s.thickness === undefined ? {} : { thickness: metres(s.thickness) }),
      })),
      kerf: metres(asked.kerf),
      trimEachEnd: metres(asked.trimEachEnd),
      timeLimit: new Quantity('time', seconds),
    },
    options,
  );
  const raw = resultInternals(result)?.raw as unknown as Omit<FramePlan, 'asked' | 'result'>;
  const { boardsUsed, stockLength, partsLength, waste, optimal, plan, missing } = raw;
  return { asked, boardsUsed, stockLength, partsLength, waste, optimal, plan, missing, result };
}

/** Asked for by a node; undefined where its question is open. */
function askedOf<T>(graph: PieceGraph, node: PieceNode<T>): T | undefined {
  try {
    return graph.of(node);
  } catch (error) {
    if (error instanceof OpenQuestion) return undefined;
    throw error;
  }
}

/** Runs the searches that are missing or no longer fit; the others are kept. */
export async function searchPlans(
  graph: PieceGraph,
  kept: Partial<KeptPlans>,
  seconds: number,
  options: SearchOptions,
): Promise<{ readonly plans: Partial<KeptPlans>; readonly news: readonly SearchNews[] }> {
  const news: SearchNews[] = [];
  const run = {
    ...(options.signal ? { signal: options.signal } : {}),
    ...(options.onProgress ? { onProgress: options.onProgress } : {}),
  };
  const top = await one(graph, 'top', topAskedNode, topPlanFits, kept.top, options, news, {
    search: (asked) => searchTop(asked, seconds, run),
    better: (old, found) => {
      const saved = Math.round((old.timber - found.timber) * 1e6) / 1e6;
      return saved > 1e-6 ? `saves ${(saved * 1000).toFixed(1)} L of timber` : undefined;
    },
  });
  const frame = await one(graph, 'frame', frameAskedNode, framePlanFits, kept.frame, options, news, {
    search: (asked) => searchFrame(asked, seconds, run),
    better: (old, found) => {
      const saved = Math.round((old.stockLength - found.stockLength) * 1000);
      return saved > 0 ? `saves ${saved} mm of batten` : undefined;
    },
  });
  return { plans: { top, frame }, news };
}

interface Searching<A, P> {
  readonly search: (asked: A) => Promise<P>;
  readonly better: (kept: P, found: P) => string | undefined;
}

async function one<A, P>(
  graph: PieceGraph,
  plan: PlanName,
  node: PieceNode<A>,
  fitNode: PieceNode<PlanFit>,
  kept: P | undefined,
  options: SearchOptions,
  news: SearchNews[],
  how: Searching<A, P>,
): Promise<P | undefined> {
  const asked = askedOf(graph, node);
  if (asked === undefined) return kept;
  const fit = graph.of(fitNode);
  if (kept === undefined || !fit.fits) {
    news.push({ plan, state: fit.state, message: kept ? `searched again: ${fit.why}` : 'searched' });
    return how.search(asked);
  }
  if (options.again !== true) {
    news.push({
      plan,
      state: fit.state,
      message: fit.state === 'current' ? 'kept' : `still valid: ${fit.why}`,
    });
    return kept;
  }
  const found = await how.search(asked);
  const gain = how.better(kept, found);
  const replaced = gain !== undefined && options.replace === true;
  news.push({
    plan,
    state: fit.state,
    message:
      gain === undefined
        ? 'still valid, no better one was found'
        : `a better one exists (${gain})${replaced ? ', taken' : ''}`,
  });
  return replaced ? found : kept;
}
