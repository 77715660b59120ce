import { number, pretty } from '../units/format-quantity.js';
import { kinds } from '../units/kind.js';
import { formulaValue, type Variable } from './formula-variable.js';

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

export function texSymbol(symbol: string, l?: Variable): string {
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

/** A number with a unit, or below 0, needs brackets before it is raised to a power. */
export function parenthesised(text: string, power: boolean, open: string, close: string): string {
  return power && /[^\d.{}]/.test(text) && !text.startsWith(open) ? `${open}${text}${close}` : text;
}

function variableUnit(l: Variable): string {
  const unit = l.unit ?? kinds[l.kind].base;
  return unit === '%' || unit === 'money' || unit === 'fraction'
    ? ''
    : unit.replace(/\^/g, '').replace(/ \/ /g, '/');
}

export function plainNumber(l: Variable, value: number): string {
  const n = number(formulaValue(l, value), 5);
  const unit = withoutCurrency(variableUnit(l));
  // Per cent enters as its number; the sign stays so that a reader sees what it is.
  const text =
    l.unit === '%'
      ? `${n} %`
      : unit
        ? `${n}${unit === 'deg' || unit.startsWith('/') ? '' : ' '}${pretty(unit)}`
        : n;
  return n.startsWith('-') ? `(${text})` : text;
}

export function texNumber(l: Variable, value: number): string {
  const n = number(formulaValue(l, value), 5)
    .replace(/\u202f/g, '\\,')
    .replace(/e(-?\d+)$/, '\\times 10^{$1}');
  const unit = withoutCurrency(variableUnit(l));
  const tex = l.unit === '%' ? `${n}\\,\\%` : unit ? `${n}\\,${texUnit(unit)}` : n;
  return n.startsWith('-') ? `\\left(${tex}\\right)` : `{${tex}}`;
}

/** The unit without the placeholder for a currency: `money/bf` is `/bf`. */
const withoutCurrency = (unit: string): string => unit.replace(/^money(?=\/)/, '');

function texUnit(unit: string): string {
  if (unit === 'degC') return '^{\\circ}\\mathrm{C}';
  if (unit === 'degF') return '^{\\circ}\\mathrm{F}';
  if (unit === 'deg') return '^{\\circ}';
  return `\\mathrm{${unit
    .replace(/ /g, '\\,')
    .replace(/([a-zA-Z])\^?(-?\d+)/g, '$1^{$2}')
    .replace(/%/g, '\\%')}}`;
}
