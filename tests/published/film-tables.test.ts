import { describe, expect, it } from 'vitest';
import { filmBuild } from '../../src/recipes/finish/film-build.js';
import { tableRows } from '../../src/materials/data-tables.js';
import { expectPrinted } from './printed.js';

describe('spreading rates, a coating maker’s table of solids and dry film', () => {
  const rows = tableRows('spreading-rates.transocean');
  it('is whole', () => {
    expect(rows).toHaveLength(144);
  });
  it.each(rows.map((r) => [r.text('solids_pct'), r.text('dry_film_um'), r] as const))(
    '%s % solids, %s µm dry',
    (solids, film, row) => {
      const rate = filmBuild({ volumeSolids: `${solids} %`, targetFilm: `${film} um` }).coverage;
      expectPrinted(rate.in('m2/L'), row.text('printed_m2_per_l'), row.citation.locator);
    },
  );
});
