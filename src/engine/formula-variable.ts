import { withoutResidue } from '../units/clean-number.js';
import { kinds, type Kind } from '../units/kind.js';
import { unitOf } from '../units/unit.js';

/** A letter in a formula: what it stands for, its kind, and the unit in which people read it. */
export interface Variable {
  readonly kind: Kind;
  readonly label: string;
  /** Unit in which it is shown; in an empirical formula also the unit in which its number enters. Default the kind's base unit. */
  readonly unit?: string;
  /** LaTeX, where the automatic one (M_F -> M_{F}, rho -> \rho) does not serve. */
  readonly tex?: string;
}

/** Numbers that the check with units takes without one: per cent, temperatures (an offset unit), angles, money. */
export function isDimensionless(l: Variable): boolean {
  return kinds[l.kind].base === '' || l.kind === 'temperature' || l.kind === 'angle';
}

export function algebraic(l: Variable, value: number): { value: number; unit: string } {
  return isDimensionless(l) ? { value, unit: '' } : { value, unit: kinds[l.kind].base };
}

function unitScale(l: Variable): { scale: number; offset: number } | undefined {
  return l.unit === undefined ? undefined : unitOf(l.kind, l.unit);
}

const withoutUnit: ReadonlySet<Kind> = new Set(['ratio', 'count', 'money']);

/** Whether an empirical formula may use the variable: its number means nothing without a unit. */
export const hasUnit = (l: Variable): boolean => l.unit !== undefined || withoutUnit.has(l.kind);

/** A base-unit number in the variable's own unit. */
export function formulaValue(l: Variable, base: number): number {
  const value = withoutResidue(l.kind, base);
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
