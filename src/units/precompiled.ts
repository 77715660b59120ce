// Stands in for algebra.ts where weight counts: the build for browsers parses every formula and prints it once, with marks
// where the letters stand, so that no library of algebra is needed.
import type { ExpressionNode, Tree } from './expression-tree.js';

export { closureOf, javascriptOf, type Dialect } from './expression-code.js';
export type { Tree } from './expression-tree.js';

/** A parsed formula and its printed forms, each letter between marks: \u0001name\u0002, or \u0001name^\u0002 where it is raised. */
export interface Precompiled extends Tree {
  readonly hidden: string;
  readonly shown: string;
  readonly plain: string;
}

const known = new Map<string, Precompiled>();

/** Takes formulas; called by the modules that hold them. */
export function addFormulas(formulas: Readonly<Record<string, Precompiled>>): void {
  for (const [expression, tree] of Object.entries(formulas)) known.set(expression, tree);
}

/** The tree of a formula that the build has parsed. @throws Error for any other */
export function parseTree(text: string): Tree {
  const tree = known.get(text);
  if (!tree) throw new Error(`formula "${text}" is not among those built in`);
  return tree;
}

/** How a letter is written; `power` is true where it is raised to a power and a unit needs brackets. */
export type WriteLetter = (name: string, power: boolean) => string;

const written = (marked: string, letter: WriteLetter): string =>
  marked.replace(/\u0001(\w+)(\^?)\u0002/g, (_, name: string, power: string) => letter(name, power !== ''));

/** LaTeX of the tree, each letter written by `letter`. */
export const latexOf = (tree: Tree, letter: WriteLetter, multiply: 'hidden' | 'shown' = 'hidden'): string =>
  written((tree as Precompiled)[multiply], letter);

/** The tree as a line of plain text, each letter written by `letter`. */
export const plainOf = (tree: Tree, letter: WriteLetter): string =>
  written((tree as Precompiled).plain, letter);

/** Units that no table names, such as kg m/s^2, are read in Node alone. */
export const scaleByAlgebra = (): undefined => undefined;

/** The check of a formula with units on every letter is one for tests. @throws Error */
export function evaluateWithUnits(tree: { readonly node: ExpressionNode }): number {
  throw new Error(`a ${tree.node.type} is evaluated with units in Node alone`);
}
