import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { movementsOf, shrinkagesOf } from '../../src/materials/movement-data.js';
import { readCsv } from '../../src/engine/csv.js';
import { parseTable, tableRows } from '../../src/materials/data-tables.js';
import { allSpecies } from '../../src/materials/species.js';

const folder = new URL('../../data/', import.meta.url);
// Tables of published figures are named property.source; species.csv is our own index of names.
const tables = readdirSync(folder)
  .filter((f) => f.endsWith('.csv') && f !== 'species.csv')
  .map((f) => f.replace(/\.csv$/, ''));
const timberTables = tables.filter((t) =>
  readFileSync(new URL(`${t}.csv`, folder), 'utf8').startsWith('species_id,'),
);

describe('the published tables', () => {
  it('are there', () => {
    expect(timberTables.length).toBeGreaterThan(15);
  });

  it.each(timberTables)(
    '%s: every row has its source, and a species of the index where it names one',
    (table) => {
      const ids = new Set(allSpecies().map((s) => s.id));
      const rows = tableRows(table);
      expect(rows.length).toBeGreaterThan(0);
      for (const row of rows) {
        if (row.species !== '') expect(ids, `${table} line ${row.line}`).toContain(row.species);
        expect(row.printedAs).not.toBe('');
        if (!row.preferred)
          expect(row.preferReason, `${table} line ${row.line} is set aside without a reason`).not.toBe('');
      }
    },
  );

  it('have in every row a cell for every column', () => {
    for (const f of readdirSync(folder).filter((f) => f.endsWith('.csv'))) {
      const { rows } = readCsv(readFileSync(new URL(f, folder), 'utf8'));
      expect(rows[0]?.cells.length, f).toBeGreaterThan(2);
      for (const { line, cells } of rows)
        if (cells.join('') !== '') expect(cells.length, `${f} line ${line}`).toBe(rows[0]?.cells.length);
    }
  });

  it('hold nothing of a machine: no path, no registry', () => {
    for (const f of readdirSync(folder).filter((f) => /\.(csv|json)$/.test(f))) {
      expect(readFileSync(new URL(f, folder), 'utf8'), f).not.toMatch(
        /\/work\/|\/tmp\/|\/home\/|localhost|127\.0\.0\.1|file:\/\//,
      );
    }
  });

  const head = 'species_id,printed_as,c,source,locator,read,doubt\n';
  it('do not load a row without a source', () => {
    expect(() => parseTable('x.csv', `${head}white-oak,Oak,0.1,,p. 1,text,\n`)).toThrow(
      /x\.csv, line 2: the source "" is not in data\/sources\.json/,
    );
    expect(() => parseTable('x.csv', `${head}white-oak,Oak,0.1,hearsay,p. 1,text,\n`)).toThrow(
      /line 2: the source "hearsay"/,
    );
    expect(() => parseTable('x.csv', `${head}white-oak,Oak,0.1,fpl-gtr-190,,text,\n`)).toThrow(
      /line 2: locator is empty/,
    );
    expect(() => parseTable('x.csv', `${head}white-oak,Oak,0.1,fpl-gtr-190,p. 1,seen,\n`)).toThrow(
      /read is "seen"/,
    );
  });
  it('name the line of the file where a quoted cell spans lines, cells are missing or a quotation mark is open', () => {
    const sound = '"white\noak",Oak,0.1,fpl-gtr-190,p. 1,text,\n';
    const [first, second] = parseTable('x.csv', `${head}${sound}\n${sound}`);
    expect([first?.line, second?.line]).toEqual([2, 5]);
    expect(() => parseTable('x.csv', `${head}${sound}oak,Oak\n`)).toThrow(
      'data/x.csv, line 4: 2 cells, takes 7 as in its header',
    );
    expect(() => parseTable('x.csv', `${head}${sound}"oak,Oak\n`)).toThrow(
      'data/x.csv, line 4: a quotation mark is not closed',
    );
  });
  it('say which cell is no number', () => {
    const [row] = parseTable('x.csv', `${head}white-oak,Oak,many,fpl-gtr-190,p. 1,text,\n`);
    expect(() => row?.number('c')).toThrow(/line 2: c is "many", takes a number/);
  });
});

describe('where sources differ', () => {
  it('one movement and one shrinkage of a species is preferred, and no more', () => {
    for (const s of allSpecies()) {
      for (const [what, rows] of [
        ['movement', movementsOf(s.id)],
        ['shrinkage', shrinkagesOf(s.id)],
      ] as const) {
        if (rows.length === 0) continue;
        expect(rows.filter((m) => m.rows[0]?.preferred).length, `${s.name}, ${what}`).toBe(1);
      }
    }
  });
});
