import { between, exactly, type Sourced, type PropertyRange } from './property-range.js';
import { rowsOf, type DataRow } from './data-tables.js';

/**
 * Movement in service: change of size as a fraction of the size, per fraction of moisture content (0.00365 per per cent
 * is 0.365). Published for about 6 to 14 % moisture.
 */
export interface Movement extends Sourced {
  readonly tangential: PropertyRange | undefined;
  readonly radial: PropertyRange | undefined;
}

/** Shrinkage from green to oven-dry as a fraction of the green size, and the moisture where it begins. */
export interface Shrinkage extends Sourced {
  readonly tangential: PropertyRange | undefined;
  readonly radial: PropertyRange | undefined;
  readonly volumetric: PropertyRange | undefined;
  /** Fraction of moisture at fibre saturation that goes with these figures: 0.30, or 0.22 for redwood and three cedars. */
  readonly fibreSaturation: number;
}

const read: readonly (readonly [
  table: string,
  reader: (row: DataRow) => Omit<Movement, 'rows' | 'count'>,
])[] = [
  [
    'movement.fpl-gtr-190',
    (r) => ({
      tangential: exactly(r.number('c_tangential_per_pct'), 100),
      radial: exactly(r.number('c_radial_per_pct'), 100),
    }),
  ],
  ...[
    'timber.qld-properties-of-timbers',
    'timber.tq-tds-16b',
    'timber.woodsolutions',
    'timber.aus-forestry-2004',
  ].map(
    (table) =>
      [
        table,
        (r: DataRow) => ({
          tangential: between(
            r.number('tangential_low_pct_per_pct'),
            r.number('tangential_high_pct_per_pct'),
          ),
          radial: between(r.number('radial_low_pct_per_pct'), r.number('radial_high_pct_per_pct')),
        }),
      ] as const,
  ),
  ...['movement.holzhandel-din-68100', 'movement.holzvomfach'].map(
    (table) =>
      [
        table,
        (r: DataRow) => ({
          tangential: exactly(r.number('tangential_pct_per_pct')),
          radial: exactly(r.number('radial_pct_per_pct')),
        }),
      ] as const,
  ),
  [
    'movement.nwfa-a200',
    (r) => ({ tangential: exactly(r.number('c_tangential_per_pct'), 100), radial: undefined }),
  ],
];

/** Every published movement of a species, the preferred first. */
export function movementsOf(species: string): Movement[] {
  const all = read.flatMap(([table, reader]) =>
    rowsOf(table, species).map((row) => ({ ...reader(row), rows: [row], count: 1 })),
  );
  return all
    .filter((m) => m.tangential ?? m.radial)
    .sort((a, b) => Number(b.rows[0]?.preferred) - Number(a.rows[0]?.preferred));
}

const shrinkageTables = [
  'shrinkage-domestic.fpl-gtr-190',
  'shrinkage-imported.fpl-gtr-190',
  'shrinkage.hoadley-1998',
  'shrinkage.european-wood',
] as const;

/** Every published shrinkage of a species, the preferred first. */
export function shrinkagesOf(species: string): Shrinkage[] {
  return shrinkageTables
    .flatMap((table) => rowsOf(table, species))
    .sort((a, b) => Number(b.preferred) - Number(a.preferred))
    .map((r) => ({
      tangential: exactly(r.number('tangential_pct'), 0.01),
      radial: exactly(r.number('radial_pct'), 0.01),
      volumetric: exactly(r.number('volumetric_pct'), 0.01),
      fibreSaturation: (r.number('fibre_saturation_pct') ?? 30) / 100,
      rows: [r],
      count: 1,
    }));
}
