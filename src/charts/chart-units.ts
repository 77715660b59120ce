// The words of a chart that is not made by a builder, in the units a person reads.
import { inUnits, unitSystem } from '../units/unit-system.js';
import type { ChartSpec } from './chart-spec.js';

/** The chart with its labels in those units; as it is while both are shown. */
export function labelsInUnits(spec: ChartSpec | undefined): ChartSpec | undefined {
  return spec === undefined || unitSystem() === 'both' ? spec : (shown(spec, '') as ChartSpec);
}

const spoken = new Set(['label', 'text', 'subtitle', 'title', 'description']);

function shown(part: unknown, key: string): unknown {
  if (typeof part === 'string') return spoken.has(key) ? inUnits(part) : part;
  if (Array.isArray(part)) return part.map((p) => shown(p, key));
  if (typeof part !== 'object' || part === null) return part;
  return Object.fromEntries(Object.entries(part).map(([k, v]) => [k, shown(v, k)]));
}
