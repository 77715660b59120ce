import {
  closureOf,
  javascriptOf,
  latexOf,
  parseTree,
  plainOf,
  evaluateWithUnits,
  type Tree,
} from '../units/algebra.js';
import { number, pretty } from '../units/format-quantity.js';
import { kinds, type Kind } from '../units/kind.js';
import { unitOf } from '../units/unit.js';
import { compileFunction } from './compile-function.js';
import type { Citation } from './source.js';

/** A letter in a formula: what it stands for, its kind, and the unit its number enters the formula in. */
export interface Variable {
  readonly kind: Kind;
  readonly label: string;
  /** Unit of the number inside the formula; default the kind's base unit (m, kg, N, Pa, fraction, °C). */
  readonly unit?: string;
  /** True in an empirical formula, where the number alone enters and dimensions do not balance. */
  readonly dimensionless?: boolean;
  /** LaTeX, where the automatic one (M_F -> M_{F}, rho -> \rho) does not serve. */
  readonly tex?: string;
}

export type Basis = 'published' | 'definition' | 'geometry' | 'estimate' | 'common practice';

export interface Formula<L extends Readonly<Record<string, Variable>> = Readonly<Record<string, Variable>>> {
  readonly symbol: string;
  readonly result: Variable;
  readonly expression: string;
  readonly variables: L;
  readonly source?: Citation;
  readonly basis: Basis;
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
  /**
   * Reckons again with units on every letter and gives the number in the base unit.
   * @throws Error when the dimensions of the two sides differ
   */
  withUnits(args: Readonly<Record<string, number>>): number;
  /** JavaScript source of the formula over variables that hold base-unit numbers. @internal */
  readonly toJavaScript: (name: (symbol: string) => string) => string;
}

/** Describes a letter: `letter('length', 'width of the top', { in: 'mm' })`. */
export function variable(kind: Kind, label: string, more: Omit<Variable, 'kind' | 'label'> = {}): Variable {
  return { kind, label: label, ...more };
}

/**
 * A formula, written once: from the one text come the number, the LaTeX, the line with numbers put in and the check
 * of dimensions. `where` must name every letter of `text`.
 */
export function formula<const L extends Readonly<Record<string, Variable>>>(spec: {
  readonly symbol: string;
  readonly result: Variable;
  readonly expression: string;
  readonly variables: L;
  readonly source?: Citation;
  readonly basis?: Basis;
}): Formula<L> {
  // Parsing waits until first use: a command that works one recipe should not pay for sixty.
  let parsed: Tree | undefined;
  const tree = (): Tree => {
    if (parsed) return parsed;
    parsed = parseTree(spec.expression);
    for (const s of parsed.symbols)
      if (!Object.hasOwn(spec.variables, s))
        throw new Error(`formula "${spec.expression}": ${s} is not described`);
    for (const s of Object.keys(spec.variables))
      if (!parsed.symbols.includes(s))
        throw new Error(`formula "${spec.expression}": ${s} is described but not used`);
    return parsed;
  };
  const source_ = (name: (symbol: string) => string): string => {
    const inner = javascriptOf(tree(), (s) => toFormulaUnit(spec.variables[s] as Variable, name(s)));
    return toBase(spec.result, inner);
  };
  let compiled: ((args: Readonly<Record<string, number>>) => number) | undefined;
  const compile = (): ((args: Readonly<Record<string, number>>) => number) => {
    type Made = (args: Readonly<Record<string, number>>) => number;
    const made = compileFunction<Made>(['a'], `return ${source_((s) => `a.${s}`)};`);
    if (made) return made;
    const run = closureOf(tree());
    return (args) =>
      baseValue(
        spec.result,
        run(
          Object.fromEntries(
            Object.entries(spec.variables).map(([s, l]) => [s, formulaValue(l, args[s] as number)]),
          ),
        ),
      );
  };
  const value = (args: Readonly<Record<string, number>>): number => (compiled ??= compile())(args);
  const left = (): string => texSymbol(spec.symbol, spec.result);
  return {
    symbol: spec.symbol,
    result: spec.result,
    expression: spec.expression,
    variables: spec.variables,
    basis: spec.basis ?? (spec.source ? 'published' : 'estimate'),
    ...(spec.source ? { source: spec.source } : {}),
    evaluate: value,
    toJavaScript: source_,
    get latex() {
      return `${left()} = ${latexOf(tree(), (s) => texSymbol(s, spec.variables[s]))}`;
    },
    latexWith(args) {
      const numbers = latexOf(
        tree(),
        (s, power) =>
          parenthesised(
            texNumber(spec.variables[s] as Variable, args[s] as number),
            power,
            '\\left(',
            '\\right)',
          ),
        'shown',
      );
      return `${left()} = ${numbers} = ${texNumber(spec.result, value(args))}`;
    },
    get plain() {
      return `${plainSymbol(spec.symbol)} = ${plainOf(tree(), plainSymbol)}`;
    },
    plainWith(args) {
      const numbers = plainOf(tree(), (s, power) =>
        parenthesised(plainNumber(spec.variables[s] as Variable, args[s] as number), power, '(', ')'),
      );
      return `${plainSymbol(spec.symbol)} = ${numbers} = ${plainNumber(spec.result, value(args))}`;
    },
    withUnits(args) {
      const values = Object.fromEntries(
        Object.entries(spec.variables).map(([s, l]) => [s, algebraic(l, args[s] as number)]),
      );
      if (isDimensionless(spec.result)) return baseValue(spec.result, evaluateWithUnits(tree(), values, ''));
      return evaluateWithUnits(tree(), values, kinds[spec.result.kind].base);
    },
  };
}

