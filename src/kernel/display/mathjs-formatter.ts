/** Values of mathjs (units, matrices, complex numbers, fractions, big numbers), known by their type flags. */
import type { MimeBundle } from '../message.js';

const kinds = [
  'isUnit',
  'isMatrix',
  'isComplex',
  'isFraction',
  'isBigNumber',
  'isResultSet',
  'isRange',
  'isNode',
] as const;
type Kind = (typeof kinds)[number];

interface MathValue {
  toString(): string;
  toTex?(): string;
  format?(options: { precision: number }): string;
  valueOf(): unknown;
}

export function mathBundle(value: unknown): MimeBundle | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const marked = value as MathValue & Partial<Record<Kind, unknown>>;
  // The flags are on the prototype: a plain object that happens to have such a key is no value of mathjs.
  const kind = kinds.find((name) => marked[name] === true && !Object.hasOwn(value, name));
  if (!kind) return undefined;
  const text =
    kind === 'isUnit' || kind === 'isMatrix' || kind === 'isComplex'
      ? (marked.format?.({ precision: 12 }) ?? marked.toString())
      : marked.toString();
  const tex = latex(kind, marked, text);
  return tex === undefined
    ? { 'text/plain': text }
    : { 'text/plain': text, 'text/latex': `$\\displaystyle ${tex}$` };
}

function latex(kind: Kind, value: MathValue, text: string): string | undefined {
  if (kind === 'isNode') return value.toTex?.();
  if (kind === 'isFraction') {
    const { s, n, d } = value as unknown as { s: bigint | number; n: bigint | number; d: bigint | number };
    return `${Number(s) < 0 ? '-' : ''}\\frac{${n}}{${d}}`;
  }
  if (kind === 'isUnit') {
    const [, number, unit] = /^(\S+) (.+)$/.exec(text) ?? [];
    return number === undefined || unit === undefined
      ? undefined
      : `${power(number)}\\;\\mathrm{${unit.replaceAll(' ', '\\,').replace(/\^(\d+)/g, '^{$1}')}}`;
  }
  if (kind !== 'isMatrix') return undefined;
  const rows = value.valueOf();
  if (!Array.isArray(rows) || rows.length > 12) return undefined;
  const table = rows.map((row: unknown): unknown[] => (Array.isArray(row) ? row : [row]));
  if (table.some((row) => row.length > 12 || row.some((cell) => typeof cell !== 'number'))) return undefined;
  const lines = table.map((row) =>
    row.map((cell) => power(String(Number((cell as number).toPrecision(6))))).join(' & '),
  );
  return `\\begin{bmatrix}${lines.join(' \\\\ ')}\\end{bmatrix}`;
}

const power = (number: string): string =>
  number.replace(/e([+-]?\d+)$/, (_, exponent: string) => `\\times 10^{${Number(exponent)}}`);
