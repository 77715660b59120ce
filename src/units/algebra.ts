// The one place that touches mathjs: formulas become trees here, units are checked here, and nothing of mathjs
// leaves but plain functions and text. Only the parts named below are bundled.
import {
  create,
  parseDependencies,
  unitDependencies,
  equalDependencies,
  addDependencies,
  subtractDependencies,
  multiplyDependencies,
  divideDependencies,
  powDependencies,
  sqrtDependencies,
  unaryMinusDependencies,
  unaryPlusDependencies,
  sinDependencies,
  cosDependencies,
  tanDependencies,
  asinDependencies,
  acosDependencies,
  atanDependencies,
  atan2Dependencies,
  absDependencies,
  minDependencies,
  maxDependencies,
  ceilDependencies,
  floorDependencies,
  expDependencies,
  logDependencies,
  log10Dependencies,
  cbrtDependencies,
  smallerDependencies,
  largerDependencies,
  smallerEqDependencies,
  largerEqDependencies,
  piDependencies,
  createUnitDependencies,
  type FactoryFunctionMap,
  type MathNode,
} from 'mathjs';
import type { ExpressionNode, Tree } from './expression-tree.js';

export { closureOf, javascriptOf, type Dialect } from './expression-code.js';
export type { Tree } from './expression-tree.js';

const parts = {
  parseDependencies,
  unitDependencies,
  equalDependencies,
  addDependencies,
  subtractDependencies,
  multiplyDependencies,
  divideDependencies,
  powDependencies,
  sqrtDependencies,
  unaryMinusDependencies,
  unaryPlusDependencies,
  sinDependencies,
  cosDependencies,
  tanDependencies,
  asinDependencies,
  acosDependencies,
  atanDependencies,
  atan2Dependencies,
  absDependencies,
  minDependencies,
  maxDependencies,
  ceilDependencies,
  floorDependencies,
  expDependencies,
  logDependencies,
  log10Dependencies,
  cbrtDependencies,
  smallerDependencies,
  largerDependencies,
  smallerEqDependencies,
  largerEqDependencies,
  piDependencies,
  createUnitDependencies,
};
const math = create(parts as FactoryFunctionMap);

