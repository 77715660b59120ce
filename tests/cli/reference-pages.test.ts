import { mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it, vi } from 'vitest';
import { writePages } from '../../src/cli/reference-pages.js';
import { catalogue } from '../../src/recipes/catalogue.js';

it('the reference is one page a recipe and an index, each complete and linked', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'reckoner-reference-'));
  const write = vi.spyOn(process.stdout, 'write').mockImplementation(() => true);
  try {
    expect(await writePages(folder)).toBe(0);
  } finally {
    write.mockRestore();
  }
  const names = readdirSync(folder);
  expect(names.sort()).toEqual([...catalogue.map((r) => `${r.name}.html`), 'index.html'].sort());
  for (const r of catalogue) {
    const page = readFileSync(join(folder, `${r.name}.html`), 'utf8');
    for (const part of ['Inputs', 'Outputs', 'Example', 'index.html']) expect(page, r.name).toContain(part);
    for (const input of Object.keys(r.inputs)) expect(page, r.name).toContain(input);
    // Drawn, not stripped as raw SVG would be.
    if ((await r(r.example)).chart) expect(page, r.name).toContain('src="data:image/svg+xml;base64,');
  }
  const square = readFileSync(join(folder, 'squareness.html'), 'utf8');
  expect(square).toMatch(/<td>[A-Z]<\/td>\s*<td><code>\w+<\/code><\/td>/);
  const screws = readFileSync(join(folder, 'screwHold.html'), 'utf8');
  expect(screws).toContain('An empirical formula: numbers enter in these units, the answer is in lbf.');
  expect(readFileSync(join(folder, 'index.html'), 'utf8')).toContain('href="movementAcross.html"');
  rmSync(folder, { recursive: true, force: true });
}, 60_000);
