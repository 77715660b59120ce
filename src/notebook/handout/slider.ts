import { toQuantity } from '../../units/parse-quantity.js';
import type { Kind } from '../../units/kind.js';
import type { Field } from '../../engine/field.js';

/** A slider for a number with a unit: where it starts and ends, its step, and the text of a place on it. */
export interface SliderRange {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly at: number;
  text(n: number): string;
}

/**
 * The range worth sliding through round `written`, such as `640 mm`: from about half to about double, inside the field's limits,
 * in a hundred steps or so of 1, 2 or 5. Undefined where there is nothing to slide: a word, a fraction of an inch, a zero.
 */
export function sliderRange(field: Field, written: string): SliderRange | undefined {
  const match = /^\s*(-?\d+(?:\.\d+)?)\s*([^\d\s].*)?$/.exec(written);
  if (match === null) return undefined;
  const n = Number(match[1]);
  const unit = (match[2] ?? '').trim();
  const kind = field.kind as Kind;
  const base = (x: number): number => toQuantity(unit === '' ? x : `${x} ${unit}`, kind).value;
  let shift: number;
  let slope: number;
  try {
    shift = base(0);
    slope = base(1) - shift;
  } catch {
    return undefined;
  }
  const inUnit = (b: number | undefined, otherwise: number): number =>
    b === undefined ? otherwise : (b - shift) / slope;
  const reach = kind === 'temperature' ? 15 : Math.abs(n) * 0.9;
  const low = Math.max(n - (kind === 'temperature' ? 15 : Math.abs(n) * 0.6), inUnit(field.min, -Infinity));
  const high = Math.min(n + reach, inUnit(field.max, Infinity));
  if (!(high > low)) return undefined;
  const step = kind === 'count' ? 1 : niceStep((high - low) / 100);
  // A limit that must be exceeded (above 0 mm) is a step away; the field itself refuses what still falls on it.
  const from =
    Math.ceil(low / step + (field.min !== undefined && low <= inUnit(field.min, -Infinity) ? 1e-9 : 0)) *
    step;
  const to = Math.floor(high / step) * step;
  if (!(to > from)) return undefined;
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  return { from, to, step, at: n, text: (x) => `${x.toFixed(decimals)}${unit === '' ? '' : ` ${unit}`}` };
}

/** 1, 2 or 5 times a power of ten, at least `least`. */
export function niceStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return ([1, 2, 5, 10].find((m) => m * power >= least * (1 - 1e-9)) ?? 10) * power;
}
