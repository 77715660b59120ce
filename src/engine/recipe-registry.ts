// What explore needs of a recipe beyond its public members, kept beside it and not on it.
import { evaluateChain, type Chain } from './formula-chain.js';
import { ExpressionGraph, type CompiledLoop, type Operand } from './expression-graph.js';

type UncheckedSolve = (given: object) => Readonly<Record<string, unknown>>;

interface Entry {
  readonly solve: UncheckedSolve;
  /** Set for a recipe that is a chain of formulas and refuses nothing of its own. */
  readonly chain: Chain | undefined;
}
const entries = new WeakMap<object, Entry>();

export function registerRecipe(recipe: object, entry: Entry): void {
  entries.set(recipe, entry);
}

/** Registers a second callable for a recipe, such as its former name. */
export function registerAlias(alias: object, recipe: object): void {
  const entry = entries.get(recipe);
  if (entry) entries.set(alias, entry);
}

/** The evaluation alone, of a recipe that answers at once, on inputs that were read and checked: for many samples near checked inputs. */
export const uncheckedSolve = (recipe: object): UncheckedSolve => (entries.get(recipe) as Entry).solve;

/** Whether a recipe is a chain of formulas and nothing else. */
export function isFormulaChain(recipe: object): boolean {
  return entries.get(recipe)?.chain !== undefined;
}

/**
 * The loop that computes what `wanted` makes of a recipe's answers, over columns of the inputs that vary, the others being
 * as in `base`, which was read and checked; undefined for a recipe that is evaluated point by point. Limits are not
 * checked: whoever fills the columns keeps within them, which is what lets the loop run like one written by hand.
 */
export function compileSweep(
  recipe: object,
  base: Readonly<Record<string, unknown>>,
  varying: (graph: ExpressionGraph) => Readonly<Record<string, Operand>>,
  wanted: (
    graph: ExpressionGraph,
    answer: Readonly<Record<string, Operand | undefined>>,
  ) => Readonly<Record<string, Operand>>,
  peaks: readonly string[] = [],
): CompiledLoop | undefined {
  const chain = entries.get(recipe)?.chain;
  if (!chain) return undefined;
  const graph = new ExpressionGraph();
  const given = { ...base, ...varying(graph) };
  const answer = evaluateChain<Operand>(chain, given, (f, args) => graph.evaluate(f, args));
  return graph.compile(wanted(graph, answer), peaks);
}