/** Numbers that enter without a dimension: per cent, temperatures (an offset unit), angles, money, and where declared. */
function isDimensionless(l: Variable): boolean {
  return (
    l.dimensionless === true ||
    kinds[l.kind].base === '' ||
    l.kind === 'temperature' ||
    l.kind === 'angle' ||
    l.kind.startsWith('price')
  );
}

function algebraic(l: Variable, value: number): { value: number; unit: string } {
  return isDimensionless(l)
    ? { value: formulaValue(l, value), unit: '' }
    : { value, unit: kinds[l.kind].base };
}

function unitScale(l: Variable): { scale: number; offset: number } | undefined {
  return l.unit === undefined ? undefined : unitOf(l.kind, l.unit);
}

/** A base-unit number as it enters the formula. */
export function formulaValue(l: Variable, value: number): number {
  const u = unitScale(l);
  if (!u) return value;
  const many = 1 / u.scale;
  return u.scale < 1 && Math.abs(many - Math.round(many)) < 1e-9 * many
    ? (value - u.offset) * Math.round(many)
    : (value - u.offset) / u.scale;
}

function baseValue(l: Variable, n: number): number {
  const u = unitScale(l);
  return u ? n * u.scale + u.offset : n;
}

function toFormulaUnit(l: Variable, name: string): string {
  const u = unitScale(l);
  if (!u) return name;
  const shifted = u.offset === 0 ? name : `(${name} - (${u.offset}))`;
  const many = 1 / u.scale;
  return u.scale < 1 && Math.abs(many - Math.round(many)) < 1e-9 * many
    ? `(${shifted} * ${Math.round(many)})`
    : `(${shifted} / ${u.scale})`;
}

function toBase(l: Variable, inner: string): string {
  const u = unitScale(l);
  if (!u) return inner;
  return u.offset === 0 ? `(${inner} * ${u.scale})` : `(${inner} * ${u.scale} + (${u.offset}))`;
}

const greek: Readonly<Record<string, string>> = {
  alpha: 'α',
  beta: 'β',
  gamma: 'γ',
  delta: 'δ',
  Delta: 'Δ',
  epsilon: 'ε',
  theta: 'θ',
  lambda: 'λ',
  mu: 'μ',
  rho: 'ρ',
  sigma: 'σ',
  tau: 'τ',
  phi: 'φ',
  psi: 'ψ',
  omega: 'ω',
  kappa: 'κ',
  eta: 'η',
};

function texSymbol(symbol: string, l?: Variable): string {
  if (l?.tex) return l.tex;
  const [head, ...rest] = symbol.split('_') as [string, ...string[]];
  if (head === 'Delta' && rest.length > 0) return `\\Delta ${texSymbol(rest.join('_'))}`;
  const h = Object.hasOwn(greek, head)
    ? `\\${head}`
    : head.length > 1 && !/^[A-Za-z]\d+$/.test(head)
      ? `\\mathrm{${head}}`
      : head.replace(/^([A-Za-z])(\d+)$/, '$1_{$2}');
  return rest.length === 0 ? h : `${h}_{${rest.map((r) => (r.length > 1 ? `\\mathrm{${r}}` : r)).join(',')}}`;
}

/** A symbol in plain text: Greek letters as such, Delta_D as ΔD. */
export function plainSymbol(symbol: string): string {
  const [head, ...rest] = symbol.split('_') as [string, ...string[]];
  if (head === 'Delta' && rest.length > 0) return `Δ${rest.join('_')}`;
  return [greek[head] ?? head, ...rest].join('_');
}

/** A number with a unit, or below nought, needs brackets before it is raised to a power. */
function parenthesised(text: string, power: boolean, open: string, close: string): string {
  return power && /[^\d.{}]/.test(text) && !text.startsWith(open) ? `${open}${text}${close}` : text;
}

function variableUnit(l: Variable): string {
  const unit = l.unit ?? kinds[l.kind].base;
  return unit === '%' || unit === 'money' ? '' : unit.replace(/\^/g, '').replace(/ \/ /g, '/');
}

function plainNumber(l: Variable, value: number): string {
  const n = number(formulaValue(l, value), 5);
  const unit = variableUnit(l);
  // Per cent enters as its number; the sign stays so that a reader sees what it is.
  const text = l.unit === '%' ? `${n} %` : unit ? `${n} ${pretty(unit)}` : n;
  return n.startsWith('-') ? `(${text})` : text;
}

function texNumber(l: Variable, value: number): string {
  const n = number(formulaValue(l, value), 5)
    .replace(/\u202f/g, '\\,')
    .replace(/e(-?\d+)$/, '\\times 10^{$1}');
  const unit = variableUnit(l);
  const tex = l.unit === '%' ? `${n}\\,\\%` : unit ? `${n}\\,${texUnit(unit)}` : n;
  return n.startsWith('-') ? `\\left(${tex}\\right)` : `{${tex}}`;
}

function texUnit(unit: string): string {
  if (unit === 'degC') return '^{\\circ}\\mathrm{C}';
  if (unit === 'degF') return '^{\\circ}\\mathrm{F}';
  if (unit === 'deg') return '^{\\circ}';
  return `\\mathrm{${unit
    .replace(/ /g, '\\,')
    .replace(/([a-zA-Z])\^?(-?\d+)/g, '$1^{$2}')
    .replace(/%/g, '\\%')}}`;
}
