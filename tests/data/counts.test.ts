// The counts that chapter 90 shows, against a count of the files by another reader of CSV.
import { describe, expect, it } from 'vitest';
import { readFileSync } from 'node:fs';
import { dataCounts } from '../../src/recipes/data-counts.js';
import { checkTopics } from '../../src/recipes/published-checks.js';
import { csvRows, tableNames } from './csv-table.js';

describe('counts of the data', () => {
  const counts = dataCounts();
  const tables = tableNames()
    .filter((t) => !['species', 'evidence', 'timber-aliases', 'glossary'].includes(t))
    .map(csvRows);
  it('agree with the files, read by read and table by table', () => {
    const rows = tables.flat();
    expect(counts.rows).toBe(rows.length);
    for (const [reading, n] of Object.entries(counts.byReading))
      expect(rows.filter((r) => r['read'] === reading).length, reading).toBe(n);
    for (const t of counts.fromMemory)
      expect(csvRows(t.table).filter((r) => r['read'] === 'memory').length, t.table).toBe(t.rows);
  });
  it('leave no row without a kind of source', () => {
    expect(Object.keys(counts.bySourceKind)).not.toContain('unknown');
    expect(Object.keys(counts.bySourceReading)).not.toContain('unknown');
    const sum = (part: Readonly<Record<string, number>>): number => Object.values(part).reduce((a, b) => a + b, 0);
    expect([sum(counts.bySourceKind), sum(counts.bySourceReading), sum(counts.byReading)]).toEqual([
      counts.rows,
      counts.rows,
      counts.rows,
    ]);
  });
  it('hold far fewer figures from memory than were read or worked out', () => {
    expect(counts.byReading['memory'] ?? 0).toBeLessThanOrEqual(150);
    expect(counts.rows).toBeGreaterThan(2300);
  });
});

describe('chapter 90', () => {
  const chapter = readFileSync(new URL('../../notebooks/90-checked-against-print.ipynb', import.meta.url), 'utf8');
  it.each(checkTopics)('shows the checks of %s', (topic) => {
    expect(chapter).toContain(`"tables.get('${topic}')"`);
  });
  it('shows rows by reading and by source, what is from memory and what rests on it', () => {
    for (const part of ['byReading', 'bySourceKind', 'bySourceReading', 'fromMemory', "s.read === 'memory'"])
      expect(chapter).toContain(part);
  });
});
