// A timber shown in a notebook: printed figures with their sources, recalled ones said to be recalled, groups as ranges.
import { describe, expect, it } from 'vitest';
import { findSpecies } from '../../src/materials/species.js';

const shown = (name: string): Record<string, string> =>
  (findSpecies(name) as unknown as Record<symbol, () => Record<string, string>>)[
    Symbol.for('Jupyter.display')
  ]?.() ?? {};

describe('a timber in a cell', () => {
  it('has the handbook’s white oak: 0.365 and 0.18 % for 1 %, 10.5 and 5.6 % from green', () => {
    const text = shown('white oak')['text/plain'] ?? '';
    const line = (start: string): string => text.split('\n').find((l) => l.trim().startsWith(start)) ?? '';
    expect(line('shrinkage')).toMatch(/10\.5 %, 5\.6 %.*Table 4-3/);
    expect(text).toMatch(/0\.365 %, 0\.18 %.*Table 13-5/);
    expect(text).not.toMatch(/undefined|NaN|\(10th/);
  });
  it('says which figures are recalled', () => {
    expect(shown('greenheart')['text/plain']).toMatch(/not yet verified/);
    expect(shown('Douglas-fir')['text/plain']).toMatch(/worked out from printed figures/);
    expect(shown('white oak')['text/plain']).not.toMatch(/Table 4-3[^\n]*recalled/);
  });
  it('gives a group as a range over its published species', () => {
    const text = shown('unknown hardwood')['text/plain'] ?? '';
    expect(text).toMatch(/a group of \d+ entries/);
    expect(text).toMatch(/\d \w*\S* ?\(\d[\d.]* to \d[\d.]*\)/);
    expect(text).toMatch(/\d+ published species; median \(10th to 90th percentile\)/);
  });
  it('shows the same in a table, with nothing unescaped', () => {
    const bundle = shown('white oak');
    const cells = [...(bundle['text/html'] ?? '').matchAll(/<td[^>]*>([^<]*)<\/td>/g)].map((m) => m[1]);
    expect(cells.length % 4).toBe(0);
    expect(cells.length / 4).toBe(
      (bundle['text/plain'] ?? '').split('\n').filter((l) => l.startsWith('  ') && l.includes('[')).length,
    );
    expect(cells).toContain('10.5 %, 5.6 %');
    expect(bundle['text/html']).not.toMatch(/undefined|NaN/);
  });
  it('tells what an unclear name was read as', () => {
    expect(findSpecies('oak').readAs).toMatch(/"oak" was read as European oak/);
    for (const form of Object.values(shown('oak'))) expect(form).toContain('was read as European oak');
  });
});
