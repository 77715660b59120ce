import { Refusal, nearest, shown } from '../quantities/refusal.js';
import { attempt } from '../quantities/attempt.js';
import {
  makeField,
  type Common,
  type Field,
  type InOf,
  type IsOptional,
  type MaybeOut,
  type OutOf,
} from './field-shape.js';

type Alternatives = readonly Field[];
/** A field that takes one of several kinds of thing. */
export function eitherField<
  const A extends Alternatives,
  const O extends Common & { readonly default?: unknown },
>(alternatives: A, options: O): Field<InOf<A[number]>, MaybeOut<O, OutOf<A[number]>>, IsOptional<O>> {
  const all = alternatives as readonly Field[];
  const takes = all.map((f) => f.takes).join(', or ');
  return makeField<InOf<A[number]>, OutOf<A[number]>, O>(
    {
      kind: 'either',
      takes,
      fits: (v) => all.some((f) => f.fits(v)),
      show: (v) => {
        for (const f of all) {
          try {
            return f.show(v);
          } catch {
            continue;
          }
        }
        return String(v);
      },
      read: (v) => {
        const meant = all.filter((f) => f.fits(v));
        const refused: Refusal[] = [];
        for (const f of meant) {
          const got = attempt(() => f.read(v) as OutOf<A[number]>);
          if (!(got instanceof Refusal)) return got;
          refused.push(got);
        }
        const [first, second] = refused;
        // A trouble in a part of it tells that this alternative was meant.
        if (first?.troubles.some((t) => t.field !== '')) throw first;
        const words = all.flatMap((f) => f.choices ?? []);
        const near = typeof v === 'string' ? nearest(v, words) : undefined;
        const rest = all.filter((f) => !meant.includes(f)).map((f) => f.takes);
        // One alternative alone knows best what is wrong, but a word may have been meant for another.
        const says =
          first && !second
            ? `${first.troubles.map((t) => t.says).join('; ')}; or ${rest.join(', or ')}`
            : `got ${shown(v)}, takes ${takes}`;
        throw new Refusal(near ? `${says}; did you mean ${shown(near)}?` : says);
      },
    },
    options,
    { items: all },
  );
}
