import { allGroups } from '../species.js';
import { mechanicalOf } from '../strength.js';
import { fewest, percentile } from '../property-range.js';
import { rowsOf, type DataRow } from '../data-tables.js';
import type { Timber } from '../timber.js';
import { factor } from './factors.js';
import type { GreenMeans } from './ungraded.js';

const psi = 6894.757293168;
const properties = ['bending', 'shear', 'modulus'] as const;
type GreenProperty = (typeof properties)[number];

/** How a figure of green clear wood was come by, worst last. */
export type GreenBasis =
  'green mean' | 'from the mean at 12 %' | 'from the bending strength' | 'percentile of its group';

/** Means of green clear wood with the species they come from and how each was come by. */
export interface GreenFigures extends GreenMeans {
  readonly basis: Readonly<Partial<Record<GreenProperty, GreenBasis>>>;
  readonly rows: readonly DataRow[];
  /** How many species stand behind a group's figures; 1 for a species. */
  readonly count: number;
}

interface Figure {
  readonly value: number;
  readonly basis: GreenBasis;
  readonly rows: readonly DataRow[];
}

/** A green mean of one species; from its dry mean, at the least green share published, where that alone is known. */
function ofSpecies(id: string, property: GreenProperty): Figure | undefined {
  const green = property === 'shear' ? greenShear(id) : plain(id, 'green', property);
  if (green) return { ...green, basis: 'green mean' };
  const dry = plain(id, '12%', property);
  return (
    dry && {
      ...dry,
      value: dry.value * factor(`dry-share.${property}`),
      basis: 'from the mean at 12 %',
    }
  );
}

function plain(
  id: string,
  condition: 'green' | '12%',
  property: GreenProperty,
): Omit<Figure, 'basis'> | undefined {
  const found = mechanicalOf(id, condition);
  const value = found?.[property]?.low;
  return found && value !== undefined ? { value, rows: found.rows } : undefined;
}

function greenShear(id: string): Omit<Figure, 'basis'> | undefined {
  const row = rowsOf('green-shear.fpl-gtr-282', id)[0];
  const value = row?.number('shear_parallel_psi');
  return row && value !== undefined ? { value: value * psi, rows: [row] } : undefined;
}

/** Which of a group's figures: 10th percentile, median or 90th percentile over its species. */
export type Rank = 'low' | 'middle' | 'high';
const shareOf: Readonly<Record<Rank, number>> = { low: 0.1, middle: 0.5, high: 0.9 };

/** A percentile over the species of a group; undefined under the least number of species a range needs. */
function ofGroup(ids: readonly string[], property: GreenProperty, rank: Rank): Figure | undefined {
  const sorted = ids.flatMap((id) => ofSpecies(id, property)?.value ?? []).sort((a, b) => a - b);
  return sorted.length < fewest
    ? undefined
    : { value: percentile(sorted, shareOf[rank]), basis: 'percentile of its group', rows: [] };
}

const groups = new Map<string, Figure | undefined>();
/** A figure of unknown hardwood, softwood or timber; worked out once. */
function ofKind(kind: Timber['group'], property: GreenProperty, rank: Rank): Figure | undefined {
  const key = `${kind} ${property} ${rank}`;
  if (!groups.has(key)) {
    const id = kind === 'mixed' ? 'unknown-timber' : `unknown-${kind}`;
    groups.set(key, ofGroup(allGroups().find((g) => g.id === id)?.memberIds ?? [], property, rank));
  }
  return groups.get(key);
}

/**
 * Means of green clear wood of a timber, pascals. Of a trade name that covers several species (`members`) the lowest of
 * them, figure by figure; of a group the percentile of a rank. Where a species has a bending strength but no shear, the
 * least share published is taken. Properties that nothing is known of stay undefined.
 */
export function greenFigures(
  timber: Timber,
  members: readonly string[] = [],
  rank: Rank = 'low',
): GreenFigures {
  let known = figuresOf.get(timber);
  if (!known) figuresOf.set(timber, (known = new Map<string, GreenFigures>()));
  const key = `${rank}|${members.join('|')}`;
  let figures = known.get(key);
  if (!figures) known.set(key, (figures = figuresFor(timber, members, rank)));
  return figures;
}
const figuresOf = new WeakMap<Timber, Map<string, GreenFigures>>();

function figuresFor(timber: Timber, members: readonly string[], rank: Rank): GreenFigures {
  const found = new Map<GreenProperty, Figure>();
  for (const property of properties) {
    const figures = timber.isGroup
      ? [
          timber.id.startsWith('unknown-')
            ? ofKind(timber.group, property, rank)
            : ofGroup(timber.memberIds, property, rank),
        ]
      : (members.length > 0 ? members : [timber.id]).map((id) => ofSpecies(id, property));
    const known = figures.filter((f) => f !== undefined);
    if (known.length > 0)
      found.set(
        property,
        known.reduce((a, b) => (b.value < a.value ? b : a)),
      );
  }
  const bending = found.get('bending');
  if (bending && !found.has('shear'))
    found.set('shear', {
      ...bending,
      value: bending.value * factor('shear-share.bending'),
      basis: 'from the bending strength',
    });
  return {
    group: timber.group,
    bending: found.get('bending')?.value,
    shear: found.get('shear')?.value,
    modulus: found.get('modulus')?.value,
    basis: Object.fromEntries([...found].map(([property, f]) => [property, f.basis])),
    rows: [...new Set([...found.values()].flatMap((f) => f.rows))],
    count: timber.isGroup
      ? timber.memberIds.filter((id) => ofSpecies(id, 'bending')).length
      : Math.max(1, members.length),
  };
}
