import { between, exactly, type Sourced, type PropertyRange } from './property-range.js';
import { rowsOf, type DataRow } from './data-tables.js';

/** Specific gravity on oven-dry mass: `green` on the green volume ("basic"), `air dry` on the volume at 12 %. */
export type Condition = 'green' | '12%';

export interface Gravity extends Sourced {
  readonly gravity: PropertyRange;
}

/** Density as printed or as it follows from the specific gravity, kg/m³ with its water in. */
export interface Density extends Sourced {
  readonly density: PropertyRange;
  /** True where it is the printed specific gravity times the mass of water and wood, not a printed density. */
  readonly derived: boolean;
}

const cells: Readonly<Record<Condition, readonly (readonly [table: string, column: string])[]>> = {
  // The inventory comes first, save where it puts in a mean for a species or the handbook is preferred.
  green: [
    ['specific-gravity.fia-ref-species', 'sg_green'],
    ['mechanical-canadian.fpl-gtr-282', 'specific_gravity_green'],
    ['mechanical.astm-d2555', 'sg_green'],
  ],
  '12%': [
    ['specific-gravity.fia-ref-species', 'sg_12'],
    ['mechanical.osu-owic', 'sg_12'],
  ],
};

/** Specific gravity of a species in a condition, from the first table that prints it. */
export function gravityOf(species: string, condition: Condition): Gravity | undefined {
  const [inventory, ...others] = cells[condition];
  const found = inventory && pick(species, inventory[0], inventory[1]);
  if (found && isMeasured(found) && found.rows.every((r) => r.preferred)) return found;
  for (const table of ['mechanical-domestic.fpl-gtr-282', 'mechanical-imported.fpl-gtr-282']) {
    const row = rowsOf(table, species).find(
      (r) => r.text('condition') === condition && r.number('specific_gravity') !== undefined,
    );
    if (row)
      return { gravity: exactly(row.number('specific_gravity')) as PropertyRange, rows: [row], count: 1 };
  }
  for (const [table, column] of others) {
    const other = pick(species, table, column);
    if (other) return other;
  }
  if (condition === 'green') {
    for (const table of ['timber.fpc-wa', 'timber.aus-forestry-2004']) {
      const row = rowsOf(table, species).find((r) => r.number('basic_density_low_kg_m3') !== undefined);
      if (row)
        return {
          gravity: between(
            row.number('basic_density_low_kg_m3'),
            row.number('basic_density_high_kg_m3'),
            1e-3,
          ) as PropertyRange,
          rows: [row],
          count: 1,
        };
    }
  }
  return found;
}

/** False for a mean of a genus that a table puts in for a species nobody measured. */
export const isMeasured = (figures: Sourced): boolean =>
  figures.rows.every((r) => r.text('imputed') !== 'yes');

function pick(species: string, table: string, column: string): Gravity | undefined {
  const row = rowsOf(table, species).find((r) => r.number(column) !== undefined);
  return row ? { gravity: exactly(row.number(column)) as PropertyRange, rows: [row], count: 1 } : undefined;
}

/** Density at 12 %: printed where a source prints it, else from the specific gravity at 12 %. */
export function densityOf(species: string): Density | undefined {
  for (const table of ['timber.qld-properties-of-timbers', 'timber.fpc-wa', 'timber.tq-tds-16b']) {
    const row = rowsOf(table, species).find((r) => r.number('density_12_low_kg_m3') !== undefined);
    if (row)
      return {
        density: between(
          row.number('density_12_low_kg_m3'),
          row.number('density_12_high_kg_m3'),
        ) as PropertyRange,
        derived: false,
        rows: [row],
        count: 1,
      };
  }
  const mean = rowsOf('density.various', species)[0];
  const g = gravityOf(species, '12%');
  if (mean && !(g && isMeasured(g))) {
    const density = {
      low: mean.number('density_12_low_kg_m3') as number,
      middle: mean.number('density_12_mean_kg_m3') as number,
      high: mean.number('density_12_high_kg_m3') as number,
    };
    return { density, derived: false, rows: [mean], count: 1 };
  }
  // 1000 kg/m³ of water, and 12 % of the oven-dry mass as water.
  if (g) return { density: times(g.gravity, 1120), derived: true, rows: g.rows, count: 1 };
  const basic = gravityOf(species, 'green');
  if (!basic) return undefined;
  const shrunk = volumetricOf(species);
  // From the green volume to that at 12 %: 18/30 of the whole shrinkage is past.
  const at12 = (b: number): number => (1120 * b) / (1 - 0.6 * (shrunk?.value ?? usualVolumetric * b));
  return {
    density: {
      low: at12(basic.gravity.low),
      middle: at12(basic.gravity.middle),
      high: at12(basic.gravity.high),
    },
    derived: true,
    rows: [...basic.rows, ...(shrunk ? [shrunk.row] : [])],
    count: 1,
  };
}

/** Green-to-oven-dry shrinkage of volume is near 26.5 % times the basic specific gravity where it is not known. */
export const usualVolumetric = 0.265;

function volumetricOf(species: string): { readonly value: number; readonly row: DataRow } | undefined {
  for (const table of ['shrinkage-domestic.fpl-gtr-190', 'shrinkage-imported.fpl-gtr-190']) {
    const row = rowsOf(table, species).find((r) => r.number('volumetric_pct') !== undefined);
    if (row) return { value: (row.number('volumetric_pct') as number) / 100, row };
  }
  return undefined;
}

/** Moisture of green wood, as a fraction of its oven-dry mass. */
export function greenMoistureOf(
  species: string,
): { readonly moisture: number; readonly row: DataRow } | undefined {
  const row = rowsOf('specific-gravity.fia-ref-species', species).find(
    (r) => r.number('green_mc_pct') !== undefined,
  );
  return row && { moisture: (row.number('green_mc_pct') as number) / 100, row };
}

const times = (s: PropertyRange, k: number): PropertyRange => ({
  low: s.low * k,
  middle: s.middle * k,
  high: s.high * k,
});
