import type { ExpressionNode, Tree } from './expression-tree.js';
import { kinds, type Kind } from './kind.js';

/** Exponents of length, mass, time, temperature and money. */
export type Dimension = readonly [number, number, number, number, number];

const none: Dimension = [0, 0, 0, 0, 0];
const names = ['length', 'mass', 'time', 'temperature', 'money'] as const;

/** Units that the kinds' base units are written with; an angle is a number. */
const units: Readonly<Record<string, Dimension>> = {
  m: [1, 0, 0, 0, 0],
  kg: [0, 1, 0, 0, 0],
  s: [0, 0, 1, 0, 0],
  degC: [0, 0, 0, 1, 0],
  rad: none,
  N: [1, 1, -2, 0, 0],
  Pa: [-1, 1, -2, 0, 0],
};

const plus = (a: Dimension, b: Dimension, times = 1): Dimension =>
  a.map((x, i) => x + times * (b[i] as number)) as unknown as Dimension;
const scaled = (a: Dimension, by: number): Dimension => a.map((x) => x * by) as unknown as Dimension;
const isSame = (a: Dimension, b: Dimension): boolean =>
  a.every((x, i) => Math.abs(x - (b[i] as number)) < 1e-9);
const isNumber = (a: Dimension): boolean => isSame(a, none);

/** The dimension of a kind of quantity, from its base unit; money and prices have one of their own. */
export function dimensionOf(kind: Kind): Dimension {
  const [above = '', ...below] = kinds[kind].base.split('/');
  const product = (text: string): Dimension =>
    text
      .split(' ')
      .filter((word) => word !== '')
      .reduce<Dimension>((sum, word) => {
        const [name = '', power = '1'] = word.split('^');
        return plus(sum, units[name] as Dimension, Number(power));
      }, none);
  const base = below.reduce((sum, word) => plus(sum, product(word), -1), product(above));
  return kind === 'money' || kind.startsWith('price') ? plus(base, [0, 0, 0, 0, 1]) : base;
}

/** A dimension in words: `length^2 mass / time`. */
export function dimensionText(d: Dimension): string {
  const part = (sign: number): string =>
    names
      .flatMap((name, i) => {
        const power = (d[i] as number) * sign;
        return power <= 1e-9
          ? []
          : [Math.abs(power - 1) < 1e-9 ? name : `${name}^${Number(power.toFixed(3))}`];
      })
      .join(' ');
  const [above, below] = [part(1), part(-1)];
  return below === '' ? above || 'a number' : `${above || '1'} / ${below}`;
}

/** What a part of an expression measures; the number 0 goes with anything. */
type Found = Dimension | 'any';

const numeric = new Set([
  'sin',
  'cos',
  'tan',
  'asin',
  'acos',
  'atan',
  'exp',
  'log',
  'log10',
  'ceil',
  'floor',
]);

/**
 * The dimension of an expression whose letters have the dimensions given, every branch included.
 * @throws Error naming the part where unlike things are added, compared or raised, or a function takes no such thing
 */
export function dimensionOfTree(tree: Tree, letters: Readonly<Record<string, Dimension>>): Dimension {
  const found = walk(tree.node, letters);
  return found === 'any' ? none : found;
}

function walk(n: ExpressionNode, letters: Readonly<Record<string, Dimension>>): Found {
  const of = (node: ExpressionNode): Found => walk(node, letters);
  switch (n.type) {
    case 'ConstantNode':
      return n.value === 0 ? 'any' : none;
    case 'SymbolNode':
      return n.name === 'pi' || n.name === 'deg' ? none : (letters[n.name] as Dimension);
    case 'ParenthesisNode':
      return of(n.content);
    case 'ConditionalNode':
      of(n.condition);
      return alike('the two branches', of(n.trueExpr), of(n.falseExpr));
    case 'FunctionNode':
      return ofFunction(n.fn.name, n.args, of);
    case 'OperatorNode':
      return ofOperator(n.op, n.args, of);
    default:
      throw new Error(`a formula may not hold a ${n.type}`);
  }
}

function alike(what: string, ...all: readonly Found[]): Found {
  const known = all.filter((d) => d !== 'any');
  const [first, ...rest] = known;
  if (first === undefined) return 'any';
  const other = rest.find((d) => !isSame(d, first));
  if (other) throw new Error(`${what}: ${dimensionText(first)} and ${dimensionText(other)}`);
  return first;
}

function numberOnly(what: string, d: Found): Dimension {
  if (d !== 'any' && !isNumber(d)) throw new Error(`${what} takes a number, got ${dimensionText(d)}`);
  return none;
}

function ofFunction(name: string, args: readonly ExpressionNode[], of: (n: ExpressionNode) => Found): Found {
  const [first, second] = args as readonly [ExpressionNode, ExpressionNode];
  if (name === 'abs') return of(first);
  if (name === 'min' || name === 'max') return alike(name, ...args.map(of));
  if (name === 'sqrt' || name === 'cbrt') return power(of(first), name === 'sqrt' ? 1 / 2 : 1 / 3);
  if (name === 'pow') return ofOperator('^', args, of);
  if (name === 'atan2') {
    alike(name, of(first), of(second));
    return none;
  }
  if (numeric.has(name)) return numberOnly(name, of(first));
  throw new Error(`no dimension is known of ${name}`);
}

const power = (d: Found, exponent: number): Found => (d === 'any' ? d : scaled(d, exponent));

function ofOperator(op: string, args: readonly ExpressionNode[], of: (n: ExpressionNode) => Found): Found {
  const [a, b] = args as readonly [ExpressionNode, ExpressionNode | undefined];
  if (b === undefined) return of(a);
  switch (op) {
    case '*':
    case '/': {
      const [left, right] = [of(a), of(b)];
      if (left === 'any') return left;
      return right === 'any' ? right : plus(left, right, op === '*' ? 1 : -1);
    }
    case '^': {
      numberOnly('an exponent', of(b));
      const [base, exponent] = [of(a), constantOf(b)];
      if (exponent !== undefined) return power(base, exponent);
      return numberOnly('a power whose exponent is no constant', base);
    }
    case '+':
    case '-':
      return alike(op === '+' ? 'a sum' : 'a difference', of(a), of(b));
    default:
      alike('a comparison', of(a), of(b));
      return none;
  }
}

/** The value of an exponent that holds no letter. */
function constantOf(n: ExpressionNode): number | undefined {
  if (n.type === 'ConstantNode') return n.value;
  if (n.type === 'ParenthesisNode') return constantOf(n.content);
  if (n.type !== 'OperatorNode') return undefined;
  const [a, b] = n.args.map(constantOf);
  if (a === undefined) return undefined;
  if (n.args.length === 1) return n.op === '-' ? -a : a;
  return n.op === '/' && b !== undefined ? a / b : undefined;
}
