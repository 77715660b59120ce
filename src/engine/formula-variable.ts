import { kinds, type Kind } from '../units/kind.js';
import { unitOf } from '../units/unit.js';

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

/** Numbers that enter without a dimension: per cent, temperatures (an offset unit), angles, money, and where declared. */
export function isDimensionless(l: Variable): boolean {
  return (
    l.dimensionless === true ||
    kinds[l.kind].base === '' ||
    l.kind === 'temperature' ||
    l.kind === 'angle' ||
    l.kind.startsWith('price')
  );
}

export function algebraic(l: Variable, value: number): { value: number; unit: string } {
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

export function baseValue(l: Variable, n: number): number {
  const u = unitScale(l);
  return u ? n * u.scale + u.offset : n;
}

export function toFormulaUnit(l: Variable, name: string): string {
  const u = unitScale(l);
  if (!u) return name;
  const shifted = u.offset === 0 ? name : `(${name} - (${u.offset}))`;
  const many = 1 / u.scale;
  return u.scale < 1 && Math.abs(many - Math.round(many)) < 1e-9 * many
    ? `(${shifted} * ${Math.round(many)})`
    : `(${shifted} / ${u.scale})`;
}

export function toBase(l: Variable, inner: string): string {
  const u = unitScale(l);
  if (!u) return inner;
  return u.offset === 0 ? `(${inner} * ${u.scale})` : `(${inner} * ${u.scale} + (${u.offset}))`;
}
