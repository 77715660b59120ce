import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { allEvidence, evidenceOf, evidenceText } from '../../src/recipes/evidence.js';
import { catalogue } from '../../src/recipes/catalogue.js';

const root = new URL('../../', import.meta.url);

describe('what proves a recipe', () => {
  it('is said of every recipe once, and of nothing else', () => {
    expect(
      allEvidence()
        .map((e) => e.recipe)
        .sort(),
    ).toEqual(catalogue.map((r) => r.name).sort());
  });
  it.each(allEvidence().map((e) => [e.recipe, e] as const))('%s', (_name, e) => {
    expect(['printed', 'derived', 'geometry', 'practice']).toContain(e.kind);
    expect(e.restsOn).not.toBe('');
    if (e.kind === 'printed') expect(e.printed).toBeGreaterThanOrEqual(3);
    if (e.kind === 'derived') expect(e.printed + e.derived).toBeGreaterThanOrEqual(3);
    // Where print does not suffice, a test file proves it.
    if (e.kind === 'geometry' || e.kind === 'practice') expect(e.proof).not.toBe('');
    if (e.proof !== '') expect(existsSync(new URL(e.proof, root)), e.proof).toBe(true);
  });
  it('is told to the quality report where fewer than three checks are printed, or the report fails', () => {
    const reasons = JSON.parse(readFileSync(new URL('tests/proof/oracles.json', root), 'utf8')) as object;
    const few = allEvidence().filter((e) => e.printed + e.derived < 3);
    expect(few.map((e) => e.recipe).filter((name) => !Object.hasOwn(reasons, name))).toEqual([]);
  });
  it('is one line', () => {
    const line = evidenceText(evidenceOf('beam') as NonNullable<ReturnType<typeof evidenceOf>>);
    expect(line).toMatch(/^derived: .*\(1 printed check, \d+ worked from printed figures\)$/);
    expect(evidenceOf('constructor')).toBeUndefined();
  });
});

describe('what README says of the checks', () => {
  it('is what is counted here: recipes with three checks or more, and those without', () => {
    const readme = readFileSync(new URL('README.md', root), 'utf8');
    const [enough, all] = [
      allEvidence().filter((e) => e.printed + e.derived >= 3).length,
      allEvidence().length,
    ];
    expect(readme).toContain(`three published checks or more stand behind ${enough} of the ${all} recipes`);
  });
});
