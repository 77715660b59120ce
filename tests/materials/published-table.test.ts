import { describe, expect, it } from 'vitest';
import { publishedTable, publishedTables } from '../../src/materials/published-table.js';

describe('a published table', () => {
  it.each(publishedTables())('%s shows its rows and where they come from', (name) => {
    const t = publishedTable(name);
    expect(t.rows.length).toBeGreaterThan(2);
    expect(String(t).split('\n').length).toBeGreaterThan(t.rows.length);
    expect(String(t)).not.toMatch(/undefined|NaN|_pct/);
  });
  it('tells what a mark means', () => {
    // ISPM 15: heat treatment, 56 °C at the core for 30 minutes.
    expect(
      publishedTable('marks on pallets and lumber').rows.find((r) => r['mark'] === 'HT')?.['meaning'],
    ).toMatch(/56 C.*30/);
    expect(publishedTable('Strength classes').rows.find((r) => r['grade'] === 'C24')?.['e_mean_mpa']).toBe(
      '11000',
    );
  });
  it('offers the nearest name', () => {
    expect(() => publishedTable('recomended moisture')).toThrow(/did you mean "recommended moisture"/);
    expect(() => publishedTable('constructor')).toThrow(/takes one of/);
  });
});
