import {
  closureOf,
  evaluateWithUnits,
  javascriptOf,
  latexOf,
  parseTree,
  plainOf,
  type Dialect,
  type Tree,
} from '../units/algebra.js';
import { dimensionOf, dimensionOfTree, dimensionText } from '../units/dimensions.js';
import { withoutSlack } from '../units/expression-slack.js';
import { kinds, type Kind } from '../units/kind.js';
import { unitOf, unitsOf } from '../units/unit.js';
import type { UnitName } from '../units/unit-scales.js';
import { compileFunction } from './compile-function.js';
import { parenthesised, plainNumber, plainSymbol, texNumber, texSymbol } from './formula-text.js';
import {
  algebraic,
  baseValue,
  formulaValue,
  hasUnit,
  isDimensionless,
  toBase,
  toFormulaUnit,
  type Variable,
} from './formula-variable.js';
import type { Citation } from './source.js';

export { plainSymbol } from './formula-text.js';
export { formulaValue, type Variable } from './formula-variable.js';

export type Basis = 'published' | 'definition' | 'geometry' | 'estimate' | 'common practice';

export interface Formula<L extends Readonly<Record<string, Variable>> = Readonly<Record<string, Variable>>> {
  readonly symbol: string;
  readonly result: Variable;
  readonly expression: string;
  readonly variables: L;
  readonly source?: Citation;
  readonly basis: Basis;
  /**
   * True where constants in the expression carry units of their own, as in a formula fitted to tests: numbers then enter in the
   * units that the letters state. Any other formula computes in base units, and a letter's unit only shows.
   */
  readonly empirical: boolean;
  /** The number, from numbers in base units, in the base unit. No checks: for use inside recipes. */
  evaluate(args: { readonly [S in keyof L]: number }): number;
  /** LaTeX of the formula, `\Delta D = D \cdot C ...`. */
  readonly latex: string;
  /** LaTeX with the numbers put in and the result. */
  latexWith(args: Readonly<Record<string, number>>): string;
  /** One line of plain text of the formula. */
  readonly plain: string;
  /** One line of plain text with the numbers put in and the result. */
  plainWith(args: Readonly<Record<string, number>>): string;
  /** @throws Error where the dimensions of the two sides, or of two parts of any branch, differ; never for an empirical formula */
  assertBalanced(): void;
  /**
   * Evaluates the formula with units on every letter and gives the number in the base unit; an empirical one as it stands.
   * @throws Error when the dimensions of the two sides differ
   */
  withUnits(args: Readonly<Record<string, number>>): number;
  /** JavaScript source of the formula over variables that hold base-unit numbers, or that of another language. @internal */
  readonly toJavaScript: (name: (symbol: string) => string, dialect?: Dialect) => string;
}

/** Describes a variable: `variable('length', 'width of the top', { unit: 'mm' })`. A unit of another kind does not compile. */
export function variable<K extends Kind>(
  kind: K,
  label: string,
  more: Omit<Variable, 'kind' | 'label' | 'unit'> & { readonly unit?: UnitName<K> } = {},
): Variable {
  return { kind, label, ...more };
}

type Variables = Readonly<Record<string, Variable>>;
type Numbers = Readonly<Record<string, number>>;

interface FormulaSpec<L extends Variables> {
  readonly symbol: string;
  readonly result: Variable;
  readonly expression: string;
  readonly variables: L;
  readonly source?: Citation;
  readonly basis?: Basis;
  /** The expression takes numbers in the letters' units, since its constants carry units; every letter then states its unit. */
  readonly empirical?: true;
}

/**
 * A formula, written once: from the one expression come the number, the LaTeX, the line with numbers put in and the check
 * of dimensions. `variables` must describe every letter of `expression`.
 */
