// What may be a source: print, and not a program, a page of homework answers, a store of uploads or a page written to be found.
import { describe, expect, it } from 'vitest';
import { checkEntries, csvRows, sourceEntries, tableNames } from './csv-table.js';

const kinds = [
  'standard',
  'handbook',
  'paper',
  'extension bulletin',
  'textbook',
  "manufacturer's sheet",
  'trade magazine',
  'trade practice',
  'own choice',
];
const readings = ['original', 'reprint', 'quoted', 'recalled'];
const refusedWords = /calculator|\bapp\b|\bapps\b|software|planner|optimi[sz]er app|homework|spreadsheet/i;
const refusedPlaces =
  /coursehero|chegg|solutioninn|assignmentexpert|studocu|oneclass|expertsmind|brainly|engineerfix|666how|askvity|98905\.com|diyproject|masterseries|amesweb|calculator|\.web\.app|netlify\.app|miro\.gams/i;

/** Why an entry may not be a source; empty where it may. */
function faultsOf(entry: { title?: string; kind?: string; reading?: string; URL?: string }): string[] {
  return [
    ...(kinds.includes(entry.kind ?? '') ? [] : [`kind is ${String(entry.kind)}`]),
    ...(readings.includes(entry.reading ?? '') ? [] : [`reading is ${String(entry.reading)}`]),
    ...(refusedWords.test(entry.title ?? '') ? ['its title is that of a program'] : []),
    ...(refusedPlaces.test(entry.URL ?? '') ? [`no source: ${String(entry.URL)}`] : []),
  ];
}

describe('the sources', () => {
  const entries = sourceEntries();
  const ids = new Set(entries.map((e) => e.id));
  const named = [
    ...tableNames().flatMap((t) => csvRows(t).map((r) => r['source'] ?? '')),
    ...checkEntries().map((c) => c.source),
  ].filter((s) => s !== '');

  it.each(entries.map((e) => [e.id, e] as const))('%s says its kind and how it was read', (_id, entry) => {
    expect(faultsOf(entry)).toEqual([]);
  });
  it('stand once each', () => {
    expect(ids.size).toBe(entries.length);
  });
  it('are all that tables and checks name', () => {
    expect(named.filter((s) => !ids.has(s))).toEqual([]);
  });
  it.each([
    [{ title: 'Beam calculator', kind: 'handbook', reading: 'original' }],
    [{ title: 'Cutting stock', kind: 'app', reading: 'original' }],
    [{ title: 'Posted answer', kind: 'textbook', reading: 'original', URL: 'https://www.solutioninn.com/x' }],
    [{ title: 'Sizes', kind: 'upload mirror', reading: 'original' }],
    [{ title: 'How much stain', kind: 'content farm', reading: 'original' }],
    [{ title: 'Moduli', kind: 'standard', reading: 'somewhere' }],
    [{ title: 'Moduli' }],
  ])('refuses %j', (entry) => {
    expect(faultsOf(entry)).not.toEqual([]);
  });
});
