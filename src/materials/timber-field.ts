import { InputError, inspectValue } from '../units/input-error.js';
import { dataCaution, note } from '../engine/caution.js';
import { makeField, type Field } from '../engine/field.js';
import type { Trace } from '../engine/trace.js';
import type { Grade } from './grades.js';
import { allGroups, findSpecies } from './species.js';
import type { Sourced } from './property-range.js';
import {
  isStructuralMaterial,
  structuralMaterial,
  timberOrGrade,
  type StructuralMaterial,
} from './elastic-properties.js';
import { propertyWords, Timber, type Property } from './timber.js';

interface TimberOptions {
  readonly label: string;
  readonly optional?: true;
  readonly default?: string;
  /** What the recipe asks of the data; of a list, one is enough. */
  readonly needs: Property | readonly Property[];
}
type Opt<O> = O extends { optional: true } | { default: string } ? true : false;
type Out<O, T> = O extends { optional: true } ? T | undefined : T;

const example = 'a timber by name, such as "white oak", "spotted gum" or "unknown hardwood"';

/** A field that takes a timber's name and gives the {@link Timber}; a timber without the data asked for is refused, saying what it has. */
export function timberField<const O extends TimberOptions>(
  options: O,
): Field<string | Timber, Out<O, Timber>, Opt<O>> {
  const needs = typeof options.needs === 'string' ? [options.needs] : options.needs;
  return makeField<string | Timber, Timber, O>(
    {
      kind: 'timber',
      expects: example,
      accepts: (v) => typeof v === 'string' || v instanceof Timber,
      format: (t) =>
        t.isGroup
          ? `${t.name} (range over its published species)`
          : t.botanical
            ? `${t.name} (${t.botanical})`
            : t.name,
      read: (v) => {
        if (v instanceof Timber) return withData(v, needs);
        if (typeof v !== 'string' || v.trim() === '')
          throw new InputError(`got ${inspectValue(v)}, takes ${example}`);
        return withData(findSpecies(v), needs);
      },
    },
    options,
  ) as unknown as Field<string | Timber, Out<O, Timber>, Opt<O>>;
}

function withData(t: Timber, needs: readonly Property[]): Timber {
  if (needs.some((n) => t.has(n))) return t;
  const has = t.available().map((p) => propertyWords[p]);
  const groups = allGroups()
    .filter((g) => g.memberIds.includes(t.id) && needs.some((n) => g.has(n)) && g.id !== 'unknown-timber')
    .map((g) => inspectValue(g.name));
  throw new InputError(
    `${t.name} has no ${needs.map((n) => propertyWords[n]).join(' and no ')} in the data${has.length ? `; it has ${has.join(', ')}` : ''}${groups.length ? `; give ${groups.join(' or ')} for a range over its kind` : ''}`,
  );
}

interface WoodOptions {
  readonly label: string;
  readonly optional?: true;
  readonly default?: string;
}

/** A field that takes a grade (`C24`, `MGP10`, `F17`) or a timber's name and gives its stiffness and strength. */
export function stiffWoodField<const O extends WoodOptions>(
  options: O,
): Field<string | Timber | Grade | StructuralMaterial, Out<O, StructuralMaterial>, Opt<O>> {
  const takes = 'a grade such as "C24" or "MGP10", or a timber by name such as "Douglas-fir"';
  return makeField<string | Timber | Grade | StructuralMaterial, StructuralMaterial, O>(
    {
      kind: 'timber',
      expects: takes,
      accepts: (v) => typeof v === 'string' || (typeof v === 'object' && v !== null),
      format: (w) => `${w.name} (${w.basis})`,
      read: (v) => {
        if (isStructuralMaterial(v)) return v;
        const chosen = timberOrGrade(v);
        if (!chosen) throw new InputError(`got ${inspectValue(v)}, takes ${takes}`);
        return structuralMaterial(chosen);
      },
    },
    options,
  ) as unknown as Field<string | Timber | Grade | StructuralMaterial, Out<O, StructuralMaterial>, Opt<O>>;
}

/** Notes into an answer what its figures rest on: sources, doubts, and how a general name was read. */
export function citeTimber(trace: Trace, timber: Timber, figures: Sourced | undefined): void {
  if (trace.silent || !figures) return;
  // A group rests on hundreds of rows: its sources are named table by table, not code by code.
  for (const row of figures.rows)
    trace.source(
      timber.isGroup
        ? {
            ...row.citation,
            locator: row.citation.locator.replace(/^species code \d+$/, 'species codes of the group'),
          }
        : row.citation,
    );
  if (timber.readAs) trace.warn(note(timber.readAs));
  if (timber.isGroup) {
    trace.note(
      `${timber.name}: 10th percentile, median and 90th percentile over ${figures.count} published species.`,
    );
    return;
  }
  for (const row of figures.rows)
    if (row.doubt) trace.warn(dataCaution(`${row.printedAs}: ${row.doubt}`, row.citation));
}

/** Notes that sources differ and which was taken. */
export function tellOthers(trace: Trace, timber: Timber): void {
  if (trace.silent || timber.isGroup) return;
  const [first, ...others] = timber.movements();
  for (const other of others) {
    const row = other.rows[0];
    if (!first || !row?.preferReason) continue;
    // Compared only where both give the direction.
    const differing = (['tangential', 'radial'] as const).flatMap((k) => {
      const [a, b] = [first[k]?.middle, other[k]?.middle];
      return a !== undefined && b !== undefined && Math.abs(a - b) > 0.0005
        ? [`${k} ${b.toFixed(3)} against ${a.toFixed(3)}`]
        : [];
    });
    if (differing.length === 0) continue;
    trace.note(
      `Another source differs for ${row.printedAs} (% of width for each % of moisture: ${differing.join(', ')}). ${row.preferReason[0]?.toUpperCase()}${row.preferReason.slice(1)}.`,
      row.citation,
    );
  }
}