export function formula<const L extends Variables>(spec: FormulaSpec<L>): Formula<L> {
  assertUnits(spec);
  // Parsing waits until first use: a command that runs one recipe does not pay for all.
  let parsed: Tree | undefined;
  const tree = (): Tree => (parsed ??= parsedTree(spec));
  let visible: Tree | undefined;
  const shown = (): Tree => {
    const expression = withoutSlack(spec.expression);
    return (visible ??= expression === spec.expression ? tree() : parseTree(expression));
  };
  const toJavaScript: Formula['toJavaScript'] = (name, dialect) =>
    spec.empirical
      ? toBase(
          spec.result,
          javascriptOf(tree(), (s) => toFormulaUnit(variableOf(spec, s), name(s)), dialect),
        )
      : javascriptOf(tree(), name, dialect);
  let compiled: ((args: Numbers) => number) | undefined;
  const evaluate = (args: Numbers): number => (compiled ??= compile(spec, tree(), toJavaScript))(args);
  const left = (): string => texSymbol(spec.symbol, spec.result);
  const made: Formula<L> = {
    symbol: spec.symbol,
    result: spec.result,
    expression: spec.expression,
    variables: spec.variables,
    empirical: spec.empirical === true,
    basis: spec.basis ?? (spec.source ? 'published' : 'estimate'),
    ...(spec.source ? { source: spec.source } : {}),
    evaluate,
    toJavaScript,
    get latex() {
      return `${left()} = ${latexOf(shown(), (s) => texSymbol(s, spec.variables[s]))}`;
    },
    latexWith(args) {
      const numbers = latexOf(
        shown(),
        (s, power) =>
          parenthesised(texNumber(variableOf(spec, s), args[s] as number), power, '\\left(', '\\right)'),
        'shown',
      );
      return `${left()} = ${numbers} = ${texNumber(spec.result, evaluate(args))}`;
    },
    get plain() {
      return `${plainSymbol(spec.symbol)} = ${plainOf(shown(), plainSymbol)}`;
    },
    plainWith(args) {
      const numbers = plainOf(shown(), (s, power) =>
        parenthesised(plainNumber(variableOf(spec, s), args[s] as number), power, '(', ')'),
      );
      return `${plainSymbol(spec.symbol)} = ${numbers} = ${plainNumber(spec.result, evaluate(args))}`;
    },
    assertBalanced: () => assertBalanced(spec, tree()),
    withUnits: (args) => (spec.empirical ? evaluate(args) : withUnits(spec, tree(), args)),
  };
  return made;
}

const variableOf = (spec: FormulaSpec<Variables>, symbol: string): Variable =>
  spec.variables[symbol] as Variable;

/** @throws Error where a letter is not described, or is described and not used */
function parsedTree(spec: FormulaSpec<Variables>): Tree {
  const tree = parseTree(spec.expression);
  const missing = tree.symbols.find((s) => !Object.hasOwn(spec.variables, s));
  if (missing !== undefined) throw new Error(`formula "${spec.expression}": ${missing} is not described`);
  const unused = Object.keys(spec.variables).find((s) => !tree.symbols.includes(s));
  if (unused !== undefined)
    throw new Error(`formula "${spec.expression}": ${unused} is described but not used`);
  return tree;
}

/** @throws Error where a letter of an empirical formula states no unit, or any letter one of another kind */
function assertUnits(spec: FormulaSpec<Variables>): void {
  const all: readonly (readonly [string, Variable])[] = [
    ...Object.entries(spec.variables),
    [spec.symbol, spec.result],
  ];
  for (const [, l] of all) if (l.unit !== undefined) unitOf(l.kind, l.unit);
  const bare = spec.empirical && all.find(([, l]) => !hasUnit(l));
  if (bare)
    throw new Error(
      `formula "${spec.expression}" is empirical, so ${bare[0]} takes a unit, such as { unit: '${unitsOf(bare[1].kind)[0]}' }`,
    );
}

/** @throws Error where the dimensions differ */
function assertBalanced(spec: FormulaSpec<Variables>, tree: Tree): void {
  if (spec.empirical) return;
  const letters = Object.entries(spec.variables).map(([s, l]) => [s, dimensionOf(l.kind)] as const);
  let found: string;
  try {
    found = dimensionText(dimensionOfTree(tree, Object.fromEntries(letters)));
  } catch (error) {
    throw new Error(
      `formula "${spec.expression}": ${(error as Error).message}; a formula whose constants carry units is declared empirical`,
    );
  }
  const declared = dimensionText(dimensionOf(spec.result.kind));
  if (found !== declared)
    throw new Error(
      `formula "${spec.expression}" gives ${found}, ${spec.symbol} is ${kinds[spec.result.kind].called}, ${declared}; a formula whose constants carry units is declared empirical`,
    );
}

function compile(
  spec: FormulaSpec<Variables>,
  tree: Tree,
  toJavaScript: (name: (symbol: string) => string) => string,
): (args: Numbers) => number {
  const made = compileFunction(['a'], `return ${toJavaScript((s) => `a.${s}`)};`);
  if (made) return made as (args: Numbers) => number;
  const run = closureOf(tree);
  if (!spec.empirical) return run;
  return (args) => {
    const values = Object.entries(spec.variables).map(([s, l]) => [s, formulaValue(l, args[s] as number)]);
    return baseValue(spec.result, run(Object.fromEntries(values) as Numbers));
  };
}

function withUnits(spec: FormulaSpec<Variables>, tree: Tree, args: Numbers): number {
  const values = Object.fromEntries(
    Object.entries(spec.variables).map(([s, l]) => [s, algebraic(l, args[s] as number)]),
  );
  return isDimensionless(spec.result)
    ? evaluateWithUnits(tree, values, '')
    : evaluateWithUnits(tree, values, kinds[spec.result.kind].base);
}
