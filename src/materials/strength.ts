import { type Condition } from './specific-gravity.js';
import { exactly, type Sourced, type PropertyRange } from './property-range.js';
import { rowsOf, tableRows, type DataRow } from './data-tables.js';

const psi = 6894.757293168;

/** Mechanical properties of clear wood, Pa and N. These are means (or group minima of means), not design values. */
export interface Mechanical extends Sourced {
  readonly condition: Condition;
  /** What kind of figure: 'mean of clear wood' or 'minimum mean of clear wood for the group'. */
  readonly basis: string;
  readonly modulus: PropertyRange | undefined;
  /** Modulus of rupture. */
  readonly bending: PropertyRange | undefined;
  readonly shear: PropertyRange | undefined;
  /** Strength in tension across the grain. */
  readonly tensionAcross: PropertyRange | undefined;
  /** Side hardness, N. */
  readonly hardness: PropertyRange | undefined;
}

/** Moduli across the grain and in shear, as shares of the modulus along it. */
export interface ElasticRatios extends Sourced {
  readonly tangential: PropertyRange;
  readonly radial: PropertyRange;
  /** Shear in the plane of length and radius, and of length and tangent. */
  readonly shearRadial: PropertyRange;
  readonly shearTangential: PropertyRange | undefined;
}

interface Reading {
  readonly row: DataRow;
  readonly modulus: number | undefined;
  readonly bending: number | undefined;
  readonly hardness?: number | undefined;
}

function readings(species: string, condition: Condition): Reading[] {
  const s = condition === 'green' ? 'green' : '12';
  const direct = ['mechanical-domestic.fpl-gtr-282', 'mechanical-imported.fpl-gtr-282'].flatMap((t) =>
    rowsOf(t, species)
      .filter((r) => r.text('condition') === condition)
      .map((row) => ({
        row,
        modulus: scale(row.number('moe_million_psi'), 1e6 * psi),
        bending: scale(row.number('mor_psi'), psi),
        hardness: scale(row.number('side_hardness_lbf'), 4.4482216152605),
      })),
  );
  const wide = ['mechanical-canadian.fpl-gtr-282', 'mechanical.osu-owic', 'mechanical.astm-d2555'].flatMap(
    (t) =>
      rowsOf(t, species).map((row) => ({
        row,
        modulus:
          scale(row.number(`moe_${s}_million_psi`), 1e6 * psi) ??
          scale(row.number(`moe_${s}_thousand_psi`), 1e3 * psi),
        bending: scale(row.number(`mor_${s}_psi`), psi),
        hardness: scale(row.number(`side_hardness_${s}_lbf`), 4.4482216152605),
      })),
  );
  return [...direct, ...wide]
    .filter((r) => r.modulus !== undefined || r.bending !== undefined)
    .sort((a, b) => Number(b.row.preferred) - Number(a.row.preferred));
}

const scale = (n: number | undefined, k: number): number | undefined => (n === undefined ? undefined : n * k);

/** Strength and stiffness of a species; an Australian timber without a row of its own takes its strength group's minimum means. */
export function mechanicalOf(species: string, condition: Condition): Mechanical | undefined {
  const found = readings(species, condition)[0];
  if (!found) return byStrengthGroup(species, condition);
  const across = condition === '12%' ? rowsOf('shear-and-tension.fpl-gtr-282', species)[0] : undefined;
  return {
    condition,
    basis: 'mean of clear wood',
    modulus: exactly(found.modulus),
    bending: exactly(found.bending),
    hardness: exactly(found.hardness),
    shear: exactly(across?.number('shear_parallel_psi'), psi),
    tensionAcross: exactly(across?.number('tension_across_psi'), psi),
    rows: across ? [found.row, across] : [found.row],
    count: 1,
  };
}

function byStrengthGroup(species: string, condition: Condition): Mechanical | undefined {
  const column = condition === 'green' ? 'strength_group_green' : 'strength_group_dry';
  for (const table of ['timber.qld-properties-of-timbers', 'timber.fpc-wa', 'timber.tq-tds-16b']) {
    const own = rowsOf(table, species).find((r) => r.text(column) !== '');
    const group = own && strengthGroup(own.text(column));
    if (!own || !group) continue;
    return {
      condition,
      basis: group.text('basis'),
      modulus: exactly(group.number('moe_mpa'), 1e6),
      bending: exactly(group.number('mor_mpa'), 1e6),
      // These sheets print it for seasoned wood alone.
      hardness: condition === '12%' ? exactly(own.number('janka_dry_kn'), 1e3) : undefined,
      shear: undefined,
      tensionAcross: undefined,
      rows: [own, group],
      count: 1,
    };
  }
  return undefined;
}

/** The row of an Australian strength group, S1 to S7 green and SD1 to SD6 seasoned. */
export function strengthGroup(name: string): DataRow | undefined {
  return tableRows('strength-groups.as-2878').find((r) => r.text('strength_group') === name.toUpperCase());
}

/** Elastic ratios of a species at about 12 %. */
export function elasticRatiosOf(species: string): ElasticRatios | undefined {
  const row = rowsOf('elastic-ratios.fpl-gtr-190', species)[0];
  if (!row) return undefined;
  const take = (column: string): PropertyRange => exactly(row.number(column)) as PropertyRange;
  return {
    tangential: take('e_t_over_e_l'),
    radial: take('e_r_over_e_l'),
    shearRadial: take('g_lr_over_e_l'),
    shearTangential: exactly(row.number('g_lt_over_e_l')),
    rows: [row],
    count: 1,
  };
}
