import { Quantity } from '../../../units/quantity.js';
import { toQuantity } from '../../../units/parse-quantity.js';
import type { Kind } from '../../../units/kind.js';
import type { Field } from '../../../engine/field.js';
import { columnUnit, lensOf, textOf } from '../../../explore/frame-columns.js';
import { niceStep } from '../../../notebook/handout/slider.js';
import type { TryQuestion } from '../model/tried-values.js';

/** Places of a field to try, in its unit and in the base unit. */
export interface TryRange {
  readonly unit: string;
  /** In `unit`. */
  readonly places: readonly number[];
  /** In the base unit. */
  readonly values: readonly number[];
  /** Place nearest to what is given now. */
  readonly now: number;
  text(place: number): string;
}

/** About a hundred round places from half to double of `now`, or between the ends asked for, inside the field's limits. @throws InputError */
export function tryRange(field: Field, now: number, ask: Pick<TryQuestion, 'from' | 'to'>): TryRange {
  const kind = field.kind as Kind;
  const unit = unitFor(field, now, ask.from);
  const { factor, offset } = lensOf(kind, unit);
  const inUnit = (base: number): number => (base - offset) * factor;
  const inBase = (place: number): number => place / factor + offset;
  const [low, high] = endsOf(field, now, ask);
  const [first, last] = [inUnit(low), inUnit(high)];
  const step =
    kind === 'count' ? Math.max(1, Math.round((last - first) / 100)) : niceStep((last - first) / 100);
  const start = Math.ceil(first / step - 1e-9) * step;
  const places: number[] = [];
  for (let place = start; place <= last + step * 1e-6; place += step) {
    const tidy = Number(place.toPrecision(9));
    if (withinLimits(field, inBase(tidy))) places.push(tidy);
  }
  const at = inUnit(now);
  const nearest = places.reduce(
    (best, place, i) => (Math.abs(place - at) < Math.abs((places[best] ?? Infinity) - at) ? i : best),
    0,
  );
  const text = (place: number): string => (unit === '' ? String(place) : `${place} ${unit}`);
  return { unit, places, values: places.map(inBase), now: nearest, text };
}

function unitFor(field: Field, now: number, from: string | undefined): string {
  const written = /[^\d\s.,/+-].*$/.exec(from ?? '')?.[0].trim();
  if (written !== undefined && written !== '') return written;
  return columnUnit(field.kind, [now], field.unit);
}

function endsOf(field: Field, now: number, { from, to }: Pick<TryQuestion, 'from' | 'to'>): [number, number] {
  const kind = field.kind as Kind;
  const read = (text: string): number => toQuantity(text, kind).value;
  const reach = kind === 'temperature' ? 15 : Math.max(Math.abs(now), Number.EPSILON);
  const low = from === undefined ? now - reach * (kind === 'temperature' ? 1 : 0.5) : read(from);
  const high = to === undefined ? now + reach : read(to);
  return [Math.max(low, field.min ?? -Infinity), Math.min(high, field.max ?? Infinity)];
}

const withinLimits = (field: Field, base: number): boolean => {
  try {
    field.read(new Quantity(field.kind as Kind, base));
    return true;
  } catch {
    return false;
  }
};

/** A base-unit number as a person writes it. */
export const written = (kind: string, base: number, unit?: string): string => textOf(kind, base, unit);
