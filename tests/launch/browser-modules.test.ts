// The package in a browser: what a page imports is bundled by the usual bundlers without a plugin, is small, needs nothing of
// Node and calculates the same.
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build as esbuild } from 'esbuild';
import { rollup } from 'rollup';
import { build as vite } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildBrowserModules } from '../../src/launch/browser-modules.mjs';
import { catalogue } from '../../src/recipes/catalogue.js';

const root = fileURLToPath(new URL('../..', import.meta.url));
const built = join(root, 'dist', 'browser');
const page = mkdtempSync(join(tmpdir(), 'reckoner-bundle-'));
const entry = join(page, 'page.js');
/** A user's folder with the package installed. */
beforeAll(async () => {
  if (!existsSync(join(built, 'index.js'))) await buildBrowserModules(root);
  mkdirSync(join(page, 'node_modules'));
  symlinkSync(root, join(page, 'node_modules', 'joiners-reckoner'), 'dir');
  writeFileSync(join(page, 'package.json'), '{ "type": "module" }');
}, 120_000);
afterAll(() => rmSync(page, { recursive: true, force: true }));

const withRecipe = (name: string): string =>
  `import { ${name} } from 'joiners-reckoner/browser';\nexport const recipe = ${name};\n`;

async function bundled(code: string): Promise<string> {
  const { outputFiles, warnings } = await esbuild({
    stdin: { contents: code, resolveDir: page },
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
    platform: 'browser',
    logLevel: 'silent',
  });
  expect(warnings).toEqual([]);
  return outputFiles[0]!.text;
}

const movement = withRecipe('movementAcross');
const isSmall = (text: string): void => {
  expect(gzipSync(text, { level: 9 }).length).toBeLessThanOrEqual(120_000);
  expect(text).not.toMatch(/["'](?:node:\w+|fs|path|module|url)["']/);
};

describe('one recipe alone is bundled small', () => {
  it('by esbuild', async () => {
    isSmall(await bundled(movement));
  });

  it('by rollup, which without a plugin reads no package.json, from the file of the recipe', async () => {
    writeFileSync(entry, movement.replace('joiners-reckoner/browser', join(built, 'movement-across.js')));
    const bundle = await rollup({
      input: entry,
      treeshake: { moduleSideEffects: false },
      onwarn: (w) => expect(w.message).toBe(''),
    });
    const { output } = await bundle.generate({ format: 'es' });
    isSmall(output[0].code);
  }, 120_000);

  it('by vite', async () => {
    writeFileSync(entry, movement);
    const result = await vite({
      root: page,
      configFile: false,
      logLevel: 'silent',
      build: { write: false, lib: { entry, formats: ['es'] }, minify: true },
    });
    const [first] = [result].flat() as { output: { code: string }[] }[];
    isSmall(first!.output[0]!.code);
  });
});

describe('the modules', () => {
  it('name nothing of Node', () => {
    for (const file of readdirSync(built).filter((name) => name.endsWith('.js')))
      expect(readFileSync(join(built, file), 'utf8'), file).not.toMatch(
        /(?:from|import\()\s*["'](?:node:|fs|path|module)/,
      );
  });

  it('hold every formula, parsed', () => {
    const all = readdirSync(built).map((name) => readFileSync(join(built, name), 'utf8')).join('\n'); // prettier-ignore
    const ours = catalogue.flatMap((r) => r.formulas);
    expect(ours.length).toBeGreaterThan(150);
    const missing = ours.filter((f) => !all.includes(JSON.stringify(f.expression).slice(1, -1)));
    expect(missing.map((f) => f.expression)).toEqual([]);
  });

  it('declare no side effects of the browser modules', () => {
    const { sideEffects } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
      sideEffects: string[];
    };
    expect(sideEffects.some((pattern) => pattern.includes('browser'))).toBe(false);
  });
});

// A search with the solver, whose machine code a page loads from beside the script, needs a page: tests/browser.
const alike = catalogue.filter((r) => !r.isAsync);

interface Answering {
  (given: object): { toJSON(): unknown; toMarkdown(): string };
}
async function compareWithNode(file: string, names: readonly string[]): Promise<void> {
  const inBrowser = (await import(/* @vite-ignore */ pathToFileURL(file).href)) as Record<string, Answering>;
  for (const recipe of alike.filter((r) => names.includes(r.name))) {
    const [ours, theirs] = [inBrowser[recipe.name]!(recipe.example), await recipe(recipe.example)];
    expect(ours.toJSON(), recipe.name).toEqual(theirs.toJSON());
    expect(ours.toMarkdown(), recipe.name).toBe(theirs.toMarkdown());
  }
}
const importing = (names: readonly string[]): string =>
  `export { ${names.join(', ')} } from 'joiners-reckoner/browser';`;

// Each alone brings its own tables: timbers, climates, grades, screws, spreading rates.
it.each([
  'movementAcross',
  'equilibriumMoisture',
  'railSpan',
  'screwHold',
  'finishQuantity',
  'splayedCorner',
])('%s alone answers as in Node', async (name) => {
  const file = join(page, `${name}.mjs`);
  writeFileSync(file, await bundled(importing([name])));
  await compareWithNode(file, [name]);
});

it('every recipe answers as in Node', async () => {
  const names = alike.map((r) => r.name);
  const file = join(page, 'all.mjs');
  writeFileSync(file, await bundled(importing(names)));
  await compareWithNode(file, names);
}, 120_000);
