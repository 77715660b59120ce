// What an editor shows of a recipe's input where it is written in a cell: the comment in the package's declarations.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import type { CellSession } from '../../src/kernel/session.js';
import type { SessionView } from '../../src/kernel/compiler/session-view.js';
import { inspectCell } from '../../src/kernel/compiler/inspection.js';
import { catalogue } from '../../src/recipes/catalogue.js';
import { openNotebook } from './sample-cells.js';

// On a busy machine a first cell, which loads the package, takes a while.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

const folder = mkdtempSync(join(tmpdir(), 'documentation-'));
let book: Awaited<ReturnType<typeof openNotebook>>;
beforeAll(async () => {
  book = await openNotebook(folder);
});
afterAll(async () => {
  await book.session.dispose();
  rmSync(folder, { recursive: true });
});

const recipes = fileURLToPath(new URL('../../dist/recipes', import.meta.url));
const declarations = readdirSync(recipes, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.d.ts'))
  .map((name) => readFileSync(join(recipes, name), 'utf8'))
  .join('\n');

const shown = (code: string, at: string): string =>
  String(
    inspectCell(book.session as CellSession & SessionView, code, code.indexOf(at) + 1, false)?.['text/plain'],
  );

describe('what is shown of a name in the call of a recipe', () => {
  it('is the meaning, limits and example of an input', async () => {
    await book.run("import { cupDepth } from 'joiners-reckoner'");
    const call =
      "cupDepth({ width: '200 mm', timber: 'white oak', ringRadius: '150 mm', from: '14 %', to: '8 %' })";
    const radius = shown(call, 'ringRadius');
    expect(radius).toContain('CupDepthInput.ringRadius');
    expect(radius).toContain('Radius of the growth rings at the middle of the board, read off its end.');
    expect(radius.match(/more than 0 mm and at most 5000 mm/g)).toHaveLength(1);
    expect(radius).toContain('@example 150 mm');
    expect(shown(`${call}.cup`, '.cup')).toContain('Depth of the hollow at the middle of the board.');
  });

  it('is in the declarations of every recipe', () => {
    for (const r of catalogue) {
      const type = `${r.name[0]!.toUpperCase()}${r.name.slice(1)}`;
      expect(declarations, r.name).toMatch(
        new RegExp(`declare const ${r.name}: [^\\n]*Recipe<${type}Input, ${type}Result, `),
      );
      for (const [name, { help }] of Object.entries(r.inputs)) {
        const own = declarations.split(`interface ${type}Input {`)[1]!.split(/^}/m)[0]!;
        expect(own, `${r.name}.${name}`).toMatch(new RegExp(`^ {2}readonly ${name}\\??:`, 'm'));
        if (help !== undefined) expect(own, `${r.name}.${name}`).toContain(help);
      }
    }
  });
});
