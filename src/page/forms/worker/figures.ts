import { resultInternals } from '../../../engine/result.js';
import type { Scope } from '../model/argument.js';
import type { Figure } from '../model/figure.js';
import type { Resolver } from './resolve.js';

/** Every figure of the named results of a notebook; those that cannot be worked out here are left out. */
export async function figuresOf(scope: Scope, resolver: Resolver): Promise<Figure[]> {
  const found: Figure[] = [];
  for (const name of Object.keys(scope)) {
    try {
      const inner = resultInternals(await resolver.value({ type: 'reference', name, path: [] }));
      if (inner === undefined) continue;
      for (const [output, shown] of Object.entries(inner.outputs)) {
        const { kind, label, columns } = shown;
        const raw = inner.raw[output];
        if (raw === undefined) continue;
        const [first = label] = label.split(/[;:]/);
        found.push({
          name,
          path: [output],
          label: first,
          kind,
          text: shown.format(raw, inner.currency).metric,
          columns: Object.keys(columns ?? {}),
        });
      }
    } catch {
      // Rests on code or is not finished yet.
    }
  }
  return found;
}
