// Rows that stand twice, that contradict one another, or that no wood could give. A row printed so all the same says it in its doubt.
import { describe, expect, it } from 'vitest';
import { csvRows, numberIn, tableNames, type CsvRow } from './csv-table.js';

const named = (r: CsvRow): string => `${r.table}: ${r['species_id'] ?? ''} ${r['condition'] ?? ''}`.trim();
const flagged = (r: CsvRow): boolean => (r['doubt'] ?? '') !== '';
/** Rows outside the bounds that do not say so. */
const silent = (rows: readonly CsvRow[], outside: (r: CsvRow) => boolean): string[] =>
  rows.filter((r) => outside(r) && !flagged(r)).map(named);
const ratio = (r: CsvRow, over: string, under: string): number | undefined => {
  const [a, b] = [numberIn(r, over), numberIn(r, under)];
  return a === undefined || b === undefined || b === 0 ? undefined : a / b;
};
const beyond = (v: number | undefined, low: number, high: number): boolean =>
  v !== undefined && !(v >= low && v <= high);

/** Rows by the cells of some columns, where all of them are filled. */
function byCells(rows: readonly CsvRow[], columns: readonly string[]): CsvRow[][] {
  const groups = new Map<string, CsvRow[]>();
  for (const r of rows) {
    if (columns.some((c) => (r[c] ?? '') === '')) continue;
    const key = columns.map((c) => r[c]).join(' ');
    groups.set(key, [...(groups.get(key) ?? []), r]);
  }
  return [...groups.values()];
}

const starting = (prefix: string): CsvRow[] =>
  tableNames()
    .filter((t) => t.startsWith(prefix))
    .flatMap(csvRows);
const gravity = starting('specific-gravity.');
const [domestic, imported] = [starting('mechanical-domestic.'), starting('mechanical-imported.')];
const clear = [...domestic, ...imported];
const shrinkage = starting('shrinkage');
const movement = starting('movement.fpl');

describe('imputed rows', () => {
  it('are marked where three species or more share all figures of the inventory', () => {
    const shared = byCells(gravity, ['sg_green', 'sg_12', 'green_mc_pct']).filter((g) => g.length >= 3);
    expect(shared.length).toBeGreaterThan(5);
    // A row of the genus itself may hold its mean.
    const unmarked = shared.flatMap((g) =>
      g.filter((r) => r['imputed'] !== 'yes' && !/spp|^cypress$/.test(r['printed_as'] ?? '')),
    );
    expect(unmarked.map(named)).toEqual([]);
  });
  it('say so in words too', () => {
    expect(gravity.filter((r) => r['imputed'] === 'yes' && !flagged(r)).map(named)).toEqual([]);
    expect(gravity.filter((r) => r['imputed'] === 'yes').length).toBeGreaterThan(200);
  });
  it.each([
    ['strength and stiffness', clear, ['condition', 'mor_psi', 'moe_million_psi', 'specific_gravity']],
    ['shrinkage', shrinkage, ['table', 'radial_pct', 'tangential_pct', 'volumetric_pct']],
    ['movement', movement, ['c_radial_per_pct', 'c_tangential_per_pct']],
  ] as const)('%s: no figures are shared by three species unsaid', (_what, rows, columns) => {
    expect(rows.length).toBeGreaterThan(50);
    const shared = byCells(rows, columns).filter((g) => g.length >= 3);
    expect(shared.filter((g) => g.filter((r) => !flagged(r)).length > 1).map((g) => g.map(named))).toEqual(
      [],
    );
  });
});

describe('rows that stand twice', () => {
  it.each(tableNames().filter((t) => csvRows(t)[0]?.['species_id'] !== undefined))('%s', (table) => {
    const keys = csvRows(table).map((r) =>
      [r['species_id'], r['condition'] ?? '', r['printed_as'] ?? r['trade_name'] ?? r['alias']].join(' '),
    );
    expect(keys.filter((k, i) => keys.indexOf(k) !== i)).toEqual([]);
  });
});