/** Scale of the unit `name` to `base`, by mathjs; undefined when mathjs does not know it or the dimension differs. */
export function scaleByAlgebra(name: string, base: string): number | undefined {
  if (!/^[A-Za-z0-9 */^.-]+$/.test(name)) return undefined;
  // The algebra drops a number inside a unit without a word ("200 mm" would be mm): none but exponents and 1/ may stand.
  if (/\d/.test(name.replace(/^1 ?\//, '').replace(/\^ ?-?\d+(?:\.\d+)?|(?<=[A-Za-z])[234](?![\d.])/g, '')))
    return undefined;
  try {
    // Throws where the dimensions differ.
    const scale = math.unit(1, name.replace(/([A-Za-z])([234])(?![0-9])/g, '$1^$2')).toNumber(base);
    return Number.isFinite(scale) && scale > 0 ? scale : undefined;
  } catch {
    return undefined;
  }
}

const functions = new Set([
  'sqrt',
  'cbrt',
  'sin',
  'cos',
  'tan',
  'asin',
  'acos',
  'atan',
  'atan2',
  'abs',
  'min',
  'max',
  'ceil',
  'floor',
  'exp',
  'log',
  'log10',
  'pow',
]);
/** pi, and the degree as pi / 180, so that an angle in degrees stands in a formula as in print: `90 deg - a`. */
const constants = new Set(['pi', 'deg']);

/** Parses an expression in mathjs syntax. @throws Error (a fault of the recipe's author, not of its user) on unknown functions. */
export function parseTree(text: string): Tree {
  const node = math.parse(text);
  const symbols = new Set<string>();
  node.traverse((n, path) => {
    const any = n as unknown as { type: string; name: string };
    if (any.type === 'FunctionNode' && !functions.has(any.name))
      throw new Error(`formula "${text}": no function ${any.name}`);
    if (any.type === 'ConstantNode' && typeof (n as unknown as { value: unknown }).value !== 'number')
      throw new Error(`formula "${text}": takes numbers alone`);
    if (any.type === 'SymbolNode' && path !== 'fn' && !constants.has(any.name)) symbols.add(any.name);
  });
  return { node: node as unknown as ExpressionNode, symbols: [...symbols] };
}

/** Stands for the sign of degrees until the sign of multiplication before it is gone. */
const degreeMark = '\u0003';

const mathNode = (tree: Tree): MathNode => tree.node as unknown as MathNode;

/** How a letter is written; `power` is true where it is raised to a power and a unit needs brackets. */
export type WriteLetter = (name: string, power: boolean) => string;

function handlerFor(
  letter: WriteLetter,
  constantSigns: Readonly<Record<string, string>>,
  raised: (base: string, exponent: string) => string,
  write: (n: MathNode, options: object) => string,
) {
  const handler = (n: ExpressionNode, options: object): string | undefined => {
    if (n.type === 'SymbolNode')
      return constantSigns[n.name] ?? (functions.has(n.name) ? undefined : letter(n.name, false));
    if (n.op === '^' && n.args[0]?.type === 'SymbolNode') {
      return raised(
        constantSigns[n.args[0].name] ?? letter(n.args[0].name, true),
        write(n.args[1] as unknown as MathNode, options),
      );
    }
    return undefined;
  };
  return handler as never;
}

/** LaTeX of the tree, each letter written by `letter`. `shown`: every multiplication gets its sign, as numbers need and letters do not. */
export function latexOf(tree: Tree, letter: WriteLetter, multiply: 'hidden' | 'shown' = 'hidden'): string {
  const handler = handlerFor(
    letter,
    { pi: '\\pi', deg: degreeMark },
    (b, e) => `${b}^{${e}}`,
    (n, o) => n.toTex(o),
  );
  return mathNode(tree)
    .toTex({ parenthesis: 'auto', implicit: multiply === 'shown' ? 'show' : 'hide', handler })
    .replace(/(?:~|\\,| |\\cdot|\\times)*\u0003/g, '^{\\circ}')
    .replace(/~/g, '\\,')
    .replace(/\\cdot/g, multiply === 'shown' ? ' \\times ' : ' \\cdot ')
    .replace(/ {2,}/g, ' ');
}

/** The tree as a line of plain text, each letter written by `letter`. */
export function plainOf(tree: Tree, letter: WriteLetter): string {
  const handler = handlerFor(
    letter,
    { pi: 'π', deg: degreeMark },
    (b, e) => `${b}^${e}`,
    (n, o) => n.toString(o),
  );
  return mathNode(tree)
    .toString({ parenthesis: 'auto', implicit: 'show', handler })
    .replace(/ ?\* ?/g, ' × ')
    .replace(/ × \u0003/g, '°')
    .replace(/ \^ /g, '^')
    .replace(/(?<= )- /g, '− ');
}

/**
 * Evaluates the tree with units on every symbol and gives the number in `unit`. A formula whose two sides differ in
 * dimension throws; one that is right gives the same number as the compiled function.
 */
export function evaluateWithUnits(
  tree: Tree,
  values: Readonly<Record<string, { value: number; unit: string }>>,
  unit: string,
): number {
  const scope: Record<string, unknown> = { deg: Math.PI / 180 };
  for (const [name, v] of Object.entries(values))
    scope[name] = v.unit === '' ? v.value : math.unit(v.value, v.unit);
  const result: unknown = mathNode(tree).compile().evaluate(scope);
  if (typeof result === 'number') {
    if (unit !== '') throw new Error(`gives a plain number, ${unit} was declared`);
    return result;
  }
  if (unit === '') throw new Error(`gives ${String(result)}, a plain number was declared`);
  return (result as { toNumber(u: string): number }).toNumber(unit);
}
