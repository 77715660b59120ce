import { Quantity } from '../units/quantity.js';

/** Inputs as JSON: quantities as a person writes them, in full precision; data frames as their columns and rows. */
export function toSerializable(value: unknown): unknown {
  if (value instanceof Quantity) return asWritten(value as Quantity);
  if (Array.isArray(value)) return value.map(toSerializable);
  if (typeof value !== 'object' || value === null) return value;
  const frame = value as { columns?: unknown; values?: unknown };
  if (Array.isArray(frame.columns) && Array.isArray(frame.values))
    return { columns: frame.columns, values: frame.values.map(toSerializable) };
  // A thing that says how it is written, such as a timber by its id.
  const own = (value as { toJSON?: unknown }).toJSON;
  if (typeof own === 'function') return toSerializable((own as () => unknown).call(value));
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, toSerializable(v)]));
}

/** `12.7 mm`; a price as `€4.20/m`; a plain number where there is no unit. */
function asWritten(q: Quantity): string | number {
  const { value, unit } = q.toJSON();
  if (unit === '') return value;
  const sign = q.currency ?? 'money';
  if (q.kind !== 'money' && !q.kind.startsWith('price')) return `${value} ${unit}`;
  return `${q.currency ?? ''}${value}${unit.replace(sign, '')}`;
}