describe('what no wood gives', () => {
  it('specific gravity lies within that of wood, and is greater on the smaller volume', () => {
    expect(silent(gravity, (r) => beyond(numberIn(r, 'sg_green'), 0.1, 1.25))).toEqual([]);
    expect(silent(gravity, (r) => beyond(numberIn(r, 'sg_12'), 0.1, 1.4))).toEqual([]);
    expect(silent(gravity, (r) => beyond(ratio(r, 'sg_12', 'sg_green'), 1, 1.35))).toEqual([]);
  });
  it('green wood holds no more water than its hollows take', () => {
    // Cell walls weigh 1.54 times water: the most is (1.54 - G) / (1.54 G).
    const most = (g: number): number => (100 * (1.54 - g)) / (1.54 * g);
    const over = (r: CsvRow): boolean => {
      const [g, m] = [numberIn(r, 'sg_green'), numberIn(r, 'green_mc_pct')];
      return g !== undefined && m !== undefined && !(m > 15 && m < most(g));
    };
    expect(silent(gravity, over)).toEqual([]);
  });
  it('wood shrinks more along the rings than across, and its volume by about both together', () => {
    expect(silent(shrinkage, (r) => beyond(ratio(r, 'tangential_pct', 'radial_pct'), 1, 3.2))).toEqual([]);
    expect(
      silent(movement, (r) => beyond(ratio(r, 'c_tangential_per_pct', 'c_radial_per_pct'), 1, 3.3)),
    ).toEqual([]);
    const odd = (r: CsvRow): boolean => {
      const [a, b, v] = ['radial_pct', 'tangential_pct', 'volumetric_pct'].map((c) => numberIn(r, c));
      if (a === undefined || b === undefined || v === undefined) return false;
      return beyond(v / (100 * (1 - (1 - a / 100) * (1 - b / 100))), 0.75, 1.36);
    };
    expect(silent(shrinkage, odd)).toEqual([]);
  });
  it('dry wood is stronger, stiffer and harder than green', () => {
    for (const column of ['mor_psi', 'moe_million_psi', 'side_hardness_lbf', 'specific_gravity']) {
      const pairs = byCells(clear, ['table', 'species_id', 'printed_as']).filter((g) => g.length === 2);
      expect(pairs.length).toBeGreaterThan(80);
      const weaker = pairs.filter((g) => {
        const [green, dry] = ['green', '12%'].map((c) => g.find((r) => r['condition'] === c));
        const [a, b] = [green && numberIn(green, column), dry && numberIn(dry, column)];
        return a !== undefined && b !== undefined && b < a && !g.some(flagged);
      });
      expect(
        weaker.map((g) => g.map(named)),
        column,
      ).toEqual([]);
    }
  });
  it('stiffness and strength go with specific gravity', () => {
    expect(silent(clear, (r) => beyond(ratio(r, 'moe_million_psi', 'specific_gravity'), 1.4, 5.2))).toEqual(
      [],
    );
    expect(silent(clear, (r) => beyond(ratio(r, 'mor_psi', 'moe_million_psi'), 3900, 13_500))).toEqual([]);
  });
});

describe('tables that disagree', () => {
  const inventory = new Map(gravity.map((r) => [r['species_id'], r]));
  it('gravity of the inventory and of the handbook: one gives way, with the reason', () => {
    const apart = domestic.filter((r) => {
      const other = inventory.get(r['species_id'] ?? '');
      const [a, b] = [
        numberIn(r, 'specific_gravity'),
        other && numberIn(other, r['condition'] === 'green' ? 'sg_green' : 'sg_12'),
      ];
      return (
        a !== undefined && b !== undefined && Math.abs(a - b) / a > 0.06 && other?.['preferred'] !== 'no'
      );
    });
    expect(apart.map(named)).toEqual([]);
  });
  it('printed densities and specific gravities at 12 %: within a tenth and a half, or the row says why', () => {
    const printed = tableNames()
      .filter((t) => /^(timber|density)\./.test(t))
      .flatMap(csvRows);
    expect(printed.length).toBeGreaterThan(30);
    const apart = printed.filter((r) => {
      const other = inventory.get(r['species_id'] ?? '');
      const density = numberIn(r, 'density_12_mean_kg_m3') ?? numberIn(r, 'density_12_low_kg_m3');
      const g = other && numberIn(other, 'sg_12');
      return (
        density !== undefined && g !== undefined && beyond((1120 * g) / density, 0.85, 1.15) && !flagged(r)
      );
    });
    expect(apart.map(named)).toEqual([]);
  });
});

describe('movement worked out from shrinkage', () => {
  const derived = movement.filter((r) => r['read'] === 'derived');
  // Eq. 13-3 of the Wood Handbook at a moisture of 10 %: C = 1 / (100 f / S - f + 10), f the fibre saturation.
  const coefficient = (shrinks: number, saturation: number): number =>
    1 / ((100 * saturation) / shrinks - saturation + 10);
  it('is there', () => {
    expect(derived.length).toBeGreaterThan(35);
  });
  it.each(derived.map((r) => [r['species_id'], r] as const))('%s follows from shrinkage that was read', (id, r) => {
    const row = shrinkage.find((s) => s['species_id'] === id && s['read'] === 'text');
    expect(row).toBeDefined();
    const saturation = numberIn(row as CsvRow, 'fibre_saturation_pct') ?? 30;
    for (const [mine, theirs] of [
      ['c_radial_per_pct', 'radial_pct'],
      ['c_tangential_per_pct', 'tangential_pct'],
    ] as const)
      expect(numberIn(r, mine)).toBeCloseTo(coefficient(numberIn(row as CsvRow, theirs) as number, saturation), 5);
  });
});
